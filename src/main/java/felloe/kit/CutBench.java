package felloe.kit;

import felloe.cutting.CutCautions;
import felloe.cutting.CutLine;
import felloe.cutting.CutPlan;
import felloe.cutting.CutProcess;
import felloe.cutting.CutSetup;
import felloe.cutting.CutTab;
import felloe.cutting.FeedTable;
import felloe.cutting.JigsawPlan;
import felloe.cutting.LeftOver;
import felloe.cutting.MachineJob;
import felloe.cutting.SheetLayout;
import felloe.cutting.SheetRequest;
import felloe.drawing.CutPicture;
import felloe.drawing.CutView;
import felloe.drawing.Picture;
import felloe.files.OutFile;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.out.About;
import felloe.out.CutDrawing;
import felloe.out.CutLayer;
import felloe.out.CutRole;
import felloe.out.CutSvgWriter;
import felloe.out.DxfWriter;
import felloe.out.GcodeJob;
import felloe.out.GcodeWriter;
import felloe.out.PngWriter;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes cut files, in memory. */
final class CutBench {

  /** Where work zero is when a plate lies alone. */
  static final String HUB_AXIS = "hub axis, upper face of the stock";

  private static final String CORNER = "lower left corner of the sheet, upper face of the stock";

  /** Room round a drawing, mm. */
  private static final double EDGE = 5;

  /** Arms of the crosses at centres, mm. */
  private static final double CROSS = 5;

  private static final double WIDTH = 1800;
  private static final double HEIGHT = 3200;

  private final CutOrder order;
  private final FeedTable feeds;

  /**
   * A job with its files.
   *
   * @param job what is told of it
   * @param files what is written
   */
  record Made(CutJob job, List<OutFile> files) {}

  CutBench(CutOrder order, FeedTable feeds) {
    this.order = order;
    this.feeds = feeds;
  }

  /** The files of a plate alone. */
  Made plate(Plate plate) {
    double cutter = order.width(List.of(plate), feeds);
    Frame frame =
        new Frame(plate.name(), plate.title(), HUB_AXIS, List.of(plate), Optional.empty());
    return CutOrder.told(() -> made(frame, cutter));
  }

  /** The files of plates on one sheet. */
  Made sheet(List<Plate> plates) {
    double cutter = order.width(plates, feeds);
    return CutOrder.told(
        () -> {
          boolean walls = order.process() == CutProcess.ROUTER;
          SheetLayout sheet = SheetLayout.of(plates, order.sheet().orElseThrow(), cutter, walls);
          boolean one = sheet.plates().size() == 1;
          String name = one ? plates.get(0).name() + "-sheet" : "sheet";
          String title =
              "Sheet: " + String.join("; ", plates.stream().map(Plate::title).distinct().toList());
          return made(new Frame(name, title, CORNER, sheet.plates(), Optional.of(sheet)), cutter);
        });
  }

  /**
   * What is cut in one go.
   *
   * @param name for files
   * @param plates in the frame of the machine
   */
  private record Frame(
      String name, String title, String zero, List<Plate> plates, Optional<SheetLayout> sheet) {
    Plate first() {
      return plates.get(0);
    }

    Box page(CutDrawing drawing) {
      return sheet.map(s -> s.room().all()).orElseGet(() -> drawing.box().grown(EDGE));
    }
  }

  private Made made(Frame frame, double cutter) {
    if (order.process() == CutProcess.JIGSAW) {
      return jigsaw(frame);
    }
    return order.compensates() ? machine(frame, cutter) : uncompensated(frame);
  }

  // A machine, compensated.

