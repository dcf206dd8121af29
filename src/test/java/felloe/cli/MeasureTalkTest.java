package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

class MeasureTalkTest {

  private static Run talk(String typed) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Screen screen =
        new Screen(
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8),
            true,
            false);
    BufferedReader in = new BufferedReader(new StringReader(typed));
    ParseResult call = new CommandLine(new HubCommand().spec()).parseArgs("measure").subcommand();
    int code;
    try {
      code = HubCommand.talk(in, call, screen, new Kit(Path.of("")));
    } catch (CannotWrite impossible) {
      throw new IllegalStateException(impossible);
    }
    screen.out().flush();
    screen.err().flush();
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aStrangerTypesFourReadingsAndHasTheHub() {
    Run run = talk("\n6\n5.5\n75.5\n75.48\n40.5\nq\n");
    assertEquals(Exit.WELL, run.code(), run.err());
    assertTrue(run.out().contains("6 holes, taken as even, on a circle of 69.9"), run.out());
    assertTrue(run.out().contains("\n6x70-m5 "), run.out());
    assertTrue(run.err().contains("[1]"), run.err());
    assertTrue(run.err().contains(" - {hole: 1, over: diameter, reads: 5.5}"), run.err());
  }

  @Test
  void theSketchShowsWhichPairIsAskedFor() {
    Run run = talk("\n6\n5.5\n");
    String sketch = String.join("\n", new RingSketch(6, 1, 4).lines());
    assertTrue(run.err().contains(sketch), run.err());
    assertTrue(sketch.startsWith(" ".repeat(18) + "[1]"), sketch);
    assertTrue(sketch.endsWith("[4]"), sketch);
  }

  @Test
  void itEndsAtTheEndOfTheInputAndSaysWhatLacks() {
    for (String typed : new String[] {"", "\n", "\n6\n", "\n6\n5.5\n"}) {
      Run run = talk(typed);
      assertEquals(Exit.WRONG, run.code(), typed);
      assertTrue(run.err().contains("too few"), run.err());
      assertEquals("", run.out());
    }
  }

  @Test
  void whatIsWrongIsToldAndAskedAgain() {
    Run run = talk("\nsix\n\n6\n5.5\n-3\n75.5\n75.5\nq\n");
    assertEquals(Exit.WELL, run.code(), run.err());
    assertTrue(run.err().contains("Not taken: 'six' must be a whole number"), run.err());
    assertTrue(run.err().contains("Not taken: '-3' must be more than 0 mm"), run.err());
  }

  @Test
  void aReadingMayBeSkippedAndAnotherPairNamed() {
    Run run = talk("screws\n6\n5\n\n1 4 o 75\n2 5 i 65\n1 2 c 35\nq\n");
    assertEquals(Exit.WELL, run.code(), run.err());
    assertTrue(run.out().contains("6 screws, taken as even, on a circle of 70.00"), run.out());
  }

  @Test
  void withoutAFileInAPipeItRefuses() {
    Run run = Run.of("hub", "measure");
    assertEquals(Exit.WRONG, run.code());
    assertTrue(run.err().contains("felloe hub measure FILE"), run.err());
  }

  @Test
  void readingsThatContradictEachOtherAreNotCalledALine(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("hub.yaml");
    Files.writeString(
        file,
        "holes: 6\nhole_diameter: 5.5\nreadings:\n"
            + "  - {from: 1, to: 2, over: outside, reads: 39.5}\n"
            + "  - {from: 1, to: 4, over: outside, reads: 30}\n"
            + "  - {from: 2, to: 5, over: outside, reads: 75.5}\n");
    Run run = Run.of("hub", "measure", file.toString());
    assertEquals(Exit.WRONG, run.code());
    assertTrue(run.err().contains("contradict each other"), run.err());
    assertFalse(run.err().contains("on one line"), run.err());
  }
}
