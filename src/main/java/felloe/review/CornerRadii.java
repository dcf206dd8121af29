package felloe.review;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Corners of the outline and the windows. A corner is a sharp one, radius 0, or an arc. The
 * tightest corner of each edge is told in any case, and others that are beyond the limit.
 */
sealed interface CornerRadii extends Rule {

  /**
   * How far two edges may turn at a joint and still run on smoothly, in radians; common practice. A
   * cutter of radius r leaves r (1 / cos(turn / 2) - 1) there: 0.01 mm at 10 degrees and 2.5 mm,
   * less than a file takes in a stroke. Curves drawn as chords turn by less.
   */
  double SMOOTH = Math.toRadians(10);

  /** Corners of one edge that are told one by one; the rest is counted. */
  int TOLD = 6;

  /**
   * A corner.
   *
   * @param at its middle
   * @param radius its radius; 0 where it is sharp
   */
  record Corner(Point at, double radius) {}

  @Override
  default String unit() {
    return "mm";
  }

  /**
   * The corners of a contour that turn one way.
   *
   * @param left those that turn left as the contour is travelled counter-clockwise
   */
  static List<Corner> of(Contour contour, boolean left) {
    List<Corner> corners = new ArrayList<>();
    List<Segment> chain = contour.segments();
    for (int i = 0; i < chain.size(); i++) {
      Segment here = chain.get(i);
      if (here instanceof Arc arc && arc.sweep() > 0 == left) {
        corners.add(new Corner(arc.at(0.5), arc.radius()));
      }
      Segment next = chain.get((i + 1) % chain.size());
      Point in = here.tangent(1);
      Point out = next.tangent(0);
      double turn = Math.atan2(in.cross(out), in.dot(out));
      if (Math.abs(turn) > SMOOTH && turn > 0 == left) {
        corners.add(new Corner(here.to(), 0));
      }
    }
    return corners;
  }

  /** Adds the findings for the corners of one edge. */
  default void add(NamedContour edge, boolean left, LimitPair bounds, List<Finding> findings) {
    List<Corner> corners =
        of(edge.contour(), left).stream()
            .sorted(Comparator.comparingDouble(Corner::radius))
            .toList();
    List<Corner> beyond =
        corners.stream().filter(c -> bounds.judge(c.radius()) != Verdict.PASS).toList();
    int more = Math.max(0, beyond.size() - TOLD);
    String rest = more == 0 ? "" : "; the same goes for " + more + " more corners of this edge";
    List<Corner> told = beyond.isEmpty() ? corners : beyond;
    int count = Math.min(beyond.isEmpty() ? 1 : TOLD, told.size());
    for (Corner corner : told.subList(0, count)) {
      findings.add(
          bounds.finding(
              this,
              (corner.radius() == 0 ? "sharp corner of " : "corner of ") + edge.label(),
              "corner radius",
              corner.radius(),
              Optional.of(corner.at()),
              edge.place(),
              "a radius of " + bounds.keeps(corner.radius(), 1) + rest));
    }
  }

  /** Inside corners against the cutter that finishes them. */
  record Inside() implements CornerRadii {

    @Override
    public String id() {
      return "inside-corner";
    }

    @Override
    public String why() {
      return "A round cutter cannot reach into a tighter corner, and a sharp one starts cracks.";
    }

    @Override
    public List<Finding> check(Reviewed of, Limits limits) {
      Plate plate = of.plate();
      double cutter = plate.making().cutterDiameter() / 2;
      LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, cutter);
      List<Finding> findings = new ArrayList<>();
      add(NamedContour.outline(plate), false, bounds, findings);
      plate.windows().forEach(window -> add(NamedContour.of(window), true, bounds, findings));
      return findings;
    }
  }

  /** Outer corners that hands touch. */
  record Outer() implements CornerRadii {

    @Override
    public String id() {
      return "outer-corner";
    }

    @Override
    public String why() {
      return "A sharp outer corner hurts the hand and breaks first.";
    }

    @Override
    public List<Finding> check(Reviewed of, Limits limits) {
      Plate plate = of.plate();
      LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
      List<Finding> findings = new ArrayList<>();
      add(NamedContour.outline(plate), true, bounds, findings);
      for (Window window : plate.windows()) {
        if (window.use() == WindowUse.GRIP) {
          add(NamedContour.of(window), false, bounds, findings);
        }
      }
      return findings;
    }
  }
}
