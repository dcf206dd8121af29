package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Plates on a known sheet: margins are measured to the cut, and tabs hold on to the sheet. */
class SheetCutTest {

  private static final FeedTable FEEDS = FeedTable.standard();
  private static final GeometryFactory JTS = new GeometryFactory();

  private static SheetRequest request(double width, double height, double margin, int copies) {
    Optional<Sheet> size = Optional.of(new Sheet(width, height));
    return new SheetRequest(size, margin, 2, List.of(), true, copies, List.of());
  }

  private static Plate plate(double width, double height) {
    return CutPlates.of(RandomShapes.roundedRectangle(width, height, 12));
  }

  private static MachineJob job(SheetLayout sheet, double cutter) {
    return MachineJob.of(
        sheet.plates(),
        Optional.of(sheet.room()),
        plate -> CutSetup.router(plate, cutter, 1, FEEDS),
        4);
  }

  /** How far from the origin and from the sheet's other sides any cut stays, by its own points. */
  private static double nearest(MachineJob job, Sheet sheet, double half) {
    double least = Double.POSITIVE_INFINITY;
    for (MachineJob.Step step : job.steps()) {
      for (Move move : step.operation().moves()) {
        if (move instanceof Move.Cut cut && Math.min(cut.fromZ(), cut.toZ()) < 0) {
          for (int i = 0; i <= 64; i++) {
            Point p = cut.along().at(i / 64.0);
            least = Math.min(least, Math.min(p.x(), p.y()) - half);
            least = Math.min(least, sheet.width() - p.x() - half);
            least = Math.min(least, sheet.height() - p.y() - half);
          }
        }
      }
    }
    return least;
  }

  @Test
  void theMarginIsMeasuredToTheCutAndNotToThePart() {
    for (double cutter : new double[] {3, 6}) {
      for (double margin : new double[] {0.6, 5}) {
        SheetRequest request = request(400, 300, margin, 2);
        MachineJob job =
            job(SheetLayout.of(List.of(plate(150, 90)), request, cutter, true), cutter);
        double nearest = nearest(job, request.size().get(), cutter / 2);
        assertTrue(nearest >= margin - 1e-3, cutter + " " + margin + ": " + nearest);
        assertTrue(job.proof().passed());
      }
    }
  }

  /** The plan of a plate that knows of no sheet, held against one. */
  private static List<Finding> refused(double x, double y) {
    Plate plate =
        CutPlates.of(RandomShapes.roundedRectangle(150, 90, 12).moved(RigidTransform.shift(x, y)));
    CutPlan plan = CutPlan.of(plate, CutSetup.router(plate, 6, 1, FEEDS));
    SheetRoom room = new SheetRoom(new Sheet(400, 300), 5, 6, List.of());
    return SweepCheck.of(
            new CutPlan(
                plate,
                plan.setup(),
                new Surroundings(List.of(), List.of(), Optional.of(room)),
                plan.compensation(),
                plan.height(),
                plan.operations(),
                plan.tabs(),
                plan.figures(),
                plan.notes(),
                plan.cautions()),
            4)
        .failures();
  }

  @Test
  void aCutThatLeavesTheSheetAndTabsThatHoldNothingAreRefused() {
    assertTrue(refused(200, 150).isEmpty());
    // 5 mm from the part to the edge, as the margin was once meant: the cutter sweeps to -1 mm.
    List<String> rules = refused(80, 50).stream().map(Finding::rule).toList();
    assertEquals(List.of("sweep-sheet", "sweep-hold"), rules);
  }

  @Test
  void aSheetThatFitsExactlyDoes() {
    // The part, a slot of 6 and a margin of 5 on each side.
    assertEquals(
        1,
        SheetLayout.of(List.of(plate(150, 90)), request(172, 112, 5, 1), 6, true).parts().size());
    CutRefused small =
        assertThrows(
            CutRefused.class,
            () -> SheetLayout.of(List.of(plate(150, 90)), request(171.9, 112, 5, 1), 6, true));
    assertEquals(Optional.of(CutFigure.SHEET), small.faults().get(0).figure());
  }

  @Test
  void copiesOfOnePlateShareASheetUnderNamesOfTheirOwn() {
    SheetLayout sheet =
        SheetLayout.of(List.of(plate(80, 50), plate(80, 50)), request(500, 400, 5, 2), 4, true);
    assertEquals(
        List.of("ruff-1", "ruff-2", "ruff-3", "ruff-4"),
        sheet.parts().stream().map(SheetLayout.Lying::name).toList());
    assertTrue(job(sheet, 4).proof().passed());
  }

  private static Plate named(String name, double thickness) {
    Plate plain =
        CutPlates.of(
            CutPlates.PLYWOOD,
            thickness,
            RandomShapes.roundedRectangle(80, 50, 8),
            List.of(new Hole("H1", HoleRole.OTHER, Point.ORIGIN, 5, Place.BUILT_IN)));
    return new Plate(
        name,
        plain.title(),
        plain.revision(),
        plain.outline(),
        plain.windows(),
        plain.holes(),
        List.of(),
        Optional.empty(),
        new Stock(CutPlates.PLYWOOD, thickness, Optional.empty(), Face.FRONT, Place.BUILT_IN),
        plain.making(),
        List.of(),
        List.of());
  }

