package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.hub.HubCatalogue;
import felloe.mesh.Fineness;
import felloe.mesh.PlateMesh;
import felloe.mesh.PlateMesher;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layers glued to a part of a plate, against composite beams in closed form. */
class BondedGripsTest {

  private static final double LONG = 240;
  private static final double WIDE = 16;
  private static final double HALF = 120;
  private static final double E = 70_000;
  private static final double T = 6;
  private static final double SOFT = 5_000;
  private static final double THICK = 10;

  private static Region box(double from, double to) {
    return Region.of(Contour.rectangle(new Box(from, -WIDE / 2, to, WIDE / 2)));
  }

  private static PlateSection section(Face... faces) {
    List<Bonding.Layer> layers =
        List.of(faces).stream().map(face -> new Bonding.Layer(face, THICK, SOFT)).toList();
    return PlateSection.isotropic(E, 0.3, T, 240)
        .with(new Bonding(List.of(new Bonding.Patch(List.of(box(HALF, LONG)), layers))));
  }

  /** EI of the composite for each mm of width, about its own neutral axis. */
  private static double stiff(int layers) {
    double own = E * T * T * T / 12;
    double layer = SOFT * THICK * THICK * THICK / 12;
    double arm = (T + THICK) / 2;
    double parallel = SOFT * THICK * arm * arm;
    if (layers == 2) {
      return own + 2 * (layer + parallel);
    }
    // Two sheets on an arm: the axis lies where their pulls balance.
    double pull = 1 / (1 / (E * T) + 1 / (SOFT * THICK));
    return layers == 0 ? own : own + layer + pull * arm * arm;
  }

  /** A stepped cantilever under an end load: bare at the root, layered from the middle on. */
  @ParameterizedTest
  @CsvSource({"0", "1", "2"})
  void aSteppedCantileverSinksAsBeamTheorySays(int layers) {
    PlateSection section =
        layers == 0
            ? PlateSection.isotropic(E, 0.3, T, 240)
            : layers == 1 ? section(Face.FRONT) : section(Face.FRONT, Face.BACK);
    Fineness fineness = new Fineness(8, 4, 24, 0.33, List.of(), 60_000, List.of());
    PlateMesh mesh =
        PlateMesher.mesh(box(0, LONG), fineness, List.of(new Point(HALF, 0)), List.of());
    BitSet held = new BitSet();
    double[] load = new double[3 * mesh.nodes()];
    double edge = 0;
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.x(i) < 1e-6) {
        held.set(3 * i, 3 * i + 3);
      }
      edge += mesh.x(i) > LONG - 1e-6 ? 1 : 0;
    }
    for (int i = 0; i < mesh.nodes(); i++) {
      load[3 * i] = mesh.x(i) > LONG - 1e-6 ? 10 / edge : 0;
    }
    SectionZones zones = SectionZones.of(mesh, section);
    BendingModel model =
        new BendingModel(new HeldMesh(mesh, held, new int[0], zones.triangles()), zones);
    double[] bent = model.solve(load);
    double tip = 0;
    for (int i = 0; i < mesh.nodes(); i++) {
      tip = Math.max(tip, bent[3 * i]);
    }
    double bare = stiff(0) * WIDE;
    double thick = stiff(layers) * WIDE;
    double far = LONG - HALF;
    double beam =
        10 * (far * far * far / thick + (LONG * LONG * LONG - far * far * far) / bare) / 3;
    // The root is held flat across, the step is not a line of nodes: 2 %.
    assertEquals(beam, tip, 0.02 * beam);
  }

  /** At the front face of a layered strip the middle stretches as it bends. */
  @Test
  void aLayerOnOneFaceStretchesTheMiddle() {
    Fineness fineness = new Fineness(8, 4, 24, 0.33, List.of(), 60_000, List.of());
    PlateMesh mesh = PlateMesher.mesh(box(0, LONG), fineness, List.of(), List.of());
    SectionZones zones = SectionZones.of(mesh, section(Face.FRONT));
    double[] curvatures = new double[3 * mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      curvatures[3 * i] = 1e-3;
    }
    double[] strains =
        zones.stretched(
            new double[3 * mesh.nodes()], curvatures, zones.places(NodalRecovery.Told.NONE));
    double axis = SOFT * THICK * (T + THICK) / 2 / (SOFT * THICK + E * T);
    for (int i = 0; i < mesh.nodes(); i++) {
      double expected = mesh.x(i) > HALF + 12 ? -axis * 1e-3 : 0;
      if (Math.abs(mesh.x(i) - HALF) > 12) {
        assertEquals(expected, strains[3 * i], 1e-9);
      }
    }
  }

  private static Plate bittern(String... sets) {
    return ShapeFile.read(Path.of("shapes/bittern.yaml"), Sets.of(sets), HubCatalogue.here());
  }

  @Test
  void onlyBondedGripsAreLayers() {
    assertTrue(Bonding.of(bittern()).patches().isEmpty());
    Bonding bonding = Bonding.of(bittern("grips[0].bonded=true"));
    assertEquals(2, bonding.patches().size());
    Bonding.Layer front = bonding.patches().get(0).layers().get(0);
    assertEquals(Face.FRONT, front.face());
    assertEquals(800, front.modulus(), 1e-9);
    // Its ends taper to 5 mm, rounded: some 4 mm on the mean.
    assertTrue(front.thickness() > 4 && front.thickness() < 5, "" + front.thickness());
    assertTrue(bonding.patches().get(0).covers(new Point(146, 30)));
  }
}
