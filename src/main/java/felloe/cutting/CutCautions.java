package felloe.cutting;

import felloe.plate.Dust;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.util.ArrayList;
import java.util.List;

/**
 * How not to get hurt while a cut file runs, in sentences. They are reminders of common practice;
 * local codes, the makers of machines and materials and the machine's owner have the last word.
 */
public final class CutCautions {

  /** Fewer tabs than these leave a part free to turn or to tilt; common practice. */
  private static final int TABS = 3;

  private CutCautions() {}

  /** What is said of few tabs round the outline; a step of the work tells of none at all. */
  static List<String> tabs(CutSetup setup) {
    int count = setup.tabs().count();
    if (count == 0 || count >= TABS) {
      return List.of();
    }
    String moves =
        count == 1
            ? "One tab does not hold a part: it turns about the tab and is thrown against the"
                + " cutter when the slot closes"
            : "Two tabs round the outline are few: the part can tilt about the line between them"
                + " when the slot closes";
    return List.of(
        moves
            + ". Ask for three or more, or hold the part itself with tape or with screws through"
            + " its holes; who makes it decides.");
  }

  /** The cautions for cutting a material by a process, the most pressing first. */
  public static List<String> of(CutProcess process, Material material) {
    List<String> cautions = new ArrayList<>();
    switch (process) {
      case ROUTER -> {
        cautions.add(
            "Dry-run the whole program with the cutter well above the stock before the first cut.");
        cautions.add(
            "Clamp or screw down the stock and the spoil board; check that every clamp stands clear"
                + " of the travel height and the outline.");
        cautions.add("Eye and ear protection on, hands and sleeves away until the spindle stands.");
        cautions.add(
            "Check that length zero is on the upper face of the stock after every tool change.");
      }
      case LASER -> {
        cautions.add("Dry-run the program with the beam off and watch it clear clamps and edges.");
        cautions.add(
            "Never cut PVC or vinyl by laser; never cut carbon, glass or any resin laminate without"
                + " the say of the machine's owner.");
        cautions.add(
            "Extraction on, lid shut, eyes never on the beam, an extinguisher at hand; never leave"
                + " it running alone.");
      }
      case WATERJET -> {
        cautions.add("Dry-run the program with the jet off and watch it clear clamps and edges.");
        cautions.add(
            "A jet cuts hands as it cuts plate: only its trained operator runs it, with eye and ear"
                + " protection.");
        if (material.kind() == MaterialKind.LAMINATE) {
          cautions.add(
              "Piercing can part the plies: start laminates from drilled holes at the pierce"
                  + " points, or at low pressure in the waste.");
        }
      }
      case JIGSAW -> {
        cautions.add(
            "Clamp the work with the line clear of the bench; blade guard and eye and ear"
                + " protection on, both hands behind the blade.");
        cautions.add("Saw outside the rough line and file to the finish line.");
      }
    }
    if (process == CutProcess.LASER) {
      cautions.add(
          "Smoke and fumes harm the lungs, and fresh edges are hot: let both go before the lid is"
              + " opened.");
    }
    if (process != CutProcess.WATERJET) {
      cautions.add(Dust.of(material));
    }
    cautions.add(
        "For closed-course use at the builder's own judgement. Local codes, event rules and a"
            + " qualified person have the last word.");
    return List.copyOf(cautions);
  }
}
