package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Lines of SVG drawings, against closed forms. */
class SvgDrawingTest {

  private static double area(String body) {
    return Brought.in("a.svg", Brought.svg(body)).outline().area();
  }

  /** Areas in closed form; curves are made of arcs within 0.01 mm, so that areas are to 0.01 P. */
  @Test
  void eachElementHasItsArea() {
    assertEquals(Math.PI * 100 * 100, area("<circle r='100'/>"), 1e-6);
    assertEquals(Math.PI * 120 * 80, area("<ellipse rx='120' ry='80'/>"), 2);
    assertEquals(200 * 100, area("<rect x='-100' y='-50' width='200' height='100'/>"), 1e-9);
    double corners = (4 - Math.PI) * 20 * 20;
    assertEquals(
        20_000 - corners, area("<rect x='-100' y='-50' width='200' height='100' rx='20'/>"), 1e-6);
    assertEquals(
        20_000 - (4 - Math.PI) * 20 * 10,
        area("<rect x='-100' y='-50' width='200' height='100' rx='20' ry='10'/>"),
        1);
    assertEquals(5_000, area("<polygon points='0,0 100,0 0,100'/>"), 1e-9);
    assertEquals(5_000, area("<polyline points='0 0 100 0 0 100 0 0'/>"), 1e-9);
    assertEquals(
        5_000, area("<line x2='100'/><line x1='100' x2='0' y2='100'/><line y1='100'/>"), 1e-9);
    assertEquals(5_000, area("<path d='M0 0h100L0 100z'/>"), 1e-9);
    // A parabola over a chord takes two thirds of its rectangle (Archimedes).
    assertEquals(2.0 / 3 * 100 * 50, area("<path d='M-50 0Q0 -100 50 0z'/>"), 2);
  }

  /** A transform multiplies the area by its determinant (W3C CSS Transforms). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "translate(7 -3) | 1",
        "rotate(33) | 1",
        "rotate(33 20 10) | 1",
        "scale(0.5) | 0.25",
        "scale(0.5,-0.25) | 0.125",
        "skewX(30) | 1",
        "skewY(-20) | 1",
        "matrix(0.5 0.1 -0.2 0.4 3 4) | 0.22",
        "translate(5) rotate(20), scale(.5 .3) | 0.15"
      })
  void transformsMultiplyTheAreaByTheirDeterminant(String transform, double determinant) {
    String g = "<g transform='" + transform + "'>";
    assertEquals(Math.PI * 6_400 * determinant, area(g + "<circle r='80'/></g>"), 2, transform);
    assertEquals(
        6_400 * determinant,
        area(g + "<rect x='-40' y='-40' width='80' height='80'/></g>"),
        1e-6,
        transform);
  }

  /** Where the corner of a rectangle comes to lie: y is turned up. */
  @Test
  void yIsTurnedUpAndTheDrawingsOriginIsKept() {
    Drawn drawn =
        SvgDrawing.read(
            Brought.svg("<rect x='10' y='20' width='5' height='4'/>").getBytes(),
            new Reading("a.svg", Brought.ASKED),
            Sizing.OWN);
    assertTrue(
        drawn.chains().get(0).strokes().stream()
            .anyMatch(s -> s.from().near(new Point(10, -20), 1e-9)));
  }

  /** Units after CSS: 96 px an inch. */
  @ParameterizedTest
  @CsvSource({
    "100mm, 100",
    "10cm, 100",
    "4in, 101.6",
    "384px, 101.6",
    "288pt, 101.6",
    "24pc, 101.6",
    "400Q, 100"
  })
  void unitsHaveTheirSizes(String width, double mm) {
    String text =
        "<svg xmlns='http://www.w3.org/2000/svg' width='"
            + width
            + "' viewBox='0 0 50 50'><rect width='50' height='40'/></svg>";
    assertEquals(mm, Brought.in("a.svg", text).outline().box().width(), 1e-9);
  }

