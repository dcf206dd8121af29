package felloe.joints;

import felloe.plate.FibreKind;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.util.ArrayList;
import java.util.List;

/** What must be said wherever screws are told. */
final class JointCautions {

  private static final List<String> ALWAYS =
      List.of(
          "Torques are starting values: the instructions of the hub's maker come first, then those"
              + " of the screw's. Use a torque wrench.",
          "A screw that works loose or a plate that breaks at its screws takes the steering away."
              + " Tighten dry, let the joint settle for a day, tighten again; then take out one"
              + " screw at a time, put locker on its thread and tighten it as the locker's maker"
              + " says. A locked screw is not turned again to test its torque: put a witness mark"
              + " over each, and look at the marks after the first runs and before every event.",
          "Look at the wheel before every event: cracks at holes and spokes, whitening, loose"
              + " grips, marks that have moved. Retire it after a crash, a hard fall or any crack;"
              + " no life in hours is shown for it.",
          "Strengths are estimates, not an approval. Event rules, local codes and a qualified"
              + " person have the last word.");

  private JointCautions() {}

  /** The cautions for a plate of a material. */
  static List<String> of(Material material) {
    List<String> cautions = new ArrayList<>(ALWAYS);
    if (material.kind() == MaterialKind.LAMINATE) {
      cautions.add(
          "Let no thread bear on the side of a hole in laminate. Laminate creeps under heads: half"
              + " of the clamp force may be gone in a year, so begin the tightening anew every"
              + " season.");
    }
    if (material.fibre().filter(FibreKind.CARBON::equals).isPresent()) {
      cautions.add(
          "Wet carbon eats aluminium and plain steel: take stainless or titanium screws, put them"
              + " in wet with sealant or resin, and lay a ply of glass under an aluminium face, the"
              + " hub's too.");
    }
    return cautions;
  }
}
