package felloe.mesh;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Meshes a region: nodes along its contours, then nodes within, as far apart as the place wants,
 * then some rounds in which the nodes push each other to even distances, and Delaunay triangles
 * that keep the contours.
 *
 * <p>The same region gives the same mesh. Nodes on contours lie on them exactly; between them the
 * sides are straight, which leaves out or adds less than {@code 1 - cos(pi / round)} of a radius.
 *
 * <p>Even distances by forces in the bars: Persson and Strang, A simple mesh generator in MATLAB,
 * SIAM Review 46 (2004) 329, from memory.
 */
public final class PlateMesher {

  /** The shortest edge, as a part of the longest, that narrow places are given. */
  private static final double SHORTEST = 1.0 / 64;

  private final Region region;
  private final Fineness fineness;
  private final NodeList nodes;
  private final List<int[]> rings = new ArrayList<>();

  /** Where the nodes of each contour stand along it. */
  private final List<List<Double>> places = new ArrayList<>();

  /** The sides on edges of the material. */
  private final Set<Long> edgeSides = new HashSet<>();

  private PlateMesher(Region region, Fineness fineness) {
    this.region = region;
    this.fineness = fineness;
    this.nodes = new NodeList(fineness.most(), region.outer().box(), fineness.edge());
  }

  /**
   * The mesh of a region.
   *
   * @param must points where a node must stand, on an edge of the material or in it
   * @param circles circles about points, whose parts in the material get nodes of their own
   * @throws MeshException when it would have more nodes than allowed, or the material is so narrow
   *     that the straight sides of neighbouring edges would meet
   */
  public static PlateMesh mesh(
      Region region, Fineness fineness, List<Point> must, List<Circle> circles) {
    return new PlateMesher(region, fineness).make(must, circles);
  }

  /** A mesh without points or circles of its own. */
  public static PlateMesh mesh(Region region, Fineness fineness) {
    return mesh(region, fineness, List.of(), List.of());
  }

  /**
   * A circle to put nodes on.
   *
   * @param centre its centre
   * @param radius its radius, mm
   */
  public record Circle(Point centre, double radius) {}

  private PlateMesh make(List<Point> must, List<Circle> circles) {
    SizeField sizes = new SizeField(region.outer().box(), fineness.edge());
    NarrowPlaces narrow = new NarrowPlaces(region);
    narrow.limit(fineness, fineness.edge() * SHORTEST, sizes);
    fineness.spots().forEach(spot -> sizes.limit(spot.at(), spot.edge()));
    for (Circle circle : circles) {
      double edge = Math.min(fineness.edge(), 2 * Math.PI * circle.radius() / fineness.round());
      for (int i = 0; i < 4 * fineness.round(); i++) {
        sizes.limit(on(circle, i / (4.0 * fineness.round())), edge);
      }
    }
    sizes.spread(fineness.growth());
    contours(narrow, sizes, must);
    int edgeNodes = nodes.count();
    for (Point p : must) {
      if (region.contains(p) && !nodes.anyWithin(p, 1e-6)) {
        nodes.add(p);
      }
    }
    circles.forEach(circle -> circle(circle, narrow, sizes));
    int firstRow = nodes.count();
    EdgeRows rows = new EdgeRows(region, narrow, nodes);
    for (int c = 0; c < places.size(); c++) {
      rows.add(narrow.courses().get(c), c == 0, places.get(c), fineness.rows());
    }
    int fixed = nodes.count();
    new Filling(region, narrow.index(), sizes, nodes).fill();
    Relaxation relaxation = new Relaxation(nodes, fixed, rings, sizes, fineness.edge(), narrow);
    int[] triangles = relaxation.relax(edgeSides);
    return finished(triangles, edgeNodes, firstRow, fixed);
  }

  private static Point on(Circle circle, double part) {
    return circle.centre().plus(Point.polar(circle.radius(), 2 * Math.PI * part));
  }

  private void contours(NarrowPlaces narrow, SizeField sizes, List<Point> must) {
    List<ArcLengthIndex> courses = narrow.courses();
    for (int c = 0; c < courses.size(); c++) {
      ArcLengthIndex course = courses.get(c);
      List<Double> stops = new ArrayList<>();
      for (Point p : must) {
        double along = course.position(p);
        if (course.at(along).near(p, 1e-6)) {
          stops.add(along);
        }
      }
      List<Double> places = NodeRing.nodes(course, sizes, stops, 6);
      this.places.add(places);
      int[] ring = new int[places.size()];
      for (int i = 0; i < ring.length; i++) {
        ring[i] = nodes.add(course.at(places.get(i)));
      }
      for (int i = 0; i < ring.length; i++) {
        edgeSides.add(Delaunay.side(ring[i], ring[(i + 1) % ring.length]));
      }
      rings.add(ring);
    }
  }

  private void circle(Circle circle, NarrowPlaces narrow, SizeField sizes) {
    double turned = 0;
    List<Double> angles = new ArrayList<>();
    while (turned < 2 * Math.PI) {
      angles.add(turned);
      Point p = circle.centre().plus(Point.polar(circle.radius(), turned));
      turned += sizes.at(p.x(), p.y()) / circle.radius();
    }
    double stretch = 2 * Math.PI / turned;
    for (double angle : angles) {
      Point at = circle.centre().plus(Point.polar(circle.radius(), angle * stretch));
      double size = sizes.at(at.x(), at.y());
      boolean free = region.contains(at) && narrow.index().distance(at) > size / 2;
      if (free && !nodes.anyWithin(at, size / 2)) {
        nodes.add(at);
      }
    }
  }

  private PlateMesh finished(int[] triangles, int edgeNodes, int firstRow, int lastRow) {
    int count = nodes.count();
    boolean[] edge = new boolean[count];
    Arrays.fill(edge, 0, edgeNodes, true);
    boolean[] beside = edge.clone();
    Arrays.fill(beside, firstRow, lastRow, true);
    return new PlateMesh(
        Arrays.copyOf(nodes.x(), count), Arrays.copyOf(nodes.y(), count), triangles, edge, beside);
  }
}
