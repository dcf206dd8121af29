package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.document.Block.Steps;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.layup.LayupPlan;
import felloe.layup.MouldPlan;
import felloe.layup.ResinSystem;
import felloe.layup.TestStrips;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** What to do to lay a plate up, in order. */
final class LayupSteps {

  private final LayupPlan plan;

  LayupSteps(LayupPlan plan) {
    this.plan = plan;
  }

  /** The steps, to be ticked. */
  static Steps of(LayupPlan plan) {
    LayupSteps steps = new LayupSteps(plan);
    List<String> texts = new ArrayList<>();
    texts.add(
        "Put on gloves, goggles and long sleeves, air the room, have a flat tray at hand for each"
            + " pot, and read the data sheet of your resin.");
    texts.addAll(List.of(steps.wax(), steps.tape(), steps.cut(), steps.mix(), steps.lay()));
    texts.addAll(List.of(steps.close(), steps.cure(), steps.test()));
    return new Steps(texts, true);
  }

  /** How the mould is waxed. */
  String wax() {
    MouldPlan mould = plan.mould();
    String plates = mould.plates() == 1 ? "the mould plate" : "both mould plates";
    String size = LayupReport.size(mould.width(), mould.height());
    Quantity area = fixed(mould.area() / 1e6, 2, "m2");
    Quantity apart = brief(mould.minutesBetween(), 0, "min");
    String told = "Wax {}, {}, faces of {} in all: {} coats on a new one, {} apart.";
    return Phrase.of(told, plates, size, area, mould.coats(), apart);
  }

  /** What is stuck on the mould. */
  String tape() {
    Quantity high = fixed(plan.stack().thickness(), 2, "mm");
    boolean stops = plan.stack().stops();
    return Phrase.of(
        "Stick the outline of the blank, {}, both middle lines and both diagonals at 45 degrees on"
            + " the plate's underside, or on its face outside of the blank, with tape lines {}"
            + " apart.{}",
        LayupReport.size(plan.blank().box().width(), plan.blank().box().height()),
        brief(plan.mould().grid(), 0, "mm"),
        stops ? Phrase.of(" Set stops of {} round the blank.", high) : "");
  }

  /** How the cloth is cut. */
  String cut() {
    return Phrase.of(
        "Cut {} of cloth by the cutting plan, the warp along the roll. Write label and warp on a"
            + " strip of tape on each, or tape on the labels of the pages.",
        Phrase.count(plan.cloth().pieces().size(), "piece"));
  }

  private String mix() {
    return Phrase.of(
        "Weigh and mix each pot when its time has come, not before: {}. {}",
        ratio(),
        LayupCautions.MIXING);
  }

  /** How much hardener resin takes by weight. */
  String byWeight() {
    Quantity hardener = brief(plan.choice().resin().byWeight(), 1, "g");
    return Phrase.of("100 g of resin take {} of hardener", hardener);
  }

  private String ratio() {
    ResinSystem resin = plan.choice().resin();
    String volume = "";
    if (resin.byVolume().isPresent()) {
      Quantity millilitres = brief(resin.byVolume().getAsDouble(), 1, "ml");
      volume = Phrase.of(" (by volume it is another number, {} for 100 ml)", millilitres);
    }
    return byWeight() + volume;
  }

  private String lay() {
    String order = String.join(" ", plan.stack().plies().stream().map(p -> p.direction()).toList());
    String end = LayupReport.clock(plan.pots().lastPly());
    return Phrase.of(
        "Lay and wet out ply by ply from the mould (the back face) up: {}. The last is down at {}."
            + " {}",
        order,
        end,
        LayupCautions.WETTING);
  }

  /** How the mould is closed. */
  String close() {
    OptionalInt weight = plan.mould().kilograms();
    return Phrase.of(
        "Close it by {}{} and press it with {}; it must be closed by {}, when the first ply begins"
            + " to set.",
        LayupReport.clock(plan.pots().closed()),
        weight.isPresent() ? Phrase.of(", put {} kg on it, spread evenly,", weight.getAsInt()) : "",
        brief(plan.mould().pressure(), 0, "kPa"),
        LayupReport.clock(plan.pots().deadline()));
  }

  private String cure() {
    ResinSystem resin = plan.choice().resin();
    Quantity cure = brief(resin.cure().at(plan.choice().temperature()), 1, "hours");
    return Phrase.of("Lift it off after {}{}.", cure, resin.postCure().map(LayupSteps::warmed));
  }

  private static String warmed(ResinSystem.PostCure post) {
    Quantity at = brief(post.temperature(), 0, "degrees");
    Quantity hours = brief(post.hours(), 1, "hours");
    return Phrase.of(", then keep it flat at {} C for {}, warmed up slowly", at, hours);
  }

  private String test() {
    TestStrips strips = plan.blank().strips();
    if (strips.asked() == 0) {
      return "Measure the panel before you drill.";
    }
    if (strips.placed().isEmpty()) {
      return "Measure the panel before you drill, and break test strips that are made beside it"
          + " before you trust the plate.";
    }
    return Phrase.of(
        "Measure the panel, saw {} of {} test strips out of it, {}, and break them before you trust"
            + " the plate: three-point bending after ISO 14125, class {}, over a span of {} for {}."
            + " Span and length follow the true thickness.",
        strips.placed().size(),
        strips.asked(),
        LayupReport.size(strips.length(), strips.width()),
        strips.className(),
        brief(strips.span(), 1, "mm"),
        fixed(strips.thickness(), 2, "mm"));
  }
}
