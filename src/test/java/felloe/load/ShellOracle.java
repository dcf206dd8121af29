package felloe.load;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A plate on its hub by another program: CalculiX, with six-node shells that it turns into solids.
 * It is given the triangles of a mesh with the exact middles of their sides, and the same hands.
 */
final class ShellOracle {

  /**
   * What the program said.
   *
   * @param deflections of all points of the mesh, mm
   * @param pushes what holds each point, across the plate, N
   * @param atLoads movement under each hand, mm
   * @param stresses at the corners and middles of the solids
   */
  record Answer(double[] deflections, double[] pushes, double[] atLoads, List<Stress> stresses) {

    /**
     * Stresses on the front by what acts across the plate alone, or by what acts in it alone: half
     * of what both faces differ by, or of their sum.
     */
    List<Stress> faces(boolean bent) {
      Map<List<Double>, Stress> backs = new HashMap<>();
      stresses.stream().filter(s -> s.z < 0).forEach(s -> backs.put(s.place(), s));
      List<Stress> found = new ArrayList<>();
      for (Stress front : stresses) {
        if (front.z > 0) {
          double[] back = backs.get(front.place()).values;
          double[] values = new double[front.values.length];
          for (int i = 0; i < values.length; i++) {
            values[i] = (front.values[i] + (bent ? -back[i] : back[i])) / 2;
          }
          found.add(new Stress(front.x, front.y, front.z, values));
        }
      }
      return found;
    }
  }

  /** Stresses at a point of a solid: x, y, z, xy, yz, zx, MPa. */
  record Stress(double x, double y, double z, double[] values) {

    Point at() {
      return new Point(x, y);
    }

    private List<Double> place() {
      return List.of(x, y);
    }

    /**
     * After von Mises, on a face: nothing pushes or drags there, so that only what acts in the face
     * counts. One layer of solids spreads the shear across the plate, which has its middle at the
     * middle, out to the faces.
     */
    double onFace() {
      double[] v = values;
      return Math.sqrt(v[0] * v[0] + v[1] * v[1] - v[0] * v[1] + 3 * v[3] * v[3]);
    }
  }

  private final SixNodeMesh mesh;
  private final PlateSection section;
  private final Path folder;

  ShellOracle(PlateMesh mesh, Region region, PlateSection section, Path folder) {
    this.mesh = new SixNodeMesh(mesh, region);
    this.section = section;
    this.folder = folder;
  }

  /** Whether the program is installed. */
  static boolean installed() {
    return List.of(System.getenv().getOrDefault("PATH", "").split(":")).stream()
        .anyMatch(p -> Files.isExecutable(Path.of(p, "ccx")));
  }

  /** Solves one case of a plate that is held fast within a circle. */
  Answer solve(LoadCase load, Support.Clamped support) throws IOException, InterruptedException {
    BitSet fast = new BitSet();
    for (int i = 0; i < mesh.points(); i++) {
      fast.set(i, Math.hypot(mesh.x(i), mesh.y(i)) <= support.diameter() / 2 + 1e-6);
    }
    return solve(load, fast, new BitSet());
  }

  /** Solves one case of a plate that is held fast under heads, and by nothing else. */
  Answer solve(LoadCase load, List<Support.Bolt> heads) throws IOException, InterruptedException {
    BitSet fast = new BitSet();
    for (int i = 0; i < mesh.points(); i++) {
      int point = i;
      fast.set(
          i, heads.stream().anyMatch(b -> mesh.distance(point, b.at()) <= b.head() / 2 + 1e-6));
    }
    return solve(load, fast, new BitSet());
  }

  /**
   * Solves one case of a plate on screws, with a face behind that pushes and does not pull: points
   * of the face are held where they would sink in, and let go where they would be pulled, until
   * that is so nowhere.
   *
   * @param beside how near to a head the face is left out, mm
   * @return tension of each screw, N
   */
  List<Double> tensions(LoadCase load, Support.Bolted support, double beside)
      throws IOException, InterruptedException {
    BitSet fast = new BitSet();
    BitSet face = new BitSet();
    int[] under = new int[mesh.points()];
    for (int i = 0; i < mesh.points(); i++) {
      under[i] = -1;
      boolean near = false;
      for (int b = 0; b < support.bolts().size(); b++) {
        Support.Bolt bolt = support.bolts().get(b);
        double off = mesh.distance(i, bolt.at());
        if (off <= bolt.head() / 2 + 1e-6) {
          under[i] = b;
          fast.set(i);
        }
        near |= off < bolt.head() / 2 + beside - 1e-6;
      }
      int point = i;
      boolean before =
          support.bearing().stream()
              .anyMatch(d -> mesh.distance(point, d.at()) <= d.diameter() / 2 + 1e-6);
      face.set(i, !near && before);
    }
    BitSet touching = new BitSet();
    double[] last = new double[support.bolts().size()];
    for (int round = 0; round < 12; round++) {
      Answer answer = solve(load, fast, touching);
      double[] now = new double[last.length];
      for (int i = 0; i < under.length; i++) {
        if (under[i] >= 0) {
          now[under[i]] -= answer.pushes()[i];
        }
      }
      double most = Arrays.stream(now).max().orElse(0);
      double change = 0;
      for (int b = 0; b < now.length; b++) {
        change = Math.max(change, Math.abs(now[b] - last[b]));
      }
      last = now;
      if (round > 2 && change < 0.01 * most) {
        return Arrays.stream(now).map(t -> Math.max(0, t)).boxed().toList();
      }
      BitSet next = new BitSet();
      for (int i = face.nextSetBit(0); i >= 0; i = face.nextSetBit(i + 1)) {
        next.set(i, touching.get(i) ? answer.pushes()[i] > 0 : answer.deflections()[i] < -1e-7);
      }
      touching = next;
    }
    throw new IOException("where the face pushes did not settle");
  }

