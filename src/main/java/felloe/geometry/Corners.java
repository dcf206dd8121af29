package felloe.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/** The corners of a chain of segments with a radius for each, before they are rounded. */
final class Corners {

  private final List<Segment> chain;
  private final double[] radii;
  private final List<Optional<FilletContact>> touches = new ArrayList<>();

  /** Corner i lies between segment i - 1 and segment i of a closed chain. */
  Corners(List<Segment> chain, double[] radii) {
    this.chain = List.copyOf(chain);
    this.radii = radii.clone();
    if (radii.length != chain.size()) {
      throw new IllegalArgumentException(
          radii.length + " radii for " + chain.size() + " corners of a chain");
    }
    for (int i = 0; i < radii.length; i++) {
      if (Numbers.finite("radius of corner " + (i + 1), radii[i]) < 0) {
        throw new IllegalArgumentException("radius of corner " + (i + 1) + " is below zero");
      }
      touches.add(sharp(i, radii[i]) ? Optional.empty() : touch(i, radii[i]));
    }
  }

  /** The one corner between two segments; their far ends stay as they are. */
  static Corners open(Segment before, Segment after, double radius) {
    return new Corners(List.of(before, after), new double[] {0, radius});
  }

  private Segment before(int corner) {
    return chain.get(Math.floorMod(corner - 1, chain.size()));
  }

  private boolean sharp(int corner, double radius) {
    return radius == 0 || FilletContact.smooth(before(corner), chain.get(corner));
  }

  private Optional<FilletContact> touch(int corner, double radius) {
    return FilletContact.of(before(corner), chain.get(corner), radius);
  }

  void refuseCrowded() {
    List<FilletFault> faults = faults();
    if (!faults.isEmpty()) {
      throw new FilletException(faults);
    }
  }

  List<FilletFault> faults() {
    List<FilletFault> faults = new ArrayList<>();
    for (int i = 0; i < radii.length; i++) {
      if (!sharp(i, radii[i]) && !fitsAlone(i, radii[i])) {
        faults.add(alone(i));
      }
    }
    faults.addAll(crowdedEdges());
    faults.sort(Comparator.comparingInt(FilletFault::corner));
    return faults;
  }

  private boolean fitsAlone(int corner, double radius) {
    return touch(corner, radius)
        .filter(t -> t.lossBefore() <= room(before(corner)))
        .filter(t -> t.lossAfter() <= room(chain.get(corner)))
        .isPresent();
  }

  private boolean roomy(int corner) {
    return sharp(corner, radii[corner]) || fitsAlone(corner, radii[corner]);
  }

  private static double room(Segment segment) {
    return segment.length() + Tolerances.SAME_POINT;
  }

  private FilletFault alone(int corner) {
    double largest = largest(radii[corner], r -> fitsAlone(corner, r));
    Segment before = before(corner);
    Segment after = chain.get(corner);
    String why =
        touches
            .get(corner)
            .map(
                t -> {
                  boolean first =
                      t.lossBefore() - before.length() >= t.lossAfter() - after.length();
                  double needs = first ? t.lossBefore() : t.lossAfter();
                  double length = first ? before.length() : after.length();
                  int edge = first ? Math.floorMod(corner - 1, chain.size()) : corner;
                  return "it needs "
                      + Numbers.brief(needs, 3)
                      + " mm of edge "
                      + (edge + 1)
                      + ", which is "
                      + Numbers.brief(length, 3)
                      + " mm long";
                })
            .orElse("no circle of that radius touches both edges");
    return new FilletFault(corner + 1, after.from(), radii[corner], largest, why);
  }

  /** Edges that have room for the rounding at either end alone but not for both. */
  private List<FilletFault> crowdedEdges() {
    List<FilletFault> faults = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      int next = (i + 1) % chain.size();
      double excess = lossAfter(i) + lossBefore(next) - chain.get(i).length();
      boolean each = roomy(i) && roomy(next);
      if (excess > Tolerances.SAME_POINT && each) {
        int blamed = radii[next] > radii[i] ? next : i;
        faults.add(crowded(i, next, excess, blamed));
      }
    }
    return faults;
  }

  private double lossAfter(int corner) {
    return touches.get(corner).map(FilletContact::lossAfter).orElse(0.0);
  }

  private double lossBefore(int corner) {
    return touches.get(corner).map(FilletContact::lossBefore).orElse(0.0);
  }

  private FilletFault crowded(int edge, int next, double excess, int blamed) {
    String why =
        "the roundings of corners "
            + (edge + 1)
            + " and "
            + (next + 1)
            + " need "
            + Numbers.brief(lossAfter(edge), 3)
            + " and "
            + Numbers.brief(lossBefore(next), 3)
            + " mm of edge "
            + (edge + 1)
            + ", which is "
            + Numbers.brief(chain.get(edge).length(), 3)
            + " mm long: "
            + Numbers.brief(excess, 3)
            + " mm too much";
    double largest = largest(radii[blamed], r -> fitsBeside(blamed, r));
    return new FilletFault(blamed + 1, chain.get(blamed).from(), radii[blamed], largest, why);
  }

  /** Whether a radius fits while the neighbouring corners keep theirs. */
  private boolean fitsBeside(int corner, double radius) {
    int previous = Math.floorMod(corner - 1, chain.size());
    int next = (corner + 1) % chain.size();
    return touch(corner, radius)
        .filter(t -> t.lossBefore() + lossAfter(previous) <= room(before(corner)))
        .filter(t -> t.lossAfter() + lossBefore(next) <= room(chain.get(corner)))
        .isPresent();
  }

  /** The largest radius up to {@code tooLarge} that passes; halving to the last digit. */
  static double largest(double tooLarge, DoublePredicate fits) {
    double low = 0;
    double high = tooLarge;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (fits.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low <= Tolerances.SAME_POINT ? 0 : low;
  }

  /** The chain with its corners rounded; arcs of one circle that follow each other are one. */
  List<Segment> rounded() {
    int n = chain.size();
    Point[] starts = new Point[n];
    Point[] ends = new Point[n];
    for (int i = 0; i < n; i++) {
      starts[i] = touches.get(i).map(FilletContact::end).orElse(chain.get(i).from());
      ends[i] = touches.get((i + 1) % n).map(FilletContact::start).orElse(chain.get(i).to());
      if (lossAfter(i) + lossBefore((i + 1) % n) >= chain.get(i).length() - Tolerances.SAME_POINT) {
        // Both roundings meet in the middle of what is left: nothing, within the tolerance.
        starts[i] = starts[i].middle(ends[i]);
        ends[i] = starts[i];
      }
    }
    List<Segment> rounded = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point corner = ends[Math.floorMod(i - 1, n)];
      if (touches.get(i).isPresent() && !corner.near(starts[i], Tolerances.SAME_POINT)) {
        FilletContact touch = touches.get(i).get();
        rounded.add(Arc.about(touch.centre(), corner, starts[i], touch.left()));
      } else if (!corner.equals(starts[i])) {
        starts[i] = corner;
      }
      if (!starts[i].equals(ends[i])) {
        boolean whole = starts[i].equals(chain.get(i).from()) && ends[i].equals(chain.get(i).to());
        rounded.add(whole ? chain.get(i) : chain.get(i).between(starts[i], ends[i]));
      }
    }
    return ArcMerge.closed(rounded);
  }
}
