package felloe.load;

import felloe.geometry.Point;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Which nodes of a mesh a support holds.
 *
 * @param nodes the three unknowns of each, in bending as in the plane
 * @param bolts for each bolt the nodes under its head; empty when clamped
 * @param face nodes before the hub's face that it could push; empty when clamped
 */
record HeldPoints(BitSet nodes, List<int[]> bolts, int[] face) {

  private static final double ON = 1e-6;

  /** Within its rim, the hub's face is asked at places so many to its circumference apart. */
  private static final int ROUND = 40;

  /**
   * Beside a head, within one of these distances, places stand so much closer: most of the push is
   * there and on the rim.
   */
  private static final double NEARER = 0.3;

  /**
   * The most places at which it is asked whether it pushes, and of how many nodes one may be such a
   * place in a large mesh: its rims alone have more than that.
   */
  private static final int MOST = 320;

  private static final int OF_NODES = 36;

  /**
   * The points that a support holds.
   *
   * @param beside how near to a head the hub's face is left out, mm
   */
  static HeldPoints of(PlateMesh mesh, Support support, double beside) {
    return support instanceof Support.Clamped clamped
        ? clamped(mesh, clamped)
        : bolted(mesh, (Support.Bolted) support, beside);
  }

  private static HeldPoints clamped(PlateMesh mesh, Support.Clamped support) {
    BitSet nodes = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.distance(i, Point.ORIGIN) <= support.diameter() / 2 + ON) {
        nodes.set(3 * i, 3 * i + 3);
      }
    }
    if (nodes.cardinality() < 9) {
      throw new LoadException(
          "support", "no material lies within the clamped circle; make it wider");
    }
    return new HeldPoints(nodes, List.of(), new int[0]);
  }

  private static HeldPoints bolted(PlateMesh mesh, Support.Bolted support, double beside) {
    BitSet nodes = new BitSet();
    List<int[]> bolts = new ArrayList<>();
    for (Support.Bolt bolt : support.bolts()) {
      List<Integer> under = new ArrayList<>();
      for (int i = 0; i < mesh.nodes(); i++) {
        double off = mesh.distance(i, bolt.at());
        if (off <= bolt.head() / 2 + ON) {
          under.add(i);
          nodes.set(3 * i, 3 * i + 3);
        }
      }
      bolts.add(under.stream().mapToInt(Integer::intValue).toArray());
    }
    if (bolts.stream().filter(under -> under.length > 2).count() < 2) {
      throw new LoadException(
          "support", "fewer than two bolts: they do not hold the plate; clamp it instead");
    }
    return new HeldPoints(nodes, bolts, face(mesh, support, beside));
  }

  /** Nodes spread over what bears, the rims first, since the plate rocks about them. */
  private static int[] face(PlateMesh mesh, Support.Bolted support, double beside) {
    List<Bearing> within = new ArrayList<>();
    for (int i = 0; i < mesh.nodes(); i++) {
      int node = i;
      boolean free =
          support.bolts().stream()
              .noneMatch(b -> mesh.distance(node, b.at()) < b.head() / 2 + beside - ON);
      for (Support.Disc disc : free ? support.bearing() : List.<Support.Disc>of()) {
        double inward = disc.diameter() / 2 - mesh.distance(i, disc.at());
        if (inward >= -ON) {
          within.add(new Bearing(i, inward, disc.diameter() / 2));
          break;
        }
      }
    }
    within.sort(
        (a, b) ->
            Math.abs(a.inward - b.inward) > ON
                ? Double.compare(a.inward, b.inward)
                : Integer.compare(a.node, b.node));
    return chosen(mesh, support, within, 1).stream().mapToInt(Integer::intValue).toArray();
  }

  /** A node before something that bears: how far within its rim, and the radius of that. */
  private record Bearing(int node, double inward, double radius) {}

  /** All on a rim, others so far from each other; farther where there would be too many. */
  private static List<Integer> chosen(
      PlateMesh mesh, Support.Bolted support, List<Bearing> within, double wider) {
    List<Integer> chosen = new ArrayList<>();
    for (Bearing one : within) {
      int i = one.node;
      double far = wider * 2 * Math.PI * one.radius / ROUND;
      double head =
          support.bolts().stream()
              .mapToDouble(b -> mesh.distance(i, b.at()) - b.head() / 2)
              .min()
              .orElse(one.radius);
      double apart = head < far ? NEARER * far : far;
      if (one.inward <= ON
          || chosen.stream().noneMatch(c -> mesh.distance(c, mesh.point(i)) < apart)) {
        chosen.add(i);
      }
    }
    return chosen.size() > Math.max(MOST, mesh.nodes() / OF_NODES) && wider * 2 * Math.PI < ROUND
        ? chosen(mesh, support, within, 1.15 * wider)
        : chosen;
  }
}
