package felloe.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class InputErrorTest {

  @Test
  void aPlaceReadsAsFileLineAndColumn() {
    assertEquals("heron.yaml:14:9", Place.of("heron.yaml", 14, 9).toString());
    assertEquals("heron.yaml", Place.ofFile("heron.yaml").toString());
    assertEquals("--set outline.width", Place.ofOption("--set").naming("outline.width").toString());
    assertEquals("--set", Place.ofOption("--set").toString());
    assertEquals("built-in", Place.BUILT_IN.toString());
  }

  @Test
  void aPlaceHasLineAndColumnOrNeither() {
    assertThrows(IllegalArgumentException.class, () -> Place.of("a", 1, 0));
    assertThrows(IllegalArgumentException.class, () -> Place.of("a", 0, 1));
    assertThrows(IllegalArgumentException.class, () -> Place.of("a", -1, 1));
  }

  @Test
  void placesSortByFileLineAndColumnWithOptionsLast() {
    List<Place> sorted =
        List.of(
            Place.of("!odd.yaml", 9, 9),
            Place.ofFile("a.yaml"),
            Place.of("a.yaml", 2, 9),
            Place.of("a.yaml", 10, 1),
            Place.of("a.yaml", 10, 2),
            Place.of("b.yaml", 1, 1),
            Place.ofOption("--set").naming("a"),
            Place.ofOption("--set").naming("b"));
    List<Place> mixed = new ArrayList<>(sorted);
    Collections.reverse(mixed);
    Collections.sort(mixed);
    assertEquals(sorted, mixed);
  }

  @Test
  void aProblemIsOneLineWithPlaceWhoValueWantedAndCure() {
    Place place = Place.of("heron.yaml", 14, 9);
    assertEquals(
        "heron.yaml:14:9 windows[2].radius: '40 mm' must be at most 31.6 mm here (half the"
            + " window's height); lower it or raise height",
        new Problem(
                place,
                "windows[2].radius",
                "40 mm",
                "must be at most 31.6 mm here (half the window's height)",
                "lower it or raise height")
            .line());
    assertEquals("heron.yaml:14:9: is odd", new Problem(place, "", "", "is odd", "").toString());
  }

  @Test
  void anOverrideDoesNotNameItsPathTwice() {
    Place place = Place.ofOption("--set").naming("outline.width");
    assertEquals(
        "--set outline.width: 'x' is odd",
        new Problem(place, "outline.width", "x", "is odd", "").line());
    assertEquals(
        "--set outline.width width: is odd", new Problem(place, "width", "", "is odd", "").line());
  }

  @Test
  void whatWasReadIsSafeToPrint() {
    assertEquals("a\\nb\\r\\tc", Problem.shown("a\nb\r\tc"));
    assertEquals("\\u0000\\u001b[31m", Problem.shown("\0\u001b[31m"));
    assertEquals("\\u202egpj", Problem.shown("\u202egpj"));
    assertEquals("\\ud800", Problem.shown("\ud800"));
    assertEquals("\\u2028", Problem.shown("\u2028"));
    assertEquals("grün 30° 😀", Problem.shown("grün 30° 😀"));
  }

  @Test
  void whatWasReadIsCutToSixtyCharacters() {
    assertEquals("x".repeat(60), Problem.shown("x".repeat(60)));
    assertEquals("x".repeat(59) + "…", Problem.shown("x".repeat(61)));
    String cut = Problem.shown("x" + "😀".repeat(40));
    assertTrue(cut.length() <= 60 && cut.endsWith("😀…"), cut);
    assertTrue(Problem.shown("\0".repeat(1000)).length() <= 60);
    assertEquals(60, new Problem(Place.BUILT_IN, "", "y".repeat(999), "", "").value().length());
  }

  @Test
  void badInputListsItsProblemsAndCountsTheRest() {
    Problem one = new Problem(Place.of("a", 1, 1), "", "", "is one", "");
    Problem two = new Problem(Place.of("a", 2, 1), "", "", "is two", "");
    BadInput bad = new BadInput(List.of(one, two), 7);
    assertEquals(List.of("a:1:1: is one", "a:2:1: is two", "and 7 more problems"), bad.lines());
    assertEquals("a:1:1: is one\na:2:1: is two\nand 7 more problems", bad.getMessage());
    assertEquals(List.of(one, two), bad.problems());
    assertEquals(7, bad.more());
    assertEquals(0, bad.getStackTrace().length);
    assertEquals("and 1 more problem", new BadInput(List.of(one), 1).lines().get(1));
    assertThrows(IllegalArgumentException.class, () -> new BadInput(List.of()));
  }
}
