package felloe.load;

import felloe.geometry.Point;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import felloe.plate.Face;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A plate's stiffness over a mesh: zone 0 is the bare plate, each other one has layers glued on.
 *
 * <p>Where layers are not the same on both faces the middle plane stretches as the plate bends;
 * there it is bent with its reduced stiffness, D - B A^-1 B, and the stretch is added to the
 * strains. Source: Ashton and Whitney, Theory of Laminated Plates, from memory.
 */
final class SectionZones {

  /** The zone of each triangle; empty where all are bare. */
  private final int[] triangles;

  private final List<Zone> zones;
  private final PlateMesh mesh;

  /**
   * A zone.
   *
   * @param a membrane stiffness, N/mm
   * @param d bending stiffness, N mm
   * @param shear stiffness across the thickness, N/mm
   * @param stretch strains of the middle plane for each of the three curvatures
   */
  private record Zone(PlaneStiffness a, PlaneStiffness d, double shear, double[][] stretch) {}

  private SectionZones(PlateMesh mesh, int[] triangles, List<Zone> zones) {
    this.mesh = mesh;
    this.triangles = triangles;
    this.zones = zones;
  }

  /** One stiffness everywhere. */
  static SectionZones even(PlaneStiffness a, PlaneStiffness d, double shear) {
    return new SectionZones(null, new int[0], List.of(new Zone(a, d, shear, new double[3][3])));
  }

  /** Those of a plate on a mesh. */
  static SectionZones of(PlateMesh mesh, PlateSection section) {
    List<Zone> zones = new ArrayList<>();
    zones.add(new Zone(section.a(), section.d(), section.shear(), new double[3][3]));
    List<Bonding.Patch> patches = section.bonding().patches();
    if (patches.isEmpty()) {
      return new SectionZones(mesh, new int[0], zones);
    }
    patches.forEach(patch -> zones.add(zone(section, patch.layers())));
    int[] triangles = new int[mesh.triangles()];
    for (int t = 0; t < triangles.length; t++) {
      Point middle =
          mesh.point(mesh.corner(t, 0))
              .plus(mesh.point(mesh.corner(t, 1)), 1)
              .plus(mesh.point(mesh.corner(t, 2)), 1);
      Point at = new Point(middle.x() / 3, middle.y() / 3);
      for (int p = 0; p < patches.size() && triangles[t] == 0; p++) {
        triangles[t] = patches.get(p).covers(at) ? p + 1 : 0;
      }
    }
    return new SectionZones(mesh, triangles, zones);
  }