  @Test
  void aDrawingWithoutUnitsAsksForItsSizeAndTakesIt() {
    String text =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 50 50'>"
            + "<ellipse cx='9' cy='9' rx='7' ry='3'/></svg>";
    String told = Brought.refused("a.svg", text).get(0);
    assertTrue(told.contains("--width") && told.contains("--scale"), told);
    BringIn.Wish wide = Brought.sized(new Sizing(OptionalDouble.of(280), OptionalDouble.empty()));
    assertEquals(280, Brought.in("a.svg", text, wide).outline().box().width(), 0.02);
    BringIn.Wish scaled =
        Brought.sized(new Sizing(OptionalDouble.empty(), OptionalDouble.of(25.4)));
    assertEquals(14 * 25.4, Brought.in("a.svg", text, scaled).outline().box().width(), 0.02);
  }

  @Test
  void whatIsNoLineIsPassedOverAndNamed() {
    PlateOutline plate =
        Brought.in(
            "a.svg",
            Brought.svg(
                "<defs><circle r='190'/></defs><clipPath id='c'><rect width='9' height='9'/>"
                    + "</clipPath><text>Ø</text><text/><image href='http://example.org/x.png'/>"
                    + "<g style='display: none'><circle r='180'/></g><circle r='100'/>"));
    assertEquals(200, plate.outline().box().width(), 1e-9);
    String notes = String.join(" ", plate.notes());
    assertTrue(notes.contains("texts (2)") && notes.contains("images (1)"), notes);
    assertTrue(notes.contains("hidden (1)"), notes);
  }

  /** Circles as four cubics, as drawing programs write them: off by 0.027 % of the radius. */
  @Test
  void fourCubicsThatStandForACircleAreOne() {
    double k = 0.5522847498 * 80;
    String d =
        "M80 0C80 "
            + k
            + " "
            + k
            + " 80 0 80S-80 "
            + k
            + " -80 0S-"
            + k
            + " -80 0 -80S80 -"
            + k
            + " 80 0z";
    PlateOutline plate = Brought.in("a.svg", Brought.svg("<path d='" + d + "'/>"));
    Contour outline = plate.outline();
    assertTrue(outline.asCircle().isPresent());
    assertEquals(80, outline.asCircle().get().radius(), 0.0273 / 100 * 80);
    assertTrue(plate.off() <= 0.0273 / 100 * 80, "off " + plate.off());
  }

  /** W3C SVG 2, 5.6: x and y are one more shift, after the copy's own transform. */
  @Test
  void copiesStandWhereTheyArePut() {
    PlateOutline plate =
        Brought.in(
            "a.svg",
            Brought.svg(
                "<defs><circle id='h' cx='10' r='3'/><g id='pair'><use href='#h' x='20'/>"
                    + "<use xmlns:xlink='http://www.w3.org/1999/xlink' xlink:href='#h' y='40'/></g>"
                    + "</defs><symbol id='s'><rect width='9' height='7'/></symbol>"
                    + "<circle r='100'/><use href='#pair'/>"
                    + "<use href='#h' transform='rotate(90)' x='50' y='-7'/>"
                    + "<use href='#s' x='-60' y='-30'/>"));
    List<Point> holes = plate.holes().stream().map(h -> h.centre().minus(plate.moved())).toList();
    assertEquals(3, holes.size());
    for (Point due : List.of(new Point(30, 0), new Point(10, -40), new Point(7, -60))) {
      assertTrue(holes.stream().anyMatch(p -> p.near(due, 1e-9)), due + " of " + holes);
    }
    assertEquals(63, plate.windows().get(0).contour().area(), 1e-9);
  }

  @Test
  void copiesOfNothingAreToldAndNothingIsFetched() {
    PlateOutline plate =
        Brought.in(
            "a.svg",
            Brought.svg(
                "<circle r='100'/><use href='http://example.org/x.svg#a'/><use href='#none'/>"
                    + "<symbol id='v' viewBox='0 0 9 9'><circle r='2'/></symbol>"
                    + "<use href='#v'/>"));
    String notes = String.join(" ", plate.notes());
    assertTrue(notes.contains("copies (use) of what is not in the file (2)"), notes);
    assertTrue(notes.contains("with a view of their own (1)"), notes);
  }

