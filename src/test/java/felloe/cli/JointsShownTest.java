package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What the commands tell of screws. */
class JointsShownTest {

  private static final String HERON = "shapes/heron.yaml";

  private static JsonNode json(String... sets) throws IOException {
    String[] call = new String[4 + 2 * sets.length];
    call[0] = "drill";
    call[1] = HERON;
    call[2] = "--format";
    call[3] = "json";
    for (int i = 0; i < sets.length; i++) {
      call[4 + 2 * i] = "--set";
      call[5 + 2 * i] = sets[i];
    }
    Run run = Run.of(call);
    assertEquals(0, run.code(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void drillTellsEachScrewWithItsTorqueAsOneFigureAndItsCautions() {
    Run run = Run.of("drill", HERON, "--set", "stock.thickness=5");
    assertEquals(0, run.code(), run.err());
    String text = run.out().replaceAll("\\s+", " ");
    assertTrue(text.contains("hub H1 to H6 6 M5 x 16 socket, ISO 4762 8.8 6 10 4.8"), text);
    assertTrue(
        text.contains(
            "grip: plain washer 0.8, grip scale 10, plate 5, grip scale 10, washer under the nut"
                + " 0.8"),
        text);
    assertTrue(text.contains("let in: head 3, nut 3.5"), text);
    assertTrue(text.contains("this screw needs at least 10.8 mm"), text);
    assertTrue(text.contains("the instructions of the hub's maker come first"), text);
    assertTrue(text.contains("witness mark"), text);
  }

  @Test
  void theAnswerForProgramsHoldsEveryJoint() throws IOException {
    JsonNode answer = json();
    JsonNode hub = answer.get("joints").get(1);
    assertEquals("hub", hub.get("joint").asText());
    assertEquals(6, hub.get("holes").size());
    assertEquals(16, hub.get("length").asDouble());
    // K from 0.17 to 0.22: T = 0.17 x 5 mm x 5478 N, and the driest thread clamps with 17/22.
    JsonNode torque = hub.get("torque");
    assertEquals(
        0.17 * 0.005 * torque.get("clamp").asDouble(), torque.get("torque").asDouble(), 1e-3);
    assertTrue(hub.get("bottom_room").isNull());
    assertEquals(16, answer.get("screws").get("screws").size());
    // 14 CFR 23.397: 50 D in lb.
    double reach = answer.get("hub_load").get("reach").asDouble();
    assertEquals(0.2224 * 2 * reach, answer.get("hub_load").get("torque").asDouble(), 1e-4);
  }

  @Test
  void aCountersinkIsToldWithItsAngleAndDepth() throws IOException {
    JsonNode answer = json("joints[1]={holes: hub, screw: {head: countersunk}}");
    String notes = answer.get("joint_notes").toString();
    // ISO 10642, 11.2 mm sharp (verified), hole 5 mm: 3.1 mm.
    assertTrue(
        notes.contains("countersink the plate 90 degrees to 11.2 mm across, 3.1 mm deep"), notes);
  }

  @Test
  void aWasherOverTheEdgeFailsTheCheckAndAnUnknownThreadIsAWrongInput() {
    Run over =
        Run.of(
            "check",
            HERON,
            "--set",
            "joints[0].into.washer=large",
            "--set",
            "holes[0].edge.inset=5",
            "--set",
            "grips=[]",
            "--set",
            "making.grip_scale=10");
    assertEquals(1, over.code(), over.err());
    assertTrue(over.out().contains("head-clearance"), over.out());
    Run wrong = Run.of("check", HERON, "--set", "joints[0].screw.thread=M7");
    assertEquals(2, wrong.code());
    assertTrue(
        wrong.err().startsWith("--set joints[0].screw.thread: 'M7' is not a known thread"),
        wrong.err());
    Run drill = Run.of("drill", HERON, "--set", "joints[0].screw.thread=M7");
    assertEquals(2, drill.code());
    assertEquals("", drill.out());
  }

  @Test
  void aPlateWithoutScrewHolesIsToldWithoutScrews() throws IOException {
    Run run =
        Run.of(
            "drill", HERON, "--set", "bolt-circles=[]", "--set", "holes=[]", "--set", "joints=[]");
    assertEquals(0, run.code(), run.err());
    assertFalse(run.out().contains("Screws"), run.out());
  }

  @Test
  void holesWithAGapBetweenAreNamedOneByOne() {
    String text =
        Run.of(
                "drill",
                HERON,
                "--set",
                "joints=[{holes: [H1, H3], into: {tapped: aluminium, depth: 14}}]")
            .out()
            .replaceAll(" +", " ");
    assertTrue(text.contains("\nH1, H3 2 M5 x 16"), text);
    assertTrue(text.contains("\nhub H2, H4, H5, 4 M5 x 16"), text);
    assertTrue(text.contains("\ngrip G1 to G10 10 M4"), text);
  }
}
