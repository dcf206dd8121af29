package felloe.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * A reading that was taken over something else than it says: outside for inside, or the like. So
 * taken, all readings agree, and every hole has a size above zero.
 *
 * @param reading as it was written
 * @param over what it was taken over, as the others have it
 */
record MixUp(Reading reading, ReadingKind over) {

  /** More readings than a person mixes up, or than are worth the time. */
  private static final int MOST = 60;

  private static final double RARE = 0.01;

  /** What a slip of some millimetres may take from the linear answer, as a part of it. */
  private static final double BENT = 0.2;

  private static final List<ReadingKind> KINDS =
      List.of(ReadingKind.OUTSIDE, ReadingKind.INSIDE, ReadingKind.CENTRES);

  /** All that readings may have been taken over instead; none for too many readings. */
  static List<MixUp> candidates(List<Reading> readings) {
    if (readings.size() > MOST) {
      return List.of();
    }
    return readings.stream()
        .filter(Reading::isPair)
        .flatMap(r -> KINDS.stream().filter(k -> k != r.over()).map(k -> new MixUp(r, k)))
        .toList();
  }

  /** Those of some that can be so by themselves. */
  static List<MixUp> of(
      Equations equations, List<MixUp> asked, Function<Equations, Adjustment> adjust) {
    return asked.stream()
        .filter(
            one -> agrees(adjust.apply(equations.with(one.reading, one.reading.over(one.over)))))
        .toList();
  }

  /**
   * Whether it may be all that is wrong: as far as all is linear, the weighted squares are less by
   * the square of the reading's standardised residual then, and more by that of what of its slip
   * this does not explain. Where that still disagrees by far, it need not be tried.
   */
  boolean mayMend(Adjustment adjustment) {
    int k = adjustment.readings().indexOf(reading);
    int freedom = adjustment.freedom();
    if (k < 0 || adjustment.readings().size() <= MOST) {
      // Few readings bend too far to be judged so, and are soon tried.
      return true;
    }
    Unknowns unknowns = adjustment.equations().unknowns();
    double[] z = adjustment.z();
    double sizes = (z[unknowns.size(reading.from())] + z[unknowns.size(reading.to())]) / 2;
    double shift = (over.halves() - reading.over().halves()) * sizes;
    double w = adjustment.w(k);
    double rest = w * (1 - shift / adjustment.slip(k));
    double left = adjustment.cost() - w * w + rest * rest;
    double chance = new ChiSquaredDistribution(freedom - 1).inverseCumulativeProbability(1 - RARE);
    return !(left > 2 * chance + BENT * adjustment.cost());
  }

  /** Whether all agree when everything over inside was taken over outside, and the reverse. */
  static boolean all(Equations equations, Function<Equations, Adjustment> adjust) {
    Equations turned = equations;
    for (Reading reading : equations.readings()) {
      if (reading.isPair()) {
        turned = turned.with(reading, reading.over(turned(reading.over())));
      }
    }
    return agrees(adjust.apply(turned));
  }

  private static ReadingKind turned(ReadingKind over) {
    return switch (over) {
      case OUTSIDE -> ReadingKind.INSIDE;
      case INSIDE -> ReadingKind.OUTSIDE;
      default -> over;
    };
  }

  private static boolean agrees(Adjustment adjustment) {
    if (!adjustment.settled() || !adjustment.possible()) {
      return false;
    }
    int freedom = adjustment.freedom();
    return freedom == 0
        ? adjustment.cost() < RARE
        : 1 - new ChiSquaredDistribution(freedom).cumulativeProbability(adjustment.cost()) > RARE;
  }

  /** The reading as a suspect of an adjustment without it. */
  Suspect suspect(Adjustment without) {
    double off = OutlierDetection.off(without, reading);
    double w = OutlierDetection.missedBy(without, reading);
    return new Suspect(reading, off, w, true, false, "reads like over " + over.words());
  }

  /** The only one; empty when there is none, or more than one. */
  static Optional<MixUp> only(List<MixUp> found) {
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }
}
