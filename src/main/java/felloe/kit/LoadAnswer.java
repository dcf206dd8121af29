package felloe.kit;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.load.CaseField;
import felloe.load.LoadPlan;
import felloe.load.ScrewUse;
import felloe.load.Strength;
import felloe.load.Support;
import felloe.out.JsonWriter;
import felloe.plate.Plate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a plate does under load, for every face. An estimate to choose by.
 *
 * @param plan mesh, fields and all that was reckoned
 * @param screws the most that each hub screw carries
 * @param seconds that it took
 * @param files what was written
 */
public record LoadAnswer(LoadPlan plan, List<ScrewUse> screws, double seconds, List<Path> files) {

  static final List<String> CAUTIONS =
      List.of(
          "An estimate to choose by, not an approval: a thin, flat, flawless plate up to its first"
              + " failure. It knows nothing of voids, damage, fatigue, heat, crashes, or how well"
              + " the plate is made.",
          "Before use break test strips of the same stock, and load the finished wheel, off the"
              + " car and bolted to its hub, harder than hands will; stand clear of it while it is"
              + " loaded, wear eye protection, and look for cracks and noise.",
          "For closed-course use at the builder's own judgement; not for public roads. Event"
              + " rules, local codes and a qualified person have the last word.");

  /** Copies the lists. */
  public LoadAnswer {
    screws = List.copyOf(screws);
    files = List.copyOf(files);
  }

  static LoadAnswer of(LoadPlan plan, List<ScrewUse> screws, double seconds) {
    return new LoadAnswer(plan, screws, seconds, List.of());
  }

  LoadAnswer with(List<Path> written) {
    return new LoadAnswer(plan, screws, seconds, written);
  }

  /** The plate. */
  public Plate plate() {
    return plan.plate();
  }

  /**
   * A case.
   *
   * @param name short name
   * @param title in words
   * @param forces in words
   * @param atLoad how far the hands move it, mm
   * @param peak the largest movement, mm
   * @param stress at the worst place, MPa
   * @param strain there
   * @param measure what the stress is, in words
   * @param at where that is
   * @param face {@code front}, {@code back}, or {@code ply 3}
   * @param factor on the load
   * @param margin see {@link LoadPlan.Judged#margin}
   * @param stiffness N/mm where one hand holds
   * @param fall whether it is a fall, which is told and not judged
   * @param met whether it is as wanted
   * @param warnings where the model ends
   */
  public record Row(
      String name,
      String title,
      String forces,
      double atLoad,
      double peak,
      double stress,
      double strain,
      String measure,
      Point at,
      String face,
      double factor,
      double margin,
      OptionalDouble stiffness,
      boolean fall,
      boolean met,
      List<String> warnings) {}

  /** The cases, in order. */
  public List<Row> rows() {
    return plan.cases().stream().map(this::row).toList();
  }

  private Row row(LoadPlan.Judged one) {
    CaseField field = one.field();
    Strength.Worst worst = field.worst();
    return new Row(
        field.load().name(),
        field.load().title(),
        forces(field),
        field.atLoad(),
        field.peakDeflection(),
        worst.stress(),
        worst.strain(),
        worst.measure(),
        field.worstAt(),
        side(worst),
        one.factor(),
        one.margin(),
        one.stiffness(),
        one.fall().isPresent(),
        one.met(),
        warnings(one));
  }

  private String side(Strength.Worst worst) {
    String side = worst.z() >= 0 ? "front" : "back";
    return plies() ? "ply " + worst.ply() : side;
  }

  /** Whether the plate is laid up of plies. */
  public boolean plies() {
    return plan.gauge().plies().isPresent();
  }

  private static String forces(CaseField field) {
    List<String> words = new ArrayList<>();
    for (var f : field.load().forces()) {
      words.add(
          "["
              + Numbers.brief(f.x(), 0)
              + ", "
              + Numbers.brief(f.y(), 0)
              + ", "
              + Numbers.brief(f.z(), 0)
              + "] N at ("
              + Numbers.brief(f.at().x(), 1)
              + ", "
              + Numbers.brief(f.at().y(), 1)
              + ")");
    }
    return String.join("; ", words);
  }

  /** Where the model ends in a case, in sentences. */
  List<String> warnings(LoadPlan.Judged one) {
    List<String> warnings = new ArrayList<>();
    CaseField field = one.field();
    double thickness = plan.gauge().thickness();
    if (field.peakDeflection() > thickness / 2) {
      warnings.add(
          "it moves by more than half its thickness: it stretches then, and moves less than"
              + " told");
    }
    if (one.fall().isPresent() && one.margin() < 0) {
      warnings.add(
          "such a fall may damage it; thickness hardly helps, so this is told and not judged. After"
              + " any fall look for cracks and whitening, tap it and listen, and load it anew");
    }
    return warnings;
  }

  /** How the hub holds it, in a sentence. */
  public String held() {
    return plan.hold().why();
  }

  /** What was taken for granted of that. */
  public List<String> assumptions() {
    return plan.hold().assumptions();
  }

  /** Whether the plate is taken as clamped. */
  public boolean clamped() {
    return plan.hold().support() instanceof Support.Clamped;
  }

  /** Thickness that was reckoned with, mm. */
  public double thickness() {
    return plan.gauge().thickness();
  }

