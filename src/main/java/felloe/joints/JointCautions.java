package felloe.joints;

import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.util.ArrayList;
import java.util.List;

/** What must be said wherever screws are told. */
final class JointCautions {

  private static final List<String> ALWAYS =
      List.of(
          "Torques are starting values: the instructions of the hub's maker come first, then those"
              + " of the screw's. Use a torque wrench; begin at the low end.",
          "A screw that works loose or a plate that breaks at its screws takes the steering away:"
              + " lock the threads as the locker's maker says, put a witness mark over each screw,"
              + " check marks and torque after the first runs and before every event.",
          "Strengths are estimates, not an approval. Event rules, local codes and a qualified"
              + " person have the last word.");

  private JointCautions() {}

  /** The cautions for a plate of a material. */
  static List<String> of(Material material) {
    List<String> cautions = new ArrayList<>(ALWAYS);
    if (material.kind() == MaterialKind.LAMINATE) {
      cautions.add(
          "Let no thread bear on the side of a hole in laminate; laminate creeps under heads, so"
              + " check the torque again after the first day.");
    }
    if (material.name().startsWith("carbon")) {
      cautions.add(
          "Wet carbon eats aluminium and plain steel: keep them apart with a ply of glass or"
              + " sealant, or use coated or stainless screws.");
    }
    return cautions;
  }
}
