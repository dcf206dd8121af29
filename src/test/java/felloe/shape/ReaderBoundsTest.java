package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
    if (Boolean.getBoolean("tell")) System.out.println(seconds + " s " + complaints.stream().limit(3).toList() + complaints.size());
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
              double r = 2000 + i % 2 * 2;
              double angle = 2 * Math.PI * i / corners;
              return String.format(
                  Locale.ROOT,
                  "{at: [%.4f, %.4f], radius: %s}",
                  r * Math.cos(angle),
                  r * Math.sin(angle),
                  radius);
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

  @Test
  void twoThousandCornersThatAreAllTooRoundAreTold() {
    assertEquals(51, complaints(toothedOutline(50)).size());
  }

  @Test
  void manyWindowsOfManyLinesAreRefused() {
    complaints(ROUND + "windows:\n" + ("  - {path: '" + comb(9_000) + "'}\n").repeat(40));
  }

  @Test
  void manyWindowsOfOneEntryAreRefused() {
    complaints(ROUND + "windows:\n" + ("  - {circle: {diameter: 4}, mirror: true, places: [" + each(499, "[%d, 0], ") + "[0, 9]]}\n").repeat(20));
  }

  @Test
  void aThousandWindowsOnOneAnotherAreTold() {
    complaints(ROUND + "windows:\n" + "  - {circle: {diameter: 4}, at: [9, 9], mirror: true}\n".repeat(500));
  }

  @Test
  void longWindowsOnOneAnotherAreTold() {
    complaints(ROUND + "windows:\n" + ("  - {path: '" + comb(9_000) + "'}\n").repeat(10));
  }

  @Test
  void aThousandNestedWindowsAreTold() {
    complaints(ROUND + "windows:\n" + each(500, "  - {four-sided: {width: 1%1$03d, height: 1%1$03d, radius: 5}}\n"));
  }

  @Test
  void twoThousandHolesOnOneAnotherAreTold() {
    complaints(ROUND + "holes:\n" + "  - {diameter: 4, arc: {radius: 100, from: 0, to: 360, count: 200}}\n".repeat(20));
  }

  @Test
  void manyRowsAlongALongOutlineAreRead() {
    complaints(toothedOutline(0.1) + "holes:\n" + each(500, "  - {diameter: 1, edge: {inset: %d.5, from: 12, to: 12, count: 4}}\n"));
  }

  @Test
  void derivedWindowsInALongOutlineAreRead() {
    complaints(toothedOutline(0.1) + "windows:\n" + ("  - derived: {rim-width: 100, hub-disc: 900, radius: 9, spokes: [" + each(59, "{clock: %d.1, hub-width: 20, rim-width: 20}, ".replace("%d.1", "0.2%d")) + "{clock: 6, hub-width: 20, rim-width: 20}]}\n").repeat(8));
  }
}
