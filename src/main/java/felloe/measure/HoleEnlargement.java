package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.hub.ClearanceSeries;
import felloe.hub.HubFitResult;
import felloe.hub.HubRing;
import felloe.hub.RigidFit;
import felloe.hub.RigidFit.Round;
import felloe.hub.ScrewThread;
import felloe.hub.SlottedFit;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which holes to open, to which drill, so that all screws enter: the odd ones alone if that does
 * it, else one hole alone, else two, else each step the one hole whose next drill helps most. None
 * is opened beyond its screw's coarse clearance hole. Each way is the fit run again with the holes
 * as large as it says.
 *
 * @param all the holes that grow
 * @param clearance room of the tightest screw after that, as measured, mm
 * @param worst the same at the worst, mm
 */
public record HoleEnlargement(List<Opening> all, double clearance, double worst) {

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

  private static final int MOST_STEPS = 120;

  /** Up to so many screws all pairs of holes are tried. */
  private static final int MOST_FOR_PAIRS = 12;

  private static final class Bench {
    private final List<Round> screws = new ArrayList<>();
    private final List<ScrewThread> threads = new ArrayList<>();
    private final List<DrilledHole> holes;
    private final double[] sizes;
    private final double[] largest;
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
      largest = sizes.clone();
      RigidFit now = fit();
      for (int s = 0; s < screws.size(); s++) {
        int hole = now.holes().get(s);
        largest[hole] = Math.max(sizes[hole], drill(drills(threads.get(s).coarse())));
      }
    }

    RigidFit fit() {
      List<Hole> opened = new ArrayList<>();
      for (int i = 0; i < sizes.length; i++) {
        opened.add(holes.get(i).hole().withDiameter(sizes[i]));
      }
      return SlottedFit.of(screws, opened);
    }

    /** The number of the drill that is no larger than this. */
    private long drills(double size) {
      return (long) Math.floor(size / step + Tolerances.SAME_LENGTH);
    }

    private double drill(long number) {
      return Math.rint(number * step * 1e6) / 1e6;
    }

    double next(double size) {
      return drill(drills(size) + 1);
    }

    /** Opens these holes alone, as little as will do; false, and none opened, when that fails. */
    boolean alone(List<Integer> which, double wanted) {
      double[] before = sizes.clone();
      for (int hole : which) {
        sizes[hole] = largest[hole];
      }
      if (fit().clearance() < wanted - Tolerances.SAME_LENGTH) {
        System.arraycopy(before, 0, sizes, 0, sizes.length);
        return false;
      }
      for (int hole : which) {
        long low = drills(before[hole]);
        long high = drills(largest[hole]);
        while (high - low > 1) {
          long middle = (low + high) / 2;
          sizes[hole] = drill(middle);
          if (fit().clearance() >= wanted - Tolerances.SAME_LENGTH) {
            high = middle;
          } else {
            low = middle;
          }
        }
        sizes[hole] = Math.max(before[hole], drill(high));
      }
      return true;
    }

    /** One hole alone, or two: the way that opens least. */
    boolean few(int count, double wanted) {
      double[] before = sizes.clone();
      double[] best = null;
      double least = Double.POSITIVE_INFINITY;
      for (List<Integer> which : choices(count)) {
        if (alone(which, wanted)) {
          double grown = 0;
          for (int i = 0; i < sizes.length; i++) {
            grown += sizes[i] - before[i];
          }
          if (grown < least - Tolerances.SAME_LENGTH) {
            least = grown;
            best = sizes.clone();
          }
          System.arraycopy(before, 0, sizes, 0, sizes.length);
        }
      }
      if (best != null) {
        System.arraycopy(best, 0, sizes, 0, sizes.length);
      }
      return best != null;
    }