  private static Zone zone(PlateSection section, List<Bonding.Layer> layers) {
    PlaneStiffness a = section.a();
    PlaneStiffness b = PlaneStiffness.ZERO;
    PlaneStiffness d = section.d();
    double shear = section.shear();
    for (Bonding.Layer layer : layers) {
      double t = layer.thickness();
      double z = (section.thickness() + t) / 2;
      double side = layer.face() == Face.FRONT ? z : -z;
      PlaneStiffness own = Isotropic.membrane(layer.modulus(), layer.nu(), t);
      a = a.plus(own);
      b = b.plus(own.times(side));
      d = d.plus(Isotropic.bending(layer.modulus(), layer.nu(), t)).plus(own.times(z * z));
      shear += 5.0 / 6 * layer.modulus() / 2 / (1 + layer.nu()) * t;
    }
    double[][] stretch = new double[3][3];
    double[][] rows = b.rows();
    for (int k = 0; k < 3; k++) {
      // B is symmetric, so that its rows are its columns.
      double[] moved = a.underPull(rows[k][0], rows[k][1], rows[k][2]);
      for (int i = 0; i < 3; i++) {
        stretch[i][k] = -moved[i];
      }
    }
    double[][] less = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        for (int j = 0; j < 3; j++) {
          less[i][k] += rows[i][j] * stretch[j][k];
        }
      }
    }
    PlaneStiffness reduced =
        d.plus(
            new PlaneStiffness(
                less[0][0], less[0][1], less[1][1], less[0][2], less[1][2], less[2][2]));
    return new Zone(a, reduced, shear, stretch);
  }

  /** The zone of each triangle; empty where all are bare. */
  int[] triangles() {
    return triangles;
  }

  boolean even() {
    return triangles.length == 0;
  }

  PlaneStiffness bare() {
    return zones.get(0).d;
  }

  PlaneStiffness bareInPlane() {
    return zones.get(0).a;
  }

  boolean givesInShear() {
    return zones.get(0).shear < Double.POSITIVE_INFINITY;
  }

  /** The triangle that bends. */
  PlateTriangle bending() {
    return zoned(zones.stream().map(z -> new ShearTriangle(z.d, z.shear)).toList());
  }

  /** The triangle that stretches. */
  PlateTriangle stretching() {
    return zoned(zones.stream().map(z -> new TurnTriangle(z.a)).toList());
  }

  private PlateTriangle zoned(List<? extends PlateTriangle> all) {
    return even() ? all.get(0) : new ZonedTriangle(List.copyOf(all), triangles);
  }

  /** Twice the energy of curvatures of a triangle, for each mm². */
  double bent(int triangle, double x, double y, double shear) {
    return zones.get(even() ? 0 : triangles[triangle]).d.square(x, y, shear);
  }

  /**
   * Strains of the middle plane with what bending adds where layers are not the same.
   *
   * @param places the zone of each place, three strains and curvatures each
   */
  double[] stretched(double[] strains, double[] curvatures, int[] places) {
    if (even()) {
      return strains;
    }
    double[] all = strains.clone();
    for (int n = 0; n < places.length; n++) {
      double[][] stretch = zones.get(places[n]).stretch;
      for (int i = 0; i < 3; i++) {
        for (int k = 0; k < 3; k++) {
          all[3 * n + i] += stretch[i][k] * curvatures[3 * n + k];
        }
      }
    }
    return all;
  }

  /**
   * The zone of each node and then of other places, as it is at the nodes nearest to them; empty
   * where all are bare.
   */
  int[] places(NodalRecovery.Told others) {
    int[] nodes = nodes();
    return even()
        ? nodes
        : IntStream.concat(
                Arrays.stream(nodes), Arrays.stream(others.nodes()).map(node -> nodes[node]))
            .toArray();
  }

  /**
   * The zone of each node: that of a layer only where all about it has that layer; empty where all
   * are bare.
   */
  private int[] nodes() {
    if (even()) {
      return new int[0];
    }
    int[] nodes = new int[mesh.nodes()];
    Arrays.fill(nodes, -1);
    for (int t = 0; t < triangles.length; t++) {
      for (int c = 0; c < 3; c++) {
        int node = mesh.corner(t, c);
        nodes[node] = nodes[node] == -1 || nodes[node] == triangles[t] ? triangles[t] : 0;
      }
    }
    return Arrays.stream(nodes).map(zone -> Math.max(0, zone)).toArray();
  }

  /** Each triangle as its zone has it. */
  private static final class ZonedTriangle implements PlateTriangle {
    private final List<PlateTriangle> all;
    private final int[] zones;
    private PlateTriangle now;

    ZonedTriangle(List<PlateTriangle> all, int[] zones) {
      this.all = all;
      this.zones = zones;
      this.now = all.get(0);
    }

    @Override
    public void on(PlateMesh mesh, int t) {
      now = all.get(zones[t]);
      now.on(mesh, t);
    }

    @Override
    public double area() {
      return now.area();
    }

    @Override
    public void stiffness(double[] k, int from) {
      now.stiffness(k, from);
    }

    @Override
    public void at(double p, double q, double r) {
      now.at(p, q, r);
    }

    @Override
    public void strains(double[] unknowns, double[] into, int from) {
      now.strains(unknowns, into, from);
    }
  }
}
