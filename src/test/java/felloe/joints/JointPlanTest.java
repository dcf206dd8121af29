package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.plate.Joint.Head;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is planned when nothing is said, and how each word of the shape file changes it. */
class JointPlanTest {

  private static List<String> parts(PlannedJoint joint) {
    return joint.parts().stream().map(p -> p.name() + " " + p.thickness()).toList();
  }

  @Test
  void withoutAWordHubAndGripsGetTheUsualJoints() {
    JointPlan plan = Shapes.plan("");
    assertEquals(List.of("hub", "grip"), plan.joints().stream().map(PlannedJoint::name).toList());
    assertEquals(List.of(), plan.unscrewed());
    PlannedJoint hub = plan.joints().get(0);
    assertEquals("M5", hub.thread().name());
    assertEquals(List.of("plain washer 1.0", "plate 5.0"), parts(hub));
    assertEquals(6, hub.clamped());
    // 6 mm and 1.5 d of 5 mm in aluminium are 13.5 mm: the next length of ISO 888 is 16.
    assertEquals(16, hub.length());
    assertEquals(2, hub.engagement() / 5);
    assertEquals(10 + 0.8, hub.depthWanted().orElseThrow(), 1e-12);
    assertEquals(Optional.empty(), hub.bottomRoom());
    PlannedJoint grip = plan.joints().get(1);
    assertEquals("M4", grip.thread().name());
    assertEquals(
        List.of(
            "plain washer 0.8",
            "grip scale 12.0",
            "plate 5.0",
            "grip scale 12.0",
            "washer under the nut 0.8"),
        parts(grip));
    // 30.6 mm and a nut of 3.2 mm and one thread are 34.5 mm.
    assertEquals(35, grip.length());
    assertEquals(35 - 30.6 - 3.2, grip.beyondNut().orElseThrow(), 1e-9);
    assertEquals(4, grip.holes().size());
  }

  @Test
  void theWasherUnderTheHeadFollowsTheMaterial() {
    assertEquals(1, Shapes.hub("").washer().orElseThrow().thickness());
    assertEquals(
        1, Shapes.hub("", "stock.material=aluminium-6082-t6").washer().orElseThrow().thickness());
    assertEquals(
        15, Shapes.hub("", "stock.material=birch-plywood").washer().orElseThrow().diameter());
    assertEquals(Optional.empty(), Shapes.hub(", screw: {head: countersunk}").washer());
  }

  @Test
  void spacersAndPartsLengthenTheScrew() {
    PlannedJoint joint = Shapes.hub(", front: [2], back: [5, 1/8 in]");
    assertEquals(6 + 2 + 5 + 3.175, joint.clamped(), 1e-9);
    assertEquals(25, joint.length());
  }

  @Test
  void aKnownDepthKeepsTheScrewFromTheBottom() {
    // 16 mm would reach 10 mm deep; 10 mm less one thread leaves 9.2 mm, so 12 mm long it is.
    PlannedJoint shallow = Shapes.hub(", into: {tapped: steel, depth: 10}");
    assertEquals(12, shallow.length());
    assertEquals(4, shallow.bottomRoom().orElseThrow(), 1e-12);
    PlannedJoint justDeep = Shapes.hub(", into: {tapped: aluminium, depth: 10.8}");
    assertEquals(16, justDeep.length());
    assertEquals(0.8, justDeep.bottomRoom().orElseThrow(), 1e-12);
    PlannedJoint justShallow = Shapes.hub(", into: {tapped: aluminium, depth: 10.79}");
    assertEquals(12, justShallow.length());
    PlannedJoint through = Shapes.hub(", into: {tapped: aluminium, depth: 8, through: true}");
    assertEquals(16, through.length());
    assertEquals(Optional.empty(), through.bottomRoom());
    assertEquals(8, through.engagement());
  }

  @Test
  void aScrewOfTheMakersOwnStandsAsItIs() {
    PlannedJoint joint = Shapes.hub(", screw: {length: 17, class: 12.9, head: button}");
    assertEquals(17, joint.length());
    assertEquals(Head.BUTTON, joint.head());
    assertEquals("12.9", joint.strength().name());
    assertEquals(List.of("a length of 17 mm is not a standard one"), joint.notes());
    PlannedJoint tooShort = Shapes.hub(", screw: {length: 5}");
    assertEquals(0, tooShort.engagement());
    assertTrue(tooShort.reach() < 0);
  }

