package felloe.measure;

import felloe.geometry.Point;
import felloe.hub.ClearanceSeries;
import felloe.hub.HubFitResult;
import felloe.hub.HubRing;
import felloe.hub.RigidFit;
import felloe.hub.RigidFit.Round;
import felloe.hub.ScrewThread;
import java.util.ArrayList;
import java.util.List;

/**
 * Which holes to open, to which drill, so that all screws enter. Each step opens the one hole whose
 * next drill helps most; none is opened beyond its screw's coarse clearance hole.
 *
 * @param all the holes that grow
 * @param clearance room of the tightest screw after that, as measured, mm
 * @param worst the same at the worst, mm
 */
public record HoleEnlargement(List<Opening> all, double clearance, double worst) {

  /** Copies the list. */
  public HoleEnlargement {
    all = List.copyOf(all);
  }

  /**
   * A hole to be opened.
   *
   * @param hole its label
   * @param from diameter now, mm
   * @param to a drill that is to be had, mm
   * @param series where the new hole lies among the clearance series, in words
   */
  public record Opening(String hole, double from, double to, String series) {}

  private static final double ROUNDING = 1e-6;
  private static final int MOST_STEPS = 120;

  private static final class Bench {
    private final List<Round> screws = new ArrayList<>();
    private final List<ScrewThread> threads = new ArrayList<>();
    private final List<DrilledHole> holes;
    private final double[] sizes;
    private final double step;

    Bench(HubFitResult fit, List<DrilledHole> holes, double step) {
      this.holes = holes.stream().filter(DrilledHole::counts).toList();
      this.step = step;
      for (HubRing ring : fit.rings()) {
        for (Point centre : ring.centres()) {
          screws.add(new Round(centre, ring.thread().diameter()));
          threads.add(ring.thread());
        }
      }
      sizes = this.holes.stream().mapToDouble(DrilledHole::diameter).toArray();
    }

    RigidFit fit() {
      List<Round> rounds = new ArrayList<>();
      for (int i = 0; i < sizes.length; i++) {
        rounds.add(new Round(holes.get(i).at(), sizes[i]));
      }
      return RigidFit.of(screws, rounds);
    }

    double next(double size) {
      return Math.rint(Math.floor(size / step + 1 + 1e-6) * step * 1e6) / 1e6;
    }

    /** Opens holes until the tightest screw has so much room; false when no drill does it. */
    boolean open(double wanted) {
      for (int round = 0; round < MOST_STEPS; round++) {
        RigidFit fit = fit();
        if (fit.clearance() >= wanted - ROUNDING) {
          return true;
        }
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < screws.size(); s++) {
          int hole = fit.holes().get(s);
          double old = sizes[hole];
          boolean tight = fit.clearances().get(s) < fit.clearance() + step;
          if (tight && next(old) <= threads.get(s).coarse() + ROUNDING) {
            sizes[hole] = next(old);
            double clearance = fit().clearance();
            if (clearance > most + ROUNDING) {
              most = clearance;
              best = hole;
            }
            sizes[hole] = old;
          }
        }
        if (best < 0) {
          return false;
        }
        sizes[best] = next(sizes[best]);
      }
      return false;
    }
  }

  /**
   * The ways to open holes, the least first.
   *
   * @param allowance what the worst case takes from the room, mm
   * @param step of the drills that are to be had, mm
   */
  static List<HoleEnlargement> of(
      HubFitResult fit, List<DrilledHole> holes, double allowance, double step) {
    List<HoleEnlargement> ways = new ArrayList<>();
    if (fit.clearance().isEmpty()) {
      return ways;
    }
    for (double wanted : new double[] {0, allowance}) {
      Bench bench = new Bench(fit, holes, step);
      if (fit.clearance().get() < wanted - ROUNDING && bench.open(wanted)) {
        double clearance = bench.fit().clearance();
        HoleEnlargement way = new HoleEnlargement(opened(bench), clearance, clearance - allowance);
        if (ways.stream().noneMatch(w -> w.all().equals(way.all()))) {
          ways.add(way);
        }
      }
    }
    return ways;
  }

  private static List<Opening> opened(Bench bench) {
    RigidFit fit = bench.fit();
    List<Opening> all = new ArrayList<>();
    for (int i = 0; i < bench.sizes.length; i++) {
      DrilledHole hole = bench.holes.get(i);
      if (bench.sizes[i] > hole.diameter() + ROUNDING) {
        int screw = fit.holes().indexOf(i);
        String series =
            screw < 0 ? "" : ClearanceSeries.of(bench.threads.get(screw), bench.sizes[i]).words();
        all.add(new Opening(hole.meant().label(), hole.diameter(), bench.sizes[i], series));
      }
    }
    return all;
  }
}
