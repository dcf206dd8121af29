package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.job.Readings;
import felloe.laminate.StripsFile;
import felloe.laminate.TestedStrips;
import felloe.plate.BadInput;
import felloe.service.CardOutcome;
import felloe.service.Jobs;
import felloe.yaml.YamlTree;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The form for broken strips is read when it is filled in, and refused line by line when not. */
class StripsFormTest {

  private static String form(CardOutcome outcome) {
    Readings.Strips strips = outcome.job().readings().strips().orElseThrow();
    return new String(StripsForm.write(outcome.plate(), strips), StandardCharsets.UTF_8);
  }

  @Test
  void aFilledFormIsReadStripByStrip() {
    CardOutcome outcome = Jobs.of("heron");
    String text = form(outcome);
    assertTrue(text.contains("span: 224\n"), text);
    for (int i = 0; i < 5; i++) {
      text =
          text.replaceFirst(
              "width: , thickness: \\[\\], load: , deflection: ",
              "width: 15."
                  + i
                  + ", thickness: [5.5, 5.6, 5.7], load: 9"
                  + i
                  + "0 N, deflection: 11");
    }
    TestedStrips tested = StripsFile.read(YamlTree.parse("heron-strips.yaml", text));
    assertEquals(5, tested.strips().size());
    assertEquals("T3", tested.strips().get(2).label());
    assertEquals(15.2, tested.strips().get(2).width(), 1e-12);
    assertEquals(5.6, tested.strips().get(2).thickness(), 1e-12);
    assertEquals(920, tested.strips().get(2).load(), 1e-12);
    assertEquals(224, tested.strips().get(2).span(), 1e-12);
  }

  @Test
  void aBlankFormIsRefusedWithEachOfItsLines() {
    String text = form(Jobs.of("heron"));
    BadInput bad =
        assertThrows(
            BadInput.class, () -> StripsFile.read(YamlTree.parse("heron-strips.yaml", text)));
    for (int i = 0; i < 5; i++) {
      String line = "heron-strips.yaml:" + (7 + i) + ":";
      assertTrue(bad.lines().stream().anyMatch(l -> l.startsWith(line)), bad.getMessage());
    }
    assertTrue(bad.getMessage().contains("width"), bad.getMessage());
  }

  @Test
  void aTitleThatWouldEndTheRemarkStaysInIt() {
    CardOutcome outcome = Jobs.of("heron", "title=\"Heron: a # b\"");
    StripsFileHolds.remark(form(outcome));
  }

  private static final class StripsFileHolds {
    static void remark(String text) {
      text.lines()
          .limit(4)
          .forEach(line -> assertTrue(line.startsWith("#") || line.startsWith("method"), line));
    }
  }
}
