package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class HoleRowsTest {

  private static final double EXACT = 1e-9;

  private static double clock(double hours) {
    return Math.toRadians(90 - 30 * hours);
  }

  private static List<Point> edge(
      Contour outline, double inset, double from, double to, int count) {
    return HoleRows.edge(Offset.of(outline, -inset), inset, clock(from), clock(to), count);
  }

  private static void near(Point expected, Point actual) {
    assertTrue(expected.near(actual, 1e-6), expected + " is not " + actual);
  }

  @Test
  void aLineHasItsEndsAndEqualSteps() {
    List<Point> row = HoleRows.line(new Point(-10, 0), new Point(20, 40), 6);
    near(new Point(-10, 0), row.get(0));
    near(new Point(20, 40), row.get(5));
    for (int i = 1; i < 6; i++) {
      assertEquals(10, row.get(i).distance(row.get(i - 1)), EXACT);
    }
  }

  @Test
  void anArcHasItsEndsAndEqualAngles() {
    List<Point> row = HoleRows.arc(new Point(5, 6), 100, 0, Math.PI / 2, 4);
    near(new Point(105, 6), row.get(0));
    near(new Point(5 + 100 * Math.cos(Math.PI / 6), 56), row.get(1));
    near(new Point(5, 106), row.get(3));
  }

  @Test
  void anArcRunsTheOtherWayWhenItsEndIsLower() {
    List<Point> row = HoleRows.arc(Point.ORIGIN, 10, Math.PI / 2, 0, 3);
    near(new Point(Math.sqrt(50), Math.sqrt(50)), row.get(1));
    near(new Point(10, 0), row.get(2));
  }

  @Test
  void aWholeTurnIsDividedWithoutMeetingItself() {
    // chord = 2 r sin(pi / n), as for a bolt circle
    List<Point> row = HoleRows.arc(Point.ORIGIN, 35, 0, 2 * Math.PI, 6);
    for (int i = 0; i < 6; i++) {
      assertEquals(35, row.get(i).distance(row.get((i + 1) % 6)), EXACT);
    }
  }

  @Test
  void alongACircleEqualLengthsAreEqualAnglesClockwise() {
    List<Point> row = edge(Contour.circle(Point.ORIGIN, 140), 15, 1, 3, 5);
    for (int i = 0; i < 5; i++) {
      near(Point.polar(125, clock(1 + i * 0.5)), row.get(i));
    }
  }

  @Test
  void alongACircleFromAPositionToItselfIsAllTheWayRound() {
    List<Point> row = edge(Contour.circle(Point.ORIGIN, 140), 15, 12, 12, 8);
    for (int i = 0; i < 8; i++) {
      near(Point.polar(125, clock(12 + i * 1.5)), row.get(i));
    }
  }

  @Test
  void aRowMayRunPastTwelve() {
    List<Point> row = edge(Contour.circle(Point.ORIGIN, 140), 15, 11, 1, 3);
    near(Point.polar(125, clock(12)), row.get(1));
    List<Point> longWay = edge(Contour.circle(Point.ORIGIN, 140), 15, 1, 11, 3);
    near(Point.polar(125, clock(6)), longWay.get(1));
  }

  @Test
  void alongARoundedRectangleTheStepsHaveEqualLength() {
    Contour outline = FourSided.rectangle(300, 200, 40).contour();
    List<Point> row = edge(outline, 10, 12, 3, 7);
    // A quarter of the inset line: half a top edge, a corner of radius 30, half a right edge.
    double quarter = 110 + 30 * Math.PI / 2 + 60;
    near(new Point(0, 90), row.get(0));
    near(new Point(140, 0), row.get(6));
    ArcLengthIndex inset = new ArcLengthIndex(FourSided.rectangle(280, 180, 30).contour());
    double before = inset.position(row.get(0));
    for (int i = 1; i < 7; i++) {
      double at = inset.position(row.get(i));
      double travelled = before - at;
      assertEquals(
          quarter / 6, travelled - inset.length() * Math.floor(travelled / inset.length()), 1e-6);
      before = at;
    }
    near(new Point(quarter / 6, 90), row.get(1));
  }

  @Test
  void everyHoleLiesAtTheInset() {
    Contour outline =
        new FourSided(300, 200, 40, 30, new FourSided.Rise(9, 4, 12, 12), Point.ORIGIN).contour();
    for (Point centre : edge(outline, 17, 12, 12, 40)) {
      assertEquals(17, outline.distance(centre), 1e-6);
      assertTrue(outline.contains(centre));
    }
  }

  @Test
  void anInsetThatLeavesNothingIsRefused() {
    ShapeException none =
        assertThrows(
            ShapeException.class, () -> edge(Contour.circle(Point.ORIGIN, 140), 140.5, 1, 3, 5));
    assertEquals("inset", none.faults().get(0).parameter());
  }
}
