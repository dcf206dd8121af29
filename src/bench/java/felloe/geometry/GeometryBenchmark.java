package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Core geometry on a wavy ring of lines and arcs of 1 mm each, grown with its number of edges. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class GeometryBenchmark {

  private static final double DISTANCE = 2;

  /** Edges of the contour. */
  @Param({"1000", "10000", "100000"})
  public int edges;

  private List<Segment> segments;
  private Contour contour;
  private Region region;
  private Region other;
  private Geometry chords;

  /** Draws the contour. */
  @Setup
  public void draw() {
    Random random = new Random(1);
    double radius = edges / (2 * Math.PI);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < edges; i++) {
      double angle = 2 * Math.PI * (i + 0.3 * random.nextDouble()) / edges;
      double wave = 1 + 0.05 * Math.sin(angle * edges / 60);
      corners.add(Point.polar(radius * wave + 0.2 * random.nextDouble(), angle));
    }
    segments = new ArrayList<>();
    for (int i = 0; i < edges; i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % edges);
      segments.add(
          i % 3 == 0 ? new Line(a, b) : Arc.withRise(a, b, 0.05 * random.nextDouble() + 0.01));
    }
    contour = new Contour(segments);
    region = Region.of(contour);
    other = region.moved(RigidTransform.turnAbout(Point.ORIGIN, 0.3).then(RigidTransform.shift(radius / 5, 0)));
    List<Point> ring = new Flattener(Tolerances.CHORD).add(contour, 0);
    Coordinate[] coordinates = new Coordinate[ring.size() + 1];
    for (int i = 0; i < coordinates.length; i++) {
      Point p = ring.get(i % ring.size());
      coordinates[i] = new Coordinate(p.x(), p.y());
    }
    chords = new GeometryFactory().createPolygon(coordinates);
  }

  /** Exact offset outward. */
  @Benchmark
  public Object offsetOutward() {
    return Offset.of(region, DISTANCE);
  }

  /** Exact offset inward. */
  @Benchmark
  public Object offsetInward() {
    return Offset.of(region, -DISTANCE);
  }

  /** The bare library on the same chords, outward, for comparison. */
  @Benchmark
  public Object bufferOfChords() {
    int quadrant = (Flattener.perTurn(DISTANCE, Tolerances.CHORD) + 3) / 4;
    BufferParameters parameters = new BufferParameters(quadrant);
    parameters.setSimplifyFactor(1e-9);
    return BufferOp.bufferOp(chords, DISTANCE, parameters);
  }

  /** Exact union of two that overlap. */
  @Benchmark
  public Object union() {
    return Combine.union(List.of(region, other));
  }

  /** Exact difference of two that overlap. */
  @Benchmark
  public Object difference() {
    return Combine.difference(List.of(region), List.of(other));
  }

  /** Is it closed, does it meet itself? */
  @Benchmark
  public Object validation() {
    return new Contour(segments);
  }

  /** Area, centroid, second moments. */
  @Benchmark
  public Object areaProperties() {
    return contour.properties();
  }
}
