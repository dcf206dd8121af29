package felloe.report;

import java.util.List;

/**
 * The cautions that go with laying up. Reminders in our own words of what agencies and the trade
 * say; the makers' data sheets, local codes and the rules of an event come first.
 *
 * <p>Sources: OSHA Technical Manual III:1; HSE RR079 and its page on dermatitis; SAE 790034; the
 * rest is common practice.
 */
final class LayupCautions {

  static final List<String> ALL =
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
              + " burns.",
          "Carbon and glass fibre and their dust harm lungs, eyes and skin: mask P100 or FFP3,"
              + " extraction at the tool or wet sanding, vacuum with HEPA filter, never compressed"
              + " air; gloves and long sleeves when cutting dry cloth too.",
          "Carbon fibre conducts: keep its dust out of sockets, tools and electronics.",
          "Weights and glass plates pinch, slip and break: lift them in twos, and tape the edges of"
              + " glass.",
          "Let left-over mix cure before it is thrown away; hand unmixed resin, hardener and"
              + " solvent in as hazardous waste, as local rules have it; rags may heat up: spread"
              + " them out to cure.",
          "For closed-course use at the builder's own judgement; not for public roads. Event rules,"
              + " local codes and a qualified person have the last word. Break the test strips"
              + " before you trust the plate.");

  private LayupCautions() {}
}
