package felloe.report;

import felloe.cutting.CutCautions;
import felloe.cutting.CutProcess;
import felloe.document.Phrase;
import felloe.job.Act;
import felloe.job.Parts;
import felloe.job.Task;
import felloe.layup.LayupPlan;
import felloe.plate.Dust;
import felloe.plate.FibreKind;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.service.CardOutcome;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The caution of each act, told where the act is. Reminders of common practice; the makers of tools
 * and materials, local codes and event rules come first.
 */
final class CardCautions {

  private final Parts parts;
  private final Material material;

  /** Dust is told at the first act that makes it, and in short after that. */
  private final Set<Act> dusty = EnumSet.noneOf(Act.class);

  private int number;
  private int first;

  CardCautions(CardOutcome outcome) {
    this.parts = outcome.job().parts();
    this.material = parts.plate().stock().material();
  }

  /** The caution of an act, to be asked for in order; empty where there is none. */
  String of(Task task) {
    List<String> told = new ArrayList<>();
    number++;
    own(task.act(), told);
    if (makesDust(task.act())) {
      told.add(dusty.isEmpty() ? Dust.of(material) : again());
      first = dusty.isEmpty() ? number : first;
      dusty.add(task.act());
    }
    return String.join(" ", told);
  }

  /** Whoever has the later page in hand finds the sentence by the number of its act. */
  private String again() {
    boolean metal = material.kind() == MaterialKind.METAL;
    return (metal ? "Swarf and edges: see act " : "Dust: see act ") + first + ".";
  }

  private boolean makesDust(Act act) {
    boolean strips = act == Act.CUT_STRIPS;
    boolean first = act == Act.DRILL_HOLES && !dusty.contains(act);
    return strips
        || first
        || act == Act.SAW_WINDOWS
        || act == Act.SAW_OUTLINE && !dusty.contains(Act.SAW_WINDOWS)
        || act == Act.MEASURE_STOCK && parts.ownLaminate()
        || act == Act.START_HOLES
        || act == Act.FINISH
        || act == Act.ENGRAVE
        || act == Act.BREAK_EDGES
        || act == Act.MACHINE;
  }

  private void own(Act act, List<String> told) {
    switch (act) {
      case PRINT_TEMPLATE -> told.add("A knife goes away from the hand that holds the rule.");
      case CUT_CLOTH ->
          told.add("Dry cloth sheds fibres: gloves, long sleeves, and a mask where it is cut.");
      case LAY_UP -> {
        parts.laidUp().ifPresent(plan -> obstacles(plan, told));
        told.add(
            "Resin and hardener burn and sensitise the skin: gloves, goggles, fresh air. A full cup"
                + " smokes and burns: pour it into a flat tray at once. Lift weights and glass in"
                + " twos.");
      }
      case CURE -> told.add("What is left over sets first, outdoors, and is then thrown away.");
      case POST_CURE ->
          told.add("Resin warmed too fast or too hot goes soft and smokes: watch it.");
      case BREAK_STRIPS ->
          told.add("Strips splinter: glasses, mask, gloves. Feet clear of hung weights.");
      case STICK_TEMPLATE -> told.add("Spray glue burns and makes dizzy: window open, no flame.");
      case DRILL_HOLES -> {
        if (!dusty.contains(act)) {
          told.add(
              "Clamp it, never hold it by hand: a drill that grabs turns the plate into a blade."
                  + " No gloves, loose sleeves or long hair near a turning drill.");
        }
      }
      case MACHINE -> told.addAll(CutCautions.of(CutProcess.ROUTER, material).subList(0, 3));
      case START_HOLES -> told.add("Clamped, as the other holes.");
      case SAW_WINDOWS -> told.add(CutCautions.of(CutProcess.JIGSAW, material).get(0));
      case SAW_OUTLINE -> {
        told.add(
            dusty.contains(Act.SAW_WINDOWS)
                ? "Clamped, guarded and two-handed, as the windows."
                : CutCautions.of(CutProcess.JIGSAW, material).get(0));
      }
      case FINISH -> told.add("Strokes go toward the plate, never out of it.");
      case BREAK_EDGES ->
          told.add("Fresh edges cut: gloves by hand, none at a turning countersink.");
      case SEAL_EDGES -> {
        if (material.kind() == MaterialKind.LAMINATE) {
          told.add("Uncured resin sensitises the skin: gloves, goggles, fresh air.");
        } else {
          told.add("Varnish burns: fresh air, no flame.");
        }
      }
      case BOLT -> bolt(told);
      case SETTLE ->
          told.add(
              "A screw that works loose or a plate that breaks at its screws takes the steering"
                  + " away.");
      case PROVE ->
          told.add(
              "What breaks flies: stand clear, wheel tethered, weight a hand above the floor, eye"
                  + " protection, a second person.");
      case LOCK ->
          told.add(
              "No car moves before every mark is on. Look at the marks after the first runs and"
                  + " before every event.");
      case SIGN ->
          told.add(
              parts.driven()
                  ? "What is open stays open until it is mended or accepted in writing."
                  : "Wood and plain plastic break without warning.");
      default -> {}
    }
  }

  private static void obstacles(LayupPlan plan, List<String> told) {
    plan.pots()
        .obstacles()
        .forEach(why -> told.add(Phrase.of("CANNOT BE DONE AS PLANNED: {}.", why)));
  }

  private void bolt(List<String> told) {
    if (!parts.driven()) {
      told.add("A mock-up is tried on, never driven with.");
      return;
    }
    told.add("The hub's maker comes first. Use a torque wrench.");
    if (material.fibre().filter(FibreKind.CARBON::equals).isPresent()) {
      told.add(
          "Wet carbon eats aluminium and plain steel: stainless or titanium screws, put in wet with"
              + " sealant; a ply of glass under aluminium.");
    }
  }
}
