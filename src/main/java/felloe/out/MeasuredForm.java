package felloe.out;

import felloe.drawing.TextWidth;
import felloe.drilling.DistanceCheck;
import felloe.drilling.DistanceLimits;
import felloe.drilling.DrillingPlan;
import felloe.drilling.SizeCheck;
import felloe.drilling.SizeLimits;
import felloe.geometry.Numbers;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A measured file (YAML) whose readings are still blank: what the drilling sheet asks for, row by
 * row in the same order and with the same numbers, to be typed in behind the colons.
 */
public final class MeasuredForm {

  /** A label with more characters gives way to its number. */
  private static final int LONGEST = 20;

  private final DrillingPlan plan;
  private final boolean counted;
  private final boolean plain;
  private final StringBuilder text = new StringBuilder();

  private MeasuredForm(DrillingPlan plan) {
    this.plan = plan;
    List<SizeCheck> sizes = plan.sizes();
    this.counted =
        IntStream.range(0, sizes.size()).allMatch(i -> sizes.get(i).hole().equals("H" + (i + 1)));
    this.plain =
        sizes.stream()
            .allMatch(
                size ->
                    size.hole().length() <= LONGEST
                        && size.hole().equals(TextWidth.shown(size.hole()).strip()));
  }

  /** Whether a plan has anything to measure: two holes at least. */
  public static boolean has(DrillingPlan plan) {
    return plan.sizes().size() > 1;
  }

  /**
   * The file's bytes.
   *
   * @throws IllegalArgumentException when there is nothing to measure
   */
  public static byte[] write(Plate plate, DrillingPlan plan) {
    if (!has(plan)) {
      throw new IllegalArgumentException("no holes to measure");
    }
    MeasuredForm form = new MeasuredForm(plan);
    form.head(plate);
    form.sizes();
    form.readings();
    return form.text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void head(Plate plate) {
    line("# Readings of " + TextWidth.shown(plate.title()) + ", as drilled. Millimetres.");
    line(
        "# Type each reading behind its colon; leave blank what was not measured. The numbers are");
    line("# those of the drilling sheet, with the least and the most that it should read.");
    if (plan.notMeasured() > 0) {
      line(
          "# "
              + plan.notMeasured()
              + " more hub holes are not in this form, since it takes "
              + plan.sizes().size()
              + " at most.");
    }
    line("plate: " + quoted(plate.name()));
    line("revision: " + quoted(plate.revision()));
    if (counted || !plain) {
      line("holes: " + plan.sizes().size());
    } else {
      line(
          "holes: ["
              + String.join(", ", plan.sizes().stream().map(s -> name(s.hole())).toList())
              + "]");
    }
    line("plus_minus: " + Numbers.brief(plan.plusMinus(), 3));
    line("");
  }

  private void sizes() {
    line("hole_diameter:");
    for (SizeCheck size : plan.sizes()) {
      SizeLimits limits = size.limits();
      String hint = plain ? "" : " (" + TextWidth.shown(size.hole()) + ")";
      line(
          "  "
              + name(size.hole())
              + ":   # "
              + size.number()
              + hint
              + ": "
              + span(limits.least(), limits.most()));
    }
    line("");
  }

  private void readings() {
    line("readings:");
    for (DistanceCheck check : plan.readings()) {
      DistanceLimits limits = check.limits();
      line(
          "  - {from: "
              + name(check.from())
              + ", to: "
              + name(check.to())
              + ", over: "
              + check.over()
              + ", reads: }   # "
              + check.number()
              + ": "
              + span(limits.least(), limits.most()));
    }
  }

  private static String span(double least, double most) {
    return Numbers.fixed(least, 2) + " to " + Numbers.fixed(most, 2);
  }

  /** What a hole is called in the file: its label, or its number where that would not be read. */
  private String name(String label) {
    if (plain) {
      return quoted(label);
    }
    for (SizeCheck size : plan.sizes()) {
      if (size.hole().equals(label)) {
        return quoted(Integer.toString(size.number()));
      }
    }
    throw new IllegalArgumentException("no such hole: " + label);
  }

  /** A plain word where YAML reads it as text, else in quotes. */
  private static String quoted(String word) {
    if (word.matches("[A-Za-z]+[0-9]+")) {
      return word;
    }
    return '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private void line(String words) {
    text.append(words).append('\n');
  }
}
