package felloe.out;

import felloe.cutting.CutterTool;
import felloe.cutting.JobHeights;
import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Runs a program through the interpreter and holds what the cutter swept against the plate. It
 * reads the bytes of the program and the plate, nothing of what made the paths. Paths and edges are
 * flattened within {@value #FLAT} mm. What a V tool does to the face is proved by {@link
 * FaceProgramsTest}.
 */
public final class ProgramProof {

  /**
   * What the program is to make.
   *
   * @param stock thickness of the stock, mm
   * @param tools in the order in which the program asks for them
   * @param stepDown how much an end mill may take at once; infinite when that is not asked
   * @param leftOvers material that no cutter of the job reaches
   */
  public record Wanted(
      Plate plate,
      double stock,
      JobHeights height,
      double stepDown,
      List<CutterTool> tools,
      List<Region> leftOvers,
      List<Bridge> bridges) {

    /** The same where nobody asks how much is taken at once. */
    public Wanted(
        Plate plate,
        double stock,
        JobHeights height,
        List<CutterTool> tools,
        List<Region> leftOvers,
        List<Bridge> bridges) {
      this(plate, stock, height, Double.POSITIVE_INFINITY, tools, leftOvers, bridges);
    }
  }

  /**
   * A tab that is to stand.
   *
   * @param at the middle of the cutter's path over it
   * @param width of its top, mm
   * @param top its height, below 0
   * @param reach how far from {@code at} material may stand at the full depth at most
   */
  public record Bridge(Point at, double width, double top, double reach) {

    /** A tab whose slopes take no more than 30 mm. */
    public Bridge(Point at, double width, double top) {
      this(at, width, top, width / 2 + 30);
    }
  }

  private static final double LIMIT = 0.01;
  private static final double FLAT = 2e-4;
  private static final double SKIN = 0.002;
  private static final double BAND = 0.4;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** What is wrong, a sentence each; empty when the program is good. */
  public final List<String> faults = new ArrayList<>();

  /** How far the cutter reached into the plate at worst, mm; below 0 when it stayed clear. */
  public double worstGouge = -1;

  /** The thickest material left at the finish line beside tabs and left-overs, mm. */
  public double worstLeft;

  /** Steepest way down of an end mill in the stock, degrees. */
  public double steepest;

  /** Time of all feed moves and dwells, s. */
  public double seconds;

  private final Wanted wanted;
  private final List<Rs274Step> steps;
  private final Geometry plate;
  private final IndexedFacetDistance edges;
  private final IndexedPointInAreaLocator inside;
  private final Map<Double, Geometry> sweeps = new HashMap<>();

  private ProgramProof(Wanted wanted, Rs274Interpreter machine) {
    this.wanted = wanted;
    this.steps = machine.steps;
    this.plate = polygon(wanted.plate().region());
    this.edges = new IndexedFacetDistance(plate);
    this.inside = new IndexedPointInAreaLocator(plate);
  }

  /** Proves a program. Where the interpreter stops, its message is the only fault. */
  public static ProgramProof of(byte[] program, Rs274Beyond beyond, Wanted wanted) {
    Rs274Interpreter machine = new Rs274Interpreter(beyond, 31.7, -212.3, 3);
    ProgramProof proof = new ProgramProof(wanted, machine);
    try {
      machine.run(program);
    } catch (Rs274Exception error) {
      proof.faults.add(error.getMessage());
      return proof;
    }
    proof.ends(machine);
    proof.travels();
    proof.cuts();
    proof.leaves();
    proof.bridges();
    proof.seconds =
        machine.dwell
            + machine.steps.stream().filter(s -> !s.rapid()).mapToDouble(s -> s.seconds(1)).sum();
    return proof;
  }

  private void fault(String what, Rs274Step step) {
    faults.add("line " + step.line() + ": " + what);
  }

  private void ends(Rs274Interpreter machine) {
    if (!machine.ended()) {
      faults.add("the program does not end");
    }
    if (machine.spunAtStop()) {
      faults.add("the spindle turns at a pause or at the end");
    }
    if (machine.at()[2] < wanted.height().clearance() - FLAT) {
      faults.add("the program ends at z " + machine.at()[2]);
    }
    if (machine.pauses() != wanted.tools().size() - 1) {
      faults.add(machine.pauses() + " pauses for " + wanted.tools().size() + " tools");
    }
  }

  private CutterTool tool(Rs274Step step) {
    return wanted.tools().get(Math.min(step.tool(), wanted.tools().size() - 1));
  }

  private void travels() {
    for (Rs274Step step : steps) {
      double low = Math.min(step.from()[2], step.to()[2]);
      boolean down = step.to()[2] < step.from()[2];
      if (!step.rapid()) {
        continue;
      }
      if (step.across() && low < wanted.height().clearance() - FLAT) {
        fault("travels across at z " + low, step);
      }
      // A cycle may fall fast into the hole that it has drilled so far.
      if (down && low < wanted.height().approach() - FLAT && !step.cycle()) {
        fault("falls fast to z " + low, step);
      }
    }
  }

