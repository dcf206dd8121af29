package felloe.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.yaml.YamlTree;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Files of stacks and of strips, good ones and bad ones. */
class StackFileTest {

  private static final String PLY = "E1: 181 GPa, E2: 10.3 GPa, nu12: 0.28, G12: 7.17 GPa";

  private static StackFile stack(String... lines) {
    return StackFile.read(YamlTree.parse("s.yaml", String.join("\n", lines) + "\n"));
  }

  private static void bad(List<String> said, String... lines) {
    BadInput bad = assertThrows(BadInput.class, () -> stack(lines));
    assertEquals(String.join("\n", said), bad.getMessage());
  }

  private static TestedStrips strips(String... lines) {
    return StripsFile.read(YamlTree.parse("t.yaml", String.join("\n", lines) + "\n"));
  }

  private static void badStrips(List<String> said, String... lines) {
    BadInput bad = assertThrows(BadInput.class, () -> strips(lines));
    assertEquals(String.join("\n", said), bad.getMessage());
  }

  @Test
  void aStackIsReadPlyByPlyFromTheBack() {
    StackFile file =
        stack(
            "stack:",
            "  - {" + PLY + ", thickness: 0.125, angle: 0}",
            "  - {" + PLY + ", thickness: 0.125 mm, angle: 90 deg}",
            "load: {N: [1.0, 0, 0], M: [0, 0, 2]}");
    assertEquals(2, file.stack().plies().size());
    assertEquals(new Ply(Printed.T300, 0.125, 90), file.stack().plies().get(1));
    assertEquals(new LaminateLoad(1, 0, 0, 0, 0, 2), file.load());
    assertTrue(file.cooling().isEmpty());
  }

  @Test
  void unitsOfModuliAreConvertedAndWithoutOneTheyAreMegapascal() {
    StackFile file =
        stack(
            "stack: [{E1: 60000, E2: 8.7 Msi, nu12: 0.03, G12: 2.7GPa, thickness: 0.0095 in,"
                + " angle: -45}]");
    PlyMaterial m = file.stack().plies().get(0).material();
    assertEquals(60_000, m.e1());
    assertEquals(59_984.4, m.e2(), 0.1);
    assertEquals(2_700, m.g12());
    assertEquals(0.2413, file.stack().thickness(), 1e-12);
  }

  @Test
  void sharedFiguresRepeatAndMirrorMakeLongStacksShort() {
    StackFile file =
        stack(
            "ply: {"
                + PLY
                + ", thickness: 0.125, strength: {Xt: 1500, Xc: 1500, Yt: 40, Yc: 246,"
                + " S: 68}}",
            "stack: [{angle: 0}, {angle: 45, thickness: 0.2}]",
            "repeat: 3",
            "symmetric: true");
    List<Ply> plies = file.stack().plies();
    assertEquals(12, plies.size());
    assertEquals(
        List.of(0.0, 45.0, 0.0), List.of(angle(plies, 0), angle(plies, 1), angle(plies, 2)));
    assertEquals(0.2, plies.get(6).thickness());
    assertTrue(file.stack().isSymmetric());
    assertFalse(file.stack().isBalanced());
    assertEquals(Printed.T300_STRENGTH, plies.get(5).material().strength().orElseThrow());
  }

  private static double angle(List<Ply> plies, int at) {
    return plies.get(at).angle();
  }

  @Test
  void everythingThatIsWrongIsToldInOneRun() {
    bad(
        List.of(
            "s.yaml:2:12 stack[0].E1: '-181 GPa' must be at least 1 MPa here (softer than any"
                + " foam); check the unit: 60 GPa, say",
            "s.yaml:2:26 stack[0].E2: '10.3 mm' must be a modulus or stress such as 60 GPa or 725"
                + " MPa; 'mm' is no unit of stress here; write MPa, GPa, ksi or Msi",
            "s.yaml:2:41 stack[0].nu12: '.nan' must be a finite number; write a number such as 1.5",
            "s.yaml:2:52 stack[0].G12: '7,17 GPa' must be a modulus or stress such as 60 GPa or"
                + " 725 MPa; write 7.17 GPa",
            "s.yaml:2:75 stack[0].thickness: '0' must be at least 0.001 mm",
            "s.yaml:2:85 stack[0].angle: 'NaN' must be a finite number; write an angle in degrees"
                + " such as 30, 30 deg or 30°",
            "s.yaml:3:5 stack[1].E1: is missing; add 'E1:' with a modulus or stress such as 60 GPa"
                + " or 725 MPa",
            "s.yaml:3:5 stack[1].nu12: is missing; add 'nu12:' with a number such as 1.5",
            "s.yaml:3:5 stack[1].G12: is missing; add 'G12:' with a modulus or stress such as 60"
                + " GPa or 725 MPa",
            "s.yaml:3:5 stack[1].thickness: is missing; add 'thickness:' with a length such as 70,"
                + " 70 mm, 7 cm or 2.75 in",
            "s.yaml:3:15 stack[1].angel: is not a known key; did you mean 'angle'? allowed here:"
                + " E1, E2, G12, angle, expansion, nu12, strain, strength, thickness"),
        "stack:",
        "  - {  E1: -181 GPa, E2: 10.3 mm, nu12: .nan, G12: '7,17 GPa', thickness: 0, angle: NaN}",
        "  - {E2: 1e4, angel: 5, angle: 4}");
  }

