package felloe.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.noding.FastNodingValidator;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.union.UnionStrategy;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import org.locationtech.jts.util.AssertionFailedException;

/**
 * JTS at work on chords: the only class that knows the library. It decides which pieces meet;
 * {@link CurveRecovery} decides where.
 */
final class Topology {

  /** Share of the distance by which JTS may straighten its input: as good as not at all. */
  private static final double AS_IT_IS = 1e-9;

  /** One round of noding does nearly always; what rounding leaves over is gone after two. */
  private static final int NODING_ROUNDS = 5;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Topology() {}

  /** The three ways to combine regions. */
  enum Operation {
    UNION(OverlayNG.UNION),
    INTERSECTION(OverlayNG.INTERSECTION),
    DIFFERENCE(OverlayNG.DIFFERENCE);

    private final int code;

    Operation(int code) {
      this.code = code;
    }
  }

  /** A polygon of chords: an outer ring and holes, none with its first vertex repeated. */
  record Piece(List<Point> outer, List<List<Point>> holes) {}

  /**
   * Combines two sets of polygons; each set is united first.
   *
   * @throws GeometryException when JTS finds no answer
   */
  static List<Piece> combine(Operation operation, List<Piece> a, List<Piece> b) {
    try {
      Geometry first = united(a);
      boolean done = b.isEmpty() && operation != Operation.INTERSECTION;
      return pieces(done ? first : overlay(first, united(b), operation.code));
    } catch (TopologyException
        | IllegalArgumentException
        | IllegalStateException
        | AssertionFailedException e) {
      throw unsound("the regions have no sound combination", e);
    }
  }

  private static Geometry united(List<Piece> pieces) {
    if (pieces.size() == 1) {
      return polygon(pieces.get(0));
    }
    List<Geometry> polygons = new ArrayList<>();
    pieces.forEach(piece -> polygons.add(polygon(piece)));
    return polygons.isEmpty() ? FACTORY.createPolygon() : union(polygons);
  }

  private static Geometry union(List<Geometry> polygons) {
    UnaryUnionOp union = new UnaryUnionOp(polygons, FACTORY);
    union.setUnionFunction(
        new UnionStrategy() {
          @Override
          public Geometry union(Geometry a, Geometry b) {
            return overlay(a, b, OverlayNG.UNION);
          }

          @Override
          public boolean isFloatingPrecision() {
            return true;
          }
        });
    return union.union();
  }

  /** Points nearer than the tolerance are made one, so that edges shared but for rounding meet. */
  private static Geometry overlay(Geometry a, Geometry b, int operation) {
    try {
      return OverlayNG.overlay(a, b, operation, new SnappingNoder(Tolerances.SAME_POINT));
    } catch (TopologyException e) {
      return OverlayNGRobust.overlay(a, b, operation);
    }
  }

  /**
   * Offsets a polygon with round corners.
   *
   * @param distance outward, or inward when negative, mm
   * @param chordsPerTurn chords for a whole turn of a round corner
   * @throws GeometryException when JTS finds no answer
   */
  static List<Piece> offset(Piece piece, double distance, int chordsPerTurn) {
    BufferParameters round =
        new BufferParameters(
            (chordsPerTurn + 3) / 4,
            BufferParameters.CAP_ROUND,
            BufferParameters.JOIN_ROUND,
            BufferParameters.DEFAULT_MITRE_LIMIT);
    // The default lets JTS straighten the input by a hundredth of the distance.
    round.setSimplifyFactor(AS_IT_IS);
    try {
      return pieces(BufferOp.bufferOp(polygon(piece), distance, round));
    } catch (TopologyException
        | IllegalArgumentException
        | IllegalStateException
        | AssertionFailedException e) {
      throw unsound("the region has no sound offset", e);
    }
  }

  /**
   * Cuts a polygon into triangles on its own vertices.
   *
   * @throws GeometryException when JTS finds no answer
   */
  static List<List<Point>> triangles(Piece piece) {
    try {
      Geometry triangles = PolygonTriangulator.triangulate(polygon(piece));
      return pieces(triangles).stream().map(Piece::outer).toList();
    } catch (TopologyException
        | IllegalArgumentException
        | IllegalStateException
        | AssertionFailedException e) {
      throw unsound("the region cannot be cut into triangles", e);
    }
  }

