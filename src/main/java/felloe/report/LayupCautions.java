package felloe.report;

import felloe.document.Phrase;
import felloe.layup.LayupPlan;
import felloe.plate.Dust;
import felloe.plate.FibreKind;
import java.util.ArrayList;
import java.util.List;

/**
 * The cautions that go with laying up. Reminders in our own words of what agencies and the trade
 * say; the makers' data sheets, local codes and the rules of an event come first.
 *
 * <p>Sources: OSHA Technical Manual III:1; HSE RR079 and its page on dermatitis; SAE 790034; the
 * rest is common practice.
 */
final class LayupCautions {

  private static final List<String> RESIN =
      List.of(
          "The data sheet of the resin's maker comes first: its ratio, its times, its temperatures"
              + " and its safety sheet, not the stand-ins here.",
          "Uncured resin and hardener burn and sensitise: after enough contact the skin may react"
              + " for life. Nitrile or butyl gloves (not latex), long sleeves, goggles; change"
              + " gloves when they are wet through; never clean skin with solvent.",
          "Air the room well; with poor air, warm resin or spraying wear a mask with the filter"
              + " that the safety sheet names.",
          "Mixed resin heats itself, and a full cup can smoke and burn: mix small, pour it at once"
              + " into a flat tray, and put a hot cup outdoors on bare ground, away from what"
              + " burns.");

  /** Said where resin is mixed; the rest stands at the end. */
  static final String MIXING =
      "Uncured resin and hardener burn and sensitise the skin: gloves, goggles, fresh air. A full"
          + " cup can smoke and burn: pour it at once into a flat tray, and put a hot one"
          + " outdoors.";

  /** Said where cloth is wetted out. */
  static final String WETTING =
      "Uncured resin sensitises the skin: change gloves when they are wet through, never clean skin"
          + " with solvent. Dry cloth sheds fibres: long sleeves, and a mask where it is cut.";

  private static final List<String> REST =
      List.of(
          "Vacuum dust up with a HEPA filter, never with compressed air; gloves and long sleeves"
              + " when cutting dry cloth too.",
          "Weights and glass plates pinch, slip and break: lift them in twos, and tape the edges of"
              + " glass.",
          "Let left-over mix cure before it is thrown away; hand unmixed resin, hardener and"
              + " solvent in as hazardous waste, as local rules have it; rags may heat up: spread"
              + " them out to cure.",
          "For closed-course use at the builder's own judgement; not for public roads. Event rules,"
              + " local codes and a qualified person have the last word. Break the test strips"
              + " before you trust the plate.");

  private LayupCautions() {}

  /** The cautions for a plan, with what is true of the dust of its cloth. */
  static List<String> of(LayupPlan plan) {
    List<String> all = new ArrayList<>(RESIN);
    FibreKind fibre = plan.choice().cloth().fibre().kind();
    all.add(Dust.of(fibre));
    if (fibre == FibreKind.CARBON) {
      all.add(
          "Carbon fibre conducts: keep its dust and fluff out of sockets, tools and electronics.");
    }
    plan.plate()
        .stock()
        .material()
        .fibre()
        .filter(named -> named != fibre)
        .ifPresent(
            named ->
                all.add(
                    Phrase.of(
                        "The shape file calls the stock {}, this cloth is {}: cautions and"
                            + " strengths elsewhere follow the shape file. Name the material that"
                            + " you lay up.",
                        plan.plate().stock().material().title(),
                        plan.choice().cloth().title())));
    all.addAll(REST);
    return List.copyOf(all);
  }
}