  private static boolean inStock(Rs274Step step) {
    return Math.min(step.from()[2], step.to()[2]) < -FLAT;
  }

  private void cuts() {
    for (int i = 0; i < steps.size(); i++) {
      Rs274Step step = steps.get(i);
      if (step.rapid() || !inStock(step)) {
        continue;
      }
      if (step.speed() <= 0) {
        fault("cuts with the spindle standing", step);
      }
      if (tool(step).kind() == CutterTool.Kind.V_TOOL) {
        continue;
      }
      boolean mill = tool(step).kind() == CutterTool.Kind.END_MILL;
      double low = Math.min(step.from()[2], step.to()[2]);
      if (mill && low < wanted.height().bottom() - FLAT) {
        fault("cuts to z " + low + ", below the bottom", step);
      }
      double fall = step.from()[2] - step.to()[2];
      if (mill && fall > FLAT) {
        double flat = step.across() ? Math.sqrt(sq(step.length()) - sq(fall)) : 0;
        if (flat > 0) {
          steepest = Math.max(steepest, Math.toDegrees(Math.atan2(fall, flat)));
        } else if (!cutBefore(i)) {
          fault("plunges straight with an end mill", step);
        }
      }
      if (!mill && step.across()) {
        fault("a drill cuts sideways", step);
      }
      gouge(step);
      if (mill) {
        takes(i);
      }
    }
  }

  /** No more is taken at once than the step allows: an earlier pass went here before. */
  private void takes(int number) {
    Rs274Step step = steps.get(number);
    List<double[]> points = step.points(Double.POSITIVE_INFINITY);
    for (double[] p : List.of(points.get(0), points.get(points.size() / 2), step.to())) {
      double least = p[2] + wanted.stepDown() + 0.01;
      boolean taken = least >= 0;
      for (int i = number - 1; i >= 0 && !taken; i--) {
        Rs274Step before = steps.get(i);
        // A tab's slope may be cut from the pass above, a little to the side.
        taken = !before.rapid() && before.heightNear(p, tool(step).diameter() / 4) <= least;
      }
      if (!taken) {
        fault("takes too much at once at z " + Numbers.brief(p[2], 3), step);
        return;
      }
    }
  }

  private static double sq(double x) {
    return x * x;
  }

  private boolean cutBefore(int number) {
    Rs274Step plunge = steps.get(number);
    Geometry at = point(plunge.to());
    for (int i = 0; i < number; i++) {
      Rs274Step step = steps.get(i);
      boolean deep = Math.max(step.from()[2], step.to()[2]) <= plunge.to()[2] + FLAT;
      if (!step.rapid() && deep && path(step).distance(at) < LIMIT) {
        return true;
      }
    }
    return false;
  }

  private void gouge(Rs274Step step) {
    double radius = tool(step).diameter() / 2;
    Geometry path = path(step);
    boolean within = inside.locate(path.getCoordinates()[0]) != Location.EXTERIOR;
    double gouge = within ? radius : radius - edges.distance(path);
    worstGouge = Math.max(worstGouge, gouge);
    if (gouge > LIMIT) {
      fault("gouges the plate by " + Numbers.brief(gouge, 4), step);
    }
  }

  /** All that is swept at a depth or below it. */
  private Geometry swept(double depth) {
    return sweeps.computeIfAbsent(depth, this::sweep);
  }

  private Geometry sweep(double depth) {
    Geometry swept = FACTORY.createPolygon();
    for (int number = 0; number < wanted.tools().size(); number++) {
      if (wanted.tools().get(number).kind() == CutterTool.Kind.V_TOOL) {
        continue;
      }
      List<Geometry> paths = new ArrayList<>();
      for (Rs274Step step : steps) {
        boolean vertical = !step.across();
        double high =
            vertical
                ? Math.min(step.from()[2], step.to()[2])
                : Math.max(step.from()[2], step.to()[2]);
        if (!step.rapid() && high <= depth + FLAT && step.tool() == number) {
          paths.add(path(step));
        }
      }
      double radius = wanted.tools().get(number).diameter() / 2;
      swept = swept.union(buffer(FACTORY.buildGeometry(paths), radius));
    }
    return swept;
  }

  private static Geometry buffer(Geometry geometry, double distance) {
    BufferParameters parameters = new BufferParameters(64);
    parameters.setSimplifyFactor(1e-5);
    return BufferOp.bufferOp(geometry, distance, parameters);
  }

