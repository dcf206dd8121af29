package felloe.grips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.solid.SelfCrossing;
import felloe.solid.Solid;
import java.util.List;
import java.util.Optional;
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

  /** A frustum of depth c from R down to r, 1 mm of cylinder above it, less the hole. */
  @Test
  void aConeForACountersunkHeadTakesAFrustumOff() {
    PlacedGrip grip =
        GripPlanTest.grip(
            "grips: [{between: {from: G1, to: G2}, faces: front, over: 30, front: 10, round: 0,"
                + " material: pla}]\n");
    Hole hole = grip.holes().get(0);
    double r = hole.diameter() / 2;
    double top = 4.48;
    double c = top - r;
    Pocket cone =
        new Pocket(
            hole.label(),
            Face.FRONT,
            hole.centre(),
            Pocket.Form.ROUND,
            2 * top,
            1 + c,
            Optional.of(new Pocket.Cone(c, 2 * r)),
            false,
            "countersunk head");
    double frustum = Math.PI * c / 3 * (top * top + top * r + r * r) - Math.PI * r * r * c;
    double gone = frustum + Math.PI * (top * top - r * r);
    GripWeight plain = GripWeight.of(grip, List.of());
    GripWeight coned = GripWeight.of(grip, List.of(cone));
    assertEquals(gone, plain.volume() - coned.volume(), 1e-6);
    Solid with = front(grip, 0.005, List.of(cone));
    Solid without = front(grip, 0.005, List.of());
    assertEquals(gone, without.volume() - with.volume(), 0.005 * gone);
    double moment = without.centroid().z() * without.volume() - with.centroid().z() * with.volume();
    double told = plain.depth() * plain.volume() - coned.depth() * coned.volume();
    assertEquals(told, moment, 0.005 * told);
    assertTrue(
        with.vertices().stream().anyMatch(v -> Math.abs(v.z() - (10 - 1 - c)) < 1e-9),
        "the cone ends at the hole");
  }
}
