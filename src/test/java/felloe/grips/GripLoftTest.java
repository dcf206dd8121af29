package felloe.grips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.Face;
import felloe.solid.SelfCrossing;
import felloe.solid.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bodies of grips against what Pappus and the integral of their sections say. */
class GripLoftTest {

  private static Solid front(PlacedGrip grip, double chord, List<Pocket> pockets) {
    Solid solid = new GripLoft(grip, Face.FRONT, chord, pockets).whole();
    assertTrue(SelfCrossing.of(solid).isEmpty());
    return solid;
  }

  @Test
  void aRingOfOneFaceHasTheVolumeOfPappus() {
    PlacedGrip ring =
        GripPlanTest.grip(
            "grips: [{all_round: true, faces: front, over: 30, front: 8, round: 8, inner_round: 6,"
                + " material: pla}]\n");
    Solid solid = front(ring, 0.01, List.of());
    double weighed = GripWeight.of(ring, List.of()).volume();
    assertEquals(weighed, solid.volume(), 0.001 * weighed);
  }

  @Test
  void aFullGripHasTheVolumeOfItsIntegral() {
    PlacedGrip grip =
        GripPlanTest.grip(
            "grips: [{along: {from: 12, to: 6}, past_edge: 3, over: 29, front: 9, back: 10,"
                + " round: 7, swell: {at: 4, length: 60, front: 2, back: 4, edge: 2},"
                + " thumb_rest: {at: 2, length: 40, depth: 3}, taper: {length: 20, to: 5},"
                + " wrap: 1.2, material: pla}]\n");
    Solid front = front(grip, 0.02, List.of());
    Solid back = new GripLoft(grip, Face.BACK, 0.02, List.of()).whole();
    double both = front.volume() + back.volume();
    double weighed = GripWeight.of(grip, List.of()).volume();
    assertEquals(weighed, both, 0.001 * weighed);
  }
}
