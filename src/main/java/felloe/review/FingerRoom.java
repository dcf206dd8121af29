package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.LargestCircle;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finger room in grip windows, for the bare or the gloved hand.
 *
 * <p>Depth is the diameter of the largest circle that the window holds, known to 0.1 mm and never
 * told too large. Length is what four fingers side by side find: the row of places where a finger
 * fits (the window drawn in by half a finger all round), measured square to the line from the hub
 * axis to the window's middle, and one finger added.
 *
 * @param measure depth or length
 * @param gloved which hand
 */
record FingerRoom(Measure measure, boolean gloved) implements Rule {

  private static final double ACCURACY = 0.05;

  /** What is measured. */
  enum Measure {
    DEPTH,
    LENGTH
  }

  @Override
  public String id() {
    return (measure == Measure.DEPTH ? "finger-depth-" : "finger-length-")
        + (gloved ? "gloved" : "bare");
  }

  @Override
  public String why() {
    String hand = gloved ? "a gloved hand" : "the bare hand";
    return measure == Measure.DEPTH
        ? "The fingers of " + hand + " must go through a grip window."
        : "Four fingers of " + hand + " must lie side by side in a grip window.";
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Plate plate, Limits limits) {
    Bounds bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    List<Finding> findings = new ArrayList<>();
    for (Window window : plate.windows()) {
      if (window.use() == WindowUse.GRIP) {
        findings.add(
            measure == Measure.DEPTH
                ? depth(window, bounds)
                : length(window, bounds, limits.figure("finger")));
      }
    }
    return findings;
  }

  private Finding depth(Window window, Bounds bounds) {
    LargestCircle circle = LargestCircle.inside(window.contour(), ACCURACY);
    return finding(window, "clear depth", 2 * circle.radius(), circle.centre(), bounds);
  }

  private Finding length(Window window, Bounds bounds, double finger) {
    Point middle = window.contour().properties().centroid();
    return finding(window, "clear length", clearLength(window.contour(), finger), middle, bounds);
  }

  private Finding finding(Window window, String name, double figure, Point at, Bounds bounds) {
    String missing =
        Numbers.brief(bounds.good().map(Limit::value).orElse(0.0) - Bounds.rounded(figure), 1);
    return bounds.finding(
        this,
        window.label(),
        name,
        figure,
        Optional.of(at),
        window.place(),
        "make the window " + missing + " mm " + (measure == Measure.DEPTH ? "deeper" : "longer"));
  }

  /** Room for fingers side by side; 0 where no finger goes in. */
  static double clearLength(Contour window, double finger) {
    Point middle = window.properties().centroid();
    Point reach = middle.norm() < 1 ? new Point(0, 1) : middle.unit();
    double longest = 0;
    for (Region row : fingerPlaces(window, finger / 2)) {
      longest = Math.max(longest, new Extent(row.outer()).along(reach.left()) + finger);
    }
    return longest;
  }

  private static List<Region> fingerPlaces(Contour window, double by) {
    try {
      return Offset.of(window, -by);
    } catch (GeometryException onTheEdge) {
      // Two places of it just touch, and part with a hair more.
      return Offset.of(window, -by - 0.01);
    }
  }
}
