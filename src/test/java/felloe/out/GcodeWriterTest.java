package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cutting.CutterTool;
import felloe.cutting.Dialect;
import felloe.cutting.JobHeights;
import felloe.cutting.Move;
import felloe.cutting.Operation;
import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Programs as text, and as the interpreter of the tests runs them. */
class GcodeWriterTest {

  private static final CutterTool MILL =
      new CutterTool("3 mm end mill", CutterTool.Kind.END_MILL, 3, 2);
  private static final JobHeights HEIGHT = new JobHeights(8, 1.5, -6);
  private static final Dialect PLAIN = Dialects.plain();

  @Test
  void everyDialectCutsWhatWasPlannedByHandAndNothingElse() {
    for (Plate plate : List.of(DemoPlates.dunlin(), DemoPlates.sanderling())) {
      for (Dialect dialect : Dialects.all()) {
        HandPlan plan = new HandPlan(plate, 0, true);
        byte[] program = GcodeWriter.write(plan.job(), dialect);
        ProgramProof proof = ProgramProof.of(program, Dialects.beyond(dialect), plan.wanted(plate));
        assertEquals(List.of(), proof.faults, plate.name() + " " + dialect.name());
        assertTrue(proof.worstGouge < 0.001, "gouge " + proof.worstGouge);
        assertTrue(proof.worstLeft < 0.003, "left " + proof.worstLeft);
      }
    }
  }

  @Test
  void theProgramBeginsSafelyAndEndsSafely() {
    List<String> lines = words(PLAIN, new HandPlan(DemoPlates.sanderling(), 0, false).job());
    assertEquals(
        List.of("%", "G17 G21 G40 G49 G54 G80 G90 G94", "G0 Z8.0000", "M3 S12000", "G4 P3", "M8"),
        lines.subList(0, 6));
    assertEquals(
        List.of("G0 Z8.0000", "M9", "M5", "M2", "%"),
        lines.subList(lines.size() - 5, lines.size()));
  }

  @Test
  void aToolChangeStopsTheSpindleLiftsAndWaits() {
    List<String> lines = words(PLAIN, new HandPlan(DemoPlates.dunlin(), 0, false).job());
    int pause = lines.indexOf("M0");
    assertEquals(
        List.of("G0 Z8.0000", "M9", "M5"),
        lines.subList(pause - 3, pause).stream().filter(line -> !line.equals("G80")).toList());
    assertEquals(
        List.of("G17 G21 G40 G49 G54 G80 G90 G94", "G0 Z8.0000", "M3 S12000", "G4 P3", "M8"),
        lines.subList(pause + 1, pause + 6));
    assertTrue(lines.get(pause + 6).matches("G0 X\\S+ Y\\S+"), lines.get(pause + 6));
  }

  @Test
  void dialectsDifferAsTheirFilesSay() {
    GcodeJob job = new HandPlan(DemoPlates.heron(), 0, true).job();
    String plain = text(PLAIN, job);
    assertFalse(plain.contains("G91.1"), "not in NISTIR 6556");
    assertFalse(plain.contains("\r"));
    assertTrue(plain.contains("G98 G81 ") && plain.contains("G98 G83 "));
    String numbered = text(Dialects.named("numbered-lines"), job);
    assertTrue(numbered.contains("G91.1") && numbered.endsWith("M30\r\n%\r\n"));
    for (String line : numbered.split("\r\n")) {
      assertTrue(line.equals("%") || line.matches("N[0-9]+0 .*"), line);
    }
    String small = text(Dialects.named("no-drill-cycles"), job);
    for (String word : List.of("G8", "G98", "M8", "M9", "%", "(", "G40", "G49")) {
      assertFalse(small.contains(word), word);
    }
  }

  @Test
  void quadrantArcsStayInTheirQuadrant() {
    Dialect dialect = Dialects.named("numbered-lines");
    for (Plate plate : DemoPlates.all()) {
      Rs274Interpreter machine = run(dialect, new HandPlan(plate, 0, true).job());
      for (Rs274Step step : machine.steps) {
        assertTrue(Math.abs(step.sweep()) < Math.PI / 2 + 1e-4, "sweep " + step.sweep());
        if (step.centre() != null) {
          double a =
              Math.atan2(step.from()[1] - step.centre()[1], step.from()[0] - step.centre()[0]);
          double middle = a + step.sweep() / 2;
          double into = Math.abs(middle / (Math.PI / 2) - Math.floor(middle / (Math.PI / 2)) - 0.5);
          double half = Math.abs(step.sweep()) / Math.PI;
          assertTrue(into + half < 0.5 + 1e-4, "crosses an axis of its circle");
        }
      }
    }
  }