  @Test
  void aPoissonsRatioThatMakesASheetPushItselfIsRefusedOnce() {
    String said =
        "must be less than 0.239 here (sqrt(E1/E2); beyond, the ply would do work by"
            + " itself); check E1, E2 and nu12; nu12 goes with a pull along the fibres";
    bad(
        List.of("s.yaml:1:60 ply.nu12: '0.28' " + said),
        "ply: {E1: 10.3 GPa, E2: 181 GPa, thickness: 0.125, nu12:   0.28, G12: 7.17 GPa}",
        "stack: [{angle: 0}, {angle: 90}]");
    bad(
        List.of("s.yaml:2:26 stack[0].nu12: '0.28' " + said),
        "ply: {E1: 10.3 GPa, E2: 181 GPa, thickness: 0.125, G12: 7.17 GPa}",
        "stack: [{angle: 0, nu12: 0.28}]");
  }

  @Test
  void aSharedMistakeIsToldOnceAndNotForEachPly() {
    bad(
        List.of(
            "s.yaml:1:11 ply.E1: '181 GPA' must be a modulus or stress such as 60 GPa or 725 MPa;"
                + " 'GPA' is no unit of stress here; write MPa, GPa, ksi or Msi"),
        "ply: {E1: 181 GPA, E2: 10.3 GPa, nu12: 0.28, G12: 7.17 GPa, thickness: 0.125}",
        "stack: [{angle: 0}, {angle: 90}]");
  }

  @Test
  void stacksWithoutPliesOrWithTooManyAreRefused() {
    bad(
        List.of("s.yaml:1:1 stack: is missing; add 'stack:' with a list of 1 to 1000 items"),
        "load: {N: [1, 0, 0]}");
    bad(
        List.of(
            "s.yaml:3:9 repeat: '501' makes 1002 plies, which is more than 1000; lower it or"
                + " shorten the list"),
        "ply: {" + PLY + ", thickness: 0.125}",
        "stack: [{angle: 0}, {angle: 90}]",
        "repeat: 501");
  }

  @Test
  void loadsLimitsAndCoolingAreChecked() {
    bad(
        List.of(
            "s.yaml:2:56 stack[0].strength.Yt: '0 MPa' must be at least 0.001 MPa",
            "s.yaml:3:11 load.N: must have 3 items, but has 2",
            "s.yaml:3:26 load.M[1]: 'inf' must be a finite number; write a number such as 1.5",
            "s.yaml:4:10 cooling: '-5' must be at least 0"),
        "ply: {" + PLY + ", thickness: 0.125}",
        "stack: [{angle: 0, strength: {Xt: 1500, Xc: 1500,  Yt: 0 MPa, Yc: 246, S: 68}}]",
        "load: {N: [1, 0], M: [0, inf, 0]}",
        "cooling: -5");
    bad(
        List.of(
            "s.yaml:3:10 cooling: '80' needs the thermal expansion of every ply; add 'expansion:"
                + " {along1: 0.02e-6, along2: 22.5e-6}', say"),
        "ply: {" + PLY + ", thickness: 0.125}",
        "stack: [{angle: 0}, {angle: 90, expansion: {along1: 0.02e-6, along2: 22.5e-6}}]",
        "cooling: 80");
  }

