package felloe.report;

import felloe.cutting.CutJob;
import felloe.cutting.CutLine;
import felloe.cutting.CutSetup;
import felloe.cutting.CutTab;
import felloe.cutting.JigsawPlan;
import felloe.cutting.LeftOver;
import felloe.cutting.MachineJob;
import felloe.cutting.Operation;
import felloe.cutting.OperationFigures;
import felloe.cutting.SheetLayout;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.drawing.CutView;
import felloe.geometry.Contour;
import felloe.geometry.Segment;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.plate.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is cut, as its files and its picture say and show it. */
public final class CutMap {

  private CutMap() {}

  /** What is cut. */
  public static String title(CutJob job) {
    String titles = String.join("; ", job.shapes().stream().map(Plate::title).toList());
    return job.layout().isPresent() ? "Sheet: " + titles : titles;
  }

  /** What is cut, and by what, as files say it of themselves. */
  public static String about(CutJob job) {
    return title(job) + ", " + job.wish().process().word();
  }

  /** Where x, y and z are 0. */
  public static String zero(CutJob job) {
    return (job.layout().isPresent() ? "lower left corner of the sheet" : "hub axis")
        + ", upper face of the stock";
  }

  /**
   * A step of the work, or all of it together.
   *
   * @param title what is done
   * @param tool its name; empty for all of it
   * @param speed of the spindle, 1/min; 0 where there is none
   * @param cut length of the cut, mm
   * @param minutes that it takes, where feeds are known
   */
  public record Line(
      String title, String tool, double speed, double cut, Optional<Double> minutes) {}

  /** The steps, in order. */
  public static List<Line> lines(CutJob job, MachineJob machine) {
    return machine.steps().stream()
        .map(step -> line(job, step.operation(), step.figures()))
        .toList();
  }

  private static Line line(CutJob job, Operation done, OperationFigures figures) {
    return new Line(
        done.title(), done.tool().name(), done.speed(), figures.cut(), job.minutes(figures));
  }

  /** All steps together. */
  public static Line total(CutJob job, MachineJob machine) {
    OperationFigures all = machine.total();
    return new Line("total", "", 0, all.cut(), job.minutes(all));
  }

  /** What the head of a program says of its job. */
  public static List<String> head(CutJob job) {
    MachineJob machine = job.machine().orElseThrow();
    CutSetup.Depths depths = machine.first().setup().depths();
    List<String> lines = new ArrayList<>();
    lines.add(
        Phrase.of(
            "Stock: {}, {}; below it {} of spoil board",
            machine.first().plate().stock().material().title(),
            thick(machine.first().plate().stock(), depths.stock()),
            mm(depths.bed())));
    int tabs = machine.tabs().size();
    lines.add(tabs == 0 ? "No tabs: hold the part down" : "Tabs: " + tabs);
    int left = machine.leftOvers().size();
    if (left > 0) {
      lines.add(Phrase.of("Left for the file: {}, see the picture", places(left)));
    }
    return lines;
  }

  /** The picture's view; bare finish lines have none. */
  public static Optional<CutView> of(CutJob job) {
    return job.machine()
        .map(machine -> machine(job, machine))
        .or(() -> job.saw().map(plan -> saw(job, plan)));
  }

  private static CutView machine(CutJob job, MachineJob machine) {
    List<CutView.LeftOver> left = new ArrayList<>();
    for (LeftOver one : machine.leftOvers()) {
      left.add(
          new CutView.LeftOver(
              left.size() + 1, one.feature().label(), one.region(), one.at(), one.reach()));
    }
    List<Segment> leads = machine.plans().stream().flatMap(p -> p.leads().stream()).toList();
    String tool = machine.steps().get(machine.steps().size() - 1).operation().tool().name();
    return view(job, machine.lines(), leads, "path of the middle of the " + tool, List.of(), left);
  }

  private static CutView saw(CutJob job, JigsawPlan plan) {
    String words =
        Phrase.of(
            "rough line, {} off; saw outside it",
            Quantity.mm(job.shapes().get(0).making().roughAllowance()));
    return view(job, plan.lines(), List.of(), words, plan.circles(), List.of());
  }

  private static CutView view(
      CutJob job,
      List<CutLine> lines,
      List<Segment> leads,
      String words,
      List<Contour> wasteHoles,
      List<CutView.LeftOver> left) {
    Optional<SheetLayout> layout = job.layout();
    return new CutView(
        about(job),
        zero(job),
        layout.map(sheet -> sheet.room().all()),
        layout.map(sheet -> sheet.room().keepOut()).orElse(List.of()),
        layout.map(SheetLayout::held).orElse(false),
        job.plates().stream().map(p -> new CutView.Part(p.name(), p.region())).toList(),
        job.plates().stream()
            .flatMap(p -> p.engravings(Face.FRONT).stream())
            .flatMap(engraving -> engraving.strokes().stream())
            .toList(),
        lines.stream().map(CutLine::path).toList(),
        leads,
        words,
        wasteHoles,
        job.machine().stream().flatMap(m -> m.tabs().stream()).map(CutTab::at).toList(),
        left);
  }

  /** A number of places. */
  static String places(int count) {
    return Phrase.count(count, "place");
  }

  /**
   * The thickness that paths are made for; what the stack comes to beside it, unless the maker gave
   * a thickness for this cut.
   */
  static String thick(Stock stock, double thick) {
    return thick == stock.thickness() ? stock.thicknessWords() : mm(thick).text();
  }

  /** A length with at most three places. */
  static Quantity mm(double value) {
    return Quantity.brief(value, 3, "mm");
  }
}
