package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.ArcFit;
import felloe.geometry.ArcMerge;
import felloe.geometry.Contour;
import felloe.geometry.CubicCurve;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PathDataTest {

  private static Contour one(String data) {
    List<Contour> contours = PathData.read(data).contours();
    assertEquals(1, contours.size());
    return contours.get(0);
  }

  private static List<PathFault> faults(String data) {
    return assertThrows(PathException.class, () -> PathData.read(data)).faults();
  }

  private static Arc arcOf(Contour contour) {
    return (Arc) contour.segments().stream().filter(s -> s instanceof Arc).findFirst().get();
  }

  @Test
  void yIsTurnedUpExactly() {
    Contour c = one("M 10 20 L 30.1 20 L 30.1 47.3 Z");
    assertEquals(List.of(30.1, -47.3), List.of(c.box().maxX(), c.box().minY()));
    assertEquals(20.1 * 27.3 / 2, c.area(), 1e-9);
  }

  @Test
  void everySpellingOfASquareIsTheSameSquare() {
    List<String> spellings =
        List.of(
            "M0 0L10 0L10 10L0 10Z",
            "M0,0 10,0 10,10 0,10z",
            "m0 0 10 0 0 10 -10 0z",
            "M0 0H10V10H0Z",
            "m0 0h10v10h-10z",
            "M0-0 1e1,0 10.0.1e2-.0 1000e-2 z",
            "  M 0,0\n\tL10 , 0 10 10\r 0 10 Z  ",
            "M0 0L10 0L10 10L0 10L0 0Z",
            "M0 0L10 0L10 10L0 10L0 0",
            "M+0+0L10+0L+1.e1 10L0 10.z",
            "M5 5M0 0H10V10H0ZM7 7",
            "M0 0L10 0 10 0 10 10L0 10L0 0.004Z");
    for (String data : spellings) {
      Contour c = one(data);
      assertEquals(4, c.segments().size(), data);
      assertEquals(100, c.area(), 1e-9, data);
      assertEquals(0, c.box().maxY(), 1e-9, data);
    }
  }

  @Test
  void numbersWithoutGapsAreToldApart() {
    assertEquals(100, one("M0 0h5 5v10H0V0").area(), 1e-12);
    assertEquals(0.5 * 0.5 / 2, one("M0 0L.5.0L.5-.5z").area(), 1e-12);
  }

  @Test
  void zGoesOnFromTheStartOfTheSubpath() {
    List<Contour> c = PathData.read("m10 10h10v10zl-5 0 0 -5z").contours();
    assertEquals(2, c.size());
    assertEquals(12.5, c.get(1).area(), 1e-9);
    assertEquals(5, c.get(1).box().minX(), 1e-12);
  }

  @Test
  void smoothCommandsReflectTheControlPointBefore() {
    Contour written = one("M0 0C0 10 10 10 10 0C10 -10 20 -10 20 0L20 40L0 40Z");
    Contour smooth = one("M0 0C0 10 10 10 10 0S20-10 20 0L20 40L0 40Z");
    assertEquals(written, smooth);
    assertEquals(written, one("m0 0c0 10 10 10 10 0s10-10 10 0v40h-20z"));
    assertEquals(
        one("M0 0Q5 10 10 0Q15 -10 20 0L20 40L0 40Z"), one("M0 0Q5 10 10 0T20 0L20 40L0 40Z"));
    // After another kind of command the control point is the pen's own place.
    assertEquals(one("M0 0L10 0C10 0 20 10 20 20L0 20Z"), one("M0 0L10 0S20 10 20 20L0 20Z"));
    assertEquals(one("M0 0L10 0L20 20L0 20Z"), one("M0 0L10 0T20 20L0 20Z"));
  }

  // W3C SVG 2, section 9.5.1 and appendix B.2.

  @Test
  void arcOfEqualRadiiIsOneArcWithTheCentreOfTheImplementationNotes() {
    Arc small = arcOf(one("M10 10 A30 30 0 0 1 50 10Z"));
    assertTrue(small.centre().near(new Point(30, -32.36068), 1e-5));
    assertEquals(83.621, Math.toDegrees(Math.abs(small.sweep())), 1e-3);
    Arc large = arcOf(one("M10 10 A30 30 0 1 0 50 10Z"));
    assertTrue(large.centre().near(new Point(30, -32.36068), 1e-5));
    assertEquals(276.379, Math.toDegrees(Math.abs(large.sweep())), 1e-3);
  }

  @Test
  void growingAngleIsClockwiseOnTheSheetWhereYRunsDown() {
    // Sweep 1 from (10,10) to (50,10) bows to smaller y, which is up.
    assertTrue(one("M10 10 A30 30 0 0 1 50 10Z").box().maxY() > -10 + 7);
    assertEquals(-10, one("M10 10 A30 30 0 0 0 50 10Z").box().maxY(), 1e-9);
  }

  @Test
  void arcToTheSamePointIsLeftOut() {
    assertEquals(50, one("M0 0A5 5 0 1 1 0 0L10 0L10 10Z").area(), 1e-9);
  }

  @Test
  void arcWithoutARadiusIsALine() {
    Contour c = one("M0 0A0 5 0 1 1 10 0A5 0 0 0 0 10 10Z");
    assertTrue(c.segments().stream().allMatch(s -> s instanceof Line));
  }

  @Test
  void negativeRadiiCountAsPositive() {
    assertEquals(one("M10 10A30 30 0 0 1 50 10Z"), one("M10 10A-30-30 0 0 1 50 10Z"));
  }

  @Test
  void radiiTooSmallAreStretched() {
    Arc arc = arcOf(one("M0 0 A10 10 0 0 1 40 0Z"));
    assertEquals(20, arc.radius(), 1e-12);
    assertTrue(arc.centre().near(new Point(20, 0), 1e-12));
    assertEquals(Math.PI, Math.abs(arc.sweep()), 1e-12);
  }

  @Test
  void exactHalfCircleKeepsItsCentre() {
    Arc arc = arcOf(one("M0 0 A50 50 0 0 1 60 80Z"));
    assertTrue(arc.centre().near(new Point(30, -40), 1e-12));
    assertEquals(Math.PI, Math.abs(arc.sweep()), 1e-12);
  }

  @Test
  void twoHalfCirclesAreOneCircle() {
    Contour c = one("M-50 0A50 50 0 0 1 50 0A50 50 0 0 1 -50 0Z");
    assertTrue(c.asCircle().isPresent());
    assertEquals(Math.PI * 2500, c.area(), 1e-9);
  }

  @Test
  void arcFlagsNeedNoGaps() {
    assertEquals(one("M10 10A30 30 0 0 1 50 10Z"), one("M10 10A30 30 0 0150 10Z"));
    assertEquals(one("m10 10a30 30 0 0 1 40 0z"), one("m10 10a30,30,0,0,1,40,0z"));
    assertEquals(
        one("M0 0A5 5 0 0 1 10 0A5 5 0 0 1 20 0V30H0Z"),
        one("M0 0A5 5 0 0110 0 5 5 0 0120 0V30H0Z"));
  }

  @Test
  void turnedEllipseKeepsItsArea() {
    Contour c = one("M-80 0A80 50 0 0 1 80 0A80 50 0 0 1 -80 0Z");
    assertEquals(Math.PI * 80 * 50, c.area(), 415 * 0.01);
    PathData turned = PathData.read("M0 0A80 50 30 0 1 80 40A80 50 30 0 1 0 0Z");
    assertTrue(turned.distance() <= 0.01 && turned.distance() > 0);
  }

  @Test
  void finerToleranceIsKept() {
    String data = "M0 0C0 90 100 90 100 0C100 -60 0 -60 0 0Z";
    assertTrue(PathData.read(data, 0.001).distance() <= 0.001);
    assertTrue(PathData.read(data, 0.1).distance() > 0.001);
  }

  // Bad data.

  @Test
  void openPathSaysTheGap() {
    PathFault f = faults("M0 0L50 0L50 40L3 4").get(0);
    assertEquals("the line that starts at (0, 0) ends at (3, 4), 5 mm away", f.wanted());
    assertEquals(15, f.offset());
    assertEquals("end it with Z or mend the gap", f.cure());
  }

  @Test
  void nearlyClosedPathIsJoined() {
    assertEquals(3, one("M0 0L50 0L50 40L0.006 0.006").segments().size());
    assertEquals(3, one("M0 0L50 0L50 40L0.004 0.004Z").segments().size());
    assertEquals(4, one("M0 0L50 0L50 40L0 0.011Z").segments().size());
    Contour c = one("M0 0L50 0L50 40A40 40 0 0 1 0.003 -0.004Z");
    assertEquals(3, c.segments().size());
    one("M0 0C20 0 50 0 50 40C30 40 0 20 0.004 0.003");
  }

  @Test
  void eachWrongCharacterIsToldWithItsPlace() {
    assertEquals(
        List.of(new PathFault(7, "x10Z", "is not a number: y must follow", "")),
        faults("M0 0 5 x10Z"));
    List<PathFault> many = faults("M0 0 L10 b L20 c L3 A5 5 0 2 0 1 1 Z");
    assertEquals(List.of(9, 15, 17, 20, 27), many.stream().map(PathFault::offset).toList());
    assertEquals("must be 0 or 1: the large-arc flag", many.get(4).wanted());
  }

  @Test
  void beginningEndAndCommasAreChecked() {
    assertEquals("comes before any M", faults("L0 0 5 5 5 0Z").get(0).wanted());
    assertEquals("draws nothing", faults("").get(0).wanted());
    assertEquals("draws nothing", faults(" M 3 4 ").get(0).wanted());
    assertEquals("is no path command", faults("0 0").get(0).wanted());
    assertEquals("is neither a number nor a path command", faults("M0 0B5 5").get(0).wanted());
    assertEquals("ends where y must follow", faults("M0 0L5").get(0).wanted());
    assertTrue(faults("M0,,0L5 5Z").get(0).wanted().startsWith("must be followed"));
    assertTrue(faults("M0 0,L5 5 5 0Z").get(0).wanted().startsWith("must be followed"));
    assertTrue(faults("M0 0L5 5,").get(0).wanted().startsWith("must be followed"));
  }

  @Test
  void absurdNumbersAreRefused() {
    assertEquals("is beyond 10000 mm", faults("M0 0L1e9 0L0 5Z").get(0).wanted());
    assertEquals("is beyond 10000 mm", faults("M0 0L1e999 0L0 5Z").get(0).wanted());
    assertTrue(faults("m9000 0l9000 0l0 5z").get(0).wanted().startsWith("lies beyond 10000"));
    assertTrue(faults("M0 0A1e5 1 0 0 0 5 5Z").get(0).wanted().startsWith("is beyond"));
    faults("M0 0LNaN 5 5 5Z");
    faults("M0 0LInfinity 5 5 5Z");
  }

  @Test
  void crossingPathSaysWhere() {
    PathFault f = faults("M0 0L40 40L40 0L0 30Z").get(0);
    assertEquals(
        "crosses or touches the line at (17.143, 17.143), in the path's own coordinates",
        f.wanted());
    assertEquals(15, f.offset());
    assertTrue(faults("M0 0L10 0Z").size() == 1);
    assertTrue(faults("M0 0C50 25 -20 -10 30 15Z").size() == 1);
  }

  @Test
  void faultsAreCapped() {
    assertEquals(20, faults("M0 0" + "Lx".repeat(500)).size());
  }

  @Test
  void tooManyStepsAreRefusedQuickly() {
    PathFault f = faults("M0 0" + "l1 0 0 1".repeat(200_000)).get(0);
    assertTrue(f.wanted().contains("one step too many"), f.toString());
  }

  @Test
  void thousandsOfStepsAreRead() {
    StringBuilder data = new StringBuilder("M100 0");
    for (int i = 1; i < 2500; i++) {
      double a = 2 * Math.PI * i / 2500;
      data.append(i % 2 == 0 ? 'L' : ' ').append(100 * Math.cos(a)).append(' ');
      data.append(100 * Math.sin(a));
    }
    assertEquals(Math.PI * 1e4, one(data + "z").area(), 0.1);
  }

  @Test
  void randomLettersNeverDoMoreThanFault() {
    String letters = "MmZzLlHhVvCcSsQqTtAa0123456789.-+eE, \nxé\u0000";
    for (long seed = 0; seed < 5000; seed++) {
      Random random = new Random(seed);
      StringBuilder data = new StringBuilder(random.nextInt(4) == 0 ? "" : "M0 0");
      int n = random.nextInt(60);
      for (int i = 0; i < n; i++) {
        data.append(letters.charAt(random.nextInt(letters.length())));
      }
      try {
        PathData.read(data.toString());
      } catch (PathException e) {
        assertTrue(!e.faults().isEmpty(), "seed " + seed);
        e.faults()
            .forEach(f -> assertTrue(f.offset() >= 0 && f.offset() <= data.length(), data + ""));
      }
    }
  }

  @Test
  void pathOfTooManyArcsIsRefusedQuickly() {
    StringBuilder data = new StringBuilder("M0 0");
    Random random = new Random(7);
    for (int i = 0; i < 2900; i++) {
      data.append('C');
      for (int k = 0; k < 6; k++) {
        data.append(Math.round(9000 * random.nextDouble())).append(' ');
      }
    }
    PathFault f = faults(data + "z").get(0);
    assertTrue(f.wanted().contains("beyond 10000 lines and arcs"), f.toString());
  }

  @Test
  void randomWellFormedPathsGiveContoursOrFaults() {
    int made = 0;
    for (long seed = 0; seed < 600; seed++) {
      Random random = new Random(seed);
      double size = Math.pow(10, 9 * random.nextDouble() - 6);
      StringBuilder data = new StringBuilder("M0 0");
      int n = 1 + random.nextInt(6);
      for (int i = 0; i < n; i++) {
        char command = "LlHhVvCcSsQqTtAa".charAt(random.nextInt(16));
        data.append(command);
        int numbers = "HhVv".indexOf(command) >= 0 ? 1 : "LlTt".indexOf(command) >= 0 ? 2 : 4;
        numbers = command == 'C' || command == 'c' ? 6 : numbers;
        if (command == 'A' || command == 'a') {
          data.append(size * random.nextDouble()).append(' ').append(size * random.nextDouble());
          data.append(' ').append(random.nextInt(360)).append(' ');
          data.append(random.nextInt(2)).append(random.nextInt(2));
          numbers = 2;
        }
        for (int k = 0; k < numbers; k++) {
          double v = random.nextInt(5) == 0 ? 0 : size * (random.nextDouble() - 0.3);
          data.append(k == 0 ? "" : " ").append(v);
        }
      }
      try {
        PathData path = PathData.read(data + "z");
        assertTrue(path.distance() <= 0.01, "seed " + seed);
        made += path.contours().size();
      } catch (PathException e) {
        assertTrue(!e.faults().isEmpty(), "seed " + seed);
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed + ": " + data, e);
      }
    }
    assertTrue(made > 100, "made " + made);
  }

  /** A long path is fitted on all processors: to the last digit as curve after curve. */
  @Test
  void aPathOfManyCurvesIsDrawnAsEachCurveAlone() {
    StringBuilder data = new StringBuilder("M 150 0");
    List<Segment> alone = new ArrayList<>();
    Point pen = new Point(150, 0);
    int waves = 400;
    for (int i = 0; i < waves; i++) {
      Point to =
          i == waves - 1 ? new Point(150, 0) : Point.polar(150, 2 * Math.PI * (i + 1) / waves);
      double share = 150 * 2.2 * Math.PI / waves / 3;
      Point out = pen.plus(pen.unit().left(), share);
      Point in = to.plus(to.unit().left(), -share);
      alone.addAll(ArcFit.of(new CubicCurve(pen, out, in, to)).segments());
      data.append(" C ").append(out.x()).append(' ').append(out.y()).append(' ').append(in.x());
      data.append(' ').append(in.y()).append(' ').append(to.x()).append(' ').append(to.y());
      pen = to;
    }
    Contour drawn = one(data + " Z");
    Contour wanted =
        new Contour(ArcMerge.closed(alone)).moved(new RigidTransform(true, Math.PI, Point.ORIGIN));
    assertEquals(wanted.segments(), drawn.segments());
  }
}