  @Test
  void headsAndNutsThatAreLetInShortenWhatIsClamped() {
    PlannedJoint joint = Shapes.grip(", screw: {sunk: 3}, into: {nut: plain, sunk: 4}");
    double washers = 0.8 * (1 + joint.nutWashers());
    assertEquals(29 + washers - 7, joint.clamped(), 1e-9);
  }

  @Test
  void washersUnderTheNutBringTheScrewsEndRight() {
    // 29 mm and washers; with one washer the end stands out 1.2 mm, which is right.
    assertEquals(1, Shapes.grip("").nutWashers());
    // Scales of 11.6 mm: one washer leaves 2.8 threads, still right; of 11.5 mm 3 threads 0.2: two.
    assertEquals(1, Shapes.grip("", "making.grip-scale=11.6").nutWashers());
    assertEquals(2, Shapes.grip("", "making.grip-scale=11.5").nutWashers());
    // The maker's own word stands.
    assertEquals(
        1,
        Shapes.grip(", into: {nut: plain, washer: plain}", "making.grip-scale=11.5").nutWashers());
    assertEquals(0, Shapes.grip(", into: {nut: plain, washer: none}").nutWashers());
  }

  @Test
  void aScrewStandsOneToThreeThreadsOutOfItsNutWhereALengthAllowsIt() {
    for (int tenths = 50; tenths <= 200; tenths += 3) {
      PlannedJoint grip = Shapes.grip("", "making.grip-scale=" + tenths / 10.0);
      double threads = grip.beyondNut().orElseThrow() / grip.thread().pitch();
      assertTrue(threads >= 1 - 1e-9, "scale " + tenths);
      // A length less would be too short.
      assertTrue(threads < 1 + 5 / grip.thread().pitch(), "scale " + tenths);
    }
  }

  @Test
  void holesThatAreNamedOneByOneAreNotAmongTheOthers() {
    JointPlan plan =
        Shapes.plan(
            """
            joints:
              - {holes: [G1, G2], screw: {head: button}}
              - {holes: [Z], into: {tapped: insert}}
            """);
    assertEquals(
        List.of("G1, G2", "Z", "hub", "grip"),
        plan.joints().stream().map(PlannedJoint::name).toList());
    assertEquals(
        List.of("G3", "G4"),
        Shapes.named(plan, "grip").orElseThrow().holes().stream().map(Hole::label).toList());
    assertEquals("M6", Shapes.named(plan, "Z").orElseThrow().thread().name());
  }

  @Test
  void inchScrewsComeInInchLengths() {
    JointPlan plan = Shapes.plan("", "bolt-circles[0]={hub: 6x69.85-10-32, diameter: 5.6}");
    PlannedJoint hub = plan.joints().get(0);
    assertEquals("10-32", hub.thread().name());
    assertEquals("grade-5", hub.strength().name());
    // 6.24 mm and 1.5 d of 4.826 mm are 13.5 mm: 5/8 in.
    assertEquals(15.875, hub.length(), 1e-9);
    assertEquals(12.7, hub.washer().orElseThrow().diameter());
  }

  @Test
  void aHubWithTwoRingsGivesEachHoleTheThreadOfItsOwn() {
    JointPlan plan =
        Shapes.plan("", "bolt-circles[0]={count: 3, pcd: 58, diameter: 6.4}", "hub=3x50-3x58-m6");
    assertEquals("M6", plan.joints().get(0).thread().name());
  }

  @Test
  void holesThatNoScrewSuitsAreToldAndNotPlanned() {
    JointPlan plan = Shapes.plan("", "bolt-circles[0]={count: 4, pcd: 70, diameter: 7.5}");
    assertEquals(4, plan.unscrewed().size());
    assertEquals(
        "H1: no metric screw suits a hole of 7.5 mm; write a joint with screw.thread.",
        plan.unscrewed().get(0).words());
    JointPlan small = Shapes.plan("", "bolt-circles[0].diameter=4.8");
    assertEquals("H1: M5 does not enter a hole of 4.8 mm.", small.unscrewed().get(0).words());
    assertEquals(Optional.empty(), small.load());
  }

