package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.yaml.Sets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What sits in openings counts in mass, balance and inertia, in bill and card, in the cockpit. */
class BodiesCountTest {

  private static final String SHAPE =
      """
      felloe: 1
      outline: {round: {diameter: 300}}
      stock: {material: aluminium-6082-t6, thickness: 5}
      windows:
        - circle: {diameter: 12}
          use: switch
          at: [0, 90]
          %s
      cockpit:
        column: 0
        lock: 100
        hub_height: 500
        things: [{name: knob, from: [0, 500, 60], radius: 5}]
      """;

  private static final String BODY =
      "body: {name: knob, bezel: {diameter: 20}, height: %s, behind: {depth: 9}%s}";

  @TempDir private Path folder;

  private Study study(String body) throws Exception {
    Path file = Files.writeString(folder.resolve("sanderling.yaml"), SHAPE.formatted(body));
    return new Studies(Path.of(""), Optional.empty()).one(ShapeSource.file(file, Sets.of()));
  }

  /** A disc of mass m and radius r at a distance d adds m (d² + r² / 2) about the axis. */
  @Test
  void massBalanceAndInertiaAreThoseOfDiscs() throws Exception {
    GripsOutcome.Wheel bare = GripsOutcome.of(study("")).wheel();
    GripsOutcome.Wheel with = GripsOutcome.of(study(BODY.formatted("6", ", mass: 40"))).wheel();
    assertEquals(40, with.bodies(), 1e-12);
    assertEquals(bare.mass() + 40, with.mass(), 1e-9);
    assertEquals(bare.inertia() + 40 * (90 * 90 + 100 / 2.0), with.inertia(), 1e-6);
    double moment = bare.mass() * bare.centre().y() + 40 * 90;
    assertEquals(moment / with.mass(), with.centre().y(), 1e-9);
    assertEquals(bare.plateInertia(), with.plateInertia(), 0);
    assertEquals(bare.mass(), GripsOutcome.of(study(BODY.formatted("6", ""))).wheel().mass(), 0);
  }

  /**
   * The knob of the car is 50 mm before the bare face; what sits there comes nearer as it turns.
   */
  @Test
  void theCockpitCountsWhatStandsBeforeThePlateAndBehindIt() throws Exception {
    assertEquals(50, clear(""), 0.01);
    assertEquals(50 - 14, clear(BODY.formatted("14", "")), 0.01);
    // Put in from the back it stands 9 mm through a plate of 5.
    assertEquals(50 - 4, clear(BODY.formatted("14", ", face: back")), 0.01);
  }

  private double clear(String body) throws Exception {
    return CockpitOutcome.of(study(body)).plan().tightest().orElseThrow().distance();
  }
}
