package felloe.report;

import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.plate.Plate;
import felloe.plate.Stock;
import felloe.plate.Verdict;
import felloe.service.NewWheel;
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
    lines.addAll(made.gave());
    lines.add(
        "No thinner one that is sold or laid up did, of those that were tried. Cautions stand"
            + " beside the drawing: decide on each of them.");
    return List.copyOf(lines);
  }

  /** That there is none, and what comes near. */
  public static List<String> of(NewWheel.None none) {
    List<String> lines = new ArrayList<>(List.of(none.why()));
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
