package felloe.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The interpreter of the tests against the worked examples and error rules of NISTIR 6556. */
class Rs274InterpreterTest {

  private static final String START = "G17 G21 G90 G94 F100\n";

  private static Rs274Interpreter run(String code, double... start) {
    byte[] program = (START + code + "\nM2\n").getBytes(StandardCharsets.US_ASCII);
    return new Rs274Interpreter(Rs274Beyond.NOTHING, start).run(program);
  }

  private static void error(String why, String code) {
    Rs274Exception error = assertThrows(Rs274Exception.class, () -> run(code, 0, 0, 0), code);
    assertTrue(error.getMessage().contains(why), error.getMessage());
  }

  private static void assertStep(Rs274Step step, boolean rapid, double... to) {
    assertEquals(rapid, step.rapid());
    assertArrayEquals(to, step.to(), 1e-9);
  }

  /** Section 3.5.3.2: at X7 Y7, centre (10, 11), radius 5. */
  @Test
  void theReportsCentreFormatExampleHasItsCentreAndRadius() {
    Rs274Step step = run("G17 G2 x 10 y 16 i 3 j 4 z 9", 7, 7, 9).steps.get(0);
    assertArrayEquals(new double[] {10, 11}, step.centre(), 1e-12);
    assertEquals(5, step.radius(), 1e-12);
    // Clockwise from the lower left up to the top.
    assertEquals(-(Math.PI - Math.atan2(3, 4)), step.sweep(), 1e-9);
  }

  /** Section 3.5.3.1: the example's end and radius; the start is ours. */
  @Test
  void theReportsRadiusFormatExampleTurnsThroughLessThanHalf() {
    Rs274Step step = run("G17 G2 x 10 y 15 r 20 z 5", 0, 0, 5).steps.get(0);
    assertEquals(20, step.radius(), 1e-9);
    assertEquals(20, Math.hypot(10 - step.centre()[0], 15 - step.centre()[1]), 1e-9);
    assertTrue(step.sweep() < 0 && step.sweep() > -Math.PI);
    Rs274Step large = run("G17 G2 x 10 y 15 r -20", 0, 0, 5).steps.get(0);
    assertTrue(large.sweep() < -Math.PI);
    assertEquals(2 * Math.PI, -step.sweep() - large.sweep(), 1e-9);
  }

  /** Section 3.5.16.1, example 1. */
  @Test
  void theReportsFirstDrillingExampleMakesItsFourMoves() {
    Rs274Interpreter machine = run("G90 G81 G98 X4 Y5 Z1.5 R2.8", 1, 2, 3);
    assertEquals(4, machine.steps.size());
    assertStep(machine.steps.get(0), true, 4, 5, 3);
    assertStep(machine.steps.get(1), true, 4, 5, 2.8);
    assertStep(machine.steps.get(2), false, 4, 5, 1.5);
    assertStep(machine.steps.get(3), true, 4, 5, 3);
  }

  /** Section 3.5.16.1, example 2. */
  @Test
  void theReportsSecondDrillingExampleMakesItsTenMoves() {
    Rs274Interpreter machine = run("G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3", 1, 2, 3);
    assertEquals(10, machine.steps.size());
    assertStep(machine.steps.get(0), true, 1, 2, 4.8);
    double[][] holes = {{5, 7}, {9, 12}, {13, 17}};
    for (int i = 0; i < 3; i++) {
      assertStep(machine.steps.get(1 + 3 * i), true, holes[i][0], holes[i][1], 4.8);
      assertStep(machine.steps.get(2 + 3 * i), false, holes[i][0], holes[i][1], 4.2);
      assertStep(machine.steps.get(3 + 3 * i), true, holes[i][0], holes[i][1], 4.8);
    }
  }

  /** Section 3.5.16.3: down by Q, out, back to just over the bottom, and so on. */
  @Test
  void pecksGoOutOfTheHoleEachTime() {
    Rs274Interpreter machine = run("G98 G83 X1 Y1 Z-5 R1 Q2.5", 0, 0, 10);
    double[] heights = {10, 1, -1.5, 10, -1.246, -4, 10, -3.746, -5, 10};
    assertEquals(heights.length, machine.steps.size());
    for (int i = 0; i < heights.length; i++) {
      assertEquals(heights[i], machine.steps.get(i).to()[2], 1e-9, "move " + i);
    }
  }

  @Test
  void retractModeG99StopsAtR() {
    assertEquals(1, run("G99 G81 X1 Y1 Z-5 R1", 0, 0, 10).at()[2]);
    assertEquals(10, run("G98 G81 X1 Y1 Z-5 R1", 0, 0, 10).at()[2]);
  }

  @Test
  void zAndRStayInACycleUntilItEnds() {
    Rs274Interpreter machine = run("G99 G81 X1 Y1 Z-5 R1\nX2\nY7 Z-3", 0, 0, 10);
    assertStep(machine.steps.get(machine.steps.size() - 2), false, 2, 7, -3);
    error("Z or R", "G81 X1 Y1 Z-5 R1\nG80\nG81 X2");
  }

  @Test
  void anArcThatEndsWhereItStartsIsAWholeCircle() {
    Rs274Step circle = run("G3 X5 Y0 I-5 J0", 5, 0, 0).steps.get(0);
    assertEquals(2 * Math.PI, circle.sweep(), 1e-12);
    assertEquals(10 * Math.PI, circle.length(), 1e-9);
    assertEquals(-2 * Math.PI, run("G2 X5 I-5", 5, 0, 0).steps.get(0).sweep(), 1e-12);
  }

