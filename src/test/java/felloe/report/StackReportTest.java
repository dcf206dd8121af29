package felloe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block.Depth;
import felloe.laminate.StackFile;
import felloe.laminate.StackResult;
import felloe.render.TextRenderer;
import felloe.yaml.YamlTree;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StackReportTest {

  private static final String CARBON =
      "{E1: 60 GPa, E2: 60 GPa, nu12: 0.03, G12: 2.7 GPa, thickness: 0.24";
  private static final String STRONG =
      CARBON + ", strength: {Xt: 725, Xc: 518, Yt: 684, Yc: 480, S: 67}}";

  private static StackResult result(String ply, String rest) {
    return StackResult.of(
        StackFile.read(YamlTree.parse("snipe.yaml", "ply: " + ply + "\n" + rest)));
  }

  private static List<String> lines(StackResult result, Depth... open) {
    Set<Depth> all = EnumSet.of(Depth.SCREEN);
    all.addAll(List.of(open));
    return TextRenderer.lines(StackReport.of(result), 80, all);
  }

  private static String words(StackResult result, Depth... open) {
    return String.join(" ", lines(result, open)).replaceAll(" +", " ");
  }

  @Test
  void theAnswerStandsInTheFirstTenLines() {
    StackResult twenty =
        result(
            STRONG,
            "stack: [{angle: 0}, {angle: 45}]\n"
                + "repeat: 5\n"
                + "symmetric: true\n"
                + "load: {M: [500, 0, 0]}\n");
    List<String> lines = lines(twenty);
    String first = String.join(" ", lines.subList(0, 10)).replaceAll(" +", " ");
    for (String words :
        List.of(
            "20 plies, 4.8 mm; symmetric; balanced; quasi-isotropic",
            "As stiff along x as 42.03 GPa when pulled, 45.34 GPa when bent.",
            "First ply to fail by maximum strain: ply 1, back face, compression along 1",
            "the load may grow 3.006 times",
            "First ply to fail by Tsai-Wu: ply 1, back face; index 0.1718")) {
      assertTrue(first.contains(words), words + " in " + first);
    }
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80));
    assertFalse(words(twenty).contains("Stresses"));
    List<String> all = lines(twenty, Depth.ALL);
    assertTrue(all.stream().allMatch(line -> line.length() <= 80));
    assertTrue(words(twenty, Depth.ALL).contains("1 0 back -2.400 -171.1 40.86 0 -171.1 40.86 0"));
  }

  @Test
  void onePlyIsNotToldAsMany() {
    String all = words(result(CARBON + "}", "stack: [{angle: 0}]\n"));
    assertTrue(all.contains("1 ply, 0.24 mm; symmetric; balanced; not the same in all"), all);
    assertTrue(all.contains("not all of these have them"), all);
    assertFalse(all.contains("First ply to fail"), all);
  }

  @Test
  void aStackThatWarpsIsToldWithWhatHoldingItFlatDoes() {
    StackResult warps =
        result(
            "{E1: 130 GPa, E2: 9 GPa, nu12: 0.3, G12: 5 GPa, thickness: 0.2,"
                + " expansion: {along1: 0.1e-6, along2: 30e-6}}",
            "stack: [{angle: 0}, {angle: 90}]\ncooling: 60\n");
    String all = words(warps);
    assertTrue(all.contains("it warps when it cools after the cure"), all);
    assertTrue(all.contains("pulled, held flat"), all);
    assertTrue(all.contains("Cooled by 60 K, free to warp"), all);
    // A circle's segment: k L^2 / 8.
    double bow = warps.bow().orElseThrow();
    double k = warps.cooled().orElseThrow().deformation().largestCurvature();
    assertEquals(k * 300 * 300 / 8, bow, 1e-12);
    assertTrue(all.contains("over 300 mm (small bows"), all);
  }

  @Test
  void aStackThatNothingStressesSaysSo() {
    String all =
        words(result(CARBON + "}", "stack: [{angle: 0}]\nload: {N: [0, 0, 0]}\n"), Depth.ALL);
    assertTrue(all.contains("No ply is stressed."), all);
  }

  @Test
  void aModulusOfFoamIsTakenForASlip() {
    StackResult soft =
        result("{E1: 60, E2: 60, nu12: 0.03, G12: 2.7, thickness: 0.24}", "stack: [{angle: 0}]\n");
    assertTrue(words(soft).contains("as soft as foam"));
  }
}
