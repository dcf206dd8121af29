package felloe.kit;

import felloe.cutting.CutJob;
import felloe.cutting.CutPlan;
import felloe.cutting.CutProcess;
import felloe.cutting.Dialect;
import felloe.cutting.JigsawPlan;
import felloe.cutting.MachineJob;
import felloe.drawing.CutPicture;
import felloe.drawing.CutView;
import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.geometry.Box;
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
import felloe.plate.Plate;
import felloe.report.CutMap;
import felloe.service.CutOutcome;
import java.util.ArrayList;
import java.util.List;

/** The files of a cut: drawings of what a machine follows, a picture, a router's program. */
public final class CutFiles {

  /** Room round a drawing, mm. */
  private static final double EDGE = 5;

  /** Arms of the crosses at centres, mm. */
  private static final double CROSS = 5;

  private static final int PIXELS = 1800;

  private CutFiles() {}

  /** With the files of every job, each in its shape's folder; what shapes share goes beside. */
  public static Transaction into(Transaction files, CutOutcome outcome) {
    Transaction all = files;
    for (CutJob job : outcome.jobs()) {
      List<OutFile> made = of(job, outcome.request().dialect(), outcome.request().coolant());
      String set =
          "cut-"
              + job.wish().process().word()
              + (job.wish().compensated() ? "" : "-uncompensated")
              + (job.layout().isPresent() ? "-sheet" : "");
      Plate first = job.shapes().get(0);
      String owner = outcome.owner(job).name();
      String part = first.name().substring(owner.length());
      all =
          job.shapes().size() == 1
              ? all.folder(owner, KitNames.set(set + part, first, made))
              : all.here(new FileSet(set, "", made));
    }
    return all;
  }

  private static List<OutFile> of(CutJob job, Dialect dialect, boolean coolant) {
    String stem = job.name() + "-" + job.wish().process().word();
    boolean lines = job.machine().isEmpty() && job.saw().isEmpty();
    CutDrawing drawing = drawing(job);
    About about = about(job);
    String name = lines ? stem + "-finish-line" : stem;
    List<OutFile> files = new ArrayList<>();
    CutDrawing marked = job.machine().map(m -> drawing.with(drilled(m))).orElse(drawing);
    files.add(new OutFile(name + ".dxf", DxfWriter.write(marked, about)));
    Box page = job.layout().map(s -> s.room().all()).orElseGet(() -> drawing.box().grown(EDGE));
    files.add(new OutFile(name + ".svg", CutSvgWriter.write(drawing, page, about)));
    if (job.machine().isPresent() && job.wish().process() == CutProcess.ROUTER) {
      files.add(new OutFile(stem + ".nc", program(job, dialect, coolant)));
    }
    CutMap.of(job).ifPresent(view -> files.add(picture(stem + ".png", view, about)));
    return files;
  }

  private static CutDrawing drawing(CutJob job) {
    if (job.machine().isPresent()) {
      boolean beam = job.wish().process() != CutProcess.ROUTER;
      return job.machine().get().plans().stream()
          .map(plan -> beam ? CutDrawing.beam(plan) : CutDrawing.paths(plan))
          .reduce(CutDrawing::with)
          .orElseThrow();
    }
    if (job.saw().isPresent()) {
      JigsawPlan plan = job.saw().get();
      return CutDrawing.paths(job.shapes().get(0), plan.lines())
          .with(CutDrawing.centres(plan.drilled(), CROSS))
          .with(new CutDrawing(List.of(CutLayer.of(CutRole.WASTE_HOLES, plan.circles()))));
    }
    return job.plates().stream().map(CutDrawing::finish).reduce(CutDrawing::with).orElseThrow();
  }

  /** Centres of what is drilled, which a router's drawing shows and nothing follows. */
  private static CutDrawing drilled(MachineJob machine) {
    List<Hole> holes = new ArrayList<>();
    for (CutPlan plan : machine.plans()) {
      holes.addAll(MachineJob.drilled(plan));
    }
    return CutDrawing.centres(holes, CROSS);
  }

  /** A router's program. */
  static byte[] program(CutJob job, Dialect dialect, boolean coolant) {
    MachineJob machine = job.machine().orElseThrow();
    GcodeJob program =
        new GcodeJob(
            about(job),
            CutMap.zero(job),
            CutMap.head(job),
            machine.first().height(),
            coolant,
            machine.steps().stream().map(MachineJob.Step::operation).toList());
    return GcodeWriter.write(program, dialect);
  }

  private static OutFile picture(String name, CutView view, About about) {
    return new OutFile(name, PngWriter.write(CutPicture.of(view), PIXELS, about));
  }

  private static About about(CutJob job) {
    return new About(
        CutMap.about(job), job.plates().get(0).revision(), String.join(" ", job.work().cautions()));
  }
}
