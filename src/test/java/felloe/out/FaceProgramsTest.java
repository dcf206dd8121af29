package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cutting.CutDirection;
import felloe.cutting.CutFigure;
import felloe.cutting.CutJob;
import felloe.cutting.CutPlan;
import felloe.cutting.CutProcess;
import felloe.cutting.CutWish;
import felloe.cutting.CutterTool;
import felloe.cutting.Dialect;
import felloe.cutting.FeedTable;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.hub.HubCatalogue;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Programs with a V tool, run by the interpreter: the face that its cone leaves, worked out place
 * by place from the program's bytes, is the face that the shape file asks for.
 */
class FaceProgramsTest {

  private static final long SEED = 20_240_611;
  private static final double TIP = 0.2;

  private static Plate plate(String... sets) {
    return ShapeFile.read(Path.of("shapes", "heron.yaml"), Sets.of(sets), HubCatalogue.here());
  }

  private static CutJob job(Plate plate, double degrees) {
    CutWish wish =
        new CutWish(
            CutProcess.ROUTER,
            true,
            CutDirection.CLIMB,
            Map.of(CutFigure.V_ANGLE, degrees, CutFigure.V_TIP, TIP),
            Optional.empty(),
            false);
    return CutJob.plate(plate, wish, 4, FeedTable.standard());
  }

  /** The steps of the V tool, which the program takes up first. */
  private static List<Rs274Step> steps(CutPlan plan, Dialect dialect) {
    byte[] program = GcodeWriter.write(PlannedProgramsTest.job(plan), dialect);
    ProgramProof proof =
        ProgramProof.of(program, Dialects.beyond(dialect), PlannedProgramsTest.wanted(plan));
    assertEquals(List.of(), proof.faults, dialect.name());
    Rs274Interpreter machine = new Rs274Interpreter(Dialects.beyond(dialect), 0, 0, 0);
    machine.run(program);
    return machine.steps.stream()
        .filter(s -> s.tool() == 0 && !s.rapid() && Math.min(s.from()[2], s.to()[2]) < 0)
        .toList();
  }

  /** How deep the face is cut at a place: the deepest that the cone goes over it. */
  private static double depth(List<double[]> tips, double degrees, Point at) {
    double slope = Math.tan(Math.toRadians(degrees / 2));
    double depth = 0;
    for (double[] tip : tips) {
      double away = Math.hypot(tip[0] - at.x(), tip[1] - at.y());
      depth = Math.max(depth, -tip[2] - Math.max(0, away - TIP / 2) / slope);
    }
    return depth;
  }

  private static List<double[]> tips(List<Rs274Step> steps) {
    List<double[]> tips = new ArrayList<>();
    for (Rs274Step step : steps) {
      List<double[]> points = step.points(1e-5);
      for (int i = 1; i < points.size(); i++) {
        double[] a = points.get(i - 1);
        double[] b = points.get(i);
        int parts = Math.max(1, (int) Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / 0.02));
        for (int k = 0; k <= parts; k++) {
          double f = k / (double) parts;
          tips.add(
              new double[] {
                a[0] + f * (b[0] - a[0]), a[1] + f * (b[1] - a[1]), a[2] + f * (b[2] - a[2])
              });
        }
      }
    }
    return tips;
  }

  @Test
  void chamfersAreAsWideAsTheyAreDeepInEveryDialect() {
    double size = 0.8;
    Plate plate = plate("making.chamfer=" + size);
    CutPlan plan = job(plate, 90).machine().orElseThrow().first();
    for (Dialect dialect : Dialects.all()) {
      List<double[]> tips = tips(steps(plan, dialect));
      Random random = new Random(SEED);
      for (Contour contour : plate.region().contours()) {
        boolean hole = plate.holes().stream().anyMatch(h -> h.contour().equals(contour));
        for (int i = 0; i < (hole ? 2 : 40); i++) {
          List<Segment> segments = contour.segments();
          Segment segment = segments.get(random.nextInt(segments.size()));
          double at = random.nextDouble();
          double in = random.nextDouble() * 1.5 * size;
          boolean outline = contour.equals(plate.outline());
          Point tangent = segment.tangent(at);
          Point p = segment.at(at).plus(outline ? tangent.left() : tangent.right(), in);
          double wanted = hole ? 0 : Math.max(0, size - in);
          String where = dialect.name() + ", seed " + SEED + ", " + p + ", " + in;
          assertEquals(wanted, depth(tips, 90, p), 0.01, where);
        }
      }
    }
  }

  @Test
  void linesAreAsDeepAsTheyAreDrawnAndNothingIsCutBesideThem() {
    Plate plate =
        plate(
            "engravings=[{text: HERON 3, at: [0, 118], height: 5, depth: 0.35},"
                + " {mark: arrow, at: [0, -41], height: 4, face: back}]");
    CutPlan plan = job(plate, 60).machine().orElseThrow().first();
    Engraving front =
        plate.engravings().stream().filter(e -> e.face() == Face.FRONT).findFirst().orElseThrow();
    List<Segment> lines = front.strokes().stream().flatMap(List::stream).toList();
    double half = TIP / 2 + 0.35 * Math.tan(Math.toRadians(30));
    List<double[]> tips = tips(steps(plan, Dialects.plain()));
    for (Segment line : lines) {
      assertEquals(0.35, depth(tips, 60, line.at(0.37)), 1e-4);
    }
    Random random = new Random(SEED);
    int beside = 0;
    for (int i = 0; i < 2000; i++) {
      Point p =
          new Point(
              front.box().minX() - 1 + random.nextDouble() * (front.box().width() + 2),
              front.box().minY() - 1 + random.nextDouble() * (front.box().height() + 2));
      double away = lines.stream().mapToDouble(line -> line.distance(p)).min().orElseThrow();
      double depth = depth(tips, 60, p);
      if (away > half) {
        beside++;
        assertEquals(0, depth, 1e-3, "seed " + SEED + ", " + p);
      } else {
        double wanted = 0.35 - Math.max(0, away - TIP / 2) / Math.tan(Math.toRadians(30));
        assertEquals(wanted, depth, 0.01, "seed " + SEED + ", " + p);
      }
    }
    assertTrue(beside > 1000, "beside " + beside);
    // Nothing is cut where the back's arrow is.
    Engraving back = plate.engravings().get(1);
    assertEquals(0, depth(tips, 60, back.strokes().get(0).get(0).at(0.5)), 1e-12);
  }

  @Test
  void theProgramTellsTheToolAndPausesForTheNext() {
    Plate plate = plate("making.edge_break=0.3");
    CutPlan plan = job(plate, 60).machine().orElseThrow().first();
    String program =
        new String(
            GcodeWriter.write(PlannedProgramsTest.job(plan), Dialects.plain()),
            java.nio.charset.StandardCharsets.US_ASCII);
    assertTrue(program.contains("Tool: 60 deg V tool, tip 0.2, at least "), program);
    CutterTool tool = plan.operations().get(0).tool();
    // Wall 0.3 and tip 0.2 aside: the tip goes 0.3 + 0.2 / tan 30 deep, and is so wide at the face.
    double deep = 0.3 + 0.2 / Math.tan(Math.toRadians(30));
    assertEquals(0.2 + 2 * deep * Math.tan(Math.toRadians(30)), tool.diameter(), 1e-9);
    assertEquals(3, program.lines().filter(line -> line.equals("M0")).count());
  }
}
