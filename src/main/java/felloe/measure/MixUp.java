package felloe.measure;

import java.util.ArrayList;
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
  private static final List<ReadingKind> KINDS =
      List.of(ReadingKind.OUTSIDE, ReadingKind.INSIDE, ReadingKind.CENTRES);

  /**
   * All readings that can be so by themselves.
   *
   * @param asked those that are asked; too many are none
   */
  static List<MixUp> of(
      Equations equations, List<Reading> asked, Function<Equations, Adjustment> adjust) {
    List<MixUp> found = new ArrayList<>();
    if (asked.size() > MOST) {
      return found;
    }
    for (Reading reading : asked) {
      for (ReadingKind over : KINDS) {
        if (reading.isPair() && over != reading.over()) {
          Reading other = reading.over(over);
          if (agrees(adjust.apply(equations.with(reading, other)))) {
            found.add(new MixUp(reading, over));
          }
        }
      }
    }
    return found;
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
