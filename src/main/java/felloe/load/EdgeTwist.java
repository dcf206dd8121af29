package felloe.load;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * How much more the faces are twisted beside a free edge than the plate as a whole.
 *
 * <p>A twist dies away toward a free edge. In Reissner's plates, which these are, it does so by exp
 * (-d / l), l being the edge layer, and always evenly through the thickness. In a solid bar it goes
 * by Saint-Venant's series, 8 / pi^2 times the sum over odd n of exp(-n pi d / t) / n^2 at the
 * faces: much the same way inward, but less is taken from the faces than from the middle. The twist
 * at each place is multiplied by what the one leaves over what the other does: 1.10 at one layer,
 * 1.06 at 1.4, 1.02 at 2.4. Without this the faces of a twisted spoke are told 4 percent too low
 * where they are stressed most (computed: CalculiX with solids, two across half the thickness).
 *
 * <p>Within one layer the series goes on, to 1.4 at the edge; but there triangles tell a twist that
 * dies away too roughly to be multiplied by that, and the share falls evenly to none. What is
 * highest on the faces lies farther in, or at the edge itself, where nothing is twisted.
 *
 * <p>Source: Timoshenko and Goodier, Theory of Elasticity, torsion of a rectangular bar, from
 * memory. An orthotropic plate goes the same way with t in the series stretched as its edge layer.
 */
final class EdgeTwist {

  /** Beyond so many edge layers it is less than half a thousandth. */
  private static final double REACH = 6;

  /** Terms of the series: the next is below a thousandth of a millionth at one layer. */
  private static final int TERMS = 9;

  /** The edge layer, in thicknesses, of which n pi is the way of the series. */
  private static final double LAYER = Math.sqrt(0.1);

  /**
   * A place beside a free edge.
   *
   * @param number of three curvatures, which they are
   * @param more how much more the twist is, as a part of it
   * @param nx abscissa of the direction away from the edge
   * @param ny its ordinate
   */
  private record Place(int number, double more, double nx, double ny) {}

  private final List<Place> places = new ArrayList<>();

  /**
   * Finds the places.
   *
   * @param edge the nearest edge of each place where the plate is told
   * @param layer the edge layer, mm
   * @param other places whose nearest edge is held, or that are not of the bare plate
   */
  EdgeTwist(EdgeNearest edge, double layer, IntPredicate other) {
    for (int i = 0; i < edge.off().length; i++) {
      double off = edge.off()[i];
      if (off > 0 && off < REACH * layer && !other.test(i)) {
        Point way = edge.from()[i].minus(edge.at()[i]);
        places.add(new Place(i, more(off / layer), way.x() / off, way.y() / off));
      }
    }
  }

  /** How much more the faces are twisted, as a part, so many edge layers from the edge. */
  static double more(double layers) {
    if (layers < 1) {
      return layers * more(1);
    }
    double taken = 0;
    for (int n = 1; n < 2 * TERMS; n += 2) {
      taken += Math.exp(-n * Math.PI * LAYER * layers) / n / n;
    }
    return (1 - 8 / Math.PI / Math.PI * taken) / (1 - Math.exp(-layers)) - 1;
  }

  /** Makes the twist at each place that of the faces. */
  void correct(double[] curvatures) {
    for (Place place : places) {
      int i = 3 * place.number;
      double nx = place.nx;
      double ny = place.ny;
      double across = nx * nx - ny * ny;
      double twist = 2 * (curvatures[i + 1] - curvatures[i]) * nx * ny + curvatures[i + 2] * across;
      double more = place.more * twist;
      curvatures[i] -= more * nx * ny;
      curvatures[i + 1] += more * nx * ny;
      curvatures[i + 2] += more * across;
    }
  }
}