  @Test
  void aWholeCircleIsOneBlockOrTwoHalves() {
    GcodeJob job = job(Arc.circle(new Point(5, 5), 12.5));
    assertEquals(1, count(text(PLAIN, job), "G3"));
    assertEquals(2, count(text(Dialects.named("no-drill-cycles"), job), "G3"));
    assertEquals(4, count(text(Dialects.named("numbered-lines"), job), "G3"));
  }

  /** Rounded ends must never turn a nearly whole circle into next to nothing, or the reverse. */
  @Test
  void seededArcsOfEverySizeComeBackWithinTheRounding() {
    Random random = new Random(556);
    for (int i = 0; i < 1200; i++) {
      double radius = Math.pow(10, -2 + 5 * random.nextDouble());
      double sweep =
          switch (i % 4) {
            case 0 -> 2 * Math.PI - Math.pow(10, -9 * random.nextDouble());
            case 1 -> Math.pow(10, -6 * random.nextDouble());
            case 2 -> 2 * Math.PI;
            default -> 2 * Math.PI * random.nextDouble();
          };
      if (radius * sweep < 1e-5) {
        continue;
      }
      double turned = random.nextBoolean() ? sweep : -sweep;
      Point centre = new Point(200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100);
      Arc arc = Arc.of(centre, radius, 7 * random.nextDouble(), turned);
      for (Dialect dialect : Dialects.all()) {
        List<Rs274Step> steps = run(dialect, job(arc)).steps;
        double length = 0;
        for (Rs274Step step : steps) {
          if (!step.rapid() && step.across()) {
            length += step.length();
            for (double[] p : step.points(1e-5 * radius)) {
              Point at = new Point(p[0], p[1]);
              assertEquals(0, arc.distance(at), 3e-4, "seed 556, arc " + i + " " + dialect.name());
            }
          }
        }
        assertEquals(arc.length(), length, 1e-3 + 1e-5 * radius, "seed 556, arc " + i);
      }
    }
  }

  @Test
  void chainedArcsKeepTheReportsRadiusRuleWithRoomToSpare() {
    Random random = new Random(41);
    List<Segment> chain = new ArrayList<>();
    Point at = new Point(0, 0);
    double direction = 0;
    for (int i = 0; i < 2000; i++) {
      double radius = 0.5 + 80 * random.nextDouble();
      double sweep = (random.nextBoolean() ? 1 : -1) * (0.05 + 1.5 * random.nextDouble());
      Point centre = at.plus(Point.polar(radius, direction + Math.copySign(Math.PI / 2, sweep)));
      Point out = at.minus(centre);
      Point to = centre.plus(Point.polar(radius, out.angle() + sweep));
      chain.add(new Arc(at, to, centre, radius, sweep));
      direction += sweep;
      at = to;
    }
    for (Dialect dialect : Dialects.all()) {
      double worst = 0;
      for (Rs274Step step : run(dialect, job(chain.toArray(Segment[]::new))).steps) {
        if (step.centre() != null) {
          double[] c = step.centre();
          double end = Math.hypot(step.to()[0] - c[0], step.to()[1] - c[1]);
          worst = Math.max(worst, Math.abs(end - step.radius()));
        }
      }
      assertTrue(worst < 0.0003, "radii differ by " + worst);
      double[] end = run(dialect, job(chain.toArray(Segment[]::new))).at();
      assertEquals(at.x(), end[0], 0.6e-4, "errors add up");
      assertEquals(at.y(), end[1], 0.6e-4, "errors add up");
    }
  }

  @Test
  void theFeedIsWrittenWhenItChangesAndNotElse() {
    List<String> lines = words(PLAIN, new HandPlan(DemoPlates.sanderling(), 0, false).job());
    String last = "";
    for (String line : lines) {
      if (line.contains(" F")) {
        String feed = line.substring(line.indexOf(" F"));
        assertFalse(feed.equals(last), line);
        last = feed;
      }
      last = line.startsWith("G0 X") ? "" : last;
    }
    assertTrue(count(String.join("\n", lines), " F") < lines.size() / 3);
  }

  @Test
  void hostileTextStaysInItsComments() {
    List<String> texts = new ArrayList<>(HostileText.all());
    texts.addAll(
        List.of(
            "a) G0 Z-50 (b",
            "x\nG0 Z-50\ny",
            "; G0 Z-50",
            "MSG, hello",
            "! ~ ? $ % ^",
            "((((((",
            "word ".repeat(200),
            "x".repeat(2000)));
    for (Dialect dialect : Dialects.all()) {
      List<String> plain = words(dialect, named("heron", "window"));
      for (String text : texts) {
        GcodeJob job = named(text, text);
        assertEquals(plain, words(dialect, job), text);
        String program = text(dialect, job);
        for (String line : program.split("\r?\n")) {
          assertTrue(line.length() <= 100, line);
          assertFalse(line.matches("(?i).*(!|~|\\?|\\$|[(;] ?MSG,).*"), line);
        }
        run(dialect, job);
      }
    }
  }