  /** The waste beside the finish lines that still stands at a depth, stated left-overs aside. */
  private Geometry standing(double depth, double band) {
    // The skin keeps the noise of two flattened lines on one another out of the answer.
    Geometry rest = buffer(plate, band).difference(buffer(plate, SKIN)).difference(swept(depth));
    for (Region region : wanted.leftOvers()) {
      rest = rest.difference(buffer(polygon(region), 2 * LIMIT));
    }
    return rest;
  }

  private void leaves() {
    List<Geometry> pieces = new ArrayList<>();
    Geometry rest = standing(-wanted.stock(), BAND);
    for (int i = 0; i < rest.getNumGeometries(); i++) {
      Geometry piece = rest.getGeometryN(i);
      double thickness = thickness(piece);
      boolean bridge = wanted.bridges().stream().anyMatch(b -> near(b, piece));
      if (thickness > LIMIT && bridge) {
        pieces.add(piece);
      } else {
        worstLeft = Math.max(worstLeft, thickness);
      }
      if (thickness > LIMIT && !bridge) {
        faults.add(
            "material of "
                + Numbers.brief(thickness, 4)
                + " mm stands at "
                + piece.getInteriorPoint());
      }
    }
    if (pieces.size() != wanted.bridges().size()) {
      faults.add(pieces.size() + " tabs stand, not " + wanted.bridges().size());
    }
  }

  private boolean near(Bridge bridge, Geometry piece) {
    for (Coordinate c : piece.getCoordinates()) {
      if (bridge.at().distance(new Point(c.x, c.y)) > bridge.reach()) {
        return false;
      }
    }
    return true;
  }

  /** Twice the distance by which a piece can be shrunk before nothing is left, within 1 %. */
  private static double thickness(Geometry piece) {
    double low = 0;
    double high = BAND;
    for (int i = 0; i < 9; i++) {
      double middle = (low + high) / 2;
      if (buffer(piece, -middle).isEmpty()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high == BAND / 512 ? 0 : 2 * high + SKIN;
  }

  /** Tabs reach across the slot below their tops, and nothing stands above their tops. */
  private void bridges() {
    if (wanted.bridges().isEmpty()) {
      return;
    }
    double slot = wanted.tools().get(wanted.tools().size() - 1).diameter();
    double top = wanted.bridges().stream().mapToDouble(Bridge::top).max().orElseThrow();
    Geometry above = standing(top + 2 * LIMIT, BAND);
    for (int i = 0; i < above.getNumGeometries(); i++) {
      if (thickness(above.getGeometryN(i)) > LIMIT) {
        faults.add("material stands above the tabs at " + above.getGeometryN(i).getInteriorPoint());
      }
    }
    Map<Double, Geometry> rests = new HashMap<>();
    for (Bridge bridge : wanted.bridges()) {
      Geometry rest =
          rests.computeIfAbsent(bridge.top(), level -> standing(level - 2 * LIMIT, slot));
      Geometry at = point(bridge.at().x(), bridge.at().y());
      boolean stands = false;
      for (int i = 0; i < rest.getNumGeometries(); i++) {
        Geometry piece = rest.getGeometryN(i);
        if (piece.distance(at) >= 0.5) {
          continue;
        }
        boolean across = !buffer(piece, -(Math.min(bridge.width(), slot) / 2 - 0.1)).isEmpty();
        boolean wide = piece.getArea() >= (bridge.width() - 0.2) * slot;
        stands |= across && wide;
      }
      if (!stands) {
        faults.add("no tab of " + bridge.width() + " mm at " + bridge.at());
      }
    }
  }

  private static Geometry point(double... at) {
    return FACTORY.createPoint(new Coordinate(at[0], at[1]));
  }

  private static Geometry path(Rs274Step step) {
    if (!step.across()) {
      return point(step.to());
    }
    return FACTORY.createLineString(
        step.points(FLAT).stream().map(p -> new Coordinate(p[0], p[1])).toArray(Coordinate[]::new));
  }

  private static Polygon polygon(Region region) {
    return FACTORY.createPolygon(
        ring(region.outer()),
        region.holes().stream().map(ProgramProof::ring).toArray(LinearRing[]::new));
  }

  private static LinearRing ring(Contour contour) {
    List<Coordinate> corners = new ArrayList<>();
    for (Segment segment : contour.segments()) {
      int n = 1;
      if (segment instanceof Arc arc) {
        double step = 2 * Math.acos(Math.max(0.5, 1 - FLAT / arc.radius()));
        n = Math.max(4, (int) Math.ceil(Math.abs(arc.sweep()) / step));
      }
      for (int i = 0; i < n; i++) {
        Point p = segment.at((double) i / n);
        corners.add(new Coordinate(p.x(), p.y()));
      }
    }
    corners.add(corners.get(0));
    return FACTORY.createLinearRing(corners.toArray(Coordinate[]::new));
  }
}