  /** See {@link Arrangement#triangles}. */
  static List<Arrangement.Triangle> cells(List<List<Point>> lines, double snap) {
    Polygonizer polygonizer = new Polygonizer();
    try {
      for (LineSegment edge : noded(lines, snap)) {
        polygonizer.add(FACTORY.createLineString(new Coordinate[] {edge.p0, edge.p1}));
      }
      List<Arrangement.Triangle> triangles = new ArrayList<>();
      // In an order of their own: JTS has another one in each run.
      TreeSet<Polygon> cells = new TreeSet<>();
      for (Object cell : polygonizer.getPolygons()) {
        Polygon polygon = (Polygon) cell;
        polygon.normalize();
        cells.add(polygon);
      }
      for (Polygon cell : cells) {
        for (Piece piece : pieces(cut(cell))) {
          List<Point> corners = piece.outer();
          triangles.add(new Arrangement.Triangle(corners.get(0), corners.get(1), corners.get(2)));
        }
      }
      return triangles;
    } catch (TopologyException
        | IllegalArgumentException
        | IllegalStateException
        | AssertionFailedException e) {
      throw unsound("the lines cut the plane into no sound pieces", e);
    }
  }

  private static Geometry cut(Polygon cell) {
    boolean triangle = cell.getNumPoints() == 4;
    return triangle ? cell : ConstrainedDelaunayTriangulator.triangulate(cell);
  }

  /** Edges that meet at their ends alone, each once. */
  private static Set<LineSegment> noded(List<List<Point>> lines, double snap) {
    Collection<SegmentString> strings = new ArrayList<>();
    for (List<Point> line : lines) {
      strings.add(new NodedSegmentString(coordinates(line), null));
    }
    for (int round = 0; round < NODING_ROUNDS; round++) {
      SnappingNoder noder = new SnappingNoder(snap);
      noder.computeNodes(strings);
      strings = edges(noder.getNodedSubstrings());
      if (new FastNodingValidator(strings).isValid()) {
        Set<LineSegment> edges = new LinkedHashSet<>();
        for (SegmentString edge : strings) {
          edges.add(new LineSegment(edge.getCoordinate(0), edge.getCoordinate(1)));
        }
        return edges;
      }
    }
    throw new GeometryException("lines cross each other too often too near to one place");
  }

  /** Each straight edge of noded lines once, whichever way it ran. */
  private static List<SegmentString> edges(Collection<?> noded) {
    Set<LineSegment> edges = new LinkedHashSet<>();
    for (Object string : noded) {
      Coordinate[] along = ((SegmentString) string).getCoordinates();
      for (int i = 1; i < along.length; i++) {
        LineSegment edge = new LineSegment(along[i - 1], along[i]);
        edge.normalize();
        if (!edge.p0.equals2D(edge.p1)) {
          edges.add(edge);
        }
      }
    }
    List<SegmentString> strings = new ArrayList<>();
    for (LineSegment edge : edges) {
      strings.add(new NodedSegmentString(new Coordinate[] {edge.p0, edge.p1}, null));
    }
    return strings;
  }

  /** Whether no ring of a polygon crosses or touches itself or another. */
  static boolean sound(Piece piece) {
    return polygon(piece).isValid();
  }

  /** The convex hull of some points, counter-clockwise. */
  static List<Point> hull(List<Point> points) {
    return pieces(new ConvexHull(coordinates(points), FACTORY).getConvexHull()).get(0).outer();
  }

  private static Coordinate[] coordinates(List<Point> points) {
    return points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
  }

  private static GeometryException unsound(String message, RuntimeException e) {
    Coordinate at = e instanceof TopologyException fault ? fault.getCoordinate() : null;
    return at == null
        ? new GeometryException(message)
        : new GeometryException(message, new Point(at.x, at.y));
  }

  private static Polygon polygon(Piece piece) {
    LinearRing[] holes = piece.holes().stream().map(Topology::ring).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(ring(piece.outer()), holes);
  }

  private static LinearRing ring(List<Point> vertices) {
    Coordinate[] coordinates = new Coordinate[vertices.size() + 1];
    for (int i = 0; i < coordinates.length; i++) {
      Point p = vertices.get(i % vertices.size());
      coordinates[i] = new Coordinate(p.x(), p.y());
    }
    return FACTORY.createLinearRing(coordinates);
  }

  private static List<Piece> pieces(Geometry geometry) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        List<List<Point>> holes = new ArrayList<>();
        for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
          holes.add(vertices(polygon.getInteriorRingN(k)));
        }
        pieces.add(new Piece(vertices(polygon.getExteriorRing()), holes));
      }
    }
    return pieces;
  }

  /** The vertices counter-clockwise, whichever way JTS happens to give them. */
  private static List<Point> vertices(LinearRing ring) {
    Coordinate[] coordinates = ring.getCoordinates();
    boolean forward = Orientation.isCCW(coordinates);
    List<Point> vertices = new ArrayList<>(coordinates.length);
    for (int i = 0; i < coordinates.length - 1; i++) {
      Coordinate c = coordinates[forward ? i : coordinates.length - 1 - i];
      vertices.add(new Point(c.x, c.y));
    }
    return vertices;
  }
}
