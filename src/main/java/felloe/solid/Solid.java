package felloe.solid;

import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * A closed body of triangles, millimetres. No open and no inside-out body can be made: each edge is
 * shared by exactly two triangles that run along it in opposite ways, each triangle has an area,
 * and each connected part of the skin closes in more than nothing. A hollow that nothing leads into
 * is refused as well. Volume and moments are exact for the triangles. Whether the skin crosses
 * itself is another question: see {@link SelfCrossing}.
 */
public final class Solid {

  /** Corners at least a ten-thousandth apart both ways make no smaller triangle, mm². */
  private static final double LEAST_AREA = 1e-9;

  private final List<Vertex> vertices;
  private final List<Triangle> triangles;
  private final int[] corners;

  private Solid(List<Triangle> triangles) {
    this.triangles = List.copyOf(triangles);
    Map<Vertex, Integer> numbers = new LinkedHashMap<>();
    this.corners = new int[3 * triangles.size()];
    int at = 0;
    for (Triangle triangle : triangles) {
      for (Vertex v : List.of(triangle.a(), triangle.b(), triangle.c())) {
        Integer known = numbers.putIfAbsent(v, numbers.size());
        corners[at++] = known == null ? numbers.size() - 1 : known;
      }
    }
    this.vertices = List.copyOf(numbers.keySet());
  }

  /**
   * The body that triangles close in; corners at equal places are one corner.
   *
   * @throws GeometryException when they are no closed body, saying what is wrong and where in plan
   */
  public static Solid of(List<Triangle> triangles) {
    Solid solid = new Solid(triangles);
    solid.refuseSlivers();
    solid.refuseOpen();
    solid.refuseInsideOut();
    return solid;
  }

  private void refuseSlivers() {
    if (triangles.isEmpty()) {
      throw new GeometryException("a body needs triangles");
    }
    for (Triangle triangle : triangles) {
      if (triangle.area() <= LEAST_AREA) {
        throw fault("a triangle of the skin has no area", triangle.a());
      }
    }
  }

  /** Two half edges a directed edge, none twice, each with its opposite. */
  private void refuseOpen() {
    Map<Side, Integer> halves = new HashMap<>(2 * corners.length);
    for (int i = 0; i < corners.length; i++) {
      if (halves.put(edge(i), i) != null) {
        throw fault("the body touches itself along an edge", vertices.get(corners[i]));
      }
    }
    for (int i = 0; i < corners.length; i++) {
      if (!halves.containsKey(edge(i).other())) {
        throw fault("the skin is open", vertices.get(corners[i]));
      }
    }
  }

  private Side edge(int half) {
    return new Side(corners[half], corners[half % 3 == 2 ? half - 2 : half + 1]);
  }

  private void refuseInsideOut() {
    int[] part = new int[vertices.size()];
    for (int i = 0; i < part.length; i++) {
      part[i] = i;
    }
    for (int i = 0; i < corners.length; i += 3) {
      int root = root(part, corners[i]);
      part[root(part, corners[i + 1])] = root;
      part[root(part, corners[i + 2])] = root;
    }
    Vertex origin = extent().centre();
    double[] volumes = new double[part.length];
    for (int i = 0; i < triangles.size(); i++) {
      volumes[root(part, corners[3 * i])] += sixfold(triangles.get(i), origin);
    }
    for (int i = 0; i < part.length; i++) {
      if (part[i] == i && volumes[i] <= 0) {
        throw fault("the skin is inside out", vertices.get(i));
      }
    }
  }

  private static int root(int[] part, int of) {
    int at = of;
    while (part[at] != at) {
      part[at] = part[part[at]];
      at = part[at];
    }
    return at;
  }

  /**
   * This body, its skin looked at once more by {@link SelfCrossing}: to be asked for before a body
   * is written.
   *
   * @throws GeometryException when its skin crosses or touches itself, with the place in plan
   */
  public Solid uncrossed() {
    SelfCrossing.of(this)
        .ifPresent(
            pair -> {
              throw fault("the skin crosses itself", triangles.get(pair.first()).a());
            });
    return this;
  }

