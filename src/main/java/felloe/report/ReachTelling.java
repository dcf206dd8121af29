package felloe.report;

import felloe.cockpit.Reach;
import felloe.cockpit.Reach.Grade;
import felloe.cockpit.Reach.Told;
import felloe.cockpit.Reach.With;
import felloe.document.Phrase;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.plate.Driver;
import felloe.service.CockpitOutcome;
import java.util.List;
import java.util.Optional;

/** Whether switches are reached by hands that go on holding. */
final class ReachTelling {

  private ReachTelling() {}

  /** Nothing for a plate without switches. */
  static Telling of(CockpitOutcome outcome) {
    Telling told = new Telling();
    List<Reach> all = outcome.reach();
    if (all.isEmpty()) {
      return told;
    }
    told.head("Switches from the grip: bare hand, gloved hand");
    Rows<Reach> rows =
        Rows.of(all)
            .words("", Reach::thing)
            .words("by", one -> by(one))
            .fixed("away", "mm", 0, Reach::away);
    for (Optional<Integer> who :
        all.get(0).told().stream().map(Told::percentile).distinct().toList()) {
      rows =
          rows.words(
              who.map(percentile -> percentile + "th").orElse("the driver"),
              one -> grades(one, who));
    }
    told.add(rows);
    told.say(
        "Of {}: so many of a hundred have smaller hands. Yes: with a bent joint; stretch: just,"
            + " with a straight one; no: not without letting go. Thumbs in front, fingers from"
            + " behind, in a straight line, from the farther end of where they may start.",
        outcome.plan().cockpit().driver().map(Driver::people).orElse(Driver.People.WOMEN)
                == Driver.People.MEN
            ? "men"
            : "women");
    return told;
  }

  private static String by(Reach one) {
    return (one.left() ? "left " : "right ") + (one.with() == With.THUMB ? "thumb" : "finger");
  }

  private static String grades(Reach one, Optional<Integer> who) {
    return String.join(
        ", ",
        one.told().stream()
            .filter(told -> told.percentile().equals(who))
            .map(told -> word(told.grade()))
            .toList());
  }

  private static String word(Grade grade) {
    return switch (grade) {
      case REACHED -> "yes";
      case STRETCH -> "stretch";
      case NO -> "no";
    };
  }

  /** What the largest gloved hand does not reach, with thumb or finger. */
  static List<String> steps(CockpitOutcome outcome) {
    List<String> out =
        outcome.reach().stream()
            .map(Reach::thing)
            .distinct()
            .filter(thing -> outcome.reach().stream().noneMatch(one -> reaches(one, thing)))
            .toList();
    return out.isEmpty()
        ? List.of()
        : List.of(
            Phrase.of(
                "No gloved hand reaches {} from the grip: move {} nearer to it, or use {} on the"
                    + " straight only.",
                Phrase.list(out),
                out.size() == 1 ? "it" : "them",
                out.size() == 1 ? "it" : "them"));
  }

  private static boolean reaches(Reach one, String thing) {
    return one.thing().equals(thing)
        && one.told().stream().anyMatch(told -> told.gloved() && told.grade() != Grade.NO);
  }
}
