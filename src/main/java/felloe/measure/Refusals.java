package felloe.measure;

import felloe.geometry.Numbers;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;

/** Why readings tell nothing, and what to measure next. */
final class Refusals {

  private Refusals() {}

  static Problem tooFew(Measured measured, List<Measured.Pair> next) {
    int waiting = measured.waiting().size();
    String blank = waiting == 0 ? "" : " (" + waiting + " of those it asks for are blank)";
    return readings(
        measured,
        "are too few to find the " + measured.count() + " holes" + blank,
        next.isEmpty()
            ? "take distances from two edges at right angles as well, or measure more finely"
            : measure(measured, next));
  }

  /** The search for the places found no rest. */
  static Problem unsettled(Measured measured, List<Measured.Pair> next) {
    return readings(
        measured,
        "contradict each other so much that they settle on no places for the "
            + measured.count()
            + " holes",
        "check that the holes are numbered one after the other and that each reading names its own"
            + " two; "
            + (next.isEmpty() ? "measure them again" : measure(measured, next)));
  }

  static Problem noCircle(SurveyResult survey) {
    Measured measured = survey.measured();
    String again =
        survey.suspects().isEmpty()
            ? ""
            : "measure again "
                + String.join(
                    ", ",
                    survey.suspects().stream()
                        .map(
                            s ->
                                measured.holes(s.reading()) + " over " + s.reading().over().words())
                        .toList())
                + "; ";
    return readings(
        measured,
        survey.scattered()
            ? "contradict each other so much that they tell no circle"
            : "have the holes on one line, or nearly, so that they tell no circle",
        again
            + (survey.next().isEmpty()
                ? "check which holes each reading names, and the count of holes"
                : "check which holes each reading names; " + measure(measured, survey.next())));
  }

  /**
   * Holes of no size, or less.
   *
   * @param size what the readings would make it, mm
   * @param mixUps readings that would put it right, each by itself
   * @param all whether all of them turned round would
   */
  static List<Problem> size(Measured measured, double size, List<MixUp> mixUps, boolean all) {
    String impossible =
        "would make the holes " + Numbers.brief(size, 2) + " mm wide, which cannot be";
    List<Problem> problems = new ArrayList<>();
    String diameter = "measure the diameter of " + measured.labels().get(0);
    if (all || mixUps.isEmpty()) {
      problems.add(
          readings(
              measured,
              impossible,
              all
                  ? "they agree if outside and inside are the other way round in all of them; "
                      + diameter
                      + " as well"
                  : "one or more were taken over something else; "
                      + diameter
                      + ", then the widest pair again"));
      return problems;
    }
    for (MixUp one : mixUps) {
      problems.add(
          new Problem(
              one.reading().place(),
              measured.holes(one.reading()),
              Numbers.brief(one.reading().reads(), 3) + " mm",
              "over "
                  + one.reading().over().words()
                  + " "
                  + impossible
                  + "; over "
                  + one.over().words()
                  + " it would agree with the others",
              "measure it again, and " + diameter + " as well"));
    }
    return problems;
  }

  private static String measure(Measured measured, List<Measured.Pair> next) {
    return "measure " + String.join(", then ", next.stream().map(measured::words).toList());
  }

  private static Problem readings(Measured measured, String wanted, String cure) {
    return new Problem(Place.ofFile(measured.file()), "readings", "", wanted, cure);
  }
}