  @Test
  void aHelixRisesEvenly() {
    Rs274Step helix = run("G3 X-5 Y0 Z-2 I-5", 5, 0, 0).steps.get(0);
    assertEquals(Math.hypot(5 * Math.PI, 2), helix.length(), 1e-9);
    for (double[] p : helix.points(0.001)) {
      assertEquals(5, Math.hypot(p[0], p[1]), 1e-9);
      assertEquals(-2 * Math.atan2(p[1], p[0]) / Math.PI, p[2], 1e-9);
    }
  }

  @Test
  void modesStayInForceAndBlanksAndCaseDoNotMatter() {
    Rs274Interpreter machine = run("n10 g1 x 1 2.5 y+3.\n Y-.5", 0, 0, 0);
    assertStep(machine.steps.get(0), false, 12.5, 3, 0);
    assertStep(machine.steps.get(1), false, 12.5, -0.5, 0);
  }

  @Test
  void inchesAreInches() {
    assertStep(run("G20 G0 X1", 0, 0, 0).steps.get(0), true, 25.4, 0, 0);
  }

  @Test
  void timeIsLengthOverFeed() {
    Rs274Step step = run("G1 X50 F200", 0, 0, 0).steps.get(0);
    assertEquals(15, step.seconds(1000), 1e-9);
    assertEquals(2.5, run("G4 P2.5", 0, 0, 0).dwell, 0);
  }

  @Test
  void whatTheReportCallsAnErrorIsOne() {
    error("modal group", "G0 G1 X1");
    error("modal group", "G1 G81 X1 Y1 Z-1 R1");
    error("modal group", "M3 M5");
    error("modal group", "M0 M2");
    error("two X words", "G1 X1 X2");
    error("I and J both missing", "G2 X1 Y1");
    error("X and Y both missing", "G2 Z-1 I1 J1");
    error("radii", "G2 X10 Y0 I4.997 J0");
    error("end at the start", "G2 X0 Y0 R5");
    error("does not reach", "G2 X11 Y0 R5");
    error("no axis words", "G1");
    error("no motion is in force", "G80 X1");
    error("feed of zero", "G1 X1 F0");
    error("feed of zero", "G2 X10 Y0 I5 F0");
    error("negative feed", "F-1");
    error("negative speed", "S-1");
    error("negative dwell", "G4 P-1");
    error("P word missing", "G4");
    error("R lies below Z", "G81 X1 Y1 Z1 R0.5");
    error("Q above zero", "G83 X1 Y1 Z-1 R1 Q0");
    error("Q above zero", "G83 X1 Y1 Z-1 R1");
    error("Z or R", "G81 X1 Y1 R1");
    error("Z or R", "G81 X1 Y1 Z-1");
    error("unknown code G91.1", "G91.1");
    error("unknown code", "G12.3 X1");
    error("unknown word", "E5");
    error("bad number after ;", "G1 X1 ; words");
    error("unknown word E", "G1 X1e3");
    error("bad number", "G1 X--1");
    error("bad number", "G1 X");
    error("unknown word ,", "G1 X1,5");
    error("bad line number", "G1 N5 X1");
    error("bad line number", "N100000 G1 X1");
    error("unclosed comment", "G1 X1 (open");
    error("comment in a comment", "G1 X1 (a (b))");
    error("without a use", "G1 X1 Q3");
    error("without a use", "G0 X1 I2");
    error("line too long", "(" + "x".repeat(256) + ")");
    error("not a character", "G1 X1 (\u0007)");
    error("whole number", "G81 X1 Y1 Z-1 R1 L0");
  }

  /** Section 3.5.3.2: 0.002 mm is the limit. */
  @Test
  void radiiMayDifferByTwoThousandthsAndNoMore() {
    assertEquals(1, run("G2 X10.0019 Y0 I5 J0", 0, 0, 0).steps.size());
    error("radii", "G2 X10.0021 Y0 I5 J0");
  }

  @Test
  void aProgramEndsByM2OrPercentSigns() {
    byte[] open = (START + "G0 X1\n").getBytes(StandardCharsets.US_ASCII);
    byte[] half = ("%\n" + START + "G0 X1\n").getBytes(StandardCharsets.US_ASCII);
    byte[] framed = ("%\n" + START + "G0 X1\n%\n").getBytes(StandardCharsets.US_ASCII);
    assertThrows(Rs274Exception.class, () -> machine().run(open));
    assertThrows(Rs274Exception.class, () -> machine().run(half));
    assertFalse(machine().run(framed).ended());
  }

  @Test
  void theEndStopsSpindleAndCoolant() {
    Rs274Interpreter machine = run("M3 S1000 M8", 0, 0, 0);
    assertFalse(machine.spinning());
    assertFalse(machine.coolant());
    assertTrue(machine.ended());
  }

  @Test
  void nothingMovesBeforeTheModesAreStated() {
    byte[] bare = "G0 X1\nM2\n".getBytes(StandardCharsets.US_ASCII);
    assertThrows(Rs274Exception.class, () -> machine().run(bare));
  }

  @Test
  void whatLiesBeyondTheReportIsKnownWhereAsked() {
    Rs274Beyond all = new Rs274Beyond(true, true, true);
    byte[] code =
        (START + "G91.1 ; centres (from the start)\nG4 P500\nM2\n")
            .getBytes(StandardCharsets.US_ASCII);
    Rs274Interpreter machine = new Rs274Interpreter(all, 0, 0, 0).run(code);
    assertEquals(0.5, machine.dwell, 0);
    assertEquals("centres (from the start)", machine.comments.get(0));
  }

  private static Rs274Interpreter machine() {
    return new Rs274Interpreter(Rs274Beyond.NOTHING, 0, 0, 0);
  }
}
