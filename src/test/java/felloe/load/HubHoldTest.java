package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.HubCatalogue;
import felloe.joints.JointPlan;
import felloe.plate.BadInput;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the hub holds a plate, by what the shape file says. */
class HubHoldTest {

  private static HubHold hold(String... sets) {
    Plate plate =
        ShapeFile.read(Path.of("shapes", "heron.yaml"), Sets.of(sets), HubCatalogue.here());
    JointPlan joints = JointPlan.of(plate, Optional.empty());
    return HubHold.of(plate, Optional.empty(), joints, plate.holes(HoleRole.BOLT));
  }

  @Test
  void onSpacersThePlateIsFreeBetweenThemOrHeldOverTheWholeOfEach() {
    HubHold hold = hold("load.spacer_diameter=16");
    Support.Bolted free = (Support.Bolted) hold.support();
    Support.Bolted fast = (Support.Bolted) hold.other().orElseThrow();
    assertEquals(6, free.bearing().size());
    for (int i = 0; i < 6; i++) {
      assertEquals(16, free.bearing().get(i).diameter());
      assertEquals(free.bolts().get(i).at(), free.bearing().get(i).at());
      assertTrue(free.bolts().get(i).head() < 16);
      assertEquals(16, fast.bolts().get(i).head());
    }
    assertEquals(35 + 8, hold.radius(), 1e-9);
    assertTrue(hold.assumptions().toString().contains("nothing else bears"), hold.toString());
  }

  @ParameterizedTest
  @CsvSource({"60, makes spacers that overlap", "4.5, 'is no larger than the hub''s holes, 5 mm'"})
  void spacersThatCannotBeAreRefused(double across, String why) {
    BadInput bad = assertThrows(BadInput.class, () -> hold("load.spacer_diameter=" + across));
    assertEquals(1, bad.problems().size());
    assertTrue(bad.lines().get(0).contains(why), bad.lines().toString());
  }

  @Test
  void spacersBesideAFaceAreRefused() {
    BadInput bad =
        assertThrows(
            BadInput.class, () -> hold("load.spacer_diameter=16", "load.face_diameter=90"));
    assertTrue(
        bad.lines().get(0).contains("cannot stand beside face_diameter"), bad.lines().get(0));
  }
}
