package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MaterialsTest {

  private static final Materials MATERIALS = Materials.builtIn();

  private static Material material(String name) {
    return MATERIALS.find(name).orElseThrow();
  }

  @Test
  void everyDensityHasABasisThatSaysWhenItIsFromMemory() {
    for (String name : MATERIALS.names()) {
      String basis = material(name).basis();
      assertFalse(basis.isBlank(), name);
      assertTrue(
          basis.matches(".*(from memory|common practice|Aluminum Association|computed|measured).*"),
          name + ": " + basis);
    }
  }

  @Test
  void everyKindOfMaterialIsThere() {
    Set<MaterialKind> kinds = EnumSet.noneOf(MaterialKind.class);
    MATERIALS.names().forEach(name -> kinds.add(material(name).kind()));
    assertEquals(EnumSet.allOf(MaterialKind.class), kinds);
  }

  /** Aluminum Association typical values: 6061 2.70, 7075 2.81 g/cm3. */
  @Test
  void aluminiumHasThePublishedDensity() {
    assertEquals(2.70, material("aluminium-6061-t6").density());
    assertEquals(2.81, material("aluminium-7075-t6").density());
  }

  /** Rule of mixtures with the fibre and resin densities that the basis names. */
  @Test
  void laminatesHaveTheDensityThatTheirBasisComputes() {
    double carbon = 0.45 * 1.78 + 0.55 * 1.15;
    double glass = 0.45 * 2.54 + 0.55 * 1.15;
    assertEquals(carbon, material("carbon-laminate").density(), 0.01);
    assertEquals(glass, material("glass-laminate").density(), 0.01);
  }

  @Test
  void anUnknownMaterialIsNone() {
    assertEquals(Optional.empty(), MATERIALS.find("unobtainium"));
  }
}
