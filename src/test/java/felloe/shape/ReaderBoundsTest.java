package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** However large and wrong a shape file is, its reader answers within seconds. */
class ReaderBoundsTest {

  /** Of the processor, so that a busy machine does not matter. */
  private static final double MOST_SECONDS = 12;

  private static final String STOCK = "stock: {material: birch-plywood, thickness: 9}\n";
  private static final String ROUND = "felloe: 1\noutline:\n  round: {diameter: 5000}\n";

  private static List<String> complaints(String text) {
    long start = cpu();
    List<String> complaints = Corpus.complaints(text + STOCK);
    double seconds = (cpu() - start) / 1e9;
    assertTrue(seconds < MOST_SECONDS, seconds + " s");
    return complaints;
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static String each(int count, String format) {
    return IntStream.range(0, count)
        .mapToObj(i -> String.format(Locale.ROOT, format, i))
        .collect(Collectors.joining());
  }

  /** A circle of teeth. */
  private static String teeth(int corners, double radius) {
    return IntStream.range(0, corners)
        .mapToObj(
            i -> {
              Point at = Point.polar(2000 + i % 2 * 2, 2 * Math.PI * i / corners);
              return String.format(
                  Locale.ROOT, "{at: [%.4f, %.4f], radius: %s}", at.x(), at.y(), radius);
            })
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private static String toothedOutline(double radius) {
    return "felloe: 1\noutline:\n  points: {corners: " + teeth(2000, radius) + "}\n";
  }

  /** A comb of so many lines, w wide. */
  private static String comb(int lines) {
    return "M 0,0 " + "h .1 v -1 h .1 v 1 ".repeat(lines / 4) + "v 9 h -" + (lines / 20.0) + " Z";
  }

  private static void told(String part, String text) {
    List<String> complaints = complaints(text);
    assertTrue(complaints.stream().anyMatch(c -> c.contains(part)), complaints.get(0));
    assertTrue(complaints.size() <= 51, complaints.size() + " lines");
  }

  @Test
  void twoThousandCornersThatAreAllTooRoundAreTold() {
    told("'50 mm' must be at most 20.84", toothedOutline(50));
  }

  @Test
  void manyWindowsOfManyLinesAreRefused() {
    String comb = "  - {path: '" + comb(2_900) + "'}\n";
    told(
        "makes windows of more than 20000 lines and arcs in all",
        ROUND + "windows:\n" + comb.repeat(40));
  }

  @Test
  void manyWindowsOfFewEntriesAreRefused() {
    String row =
        "  - {circle: {diameter: 4}, mirror: true, places: ["
            + each(499, "[%d, 9], ")
            + "[0, 9]]}\n";
    told("makes more than 1000 windows in all", ROUND + "windows:\n" + row.repeat(20));
  }

  @Test
  void aThousandWindowsOnOneAnotherAreTold() {
    String one = "  - {circle: {diameter: 4}, at: [9, 9], mirror: true}\n";
    told("window W3: lies exactly on window W1", ROUND + "windows:\n" + one.repeat(500));
  }

  @Test
  void longWindowsOnOneAnotherAreTold() {
    String comb = "  - {path: '" + comb(2_900) + "'}\n";
    told("window W2: lies exactly on window W1", ROUND + "windows:\n" + comb.repeat(5));
  }

  @Test
  void nestedWindowsAreTold() {
    String windows = each(500, "  - {rectangle: {width: 1%1$03d, height: 1%1$03d, radius: 5}}\n");
    told("window W2: lies round window W1", ROUND + "windows:\n" + windows);
  }

  @Test
  void holesOnOneAnotherAreTold() {
    String row = "  - {diameter: 4, arc: {radius: 100, from: 0, to: 360, count: 200}}\n";
    told("hole D2: reaches 0.86 mm into hole D1", ROUND + "holes:\n" + row.repeat(10));
    told("makes more than 2000 holes in all", ROUND + "holes:\n" + row.repeat(20));
  }

  @Test
  void manyRowsAlongALongOutlineAreTold() {
    String rows = each(500, "  - {diameter: 1, edge: {inset: %d.5, from: 12, to: 12, count: 4}}\n");
    told("is one inset too many", toothedOutline(0.1) + "holes:\n" + rows);
  }

  @Test
  void derivedWindowsInALongOutlineAreTold() {
    String spokes = each(60, "{clock: 0.2%d, hub_width: 20, rim_width: 20}, ");
    String rim =
        "  - derived: {rim_width: 100, hub_disc: 900, radius: 9, spokes: [" + spokes + "]}\n";
    told("entries of derived windows", toothedOutline(0.1) + "windows:\n" + rim.repeat(8));
  }
}
