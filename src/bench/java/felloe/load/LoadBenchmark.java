package felloe.load;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.mesh.Fineness;
import felloe.mesh.PlateMesh;
import felloe.mesh.PlateMesher;
import java.util.BitSet;
import java.util.List;
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

/** A ring clamped at its hub, by the number of unknowns: growth near n^1.5 is the aim. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(1)
public class LoadBenchmark {

  /** About how many unknowns. */
  @Param({"1000", "10000", "100000"})
  public int unknowns;

  private Region region;
  private Fineness fineness;
  private PlateMesh mesh;
  private BendingModel model;
  private double[] load;
  private double[] bent;

  /** Makes the ring and its mesh. */
  @Setup
  public void make() {
    region =
        new Region(
            Contour.circle(Point.ORIGIN, 150), List.of(Contour.circle(Point.ORIGIN, 45)));
    // Three unknowns a node, and a node for each 0.87 squares of the edge.
    double edge = Math.sqrt(3 * region.properties().area() / unknowns / 0.87);
    fineness = new Fineness(edge, 2, 12, 0.33, List.of(), 200_000);
    mesh = PlateMesher.mesh(region, fineness);
    model = factored();
    load = model.pressure(0.01);
    bent = model.solve(load);
  }

  /** The mesh. */
  @Benchmark
  public PlateMesh meshed() {
    return PlateMesher.mesh(region, fineness);
  }

  /** Stiffness, order and factor. */
  @Benchmark
  public BendingModel factored() {
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (Math.hypot(mesh.x(i), mesh.y(i)) < 45 + 1e-6) {
        held.set(3 * i, 3 * i + 3);
      }
    }
    return new BendingModel(mesh, Isotropic.bending(70_000, 0.3, 5), held);
  }

  /** One more load on the same factor. */
  @Benchmark
  public double[] solved() {
    return model.solve(load);
  }

  /** Curvatures at the nodes. */
  @Benchmark
  public double[] recovered() {
    return model.curvatures(bent);
  }
}
