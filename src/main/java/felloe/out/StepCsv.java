package felloe.out;

import felloe.drilling.DrillStep;
import felloe.drilling.DrillingPlan;
import felloe.drilling.HoleGroup;
import felloe.geometry.Numbers;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The order of work as CSV after RFC 4180: a header line, one line a step, lines ended by CR LF,
 * UTF-8. Texts are made safe as in {@link HoleCsv}; a figure that there is none of is left blank.
 */
public final class StepCsv {

  private static final String HEADER =
      "group,holes,role,hole_mm,length_mm,least_mm,most_mm,step,stage,tool,tool_mm,turns_per_min,"
          + "setting_per_min,feed_mm_per_turn,seconds,words\r\n";

  private StepCsv() {}

  /** The file's bytes. */
  public static byte[] write(DrillingPlan plan) {
    StringBuilder table = new StringBuilder(HEADER);
    for (int i = 0; i < plan.groups().size(); i++) {
      HoleGroup group = plan.groups().get(i);
      for (int k = 0; k < group.steps().size(); k++) {
        row(i + 1, group, k + 1, group.steps().get(k), table);
      }
    }
    return table.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void row(int number, HoleGroup group, int step, DrillStep s, StringBuilder to) {
    to.append(number)
        .append(',')
        .append(HoleCsv.field(String.join(" ", group.labels())))
        .append(',')
        .append(HoleCsv.field(group.role().words()));
    for (double mm :
        new double[] {
          group.diameter(), group.length(), group.limits().least(), group.limits().most()
        }) {
      to.append(',').append(Numbers.fixed(mm, 3));
    }
    to.append(',')
        .append(step)
        .append(',')
        .append(s.stage().words())
        .append(',')
        .append(HoleCsv.field(s.tool()))
        .append(',')
        .append(figure(s.diameter(), 3))
        .append(',')
        .append(figure(s.turning().map(DrillStep.Turning::reckoned), 0))
        .append(',')
        .append(figure(s.turning().map(DrillStep.Turning::setting), 0))
        .append(',')
        .append(figure(s.turning().flatMap(DrillStep.Turning::feed), 3))
        .append(',')
        .append(figure(s.turning().flatMap(DrillStep.Turning::seconds), 1))
        .append(',')
        .append(HoleCsv.field(s.words()))
        .append("\r\n");
  }

  private static String figure(Optional<Double> value, int decimals) {
    return value.map(v -> Numbers.fixed(v, decimals)).orElse("");
  }
}