  private static GcodeJob named(String title, String operation) {
    List<Operation> operations = new ArrayList<>();
    for (Operation each : new HandPlan(DemoPlates.sanderling(), 0, false).operations) {
      CutterTool tool = new CutterTool(operation, each.tool().kind(), each.tool().diameter(), 2);
      operations.add(new Operation(operation, tool, each.speed(), each.moves()));
    }
    About about = new About(title, "1f4e90ab", title);
    return new GcodeJob(about, title, List.of(title), HEIGHT, true, operations);
  }

  @Test
  void theHeadTellsNameRevisionUnitZeroStockToolAndCautions() {
    List<String> comments =
        run(PLAIN, new HandPlan(DemoPlates.sanderling(), 0, false).job()).comments;
    assertEquals(
        List.of(
            "Title: Heron, cut lines",
            "Revision: 1f4e90ab",
            "Unit: mm. Work zero: hub axis, upper face of the stock",
            "Note: stock 5.8 mm",
            "Tool: 3 mm end mill, diameter 3",
            "Clearance height 8, deepest -6",
            "Caution: Clamp the stock.",
            "Caution: Wear a dust mask - P2.",
            "Operation 1: H1"),
        comments.subList(0, 9));
  }

  @Test
  void theBytesAreTheSameInEveryCountry() {
    GcodeJob job = new HandPlan(DemoPlates.heron(), 0, true).job();
    Dialects.all().forEach(dialect -> Places.everywhere(() -> GcodeWriter.write(job, dialect)));
  }

  @Test
  void whatIsNoProgramIsRefused() {
    Line there = new Line(new Point(0, 0), new Point(5, 0));
    Line elsewhere = new Line(new Point(5, 0.1), new Point(9, 9));
    refused("starts at", job(there, elsewhere));
    Move.Travel travel = new Move.Travel(there.from());
    Move.Sink sink = new Move.Sink(there.from(), -1, 100);
    refused("z", job(MILL, 1000, List.of(travel, sink, new Move.Cut(there, -2, -2, 100))));
    refused("travel", job(MILL, 1000, List.of(sink)));
    refused("travel", job(MILL, 1000, List.of()));
    refused("speed", job(MILL, 0, List.of(travel)));
    refused("feed", job(MILL, 10, List.of(travel, new Move.Sink(there.from(), -1, 0.001))));
    CutterTool beam = new CutterTool("jet", CutterTool.Kind.BEAM, 1, 0);
    refused("beam", job(beam, 0, List.of(travel)));
    refused("nothing", new GcodeJob(CutDrawings.ABOUT, "x", List.of(), HEIGHT, false, List.of()));
  }

  private static void refused(String why, GcodeJob job) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> GcodeWriter.write(job, PLAIN))
            .getMessage();
    assertTrue(message.contains(why), message);
  }

  private static GcodeJob job(Segment... chain) {
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.Travel(chain[0].from()));
    moves.add(new Move.Sink(chain[0].from(), -1, 100));
    for (Segment segment : chain) {
      moves.add(new Move.Cut(segment, -1, -1, 400));
    }
    return job(MILL, 12000, moves);
  }

  private static GcodeJob job(CutterTool tool, double speed, List<Move> moves) {
    return new GcodeJob(
        CutDrawings.ABOUT,
        "hub axis",
        List.of(),
        HEIGHT,
        false,
        List.of(new Operation("path", tool, speed, moves)));
  }

  private static Rs274Interpreter run(Dialect dialect, GcodeJob job) {
    return new Rs274Interpreter(Dialects.beyond(dialect), 0, 0, 50)
        .run(GcodeWriter.write(job, dialect));
  }

  private static String text(Dialect dialect, GcodeJob job) {
    return new String(GcodeWriter.write(job, dialect), StandardCharsets.US_ASCII);
  }

  /** The lines without comments and numbers. */
  private static List<String> words(Dialect dialect, GcodeJob job) {
    return text(dialect, job)
        .lines()
        .map(line -> line.replaceAll("[(].*[)]|;.*|^N[0-9]+ ", "").strip())
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private static int count(String text, String word) {
    return text.split(word, -1).length - 1;
  }
}
