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
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finger room in grip windows, for the bare and for the gloved hand.
 *
 * <p>A window has one finding: it fails where no bare hand finds room, and asks for a decision
 * where a gloved one does not.
 *
 * <p>Depth is the diameter of the largest circle that the window holds, never told too large.
 * Length is what four fingers side by side find: the row of places where a finger fits (the window
 * drawn in by half a finger all round), measured square to the line from the hub axis to the
 * window's middle, and one finger added.
 *
 * @param measure depth or length
 */
record FingerRoom(Measure measure) implements Rule {

  /** What is measured. */
  enum Measure {
    /** How far fingers go in. */
    DEPTH("finger-depth", "Fingers must go through a grip window.", "clear depth"),
    /** How many find room side by side. */
    LENGTH("finger-length", "Four fingers must lie side by side in a grip window.", "clear length");

    private final String id;
    private final String why;
    private final String figure;

    Measure(String id, String why, String figure) {
      this.id = id;
      this.why = why;
      this.figure = figure;
    }
  }

  @Override
  public String id() {
    return measure.id;
  }

  @Override
  public String why() {
    return measure.why;
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    LimitPair bare = limits.of(this, "bare", Sense.AT_LEAST, 1);
    LimitPair gloved = limits.of(this, "gloved", Sense.AT_LEAST, 1);
    LimitPair both = bare.stricter(gloved);
    List<Finding> findings = new ArrayList<>();
    for (Window window : of.plate().windows()) {
      if (window.use() == WindowUse.GRIP) {
        Point at = window.contour().properties().centroid();
        double room;
        if (measure == Measure.DEPTH) {
          LargestCircle circle = LargestCircle.inside(window.contour());
          at = circle.centre();
          // A wrap goes round the rim's inner edge too, and takes its thickness off the room.
          room = 2 * circle.radius() - of.joints().grips().wrapInto(window.label());
        } else {
          room = clearLength(window.contour(), limits.figure("finger"));
        }
        findings.add(
            both.finding(
                this,
                window.label(),
                measure.figure,
                room,
                Optional.of(at),
                window.place(),
                both.lacks(room, 1) + hands(bare.good(), gloved.good(), room)));
      }
    }
    return findings;
  }

  /** What each hand wants, where they differ. */
  private static String hands(Optional<Limit> bare, Optional<Limit> gloved, double room) {
    if (bare.isEmpty() || gloved.isEmpty() || bare.get().value() == gloved.get().value()) {
      return "";
    }
    return "; a bare hand wants "
        + Numbers.brief(bare.get().value(), 2)
        + " mm"
        + (bare.get().keeps(LimitPair.rounded(room)) ? " and has them" : "")
        + ", a gloved one "
        + Numbers.brief(gloved.get().value(), 2)
        + " mm";
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

  /** Where the middle of a finger may be, {@code by} mm from the window's edge or more. */
  static List<Region> fingerPlaces(Contour window, double by) {
    try {
      return Offset.of(window, -by);
    } catch (GeometryException onTheEdge) {
      // Two places of it just touch, and part with a hair more.
      return Offset.of(window, -by - 0.01);
    }
  }
}
