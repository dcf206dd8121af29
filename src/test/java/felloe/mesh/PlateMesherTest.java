package felloe.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlateMesherTest {

  private static final Region RING = ring(150, 45);

  private static Region ring(double outer, double inner) {
    return new Region(
        Contour.circle(Point.ORIGIN, outer), List.of(Contour.circle(Point.ORIGIN, inner)));
  }

  @Test
  void everyDemoPlateIsCoveredByWellShapedTriangles() {
    for (Plate plate : DemoPlates.all()) {
      PlateMesh mesh = PlateMesher.mesh(plate.region(), Fineness.of(7));
      double exact = plate.region().properties().area();
      assertEquals(exact, mesh.area(), 0.002 * exact, plate.title());
      MeshQuality quality = mesh.quality();
      assertTrue(quality.leastAngle() > 15, plate.title() + " " + quality);
      assertTrue(quality.meanLeastAngle() > 45, plate.title() + " " + quality);
    }
  }

  @Test
  void trianglesRunCounterClockwiseAndMeetSideBySide() {
    Plate plate = DemoPlates.heron();
    PlateMesh mesh = PlateMesher.mesh(plate.region(), Fineness.of(9));
    Map<Long, Integer> met = new HashMap<>();
    for (int t = 0; t < mesh.triangles(); t++) {
      assertTrue(mesh.area(t) > 0);
      for (int c = 0; c < 3; c++) {
        met.merge(side(mesh, t, c), 1, Integer::sum);
      }
    }
    long sides = met.size();
    long edges = met.values().stream().filter(n -> n == 1).count();
    assertTrue(met.values().stream().allMatch(n -> n <= 2));
    // Euler: a plate with k openings has V - E + F = 1 - k, and as many edge nodes as edge sides.
    int openings = plate.region().holes().size();
    assertEquals(1 - openings, mesh.nodes() - sides + mesh.triangles());
    long onEdge = IntStream.range(0, mesh.nodes()).filter(mesh::onEdge).count();
    assertEquals(onEdge, edges);
  }

  @Test
  void nodesOfEdgesLieOnTheContours() {
    PlateMesh mesh = PlateMesher.mesh(RING, Fineness.of(10));
    for (int i = 0; i < mesh.nodes(); i++) {
      double r = Math.hypot(mesh.x(i), mesh.y(i));
      if (mesh.onEdge(i)) {
        assertEquals(0, Math.min(Math.abs(r - 45), Math.abs(r - 150)), 1e-9);
      }
    }
  }

  /** The side opposite a corner, by its ends. */
  private static long side(PlateMesh mesh, int triangle, int corner) {
    return Delaunay.side(
        mesh.corner(triangle, (corner + 1) % 3), mesh.corner(triangle, (corner + 2) % 3));
  }

  @Test
  void theSameRegionGivesTheSameMesh() {
    PlateMesh a = PlateMesher.mesh(DemoPlates.bittern().region(), Fineness.of(8));
    PlateMesh b = PlateMesher.mesh(DemoPlates.bittern().region(), Fineness.of(8));
    assertArrayEquals(coordinates(a), coordinates(b));
  }

  private static double[] coordinates(PlateMesh mesh) {
    return IntStream.range(0, 2 * mesh.nodes())
        .mapToDouble(i -> i % 2 == 0 ? mesh.x(i / 2) : mesh.y(i / 2))
        .toArray();
  }

  @Test
  void aNodeStandsWhereOneMust() {
    Point edge = new Point(150, 0);
    Point inside = new Point(-80, 33);
    PlateMesh mesh = PlateMesher.mesh(RING, Fineness.of(12), List.of(edge, inside), List.of());
    assertTrue(mesh.node(edge).isPresent());
    assertTrue(mesh.node(inside).isPresent());
    assertTrue(mesh.onEdge(mesh.node(edge).get()));
  }

  @Test
  void aCircleInTheMaterialGetsItsNodes() {
    PlateMesher.Circle circle = new PlateMesher.Circle(Point.ORIGIN, 90);
    PlateMesh mesh = PlateMesher.mesh(RING, Fineness.of(12), List.of(), List.of(circle));
    long on =
        IntStream.range(0, mesh.nodes())
            .filter(i -> Math.abs(Math.hypot(mesh.x(i), mesh.y(i)) - 90) < 1e-9)
            .count();
    assertTrue(on >= 40, "on the circle " + on);
  }

  @Test
  void aNarrowWebGetsEdgesAcrossIt() {
    Region narrow =
        new Region(
            Contour.polygon(
                List.of(
                    new Point(0, 0), new Point(200, 0), new Point(200, 100), new Point(0, 100))),
            List.of(
                Contour.polygon(
                    List.of(
                        new Point(20, 3),
                        new Point(180, 3),
                        new Point(180, 80),
                        new Point(20, 80)))));
    PlateMesh mesh = PlateMesher.mesh(narrow, Fineness.of(10));
    long within =
        IntStream.range(0, mesh.nodes())
            .filter(i -> mesh.x(i) > 80 && mesh.x(i) < 120 && mesh.y(i) > 0.1 && mesh.y(i) < 2.9)
            .count();
    // Three rows of inner nodes 0.75 mm apart over 40 mm.
    assertTrue(within > 100, "nodes in the web " + within);
    assertTrue(mesh.quality().leastAngle() > 15, mesh.quality().toString());
  }

  @Test
  void finerMeansMoreNodesByTheSquare() {
    int coarse = PlateMesher.mesh(RING, Fineness.of(10)).nodes();
    int fine = PlateMesher.mesh(RING, Fineness.of(10).times(0.5)).nodes();
    assertEquals(4, fine / (double) coarse, 0.8);
  }

  @Test
  void tooManyNodesAreRefusedAndToldWhere() {
    Fineness fineness = new Fineness(5, 4, 32, 0.33, List.of(), 300);
    MeshException refused =
        assertThrows(MeshException.class, () -> PlateMesher.mesh(RING, fineness));
    assertEquals("the mesh has more than 300 nodes", refused.getMessage());
    assertTrue(RING.outer().box().grown(1).contains(refused.where()));
  }

  @Test
  void figuresThatMakeNoSenseAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Fineness.of(0));
    assertThrows(IllegalArgumentException.class, () -> Fineness.of(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Fineness.Spot(Point.ORIGIN, -1));
    assertThrows(IllegalArgumentException.class, () -> new Fineness(5, 4, 5, 0.33, List.of(), 100));
  }

  @Test
  void nodesStandEvenlyRoundACircleAlsoWhereItCloses() {
    PlateMesher.Circle circle = new PlateMesher.Circle(Point.ORIGIN, 80);
    Fineness fineness = new Fineness(10, 2, 50, 0.33, List.of(), 20_000);
    PlateMesh mesh = PlateMesher.mesh(RING, fineness, List.of(), List.of(circle));
    double[] angles =
        IntStream.range(0, mesh.nodes())
            .filter(i -> Math.abs(mesh.point(i).norm() - 80) < 1e-6)
            .mapToDouble(i -> mesh.point(i).angle())
            .sorted()
            .toArray();
    assertTrue(angles.length >= 50, angles.length + " nodes");
    double even = 2 * Math.PI / angles.length;
    for (int i = 0; i < angles.length; i++) {
      double next = i + 1 < angles.length ? angles[i + 1] : angles[0] + 2 * Math.PI;
      assertEquals(even, next - angles[i], 0.02 * even, "after " + Math.toDegrees(angles[i]));
    }
  }

  /** Edges that grow by a third of the way from a small hole leave it within few rows. */
  @Test
  void aSmallHoleIsNoFinerAboutThanAsked() {
    Region holed =
        new Region(Contour.circle(Point.ORIGIN, 150), List.of(ring(150, 3).holes().get(0)));
    PlateMesh mesh = PlateMesher.mesh(holed, new Fineness(10, 2, 24, 0.33, List.of(), 20_000));
    double edge = 2 * Math.PI * 3 / 24;
    long near = IntStream.range(0, mesh.nodes()).filter(i -> mesh.point(i).norm() < 8).count();
    // Even triangles of that edge all the way would be three times as many.
    double all = Math.PI * (8 * 8 - 3 * 3) / (edge * edge * Math.sqrt(3) / 2);
    assertTrue(near < all / 2.5, near + " of " + all);
    assertEquals(edge, mesh.edgeAt(new Point(3, 0)), 0.35 * edge);
  }
}
