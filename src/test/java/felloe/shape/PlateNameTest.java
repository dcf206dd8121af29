package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PlateNameTest {

  @Test
  void theNameIsTheFilesWithoutFolderAndEnding() {
    assertEquals("heron", PlateName.of("heron.yaml"));
    assertEquals("heron", PlateName.of("shapes/carts/heron.yaml"));
    assertEquals("heron", PlateName.of("C:\\shapes\\heron.yml"));
    assertEquals("heron", PlateName.of("heron"));
    assertEquals("heron-2-1", PlateName.of("heron-2.1.yaml"));
  }

  @Test
  void signsThatFilesMayNotHaveBecomeOneHyphen() {
    assertEquals("my-heron", PlateName.of("my  heron!.yaml"));
    assertEquals("a-b", PlateName.of("a:*?\"<>|b.yaml"));
    assertEquals("heron", PlateName.of("--heron--.yaml"));
    assertEquals("grå_hägern", PlateName.of("grå_hägern.yaml"));
  }

  @Test
  void aFileWithoutAUsableNameIsAPlate() {
    assertEquals("plate", PlateName.of(".yaml".substring(0, 1)));
    assertEquals("plate", PlateName.of("!!!.yaml"));
    assertEquals("plate", PlateName.of(""));
    assertEquals("plate", PlateName.of("/"));
  }

  @Test
  void aLongNameIsCut() {
    assertEquals(60, PlateName.of("h".repeat(200) + ".yaml").length());
  }

  @Test
  void aNameIsNeverCutInsideACharacterNorKeptByWindows() {
    String cut = PlateName.of("h".repeat(59) + "𠀀".repeat(5) + ".yaml");
    assertTrue(cut.codePoints().noneMatch(c -> c >= 0xD800 && c <= 0xDFFF), cut);
    assertEquals("con-", PlateName.of("con.yaml"));
    assertEquals("Com1-", PlateName.of("Com1.yaml"));
  }
}