  @Test
  void threeTenthsOfAnInchAndItsMillimetresAreOneSheet() {
    List<Plate> plates = List.of(named("knot", 0.3 * 25.4), named("ruff", 7.62));
    assertTrue(0.3 * 25.4 != 7.62 || plates.size() == 2);
    assertEquals(2, SheetLayout.of(plates, request(400, 300, 5, 1), 4, true).parts().size());
    List<Plate> others = List.of(named("knot", 7.6), named("ruff", 7.62));
    assertThrows(CutRefused.class, () -> SheetLayout.of(others, request(400, 300, 5, 1), 4, true));
  }

  @Test
  void aPlateWithANumberForANameIsNamedInEveryStep() {
    SheetLayout sheet =
        SheetLayout.of(List.of(named("1", 6), named("ruff", 6)), request(400, 300, 5, 1), 4, true);
    List<String> titles =
        job(sheet, 4).steps().stream().map(step -> step.operation().title()).toList();
    assertTrue(titles.contains("1: drill 1 hole, 5 mm"), titles.toString());
    assertTrue(titles.contains("ruff: drill 1 hole, 5 mm"), titles.toString());
  }

  @Test
  void aBayWithANarrowMouthHasNoTab() {
    // The cutter closes the mouth of 9 mm from both sides: what stands in the bay is loose.
    List<Point> corners = new ArrayList<>();
    double[][] at = {
      {-80, -60},
      {80, -60},
      {80, -4.5},
      {60, -4.5},
      {60, -40},
      {-40, -40},
      {-40, 40},
      {60, 40},
      {60, 4.5},
      {80, 4.5},
      {80, 60},
      {-80, 60}
    };
    for (double[] p : at) {
      corners.add(new Point(p[0], p[1]));
    }
    Plate plate = CutPlates.of(Contour.polygon(corners));
    for (int count = 2; count <= 8; count++) {
      CutSetup setup = CutSetup.router(plate, 6, 1, FEEDS).with(new CutSetup.Tabs(count, 5, 1));
      CutPlan plan = CutPlan.of(plate, setup);
      assertTrue(SweepCheck.of(plan, 4).passed());
      assertTrue(
          plan.tabs().stream()
              .noneMatch(
                  tab -> Math.abs(tab.at().y()) < 38 && tab.at().x() > -38 && tab.at().x() < 58));
    }
  }

  @Test
  void onlyWhatHangsTogetherWithTheSheetIsItsFrame() {
    // A ring of slot round the origin: inside is a piece of its own.
    List<Segment> ring = Contour.circle(Point.ORIGIN, 30).segments();
    SheetPieces one = new SheetPieces(ring, 3, Optional.empty());
    assertFalse(one.frame(one.near(Point.ORIGIN, 0.25)));
    assertTrue(one.frame(one.near(new Point(33.2, 0), 0.25)));
    assertEquals(-1, one.near(new Point(30, 0), 0.25));
    // A wall of half a millimetre between two slots hangs together; cut through it does not.
    List<Segment> two = new ArrayList<>(ring);
    two.addAll(Contour.circle(Point.ORIGIN, 36.5).segments());
    SheetPieces wall = new SheetPieces(two, 3, Optional.empty());
    int between = wall.near(new Point(33.25, 0), 0.25);
    assertTrue(between >= 0 && !wall.frame(between));
    two.add(new Line(new Point(33.25, 0), new Point(45, 0)));
    SheetPieces opened = new SheetPieces(two, 3, Optional.empty());
    assertEquals(-1, opened.near(new Point(33.25, 0), 0.25));
  }

  @Test
  void thePiecesOfSeededRandomCutsAreThoseOfPolygons() {
    // Buffers and differences by JTS, a second method that knows no rows.
    for (long seed = 1; seed <= 60; seed++) {
      Random random = new Random(seed);
      double half = 0.5 + 2 * random.nextDouble();
      List<Segment> cuts = new ArrayList<>();
      Geometry slots = JTS.createPolygon();
      for (int i = 0; i < 12; i++) {
        Point from = new Point(100 * random.nextDouble(), 80 * random.nextDouble());
        Point to = new Point(100 * random.nextDouble(), 80 * random.nextDouble());
        cuts.add(new Line(from, to));
        Coordinate[] ends = {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())};
        slots = slots.union(JTS.createLineString(ends).buffer(half, 32));
      }
      Geometry sheet = JTS.toGeometry(new org.locationtech.jts.geom.Envelope(-20, 120, -20, 100));
      Geometry left = sheet.difference(slots);
      SheetPieces pieces = new SheetPieces(cuts, half, Optional.of(new Box(-20, -20, 120, 100)));
      for (int i = 0; i < left.getNumGeometries(); i++) {
        // What the rows cannot see: slivers thinner than they stand apart.
        Geometry core = left.getGeometryN(i).buffer(-0.4);
        if (core.isEmpty()) {
          continue;
        }
        Coordinate in = core.getInteriorPoint().getCoordinate();
        boolean frame = left.getGeometryN(i).distance(sheet.getBoundary()) == 0;
        int piece = pieces.near(new Point(in.x, in.y), 0.3);
        assertEquals(frame, pieces.frame(piece), "seed " + seed + " at " + in);
      }
    }
  }
}
