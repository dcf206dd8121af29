package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of measured points, against closed forms. */
class PointTableTest {

  private static String row(double a, double b) {
    return String.format(Locale.ROOT, "%.4f,%.4f%n", a, b);
  }

  @Test
  void pointsOfACircleAreACircle() {
    StringBuilder polar = new StringBuilder("radius,angle\n");
    StringBuilder plane = new StringBuilder("x,y\n");
    for (int i = 0; i < 24; i++) {
      polar.append(row(140, 15 * i));
      Point p = Point.polar(140, Math.toRadians(15 * i));
      plane.append(row(p.x() + 40, p.y() - 30));
    }
    for (String text : List.of(polar.toString(), plane.toString())) {
      PlateOutline plate = Brought.in("a.csv", text);
      assertEquals(140, plate.outline().asCircle().orElseThrow().radius(), 0.01);
    }
  }

  /** An ellipse of 150 by 100 by its offsets from its upright axis, every 10 mm and at the ends. */
  @Test
  void offsetsFromABaseLineMakeBothSides() {
    StringBuilder text = new StringBuilder("along,offset\n-100,0\n-98,");
    text.append(150 * Math.sqrt(1 - 0.98 * 0.98)).append('\n');
    text.append("-95,").append(150 * Math.sqrt(1 - 0.95 * 0.95)).append('\n');
    for (int y = -90; y <= 90; y += 10) {
      text.append(row(y, 150 * Math.sqrt(1 - y * y / 1e4)));
    }
    text.append("95,").append(150 * Math.sqrt(1 - 0.95 * 0.95)).append('\n');
    text.append("98,").append(150 * Math.sqrt(1 - 0.98 * 0.98)).append("\n100,0\n");
    PlateOutline plate = Brought.in("a.csv", text.toString());
    assertEquals(300, plate.outline().box().width(), 0.05);
    assertEquals(200, plate.outline().box().height(), 0.05);
    assertEquals(Math.PI * 150 * 100, plate.outline().area(), 0.002 * Math.PI * 15_000);
  }

  @Test
  void cornersAreKeptAndLinesBetweenThemAreStraight() {
    PlateOutline plate =
        Brought.in(
            "a.csv",
            "# paced off\nx;y;corner\n-100,5;-50;x\n100,5;-50;x\n100,5;50;x\n-100,5;50;x\n");
    assertEquals(201 * 100, plate.outline().area(), 1e-6);
    assertEquals(4, plate.outline().segments().size());
  }

  @Test
  void aSharpTurnThatIsMarkedAsNoCornerIsTold() {
    PlateOutline plate = Brought.in("a.csv", "x,y\n-100,-50\n100,-50\n100,50\n-100,50\n");
    assertTrue(String.join(" ", plate.notes()).contains("turns by 90 degrees"));
  }

  @Test
  void anEmptyLineBeginsTheNextClosedLine() {
    StringBuilder text = new StringBuilder("radius,angle\n");
    for (double radius : new double[] {140, 19}) {
      for (int i = 0; i < 36; i++) {
        text.append(row(radius, 10 * i));
      }
      text.append('\n');
    }
    PlateOutline plate = Brought.in("a.csv", text.toString());
    assertEquals(38, plate.bore().orElseThrow().diameter(), 0.02);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | empty",
        "a,b;1,2 | must name the columns",
        "x,y,z;1,2,3;3,4,5 | no column that is known",
        "x,y;1,2;3,4 | fewer than three",
        "x,y;1,2;3,four;5,6 | must be a number",
        "x,y;1,2;3;5,6 | must be a number",
        "x,y;1,2;3,NaN;5,6 | must be a number",
        "x,y;0,0;1e9,2;5,6 | beyond",
        "x,y;0,0;50,50;50,0;0,50 | crosses"
      })
  void aBrokenTableIsToldWithWhatIsWrong(String rows, String told) {
    String corners =
        told.equals("crosses") ? rows.replace(";", ",x;").replace("y,x", "y,corner") + ",x" : rows;
    List<String> lines = Brought.refused("a.csv", corners.replace(";", "\n"));
    assertTrue(String.join("\n", lines).contains(told), lines.toString());
  }
}
