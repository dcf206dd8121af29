package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.yaml.Sets;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RevisionTest {

  private static final String FILE =
      """
      felloe: 1
      outline:
        round: {diameter: 280}
      stock: {material: birch-plywood, thickness: 9}
      """;

  private static String revision(String text, String... sets) {
    return Corpus.read(text, sets).revision();
  }

  @Test
  void itIsEightHexadecimalDigits() {
    assertTrue(revision(FILE).matches("[0-9a-f]{8}"));
  }

  @Test
  void remarksAndLayoutDoNotChangeIt() {
    String other =
        """
        # the same plate
        felloe: 1

        outline: {round: {diameter: 280}}   # round
        stock:
          material: "birch-plywood"
          thickness: 9
        """;
    assertEquals(revision(FILE), revision(other));
  }

  @Test
  void everyValueChangesItAlsoFromTheCommandLine() {
    Set<String> revisions = new HashSet<>();
    revisions.add(revision(FILE));
    revisions.add(revision(FILE.replace("280", "281")));
    revisions.add(revision(FILE.replace("thickness: 9", "thickness: 10")));
    revisions.add(revision(FILE + "bore: 20\n"));
    revisions.add(revision(FILE + "holes: [{at: [1, 23], diameter: 4}]\n"));
    revisions.add(revision(FILE + "holes: [{at: [12, 3], diameter: 4}]\n"));
    assertEquals(6, revisions.size());
    assertEquals(
        revision(FILE.replace("280", "290")), revision(FILE, "outline.round.diameter=290"));
    assertNotEquals(revision(FILE), revision(FILE, "outline.round.diameter=290"));
  }

  @Test
  void theFilesNameDoesNotChangeIt() {
    assertEquals(
        revision(FILE), ShapeFile.parse("other/name.yaml", FILE, Sets.of(), Hubs.TWO).revision());
  }
}
