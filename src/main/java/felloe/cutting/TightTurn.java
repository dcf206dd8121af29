package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of a rough line that turns toward the waste more tightly than a blade follows: one
 * corner, or several short bends that follow each other.
 *
 * @param deepest where half the stretch's turning is done
 * @param toWaste from there into the waste, of length one
 * @param within the tightest radius of the stretch, mm; 0 in a sharp corner
 * @param turning of the whole stretch, radians; the more, the sharper the corner's angle
 */
record TightTurn(Point deepest, Point toWaste, double within, double turning) {

  /** A bend of less in all is followed by nibbling, radians; common practice. */
  private static final double SHALLOW = Math.toRadians(25);

  /** More than this is two turns, radians. */
  private static final double MOST = Math.toRadians(200);

  /** A place on the way from the deepest place into the waste, mm from it. */
  Point at(double distance) {
    return deepest.plus(toWaste, distance);
  }

  /** A bend: an arc, or a joint where the line changes its direction at once. */
  private record Bend(Point at, Point normal, double turning, double radius, double start) {}

  /** The turns of a line that are tighter than a radius, in the order of the line. */
  static List<TightTurn> of(CutLine line, double radius) {
    List<Segment> chain = line.path().segments();
    double side = line.inside() ? 1 : -1;
    List<Bend> bends = new ArrayList<>();
    double at = 0;
    for (int i = 0; i < chain.size(); i++) {
      Segment segment = chain.get(i);
      Segment before = chain.get((i + chain.size() - 1) % chain.size());
      Point in = before.tangent(1);
      Point out = segment.tangent(0);
      double sharp = Math.atan2(in.cross(out), in.dot(out)) * side;
      if (sharp > 1e-6) {
        Point along = in.plus(out).norm() > 1e-9 ? in.plus(out).unit() : in.left();
        bends.add(new Bend(segment.from(), along.left().times(side), sharp, 0, at));
      }
      if (segment instanceof Arc arc && arc.sweep() * side > 0 && arc.radius() < radius) {
        pieces(bends, arc, side, at);
      }
      at += segment.length();
    }
    return turns(bends, at, radius);
  }

  /** An arc in short pieces, so that the middle of a turn may lie within it. */
  private static void pieces(List<Bend> bends, Arc arc, double side, double start) {
    // An odd number: the middle of the arc is the middle of a piece.
    int parts = 2 * (int) Math.ceil(Math.abs(arc.sweep()) / Math.toRadians(10)) + 1;
    for (int k = 0; k < parts; k++) {
      double middle = (k + 0.5) / parts;
      bends.add(
          new Bend(
              arc.at(middle),
              arc.tangent(middle).left().times(side),
              Math.abs(arc.sweep()) / parts,
              arc.radius(),
              start + middle * arc.length()));
    }
  }

  private static List<TightTurn> turns(List<Bend> bends, double length, double radius) {
    List<List<Bend>> runs = new ArrayList<>();
    double turned = 0;
    for (Bend bend : bends) {
      List<Bend> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
      boolean goesOn =
          !last.isEmpty()
              && near(last.get(last.size() - 1), bend, radius, 0)
              && turned + bend.turning() <= MOST;
      if (!goesOn) {
        runs.add(new ArrayList<>());
        turned = 0;
      }
      runs.get(runs.size() - 1).add(bend);
      turned += bend.turning();
    }
    if (runs.size() > 1) {
      List<Bend> first = runs.get(0);
      List<Bend> last = runs.get(runs.size() - 1);
      double both = turning(first) + turning(last);
      if (near(last.get(last.size() - 1), first.get(0), radius, length) && both <= MOST) {
        last.addAll(first);
        runs.remove(0);
      }
    }
    return runs.stream().filter(run -> turning(run) >= SHALLOW).map(TightTurn::of).toList();
  }

  /** Whether two bends belong to one turn: a blade has no room to straighten out between them. */
  private static boolean near(Bend a, Bend b, double radius, double length) {
    double gap = b.start() + length - a.start();
    double own = a.radius() * a.turning() + b.radius() * b.turning();
    boolean apart = a.radius() == 0 && b.radius() == 0;
    return gap <= own / 2 + (apart ? radius / 5 : radius / 3);
  }

  private static double turning(List<Bend> run) {
    return run.stream().mapToDouble(Bend::turning).sum();
  }

  private static TightTurn of(List<Bend> run) {
    double half = turning(run) / 2;
    double tightest = run.stream().mapToDouble(Bend::radius).min().orElse(0);
    double turned = 0;
    for (Bend bend : run) {
      turned += bend.turning();
      if (turned >= half - 1e-9) {
        return new TightTurn(bend.at(), bend.normal(), tightest, 2 * half);
      }
    }
    throw new IllegalStateException("a turn without bends");
  }
}
