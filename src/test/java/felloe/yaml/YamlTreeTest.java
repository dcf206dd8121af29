package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import felloe.geometry.Point;
import felloe.plate.BadInput;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class YamlTreeTest {

  private static final String HERON =
      """
      felloe: 1
      outline:
        family: rounded
        width: 280
        height: 11 in
      windows:
        - at: [60, 0]
          radius: 12
          height: 63.2
        - at: [-60, 0]
          height: 40
          radius: 40 mm
          hight: 3
      """;

  enum Family {
    ROUND,
    ROUNDED
  }

  record Window(Point at, double height, double radius) {}

  private static Optional<Window> window(Fields f) {
    Point at = f.point("at").required();
    double height = f.length("height").positive().required();
    double radius =
        f.length("radius")
            .notNegative()
            .atMost(height / 2, "half the window's height", "lower it or raise height")
            .or(0);
    return f.build(() -> new Window(at, height, radius));
  }

  @Test
  void allProblemsOfAFileComeOutInOneRunInReadingOrder() {
    Problems problems = new Problems();
    Fields top = YamlTree.parse("heron.yaml", HERON).fields(problems);
    top.integer("felloe").between(1, 1).required();
    Fields outline = top.group("outline");
    assertEquals(Family.ROUNDED, outline.oneOf("family", Family.class).required());
    assertEquals(280, outline.length("width").positive().required());
    assertEquals(279.4, outline.length("height").positive().required(), 1e-12);
    outline.length("corner").required();
    List<Window> windows = top.list("windows").each(YamlTreeTest::window);
    assertEquals(List.of(new Window(new Point(60, 0), 63.2, 12)), windows);
    top.done();
    BadInput bad = assertThrows(BadInput.class, problems::throwIfAny);
    assertEquals(
        """
        heron.yaml:3:3 outline.corner: is missing; add 'corner:' with a length such as 70, 70 mm, 7 cm or 2.75 in
        heron.yaml:12:13 windows[1].radius: '40 mm' must be at most 20 mm here (half the window's height); lower it or raise height
        heron.yaml:13:5 windows[1].hight: is not a known key; did you mean 'height'? allowed here: at, height, radius\
        """,
        bad.getMessage());
  }

  @Test
  void anOverrideHasItsOwnPlace() {
    Problems problems = new Problems();
    Fields top =
        YamlTree.parse("heron.yaml", HERON)
            .with(Sets.of("windows[1].radius=5", "outline.width=wide"))
            .fields(problems);
    top.allow("felloe", "windows");
    Fields outline = top.group("outline");
    outline.allow("family", "height");
    outline.length("width").required();
    top.done();
    assertEquals(
        "--set outline.width: 'wide' must be a length such as 70, 70 mm, 7 cm or 2.75 in",
        problems.asBadInput().getMessage());
  }
}
