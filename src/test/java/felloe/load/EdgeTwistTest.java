package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.mesh.Fineness;
import felloe.mesh.PlateMesh;
import felloe.mesh.PlateMesher;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How the faces of a twisted strip are stressed beside its free edges. */
class EdgeTwistTest {

  private static final PlateSection ALUMINIUM = PlateSection.isotropic(70_000, 0.3, 5, 240);

  private static final double HALF = 14;
  private static final double T = ALUMINIUM.thickness();

  /**
   * What twist there is on the faces, as a part of that of a strip without edges: Saint-Venant's
   * series for a rectangle, 1 - 8 / pi^2 sum cosh(n pi y / t) / cosh(n pi b / 2 t) / n^2.
   */
  private static double saintVenant(double y) {
    double taken = 0;
    for (int n = 1; n < 60; n += 2) {
      double way = n * Math.PI / T;
      taken += Math.exp(way * (Math.abs(y) - HALF)) / n / n;
    }
    return 1 - 8 / Math.PI / Math.PI * taken;
  }

  /**
   * Farther in than one edge layer: within 3 percent, where the plate by itself is up to 5 too low.
   */
  @Test
  void theFacesOfATwistedStripAreStressedAsSaintVenantSays() {
    Point left = new Point(300, -HALF);
    Point right = new Point(300, HALF);
    Region strip =
        new Region(
            Contour.polygon(List.of(new Point(0, -HALF), left, right, new Point(0, HALF))),
            List.of());
    Fineness fineness = new Fineness(4, 4, 16, 0.33, List.of(), 50_000);
    PlateMesh mesh =
        PlateMesher.mesh(
            strip, fineness.withRows(ALUMINIUM.edgeRows()), List.of(left, right), List.of());
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.x(i) < 1e-6) {
        held.set(3 * i, 3 * i + 3);
      }
    }
    BendingModel model = new BendingModel(mesh, ALUMINIUM.d(), ALUMINIUM.shear(), held);
    double[] load = new double[3 * mesh.nodes()];
    load[3 * mesh.node(left).orElseThrow()] = -100;
    load[3 * mesh.node(right).orElseThrow()] = 100;
    double[] twists = model.curvatures(model.solve(load));
    double[] faces = twists.clone();
    double layer = ALUMINIUM.edgeLayer();
    new EdgeTwist(EdgeNearest.of(mesh, strip), layer, node -> false).correct(faces);
    double middle = twists[3 * mesh.nearest(new Point(150, 0)) + 2];
    double lowest = 0;
    for (int i = 0; i < mesh.nodes(); i++) {
      double off = HALF - Math.abs(mesh.y(i));
      if (Math.abs(mesh.x(i) - 150) < 50 && off > layer) {
        double exact = saintVenant(mesh.y(i)) * middle;
        assertEquals(exact, faces[3 * i + 2], 0.03 * Math.abs(exact), "off " + off);
        lowest = Math.min(lowest, twists[3 * i + 2] / exact - 1);
      }
    }
    assertTrue(lowest < -0.04, "without it " + lowest);
  }

  /** Within a layer the share falls to none: at the edge itself nothing is twisted. */
  @Test
  void theShareIsThatOfTheSeriesAndGoesToNoneAtTheEdge() {
    assertEquals(0, EdgeTwist.more(0), 1e-12);
    assertEquals(0.0995, EdgeTwist.more(1), 5e-4);
    assertEquals(0.5 * EdgeTwist.more(1), EdgeTwist.more(0.5), 1e-12);
    assertEquals(0.0177, EdgeTwist.more(2.4), 5e-4);
    assertEquals(0, EdgeTwist.more(6), 5e-4);
  }
}