  /** Its plies; empty for a sheet. */
  public Optional<Integer> plyCount() {
    return plan.gauge().plies().isPresent()
        ? Optional.of(plan.gauge().plies().getAsInt())
        : Optional.empty();
  }

  /** Whether all is as wanted. */
  public boolean met() {
    return plan.met();
  }

  /** The least margin that is wanted. */
  public double wantedMargin() {
    return plan.wanted().margin();
  }

  /** The most deflection that is wanted, mm. */
  public Optional<Double> wantedDeflection() {
    return plan.wanted().deflection();
  }

  /** Cases that there is no place for, in sentences. */
  public List<String> leftOut() {
    return plan.leftOut();
  }

  /**
   * A thickness that was tried.
   *
   * @param plies of a lay-up
   * @param thickness mm
   * @param mass g
   * @param cost where prices are known
   * @param margin of the worst case
   * @param marginCase its name
   * @param deflection the most at a hand, mm
   * @param deflectionCase its name
   * @param met whether it is as wanted
   * @param own whether it is the plate's own
   */
  public record Tried(
      Optional<Integer> plies,
      double thickness,
      double mass,
      OptionalDouble cost,
      double margin,
      String marginCase,
      double deflection,
      String deflectionCase,
      boolean met,
      boolean own) {

    static Tried of(LoadPlan.Trial t) {
      var plies = t.gauge().plies();
      return new Tried(
          plies.isPresent() ? Optional.of(plies.getAsInt()) : Optional.empty(),
          t.gauge().thickness(),
          t.gauge().mass(),
          t.gauge().cost(),
          t.margin(),
          t.marginCase(),
          t.deflection(),
          t.deflectionCase(),
          t.met(),
          t.own());
    }
  }

  /** The thicknesses that were tried, thinnest first. */
  public List<Tried> tried() {
    return plan.trials().stream().map(Tried::of).toList();
  }

  /** The thinnest that does all that is wanted. */
  public Optional<Tried> least() {
    return plan.least().map(Tried::of);
  }

  /** What prices are in; empty where none is named. */
  public String currency() {
    return plan.plate().stock().layup().prices().currency().orElse("");
  }

  /**
   * A hub screw.
   *
   * @param label of its hole
   * @param tension the most, N
   * @param tensionCase in which case
   * @param shear the most, N
   * @param shearCase in which case
   * @param clampRatio least clamp over tension
   * @param bearing MPa
   * @param bearingLimit MPa
   */
  public record ScrewRow(
      String label,
      double tension,
      String tensionCase,
      double shear,
      String shearCase,
      Optional<Double> clampRatio,
      Optional<Double> bearing,
      double bearingLimit) {}

  /** The hub screws. */
  public List<ScrewRow> screwRows() {
    return screws.stream()
        .map(
            s ->
                new ScrewRow(
                    s.label(),
                    s.tension(),
                    s.tensionCase(),
                    s.shear(),
                    s.shearCase(),
                    s.clampRatio(),
                    s.bearing(),
                    s.bearingLimit()))
        .toList();
  }

  /** What the answer rests on: name, value with unit, basis. */
  public List<List<String>> figures() {
    return plan.figures().stream()
        .map(
            f ->
                List.of(
                    f.name(),
                    rounded(f.value()) + (f.unit().isEmpty() ? "" : " " + f.unit()),
                    f.basis()))
        .toList();
  }

  /** With no more digits than anybody knows. */
  private static String rounded(double value) {
    double size = Math.abs(value);
    return Numbers.brief(value, size >= 100 ? 0 : size >= 10 ? 1 : 3);
  }

  /** What the maker should know. */
  public List<String> notes() {
    return plan.notes();
  }

  /** Triangles of the last mesh. */
  public int triangles() {
    return plan.result().mesh().triangles();
  }

  /** The smallest angle of a triangle of the last mesh, degrees; 60 is best. */
  public double leastAngle() {
    return plan.result().mesh().quality().leastAngle();
  }

  /** Unknowns that were solved for. */
  public int unknowns() {
    return plan.result().unknowns();
  }

  /** The largest change of a deflection from the coarser mesh, as a part of it; 0 unknown. */
  public double deflectionChange() {
    return plan.result().deflectionChange();
  }

  /** The same of a highest use, of the cases that come near the worst. */
  public double useChange() {
    return plan.result().useChange();
  }

  /** Whether the figures no longer changed. */
  public boolean settled() {
    return plan.result().settled();
  }

  /** What the plate must be changed to, in a sentence; empty when all is as wanted. */
  public Optional<String> cure() {
    if (met()) {
      return Optional.empty();
    }
    Optional<Tried> least = least();
    if (least.isPresent()) {
      Tried t = least.get();
      return Optional.of(
          "make it "
              + t.plies().map(n -> n + " plies, ").orElse("")
              + Numbers.fixed(t.thickness(), t.plies().isPresent() ? 2 : 1)
              + " mm thick, the least of those tried that does; or widen rim and spokes");
    }
    return Optional.of(
        tried().size() > 1
            ? "none of the thicknesses tried does; widen rim and spokes, give the windows larger"
                + " corners, or try thicker with --thicknesses"
            : "make it thicker, or widen rim and spokes");
  }

  /** Sentences that go with it wherever it is shown. */
  public List<String> cautions() {
    return CAUTIONS;
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return JsonWriter.text(LoadJson.of(this));
  }
}
