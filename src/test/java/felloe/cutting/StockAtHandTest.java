package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.RandomShapes;
import felloe.plate.Face;
import felloe.plate.LaidSheet;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.Stock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Stock on which tabs would not hold is told before it is cut, and in the program itself. */
class StockAtHandTest {

  private static final FeedTable FEEDS = FeedTable.standard();
  private static final Stock SIX =
      new Stock(CutPlates.CARBON, 6, Optional.empty(), Face.FRONT, Place.of("ruff.yaml", 2, 1));

  private static Plate plate(Stock stock) {
    return CutPlates.of(RandomShapes.roundedRectangle(294, 186, 50)).with(stock);
  }

  private static Stock sheet(double width, double height) {
    return new Stock(
        CutPlates.CARBON,
        6,
        Optional.of(new Sheet(width, height)),
        Face.FRONT,
        Place.of("ruff.yaml", 2, 1));
  }

  private static List<String> cautions(Plate plate, double cutter) {
    return CutPlan.of(plate, CutSetup.router(plate, cutter, 1, FEEDS)).cautions().stream()
        .filter(c -> c.startsWith("The lay-up") || c.startsWith("With the slot"))
        .toList();
  }

  @Test
  void aPanelThatComesOutThinnerLeavesTabsLow() {
    assertEquals(
        List.of(
            "The lay-up comes to 5.51 mm, and this is planned for 6 mm: tabs would be 0.49 mm lower"
                + " than told, and may not hold the part. Measure the panel, and tell its"
                + " thickness."),
        cautions(plate(SIX.laid(new LaidSheet(5.51, 1.46))), 4));
  }

  @Test
  void aPanelThatComesOutThickerMayNotBeCutThrough() {
    String told = cautions(plate(SIX.laid(new LaidSheet(6.4, 1.46))), 4).get(0);
    assertTrue(told.contains("the last pass may not go through"), told);
  }

  @Test
  void aPanelAsThickAsWantedIsNotTold() {
    assertEquals(List.of(), cautions(plate(SIX.laid(new LaidSheet(6.05, 1.46))), 4));
  }

  @Test
  void aSheetThatTheSlotRunsOutOfIsTold() {
    assertEquals(
        List.of(
            "With the slot round it and a wall that holds tabs the part takes 307 mm by 199 mm, as"
                + " drawn, and the sheet has 300 mm by 200 mm: the cutter runs out at its edges,"
                + " and what is left of the sheet falls apart and holds no tabs. Take a larger"
                + " sheet or a thinner cutter, or screw the part itself down through its holes."),
        cautions(plate(sheet(300, 200)), 6));
    assertEquals(List.of(), cautions(plate(sheet(199, 307)), 6));
    assertEquals(List.of(), cautions(plate(sheet(300, 200)), 2));
  }
}
