package felloe.report;

import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.laminate.NormalSample;
import felloe.laminate.Strip;
import felloe.laminate.StripMethod;
import felloe.laminate.TestedStrips;
import felloe.service.StripsOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** What broken strips tell of their laminate, told. */
public final class StripsReport {

  /** How the lower bound is found, in words. */
  public static final String BOUND =
      "mean less k standard deviations, above which 90 % of all strips lie with 95 % confidence, if"
          + " they scatter normally (one-sided tolerance limit, B-basis of MIL-HDBK-17)";

  /** Sentences that go with the figures. */
  public static final List<String> CAUTIONS =
      List.of(
          "Wear glasses, a mask and gloves when strips break: they splinter. Keep feet clear of"
              + " hung weights, and hang them a hand above the floor.",
          "Strips of one panel tell of that panel, at the warmth of the day. Another panel, a hot"
              + " cockpit, wet or old laminate may be weaker. They are for choosing a thickness,"
              + " not an approval: prove the finished plate off the car.");

  /** Spans that the standards take, in thicknesses: any laminate, and carbon (ISO 14125). */
  private static final double SHORT = 16;

  private static final double SHORT_FOR_CARBON = 40;

  /** A span that is a twentieth short of the standard's changes nothing that matters. */
  private static final double NEARLY = 0.95;

  private static final double SOFT = 500;
  private static final double STIFF = 300_000;

  private static final String VICE =
      "Jaws of a vice give a little, so the modulus reads low. Try it first with a steel strip:"
          + " it must give 200 to 210 GPa.";

  private StripsReport() {}

  /** The answer, told. */
  public static Report of(StripsOutcome outcome) {
    TestedStrips tested = outcome.tested();
    Telling told = new Telling();
    verdict(tested, told);
    notes(outcome).forEach(note -> told.say(note));
    told.head("All strips together");
    told.add(samples(tested));
    told.say("Lower bound: {}.", BOUND);
    told.head("Strip by strip; ratio is span over thickness");
    told.add(strips(tested));
    told.cautions(CAUTIONS);
    String bent =
        tested.strips().get(0).method() == StripMethod.THREE_POINT
            ? "bent on two supports"
            : "bent in a bench vice";
    return told.under(
        Phrase.of("{}, {}", Phrase.count(tested.strips().size(), "test strip"), bent));
  }

  private static void verdict(TestedStrips tested, Telling told) {
    Quantity modulus = gigapascals(tested.modulus().mean());
    if (tested.designStrength().isEmpty()) {
      told.verdict(
          Tone.CAUTION,
          "These strips carry no strength to design by; for stiffness take {}.",
          modulus);
    } else {
      told.verdict(
          Tone.WELL,
          "Design by {}, which strains the outer face by {}; for stiffness by {}.",
          megapascals(tested.designStrength().getAsDouble()),
          Quantity.percent(tested.designStrain().getAsDouble(), 2),
          modulus);
    }
  }

  private static Quantity megapascals(double value) {
    return Quantity.fixed(value, 0, "MPa");
  }

  private static Quantity gigapascals(double megapascals) {
    return Quantity.fixed(megapascals / 1000, 1, "GPa");
  }

  /** What all strips together tell, and in which unit. */
  private record All(String name, NormalSample of, DoubleFunction<Quantity> unit) {}

  private static Rows<All> samples(TestedStrips tested) {
    List<All> all = new ArrayList<>();
    tested.strength().ifPresent(s -> all.add(new All("strength", s, StripsReport::megapascals)));
    all.add(new All("modulus", tested.modulus(), StripsReport::gigapascals));
    return Rows.of(all)
        .words("of all", All::name)
        .figures("strips", one -> one.of().count())
        .figures("mean", one -> one.unit().apply(one.of().mean()))
        .figures("deviation", one -> deviation(one.of()))
        .figures("lowest", one -> one.unit().apply(one.of().least()))
        .words("true mean, 95 %", StripsReport::interval)
        .figures("k", one -> Cell.fixed(one.of().factor(), 3, ""))
        .figures("lower bound", StripsReport::lower);
  }

