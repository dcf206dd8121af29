package felloe.kit;

import felloe.laminate.NormalSample;
import felloe.laminate.Strip;
import felloe.laminate.StripMethod;
import felloe.laminate.TestedStrips;
import felloe.out.JsonWriter;
import felloe.yaml.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What tested strips tell of their laminate.
 *
 * @param method how they were bent, as the file writes it
 * @param strips in the order of the file
 * @param strength of those that broke, MPa; empty when none did
 * @param modulus of all, MPa
 * @param designStrength to design by, MPa; empty when the strips do not carry one
 * @param designStrain of the outer face at that strength
 * @param bound how the lower bound is found, in words
 * @param notes what the maker should know of these strips
 * @param cautions sentences that go with the figures
 */
public record StripsAnswer(
    String method,
    List<Row> strips,
    Optional<Scatter> strength,
    Scatter modulus,
    Optional<Double> designStrength,
    Optional<Double> designStrain,
    String bound,
    List<String> notes,
    List<String> cautions) {

  /** Spans that the standards take, in thicknesses: any laminate, and carbon (ISO 14125). */
  private static final double SHORT = 16;

  private static final double SHORT_FOR_CARBON = 40;

  /** A span that is a twentieth short of the standard's changes nothing that matters. */
  private static final double NEARLY = 0.95;

  /** Fewest strips of ISO 14125. */
  private static final int FEW = 5;

  private static final double SOFT = 500;
  private static final double STIFF = 300_000;

  private static final String BOUND =
      "mean less k standard deviations, above which 90 % of all strips lie with 95 % confidence, if"
          + " they scatter normally (one-sided tolerance limit, B-basis of MIL-HDBK-17)";

  private static final List<String> CAUTIONS =
      List.of(
          "Wear glasses, a mask and gloves when strips break: they splinter. Keep feet clear of"
              + " hung weights, and hang them a hand above the floor.",
          "Strips of one panel tell of that panel, at the warmth of the day. Another panel, a hot"
              + " cockpit, wet or old laminate may be weaker. They are for choosing a thickness,"
              + " not an approval: prove the finished plate off the car.");

  /** Copies the lists. */
  public StripsAnswer {
    strips = List.copyOf(strips);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /**
   * A strip.
   *
   * @param label what is written on it
   * @param width mm
   * @param thickness mm
   * @param span mm
   * @param load N
   * @param deflection mm, where it was read
   * @param broke whether it broke
   * @param strength MPa; empty when it did not break
   * @param modulus MPa
   * @param strain of the outer face under the load
   */
  public record Row(
      String label,
      double width,
      double thickness,
      double span,
      double load,
      Optional<Double> deflection,
      boolean broke,
      Optional<Double> strength,
      double modulus,
      Optional<Double> strain) {
    static Row of(Strip s) {
      return new Row(
          s.label(),
          s.width(),
          s.thickness(),
          s.span(),
          s.load(),
          maybe(s.deflection()),
          s.broke(),
          maybe(s.strength()),
          s.modulus(),
          maybe(s.strain()));
    }

    /** Span over thickness. */
    public double spanRatio() {
      return span / thickness;
    }
  }

  /**
   * How figures scatter, MPa.
   *
   * @param count of strips
   * @param mean of them
   * @param deviation standard deviation
   * @param variation deviation over mean
   * @param least the lowest
   * @param from lower end of where the true mean lies with 95 % confidence
   * @param to its upper end
   * @param factor k
   * @param lower the lower bound
   */
  public record Scatter(
      int count,
      double mean,
      double deviation,
      double variation,
      double least,
      Optional<Double> from,
      Optional<Double> to,
      Optional<Double> factor,
      Optional<Double> lower) {
    static Scatter of(NormalSample s) {
      return new Scatter(
          s.count(),
          s.mean(),
          s.deviation(),
          s.variation(),
          s.least(),
          s.interval().map(NormalSample.Interval::from),
          s.interval().map(NormalSample.Interval::to),
          maybe(s.factor()),
          maybe(s.lower()));
    }
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return JsonWriter.text(StripsJson.of(this));
  }

  static StripsAnswer of(TestedStrips tested) {
    return new StripsAnswer(
        Entry.nameOf(tested.strips().get(0).method()),
        tested.strips().stream().map(Row::of).toList(),
        tested.strength().map(Scatter::of),
        Scatter.of(tested.modulus()),
        maybe(tested.designStrength()),
        maybe(tested.designStrain()),
        BOUND,
        notes(tested),
        CAUTIONS);
  }

  private static List<String> notes(TestedStrips tested) {
    List<String> notes = new ArrayList<>();
    if (tested.strength().isEmpty()) {
      notes.add("No strip broke, so there is a modulus but no strength.");
    } else if (tested.designStrength().isEmpty()) {
      notes.add(
          "There is no strength to design by: too few strips broke, or they scatter too much."
              + " Break more; five is the least that ISO 14125 asks for.");
    } else if (tested.strength().get().count() < FEW) {
      notes.add(
          "Fewer than five strips broke, so the lower bound lies far down. Each more strip raises"
              + " it.");
    }
    tested.oddStrength().ifPresent(strip -> notes.add(odd(strip, "strength")));
    tested.oddModulus().ifPresent(strip -> notes.add(odd(strip, "modulus")));
    long read = tested.strips().stream().filter(s -> !s.readings().isEmpty()).count();
    if (read > 0 && read < tested.strips().size()) {
      notes.add(
          "Some moduli come from readings, others from the deflection at the highest load, which"
              + " reads lower. Better give readings for all.");
    }
    double shortest = tested.strips().stream().mapToDouble(Strip::spanRatio).min().orElseThrow();
    if (tested.strips().get(0).method() == StripMethod.THREE_POINT) {
      if (shortest < NEARLY * SHORT) {
        notes.add(
            "A span is shorter than 16 thicknesses: such a strip shears between its plies, and"
                + " reads too weak and too soft.");
      } else if (shortest < NEARLY * SHORT_FOR_CARBON) {
        notes.add(
            "A span is shorter than 40 thicknesses, which ISO 14125 takes for carbon: shear makes"
                + " a carbon strip read some percent too soft. For glass it is long enough.");
      }
    } else {
      notes.add(
          "Jaws of a vice give a little, so the modulus reads low. Try it first with a steel strip:"
              + " it must give 200 to 210 GPa.");
    }
    if (tested.strips().stream().anyMatch(Strip::bentFar)) {
      notes.add(
          tested.strips().get(0).method() == StripMethod.THREE_POINT
              ? "A strip was bent by more than a tenth of its span; its strength and strain are"
                  + " corrected for that, its modulus from the load at break is not."
              : "A strip was bent by more than a tenth of its span: the weight came nearer to the"
                  + " vice, and strength reads too high. Clamp it shorter.");
    }
    if (tested.strips().stream().anyMatch(s -> s.modulus() < SOFT || s.modulus() > STIFF)) {
      notes.add(
          "A modulus is that of no laminate. Check thickness, span and the units of load and"
              + " deflection.");
    }
    return notes;
  }

  private static String odd(Strip strip, String what) {
    return "Strip "
        + strip.label()
        + " stands far off the others in "
        + what
        + ". Look for a slip in measuring or a flaw in the strip; without one it stays in.";
  }

  private static Optional<Double> maybe(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
