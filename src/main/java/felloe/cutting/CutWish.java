package felloe.cutting;

import felloe.plate.Plate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a cut is asked for. What is left out is as usual: the plate's own figures, or those of the
 * tables.
 *
 * @param process how the shape is cut from the sheet
 * @param compensated whether paths leave the finish line by half the width that is cut
 * @param direction which way to travel
 * @param figures those that were asked for: lengths in mm, the ramp in degrees, feeds in mm/min,
 *     speeds in 1/min, counts as whole numbers
 * @param drills diameters at hand, none for a maker who bores everything; empty when any size is
 * @param ownerConsents whether the machine's owner allows this material on a laser
 */
public record CutWish(
    CutProcess process,
    boolean compensated,
    CutDirection direction,
    Map<CutFigure, Double> figures,
    Optional<List<Double>> drills,
    boolean ownerConsents) {

  /**
   * Feed of a beam when the maker gave none, mm/min. Only lengths are told from such a plan, never
   * times.
   */
  private static final double ANY_FEED = 1000;

  public CutWish {
    figures = Map.copyOf(figures);
    drills = drills.map(List::copyOf);
  }

  /** Everything as usual. */
  public static CutWish usual(CutProcess process) {
    return new CutWish(process, true, CutDirection.CLIMB, Map.of(), Optional.empty(), false);
  }

  /** Whether the maker gave a figure. */
  boolean asked(CutFigure figure) {
    return figures.containsKey(figure);
  }

  /** Whether times can be told: a beam's feed is known to its owner alone. */
  public boolean timed() {
    return process == CutProcess.ROUTER || asked(CutFigure.FEED);
  }

  private double figure(CutFigure figure, double usual) {
    return figures.getOrDefault(figure, usual);
  }

  /** The width that is cut, on a sheet one for all plates, mm. */
  double width(List<Plate> plates, FeedTable feeds) {
    return switch (process) {
      case ROUTER ->
          figure(
              CutFigure.CUTTER,
              plates.stream().mapToDouble(p -> p.making().cutterDiameter()).min().orElse(0));
      case LASER -> figure(CutFigure.KERF, feeds.laser().width());
      case WATERJET -> figure(CutFigure.KERF, feeds.waterjet().width());
      case JIGSAW -> feeds.blade().kerf();
    };
  }

  /** The V tool, one for all plates; only where its angle was asked for. */
  Optional<VTool> vTool(List<Plate> plates, FeedTable feeds) {
    if (process != CutProcess.ROUTER || !asked(CutFigure.V_ANGLE)) {
      return Optional.empty();
    }
    return Optional.of(
        VTool.of(
            figures.get(CutFigure.V_ANGLE),
            figure(CutFigure.V_TIP, feeds.vTool().tip()),
            plates,
            feeds,
            figure(CutFigure.HIGHEST_SPEED, feeds.highestSpeed())));
  }

  /** The blade of a jigsaw: as asked for, else the shape file's, else the usual one. */
  public JigsawBlade blade(Plate plate, FeedTable feeds) {
    JigsawBlade usual = feeds.blade();
    double width = usual.width();
    double turn = usual.turn();
    if (plate.making().blade().isPresent()) {
      width = plate.making().blade().get().width();
      turn = plate.making().blade().get().turn().orElse(turn);
    }
    return new JigsawBlade(
        figure(CutFigure.BLADE, width), usual.kerf(), figure(CutFigure.TURN, turn));
  }

  /** The largest hole that is drilled, mm; 0 when no drill is at hand. */
  double largestDrill(double usual) {
    return drills.filter(List::isEmpty).isPresent() ? 0 : figure(CutFigure.LARGEST_DRILL, usual);
  }

  /**
   * How a machine cuts a plate.
   *
   * @param width that is cut, mm
   * @param vTool what cuts the upper face, if that was asked for
   */
  CutSetup setup(Plate plate, double width, Optional<VTool> vTool, FeedTable feeds) {
    CutSetup usual =
        process == CutProcess.ROUTER
            ? router(plate, width, feeds)
            : CutSetup.beam(process, plate, width, figure(CutFigure.FEED, ANY_FEED));
    CutSetup.Depths deep = usual.depths();
    CutSetup.Tabs held = usual.tabs();
    double thick = figure(CutFigure.THICKNESS, deep.stock());
    int tabs = (int) figure(CutFigure.TABS, held.count());
    double ramp = figure(CutFigure.RAMP, Math.toDegrees(usual.entry().ramp()));
    return new CutSetup(
        process,
        width,
        usual.flutes(),
        Optional.ofNullable(figures.get(CutFigure.FLUTE_LENGTH)),
        direction,
        new CutSetup.Depths(
            thick,
            figure(CutFigure.BREAKTHROUGH, deep.breakthrough()),
            figure(CutFigure.BED, deep.bed()),
            figure(CutFigure.STEP_DOWN, process == CutProcess.ROUTER ? deep.stepDown() : thick),
            figure(CutFigure.CLEARANCE, deep.clearance()),
            figure(CutFigure.APPROACH, deep.approach())),
        new CutSetup.Entry(Math.toRadians(ramp), figure(CutFigure.LEAD, usual.entry().lead())),
        tabs == 0
            ? CutSetup.Tabs.NONE
            : new CutSetup.Tabs(
                tabs,
                figure(CutFigure.TAB_WIDTH, held.width()),
                figure(CutFigure.TAB_HEIGHT, Math.min(held.height(), thick / 3))),
        new CutSetup.Drills(drills.orElse(List.of()), largestDrill(usual.drills().largest())),
        rates(usual.rates()),
        usual.start(),
        ownerConsents,
        vTool);
  }

  private CutSetup router(Plate plate, double width, FeedTable feeds) {
    // A cutter of no width has no feed; the plan says what is wrong with it.
    double wide = width > 0 ? width : 1;
    int flutes = (int) figure(CutFigure.FLUTES, 1);
    Double speed = figures.get(CutFigure.SPEED);
    StartingFeed start =
        feeds.routing(
            plate.stock().material(),
            wide,
            flutes,
            figure(CutFigure.HIGHEST_SPEED, feeds.highestSpeed()),
            speed == null ? OptionalDouble.empty() : OptionalDouble.of(speed));
    return CutSetup.router(plate, wide, flutes, feeds, start);
  }

  private CutSetup.Rates rates(CutSetup.Rates usual) {
    double feed = figure(CutFigure.FEED, usual.feed());
    return new CutSetup.Rates(
        figure(CutFigure.SPEED, usual.speed()),
        feed,
        figure(CutFigure.RAMP_FEED, feed > 0 ? feed / 2 : usual.rampFeed()),
        figure(CutFigure.TRAVEL, usual.travel()),
        figure(CutFigure.DRILL_SURFACE_SPEED, usual.drillSurfaceSpeed()),
        figure(CutFigure.DRILL_FEED, usual.drillFeed()),
        figure(CutFigure.HIGHEST_SPEED, usual.highestSpeed()));
  }
}
