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
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which holes to open, to which drill, so that all screws have room: one hole alone if that does
 * it, else two, else each step the one hole whose next drill helps most. A hole that is opened
 * becomes no smaller than drawn and lies within the clearance series of its screw, fine to coarse.
 * Each way is the fit run again with the holes as large as it says.
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
    private final long[] least;
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
      least = new long[sizes.length];
      RigidFit now = fit();
      for (int s = 0; s < screws.size(); s++) {
        int hole = now.holes().get(s);
        long most = drills(threads.get(s).coarse());
        largest[hole] = Math.max(sizes[hole], drill(most));
        double meant = Math.max(this.holes.get(hole).meant().diameter(), threads.get(s).fine());
        least[hole] = Math.min(drillsOver(meant), most);
      }
    }

    /** Room that holes without some leave the tightest screw, mm. */
    double without(Map<Integer, Double> off) {
      double[] before = sizes.clone();
      double widest = Arrays.stream(sizes).max().orElseThrow();
      // So wide that its own screw has more room than any other, wherever that stands.
      off.forEach((hole, by) -> sizes[hole] = widest + 4 * by);
      double room = fit().clearance();
      System.arraycopy(before, 0, sizes, 0, sizes.length);
      return room;
    }

    /** How far holes that are off are so, mm, by their number. */
    Map<Integer, Double> odd(List<OddHole> odd) {
      Map<Integer, Double> found = new LinkedHashMap<>();
      for (int i = 0; i < holes.size(); i++) {
        for (OddHole one : odd) {
          if (one.label().equals(holes.get(i).meant().label())) {
            found.put(i, one.off());
          }
        }
      }
      return found;
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

    /** The number of the drill that is no smaller than this. */
    private long drillsOver(double size) {
      return -drills(-size);
    }

    private double drill(long number) {
      return Math.rint(number * step * 1e6) / 1e6;
    }

    /** The next drill for a hole. */
    double next(int hole) {
      return drill(Math.max(drills(sizes[hole]) + 1, least[hole]));
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
        long low = Math.max(drills(before[hole]), least[hole] - 1);
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
          if (tight && next(hole) <= largest[hole] + Tolerances.SAME_LENGTH) {
            sizes[hole] = next(hole);
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
        sizes[best] = next(best);
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
   * Opens holes that are known to be off, and no others.
   *
   * @param wanted room of the tightest screw, mm
   * @param step of the drills that are to be had, mm
   */
  static Optional<HoleEnlargement> alone(
      HubFitResult fit,
      List<DrilledHole> holes,
      List<OddHole> odd,
      double wanted,
      double allowance,
      double step) {
    Bench bench = new Bench(fit, holes, step);
    List<Integer> which = new ArrayList<>(bench.odd(odd).keySet());
    return bench.alone(which, wanted) ? Optional.of(of(bench, allowance)) : Optional.empty();
  }

  /**
   * Opens as few holes as will do, and those as little.
   *
   * @param most how many may be opened; more than two are not tried in every choice
   */
  static Optional<HoleEnlargement> upTo(
      int most,
      HubFitResult fit,
      List<DrilledHole> holes,
      double wanted,
      double allowance,
      double step) {
    Bench bench = new Bench(fit, holes, step);
    boolean done =
        !bench.hopeless(wanted)
            && (bench.few(1, wanted)
                || (bench.screws.size() <= MOST_FOR_PAIRS && bench.few(2, wanted))
                || (most > 2 && bench.open(wanted)));
    return done ? Optional.of(of(bench, allowance)) : Optional.empty();
  }

  /** Room that all holes but the odd ones leave the tightest screw, mm. */
  static double without(HubFitResult fit, List<DrilledHole> holes, List<OddHole> odd, double step) {
    Bench bench = new Bench(fit, holes, step);
    return bench.without(bench.odd(odd));
  }

  private static HoleEnlargement of(Bench bench, double allowance) {
    double clearance = bench.fit().clearance();
    return new HoleEnlargement(opened(bench), clearance, clearance - allowance);
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
}
