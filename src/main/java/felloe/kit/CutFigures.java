package felloe.kit;

import felloe.cutting.CutPlan;
import felloe.cutting.CutProcess;
import felloe.cutting.CutSetup;
import felloe.cutting.FeedTable;
import felloe.cutting.MachineJob;
import felloe.cutting.OperationFigures;
import felloe.cutting.StartingFeed;
import felloe.cutting.SweepResult;
import felloe.plate.Note;
import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells steps, figures and notes of a machine's work, each figure with where it comes from. */
final class CutFigures {

  private final CutOrder order;
  private final FeedTable feeds;

  CutFigures(CutOrder order, FeedTable feeds) {
    this.order = order;
    this.feeds = feeds;
  }

  /** A step. */
  CutJob.Step step(MachineJob.Step step) {
    return new CutJob.Step(
        step.operation().title(),
        step.operation().tool().name(),
        step.operation().speed(),
        step.figures().cut(),
        time(step.figures()));
  }

  /** All of them. */
  CutJob.Step total(OperationFigures figures) {
    return new CutJob.Step("total", "", 0, figures.cut(), time(figures));
  }

  private Optional<Double> time(OperationFigures figures) {
    return order.timed() ? Optional.of(figures.minutes()) : Optional.empty();
  }

  /** What the maker should know. */
  List<Note> notes(MachineJob work) {
    List<Note> notes = new ArrayList<>(work.notes());
    Plate plate = work.first().plate();
    if (order.process() == CutProcess.ROUTER) {
      StartingFeed start = work.first().setup().start().orElseThrow();
      notes.add(new Note(plate.stock().place(), start.note()));
      start.wear().ifPresent(wear -> notes.add(new Note(plate.stock().place(), wear.note())));
    }
    return notes;
  }

  /** What the check measured. */
  CutJob.Proof proof(MachineJob work) {
    SweepResult result = work.proof();
    return new CutJob.Proof(
        result.worstGouge(),
        result.worstRemaining(),
        result.worstArc(),
        result.deepest(),
        work.decimals());
  }

  /** What the paths were made with. */
  List<SourcedFigure> figures(CutPlan plan, double cutter) {
    List<SourcedFigure> figures = new ArrayList<>();
    CutSetup setup = plan.setup();
    if (order.process() != CutProcess.ROUTER) {
      String basis =
          order.process() == CutProcess.LASER ? feeds.laser().basis() : feeds.waterjet().basis();
      figures.add(based("kerf", cutter, "mm", "--kerf", basis));
      if (order.timed()) {
        figures.add(based("feed", setup.rates().feed(), "mm/min", "--feed", ""));
      }
      return figures;
    }
    StartingFeed start = setup.start().orElseThrow();
    CutSetup.Rates rates = setup.rates();
    figures.add(based("cutter", cutter, "mm", "--cutter", "the shape file's making.cutter"));
    figures.add(based("flutes", setup.flutes(), "", "--flutes", "one, on the safe side"));
    figures.add(based("spindle speed", rates.speed(), "1/min", "--speed", start.basis()));
    figures.add(based("feed", rates.feed(), "mm/min", "--feed", start.basis()));
    double chip = rates.feed() / (rates.speed() * setup.flutes());
    figures.add(new SourcedFigure("chip load", chip, "mm", "feed / (speed x flutes)"));
    double surface = Math.PI * cutter * rates.speed() / 1000;
    figures.add(new SourcedFigure("surface speed", surface, "m/min", "pi x cutter x speed"));
    figures.add(based("step-down", setup.depths().stepDown(), "mm", "--step-down", start.basis()));
    double ramp = Math.toDegrees(setup.entry().ramp());
    figures.add(based("ramp", ramp, "deg", "--ramp", start.basis()));
    figures.add(based("ramp feed", rates.rampFeed(), "mm/min", "--ramp-feed", "half the feed"));
    if (!MachineJob.drilled(plan).isEmpty()) {
      figures.add(
          based(
              "drill surface speed",
              rates.drillSurfaceSpeed(),
              "m/min",
              "--drill-surface-speed",
              start.basis()));
      figures.add(
          based("drill feed", rates.drillFeed(), "mm a turn", "--drill-feed", start.basis()));
    }
    return figures;
  }

  private SourcedFigure based(String name, double value, String unit, String option, String basis) {
    return new SourcedFigure(name, value, unit, order.asked(option) ? "as asked for" : basis);
  }
}
