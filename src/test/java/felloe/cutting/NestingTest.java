package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Region;
import felloe.hub.HubCatalogue;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class NestingTest {

  private static SheetRoom sheet(double width, double height) {
    return new SheetRoom(new Sheet(width, height), 10, List.of());
  }

  private static NestedPart rectangle(double width, double height) {
    return new NestedPart(
        width + " x " + height,
        Region.of(
            Contour.polygon(
                List.of(
                    new Point(0, 0),
                    new Point(width, 0),
                    new Point(width, height),
                    new Point(0, height)))),
        List.of(0.0));
  }

  @Test
  void aPartLiesInTheLowerLeftCornerOfTheRoom() {
    Nesting.Layout layout = Nesting.place(List.of(rectangle(50, 30)), sheet(300, 200), 6, 1);
    Box box = layout.placed().get(0).region().outer().box();
    assertEquals(10, box.minX(), 1e-6);
    assertEquals(10, box.minY(), 1e-6);
  }

  @Test
  void twoRectanglesLieSideBySideAtTheSpacing() {
    List<NestedPart> parts = List.of(rectangle(50, 30), rectangle(50, 30));
    Nesting.Layout layout = Nesting.place(parts, sheet(300, 200), 6, 1);
    double gap =
        layout
            .placed()
            .get(0)
            .region()
            .outer()
            .gap(layout.placed().get(1).region().outer())
            .distance();
    assertEquals(6, gap, 1e-5);
    assertTrue(gap >= 6);
    assertEquals(40, layout.used(), 1e-6);
  }

  @Test
  void aSmallPartFindsRoomInTheWindowOfALargeOne() {
    Region ring =
        new Region(Contour.circle(Point.ORIGIN, 140), List.of(Contour.circle(Point.ORIGIN, 100)));
    NestedPart wheel = new NestedPart("ring", ring, List.of(0.0));
    Nesting.Layout layout = Nesting.place(List.of(rectangle(80, 40), wheel), sheet(305, 305), 5, 1);
    assertEquals(2, layout.placed().size());
    assertTrue(layout.left().isEmpty());
    checkClear(layout, 5);
  }

  @Test
  void whatFindsNoRoomIsNamed() {
    List<NestedPart> parts = List.of(rectangle(50, 30), rectangle(500, 30));
    Nesting.Layout layout = Nesting.place(parts, sheet(300, 200), 6, 3);
    assertEquals(List.of(parts.get(1)), layout.left());
  }

  @Test
  void keepOutStripsStayClear() {
    SheetRoom room = new SheetRoom(new Sheet(300, 200), 10, List.of(new Box(0, 0, 300, 40)));
    Nesting.Layout layout = Nesting.place(List.of(rectangle(50, 30)), room, 6, 1);
    assertTrue(layout.placed().get(0).region().outer().box().minY() >= 40 + 3);
  }

  @Test
  void seededRandomPartsNeverOverlapAndStayOnTheSheet() {
    for (long seed = 1; seed <= 12; seed++) {
      List<NestedPart> parts = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        Contour contour = RandomShapes.contour(seed * 100 + i, 60 + 20 * i);
        parts.add(
            new NestedPart(
                "p" + i, Region.of(contour), i % 2 == 0 ? NestedPart.HELD : NestedPart.FREE));
      }
      Nesting.Layout layout = Nesting.place(parts, sheet(400, 600), 4, 2);
      assertEquals(parts.size(), layout.placed().size() + layout.left().size(), "seed " + seed);
      checkClear(layout, 4);
      for (Nesting.Placed placed : layout.placed()) {
        Box box = placed.region().outer().box();
        assertTrue(box.minX() >= 10 - 1e-6 && box.maxX() <= 390 + 1e-6, "seed " + seed);
        assertTrue(box.minY() >= 10 - 1e-6 && box.maxY() <= 590 + 1e-6, "seed " + seed);
      }
    }
  }

  @Test
  void theDemoPlatesTakeLessOfTheSheetThanTheirBoundingBoxes() {
    List<NestedPart> parts = new ArrayList<>();
    List<NestedPart> boxes = new ArrayList<>();
    for (String name : List.of("heron", "bittern", "dunlin", "avocet")) {
      Plate plate =
          ShapeFile.read(Path.of("shapes", name + ".yaml"), Sets.of(), HubCatalogue.here());
      parts.add(new NestedPart(name, plate.region(), NestedPart.HELD));
      Box box = plate.box();
      boxes.add(rectangle(box.width(), box.height()));
    }
    for (int i = 0; i < 6; i++) {
      parts.add(rectangle(15, 80));
      boxes.add(rectangle(15, 80));
    }
    Nesting.Layout nested = Nesting.place(parts, sheet(620, 1000), 8, 4);
    Nesting.Layout boxed = Nesting.place(boxes, sheet(620, 1000), 8, 4);
    checkClear(nested, 8);
    // Measured: 597 mm of the sheet against 702 mm, 15 % less.
    assertTrue(nested.used() < 0.9 * boxed.used(), nested.used() + " of " + boxed.used());
  }

  @Test
  void whatFitsTheSheetExactlyFindsItsPlace() {
    for (int across = 1; across <= 3; across++) {
      for (int up = 1; up <= 2; up++) {
        // A margin of 10 all round, and 6 between parts of 100 by 60 with rounded corners.
        double width = 20 + across * 100 + (across - 1) * 6;
        double height = 20 + up * 60 + (up - 1) * 6;
        NestedPart part =
            new NestedPart(
                "p", Region.of(RandomShapes.roundedRectangle(100, 60, 6)), NestedPart.HELD);
        List<NestedPart> parts = Collections.nCopies(across * up, part);
        String who = across + " by " + up;
        Nesting.Layout layout = Nesting.place(parts, sheet(width, height), 6, 3);
        assertEquals(List.of(), layout.left(), who);
        checkClear(layout, 6);
        Nesting.Layout smaller = Nesting.place(parts, sheet(width - 0.1, height), 6, 3);
        assertEquals(across * up, smaller.placed().size() + smaller.left().size());
        assertTrue(!smaller.left().isEmpty(), who);
      }
    }
  }

  @Test
  void theSamePartsGiveTheSameLayout() {
    List<NestedPart> parts = List.of(rectangle(50, 30), rectangle(70, 20), rectangle(20, 90));
    assertEquals(
        Nesting.place(parts, sheet(300, 200), 6, 5), Nesting.place(parts, sheet(300, 200), 6, 5));
  }

  private static void checkClear(Nesting.Layout layout, double spacing) {
    List<Region> regions = layout.placed().stream().map(Nesting.Placed::region).toList();
    for (int i = 0; i < regions.size(); i++) {
      for (int j = 0; j < i; j++) {
        for (Contour a : regions.get(i).contours()) {
          for (Contour b : regions.get(j).contours()) {
            Gap gap = a.gap(b);
            assertTrue(gap.distance() >= spacing - 1e-6, gap.toString());
          }
        }
        Point p = regions.get(i).outer().segments().get(0).from();
        Point q = regions.get(j).outer().segments().get(0).from();
        assertTrue(!regions.get(j).contains(p) && !regions.get(i).contains(q));
      }
    }
  }
}
