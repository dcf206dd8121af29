package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** Which stretches a chain needs: corners are rounded or sharp, and what explains nothing goes. */
final class ChainShape {

  /** Stretches shorter than this are tried to be done without, mm. */
  private static final double SHORT = 12;

  /** A stretch shorter than this is left out, mm. */
  private static final double SHORTEST = 0.4;

  /** How often places are given to stretches anew: a joint wanders along an arc step by step. */
  private static final int AGAIN = 3;

  /** How far round a stretch places have a say on whether it is needed, mm. */
  private static final double AROUND = 5;

  /** The same on its neighbours, mm. */
  private static final double ALONG = 20;

  /** Fewer places on a stretch tell nothing of it. */
  private static final int SEEN = 3;

  /** What it may cost to do without one, in squares of the spread. */
  private static final double PRICE = 14;

  /** A place that is astray costs so much and no more. */
  private static final double MOST = 16;

  /** A spread beyond this is that of a wrong chain, mm. */
  private static final double MOST_SPREAD = 0.035;

  /** A turn that is surely a corner, radians. */
  private static final double CORNER = Math.toRadians(20);

  /** A line shorter than this may be all that was seen of a rounded corner, mm. */
  private static final double CUTTING = 6;

  /** How far from a corner an arc that is tried begins, mm. */
  private static final double CUT = 2.0;

  /** Blur makes a corner no rounder than this, mm. */
  private static final double ROUNDEST = 1;

  /** An arc that has grown beyond this was led astray by a few places, radians. */
  private static final double LOOP = Math.toRadians(220);

  /** A turn that goes back where it came from, radians. */
  private static final double BACK = Math.toRadians(150);

  /** A tip with so short a side, mm, that turns by more is none of the part's, radians. */
  private static final double TIP = 3;

  private static final double TIP_TURN = Math.toRadians(100);

  /** An arc along which so many of an edge's places lie, share, is likely to be a whole circle. */
  private static final double NEARLY_WHOLE = 0.85;

  /** If it is, the others were seen badly and lie no farther off, mm. */
  private static final double SEEN_BADLY = 0.25;

  /** Share of places that count for nothing. */
  private static final double ASTRAY = 0.03;

  private ChainShape() {}

  /** A circle where all but a short stretch is one, and that one nearly so. */
  static EdgeChain circled(EdgeChain chain, List<EdgeChain.Measured> places) {
    if (chain.round() || places.isEmpty()) {
      return chain;
    }
    double scale = 3 * Math.max(2 * ChainFit.LEAST_SPREAD, chain.spread());
    for (Segment segment : chain.segments()) {
      if (segment instanceof Arc arc && Math.abs(arc.sweep()) > Math.PI) {
        List<Point> on = new ArrayList<>();
        int bad = 0;
        for (EdgeChain.Measured m : places) {
          double off = Math.abs(m.at().distance(arc.centre()) - arc.radius());
          bad += off > SEEN_BADLY ? 1 : 0;
          if (off < scale) {
            on.add(m.at());
          }
        }
        if (bad <= ASTRAY * places.size() && on.size() > NEARLY_WHOLE * places.size()) {
          return EdgeChain.circle(arc.centre(), arc.radius(), arc.sweep() < 0)
              .known(chain.spread(), chain.found());
        }
      }
    }
    return chain;
  }

  /** Fitted to the places once more, without short stretches that explain next to nothing. */
  static EdgeChain simplified(EdgeChain chain, List<EdgeChain.Measured> places) {
    if (chain.round()) {
      return chain;
    }
    List<Point> points = places.stream().map(EdgeChain.Measured::at).toList();
    // One scale for all: what fits worse must not be judged by its own spread.
    double scale = Math.min(MOST_SPREAD, Math.max(2 * ChainFit.LEAST_SPREAD, chain.spread()));
    EdgeChain best = tidied(chain, fitted(chain, points));
    boolean again = true;
    while (again && best.stretches() > 2) {
      again = false;
      List<EdgeChain.Measured> own = best.assigned(points);
      for (int k = 0; k < best.stretches() && !again; k++) {
        int stretch = k;
        // Where nothing was seen of a stretch, nothing speaks against it either.
        boolean seen = own.stream().filter(m -> m.stretch() == stretch).count() >= SEEN;
        double length = best.segment(k).length();
        if (length < 2 * SHORTEST || (seen && length < SHORT)) {
          // What is left over elsewhere has no say; on its neighbours it has, which move with it.
          Point middle = best.segment(k).at(0.5);
          int n = best.stretches();
          int before = (k + n - 1) % n;
          int after = (k + 1) % n;
          List<Point> near =
              own.stream()
                  .filter(
                      m -> {
                        boolean beside = m.stretch() == before || m.stretch() == after;
                        double reach = length / 2 + (beside ? ALONG : AROUND);
                        return m.at().distance(middle) < reach;
                      })
                  .map(EdgeChain.Measured::at)
                  .toList();
          EdgeChain shorter = without(best, k);
          EdgeChain without = tidied(shorter, fitted(shorter, points));
          if (cost(without, near, scale) < cost(best, near, scale) + PRICE) {
            best = without;
            again = true;
          }
        }
      }
    }
    return best;
  }

  /** Fitted, each place then given to the stretch that has come nearest, and fitted again. */
  private static EdgeChain fitted(EdgeChain chain, List<Point> points) {
    EdgeChain fitted = chain;
    for (int round = 0; round < AGAIN; round++) {
      fitted = ChainFit.of(fitted, fitted.assigned(points), points.size());
    }
    return fitted;
  }

