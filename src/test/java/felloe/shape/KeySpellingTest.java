package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.HubCatalogue;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.yaml.Sets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Keys have underscores; the hyphens of before are read and noted. */
class KeySpellingTest {

  private static final String OLD =
      """
      felloe: 1
      outline:
        four-sided: {width: 300, height: 200, radius: 40}
      windows:
        - derived:
            rim-width: 30
            hub-disc: 80
            spokes: [{clock: 3, hub-width: 30, rim-width: 30}, {clock: 9, hub-width: 30, rim-width: 30}]
            radius: 10
      bolt-circles: [{count: 6, pcd: 70, diameter: 5.5}]
      stock: {material: birch-plywood, thickness: 9, template-face: back}
      """;

  private static final String NEW =
      OLD.replace("four-sided", "four_sided")
          .replace("rim-width", "rim_width")
          .replace("hub-disc", "hub_disc")
          .replace("hub-width", "hub_width")
          .replace("bolt-circles", "bolt_circles")
          .replace("template-face", "template_face");

  private static Plate read(String text, String... sets) {
    return ShapeFile.parse("ruff.yaml", text, Sets.of(sets), HubCatalogue.here());
  }

  @Test
  void bothSpellingsMakeOnePlateOfOneRevision() {
    Plate now = read(NEW);
    Plate before = read(OLD);
    assertEquals(now.outline(), before.outline());
    assertEquals(now.windows(), before.windows());
    assertEquals(now.holes(), before.holes());
    assertEquals(now.stock(), before.stock());
    assertEquals(now.revision(), before.revision());
    assertEquals(List.of(), now.notes());
  }

  @Test
  void theOldSpellingIsNotedOnce() {
    Plate before = read(OLD);
    assertEquals(1, before.notes().size());
    String text = before.notes().get(0).text();
    assertTrue(text.startsWith("keys are written with underscores now"), text);
    assertTrue(text.contains("four-sided") && text.contains("template-face"), text);
    assertEquals(3, before.notes().get(0).place().line());
  }

  @Test
  void anOptionFindsTheKeyHoweverItIsSpelt() {
    for (String text : List.of(OLD, NEW)) {
      for (String key : List.of("template-face", "template_face")) {
        assertEquals(Face.FRONT, read(text, "stock." + key + "=front").stock().templateFace());
      }
    }
  }

  @Test
  void aKeyGivenInBothSpellingsIsRefused() {
    String told = assertThrows(BadInput.class, () -> read(NEW + "bolt-circles: []\n")).getMessage();
    assertTrue(told.contains("bolt-circles: is not a known key"), told);
    assertTrue(told.contains("did you mean 'bolt_circles'?"), told);
  }
}
