package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Follows a plan's moves as a machine will read them: coordinates rounded to a file's decimals, an
 * arc's centre as a rounded offset from its rounded start. An arc whose ends are rounded to the
 * same place is a whole circle, as a machine takes it; a line whose ends are is nothing.
 */
final class RoundedToolpath {

  private static final double JUMP = 0.002;

  private final CutPlan plan;
  private final double scale;
  private final double steepest;
  private final List<WrittenMove> cuts = new ArrayList<>();
  private final List<FaceCheck.FaceCut> faceCuts = new ArrayList<>();
  private final List<Move.Drill> drills = new ArrayList<>();
  private final List<CutterTool> drillTools = new ArrayList<>();
  private final SweepTally way;
  private final SweepTally plunge;
  private final SweepTally arcs;
  private final SweepTally depth;
  private double deepest;
  private Point at;
  private double z;
  private boolean travelled;
  private boolean sunk;

  RoundedToolpath(
      CutPlan plan,
      int decimals,
      SweepTally way,
      SweepTally plunge,
      SweepTally arcs,
      SweepTally depth) {
    this.plan = plan;
    this.scale = Math.pow(10, decimals);
    this.steepest = Math.tan(plan.setup().entry().ramp());
    this.way = way;
    this.plunge = plunge;
    this.arcs = arcs;
    this.depth = depth;
  }

  /** The cuts, in order. */
  List<WrittenMove> cuts() {
    return cuts;
  }

  /** The cuts of V tools, in order. */
  List<FaceCheck.FaceCut> faceCuts() {
    return faceCuts;
  }

  /** The drilled holes, in order. */
  List<Move.Drill> drills() {
    return drills;
  }

  /** The drill of each drilled hole. */
  CutterTool drillTool(int number) {
    return drillTools.get(number);
  }

  double deepest() {
    return deepest;
  }

  RoundedToolpath run() {
    at = Point.ORIGIN;
    for (Operation operation : plan.operations()) {
      z = plan.height().clearance();
      if (operation.moves().isEmpty() || !(operation.moves().get(0) instanceof Move.Travel)) {
        way.broken(operation.title() + " does not begin with travel", at);
      }
      for (Move move : operation.moves()) {
        refuseSunk(operation, move instanceof Move.Cut);
        step(operation, move);
      }
      refuseSunk(operation, false);
    }
    return this;
  }

  /** A V tool that went down into the stock must cut on from there. */
  private void refuseSunk(Operation operation, boolean cuts) {
    if (sunk && !cuts) {
      way.broken(operation.title() + " goes down and cuts nothing", at);
      sunk = false;
    }
  }

  private void step(Operation operation, Move move) {
    CutterTool.Kind kind = operation.tool().kind();
    if (move instanceof Move.Travel travel) {
      at = rounded(travel.to());
      z = plan.height().clearance();
      travelled = true;
    } else if (move instanceof Move.Sink sink) {
      sink(operation, sink);
    } else if (move instanceof Move.Drill drill) {
      if (kind != CutterTool.Kind.DRILL) {
        way.broken(operation.title() + " drills with a " + operation.tool().name(), drill.at());
      }
      at = rounded(drill.at());
      drills.add(new Move.Drill(at, rounded(drill.bottom()), drill.peck(), drill.feed()));
      drillTools.add(operation.tool());
      deep(operation, drill.bottom(), plan.setup().depths().stock() + plan.setup().depths().bed());
    } else if (move instanceof Move.Cut cut) {
      if (kind == CutterTool.Kind.DRILL) {
        way.broken(operation.title() + " cuts sideways with a drill", cut.along().from());
      }
      cut(operation, cut, kind == CutterTool.Kind.BEAM);
    }
  }

  private void sink(Operation operation, Move.Sink sink) {
    if (!at.near(rounded(sink.at()), JUMP)) {
      way.broken(operation.title() + " goes down beside where it stands", sink.at());
    }
    boolean cone = operation.tool().kind() == CutterTool.Kind.V_TOOL;
    boolean mill = operation.tool().kind() == CutterTool.Kind.END_MILL;
    if (!(mill || cone) || sink.toZ() > z) {
      way.broken(operation.title() + " moves straight in a wrong way", sink.at());
    }
    if (sink.toZ() < 0 && !cone) {
      plunge.add(90, operation.title(), sink.at());
    }
    sunk = cone && sink.toZ() < 0;
    z = rounded(sink.toZ());
  }

  private void cut(Operation operation, Move.Cut cut, boolean beam) {
    Point from = at;
    if (!from.near(rounded(cut.along().from()), JUMP)
        || (!beam && Math.abs(rounded(cut.fromZ()) - z) > JUMP)) {
      way.broken(operation.title() + " cuts from where it does not stand", cut.along().from());
    }
    Point to = rounded(cut.along().to());
    double toZ = rounded(cut.toZ());
    Segment flown = flown(operation, cut.along(), from, to);
    if (operation.tool().kind() == CutterTool.Kind.V_TOOL) {
      if (flown != null) {
        WrittenMove written = new WrittenMove(flown, z, toZ, operation.title(), false, travelled);
        faceCuts.add(new FaceCheck.FaceCut(written, operation.tool()));
        sunk = false;
      }
    } else if (flown != null) {
      cuts.add(new WrittenMove(flown, z, toZ, operation.title(), beam, travelled));
      travelled = false;
      if (!beam && toZ < 0 && z - toZ > JUMP) {
        double angle = Math.toDegrees(Math.atan2(z - toZ - 2 / scale, flown.length()));
        plunge.add(angle, operation.title(), from);
      }
    } else if (!beam && toZ < 0 && z - toZ > JUMP) {
      plunge.add(90, operation.title(), from);
    }
    if (!beam) {
      deep(operation, toZ, -plan.height().bottom());
    }
    at = to;
    z = toZ;
  }

  private void deep(Operation operation, double bottom, double most) {
    deepest = Math.min(deepest, bottom);
    depth.add(-bottom - most, operation.title(), at);
  }

  /** The way as flown; null where nothing moves. */
  private Segment flown(Operation operation, Segment segment, Point from, Point to) {
    boolean still = from.near(to, Tolerances.SAME_POINT);
    if (segment instanceof Arc arc) {
      Point offset = rounded(arc.centre().minus(from));
      Point centre = from.plus(offset);
      double first = offset.norm();
      double second = to.distance(centre);
      arcs.add(Math.abs(first - second), operation.title(), from);
      double radius = (first + second) / 2;
      if (radius <= 2 * Tolerances.SAME_POINT) {
        return still ? null : new Line(from, to);
      }
      if (still) {
        return Arc.of(
            centre, radius, from.minus(centre).angle(), Math.copySign(2 * Math.PI, arc.sweep()));
      }
      return Arc.about(
          centre, onCircle(centre, from, radius), onCircle(centre, to, radius), arc.sweep() > 0);
    }
    return still ? null : new Line(from, to);
  }

  private static Point onCircle(Point centre, Point p, double radius) {
    return centre.plus(p.minus(centre).unit(), radius);
  }

  private Point rounded(Point p) {
    return new Point(rounded(p.x()), rounded(p.y()));
  }

  private double rounded(double value) {
    return Math.rint(value * scale) / scale;
  }
}
