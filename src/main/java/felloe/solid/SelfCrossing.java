package felloe.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether the skin of a body crosses or touches itself, other than where triangles share a corner
 * or an edge. It knows nothing of how the body was made: boxes find the pairs that may meet, signs
 * of volumes decide, and where rounding could turn a sign the volume is reckoned without rounding.
 */
public final class SelfCrossing {

  private static final int FEW = 4;

  private final Solid solid;
  private final List<Triangle> triangles;
  private final double[][] boxes;

  /**
   * Two triangles that meet where they must not.
   *
   * @param first number of one in {@link Solid#triangles()}
   * @param second number of the other
   */
  public record Pair(int first, int second) {}

  private SelfCrossing(Solid solid) {
    this.solid = solid;
    this.triangles = solid.triangles();
    this.boxes = new double[triangles.size()][];
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = box(triangles.get(i));
    }
  }

  /** The first pair found that crosses or touches, if any does. */
  public static Optional<Pair> of(Solid solid) {
    SelfCrossing check = new SelfCrossing(solid);
    Integer[] all = new Integer[check.boxes.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = i;
    }
    Node root = check.node(all, 0, all.length);
    return Optional.ofNullable(check.within(root));
  }

  private static double[] box(Triangle t) {
    Extent box = Extent.of(List.of(t.a(), t.b(), t.c()));
    Vertex low = box.least();
    Vertex high = box.most();
    return new double[] {low.x(), low.y(), low.z(), high.x(), high.y(), high.z()};
  }

  /** A box round some triangles: two halves, or a few triangles. */
  private record Node(double[] box, Node left, Node right, int[] few) {}

  private Node node(Integer[] order, int start, int end) {
    double[] around = boxes[order[start]].clone();
    for (int i = start + 1; i < end; i++) {
      double[] box = boxes[order[i]];
      for (int k = 0; k < 3; k++) {
        around[k] = Math.min(around[k], box[k]);
        around[k + 3] = Math.max(around[k + 3], box[k + 3]);
      }
    }
    if (end - start <= FEW) {
      int[] few = new int[end - start];
      for (int i = start; i < end; i++) {
        few[i - start] = order[i];
      }
      return new Node(around, null, null, few);
    }
    int axis = 0;
    for (int k = 1; k < 3; k++) {
      axis = around[k + 3] - around[k] > around[axis + 3] - around[axis] ? k : axis;
    }
    int longest = axis;
    Arrays.sort(
        order,
        start,
        end,
        Comparator.comparingDouble(i -> boxes[i][longest] + boxes[i][longest + 3]));
    int half = (start + end) / 2;
    return new Node(around, node(order, start, half), node(order, half, end), null);
  }

  private Pair within(Node node) {
    if (node.few != null) {
      return between(node, node);
    }
    Pair pair = within(node.left);
    pair = pair == null ? within(node.right) : pair;
    return pair == null ? between(node.left, node.right) : pair;
  }

  private Pair between(Node one, Node two) {
    if (!touch(one.box, two.box)) {
      return null;
    }
    if (one.few != null && two.few != null) {
      for (int i : one.few) {
        for (int j : two.few) {
          if ((one != two || i < j) && touch(boxes[i], boxes[j]) && meet(i, j)) {
            return new Pair(Math.min(i, j), Math.max(i, j));
          }
        }
      }
      return null;
    }
    boolean first = two.few != null || (one.few == null && size(one.box) > size(two.box));
    Node cut = first ? one : two;
    Node rest = first ? two : one;
    Pair pair = between(cut.left, rest);
    return pair == null ? between(cut.right, rest) : pair;
  }

  private static double size(double[] box) {
    return box[3] - box[0] + box[4] - box[1] + box[5] - box[2];
  }

  private static boolean touch(double[] a, double[] b) {
    return a[0] <= b[3]
        && b[0] <= a[3]
        && a[1] <= b[4]
        && b[1] <= a[4]
        && a[2] <= b[5]
        && b[2] <= a[5];
  }

  private boolean meet(int i, int j) {
    List<Vertex> shared = new ArrayList<>();
    List<Vertex> ofI = new ArrayList<>();
    List<Vertex> ofJ = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      Vertex v = solid.vertices().get(solid.corner(i, k));
      boolean both = false;
      for (int m = 0; m < 3; m++) {
        both |= solid.corner(i, k) == solid.corner(j, m);
      }
      (both ? shared : ofI).add(v);
    }
    for (int m = 0; m < 3; m++) {
      Vertex v = solid.vertices().get(solid.corner(j, m));
      if (!shared.contains(v)) {
        ofJ.add(v);
      }
    }
    Triangle one = triangles.get(i);
    Triangle two = triangles.get(j);
    return switch (shared.size()) {
      case 0 -> edgesMeet(one, two) || edgesMeet(two, one);
      case 1 ->
          TriangleMeeting.segment(ofI.get(0), ofI.get(1), two)
              || TriangleMeeting.segment(ofJ.get(0), ofJ.get(1), one);
      case 2 -> TriangleMeeting.folded(shared.get(0), shared.get(1), ofI.get(0), ofJ.get(0));
      default -> true;
    };
  }

  private static boolean edgesMeet(Triangle edges, Triangle face) {
    return TriangleMeeting.segment(edges.a(), edges.b(), face)
        || TriangleMeeting.segment(edges.b(), edges.c(), face)
        || TriangleMeeting.segment(edges.c(), edges.a(), face);
  }
}
