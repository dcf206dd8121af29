package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drilling.DrillStep;
import felloe.drilling.Stage;
import felloe.plate.HoleRole;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When a plate may be drilled, and what its joints ask of the drill. */
class DrillOutcomeTest {

  private static DrillOutcome drilled(String shape, String... sets) {
    Path file = Path.of("shapes/" + shape + ".yaml");
    return DrillOutcome.of(
        new Studies(Path.of(""), Optional.empty()).one(ShapeSource.file(file, Sets.of(sets))));
  }

  @Test
  void aPlateThatPassesAndMeetsItsHubMayBeDrilled() {
    DrillOutcome heron = drilled("heron");
    assertFalse(heron.misses());
    assertFalse(heron.stops());
    assertTrue(heron.stamp().isNone());
  }

  @Test
  void aPlateThatFailsOrMissesItsHubMayNot() {
    DrillOutcome thin = drilled("heron", "windows[0].derived.hub-disc=76");
    assertTrue(thin.stops() && !thin.misses());
    assertTrue(thin.stamp().faults().contains("narrowest-web"), thin.stamp().toString());
    DrillOutcome small = drilled("bittern", "bolt-circles[0].diameter=4.5");
    assertTrue(small.stops() && small.misses());
    assertFalse(small.stamp().isNone());
  }

  @Test
  void holesOfCountersunkHeadsGetTheirSeatsAndNoOthers() {
    DrillOutcome heron =
        drilled(
            "heron",
            "joints=[{holes: hub, screw: {head: countersunk}, into: {tapped: aluminium}}]");
    List<DrillStep> hub = heron.plan().groups().get(0).steps();
    assertEquals(2, hub.stream().filter(s -> s.stage() == Stage.COUNTERSINK).count());
    heron.plan().groups().stream()
        .filter(g -> g.role() == HoleRole.GRIP)
        .forEach(
            g ->
                assertEquals(
                    1, g.steps().stream().filter(s -> s.stage() == Stage.COUNTERSINK).count()));
  }

  @Test
  void roundWindowsAreAmongTheHolesAndCautionsAreToldOnce() {
    DrillOutcome avocet = drilled("avocet");
    assertTrue(avocet.holes().size() >= avocet.plate().holes().size());
    List<String> cautions = avocet.cautions();
    assertEquals(cautions.size(), new HashSet<>(cautions).size());
  }
}