    private List<List<Integer>> choices(int count) {
      List<List<Integer>> all = new ArrayList<>();
      for (int i = 0; i < sizes.length; i++) {
        if (largest[i] > sizes[i]) {
          for (int k = i + 1; count == 2 && k < sizes.length; k++) {
            if (largest[k] > sizes[k]) {
              all.add(List.of(i, k));
            }
          }
          if (count == 1) {
            all.add(List.of(i));
          }
        }
      }
      return all;
    }

    /** Opens holes until the tightest screw has so much room; false when no drill does it. */
    boolean open(double wanted) {
      for (int round = 0; round < MOST_STEPS; round++) {
        RigidFit fit = fit();
        if (fit.clearance() >= wanted - Tolerances.SAME_LENGTH) {
          return true;
        }
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < screws.size(); s++) {
          int hole = fit.holes().get(s);
          double old = sizes[hole];
          boolean tight = fit.clearances().get(s) < fit.clearance() + step;
          if (tight && next(old) <= largest[hole] + Tolerances.SAME_LENGTH) {
            sizes[hole] = next(old);
            double clearance = fit().clearance();
            if (clearance > most + Tolerances.SAME_LENGTH) {
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

    /** Whether there is any hope: all holes as large as they may be. */
    boolean hopeless(double wanted) {
      double[] before = sizes.clone();
      System.arraycopy(largest, 0, sizes, 0, sizes.length);
      double most = fit().clearance();
      System.arraycopy(before, 0, sizes, 0, sizes.length);
      return most < wanted - Tolerances.SAME_LENGTH;
    }
  }

  /**
   * The ways to open holes, the least first.
   *
   * @param odd labels of the odd holes
   * @param allowance what the worst case takes from the room, mm
   * @param step of the drills that are to be had, mm
   */
  static List<HoleEnlargement> of(
      HubFitResult fit, List<DrilledHole> holes, List<String> odd, double allowance, double step) {
    List<HoleEnlargement> ways = new ArrayList<>();
    if (fit.clearance().isEmpty()) {
      return ways;
    }
    for (double wanted : new double[] {0, allowance}) {
      if (fit.clearance().get() >= wanted - Tolerances.SAME_LENGTH) {
        continue;
      }
      way(new Bench(fit, holes, step), odd, wanted, allowance)
          .filter(way -> ways.stream().noneMatch(w -> w.all().equals(way.all())))
          .ifPresent(ways::add);
    }
    return ways;
  }

  private static Optional<HoleEnlargement> way(
      Bench bench, List<String> odd, double wanted, double allowance) {
    if (bench.hopeless(wanted)) {
      return Optional.empty();
    }
    List<Integer> which = new ArrayList<>();
    for (int i = 0; i < bench.holes.size(); i++) {
      if (odd.contains(bench.holes.get(i).meant().label())) {
        which.add(i);
      }
    }
    boolean done =
        (!which.isEmpty() && bench.alone(which, wanted))
            || bench.few(1, wanted)
            || (bench.screws.size() <= MOST_FOR_PAIRS && bench.few(2, wanted))
            || bench.open(wanted);
    if (!done) {
      return Optional.empty();
    }
    double clearance = bench.fit().clearance();
    return Optional.of(new HoleEnlargement(opened(bench), clearance, clearance - allowance));
  }

  private static List<Opening> opened(Bench bench) {
    RigidFit fit = bench.fit();
    List<Opening> all = new ArrayList<>();
    for (int i = 0; i < bench.sizes.length; i++) {
      DrilledHole hole = bench.holes.get(i);
      if (bench.sizes[i] > hole.diameter() + Tolerances.SAME_LENGTH) {
        int screw = fit.holes().indexOf(i);
        String series =
            screw < 0 ? "" : ClearanceSeries.of(bench.threads.get(screw), bench.sizes[i]).words();
        all.add(new Opening(hole.meant().label(), hole.diameter(), bench.sizes[i], series));
      }
    }
    return all;
  }

  /** Whether it opens no other holes than these. */
  boolean opensOnly(List<String> labels) {
    return all.stream().allMatch(opening -> labels.contains(opening.hole()));
  }
}