  private Made machine(Frame frame, double cutter) {
    MachineJob work =
        MachineJob.of(
            frame.plates(),
            frame.sheet().map(SheetLayout::room),
            plate -> order.setup(plate, cutter, feeds),
            order.decimals());
    boolean beam = order.process() != CutProcess.ROUTER;
    CutDrawing paths =
        work.plans().stream()
            .map(plan -> beam ? CutDrawing.beam(plan) : CutDrawing.paths(plan))
            .reduce(CutDrawing::with)
            .orElseThrow();
    CutDrawing marked = paths;
    for (CutPlan plan : work.plans()) {
      marked = marked.with(centres(plan.plate(), MachineJob.drilled(plan)));
    }
    About about = about(frame, work.cautions());
    String stem = frame.name() + "-" + order.processName();
    List<OutFile> files = new ArrayList<>();
    files.add(new OutFile(stem + ".dxf", DxfWriter.write(marked, about)));
    files.add(new OutFile(stem + ".svg", CutSvgWriter.write(paths, frame.page(paths), about)));
    if (order.process() == CutProcess.ROUTER) {
      files.add(new OutFile(frame.name() + ".nc", program(frame, work, about)));
    }
    CutFigures told = new CutFigures(order, feeds);
    List<LeftOver> left = work.leftOvers();
    List<CutTab> tabs = work.tabs();
    CutView view =
        view(
            frame,
            work.lines().stream().map(CutLine::path).toList(),
            work.plans().stream().flatMap(plan -> plan.leads().stream()).toList(),
            "path of the middle of the " + words(order.process()),
            List.of(),
            tabs.stream().map(CutTab::at).toList(),
            left);
    files.add(picture(stem, view, about));
    CutJob job =
        new CutJob(
            frame.name(),
            frame.title(),
            frame.zero(),
            List.of(),
            work.steps().stream().map(told::step).toList(),
            Optional.of(told.total(work.total())),
            lefts(left),
            List.of(),
            told.notes(work),
            Optional.of(told.proof(work)),
            told.figures(work.first(), cutter),
            work.cautions(),
            frame.sheet().map(CutBench::layout));
    return new Made(job, files);
  }

  private static String words(CutProcess process) {
    return switch (process) {
      case ROUTER -> "cutter";
      case LASER -> "beam";
      case WATERJET -> "jet";
      case JIGSAW -> "blade";
    };
  }

  private byte[] program(Frame frame, MachineJob work, About about) {
    return program(frame.plates(), frame.zero(), work, about, order);
  }

  /** The program of a router, with what its head tells. */
  static byte[] program(
      List<Plate> plates, String zero, MachineJob work, About about, CutOrder order) {
    CutSetup setup = work.first().setup();
    Plate plate = plates.get(0);
    List<String> notes = new ArrayList<>();
    notes.add(
        "Stock: "
            + plate.stock().material().title()
            + ", "
            + mm(setup.depths().stock())
            + "; below it "
            + mm(setup.depths().bed())
            + " of spoil board");
    int tabs = work.plans().stream().mapToInt(plan -> plan.tabs().size()).sum();
    notes.add(tabs == 0 ? "No tabs: hold the part down" : "Tabs: " + tabs);
    int left = work.leftOvers().size();
    if (left > 0) {
      notes.add("Left for the file: " + left + " places, see the picture");
    }
    GcodeJob job =
        new GcodeJob(
            about,
            zero,
            notes,
            work.first().height(),
            order.coolant(),
            work.steps().stream().map(MachineJob.Step::operation).toList());
    return GcodeWriter.write(job, order.dialect());
  }

  // A machine that compensates by itself.

  private Made uncompensated(Frame frame) {
    CutDrawing lines =
        frame.plates().stream().map(CutDrawing::finish).reduce(CutDrawing::with).orElseThrow();
    List<String> cautions = CutCautions.of(order.process(), frame.first().stock().material());
    About about = about(frame, cautions);
    String stem = frame.name() + "-" + order.processName() + "-finish-line";
    List<OutFile> files =
        List.of(
            new OutFile(stem + ".dxf", DxfWriter.write(lines, about)),
            new OutFile(stem + ".svg", CutSvgWriter.write(lines, frame.page(lines), about)));
    Note note =
        new Note(
            frame.first().stock().place(),
            "the files hold the finish lines: whoever runs the machine must move the path by half"
                + " the cutter or kerf, outside the outline and inside windows and holes; nothing"
                + " was checked");
    return new Made(bare(frame, List.of(), List.of(note), cautions), files);
  }

  private static CutJob bare(
      Frame frame, List<CutJob.WasteHole> holes, List<Note> notes, List<String> cautions) {
    return new CutJob(
        frame.name(),
        frame.title(),
        frame.zero(),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        holes,
        notes,
        Optional.empty(),
        List.of(),
        cautions,
        frame.sheet().map(CutBench::layout));
  }

  // A saw by hand.

