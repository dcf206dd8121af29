package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * A plate on its hub by another program: CalculiX, with six-node shells that it turns into solids.
 * It is given the triangles of a mesh with the exact middles of their sides, and the same hands.
 */
final class ShellOracle {

  /** What the program said. */
  record Answer(double[] deflections, double[] atLoads) {}

  private final PlateMesh mesh;
  private final PlateSection section;
  private final Path folder;

  ShellOracle(PlateMesh mesh, PlateSection section, Path folder) {
    this.mesh = mesh;
    this.section = section;
    this.folder = folder;
  }

  /** Whether the program is installed. */
  static boolean installed() {
    return List.of(System.getenv().getOrDefault("PATH", "").split(":")).stream()
        .anyMatch(p -> Files.isExecutable(Path.of(p, "ccx")));
  }

  /** Solves one case. */
  Answer solve(LoadCase load, Support.Clamped support) throws IOException, InterruptedException {
    StringBuilder s = new StringBuilder("*NODE,NSET=ALL\n");
    int n = mesh.points();
    for (int i = 0; i < n; i++) {
      s.append(i + 1)
          .append(',')
          .append(text(mesh.x(i)))
          .append(',')
          .append(text(mesh.y(i)))
          .append(",0\n");
    }
    StringBuilder held = new StringBuilder();
    for (int i = 0; i < n; i++) {
      if (Math.hypot(mesh.x(i), mesh.y(i)) <= support.diameter() / 2 + 1e-6) {
        held.append(i + 1).append(",1,6\n");
      }
    }
    s.append("*ELEMENT,TYPE=S6,ELSET=PLATE\n");
    for (int t = 0; t < mesh.triangles(); t++) {
      s.append(t + 1);
      for (int k = 0; k < 3; k++) {
        s.append(',').append(mesh.corner(t, k) + 1);
      }
      s.append(',').append(mesh.middle(t, 2) + 1);
      s.append(',').append(mesh.middle(t, 0) + 1);
      s.append(',').append(mesh.middle(t, 1) + 1).append('\n');
    }
    material(s);
    s.append("*BOUNDARY\n").append(held);
    s.append("*STEP\n*STATIC\n");
    List<double[]> spreads = new ArrayList<>();
    s.append("*CLOAD\n");
    double[] lumps = lumps();
    for (HandForce force : load.forces()) {
      double[] share = share(lumps, force, load.patch());
      spreads.add(share);
      for (int i = 0; i < n; i++) {
        if (share[i] != 0) {
          add(s, i, 1, share[i] * force.x());
          add(s, i, 2, share[i] * force.y());
          add(s, i, 3, share[i] * force.z());
        }
      }
    }
    s.append("*NODE PRINT,NSET=ALL\nU\n");
    s.append("*END STEP\n");
    Files.writeString(folder.resolve("plate.inp"), s.toString());
    Process p =
        new ProcessBuilder("ccx", "-i", "plate")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    if (!p.waitFor(600, TimeUnit.SECONDS)) {
      p.destroyForcibly();
      throw new IOException("ccx took too long");
    }
    double[][] u = read(n);
    double[] atLoads = new double[load.forces().size()];
    for (int f = 0; f < atLoads.length; f++) {
      HandForce force = load.forces().get(f);
      for (int i = 0; i < n; i++) {
        double work = force.x() * u[i][0] + force.y() * u[i][1] + force.z() * u[i][2];
        atLoads[f] += spreads.get(f)[i] * work / force.size();
      }
    }
    double[] w = new double[n];
    for (int i = 0; i < n; i++) {
      w[i] = u[i][2];
    }
    return new Answer(w, atLoads);
  }

  private void add(StringBuilder s, int node, int way, double force) {
    if (force != 0) {
      s.append(node + 1).append(',').append(way).append(',').append(text(force)).append('\n');
    }
  }

  /** A third of each triangle's area to the middle of each of its sides. */
  private double[] lumps() {
    double[] lumps = new double[mesh.points()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        lumps[mesh.middle(t, c)] += mesh.area(t) / 3;
      }
    }
    return lumps;
  }

  private double[] share(double[] lumps, HandForce force, double patch) {
    double[] share = new double[lumps.length];
    double sum = 0;
    for (int i = 0; i < share.length; i++) {
      double dx = 2 * (mesh.x(i) - force.at().x()) / patch;
      double dy = 2 * (mesh.y(i) - force.at().y()) / patch;
      share[i] = lumps[i] * Math.max(0, 1 - dx * dx - dy * dy);
      sum += share[i];
    }
    for (int i = 0; i < share.length; i++) {
      share[i] /= sum;
    }
    return share;
  }

  private void material(StringBuilder s) {
    double t = section.thickness();
    PlaneStiffness d = section.d();
    double c = 12 / t / t / t;
    double q11 = c * d.m11();
    double q12 = c * d.m12();
    double q22 = c * d.m22();
    double nu12 = q12 / q22;
    double e1 = q11 - q12 * q12 / q22;
    double e2 = q22 - q12 * q12 / q11;
    double gz = section.shear() / (5.0 / 6 * t);
    double ez = Math.min(e1, e2);
    s.append("*MATERIAL,NAME=M\n*ELASTIC,TYPE=ENGINEERING CONSTANTS\n");
    // No contraction across the thickness couples in, so that plane stress is exact.
    for (double one : new double[] {e1, e2, ez, nu12, 0, 0, c * d.m66(), gz}) {
      s.append(text(one)).append(',');
    }
    s.append('\n').append(text(gz)).append('\n');
    s.append("*ORIENTATION,NAME=AXES\n1.,0.,0.,0.,1.,0.\n");
    s.append("*SHELL SECTION,ELSET=PLATE,MATERIAL=M,ORIENTATION=AXES\n").append(t).append('\n');
  }

  private static String text(double value) {
    return String.format(Locale.ROOT, "%.10e", value);
  }

  private double[][] read(int count) throws IOException {
    double[][] u = new double[count][3];
    boolean any = false;
    for (String line : Files.readAllLines(folder.resolve("plate.dat"))) {
      String[] parts = line.trim().split("\\s+");
      if (parts.length == 4 && parts[0].matches("\\d+")) {
        int node = Integer.parseInt(parts[0]) - 1;
        for (int i = 0; i < 3; i++) {
          u[node][i] = Double.parseDouble(parts[i + 1]);
        }
        any = true;
      }
    }
    if (!any) {
      throw new IOException("ccx said nothing: " + Files.readString(folder.resolve("said.txt")));
    }
    return u;
  }
}
