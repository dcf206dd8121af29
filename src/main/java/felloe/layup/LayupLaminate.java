package felloe.layup;

import felloe.laminate.Ply;
import felloe.laminate.PlyMaterial;
import felloe.laminate.Stack;
import java.util.List;

/** The stack as laminate theory takes it. */
final class LayupLaminate {

  private LayupLaminate() {}

  /** Plies of a cloth, their stiffness brought to the fraction that is planned with. */
  static Stack of(StackPlan stack, Cloth cloth) {
    Cloth.Stiffness at = cloth.stiffness().at(stack.fraction());
    PlyMaterial elastic =
        new PlyMaterial(1000 * at.e1(), 1000 * at.e2(), at.nu12(), 1000 * at.g12());
    PlyMaterial material = cloth.strengthAt(stack.fraction()).map(elastic::with).orElse(elastic);
    List<Ply> plies =
        stack.plies().stream()
            .map(ply -> new Ply(material, stack.plyThickness(), ply.angle()))
            .toList();
    return new Stack(plies);
  }
}