  private Made jigsaw(Frame frame) {
    Plate plate = frame.first();
    JigsawPlan plan =
        JigsawPlan.of(plate, order.blade(feeds), order.drilledByHand(), CutOrder.LARGEST_HOLE_SAW);
    List<CutJob.WasteHole> holes = new ArrayList<>();
    List<Contour> circles = new ArrayList<>();
    plan.holes().forEach(hole -> waste(hole, holes, circles));
    List<Hole> drilled =
        plate.holes().stream().filter(hole -> order.drilledByHand().test(hole)).toList();
    CutDrawing drawing =
        CutDrawing.paths(plate, plan.lines())
            .with(centres(plate, drilled))
            .with(new CutDrawing(List.of(CutLayer.of(CutRole.WASTE_HOLES, circles))));
    About about = about(frame, plan.cautions());
    String stem = frame.name() + "-jigsaw";
    CutView view =
        view(
            frame,
            plan.lines().stream().map(CutLine::path).toList(),
            List.of(),
            "rough line, " + mm(plate.making().roughAllowance()) + " off; saw outside it",
            circles,
            List.of(),
            List.of());
    List<OutFile> files =
        List.of(
            new OutFile(stem + ".dxf", DxfWriter.write(drawing, about)),
            new OutFile(stem + ".svg", CutSvgWriter.write(drawing, frame.page(drawing), about)),
            picture(stem, view, about));
    return new Made(bare(frame, holes, plan.notes(), plan.cautions()), files);
  }

  private static void waste(
      JigsawPlan.WasteHole hole, List<CutJob.WasteHole> holes, List<Contour> circles) {
    Contour circle = Contour.circle(hole.at(), hole.diameter() / 2);
    if (!circles.contains(circle)) {
      circles.add(circle);
      holes.add(
          new CutJob.WasteHole(hole.feature().label(), hole.why(), hole.at(), hole.diameter()));
    }
  }

  // What all have in common.

  private static CutDrawing centres(Plate plate, List<Hole> holes) {
    return CutDrawing.centres(
        new Plate(
            plate.name(),
            plate.title(),
            plate.revision(),
            plate.outline(),
            List.of(),
            holes,
            List.of(),
            plate.hub(),
            plate.stock(),
            plate.making(),
            List.of(),
            List.of()),
        CROSS);
  }

  private static CutJob.Layout layout(SheetLayout sheet) {
    return new CutJob.Layout(
        sheet.room().sheet().width(),
        sheet.room().sheet().height(),
        sheet.parts().stream()
            .map(part -> new CutJob.Lying(part.name(), part.at(), part.turn()))
            .toList(),
        sheet.room().keepOut(),
        sheet.used(),
        sheet.yield(),
        sheet.boxesUsed(),
        sheet.boxesYield());
  }

  private static List<CutJob.Left> lefts(List<LeftOver> leftOvers) {
    List<CutJob.Left> lefts = new ArrayList<>();
    for (LeftOver left : leftOvers) {
      lefts.add(
          new CutJob.Left(
              lefts.size() + 1,
              left.feature().label(),
              left.at(),
              left.reach(),
              left.feature().place()));
    }
    return lefts;
  }

  private CutView view(
      Frame frame,
      List<Contour> paths,
      List<Segment> leads,
      String words,
      List<Contour> wasteHoles,
      List<Point> tabs,
      List<LeftOver> leftOvers) {
    List<CutView.LeftOver> lefts = new ArrayList<>();
    for (LeftOver left : leftOvers) {
      lefts.add(
          new CutView.LeftOver(
              lefts.size() + 1, left.feature().label(), left.region(), left.at(), left.reach()));
    }
    return new CutView(
        frame.title() + ", " + order.processName(),
        frame.zero(),
        frame.sheet().map(s -> s.room().all()),
        frame.sheet().map(s -> s.room().keepOut()).orElse(List.of()),
        order.sheet().map(SheetRequest::held).orElse(false),
        frame.plates().stream().map(p -> new CutView.Part(p.name(), p.region())).toList(),
        paths,
        leads,
        words,
        wasteHoles,
        tabs,
        lefts);
  }

  private static OutFile picture(String stem, CutView view, About about) {
    Picture picture = CutPicture.of(view);
    Box page = picture.page();
    double pixels = Math.min(WIDTH, HEIGHT * page.width() / page.height());
    return new OutFile(
        stem + ".png",
        PngWriter.write(
            picture.drawing(), page, picture.pen(), (int) Math.max(1, Math.round(pixels)), about));
  }

  private About about(Frame frame, List<String> cautions) {
    return new About(
        frame.title() + ", " + order.processName(),
        frame.first().revision(),
        String.join(" ", cautions));
  }

  private static String mm(double value) {
    return Numbers.brief(value, 3) + " mm";
  }
}
