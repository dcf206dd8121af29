package felloe.grips;

import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The girth of a grip at every 5 mm along it. */
public final class GripStations {

  /** Distance of the places, mm. */
  public static final double STEP = 5;

  /** Farther in than this nothing is looked for, mm. */
  private static final double FAR = 10_000;

  /** No finger goes round what lies farther in than this past the grip, mm: common practice. */
  private static final double REACH = 30;

  private GripStations() {}

  /**
   * How far the plate goes on inward from its edge.
   *
   * @param width mm
   * @param held whether fingers go through what lies there
   * @param window label of the window that lies there; empty beyond the outline
   */
  public record Web(double width, boolean held, Optional<String> window) {}

  /** The places at equal distances of about 5 mm, both ends with them, clockwise. */
  public static List<GripStation> of(Plate plate, PlacedGrip grip) {
    GripRun run = grip.run();
    int steps = (int) Math.ceil(run.length() / STEP);
    List<GripStation> all = new ArrayList<>();
    double broken = plate.making().edges().edgeBreak();
    for (int i = 0; i <= (run.closed() ? steps - 1 : steps); i++) {
      double way = run.length() * i / steps;
      double s = run.length() - way;
      Web web = web(plate, run, s);
      boolean held = web.held() && web.width() <= grip.over() + REACH;
      Optional<Double> girth =
          held
              ? Optional.of(grip.section(s).girth(plate.stock().asMade(), web.width(), broken))
              : Optional.empty();
      all.add(
          new GripStation(
              way, run.at(s, 0), web.width(), held, held ? web.window() : Optional.empty(), girth));
    }
    return all;
  }

  /** How far the plate goes on inward from a place on its edge. */
  public static Web web(Plate plate, GripRun run, double s) {
    Point from = run.at(s, 0);
    Line ray = new Line(run.at(s, 2 * Tolerances.SAME_POINT), run.at(s, FAR));
    double nearest = first(ray, from, plate.outline());
    boolean held = true;
    Optional<String> label = Optional.empty();
    for (Window window : plate.windows()) {
      double at = first(ray, from, window.contour());
      if (at < nearest) {
        nearest = at;
        held = window.use() == WindowUse.GRIP;
        label = Optional.of(window.label());
      }
    }
    return new Web(nearest, held, label);
  }

  private static double first(Line ray, Point from, Contour contour) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Segment segment : contour.segments()) {
      for (Point p : Gap.meetings(ray, segment)) {
        nearest = Math.min(nearest, p.distance(from));
      }
    }
    return nearest;
  }
}
