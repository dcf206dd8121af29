package felloe.cutting;

import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.List;

/** Where the figures of a machine's work come from. */
final class CutSources {

  private final CutWish wish;
  private final List<SourcedFigure> figures = new ArrayList<>();

  private CutSources(CutWish wish) {
    this.wish = wish;
  }

  /** What the paths were made with. */
  static List<SourcedFigure> of(CutWish wish, MachineJob work, FeedTable feeds) {
    CutSources sources = new CutSources(wish);
    switch (wish.process()) {
      case ROUTER -> sources.router(work, feeds);
      case LASER -> sources.beam(work.first().setup(), feeds.laser().basis());
      case WATERJET -> sources.beam(work.first().setup(), feeds.waterjet().basis());
      case JIGSAW -> throw new IllegalArgumentException("a saw is no machine");
    }
    return sources.figures;
  }

  private void beam(CutSetup setup, String basis) {
    add(CutFigure.KERF, "kerf", setup.cutter(), "mm", basis);
    if (wish.timed()) {
      add(CutFigure.FEED, "feed", setup.rates().feed(), "mm/min", "");
    }
  }

  private void router(MachineJob work, FeedTable feeds) {
    CutSetup setup = work.first().setup();
    StartingFeed start = setup.start().orElseThrow();
    CutSetup.Rates rates = setup.rates();
    add(CutFigure.CUTTER, "cutter", setup.cutter(), "mm", "the shape file's making.cutter");
    add(CutFigure.FLUTES, "flutes", setup.flutes(), "", "one, on the safe side");
    add(CutFigure.SPEED, "spindle speed", rates.speed(), "1/min", start.basis());
    add(CutFigure.FEED, "feed", rates.feed(), "mm/min", start.basis());
    double chip = rates.feed() / (rates.speed() * setup.flutes());
    figures.add(new SourcedFigure("chip load", chip, "mm", "feed / (speed x flutes)"));
    double surface = Math.PI * setup.cutter() * rates.speed() / 1000;
    figures.add(new SourcedFigure("surface speed", surface, "m/min", "pi x cutter x speed"));
    add(CutFigure.STEP_DOWN, "step-down", setup.depths().stepDown(), "mm", start.basis());
    add(CutFigure.RAMP, "ramp", Math.toDegrees(setup.entry().ramp()), "deg", start.basis());
    add(CutFigure.RAMP_FEED, "ramp feed", rates.rampFeed(), "mm/min", "half the feed");
    setup.vTool().ifPresent(tool -> vTool(tool, feeds));
    if (work.plans().stream().anyMatch(plan -> !MachineJob.drilled(plan).isEmpty())) {
      add(
          CutFigure.DRILL_SURFACE_SPEED,
          "drill surface speed",
          rates.drillSurfaceSpeed(),
          "m/min",
          start.basis());
      add(CutFigure.DRILL_FEED, "drill feed", rates.drillFeed(), "mm a turn", start.basis());
    }
  }

  private void vTool(VTool tool, FeedTable feeds) {
    add(CutFigure.V_ANGLE, "V tool", Math.toDegrees(tool.angle()), "deg", "");
    add(CutFigure.V_TIP, "V tool's tip", tool.tip(), "mm", feeds.vTool().basis());
    String depth = "the deepest that is cut, and the angle";
    figures.add(new SourcedFigure("V tool's least width", tool.width(), "mm", depth));
    figures.add(new SourcedFigure("V tool's speed", tool.speed(), "1/min", tool.basis()));
    figures.add(new SourcedFigure("V tool's feed", tool.feed(), "mm/min", tool.basis()));
  }

  private void add(CutFigure figure, String name, double value, String unit, String basis) {
    figures.add(new SourcedFigure(name, value, unit, wish.asked(figure) ? "as asked for" : basis));
  }
}