  private static double cost(EdgeChain chain, List<Point> points, double scale) {
    double sum = 0;
    for (EdgeChain.Measured m : chain.assigned(points)) {
      double r = chain.off(m) / scale;
      sum += Math.min(r * r, MOST);
    }
    return sum;
  }

  /** With an arc at each corner, which the photo may then make larger or do without. */
  static EdgeChain rounded(EdgeChain chain) {
    if (chain.round()) {
      return chain;
    }
    List<Segment> all = chain.segments();
    int n = all.size();
    List<Point> kept = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Segment before = all.get((k + n - 1) % n);
      Segment here = all.get(k);
      Segment after = all.get((k + 1) % n);
      double cut = turns(before, here) ? CUT / here.length() : 0;
      double end = turns(here, after) ? 1 - CUT / here.length() : 1;
      Point from = here.at(cut);
      Point to = here.at(end);
      kept.add(from);
      double sweep = here instanceof Arc arc ? arc.sweep() * (end - cut) : 0;
      bends.add(rise(from, to, sweep));
      if (end < 1) {
        kept.add(to);
        bends.add(rise(to, after.at(CUT / after.length()), EdgeChain.turn(here, after)));
      }
    }
    return EdgeChain.of(kept, bends).known(chain.spread(), chain.found());
  }

  /**
   * With an arc for each short line that cuts a corner, as a few places of a rounded corner make
   * one.
   */
  static EdgeChain uncut(EdgeChain chain) {
    if (chain.round()) {
      return chain;
    }
    int n = chain.stretches();
    List<Point> kept = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    boolean any = false;
    for (int k = 0; k < n; k++) {
      Segment here = chain.segment(k);
      double in = EdgeChain.turn(chain.segment((k + n - 1) % n), here);
      double out = EdgeChain.turn(here, chain.segment((k + 1) % n));
      boolean cuts =
          here.length() < CUTTING
              && chain.rise(k) == 0
              && in * out > 0
              && Math.min(Math.abs(in), Math.abs(out)) > EdgeChain.NEARLY_TANGENT
              && Math.abs(in + out) < Math.PI;
      kept.add(chain.joint(k));
      bends.add(cuts ? rise(here.from(), here.to(), in + out) : chain.rise(k));
      any |= cuts;
    }
    return any && n > 2 ? EdgeChain.of(kept, bends).known(chain.spread(), chain.found()) : chain;
  }

  private static double rise(Point from, Point to, double sweep) {
    return from.distance(to) / 2 * Math.tan(sweep / 4);
  }

  private static boolean turns(Segment a, Segment b) {
    return Math.abs(EdgeChain.turn(a, b)) > CORNER && Math.min(a.length(), b.length()) > 3 * CUT;
  }

  /** With corners where it has arcs that are no rounder than blur makes a corner. */
  static EdgeChain sharpened(EdgeChain rounded) {
    EdgeChain chain = rounded;
    for (int k = 0; !chain.round() && k < chain.stretches() && chain.stretches() > 2; k++) {
      if (chain.segment(k) instanceof Arc arc
          && arc.radius() < ROUNDEST
          && Math.abs(arc.sweep()) > CORNER) {
        chain = without(chain, k);
        k--;
      }
    }
    return chain;
  }

  private static EdgeChain without(EdgeChain chain, int k) {
    List<Point> kept = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    int n = chain.stretches();
    int next = (k + 1) % n;
    for (int i = 0; i < n; i++) {
      if (i != k) {
        kept.add(i == next ? chain.joint(k).middle(chain.joint(next)) : chain.joint(i));
        bends.add(chain.rise(i));
      }
    }
    return EdgeChain.of(kept, bends).known(chain.spread(), chain.found());
  }

  /**
   * A fitted chain without stretches that have shrunk to nothing or run away into a loop.
   *
   * @param before what it was fitted from
   */
  static EdgeChain tidied(EdgeChain before, EdgeChain chain) {
    if (chain.round()) {
      return chain;
    }
    List<Point> kept = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    int n = chain.stretches();
    for (int k = 0; k < n; k++) {
      boolean nothing = chain.joint(k).distance(chain.joint(k + 1)) < SHORTEST;
      if (!nothing && (sweep(chain, k) < LOOP || sweep(before, k) > Math.PI)) {
        kept.add(chain.joint(k));
        bends.add(chain.rise(k));
      }
    }
    EdgeChain left =
        kept.size() < 2 || kept.size() == n
            ? chain
            : EdgeChain.of(kept, bends).known(chain.spread(), chain.found());
    return withoutSpikes(left);
  }

  /** Where the way turns back on itself, the shorter of both stretches is none of the edge. */
  private static EdgeChain withoutSpikes(EdgeChain chain) {
    EdgeChain left = chain;
    for (int k = 0; k < left.stretches() && left.stretches() > 2; k++) {
      int before = (k + left.stretches() - 1) % left.stretches();
      Segment in = left.segment(before);
      Segment out = left.segment(k);
      double shorter = Math.min(in.length(), out.length());
      double turn = Math.abs(EdgeChain.turn(in, out));
      if (shorter < SHORT && turn > BACK || shorter < TIP && turn > TIP_TURN) {
        left = without(left, in.length() < out.length() ? before : k);
        k = -1;
      }
    }
    return left;
  }

  private static double sweep(EdgeChain chain, int k) {
    return chain.segment(k) instanceof Arc arc ? Math.abs(arc.sweep()) : 0;
  }
}
