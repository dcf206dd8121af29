package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class FeedTableTest {

  private static final FeedTable FEEDS = FeedTable.standard();

  private static Material material(String name, MaterialKind kind) {
    return CutPlates.material(name, kind);
  }

  @Test
  void feedIsSpeedTimesFlutesTimesChipLoad() {
    // Values table O12, computed: 18000 1/min, 2 flutes, 0.05 mm a tooth make 1800 mm/min, and a
    // 3.175 mm cutter at 18000 1/min has a surface speed of 179.5 m/min.
    assertEquals(1800, 18000 * 2 * 0.05, 1e-9);
    for (int flutes = 1; flutes <= 3; flutes++) {
      for (Material each : all()) {
        StartingFeed start = FEEDS.routing(each, 3.175, flutes);
        assertEquals(start.feed(), start.speed() * flutes * start.chipLoad(), 1e-6);
        assertEquals(Math.PI * 3.175 * start.speed() / 1000, start.surfaceSpeed(), 1e-9);
      }
    }
    StartingFeed aluminium = FEEDS.routing(CutPlates.ALUMINIUM, 3.175, 1);
    assertEquals(18000, aluminium.speed(), 1e-9);
    assertEquals(179.5, aluminium.surfaceSpeed(), 0.05);
  }

  private static List<Material> all() {
    return List.of(
        CutPlates.CARBON,
        material("glass-laminate", MaterialKind.LAMINATE),
        CutPlates.ALUMINIUM,
        CutPlates.PLYWOOD,
        material("acrylic", MaterialKind.PLASTIC));
  }

  @Test
  void startingFiguresLieWithinCommonPractice() {
    // Values table O13 to O15, common practice.
    for (double cutter : new double[] {2, 3, 3.175, 4}) {
      StartingFeed carbon = FEEDS.routing(CutPlates.CARBON, cutter, 2);
      within(carbon.speed(), 12000, 20000);
      within(carbon.feed(), 300, 900);
      within(carbon.chipLoad(), 0.01, 0.04);
      within(carbon.stepDown() / cutter, 0.3, 1);
      StartingFeed aluminium = FEEDS.routing(CutPlates.ALUMINIUM, cutter, 1);
      within(aluminium.speed(), 12000, 20000);
      within(aluminium.chipLoad(), 0.0195, 0.05);
      within(aluminium.stepDown() / cutter, 0.2, 0.5);
      StartingFeed plywood = FEEDS.routing(CutPlates.PLYWOOD, cutter, 2);
      within(plywood.speed(), 14000, 20000);
      within(plywood.chipLoad(), 0.0495, 0.15);
      within(plywood.stepDown() / cutter, 0.5, 1);
    }
    // O16: drills in carbon 2000 to 4000 1/min at 5 mm, 0.02 to 0.05 mm a turn.
    StartingFeed carbon = FEEDS.routing(CutPlates.CARBON, 4, 2);
    within(1000 * carbon.drillSurfaceSpeed() / (Math.PI * 5), 2000, 4000);
    within(carbon.drillFeed(), 0.02, 0.05);
  }

  private static void within(double value, double low, double high) {
    assertTrue(value >= low && value <= high, value + " not in " + low + " to " + high);
  }

  @Test
  void kerfsLieWithinCommonPractice() {
    // Values table O8 to O10, common practice.
    within(FEEDS.laser().width(), 0.1, 0.3);
    within(FEEDS.waterjet().width(), 0.8, 1.2);
    within(FEEDS.blade().kerf(), 1.0, 1.5);
  }

  @Test
  void everyRowHasABasisAndLaminatesSayHowTheyWear() {
    for (Material each : all()) {
      StartingFeed start = FEEDS.routing(each, 4, 2);
      assertTrue(start.basis().startsWith("common practice"), start.basis());
      assertEquals(each.kind() == MaterialKind.LAMINATE, start.wear().isPresent());
    }
    assertTrue(FEEDS.routing(CutPlates.CARBON, 4, 2).wear().get().note().contains("abrasive"));
  }

  @Test
  void aMaterialWithoutARowTakesOneOfItsKind() {
    assertEquals(
        FEEDS.routing(CutPlates.ALUMINIUM, 4, 1),
        FEEDS.routing(material("brass", MaterialKind.METAL), 4, 1));
  }
}
