package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlacementCheckTest {

  private static final Contour PLATE = FourSided.rectangle(200, 100, 20).contour();

  private static List<String> complaints(
      Contour outline, List<? extends Contour> windows, List<Hole> holes) {
    Problems problems = new Problems();
    GeometryProblems reports =
        new GeometryProblems(YamlTree.parse("a.yaml", "a: 1").root(), problems);
    List<Window> named = new ArrayList<>();
    for (int i = 0; i < windows.size(); i++) {
      named.add(
          new Window("W" + (i + 1), WindowUse.OPEN, windows.get(i), Place.of("a.yaml", i + 1, 5)));
    }
    new PlacementCheck(reports, outline).check(named, holes);
    return problems.none() ? List.of() : problems.asBadInput().lines();
  }

  private static List<String> ofWindows(Contour... windows) {
    return complaints(PLATE, List.of(windows), List.of());
  }

  private static Contour circle(double x, double y, double radius) {
    return Contour.circle(new Point(x, y), radius);
  }

  private static Hole hole(String label, double x, double diameter, int line) {
    return new Hole(label, HoleRole.GRIP, new Point(x, 0), diameter, Place.of("a.yaml", line, 3));
  }

  @Test
  void openingsInsideAndClearOfEachOtherAreRight() {
    assertEquals(List.of(), ofWindows(circle(0, 0, 20), circle(40.01, 0, 20), circle(-50, 0, 29)));
  }

  @Test
  void aPlateWithoutOpeningsIsRight() {
    assertEquals(List.of(), ofWindows());
  }

  @Test
  void aCircleOverAStraightEdgeReachesOutByWhatIsBeyondIt() {
    // centre 45 from the axis, radius 12.5, edge at 50: 7.5 beyond
    assertEquals(
        List.of(
            "a.yaml:1:5 window W1: reaches 7.5 mm outside the outline, near (0, 57.5) mm; move it"
                + " inward or make it smaller"),
        ofWindows(circle(0, 45, 12.5)));
  }

  @Test
  void twoCirclesReachIntoEachOtherByTheSumOfRadiiLessTheDistance() {
    assertEquals(
        List.of(
            "a.yaml:2:5 window W2: reaches 7 mm into window W1 (line 1), near (13, 0) mm; move one"
                + " of them or make it smaller"),
        ofWindows(circle(0, 0, 20), circle(28, 0, 15)));
  }

  @Test
  void circlesThatTouchAreToldToTouch() {
    assertEquals(
        List.of(
            "a.yaml:2:5 window W2: touches window W1 (line 1), near (20, 0) mm; move one of them or"
                + " make it smaller"),
        ofWindows(circle(0, 0, 20), circle(35, 0, 15)));
  }

  @Test
  void aCircleThatTouchesTheOutlineIsToldToTouch() {
    assertTrue(
        ofWindows(circle(0, 30, 20))
            .get(0)
            .contains("touches the outline from inside, near (0, 50)"));
  }

  @Test
  void whatLiesOutsideInsideRoundOrOnAnotherIsTold() {
    assertTrue(ofWindows(circle(300, 0, 5)).get(0).contains("lies outside the outline, near ("));
    assertTrue(ofWindows(circle(0, 0, 500)).get(0).contains("lies round the whole outline"));
    assertTrue(
        ofWindows(circle(0, 0, 20), circle(5, 0, 5)).get(0).contains("lies inside window W1"));
    assertTrue(
        ofWindows(circle(5, 0, 5), circle(0, 0, 20)).get(0).contains("lies round window W1"));
    assertTrue(
        ofWindows(circle(5, 0, 5), circle(5, 0, 5)).get(0).contains("lies exactly on window W1"));
  }

  @Test
  void whatOneEntryDoesAlikeIsToldOnceWithTheDeepest() {
    List<Hole> row =
        List.of(
            hole("G1", 97, 4, 8), hole("G2", 99, 4, 8), hole("G3", 98, 4, 8), hole("G4", 0, 4, 9));
    assertEquals(
        List.of(
            "a.yaml:8:3 grip screw G2: reaches 1 mm outside the outline, near (101, 0) mm (and 1"
                + " more like it); move it inward or make it smaller",
            "a.yaml:8:3 grip screw G3: reaches 3 mm into grip screw G1 (line 8), near (96, 0) mm"
                + " (and 2 more like it); both come from this entry: make them fewer, smaller or"
                + " farther apart"),
        complaints(PLATE, List.of(), row));
  }

  @Test
  void anotherFileIsNamedInFull() {
    Hole one =
        new Hole("A", HoleRole.OTHER, Point.ORIGIN, 4, Place.ofOption("--set").naming("holes[0]"));
    Hole two = new Hole("B", HoleRole.OTHER, Point.ORIGIN, 2, Place.of("a.yaml", 3, 4));
    assertTrue(
        complaints(PLATE, List.of(), List.of(one, two))
            .get(0)
            .startsWith("a.yaml:3:4 hole B: lies inside hole A (--set holes[0]), near"));
  }

  /** The check and the region of the plate are two judges of the same thing. */
  @Test
  void itRefusesExactlyWhatTheRegionRefuses() {
    for (long seed = 1; seed <= 3_000; seed++) {
      Random random = new Random(seed);
      List<Contour> openings = new ArrayList<>();
      for (int i = 2 + random.nextInt(3); i > 0; i--) {
        double x = random.nextDouble() * 240 - 120;
        double y = random.nextDouble() * 120 - 60;
        openings.add(
            random.nextBoolean()
                ? circle(x, y, 1 + random.nextDouble() * 30)
                : Placing.degrees(new Point(x, y), random.nextInt(360))
                    .of(new Slot(60, 5 + random.nextInt(30), 0).contour()));
      }
      boolean clear = complaints(PLATE, openings, List.of()).isEmpty();
      boolean region = true;
      try {
        new Region(PLATE, openings);
      } catch (GeometryException e) {
        region = false;
      }
      assertEquals(region, clear, "seed " + seed);
    }
  }
}
