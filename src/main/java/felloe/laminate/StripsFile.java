package felloe.laminate;

import felloe.geometry.Numbers;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads what was written down of test strips.
 *
 * <pre>{@code
 * method: three-point        # or bench-vice
 * span: 160                  # for all strips that do not say it themselves
 * strips:
 *   - {label: T1, width: 15.1, thickness: [4.02, 4.05, 4.0], load: 612 N, deflection: 7.9}
 *   - {label: T2, width: 15.0, thickness: 4.01, load: 590 N,
 *      readings: [[50 N, 0.6], [100 N, 1.25], [150 N, 1.86]]}
 * }</pre>
 */
public final class StripsFile {

  private static final int MOST = 1000;

  /** A strip that is so much thicker at one place than at another is none. */
  private static final double ONE_STRIP = 1.5;

  private static final int MOST_READINGS = 1000;

  // What no laminate of fibre and resin has, MPa: common practice.
  private static final double LEAST_MODULUS = 2_000;
  private static final double MOST_MODULUS = 300_000;
  private static final double LEAST_STRENGTH = 20;
  private static final double MOST_STRENGTH = 3_000;

  private static final String SLIP =
      "kilograms written as newtons are a factor of 9.8, centimetres one of 10: write the unit,"
          + " such as 61 kg or 612 N, and measure thickness again, which counts three times";

  private StripsFile() {}

  /**
   * Reads one.
   *
   * @throws felloe.plate.BadInput with every problem of the file
   */
  public static TestedStrips read(YamlTree tree) {
    Problems problems = new Problems();
    Fields f = tree.fields(problems);
    StripMethod method = f.oneOf("method", StripMethod.class).or(StripMethod.THREE_POINT);
    OptionalDouble span = span(f.entry("span"));
    Set<String> labels = new HashSet<>();
    List<Strip> strips = new ArrayList<>();
    List<Entry> items = f.list("strips").atLeast(1).atMost(MOST).entries();
    for (int i = 0; i < items.size(); i++) {
      Fields one = items.get(i).mapping().required();
      String label = one.text("label").or("" + (i + 1));
      if (!labels.add(label)) {
        one.problem("label", "is on two strips", "write another one");
      }
      strip(one, label, method, f.has("span"), span).ifPresent(strips::add);
    }
    f.done();
    problems.throwIfAny();
    return TestedStrips.of(strips);
  }

  private static Optional<Strip> strip(
      Fields f, String label, StripMethod method, boolean shared, OptionalDouble sharedSpan) {
    double width = mean(f.entry("width"), 0.5, 1000);
    double thickness = mean(f.entry("thickness"), 0.05, 100);
    double span;
    if (shared && !f.has("span")) {
      span = sharedSpan.orElse(Double.NaN);
    } else {
      span = span(f.entry("span")).orElse(Double.NaN);
      if (!f.has("span")) {
        f.length("span").required();
      }
    }
    if (span < 4 * thickness) {
      f.problem(
          f.has("span") ? "span" : "thickness",
          "makes the span less than four thicknesses",
          "such a strip shears and does not bend; take 16 thicknesses at least, of carbon 40");
    }
    double load = f.force("load").atLeast(0.001).required();
    OptionalDouble deflection = f.length("deflection").atLeast(0.001).optional();
    List<Strip.Reading> readings = readings(f.entry("readings"));
    boolean broke = f.bool("broke").or(true);
    if (!f.has("deflection") && !f.has("readings")) {
      f.problem(
          "must have 'deflection', or 'readings'",
          "add the deflection under the load, in mm; or readings: [[50 N, 0.6], [100 N, 1.2]]");
    }
    if (deflection.isPresent() && deflection.getAsDouble() > span) {
      f.problem("deflection", "is more than the span of " + Numbers.brief(span, 3) + " mm", "");
    }
    boolean whole = !Double.isNaN(width + thickness + span + load);
    if (!f.done() || !whole) {
      return Optional.empty();
    }
    Strip strip =
        new Strip(label, method, width, thickness, span, load, deflection, readings, broke);
    return possible(f, strip) ? Optional.of(strip) : Optional.empty();
  }

  /** Whether fibre and resin can be so stiff and so strong at all. */
  private static boolean possible(Fields f, Strip strip) {
    double modulus = strip.modulus();
    double strength = strip.strength().orElse(LEAST_STRENGTH);
    if (modulus < LEAST_MODULUS || modulus > MOST_MODULUS) {
      f.problem(
          f.has("readings") ? "readings" : "deflection",
          "comes to a modulus of "
              + Numbers.brief(modulus / 1000, 2)
              + " GPa, and no laminate of fibre and resin has less than 2 or more than 300 GPa",
          SLIP);
      return false;
    }
    if (strength < LEAST_STRENGTH || strength > MOST_STRENGTH) {
      f.problem(
          "load",
          "comes to a strength of "
              + Numbers.brief(strength, 1)
              + " MPa, and no laminate of fibre and resin has less than 20 or more than 3000 MPa",
          SLIP);
      return false;
    }
    return true;
  }

  private static OptionalDouble span(Entry entry) {
    return entry.length().atLeast(1).atMost(5000).optional();
  }

  /** One figure, or the mean of a list of them. */
  private static double mean(Entry entry, double least, double most) {
    if (entry.kind() != Entry.Kind.LIST) {
      return entry.length().between(least, most).required();
    }
    double sum = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    List<Entry> items = entry.list().atLeast(1).atMost(100).entries();
    for (Entry item : items) {
      double one = item.length().between(least, most).required();
      sum += one;
      low = Math.min(low, one);
      high = Math.max(high, one);
    }
    if (high > ONE_STRIP * low) {
      entry.problem(
          "must be readings of one strip, but they go from "
              + Numbers.brief(low, 3)
              + " to "
              + Numbers.brief(high, 3)
              + " mm",
          "measure it again; a decimal comma must be a point");
    }
    return items.isEmpty() ? Double.NaN : sum / items.size();
  }

  private static List<Strip.Reading> readings(Entry entry) {
    List<Strip.Reading> readings = new ArrayList<>();
    if (!entry.present()) {
      return readings;
    }
    Strip.Reading last = null;
    for (Entry item : entry.list().atLeast(2).atMost(MOST_READINGS).entries()) {
      List<Entry> pair = item.list().exactly(2).entries();
      if (pair.size() == 2) {
        double load = pair.get(0).force().notNegative().required();
        double deflection = pair.get(1).length().notNegative().required();
        if (!Double.isNaN(load + deflection)) {
          Strip.Reading here = new Strip.Reading(load, deflection);
          if (last != null
              && !(here.load() > last.load() && here.deflection() > last.deflection())) {
            item.problem(
                "must be more than the reading before it, load and deflection both",
                "write [load, deflection] as they rose");
          }
          last = here;
          readings.add(here);
        }
      }
    }
    return readings;
  }
}