  private static GeometryException fault(String what, Vertex at) {
    return new GeometryException(what + ", at height " + Numbers.brief(at.z(), 3), at.plan());
  }

  /** Six times the volume of the pyramid from a point to a triangle. */
  private static double sixfold(Triangle t, Vertex origin) {
    Vertex a = t.a().minus(origin);
    return a.dot(t.b().minus(origin).cross(t.c().minus(origin)));
  }

  /** All corners, each once, in the order of the triangles. */
  public List<Vertex> vertices() {
    return vertices;
  }

  /** The skin. */
  public List<Triangle> triangles() {
    return triangles;
  }

  /**
   * The number of a triangle's corner in {@link #vertices()}.
   *
   * @param corner 0, 1 or 2
   */
  public int corner(int triangle, int corner) {
    return corners[3 * triangle + corner];
  }

  /** Volume, mm³. */
  public double volume() {
    Vertex origin = extent().centre();
    return triangles.stream().mapToDouble(t -> sixfold(t, origin)).sum() / 6;
  }

  /** The middle of its volume. */
  public Vertex centroid() {
    Vertex origin = extent().centre();
    Vertex sum = new Vertex(0, 0, 0);
    double volume = 0;
    for (Triangle t : triangles) {
      double six = sixfold(t, origin);
      volume += six;
      sum = sum.plus(t.a().minus(origin).plus(t.b().minus(origin), 1), six);
      sum = sum.plus(t.c().minus(origin), six);
    }
    return origin.plus(sum, 1 / (4 * volume));
  }

  /**
   * Second moment about a line parallel to z, mm⁵: the integral of the squared distance over the
   * volume. Times a density it is a moment of inertia.
   */
  public double secondMoment(Point through) {
    Vertex origin = Vertex.at(through, extent().centre().z());
    double sum = 0;
    for (Triangle t : triangles) {
      Vertex a = t.a().minus(origin);
      Vertex b = t.b().minus(origin);
      Vertex c = t.c().minus(origin);
      double six = a.dot(b.cross(c));
      sum += six * (squares(a.x(), b.x(), c.x()) + squares(a.y(), b.y(), c.y()));
    }
    return sum / 60;
  }

  private static double squares(double a, double b, double c) {
    return a * a + b * b + c * c + a * b + b * c + c * a;
  }

  /** The upright box round it. */
  public Extent extent() {
    return Extent.of(vertices);
  }

  /** The body turned half round about a line parallel to y, within its box: what lay down is up. */
  public Solid turnedOver() {
    Vertex twice = extent().least().plus(extent().most(), 1);
    return mapped(v -> new Vertex(twice.x() - v.x(), v.y(), twice.z() - v.z()), false);
  }

  /**
   * The body moved.
   *
   * @param motion in the plane; a mirroring makes the left part of the right one
   * @param up in z, mm
   */
  public Solid moved(RigidTransform motion, double up) {
    return mapped(v -> Vertex.at(motion.of(v.plan()), v.z() + up), motion.mirrored());
  }

  /**
   * The body larger or smaller, for a printer's shrinkage.
   *
   * @param x factor in x, above zero
   * @param y factor in y, above zero
   * @param z factor in z, above zero
   */
  public Solid scaled(double x, double y, double z) {
    Numbers.positive("x", x);
    Numbers.positive("y", y);
    Numbers.positive("z", z);
    return mapped(v -> new Vertex(x * v.x(), y * v.y(), z * v.z()), false);
  }

  private Solid mapped(UnaryOperator<Vertex> move, boolean mirrored) {
    Map<Vertex, Vertex> moved = new HashMap<>();
    vertices.forEach(v -> moved.put(v, move.apply(v)));
    List<Triangle> all = new ArrayList<>(triangles.size());
    for (Triangle t : triangles) {
      Triangle there = new Triangle(moved.get(t.a()), moved.get(t.b()), moved.get(t.c()));
      all.add(mirrored ? there.reversed() : there);
    }
    return of(all);
  }
}