  private Answer solve(LoadCase load, BitSet fast, BitSet touching)
      throws IOException, InterruptedException {
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
    s.append("*NSET,NSET=HELD\n");
    for (int i = 0; i < n; i++) {
      if (fast.get(i) || touching.get(i)) {
        s.append(i + 1).append(",\n");
        held.append(i + 1).append(fast.get(i) ? ",1,6\n" : ",3,3\n");
      }
    }
    int elementsFrom = s.length();
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
    s.append("*NODE PRINT,NSET=ALL\nU\n*NODE PRINT,NSET=HELD\nRF\n*EL FILE,OUTPUT=3D\nS\n");
    s.append("*END STEP\n");
    run(s.substring(0, elementsFrom), s.substring(elementsFrom));
    double[][] u = read(n, "displacements");
    double[][] forces = read(n, "forces");
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
    double[] pushes = new double[n];
    for (int i = 0; i < n; i++) {
      pushes[i] = forces[i][2];
    }
    return new Answer(w, pushes, atLoads, stresses());
  }

  /**
   * Runs the program. Its solver (SPOOLES) now and then breaks down while it orders the equations;
   * with the elements told from the last to the first it finds another order.
   */
  private void run(String before, String after) throws IOException, InterruptedException {
    for (boolean backwards : new boolean[] {false, true}) {
      Files.writeString(folder.resolve("plate.inp"), before + elements(backwards) + after);
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
      if (!Files.readString(folder.resolve("said.txt")).contains("fatal error in GPart")) {
        return;
      }
    }
  }

  private String elements(boolean backwards) {
    StringBuilder s = new StringBuilder("*ELEMENT,TYPE=S6,ELSET=PLATE\n");
    for (int i = 0; i < mesh.triangles(); i++) {
      int t = backwards ? mesh.triangles() - 1 - i : i;
      s.append(i + 1);
      for (int k = 0; k < 3; k++) {
        s.append(',').append(mesh.corner(t, k) + 1);
      }
      s.append(',').append(mesh.middle(t, 2) + 1);
      s.append(',').append(mesh.middle(t, 0) + 1);
      s.append(',').append(mesh.middle(t, 1) + 1).append('\n');
    }
    return s.toString();
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

  private double[][] read(int count, String what) throws IOException {
    double[][] u = new double[count][3];
    boolean any = false;
    boolean here = false;
    for (String line : Files.readAllLines(folder.resolve("plate.dat"))) {
      String[] parts = line.trim().split("\\s+");
      if (line.contains("(")) {
        here = line.trim().startsWith(what);
      } else if (here && parts.length == 4) {
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

  /** Fields of twelve characters after the number of the node. */
  private List<Stress> stresses() throws IOException {
    Map<String, double[]> places = new HashMap<>();
    List<Stress> found = new ArrayList<>();
    boolean points = false;
    boolean stresses = false;
    for (String line : Files.readAllLines(folder.resolve("plate.frd"))) {
      if (line.startsWith("    2C")) {
        points = true;
      } else if (line.startsWith(" -4")) {
        stresses = line.contains("STRESS");
      } else if (line.startsWith(" -3")) {
        points = false;
        stresses = false;
      } else if (line.startsWith(" -1") && (points || stresses)) {
        String node = line.substring(3, 13);
        double[] values = new double[(line.length() - 13) / 12];
        for (int i = 0; i < values.length; i++) {
          values[i] = Double.parseDouble(line.substring(13 + 12 * i, 25 + 12 * i).trim());
        }
        if (points) {
          places.put(node, values);
        } else {
          double[] at = places.get(node);
          found.add(new Stress(at[0], at[1], at[2], values));
        }
      }
    }
    return found;
  }
}