  @Test
  void theTorqueIsLowerWhereAFaceWouldBeCrushed() {
    // Steel on aluminium: the screw sets it. 0.75 x 580 MPa x 14.183 mm2, K 0.17 to 0.22.
    PlannedJoint metal = Shapes.hub(", washer: plain", "stock.material=aluminium-7075-t6");
    double clamp = 0.75 * 580 * StrengthClass.stressArea(metal.thread());
    assertEquals("the screw", metal.torque().limitedBy());
    assertEquals(0.17 * 0.005 * clamp, metal.torque().torque(), 1e-9);
    // The same on carbon laminate: 100 MPa on the ring of 10 mm round 5.5 mm.
    PlannedJoint laminate = Shapes.hub("");
    assertEquals("the plate under the head's washer", laminate.torque().limitedBy());
    assertEquals(100 * StartingTorque.ring(10, 5.5), laminate.torque().clamp(), 1e-9);
    PlannedJoint bare = Shapes.hub(", washer: none");
    assertEquals("the plate under the head", bare.torque().limitedBy());
    assertEquals(100 * StartingTorque.ring(8.03, 5.5), bare.torque().clamp(), 1e-9);
    PlannedJoint oiled = Shapes.hub(", screw: {surface: oiled}");
    assertTrue(oiled.torque().torque() < laminate.torque().torque());
    // Grip scales of wood.
    PlannedJoint grip = Shapes.grip("");
    assertEquals("the grip scale under the head's washer", grip.torque().limitedBy());
    assertEquals(8 * StartingTorque.ring(9, 4.3), grip.torque().clamp(), 1e-9);
  }

  @Test
  void theHubScrewsShareTheHandsLoads() {
    // Statics: 222.4 N x 280 mm / (6 x 35 mm) both hands; one hand 278 N / 6 + 278 x 140 / 210;
    // pull
    // 1.5 x (2 x 444.8 N x 140 mm / (6 x 35 mm) + 444.8 N / 6).
    GroupLoad load = Shapes.plan("").load().orElseThrow();
    assertEquals(140, load.reach(), 1e-9);
    // 14 CFR 23.397: 50 D in lb are 62.3 N m at 280 mm.
    assertEquals(50 * 280 / 25.4 * 4.4482216 * 0.0254, load.torque(), 0.01);
    for (String hole : List.of("H1", "H2", "H6")) {
      assertEquals(222.4 * 280 / 210, load.share(hole), 1e-6);
      double pull = 1.5 * (2 * 444.8 * 140 / 210.0 + 444.8 / 6.0);
      assertEquals(pull, load.tension(hole).orElseThrow(), 1e-6);
    }
  }

  @Test
  void loadsOfTheShapeFileTakeThePlaceOfTheUsual() {
    GroupLoad load =
        Shapes.plan("joints:\n  - {holes: hub, loads: {torque: 90}}\n").load().orElseThrow();
    assertEquals(90, load.torque());
    assertEquals(278, load.pull());
    assertEquals("torque: set in the shape file", load.basis().get(0));
    assertTrue(load.basis().get(1).startsWith("pull: 14 CFR 23.397"));
    // What the file sets acts at once, the pull any way through the axis.
    assertEquals(278 / 6.0 + 90_000 / 210.0, load.share("H1"), 1e-6);
  }

  @Test
  void twoHubScrewsCarryATorqueButNoTiltAndOneCarriesNeither() {
    GroupLoad two =
        Shapes.plan("", "bolt-circles[0]={count: 2, pcd: 70, diameter: 5.5}").load().orElseThrow();
    // Both hands turn: 62.3 N m on two screws 70 mm apart.
    assertEquals(222.4 * 280 / 70.0, two.share("H1"), 1e-6);
    assertEquals(Optional.empty(), two.tension("H1"));
    assertEquals(
        Optional.empty(),
        Shapes.plan("", "bolt-circles[0]={count: 1, pcd: 70, diameter: 5.5}").load());
  }

  @Test
  void theFarthestPointOfAnOutlineIsFoundOnItsArcs() {
    assertEquals(140, Shapes.plate("").outline().farthest(Point.ORIGIN), 1e-9);
    assertEquals(150, Shapes.plate("").outline().farthest(new Point(6, 8)), 1e-9);
  }

  @Test
  void carbonIsKeptApartFromAluminiumAndLaminateFromThreads() {
    // Common practice; MIL-HDBK-17-3F ch. 12, lessons learned: no thread in bearing (verified).
    String carbon = String.join(" ", Shapes.plan("").cautions());
    assertTrue(carbon.contains("no thread bear") && carbon.contains("glass"), carbon);
    String metal = String.join(" ", Shapes.plan("", "stock.material=aluminium-6082-t6").cautions());
    assertTrue(!metal.contains("no thread bear") && !metal.contains("glass"), metal);
  }

  @Test
  void everyPlanHasItsCautions() {
    String text = String.join(" ", Shapes.plan("").cautions());
    for (String word :
        List.of(
            "hub's maker come first",
            "torque wrench",
            "witness mark",
            "first runs",
            "not an approval",
            "a qualified person")) {
      assertTrue(text.contains(word), word);
    }
  }
}
