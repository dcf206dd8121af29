package felloe.load;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.Fineness;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where the next mesh is to be finer: about a place where a plate was used most.
 *
 * <p>What is judged at its very edge gets a stretch of that edge, and not one place: about one fine
 * place among coarse ones the coarse ones bend too little, and the fine place makes up for it. With
 * one place fillets of 4 to 10 mm were told 3 percent too high, and up to 6, with a stretch within
 * 1.
 *
 * @param region the material, mm
 * @param section the plate through its thickness
 */
record WorstSpots(Region region, PlateSection section) {

  /**
   * Places of a case with so much of its highest use are made finer too: what is symmetric has its
   * worst place twice, and the one that was left coarse told laminates up to 3 percent wrongly.
   */
  private static final double LIKE = 0.95;

  /** How far they are from each other at least, in longest edges, and how many they are at most. */
  private static final double APART = 3;

  private static final int MOST = 4;

  /**
   * Edges where a laminate is judged beside an edge, in the distance from it at which it is judged:
   * with 1 it is told 2 percent too high there, with this within 1.
   */
  private static final double AT_POINT = 0.6;

  /** Edges on a tight arc, as a part of its radius. */
  private static final double ON_ARC = 0.1;

  /**
   * The same where stresses fall off more steeply than in what is alike in all directions, times
   * how much more steeply: without it plywood's fillets were told 4 to 8 percent too low.
   */
  private static final double STEEPLY = 0.09;

  /** Edges elsewhere, in edge layers: within one a twist dies away, and the stress has its peak. */
  private static final double IN_LAYER = 1.0 / 3;

  /** No edges need be shorter, in edge layers: with them small holes are told within 5 percent. */
  private static final double SHORTEST = 0.12;

  /** How far a stretch goes each way, as a part of the radius, and at most in edge layers. */
  private static final double ALONG_ARC = 0.5;

  private static final double MOST_LAYERS = 3;

  /** Edges about a place in a mesh without an edge layer, as a part of its longest. */
  private static final double QUARTER = 0.25;

  /**
   * About the places that are used most.
   *
   * @param last what the mesh before tells
   * @param edge the longest edge of the next mesh, mm
   */
  List<Fineness.Spot> about(LoadResult last, double edge) {
    double most = last.worst().worst().use();
    List<Fineness.Spot> spots = new ArrayList<>();
    for (CaseField field : last.cases()) {
      boolean matters = field.worst().use() >= LoadStudy.MATTERS * most;
      List<Point> peaks = matters ? peaks(field, last.mesh(), edge) : List.of(field.worstAt());
      for (Point peak : peaks) {
        spots.addAll(about(peak, edge));
      }
    }
    return spots;
  }

  /** Places of nearly the highest use, well apart: that of a case and its likes. */
  private static List<Point> peaks(CaseField field, PlateMesh mesh, double edge) {
    double[] uses = field.uses();
    List<Point> peaks = new ArrayList<>();
    peaks.add(field.worstAt());
    int[] high =
        field.judged().stream()
            .filter(i -> i < mesh.nodes() && uses[i] >= LIKE * field.worst().use())
            .boxed()
            .sorted((a, b) -> Double.compare(uses[b], uses[a]))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int i : high) {
      Point p = mesh.point(i);
      if (peaks.size() < MOST && peaks.stream().allMatch(q -> q.distance(p) > APART * edge)) {
        peaks.add(p);
      }
    }
    return peaks;
  }

  /**
   * About a place.
   *
   * @param edge the longest edge of the next mesh, mm
   */
  List<Fineness.Spot> about(Point worst, double edge) {
    if (section.edgeRows().isEmpty()) {
      return List.of(new Fineness.Spot(worst, QUARTER * edge));
    }
    double layer = section.edgeLayer();
    double inLayer = Math.min(QUARTER * edge, IN_LAYER * layer);
    List<Fineness.Spot> spots = new ArrayList<>();
    Contour near =
        region.contours().stream()
            .min(Comparator.comparingDouble(c -> c.distance(worst)))
            .orElseThrow();
    // Laminates are judged farther in than their edge.
    boolean laminate = section.strength().plies() > 0;
    double point = JudgingBook.builtIn().pointStress();
    if (near.distance(worst) > (laminate ? 2 * point : MOST_LAYERS * layer)) {
      spots.add(new Fineness.Spot(worst, inLayer));
    } else {
      double fine = laminate ? Math.min(inLayer, AT_POINT * point) : inLayer;
      stretch(new ArcLengthIndex(near), near.nearest(worst), fine, spots);
    }
    return spots;
  }

  private void stretch(
      ArcLengthIndex course, Point middle, double inLayer, List<Fineness.Spot> spots) {
    double layer = section.edgeLayer();
    double along = course.position(middle);
    double radius = 1 / Math.abs(course.curvature(along));
    double steep = steep(course.tangent(along));
    double onArc = Math.min(ON_ARC, STEEPLY / steep) * radius;
    double edge = Math.max(SHORTEST * layer / steep, Math.min(onArc, inLayer));
    double half = Math.min(ALONG_ARC * radius, MOST_LAYERS * layer);
    int each = (int) Math.ceil(2 * half / edge);
    for (int i = -each; i <= each; i++) {
      spots.add(new Fineness.Spot(course.at(along + half * i / each), edge));
    }
  }

  /**
   * How much more steeply stresses fall off square to an edge than in what is alike in all
   * directions, at least 1: the greatest imaginary part of the roots of the plane's equation,
   * turned into the edge's direction.
   *
   * <p>Beside small openings a plate that gives in shear is stressed as if it were pulled in its
   * plane. Plywood that is 18 times as stiff along the grain as in shear has 4 there. Source:
   * Lekhnitskii, Anisotropic Plates, from memory. It takes the section's own axes as those in which
   * pulls make no shear, which all sheets have that are judged at their very edge.
   */
  private double steep(Point tangent) {
    PlaneStiffness a = section.a();
    double s11 = a.underPull(1, 0, 0)[0];
    double s12 = a.underPull(1, 0, 0)[1];
    double s22 = a.underPull(0, 1, 0)[1];
    double s66 = a.underPull(0, 0, 1)[2];
    double mean = (2 * s12 + s66) / s11 / 2;
    double apart = Math.sqrt(Math.max(0, mean * mean - s22 / s11));
    double xx = tangent.x() * tangent.x();
    double yy = tangent.y() * tangent.y();
    double steep = 1;
    for (double square : new double[] {mean - apart, mean + apart}) {
      steep = Math.max(steep, Math.sqrt(square) / (xx + square * yy));
    }
    return steep;
  }
}
