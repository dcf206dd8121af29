package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.kit.Kit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Calls that are wrong, each with the words that a maker reads. */
class BadCallsTest {

  private static final String HERON = "shapes/heron.yaml";

  @TempDir Path folder;

  private static void assertWrong(String first, String... args) {
    Run run = Run.of(args);
    assertEquals(2, run.code(), run.err());
    assertEquals("", run.out());
    assertEquals(first, run.err().lines().findFirst().orElse(""));
    assertFalse(run.err().contains("Exception"), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  @Test
  void anUnknownCommandNamesTheNearest() {
    assertWrong("felloe: unknown command 'mkae'; did you mean 'make'?", "mkae", HERON);
    assertWrong("felloe: unknown command 'chek'; did you mean 'check'?", "chek");
    assertWrong("felloe: unknown command 'zzz'", "zzz");
    assertWrong("felloe hub: unknown command 'shwo'; did you mean 'show'?", "hub", "shwo");
  }

  @Test
  void anUnknownOptionNamesTheNearest() {
    assertWrong(
        "felloe make: unknown option '--papr'; did you mean '--paper'?",
        "make",
        HERON,
        "--papr",
        "A4");
    assertWrong(
        "felloe check: unknown option '--hbu'; did you mean '--hub'?", "check", HERON, "--hbu=x");
    assertWrong("felloe show: unknown option '--zzzzzz'", "show", HERON, "--zzzzzz");
  }

  @Test
  void aValueThatIsMissingIsAskedFor() {
    assertWrong("felloe make: --out needs a value: --out DIR", "make", HERON, "--out");
    assertWrong("felloe make: --out needs a value: --out DIR", "make", "--out", "--turn", HERON);
    assertWrong("felloe check: SHAPE is missing", "check");
    assertWrong(
        "new: needs the FAMILY of the outline, or --from SOURCE; say one of round, four-sided,"
            + " points, path",
        "new");
    assertWrong("SHAPE: must name at least one shape file; write heron.yaml, say", "make");
    assertWrong("hub: must be followed by list, show or measure; write felloe hub list", "hub");
  }

  @Test
  void whatIsGivenTwiceOrTooMuchIsSaid() {
    assertWrong(
        "felloe make: --out is given twice; give it once",
        "make",
        HERON,
        "--out",
        "a",
        "--out",
        "b");
    assertWrong(
        "felloe drill: --paper is given twice; give it once",
        "drill",
        HERON,
        "--paper",
        "A4",
        "--paper",
        "A3");
    assertWrong(
        "felloe layup: --plies is given twice; give it once",
        "layup",
        HERON,
        "--plies",
        "16",
        "--cloth",
        "carbon-twill-200",
        "--plies",
        "12");
    assertWrong("felloe show: does not expect 'b.yaml' here", "show", HERON, "b.yaml");
  }

  @Test
  void whatOnlyCountsForPagesIsRefusedWithoutAFolderForThem() {
    String rest = ": only counts with --out; take it out, or name a folder";
    assertWrong("--margin" + rest, "drill", HERON, "--margin", "5");
    assertWrong("--turn" + rest, "drill", HERON, "--turn");
    assertWrong("--paper" + rest, "layup", HERON, "--paper", "A3");
  }

  @Test
  void aHubThatIsNotKnownIsToldWithTheOtherOptions() {
    for (String command : List.of("template", "card", "make")) {
      Run run = Run.of(command, HERON, "--hub", "nohub", "--paper", "A9");
      assertEquals(2, run.code());
      assertTrue(run.err().contains("--hub: 'nohub' is not a known hub"), run.err());
      assertTrue(run.err().contains("--paper: 'A9'"), run.err());
    }
  }

  @Test
  void noCommandShowsTheHelpAndIsWrong() {
    Run run = Run.of();
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("Usage: felloe"), run.err());
  }

  @Test
  void aFileWithoutANameIsNone() {
    assertWrong("SHAPE: needs the name of a file or folder", "show", "");
    assertWrong("SHAPE: needs the name of a file or folder", "make", "");
  }

  @Test
  void argumentsFilesAreNotRead() throws IOException {
    Path file = Files.writeString(folder.resolve("args"), "--version");
    assertWrong("@" + file + ": does not exist; check the name and the folder", "show", "@" + file);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--margin|NaN|'NaN' must be a length such as 10, 10 mm or 0.4 in; from 0 to 25 mm",
        "--margin|1e1|'1e1' must be a length such as 10, 10 mm or 0.4 in; from 0 to 25 mm",
        "--margin|0x1p3|'0x1p3' must be a length such as 10, 10 mm or 0.4 in; from 0 to 25 mm",
        "--margin|10d|'10d' must be a length such as 10, 10 mm or 0.4 in; from 0 to 25 mm",
        "--margin|-1|'-1' must be from 0 to 25 mm",
        "--margin|2 in|'2 in' must be from 0 to 25 mm",
        "--overlap|5|'5' must be from 10 to 30 mm",
        "--overlap|Infinity|'Infinity' must be a length such as 10, 10 mm or 0.4 in; from 10 to 30"
            + " mm",
        "--face|bakc|'bakc' must be front or back; did you mean 'back'?",
        "--method|glued|'glued' must be stuck-on or traced or pricked",
        "--method|traced|'traced' needs the width of the pen's line; draw a line, measure it, and"
            + " give it as --pen 0.7",
        "--pen|0.7|only counts for --method traced; add that, or take this out",
        "--bars|149.4|'149.4' must be two lengths in mm with an x between; measure the bar that"
            + " runs across and the one that runs up, and write 99.6x100.2",
        "--bars|149,4x150,3|'149,4x150,3' must be two lengths in mm with an x between; measure the"
            + " bar that runs across and the one that runs up, and write 99.6x100.2",
        "--bars|NaNxNaN|'NaNxNaN' must be two lengths in mm with an x between; measure the bar that"
            + " runs across and the one that runs up, and write 99.6x100.2",
        "--format|xml|'xml' must be text or json or html",
      })
  void aValueThatCannotBeIsAnsweredWithWhatIsAllowed(String option, String value, String words) {
    Path out = folder.resolve("out");
    Run run = Run.of("make", HERON, "--out", out.toString(), option, value);
    assertEquals(2, run.code(), run.err());
    assertEquals(option + ": " + words + "\n", run.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void aBarThatIsFarOffIsTakenForASlip() {
    Run run = Run.of("make", HERON, "--out", folder.toString(), "--bars", "149.4x130");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("within 5 % of 100 mm"), run.err());
  }

  @Test
  void textThatCouldTurnATerminalIsShownAsEscapes() {
    Run run = Run.of("show", "no\u001b[31mred.yaml");
    assertEquals(2, run.code());
    assertFalse(run.err().contains("\u001b"), run.err());
    Run option = Run.of("show", "--\u202eevil", HERON);
    assertFalse(option.err().contains("\u202e"), option.err());
  }

  @Test
  void aFileThatCannotBeWrittenIsExitCode3() throws IOException {
    Path inTheWay = Files.writeString(folder.resolve("out"), "a file");
    Run run = Run.of("make", HERON, "--out", inTheWay.toString());
    assertEquals(3, run.code());
    assertEquals(
        inTheWay + ": is a file, not a folder; choose another folder with --out\n", run.err());
    assertEquals("a file", Files.readString(inTheWay));
  }

  @Test
  void outputThatBreaksOffIsExitCode3() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Screen screen =
        new Screen(
            new PrintStream(full, false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8),
            false,
            false);
    assertEquals(3, new Main(screen, new Kit(Path.of(""))).run("show", HERON));
    assertEquals("standard output: cannot be written\n", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aFaultOfOurOwnIsOwnedUpToWithWhatToSend() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Screen screen =
        new Screen(
            new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8),
            false,
            false);
    // No kit at all stands for a fault anywhere behind the command line.
    assertEquals(3, new Main(screen, null).run("show", HERON));
    String text = err.toString(StandardCharsets.UTF_8);
    assertTrue(text.startsWith("This is a fault in Felloe, not in your file."), text);
    assertTrue(text.contains("NullPointerException") && text.contains("Java "), text);
    assertTrue(text.lines().count() <= 12, text);
  }
}
