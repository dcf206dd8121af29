package felloe.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class SentenceTest {

  @Test
  void onlyTheFirstLetterGrowsWhateverTheMachinesLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertEquals("Iron, M5 screw", Sentence.begin("iron, M5 screw"));
      assertEquals("5 mm", Sentence.begin("5 mm"));
      assertEquals("", Sentence.begin(""));
    } finally {
      Locale.setDefault(before);
    }
  }
}
