package felloe.report;

import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.plate.Plate;
import felloe.plate.Stock;
import felloe.plate.Verdict;
import felloe.service.NewWheel;
import felloe.service.WheelGave;
import felloe.service.WheelWish;
import java.util.ArrayList;
import java.util.List;

/** A wheel that was made out of answers, in sentences. */
public final class NewWheelReport {

  private NewWheelReport() {}

  /** What it is, what it was held against, what gave way, what remains to be done. */
  public static List<String> of(NewWheel.Made made) {
    Plate plate = made.study().plate();
    Stock stock = plate.stock();
    int cautions = made.study().count(Verdict.CAUTION);
    List<String> lines = new ArrayList<>();
    lines.add(
        Phrase.of(
            "It passes its review{} and stands its loads: {}, {}, {} wide, {}.",
            cautions == 0 ? "" : " with " + Phrase.count(cautions, "caution"),
            stock.material().title(),
            stock.thicknessWords(),
            Quantity.brief(plate.box().width(), 0, "mm"),
            Quantity.rounded(plate.mass(), "g")));
    lines.add(BesideDrawing.loads(made.loads()));
    made.gave().forEach(gave -> lines.add(gave(gave)));
    lines.add(
        "No thinner one that is sold or laid up did, of those that were tried. Cautions stand"
            + " beside the drawing: decide on each of them.");
    return List.copyOf(lines);
  }

  /** That there is none, and what comes near. */
  public static List<String> of(NewWheel.None none) {
    List<String> lines = new ArrayList<>();
    lines.add(Phrase.of("No such wheel passes: {}.", why(none.why())));
    lines.add(
        none.nearest()
            .map(
                other ->
                    "With another stock its screws and its review would do: "
                        + other.material()
                        + ". Its loads are reckoned once you choose it.")
            .orElse("No other stock does either: a hub with more screws or a wider circle would."));
    return List.copyOf(lines);
  }

  private static String gave(WheelGave gave) {
    if (gave instanceof WheelGave.Wider wider) {
      return Phrase.of(
          "It is {} wide, not {}: {}.",
          Quantity.brief(wider.made(), 0, "mm"),
          Quantity.brief(wider.wished(), 0, "mm"),
          wider.openTop()
              ? "with an open top between the hands there is no narrower one"
              : Phrase.of(
                  "the hub's circle of {}, openings for fingers and the rim take as much",
                  Quantity.brief(wider.circle(), 2, "mm")));
    }
    if (gave instanceof WheelGave.Stronger stronger) {
      return Phrase.of(
          "The hub's screws must be {}: the usual ones do not hold.", screws(stronger.screws()));
    }
    return gave == WheelGave.LeftOut.SWITCHES
        ? "The four switches are left out: hub and openings leave no room for them."
        : "The opening for a display is left out: the hub takes its room.";
  }

  private static String screws(WheelGave.Screws screws) {
    String washers = screws.large() ? "with large washers under their heads" : "";
    return screws
        .strength()
        .map(s -> s.startsWith("grade-") ? "of grade " + s.substring(6) : "of class " + s)
        .map(words -> washers.isEmpty() ? words : words + " " + washers)
        .orElse(washers);
  }

  private static String why(NewWheel.Why why) {
    if (why instanceof NewWheel.Fails fails) {
      return Phrase.of(
          "{} fails the rule {}; {}",
          fails.finding().subject(),
          fails.finding().rule(),
          fails.finding().advice());
    }
    return why instanceof NewWheel.Yields yields
        ? "the loads ask for more in the case " + yields.loads()
        : "the hub's screws do not hold under the hands' loads";
  }

  /** How broad a hand is. */
  public static String hand(WheelWish.Hand hand) {
    return Phrase.of(
        "{}: up to {} across the knuckles, bare; {} in a thick glove",
        hand == WheelWish.Hand.SMALL
            ? "Small"
            : hand == WheelWish.Hand.MEDIUM ? "Middling" : "Large",
        Quantity.brief(hand.breadth(), 0, "mm"),
        Quantity.brief(hand.breadth() + WheelWish.Hand.GLOVE, 0, "mm"));
  }
}
