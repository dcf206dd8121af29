package felloe.report;

import felloe.cockpit.Arms;
import felloe.document.Phrase;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.review.RimHold;
import felloe.review.RimHold.Hold;
import felloe.service.CockpitOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Where hands hold the wheel, and what becomes of the arms as it is turned. */
final class HandsTelling {

  /** Minutes of a clock's hour hand in a whole turn. */
  private static final int ROUND = 720;

  private HandsTelling() {}

  static Telling of(CockpitOutcome outcome) {
    Telling told = new Telling();
    told.head("Where there is something to hold, clockwise");
    told.add(
        Rows.of(outcome.rim())
            .words("from", rim -> round(rim) ? "all round" : clock(rim.from(), rim))
            .words("to", rim -> round(rim) ? "" : clock(rim.to(), rim))
            .fixed("long", "mm", 0, RimHold::length)
            .words("a hand finds", rim -> rim.hold().words()));
    told.say(
        "By the limits of the review for a bare hand, every 2 mm along the edge, straight ahead."
            + " Of what cannot be held the chief reason is told.");
    if (!outcome.arms().isEmpty()) {
      told.head("Arms, hands staying where they hold");
      told.add(
          Rows.of(outcome.arms())
              .words("turned", arms -> arms.turn() > 0 ? "left" : "right")
              .words("forearms meet", arms -> at(arms.meet()))
              .words("cross", arms -> at(arms.cross()))
              .words("an arm is at full stretch", arms -> at(arms.stretched())));
      told.say(
          "Hands are at {} and {}{}. Elbows stay beside the trunk; a forearm is as thick all along"
              + " as below the elbow. Shoulders and trunk do not follow.",
          clock(outcome.hands().left().angle(), 0.5),
          clock(outcome.hands().right().angle(), 0.5),
          outcome.hands().onGrips() ? ", in the middle of the grips" : ", on the bare rim");
    }
    return told;
  }

  /** What to do where hands find no hold, and before arms are in each other's way. */
  static List<String> steps(CockpitOutcome outcome) {
    List<String> steps = new ArrayList<>();
    List<String> bare =
        Stream.of(outcome.hands().left(), outcome.hands().right())
            .map(Point::angle)
            .filter(hand -> outcome.rim().stream().noneMatch(rim -> rim.holds(hand)))
            .map(hand -> clock(hand, 0.5))
            .toList();
    if (!bare.isEmpty()) {
      steps.add(
          Phrase.of(
              "At {}, where hands are looked at, there is nothing to hold: hold where the table"
                  + " below says, or make room there.",
              Phrase.list(bare)));
    }
    for (Arms arms : outcome.arms()) {
      OptionalDouble first = first(arms);
      if (first.isPresent()) {
        steps.add(
            Phrase.of(
                arms.stretched().equals(first)
                    ? "An arm is at full stretch {}: move seat or wheel nearer, or let the hand go"
                        + " before."
                    : "The forearms meet {}: let one hand go before, or ask for less lock.",
                first.getAsDouble() == 0
                    ? "straight ahead"
                    : at(first) + (arms.turn() > 0 ? " to the left" : " to the right")));
      }
    }
    return steps;
  }

  private static OptionalDouble first(Arms arms) {
    if (arms.meet().isEmpty() || arms.stretched().isEmpty()) {
      return arms.meet().isEmpty() ? arms.stretched() : arms.meet();
    }
    return Math.abs(arms.meet().getAsDouble()) < Math.abs(arms.stretched().getAsDouble())
        ? arms.meet()
        : arms.stretched();
  }

  /** Degrees, rounded toward straight ahead. */
  private static String at(OptionalDouble turn) {
    return turn.isPresent()
        ? Numbers.down(Math.toDegrees(Math.abs(turn.getAsDouble())), 0) + "\u00b0"
        : "not within the lock";
  }

  private static boolean round(RimHold rim) {
    return rim.from() == rim.to();
  }

  /** A hold is told no longer than it is, and what cannot be held no shorter. */
  private static String clock(double direction, RimHold rim) {
    boolean later = (direction == rim.from()) == (rim.hold() == Hold.HELD);
    return clock(direction, later ? 1 : 0);
  }

  /** The clock position of a direction, with what part of a minute is rounded up. */
  private static String clock(double direction, double up) {
    double minutes = ROUND * (90 - Math.toDegrees(direction)) / 360;
    int whole = Math.floorMod((int) Math.floor(minutes + up), ROUND);
    int hour = whole / 60 == 0 ? 12 : whole / 60;
    int minute = whole % 60;
    return hour + ":" + (minute < 10 ? "0" : "") + minute;
  }
}
