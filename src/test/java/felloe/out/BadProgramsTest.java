package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cutting.CutPlan;
import felloe.cutting.CutSetup;
import felloe.cutting.FeedTable;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.DemoPlates;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Good programs made bad, each of which the proof of the tests must refuse. */
class BadProgramsTest {

  private static final Plate PLATE = plate();
  private static final CutPlan PLAN = plan();
  private static final ProgramProof.Wanted WANTED = PlannedProgramsTest.wanted(PLAN);
  private static final List<String> GOOD =
      new String(
              GcodeWriter.write(PlannedProgramsTest.job(PLAN), Dialects.plain()),
              StandardCharsets.US_ASCII)
          .lines()
          .toList();

  /** A small plate with a window, a hole to drill and one to bore. */
  private static Plate plate() {
    Window window =
        new Window(
            "W1",
            WindowUse.OPEN,
            RandomShapes.roundedRectangle(30, 14, 4).moved(RigidTransform.shift(-10, 8)),
            Place.BUILT_IN);
    List<Hole> holes =
        List.of(
            new Hole("H1", HoleRole.OTHER, new Point(30, 20), 4, Place.BUILT_IN),
            new Hole("H2", HoleRole.OTHER, new Point(30, -20), 12, Place.BUILT_IN));
    return DemoPlates.named("Knot", List.of(window), holes);
  }

  private static CutPlan plan() {
    CutSetup setup = CutSetup.router(PLATE, 3, 2, FeedTable.standard());
    return CutPlan.of(PLATE, setup.with(new CutSetup.Tabs(3, 5, 1)));
  }

