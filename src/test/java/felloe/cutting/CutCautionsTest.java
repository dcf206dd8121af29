package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.RandomShapes;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.shape.Materials;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CutCautionsTest {

  private static String all(CutProcess process, Material material) {
    return String.join(" ", CutCautions.of(process, material)).toLowerCase(Locale.ROOT);
  }

  private static void says(String text, String... words) {
    for (String word : words) {
      assertTrue(text.contains(word), word + " is not in: " + text);
    }
  }

  @Test
  void aRouterInCarbonIsDryRunClampedExtractedAndBreathedThroughAMask() {
    says(
        all(CutProcess.ROUTER, CutPlates.CARBON),
        "dry-run",
        "above the stock",
        "clamp",
        "eye and ear protection",
        "extraction",
        "respirator");
  }

  @Test
  void aLaserNeverCutsPvcNorLaminateWithoutTheOwnersSay() {
    says(all(CutProcess.LASER, CutPlates.PLYWOOD), "never cut pvc", "machine's owner", "carbon");
  }

  @Test
  void glassIsToldWhatIsTrueOfGlassAndCarbonWhatIsTrueOfCarbon() {
    Material glass = Materials.builtIn().find("glass-epoxy-sheet").orElseThrow();
    Material carbon = Materials.builtIn().find("carbon-epoxy-sheet").orElseThrow();
    for (CutProcess process : List.of(CutProcess.ROUTER, CutProcess.LASER, CutProcess.JIGSAW)) {
      String dusty = all(process, glass);
      assertTrue(dusty.contains("glass fibre dust irritates lungs, eyes and skin"), dusty);
      assertFalse(dusty.contains("short"), dusty);
      says(all(process, carbon), "carbon dust", "shorts out electrics");
    }
  }

  @Test
  void oneOrTwoTabsAreToldFirstAndThreeAreNot() {
    Plate plate = CutPlates.of(RandomShapes.roundedRectangle(294, 186, 50));
    CutSetup setup = CutSetup.router(plate, 4, 1, FeedTable.standard());
    for (int count = 0; count <= 4; count++) {
      CutSetup held = setup.with(new CutSetup.Tabs(count, 5, 1));
      String first = CutPlan.of(plate, held).cautions().get(0);
      assertEquals(count == 1, first.startsWith("One tab does not hold a part"), first);
      assertEquals(count == 2, first.startsWith("Two tabs round the outline are few"), first);
      assertEquals(count == 1 || count == 2, first.contains("Ask for three or more"), first);
    }
  }

  @Test
  void everyProcessAndMaterialHasCautionsAndTheLastWord() {
    for (CutProcess process : CutProcess.values()) {
      for (MaterialKind kind : MaterialKind.values()) {
        List<String> cautions = CutCautions.of(process, CutPlates.material("m", kind));
        assertTrue(cautions.size() >= 3);
        assertTrue(cautions.get(cautions.size() - 1).contains("event rules"));
        assertEquals(cautions.size(), cautions.stream().distinct().count());
      }
    }
  }
}
