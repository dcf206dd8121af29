package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.plate.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DialectTest {

  private static final Place ASKED = Place.ofOption("--dialect");

  @TempDir Path folder;

  private Dialect read(String text) throws Exception {
    Files.writeString(folder.resolve("my-router.yaml"), text);
    return DialectCatalogue.named("my-router.yaml", folder, ASKED);
  }

  private void refused(String text, String... lines) {
    BadInput bad = assertThrows(BadInput.class, () -> read(text));
    String place = folder.resolve("my-router.yaml").toString();
    // A long folder is cut in messages; what counts is what follows the place.
    String found = bad.getMessage().replace(Place.ofFile(place) + ":", "");
    assertEquals(String.join("\n", lines), found);
  }

  private static String plain(String more) {
    return "felloe-dialect: 1\nname: mine\nstart: [G17, G21, G90, G94]\nbasis: asked\n" + more;
  }

  @Test
  void everyKnownDialectIsNamedAsItsFileAndKeepsTheReportsModes() {
    for (String name : DialectCatalogue.names()) {
      Dialect dialect = DialectCatalogue.named(name, Path.of(""), ASKED);
      assertEquals(name, dialect.name());
      assertTrue(dialect.start().containsAll(Dialect.REQUIRED));
      assertTrue(dialect.decimals() >= 4, "NISTIR 6556 3.5.3.2 wants radii within 0.002 mm");
    }
  }

  /** NISTIR 6556, tables 4 and 5, has no G91.1. */
  @Test
  void thePlainDialectHoldsOnlyWordsOfTheReport() {
    Dialect plain = DialectCatalogue.named(DialectCatalogue.names().get(0), Path.of(""), ASKED);
    assertFalse(plain.start().contains("G91.1"));
    assertEquals(Dialect.Comments.PARENTHESES, plain.lines().comments());
    assertFalse(plain.dwellMilliseconds());
  }

  @Test
  void aFileOfOnesOwnHasDefaults() throws Exception {
    Dialect mine = read(plain(""));
    assertEquals("mine", mine.title());
    assertEquals(4, mine.decimals());
    assertTrue(mine.wholeCircles());
    assertFalse(mine.splitAtQuadrants());
    assertTrue(mine.drillCycles());
    assertEquals("M3", mine.words().spindleOn());
    assertEquals("M5", mine.words().spindleOff());
    assertTrue(mine.words().coolantOn().isEmpty());
    assertEquals("M0", mine.words().pause());
    assertEquals("M2", mine.words().end());
  }

  @Test
  void everyKeyIsRead() throws Exception {
    Dialect mine =
        read(
            plain(
                "title: My router\ndecimals: 5\nwhole-circles: false\nsplit-at-quadrants: true\n"
                    + "drilling: moves\n"
                    + "lines: {number-step: 5, comments: semicolon, percent-signs: true, ending:"
                    + " cr-lf}\n"
                    + "spindle: {on: M3, off: M5, seconds: 0}\ncoolant: {on: M7, off: M9}\n"
                    + "dwell: milliseconds\npause: M1\nend: M30\n"));
    assertEquals("My router", mine.title());
    assertEquals(5, mine.decimals());
    assertFalse(mine.wholeCircles());
    assertTrue(mine.splitAtQuadrants());
    assertFalse(mine.drillCycles());
    assertEquals(new Dialect.Lines(5, Dialect.Comments.SEMICOLON, true, true), mine.lines());
    assertEquals("M7", mine.words().coolantOn().orElseThrow());
    assertEquals("M1", mine.words().pause());
    assertEquals("M30", mine.words().end());
    assertTrue(mine.dwellMilliseconds());
    assertEquals(0, mine.spindleSeconds(), 0);
  }

  @Test
  void anUnknownNameOffersTheNearest() {
    BadInput bad =
        assertThrows(
            BadInput.class, () -> DialectCatalogue.named("plain-rs247", Path.of(""), ASKED));
    assertEquals(
        "--dialect: 'plain-rs247' is not a known dialect; did you mean 'plain-rs274'?"
            + " known: plain-rs274, numbered-lines, no-drill-cycles; or name a file such as"
            + " my-router.yaml",
        bad.getMessage());
  }

  @Test
  void aMissingFileIsToldAndNoOddNameReachesElsewhere() {
    for (String name : new String[] {"nowhere.yaml", "../plain-rs274", "a/b", "x\u0000.yaml"}) {
      assertThrows(BadInput.class, () -> DialectCatalogue.named(name, folder, ASKED), name);
    }
  }

  @Test
  void threeDecimalsAreTooFew() {
    refused(
        plain("decimals: 3\n"),
        "5:11 decimals: '3' must be at least 4 here (with fewer, arcs one after another miss 0.002"
            + " mm); write 4");
  }

  @Test
  void aStartWithoutItsModesOrWithOthersIsRefused() {
    String head = "felloe-dialect: 1\nname: mine\nbasis: asked\nstart: ";
    refused(head + "[G17, G21, G94]\n", "4:8 start: must have G90; add what is missing");
    refused(
        head + "[G17, G20, G21, G90, G94]\n",
        "4:14 start[1]: 'G20' has no place in the safe start; allowed: G17, G21, G40, G49, G54,"
            + " G61, G64, G80, G90, G91.1, G94");
    refused(
        head + "[G17, G21, G90, G94, G17]\n", "4:29 start[4]: 'G17' stands twice; take one out");
    refused(
        head + "[G17, G21, G90, G94, G61, G64]\n",
        "4:34 start[5]: 'G64' cannot stand beside the other of G61 and G64; keep one");
  }

  @Test
  void aWordThatCouldBeAProgramIsRefused() {
    refused(
        plain("spindle: {on: 'M3 G0 Z-50'}\n"),
        "5:15 spindle.on: 'M3 G0 Z-50' must be a word such as M3 or G64");
    refused(plain("pause: M2\n"), "5:8 pause: 'M2' must be one of M0, M1");
    refused(
        plain("coolant: {on: M8}\n"),
        "5:10 coolant: must have on and off; write {on: M8, off: M9}");
  }

  @Test
  void everyProblemComesOutInOneRun() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () -> read("felloe-dialect: 2\nname: MINE\ndecimals: 9\nstart: []\nspindel: {}\n"));
    assertEquals(6, bad.problems().size(), bad.getMessage());
  }
}
