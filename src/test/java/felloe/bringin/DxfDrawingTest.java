package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.out.Ezdxf;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Lines of DXF drawings, written by hand after the published reference; closed forms. */
class DxfDrawingTest {

  @TempDir Path folder;

  /** Codes and values, one after another, parted by blanks. */
  static String dxf(int units, String blocks, String entities) {
    String all =
        "0 SECTION 2 HEADER 9 $INSUNITS 70 "
            + units
            + " 0 ENDSEC 0 SECTION 2 BLOCKS "
            + blocks
            + " 0 ENDSEC 0 SECTION 2 ENTITIES "
            + entities
            + " 0 ENDSEC 0 EOF";
    return String.join("\n", all.trim().split("\\s+")) + "\n";
  }

  private static PlateOutline in(String entities) {
    return Brought.in("a.dxf", dxf(4, "", entities));
  }

  @Test
  void eachEntityHasItsArea() {
    assertEquals(Math.PI * 2_500, in("0 CIRCLE 10 5 20 6 40 50").outline().area(), 1e-6);
    assertEquals(
        Math.PI * 2_500 / 2,
        in("0 ARC 10 0 20 0 40 50 50 0 51 180 0 LINE 10 -50 20 0 11 50 21 0").outline().area(),
        1e-6);
    // A square of 100 whose right edge is a half circle: its bulge is the tangent of 45 degrees.
    String square = "0 LWPOLYLINE 90 4 70 1 10 0 20 0 10 100 20 0 42 1 10 100 20 100 10 0 20 100";
    assertEquals(10_000 + Math.PI * 1_250, in(square).outline().area(), 1e-6);
    String old =
        "0 POLYLINE 66 1 70 1 0 VERTEX 10 0 20 0 0 VERTEX 10 100 20 0 42 1 0 VERTEX 10 100 20 100"
            + " 0 VERTEX 10 0 20 100 0 SEQEND";
    assertEquals(10_000 + Math.PI * 1_250, in(old).outline().area(), 1e-6);
    assertEquals(
        Math.PI * 100 * 60,
        in("0 ELLIPSE 10 0 20 0 11 80 21 60 40 0.6 41 0 42 6.283185307179586").outline().area(),
        2);
    // A clamped cubic of one span is a Bezier curve; over its chord: 3/20 of its frame.
    String bezier =
        "0 SPLINE 70 8 71 3 72 8 73 4 40 0 40 0 40 0 40 0 40 1 40 1 40 1 40 1"
            + " 10 0 20 0 10 0 20 80 10 100 20 80 10 100 20 0 0 LINE 10 0 20 0 11 100 21 0";
    assertEquals(0.6 * 100 * 80, in(bezier).outline().area(), 2);
  }