  private static List<String> faults(List<String> lines) {
    byte[] program = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.US_ASCII);
    return ProgramProof.of(program, Rs274Beyond.NOTHING, WANTED).faults;
  }

  private static void refused(String what, String why, List<String> lines) {
    List<String> faults = faults(lines);
    assertFalse(faults.isEmpty(), what + " passed");
    assertTrue(String.join("\n", faults).contains(why), what + ": " + faults);
  }

  private static List<String> each(UnaryOperator<String> change) {
    return GOOD.stream().map(change).toList();
  }

  private static int first(String operation) {
    for (int i = 0; i < GOOD.size(); i++) {
      if (GOOD.get(i).startsWith("(Operation") && GOOD.get(i).contains(operation)) {
        return i;
      }
    }
    throw new AssertionError("no " + operation);
  }

  /** The lines of an operation changed, the others as they are; null drops a line. */
  private static List<String> within(String operation, UnaryOperator<String> change) {
    List<String> lines = new ArrayList<>(GOOD.subList(0, first(operation)));
    int i = first(operation);
    do {
      String line = change.apply(GOOD.get(i));
      if (line != null) {
        lines.add(line);
      }
      i++;
    } while (i < GOOD.size() - 4 && !GOOD.get(i).startsWith("(Operation"));
    lines.addAll(GOOD.subList(i, GOOD.size()));
    return lines;
  }

  private static String numbers(String line, String letters, UnaryOperator<Double> change) {
    Pattern words = Pattern.compile("([" + letters + "])(-?[0-9.]+)");
    if (line.startsWith("(")) {
      return line;
    }
    return words
        .matcher(line)
        .replaceAll(
            (MatchResult word) ->
                word.group(1) + Numbers.fixed(change.apply(Double.valueOf(word.group(2))), 4));
  }

  @Test
  void theGoodOneIsGood() {
    assertEquals(List.of(), faults(GOOD));
  }

  @Test
  void theWrongSideOfTheLineIsRefused() {
    ProgramProof.Wanted wanted = new HandPlan(PLATE, 0, false).wanted(PLATE);
    for (double error : new double[] {-3, 3}) {
      byte[] program = GcodeWriter.write(new HandPlan(PLATE, error, false).job(), Dialects.plain());
      List<String> faults = ProgramProof.of(program, Rs274Beyond.NOTHING, wanted).faults;
      assertTrue(String.join("\n", faults).contains("gouges the plate by"), faults.toString());
      assertTrue(String.join("\n", faults).contains("stands at"), faults.toString());
    }
  }

  @Test
  void aPathOffByAFewHundredthsIsRefused() {
    ProgramProof.Wanted wanted = new HandPlan(PLATE, 0, false).wanted(PLATE);
    for (double error : new double[] {-0.05, 0.05, -0.012, 0.012}) {
      byte[] program = GcodeWriter.write(new HandPlan(PLATE, error, false).job(), Dialects.plain());
      List<String> faults = ProgramProof.of(program, Rs274Beyond.NOTHING, wanted).faults;
      assertTrue(String.join("\n", faults).contains("gouges"), error + ": " + faults);
      assertTrue(String.join("\n", faults).contains("stands at"), error + ": " + faults);
    }
  }

  @Test
  void aRadiusOffByFiveHundredthsInTheTextIsRefused() {
    // The bored hole: every arc of it about a circle 0.05 mm larger or smaller.
    for (double factor : new double[] {4.55 / 4.5, 4.45 / 4.5}) {
      List<String> lines = within("bore", line -> numbers(line, "XYIJ", v -> v)).stream().toList();
      assertEquals(GOOD, lines);
      List<String> bad =
          within(
              "bore",
              line ->
                  numbers(
                      numbers(
                          numbers(line, "X", x -> 30 + (x - 30) * factor),
                          "Y",
                          y -> -20 + (y + 20) * factor),
                      "IJ",
                      v -> v * factor));
      refused("radius times " + factor, factor > 1 ? "gouges" : "stands at", bad);
    }
  }

  @Test
  void swappedArcDirectionsAreRefused() {
    refused(
        "all arcs",
        "",
        each(
            line ->
                line.startsWith("G2 ")
                    ? "G3 " + line.substring(3)
                    : line.startsWith("G3 ") ? "G2 " + line.substring(3) : line));
    // One at a time: those along the finish line. A lead swapped only digs in the waste, and a
    // whole circle is the same circle.
    int tried = 0;
    for (int i = first("outline"); i < GOOD.size(); i++) {
      String line = GOOD.get(i);
      boolean lead = numbers(line, "IJ", v -> v).matches(".*[IJ]-?1[.]5000.*");
      if (line.matches("G[23] .*") && !lead) {
        List<String> bad = new ArrayList<>(GOOD);
        bad.set(i, (line.startsWith("G2") ? "G3" : "G2") + line.substring(2));
        refused("line " + (i + 1) + " " + line, "gouges", bad);
        tried++;
      }
    }
    assertTrue(tried >= 4, "tried " + tried);
  }

  @Test
  void aMissingPassIsRefused() {
    // The last pass: nothing goes below the one before.
    double bottom = PLAN.height().bottom();
    for (String operation : List.of("outline", "window W1", "bore")) {
      refused(
          "last pass of " + operation,
          "stands at",
          within(operation, line -> numbers(line, "Z", z -> z == bottom ? bottom + 0.5 : z)));
    }
    // The first passes: the cutter goes in deeper than it may.
    double step = PLAN.setup().depths().stepDown();
    refused(
        "first passes of the window",
        "takes too much",
        within(
            "window W1",
            line ->
                numbers(line, "Z", z -> z < 0 && z > bottom + 0.01 ? Math.min(z, -2 * step) : z)));
    refused("the window", "stands at", within("window W1", line -> null));
    refused(
        "the drilled hole",
        "stands at",
        within("drill", line -> line.startsWith("G98 ") ? null : line));
  }

  @Test
  void aSkippedTabIsRefused() {
    double top = PLAN.tabs().get(0).top();
    double bottom = PLAN.height().bottom();
    List<Integer> over = new ArrayList<>();
    for (int i = first("outline"); i < GOOD.size(); i++) {
      if (GOOD.get(i).contains("Z" + Numbers.fixed(top, 4))) {
        over.add(i);
      }
    }
    List<String> all = new ArrayList<>(GOOD);
    over.forEach(i -> all.set(i, numbers(all.get(i), "Z", z -> z == top ? bottom : z)));
    refused("all tabs", "tabs stand", all);
    refused(
        "all tabs too low",
        "no tab",
        each(line -> numbers(line, "Z", z -> z == top ? top - 0.3 : z)));
    refused(
        "all tabs too high",
        "above the tabs",
        each(line -> numbers(line, "Z", z -> z == top ? top + 0.3 : z)));
  }

  @Test
  void aWrongDepthIsRefused() {
    double bottom = PLAN.height().bottom();
    refused(
        "deep",
        "below the bottom",
        each(line -> numbers(line, "Z", z -> z == bottom ? z - 0.2 : z)));
    refused("shallow", "stands at", each(line -> numbers(line, "Z", z -> z < -4.5 ? -3.9 : z)));
  }

  @Test
  void travelThroughTheStockIsRefused() {
    refused(
        "low travel",
        "travels across",
        each(line -> line.equals("G0 Z10.0000") ? "G0 Z-1.0000" : line));
    refused(
        "fast fall", "falls fast", each(line -> line.equals("G0 Z2.0000") ? "G0 Z-2.0000" : line));
    refused(
        "no lift",
        "travels across",
        GOOD.stream().filter(line -> !line.equals("G0 Z10.0000")).toList());
    refused("cut at rapid", "", within("outline", line -> line.replaceFirst("^G1 X", "G0 X")));
  }

  @Test
  void aStraightPlungeIsRefused() {
    int sink = first("window W1");
    while (!GOOD.get(sink).startsWith("G1 Z")) {
      sink++;
    }
    List<String> bad = new ArrayList<>(GOOD);
    bad.set(sink, "G1 Z-5.0000 F100");
    refused("plunge", "plunges", bad);
  }

  @Test
  void aSpindleThatStandsOrNeverStopsIsRefused() {
    refused("no spindle", "standing", GOOD.stream().filter(l -> !l.startsWith("M3")).toList());
    refused("no stop", "the spindle turns", GOOD.stream().filter(l -> !l.equals("M5")).toList());
    refused("no pause", "pauses", GOOD.stream().filter(l -> !l.equals("M0")).toList());
    refused("no end", "does not end", GOOD.stream().filter(l -> !l.equals("M2")).toList());
    refused("incremental", "", each(line -> line.replace("G90", "G91")));
  }

  /**
   * Any arc left out is noticed. A line may be one of several in a row on one straight edge, and
   * then nothing is lost with it.
   */
  @Test
  void anArcLeftOutOfTheOutlineIsNoticed() {
    Predicate<String> counts = line -> line.matches("G[23] X.*");
    int noticed = 0;
    int tried = 0;
    for (int i = GOOD.size() - 40; i < GOOD.size() - 6; i++) {
      if (counts.test(GOOD.get(i))) {
        List<String> bad = new ArrayList<>(GOOD);
        bad.remove(i);
        tried++;
        noticed += faults(bad).isEmpty() ? 0 : 1;
      }
    }
    assertTrue(tried > 4 && noticed == tried, noticed + " of " + tried);
  }
}