  private static Cell deviation(NormalSample sample) {
    return sample.count() == 1 ? Cell.NONE : Quantity.percent(sample.variation(), 1);
  }

  /** Of copies of one figure no bound is known. */
  private static Cell lower(All one) {
    boolean copies = one.of().count() > 1 && one.of().interval().isEmpty();
    return copies ? Cell.UNKNOWN : Cell.of(one.of().lower(), one.unit());
  }

  private static Optional<String> interval(All one) {
    return one.of()
        .interval()
        .map(
            i ->
                Phrase.of(
                    "{} to {}", one.unit().apply(i.from()).figure(), one.unit().apply(i.to())));
  }

  private static Rows<Strip> strips(TestedStrips tested) {
    return Rows.of(tested.strips())
        .words("strip", Strip::label)
        .fixed("width", "mm", 2, s -> s.width())
        .fixed("thick", "mm", 2, s -> s.thickness())
        .figures("span", "mm", s -> Quantity.brief(s.span(), 1, "mm"))
        .fixed("ratio", "", 1, s -> s.spanRatio())
        .figures("load", "N", s -> Quantity.brief(s.load(), 1, "N"))
        .figures("deflection", "mm", s -> Cell.fixed(s.deflection(), 2, "mm"))
        .figures("strength", "MPa", s -> s.broke() ? Cell.fixed(s.strength(), 0, "MPa") : "held")
        .figures("modulus", "GPa", s -> gigapascals(s.modulus()))
        .figures("strain", s -> Cell.of(s.strain(), strain -> Quantity.percent(strain, 2)));
  }

  /** What the maker should know of these strips. */
  public static List<String> notes(StripsOutcome outcome) {
    TestedStrips tested = outcome.tested();
    List<String> notes = new ArrayList<>();
    if (tested.strength().isEmpty()) {
      notes.add("No strip broke, so there is a modulus but no strength.");
    } else if (tested.designStrength().isEmpty()) {
      notes.add(
          "There is no strength to design by: too few strips broke, or they scatter too much."
              + " Break more; five is the least that ISO 14125 asks for.");
    }
    tested.worth().forEach(words -> notes.add(Phrase.sentence(words)));
    odd(tested.oddStrength(), "strength").ifPresent(notes::add);
    odd(tested.oddModulus(), "modulus").ifPresent(notes::add);
    long read = tested.strips().stream().filter(s -> !s.readings().isEmpty()).count();
    if (read > 0 && read < tested.strips().size()) {
      notes.add(
          "Some moduli come from readings, others from the deflection at the highest load, which"
              + " reads lower. Better give readings for all.");
    }
    boolean supports = tested.strips().get(0).method() == StripMethod.THREE_POINT;
    notes.addAll(supports ? spans(tested) : List.of(VICE));
    if (tested.strips().stream().anyMatch(Strip::bentFar)) {
      notes.add(
          supports
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

  private static List<String> spans(TestedStrips tested) {
    double shortest = tested.strips().stream().mapToDouble(Strip::spanRatio).min().orElseThrow();
    if (shortest < NEARLY * SHORT) {
      return List.of(
          "A span is shorter than 16 thicknesses: such a strip shears between its plies, and"
              + " reads too weak and too soft.");
    }
    return shortest < NEARLY * SHORT_FOR_CARBON
        ? List.of(
            "A span is shorter than 40 thicknesses, which ISO 14125 takes for carbon: shear makes"
                + " a carbon strip read some percent too soft. For glass it is long enough.")
        : List.of();
  }

  private static Optional<String> odd(Optional<Strip> strip, String what) {
    return strip.map(
        s ->
            Phrase.of(
                "Strip {} stands far off the others in {}. Look for a slip in measuring or a flaw"
                    + " in the strip; without one it stays in.",
                s.label(),
                what));
  }
}
