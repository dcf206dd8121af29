package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
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

/** Compensation, plan and proof of a plate with many edges and holes: near n log n is the aim. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 3)
@Fork(1)
public class CuttingBenchmark {

  /** Edges of the outline; there is a hole for each hundred of them. */
  @Param({"1000", "10000", "100000"})
  public int edges;

  private Plate plate;
  private CutSetup setup;
  private CutPlan plan;

  /** Makes a wavy disc with rows of holes, as an imported outline may be. */
  @Setup
  public void make() {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < edges; i++) {
      double angle = 2 * Math.PI * i / edges;
      corners.add(Point.polar(600 + 10 * Math.sin(24 * angle), angle));
    }
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < edges / 100; i++) {
      Point at = new Point(24 * (i % 32) - 372, 24 * (i / 32) - 372);
      double size = i % 2 == 0 ? 5 : 9;
      holes.add(new Hole("H" + (i + 1), HoleRole.OTHER, at, size, Place.BUILT_IN));
    }
    Material plywood = new Material("birch-plywood", "plywood", MaterialKind.WOOD, 0.68, "");
    plate =
        new Plate(
            "bench",
            "Bench",
            "00000000",
            Contour.polygon(corners),
            List.of(),
            holes,
            List.of(),
            Optional.empty(),
            new Stock(plywood, 6, Optional.empty(), Face.FRONT, Place.BUILT_IN),
            new Making(4, 2, 0),
            List.of(),
            List.of());
    setup = CutSetup.router(plate, 4, 2, FeedTable.standard());
    plan = CutPlan.of(plate, setup);
  }

  /** Exact paths and left-overs. */
  @Benchmark
  public Object compensation() {
    return Compensation.of(plate, 4, true);
  }

  /** Everything up to the moves, compensation included. */
  @Benchmark
  public Object plan() {
    return CutPlan.of(plate, setup);
  }

  /** The sweep check alone. */
  @Benchmark
  public Object proof() {
    return SweepCheck.of(plan, 4);
  }
}
