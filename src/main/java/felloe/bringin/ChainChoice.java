package felloe.bringin;

import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Of several chains of one edge the one that lies best on what was seen along all of them: along
 * itself a chain sees little of a bend that it cuts off.
 */
final class ChainChoice {

  /** What a place lies off a chain that is right, standard deviation, mm; from rendered scenes. */
  private static final double SPREAD = 0.03;

  /** What a stretch costs, and a millimetre of the edge that is far off, in squares of that. */
  private static final double STRETCH = 20;

  private static final double FAR = 64;

  /** The same of what was seen before no farther off than the wall is wide. */
  private static final double MISLED = 8;

  /** Between places of the edge as it was seen before, mm. */
  private static final double APART = 1;

  private ChainChoice() {}

  /** A place of the edge that stands for so much of it, mm. */
  private record Weighed(Point at, double along) {}

  /**
   * Chooses.
   *
   * @param chains at least one
   * @param seen along each of them
   * @param before the edge, a place each millimetre, as it was seen before there was a chain
   * @param far what lies farther off than this is none of a chain, mm
   * @param wall how wide the wall may look at a place, mm: before there was a chain, a bend was
   *     seen at its upper edge, its foot, or between
   */
  static EdgeChain of(
      List<EdgeChain> chains,
      List<List<EdgeChain.Measured>> seen,
      List<Point> before,
      double far,
      ToDoubleFunction<Point> wall) {
    List<Weighed> places = new ArrayList<>();
    for (int i = 0; i < chains.size(); i++) {
      EdgeChain chain = chains.get(i);
      List<Segment> segments = chain.segments();
      int[] looked = new int[segments.size()];
      for (EdgeChain.Site site : chain.sites()) {
        looked[site.stretch()]++;
      }
      for (EdgeChain.Measured m : seen.get(i)) {
        int k = m.stretch();
        double along = segments.get(k).length() / Math.max(1, looked[k]);
        places.add(new Weighed(m.at(), along / chains.size()));
      }
    }
    EdgeChain best = chains.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (EdgeChain chain : chains) {
      List<Segment> segments = chain.segments();
      double cost = STRETCH * segments.size();
      for (Weighed place : places) {
        double off = off(segments, place.at()) / SPREAD;
        cost += Math.min(FAR, off * off) * place.along();
      }
      for (Point p : before) {
        double off = off(segments, p);
        cost += off > far + wall.applyAsDouble(p) ? FAR : off > far ? MISLED : 0;
      }
      // What a chain has where no edge is costs as much as what it leaves out.
      for (Point p : chain.places()) {
        cost += before.stream().noneMatch(b -> b.distance(p) < far + APART) ? FAR : 0;
      }
      if (cost < least) {
        best = chain;
        least = cost;
      }
    }
    return best;
  }

  /** How far a place lies off the nearest of all, mm. */
  static double off(List<Segment> segments, Point p) {
    return segments.stream().mapToDouble(s -> s.distance(p)).min().orElseThrow();
  }
}
