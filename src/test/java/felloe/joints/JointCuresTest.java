package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.joints.JointCure.Figure;
import felloe.plate.Plate;
import felloe.yaml.Sets;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What mends a joint mends it when it is written into the shape file, and a little less does not.
 */
class JointCuresTest {

  private static final String FREE =
      """
      felloe: 1
      outline:
        round: {diameter: 280}
      bolt_circles:
        - {count: 5, pcd: 70, diameter: 5.5}
      bore: 30
      stock: {material: %s, thickness: %s}
      joints:
        - {holes: hub, into: {tapped: %s, depth: %s}, screw: {thread: M5}, loads: {%s}}
      """;

  private static Plate plate(
      String material, String stock, String into, String depth, String loads) {
    return felloe.shape.ShapeFile.parse(
        "redshank.yaml",
        FREE.formatted(material, stock, into, depth, loads),
        Sets.of(),
        felloe.hub.HubCatalogue.here());
  }

  private static Plate plate(String loads, String... sets) {
    return felloe.shape.ShapeFile.parse(
        "redshank.yaml",
        FREE.formatted("carbon-laminate", "5", "aluminium", "14", loads),
        Sets.of(sets),
        felloe.hub.HubCatalogue.here());
  }

  private static List<JointCure> cures(Plate plate) {
    return JointCures.of(plate, Optional.empty(), JointPlan.of(plate).judgement(), List.of());
  }

  private static boolean holds(Plate plate) {
    return JointPlan.of(plate).judgement().met();
  }

  private static Set<Figure> figures(List<JointCure> cures) {
    return cures.stream()
        .map(JointCure::figure)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Figure.class)));
  }

  @Test
  void eachCureMendsThePlateWhenItIsWritten() {
    Set<Figure> seen = new TreeSet<>();
    for (String loads :
        List.of("torque: 90", "torque: 60, push: 900", "push: 1200", "torque: 150", "push: 700")) {
      Plate plate = plate(loads);
      assertTrue(!holds(plate), loads);
      for (JointCure cure : cures(plate)) {
        Plate mended = plate(loads, cure.key() + "=" + cure.to());
        assertTrue(holds(mended), loads + ": " + cure);
        seen.add(cure.figure());
      }
    }
    assertTrue(seen.containsAll(Set.of(Figure.WASHER, Figure.COUNT, Figure.CIRCLE)), seen + "");
  }

  @Test
  void oneScrewLessOrAMillimetreLessDoesNotMendIt() {
    Plate plate = plate("torque: 90");
    for (JointCure cure : cures(plate)) {
      if (cure.figure() == Figure.COUNT || cure.figure() == Figure.CIRCLE) {
        int less = Integer.parseInt(cure.to()) - 1;
        assertTrue(!holds(plate("torque: 90", cure.key() + "=" + less)), cure.toString());
      }
    }
  }

  @Test
  void aPlateThatGivesWayIsMadeThicker() {
    Plate soft = plate("birch-plywood", "6", "steel", "20", "push: 800");
    Optional<JointCure> thicker =
        cures(soft).stream().filter(c -> c.figure() == Figure.THICKNESS).findFirst();
    assertEquals("stock.thickness", thicker.orElseThrow().key());
    assertTrue(
        holds(plate("birch-plywood", thicker.get().to(), "steel", "20", "push: 800")),
        thicker.toString());
  }

  @Test
  void nothingIsToldOfScrewsThatHold() {
    assertEquals(List.of(), cures(plate("torque: 30, push: 100, pull: 100")));
  }

  /** What a closer study puts on the screws is asked of every cure as well. */
  @Test
  void aStudysLoadsNeedMoreThanThePlansOwn() {
    Plate plate = plate("torque: 60, push: 300");
    List<ScrewDemand> more =
        plate.holes().stream()
            .filter(h -> h.role() == felloe.plate.HoleRole.BOLT)
            .map(h -> new ScrewDemand(h.label(), "turn", 300, 450))
            .toList();
    JointPlan plan = JointPlan.of(plate);
    List<JointCure> cures = JointCures.of(plate, Optional.empty(), plan.judged(plate, more), more);
    JointCure count =
        cures.stream().filter(c -> c.figure() == Figure.COUNT).findFirst().orElseThrow();
    assertTrue(Integer.parseInt(count.to()) > 5, cures.toString());
    assertTrue(figures(cures).contains(Figure.CIRCLE), cures.toString());
  }
}
