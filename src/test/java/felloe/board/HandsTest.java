package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.board.Handle.Kind;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.yaml.YamlTree;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps of a figure, and what a hand that drags writes. */
class HandsTest {

  private static final Schema SCHEMA = Schema.ofShapeFile();

  @ParameterizedTest
  @CsvSource({
    "290, 1, false, 291",
    "290, -1, false, 289",
    "290.4, 1, false, 291",
    "290.4, -1, false, 290",
    "290.4, 2, false, 292",
    "290, 1, true, 290.1",
    "5.6, 1, false, 6",
    "5.6, 1, true, 5.65",
    "60 mm, 1, false, 61 mm",
    "2.75 in, 1, false, 2.8125 in",
    "2 3/4 in, 1, false, ''",
    "wide, 1, false, ''",
    "0.5, -2, false, 0"
  })
  void aFigureIsSteppedInItsOwnUnit(String text, int by, boolean fine, String to) {
    Schema place = SCHEMA.at("outline.round.diameter").orElseThrow();
    Optional<String> stepped = Nudge.of(text, by, fine, place);
    assertEquals(to, stepped.orElse(""));
  }

  @ParameterizedTest
  @CsvSource({"12:40, 1, 12:45", "12:55, 1, 1:00", "1:00, -1, 12:55", "11:58, 1, 12:03"})
  void aClockPositionIsSteppedByFiveMinutes(String text, int by, String to) {
    Schema place = SCHEMA.at("grips[0].along.from").orElseThrow();
    assertEquals(to, Nudge.of(text, by, false, place).orElseThrow());
  }

  @Test
  void handlesStandWhereTheFileHasThem() {
    YamlTree tree =
        YamlTree.parse(
            "a",
            """
            felloe: 1
            outline: {round: {diameter: 200}}
            windows:
              - points: {corners: [[0, 0], {at: [10, 0]}, [0, 20]]}
                at: [50, 10]
                turn: 90
              - circle: {diameter: 12}
            holes:
              - {line: {from: [1, 2], to: [3, 4], count: 3}, diameter: 4}
              - {edge: {inset: 10, from: 3, to: 6:00, count: 3}, diameter: 4}
            """);
    Map<String, Handle> handles =
        Handles.of(SCHEMA, tree.root(), Contour.circle(Point.ORIGIN, 100)).stream()
            .collect(Collectors.toMap(Handle::path, h -> h));
    assertEquals(
        List.of(
            "holes[0].line.from",
            "holes[0].line.to",
            "holes[1].edge.from",
            "holes[1].edge.to",
            "windows[0].at",
            "windows[0].points.corners[0]",
            "windows[0].points.corners[0].rise",
            "windows[0].points.corners[1].at",
            "windows[0].points.corners[1].rise",
            "windows[0].points.corners[2]",
            "windows[0].points.corners[2].rise",
            "windows[1].at"),
        handles.keySet().stream().sorted().toList());
    near(new Point(50, 20), handles.get("windows[0].points.corners[1].at").at());
    near(new Point(30, 10), handles.get("windows[0].points.corners[2]").at());
    near(new Point(100, 0), handles.get("holes[1].edge.from").at());
    near(new Point(0, -100), handles.get("holes[1].edge.to").at());
    assertEquals(Kind.CLOCK, handles.get("holes[1].edge.to").kind());
    near(Point.ORIGIN, handles.get("windows[1].at").at());
  }

  private static void near(Point expected, Point is) {
    assertTrue(expected.distance(is) < 0.02, expected + " is " + is);
  }