  @Test
  void seededNonsenseIsRefusedAndNeverCrashes() {
    String good =
        "ply: {E1: 181 GPa, E2: 10.3 GPa, nu12: 0.28, G12: 7.17 GPa, thickness: 0.125}\n"
            + "stack: [{angle: 0}, {angle: 90, strength: {Xt: 1, Xc: 1, Yt: 1, Yc: 1, S: 1}}]\n"
            + "repeat: 2\nsymmetric: true\nload: {N: [1, 0, 0], M: [0, 0, 1]}\n";
    String[] words = {"-", "0", "1e9", "nan", "[", "]", "{", "}", ":", "GPa", "x", "\n", " ", "''"};
    Random random = new Random(31);
    int read = 0;
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder(good);
      for (int k = 0; k <= random.nextInt(3); k++) {
        int at = random.nextInt(text.length());
        int end = Math.min(text.length(), at + random.nextInt(4));
        text.replace(at, end, words[random.nextInt(words.length)]);
      }
      try {
        StackFile file = StackFile.read(YamlTree.parse("s.yaml", text.toString()));
        Laminate laminate = Laminate.of(file.stack());
        laminate.response(file.load());
        read++;
      } catch (BadInput told) {
        assertFalse(told.problems().isEmpty());
      } catch (RuntimeException crash) {
        throw new AssertionError("seed 31, " + i + "\n" + text, crash);
      }
    }
    assertTrue(read > 20, "read " + read);
  }

  @Test
  void stripsAreReadWithWhatTheyHaveInCommon() {
    TestedStrips t =
        strips(
            "span: 80",
            "strips:",
            "  - {width: 15, thickness: [1.9, 2.0, 2.1], load: 100 N, deflection: 1.778}",
            "  - {label: B, width: 15, thickness: 2, span: 8 cm, load: 10 kg, broke: false,",
            "     readings: [[1 kg, 0.2], [2 kg, 0.4], [0.1 kN, 2.0]]}");
    Strip one = t.strips().get(0);
    assertEquals("1", one.label());
    assertEquals(2, one.thickness(), 1e-12);
    assertEquals(200, one.strength().getAsDouble(), 1e-9);
    Strip two = t.strips().get(1);
    assertEquals(98.0665, two.load(), 1e-9);
    assertEquals(9.80665, two.readings().get(0).load(), 1e-9);
    assertEquals(80, two.span(), 1e-12);
    assertEquals(1, t.strength().orElseThrow().count());
  }

  @Test
  void everythingThatIsWrongWithStripsIsToldInOneRun() {
    badStrips(
        List.of(
            "t.yaml:1:9 method: 'four-point' must be one of three-point, bench-vice",
            "t.yaml:3:5 strips[0].span: is missing; add 'span:' with a length such as 70, 70 mm, 7"
                + " cm or 2.75 in",
            "t.yaml:3:5 strips[0]: must have 'deflection', or 'readings'; add the deflection under"
                + " the load, in mm; or readings: [[50 N, 0.6], [100 N, 1.2]]",
            "t.yaml:3:14 strips[0].width: '15 kg' must be a length such as 70, 70 mm, 7 cm or 2.75"
                + " in; 'kg' is no unit of length here; write mm, cm, m or in",
            "t.yaml:3:44 strips[0].load: '90 lb' must be a force such as 412 N, 1.2 kN or a hung"
                + " mass such as 5 kg; 'lb' is no unit of force here; write N, kN or kg",
            "t.yaml:4:63 strips[1].span: '7' makes the span less than four thicknesses; such a"
                + " strip shears and does not bend; take 16 thicknesses at least, of carbon 40",
            "t.yaml:5:83 strips[2].readings[1]: must be more than the reading before it, load and"
                + " deflection both; write [load, deflection] as they rose",
            "t.yaml:6:13 strips[3].label: 'T1' is on two strips; write another one",
            "t.yaml:6:76 strips[3].deflection: '90' is more than the span of 80 mm"),
        "method: four-point",
        "strips:",
        "  - {width:  15 kg, thickness: 2, load:    90 lb}",
        "  - {label: T1, width: 15, thickness: 2, load: 90 N,    span: 7, deflection: 1}",
        "  - {label: T2, width: 15, thickness: 2, load: 90 N, span: 80, readings: [[1, 2], [3,"
            + " 1]]}",
        "  - {label: T1, width: 15, thickness: 2, load: 90 N, span: 80, deflection: 90}");
  }

  @Test
  void readingsOfOneStripThatCannotBeOfOneAreRefused() {
    badStrips(
        List.of(
            "t.yaml:3:28 strips[0].thickness: must be readings of one strip, but they go from 4 to"
                + " 98 mm; measure it again; a decimal comma must be a point"),
        "span: 400",
        "strips:",
        "  - {width: 15, thickness: [4,98], load: 600 N, deflection: 9}");
  }
}
