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

  /** A head or a place of the hub's face gives this much, N/mm: next to nothing. */
  private static final double STIFF = 1e7;

  /** What the program said. */
  record Answer(double[] deflections, double[] atLoads, double[] tensions, double[][] strains) {}

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
  Answer solve(LoadCase load, Support support) throws IOException, InterruptedException {
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
    List<int[]> heads = new ArrayList<>();
    int[] face = new int[0];
    StringBuilder held = new StringBuilder();
    List<Integer> springs = new ArrayList<>();
    if (support instanceof Support.Clamped c) {
      for (int i = 0; i < n; i++) {
        if (Math.hypot(mesh.x(i), mesh.y(i)) <= c.diameter() / 2 + 1e-6) {
          held.append(i + 1).append(",1,6\n");
        }
      }
    } else {
      Support.Bolted b = (Support.Bolted) support;
      boolean[] under = new boolean[n];
      boolean[] beside = new boolean[n];
      for (Support.Bolt bolt : b.bolts()) {
        List<Integer> head = new ArrayList<>();
        for (int i = 0; i < n; i++) {
          double off = Math.hypot(mesh.x(i) - bolt.at().x(), mesh.y(i) - bolt.at().y());
          if (off <= bolt.head() / 2 + 1e-6) {
            head.add(i);
            under[i] = true;
            held.append(i + 1).append(",1,2\n").append(i + 1).append(",4,6\n");
            springs.add(i);
          }
          beside[i] |= off < bolt.head() / 2 + BESIDE * section.thickness();
        }
        heads.add(head.stream().mapToInt(Integer::intValue).toArray());
      }
      List<Integer> on = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        if (Math.hypot(mesh.x(i), mesh.y(i)) <= b.face() / 2 + 1e-6 && !under[i] && !beside[i]) {
          on.add(i);
        }
      }
      face = on.stream().mapToInt(Integer::intValue).toArray();
    }
    int next = n;
    for (int i : face) {
      s.append(next + 1).append(',').append(text(mesh.x(i))).append(',').append(text(mesh.y(i)));
      s.append(",-100\n");
      held.append(next + 1).append(",1,3\n");
      next++;
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
    int e = mesh.triangles();
    if (!springs.isEmpty()) {
      s.append("*ELEMENT,TYPE=SPRING1,ELSET=HEADS\n");
      for (int i : springs) {
        s.append(++e).append(',').append(i + 1).append('\n');
      }
      s.append("*SPRING,ELSET=HEADS\n3\n").append(STIFF).append('\n');
    }
    if (face.length > 0) {
      s.append("*ELEMENT,TYPE=SPRINGA,ELSET=FACE\n");
      for (int i = 0; i < face.length; i++) {
        s.append(++e).append(',').append(n + i + 1).append(',').append(face[i] + 1).append('\n');
      }
      s.append("*SPRING,ELSET=FACE,NONLINEAR\n");
      s.append(-STIFF / 10).append(",-1.\n0.,0.\n1e-3,10.\n");
    }
    material(s);
    s.append("*BOUNDARY\n").append(held);
    s.append("*STEP\n*STATIC\n");
    double[] areas = LoadSpread.areas(mesh);
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
    double[][] u = read(next);
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
    double[] tensions = new double[heads.size()];
    for (int h = 0; h < tensions.length; h++) {
      for (int i : heads.get(h)) {
        tensions[h] += STIFF * w[i];
      }
    }
    return new Answer(w, atLoads, tensions, null);
  }

  static double BESIDE = 0.5;

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
