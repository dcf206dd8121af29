package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.plate.DemoPlates;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Beams pierce in the waste and lead onto their paths. */
class BeamLeadTest {

  private static CutPlan plan(Plate plate, CutProcess process, double kerf) {
    return CutPlan.of(plate, CutSetup.beam(process, plate, kerf, 600).withConsent(true));
  }

  private static Point pierce(CutPlan plan, CutLine line) {
    return plan.way(line).get(0).from();
  }

  private static CutPlan hole(double diameter, double kerf) {
    return plan(
        CutPlates.of(
            CutPlates.PLYWOOD,
            6,
            Contour.circle(Point.ORIGIN, 60),
            List.of(new Hole("H1", HoleRole.OTHER, new Point(30, 0), diameter, Place.BUILT_IN))),
        CutProcess.LASER,
        kerf);
  }

  @Test
  void everyPierceOfTheDemoPlatesLiesInTheWasteWellOffTheFinishLine() {
    for (Plate plate : DemoPlates.all()) {
      for (CutProcess process : List.of(CutProcess.LASER, CutProcess.WATERJET)) {
        double kerf = process == CutProcess.LASER ? 0.2 : 1;
        CutPlan plan = plan(plate, process, kerf);
        SegmentIndex edges = SegmentIndex.of(plate.region().contours());
        for (CutLine line : plan.compensation().lines()) {
          List<Segment> way = plan.way(line);
          Point pierce = way.get(0).from();
          String who = plate.name() + " " + process + " " + line.feature().label();
          assertFalse(plate.region().contains(pierce), who);
          // The usual lead is 2 mm; a hole of 5 mm has 2.5 mm from its centre to its edge.
          assertTrue(edges.distance(pierce) >= kerf / 2 + 1.5 - 1e-6, who + edges.distance(pierce));
          assertFalse(way.get(0).from().near(way.get(way.size() - 1).to(), 1e-6), who);
          double round = way.stream().mapToDouble(Segment::length).sum();
          assertTrue(round > line.path().length() + 1.5, who);
        }
        assertTrue(SweepCheck.of(plan, 5).passed());
      }
    }
  }

  @Test
  void aSmallHoleIsPiercedAtItsCentre() {
    for (double diameter : new double[] {2, 3, 4}) {
      CutPlan plan = hole(diameter, 0.2);
      CutLine line = plan.compensation().lines().get(0);
      assertTrue(pierce(plan, line).near(new Point(30, 0), 1e-9), diameter + " mm");
      assertEquals(diameter / 2 - 0.1, plan.way(line).get(0).length(), 1e-9);
    }
    // A large one is led onto by the whole arc.
    CutPlan large = hole(30, 0.2);
    CutLine line = large.compensation().lines().get(0);
    assertEquals(Math.PI, large.way(line).get(0).length(), 1e-9);
  }

  @Test
  void noLeadReachesIntoANeighbourOrItsSlot() {
    Plate plate = CutPlates.of(RandomShapes.roundedRectangle(70, 40, 6));
    SheetRequest request =
        new SheetRequest(Optional.of(new Sheet(320, 230)), 1, 1, List.of(), true, 12, List.of());
    SheetLayout sheet = SheetLayout.of(List.of(plate), request, 0.3, false);
    MachineJob job =
        MachineJob.of(
            sheet.plates(),
            Optional.of(sheet.room()),
            p -> CutSetup.beam(CutProcess.WATERJET, p, 0.3, 600),
            5);
    for (CutPlan plan : job.plans()) {
      for (CutPlan other : job.plans()) {
        if (plan != other) {
          SegmentIndex edges = SegmentIndex.of(other.plate().region().contours());
          for (Segment lead : plan.leads()) {
            for (int i = 0; i <= 32; i++) {
              double off = edges.distance(lead.at(i / 32.0));
              assertTrue(off >= 1.5 * 0.3 + Surroundings.WALL - 2e-4, "off " + off);
            }
          }
        }
      }
    }
  }

  @Test
  void withoutALeadThePathIsClosedAndANoteSaysWhereItIsPierced() {
    Plate plate = CutPlates.of(Contour.circle(Point.ORIGIN, 60));
    CutSetup setup =
        CutSetup.beam(CutProcess.LASER, plate, 0.2, 600).with(new CutSetup.Entry(0, 0));
    CutPlan plan = CutPlan.of(plate, setup);
    assertTrue(plan.leads().isEmpty());
    assertTrue(plan.notes().get(0).text().startsWith("outline: pierced on the path itself"));
  }
}