  static Stream<Arguments> broken() {
    StringBuilder bomb = new StringBuilder("<g id='a0'><circle r='1'/></g>");
    for (int i = 1; i < 9; i++) {
      String ten = ("<use href='#a" + (i - 1) + "' x='9'/>").repeat(10);
      bomb.append("<g id='a").append(i).append("'>").append(ten).append("</g>");
    }
    String deep = "<g>".repeat(40) + "<circle r='9'/>" + "</g>".repeat(40);
    return Stream.of(
        arguments("", "XML"),
        arguments("<html/>", "html"),
        arguments("<svg xmlns='http://www.w3.org/2000/svg' width='9mm'><g>", "XML"),
        arguments("<svg width='9mm' viewBox='0 0 9'><circle r='3'/></svg>", "viewBox"),
        arguments("<svg width='9mm' viewBox='0 0 0 9'><circle r='3'/></svg>", "viewBox"),
        arguments(Brought.svg("<circle r='x'/>"), "circle.r"),
        arguments(Brought.svg("<polygon points='1 2 a 4'/>"), "polygon.points"),
        arguments(Brought.svg("<path d='M0 0 L 3'/>"), "path"),
        arguments(Brought.svg("<path d='L 3 4'/>"), "comes before any M"),
        arguments(Brought.svg("<g transform='turn(4)'><circle r='9'/></g>"), "g.transform"),
        arguments(Brought.svg("<g transform='scale(a)'><circle r='9'/></g>"), "g.transform"),
        arguments(Brought.svg(deep), "deeper"),
        arguments(Brought.svg("<g id='a'><use href='#a'/></g>"), "deeper"),
        arguments(Brought.svg("<defs>" + bomb + "</defs><use href='#a8'/>"), "too many"),
        arguments(Brought.svg("<text>only</text>"), "no closed line"),
        arguments(Brought.svg("<circle r='1e9'/>"), "beyond"),
        arguments(
            Brought.svg("<g style='transform:scale(-1,1)'><circle r='9'/></g>"), "style sheets"),
        arguments(
            Brought.svg("<style>.m { transform : rotate(9deg) }</style><circle r='9'/>"),
            "style sheets"),
        arguments(
            Brought.svg("<circle r='9'/>").replace("<svg ", "<svg transform='scale(-1 1)' "),
            "as a whole"),
        arguments(
            Brought.svg("<circle r='9'/>").replace("height='400mm'", "height='400'"), "--width"),
        arguments(
            Brought.svg("<g id='outline'><circle r='90'/></g><text>MIRRORED</text>"), "mirrored"),
        arguments(Brought.svg("<title>w, laser</title><circle r='90'/>"), "cut file"),
        arguments(Brought.svg("<path d='M0 0L50 50L50 0L0 50z'/>"), "crosses"),
        arguments(
            "<!DOCTYPE svg [<!ENTITY a 'b'>]><svg width='9mm'><text>&a;</text></svg>", "entities"),
        arguments(
            "<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/passwd'>]>"
                + "<svg width='9mm'><text>&a;</text></svg>",
            "entities"));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void aBrokenDrawingIsToldWithWhatIsWrong(String text, String told) {
    List<String> lines = Brought.refused("a.svg", text);
    assertTrue(String.join("\n", lines).contains(told), lines.toString());
  }

  /** "slice" fills the page by the larger of two scales (W3C SVG 2, 8.7). */
  @Test
  void aSlicedDrawingTakesTheLargerScale() {
    String text =
        "<svg xmlns='http://www.w3.org/2000/svg' width='60cm' height='30cm' viewBox='0 0 100 100'"
            + " preserveAspectRatio='xMidYMid slice'><rect width='50' height='40'/></svg>";
    assertEquals(300, Brought.in("a.svg", text).outline().box().width(), 1e-9);
  }

  @Test
  void groupsBesideTheOutlineAreTold() {
    PlateOutline plate =
        Brought.in(
            "a.svg",
            Brought.svg(
                "<g id='outline'><circle r='90'/></g><g id='drill'><circle r='3'/></g>"
                    + "<g id='holes'><circle cx='20' r='3'/></g>"));
    assertEquals(1, plate.holes().size());
    assertTrue(String.join(" ", plate.notes()).contains("beside the groups of the part (1)"));
  }

  /** A document type without entities, as many drawing programs write it, is no harm. */
  @Test
  void aPublicDocumentTypeIsNotFetched() {
    String type =
        "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
            + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>";
    assertEquals(
        200,
        Brought.in("a.svg", type + Brought.svg("<circle r='100'/>")).outline().box().width(),
        1e-9);
  }
}