  /** A full circle as nine weighted points: Piegl and Tiller, The NURBS Book, example 7.3. */
  @Test
  void aCircleOfWeightedPointsIsRound() {
    double w = Math.sqrt(0.5);
    double[][] p = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}, {1, 0}};
    StringBuilder text = new StringBuilder("0 SPLINE 70 4 71 2 72 12 73 9");
    for (double knot : new double[] {0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4}) {
      text.append(" 40 ").append(knot);
    }
    for (int i = 0; i < 9; i++) {
      text.append(" 41 ").append(i % 2 == 0 ? 1 : w);
    }
    for (double[] at : p) {
      text.append(" 10 ").append(100 * at[0]).append(" 20 ").append(100 * at[1]);
    }
    PlateOutline plate = in(text.toString());
    assertEquals(100, plate.outline().asCircle().orElseThrow().radius(), 1e-3);
  }

  @ParameterizedTest
  @CsvSource({"1, 25.4", "2, 304.8", "4, 1", "5, 10", "6, 1000", "14, 100"})
  void unitsOfTheHeaderHaveTheirSizes(int units, double mm) {
    PlateOutline plate = Brought.in("a.dxf", dxf(units, "", "0 CIRCLE 10 0 20 0 40 2"));
    assertEquals(4 * mm, plate.outline().box().width(), 1e-9 * mm);
  }

  @Test
  void blocksWithinBlocksStandWhereTheyArePut() {
    String blocks =
        "0 BLOCK 2 dot 10 1 20 1 0 CIRCLE 10 1 20 1 40 2 0 ENDBLK"
            + " 0 BLOCK 2 PAIR 10 0 20 0 0 INSERT 2 DOT 10 10 20 0 0 INSERT 2 Dot 10 -10 20 0"
            + " 0 ENDBLK";
    String entities =
        "0 CIRCLE 10 0 20 0 40 100"
            + " 0 INSERT 2 pair 10 0 20 50 41 1.5 42 1.5 50 90"
            + " 0 INSERT 2 PAIR 10 0 20 -50 70 1 71 2 45 -20";
    PlateOutline plate = Brought.in("a.dxf", dxf(4, blocks, entities));
    assertEquals(6, plate.drawn().size() - 1);
    List<Point> centres = plate.holes().stream().map(h -> h.centre().minus(plate.moved())).toList();
    for (double[] at :
        new double[][] {{0, 65}, {0, 35}, {10, -50}, {-10, -50}, {10, -70}, {-10, -70}}) {
      assertTrue(
          centres.stream().anyMatch(c -> c.near(new Point(at[0], at[1]), 1e-9)),
          at[0] + " " + at[1] + ": " + centres);
    }
  }

  /** Drawn on a plane that is seen from below, x runs the other way. */
  @Test
  void aPlaneSeenFromBelowIsMirrored() {
    PlateOutline plate =
        in("0 CIRCLE 10 0 20 0 40 100 0 CIRCLE 10 30 20 20 40 3 210 0 220 0 230 -1");
    assertTrue(plate.holes().get(0).centre().minus(plate.moved()).near(new Point(-30, 20), 1e-9));
  }

  @Test
  void layersThatAreOffAndPaperAreNotLookedAt() {
    String tables =
        "0 ENDSEC 0 SECTION 2 TABLES 0 TABLE 2 LAYER 0 LAYER 2 Aside 70 0 62 -3 0 ENDTAB";
    PlateOutline plate =
        Brought.in(
            "a.dxf",
            dxf(
                4,
                tables,
                "0 CIRCLE 8 aside 10 0 20 0 40 90 0 CIRCLE 67 1 10 0 20 0 40 80"
                    + " 0 CIRCLE 10 0 20 0 40 50 0 TEXT 10 0 20 0 1 x"));
    assertEquals(100, plate.outline().box().width(), 1e-9);
    assertTrue(String.join(" ", plate.notes()).contains("hidden (1), of kind text (1)"));
  }

  /**
   * The library ezdxf's own control points for the same points, its way after a common drawing
   * program: the same curve where the ends are told; where each estimates them, 0.8 mm from it,
   * since these points are as far apart as a third of their bend.
   */
  @ParameterizedTest
  @CsvSource({"true, 1e-6", "false, 1"})
  void aSplineThroughPointsIsThatOfAnotherLibrary(boolean told, double near) throws Exception {
    List<byte[]> both = Ezdxf.splines(told, folder);
    PlateOutline points = BringIn.of(both.get(0), "a.dxf", Brought.USUAL);
    PlateOutline control = BringIn.of(both.get(1), "b.dxf", Brought.USUAL);
    Contour ours =
        points.outline().moved(RigidTransform.shift(-points.moved().x(), -points.moved().y()));
    Contour theirs =
        control.outline().moved(RigidTransform.shift(-control.moved().x(), -control.moved().y()));
    // Each is fitted by arcs.
    assertEquals(0, ours.apart(theirs), near + 2 * Tolerances.FREE_CURVE);
    assertTrue(String.join(" ", points.notes()).contains("otherwise near"));
  }

  /** A closed one through points of a circle is round; its area is Archimedes'. */
  @Test
  void aClosedSplineThroughACirclesPointsIsRound() {
    StringBuilder text = new StringBuilder("0 SPLINE 70 1 71 3");
    for (int i = 0; i < 24; i++) {
      double a = 2 * Math.PI * i / 24;
      text.append(" 11 ").append(100 * Math.cos(a)).append(" 21 ").append(100 * Math.sin(a));
    }
    PlateOutline plate = in(text.toString());
    assertEquals(Math.PI * 10_000, plate.outline().area(), 3);
    assertTrue(plate.outline().asCircle().isPresent());
  }

  /** Three points make a parabola, whose area over its chord is two thirds of its box. */
  @Test
  void aSplineThroughThreePointsIsAParabola() {
    PlateOutline plate =
        in("0 SPLINE 70 0 71 3 11 -60 21 0 11 0 21 60 11 60 21 0 0 LINE 10 60 20 0 11 -60 21 0");
    assertEquals(2.0 / 3 * 120 * 60, plate.outline().area(), 0.5);
  }

  static Stream<Arguments> broken() {
    String loop = "0 BLOCK 2 A 10 0 20 0 0 INSERT 2 A 10 1 20 1 0 ENDBLK";
    StringBuilder bomb = new StringBuilder("0 BLOCK 2 B0 0 LINE 10 0 20 0 11 1 21 1 0 ENDBLK");
    for (int i = 1; i < 12; i++) {
      bomb.append(" 0 BLOCK 2 B").append(i);
      bomb.append((" 0 INSERT 2 B" + (i - 1)).repeat(10)).append(" 0 ENDBLK");
    }
    return Stream.of(
        arguments("", "breaks off"),
        arguments("0\nSECTION\n2\n", "breaks off"),
        arguments("zero\nSECTION\n", "group code"),
        arguments("AutoCAD Binary DXF\r\n\u001a", "binary"),
        arguments(dxf(0, "", "0 CIRCLE 10 0 20 0 40 5"), "--scale"),
        arguments(dxf(17, "", "0 CIRCLE 10 0 20 0 40 5"), "no unit that is known"),
        arguments(dxf(4, "", "0 TEXT 1 x"), "no closed line"),
        arguments(dxf(4, "", "0 CIRCLE 10 0 20 0 40 -5"), "CIRCLE"),
        arguments(dxf(4, "", "0 CIRCLE 10 0 20 0 40 5 210 1 220 0 230 0"), "plane"),
        arguments(dxf(4, "", "0 CIRCLE 10 60,0 20 0 40 5"), "must be a number"),
        arguments(dxf(4, "", "0 CIRCLE 10 nan 20 0 40 5"), "must be a number"),
        arguments(dxf(4, "", "0 LINE 10 0 20 0 30 0 11 9 21 0 31 5"), "plane"),
        arguments(
            dxf(4, "", "0 POLYLINE 70 9 0 VERTEX 10 0 20 0 30 0 0 VERTEX 10 9 20 0 30 3 0 SEQEND"),
            "plane"),
        arguments(dxf(4, "", "0 INSERT 2 none 10 0 20 0"), "no block"),
        arguments(dxf(4, loop, "0 INSERT 2 A 10 0 20 0"), "deeper"),
        arguments(dxf(4, bomb.toString(), "0 INSERT 2 B11 10 0 20 0"), "too many"),
        arguments(dxf(4, "", "0 SPLINE 71 3 11 0 21 0"), "control points"),
        arguments(dxf(4, "", "0 SPLINE 71 3 40 0 40 1 10 0 20 0 10 1 20 1"), "knots"),
        arguments(
            dxf(
                4,
                "",
                "0 LINE 10 0 20 0 11 90 21 0 0 LINE 10 90 20 0 11 0 21 90"
                    + " 0 LINE 10 0 20 90 11 0 21 0.5"),
            "0.5 mm away"));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void aBrokenDrawingIsToldWithWhatIsWrong(String text, String told) {
    List<String> lines = Brought.refused("a.dxf", text);
    assertTrue(String.join("\n", lines).contains(told), lines.toString());
  }
}