  @Test
  void whatIsWrittenForATurnedWindowComesBackToThePlace() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      Handle handle =
          new Handle(
              "p",
              Kind.POINT,
              Point.ORIGIN,
              new Point(random.nextInt(100), random.nextInt(100)),
              random.nextDouble() * 7 - 3);
      Point place = new Point(random.nextDouble() * 200 - 100, random.nextDouble() * 200 - 100);
      near(place, handle.placed(handle.written(place)));
    }
  }

  @Test
  void aHandGoesToWholeMillimetresToAxesAndLevelWithOthers() {
    Handle moved = new Handle("a", Kind.POINT, Point.ORIGIN, Point.ORIGIN, 0);
    Handle other = new Handle("b", Kind.POINT, new Point(62.5, 18.4), Point.ORIGIN, 0);
    List<Handle> all = List.of(moved, other);
    assertEquals("[31, -46]", Snap.written(moved, new Point(31.3, -45.6), false, all));
    assertEquals("[0, -46]", Snap.written(moved, new Point(-2.1, -45.6), false, all));
    assertEquals("[62.5, 31]", Snap.written(moved, new Point(61.2, 31.2), false, all));
    assertEquals("[-62.5, 18.4]", Snap.written(moved, new Point(-61.2, 17.2), false, all));
    assertEquals("[-61.2, 17.2]", Snap.written(moved, new Point(-61.21, 17.18), true, all));
  }

  @ParameterizedTest
  @CsvSource({
    "100, 0, 3:00",
    "0, 100, 12:00",
    "-100, 0, 9:00",
    "0, -100, 6:00",
    "50, 86.6, 1:00",
    "71, 71, 1:30"
  })
  void aHandRoundTheHubWritesTheClock(double x, double y, String time) {
    Handle handle = new Handle("a", Kind.CLOCK, Point.ORIGIN, Point.ORIGIN, 0);
    assertEquals(time, Snap.written(handle, new Point(x, y), false, List.of()));
  }

  private static String points(List<String> corners, boolean half) {
    return "felloe: 1\noutline:\n  points:\n    corners: ["
        + String.join(", ", corners)
        + "]\n"
        + (half ? "    half: true\n" : "")
        + "stock: {material: birch-plywood, thickness: 6}\n";
  }

  /** Every stop of every edge makes it run on from its neighbour without a corner. */
  @Test
  void anEdgeThatIsPulledStopsWhereItRunsOnFromItsNeighbour() {
    List<String> round =
        List.of(
            "[-100, -60]",
            "{at: [100, -60], rise: 6}",
            "[120, 20]",
            "{at: [60, 90], rise: 9}",
            "[-60, 90]",
            "[-120, 20]");
    List<String> back =
        new java.util.ArrayList<>(
            round.stream().map(c -> c.replaceAll(", rise: \\d", "")).toList());
    java.util.Collections.reverse(back);
    List<String> half = List.of("[0, 95]", "[70, 90]", "[125, 20]", "[100, -60]", "[0, -66]");
    int stops = 0;
    for (var one :
        List.of(Map.entry(round, false), Map.entry(back, false), Map.entry(half, true))) {
      String text = points(one.getKey(), one.getValue());
      Seen seen = Seen.of("a.yaml", text, java.nio.file.Path.of("shapes"));
      List<Handle> all = Reply.handles(SCHEMA, seen, seen);
      for (Handle handle : all) {
        if (handle.kind() != Kind.RISE) {
          continue;
        }
        for (double stop : handle.stops()) {
          if (stop == 0 || Math.abs(stop) > handle.most()) {
            continue;
          }
          Point near = handle.origin().plus(Point.polar(stop + 0.4, handle.turn()));
          String rise = Snap.written(handle, near, false, all);
          assertEquals(stop, Double.parseDouble(rise), 0.0051, handle.path());
          String changed = new Editing(SCHEMA, "a.yaml", text).risen(handle.path(), rise);
          Seen then = Seen.of("a.yaml", changed, java.nio.file.Path.of("shapes"));
          assertTrue(then.study().isPresent(), then.problems() + changed);
          assertTrue(
              smoothest(then.study().get().plate().outline()) < 0.0005,
              handle.path() + " " + rise + " " + smoothest(then.study().get().plate().outline()));
          stops++;
        }
      }
    }
    assertTrue(stops > 20, "stops tried: " + stops);
  }

  /** The least turn at any joint of what runs on somewhere, radians. */
  private static double smoothest(Contour outline) {
    double least = Math.PI;
    for (int i = 0; i < outline.segments().size(); i++) {
      Point a = outline.segments().get(i).tangent(1);
      Point b = outline.segments().get((i + 1) % outline.segments().size()).tangent(0);
      least = Math.min(least, Math.abs(Math.atan2(a.cross(b), a.dot(b))));
    }
    return least;
  }
}
