package felloe.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PhraseTest {

  @Test
  void partsStandInTheirPlaces() {
    assertEquals(
        "20 plies, 5.5 mm thick.",
        Phrase.of(
            "{}, {} thick{}.",
            Phrase.count(20, "ply", "plies"),
            Quantity.mm(5.5),
            Optional.empty()));
  }

  @Test
  void pluralsListsAndSentencesAreMadeInOnePlace() {
    assertEquals("1 ply", Phrase.count(1, "ply", "plies"));
    assertEquals("0 holes", Phrase.count(0, "hole"));
    assertEquals("a, b and c", Phrase.list(List.of("a", "b", "c")));
    assertEquals("a", Phrase.list(List.of("a")));
    assertEquals("Make it thicker.", Phrase.sentence("make it thicker"));
    assertEquals("", Phrase.sentence(""));
  }

  @Test
  void aNumberWhosePlacesNobodyChoseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Phrase.of("{} mm", 5.5));
    assertThrows(IllegalArgumentException.class, () -> Phrase.of("{} {}", "a"));
    assertThrows(IllegalArgumentException.class, () -> Phrase.of("{}", "a", "b"));
  }

  @Test
  void aFigureBelowZeroHasAMinusAndItsUnitUnlessTheColumnTellsIt() {
    assertEquals("\u22120.35 mm", Quantity.fixed(-0.35, 2, "mm").text());
    assertEquals("\u22120.35", Quantity.fixed(-0.35, 2, "mm").text("mm"));
    assertEquals("12 %", Quantity.percent(0.123, 0).text());
  }

  @Test
  void onlyTheFirstLetterGrowsWhateverTheMachinesLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals("Iron, M5 screw", Phrase.begin("iron, M5 screw"));
      assertEquals("5 mm", Phrase.begin("5 mm"));
      assertEquals("", Phrase.begin(""));
    } finally {
      Locale.setDefault(before);
    }
  }
}
