package felloe.out;

import felloe.cutting.CutterTool;
import felloe.cutting.JobHeights;
import felloe.cutting.Move;
import felloe.cutting.Operation;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A plain plan of a job made in the test, so that writers are tried apart from the planner: small
 * holes are drilled, everything else is cut by laps that ramp down all the way round, and two tabs
 * stand at the longest lines of the outline.
 */
final class HandPlan {

  static final JobHeights HEIGHT = new JobHeights(8, 1.5, -6);
  static final double STOCK = 5.8;
  private static final CutterTool MILL =
      new CutterTool("3 mm end mill", CutterTool.Kind.END_MILL, 3, 2);
  private static final double STEP = 2;
  private static final double TAB_TOP = -4.5;
  private static final double TAB = 4;

  final List<Operation> operations = new ArrayList<>();
  final List<ProgramProof.Bridge> bridges = new ArrayList<>();
  final List<CutterTool> tools = new ArrayList<>();
  private final double error;
  private final boolean tabs;

  /**
   * Plans a plate.
   *
   * @param error how far every path is off to the outside of the plate, mm
   * @param tabs whether tabs are left
   */
  HandPlan(Plate plate, double error, boolean tabs) {
    this.error = error;
    this.tabs = tabs;
    Map<Double, List<Move>> drilling = new TreeMap<>();
    for (Hole hole : plate.holes()) {
      if (hole.diameter() <= 5) {
        List<Move> moves = drilling.computeIfAbsent(hole.diameter(), d -> new ArrayList<>());
        if (moves.size() % 3 != 2) {
          moves.add(new Move.Travel(hole.centre()));
        }
        double peck = moves.size() % 2 == 0 ? 2.5 : 0;
        moves.add(new Move.Drill(hole.centre(), -6, peck, 150));
      }
    }
    drilling.forEach(
        (size, moves) -> {
          CutterTool drill = new CutterTool("drill", CutterTool.Kind.DRILL, size, 2);
          operations.add(new Operation("drill (holes)", drill, 2500, moves));
          tools.add(drill);
        });
    tools.add(MILL);
    for (Hole hole : plate.holes()) {
      if (hole.diameter() > 5) {
        cut(hole.label(), hole.contour(), -1, false);
      }
    }
    for (Window window : plate.windows()) {
      cut(window.label(), window.contour(), -1, false);
    }
    cut("outline", plate.outline(), 1, tabs);
  }

  GcodeJob job() {
    return new GcodeJob(
        new About("Heron, cut lines", "1f4e90ab", "Clamp the stock. Wear a dust mask (P2)."),
        "hub axis, upper face of the stock",
        List.of("stock 5.8 mm"),
        HEIGHT,
        true,
        operations);
  }

  ProgramProof.Wanted wanted(Plate plate) {
    return new ProgramProof.Wanted(plate, STOCK, HEIGHT, STEP, tools, List.of(), bridges);
  }

  private void cut(String title, Contour finish, int side, boolean bridged) {
    double out = side * MILL.diameter() / 2 + error;
    List<Region> paths = Offset.of(finish, out);
    for (Region region : paths) {
      List<Move> moves = new ArrayList<>();
      List<Segment> lap = lap(region.outer().segments(), bridged);
      moves.add(new Move.Travel(lap.get(0).from()));
      moves.add(new Move.Sink(lap.get(0).from(), 0, 300));
      double z = 0;
      while (z > HEIGHT.bottom()) {
        double next = Math.max(HEIGHT.bottom(), z - STEP);
        ramp(moves, lap, z, next);
        z = next;
      }
      ramp(moves, lap, z, z);
      operations.add(new Operation(title, MILL, 12000, moves));
    }
  }

  /** The lap with the two longest lines broken into before, tab and after. */
  private List<Segment> lap(List<Segment> segments, boolean bridged) {
    if (!bridged) {
      return segments;
    }
    List<Segment> longest =
        segments.stream()
            .filter(s -> s instanceof Line && s.length() > 20)
            .sorted((a, b) -> Double.compare(b.length(), a.length()))
            .limit(2)
            .toList();
    List<Segment> lap = new ArrayList<>();
    for (Segment segment : segments) {
      if (!longest.contains(segment)) {
        lap.add(segment);
        continue;
      }
      Point middle = segment.at(0.5);
      Point along = segment.tangent(0);
      double half = (TAB + MILL.diameter()) / 2;
      Point a = middle.plus(along, -half - 3);
      Point b = middle.plus(along, -half);
      Point c = middle.plus(along, half);
      Point d = middle.plus(along, half + 3);
      lap.add(new Line(segment.from(), a));
      lap.add(new Line(a, b));
      lap.add(new Line(b, c));
      lap.add(new Line(c, d));
      lap.add(new Line(d, segment.to()));
      bridges.add(new ProgramProof.Bridge(middle, TAB, TAB_TOP, half + 3 + MILL.diameter()));
    }
    return lap;
  }

  private void ramp(List<Move> moves, List<Segment> lap, double from, double to) {
    double length = lap.stream().mapToDouble(Segment::length).sum();
    double done = 0;
    double z = from;
    for (int i = 0; i < lap.size(); i++) {
      Segment segment = lap.get(i);
      done += segment.length();
      double wanted = from + (to - from) * done / length;
      double next = tabs && rises(lap, i) ? Math.max(wanted, TAB_TOP) : wanted;
      moves.add(new Move.Cut(segment, z, next, z == next ? 600 : 300));
      z = next;
    }
  }

  /** Whether the end of a segment lies over a tab. */
  private boolean rises(List<Segment> lap, int i) {
    return bridges.stream()
        .anyMatch(
            bridge -> {
              double far = bridge.at().distance(lap.get(i).to());
              return far < (TAB + MILL.diameter()) / 2 + 0.01;
            });
  }
}
