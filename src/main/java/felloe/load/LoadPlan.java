package felloe.load;

import felloe.geometry.Region;
import felloe.joints.ScrewDemand;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.LoadWish;
import felloe.plate.Plate;
import felloe.plate.Requested;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;

/**
 * What a plate does under its load cases, and what other thicknesses would do. An estimate.
 *
 * @param plate the plate
 * @param gauge as the shape file has it
 * @param hold how the hub holds it
 * @param result mesh and fields; those of a fall under the force that the fall comes to
 * @param cases each case, in the order of the fields
 * @param leftOut usual cases that there is no place for
 * @param wanted what is wanted
 * @param trials other thicknesses, and this one; empty when none were asked for
 * @param figures what the answer rests on
 * @param notes what the maker should know
 */
public record LoadPlan(
    Plate plate,
    Gauge gauge,
    HubHold hold,
    LoadResult result,
    List<Judged> cases,
    List<String> leftOut,
    Wanted wanted,
    List<Trial> trials,
    List<SourcedFigure> figures,
    List<String> notes) {

  /**
   * As long as a maker waits: 1 % of deflections, 5 % of highest uses, three meshes; nodes for a
   * second mesh of a plate with a display and a dozen buttons, in half a gigabyte.
   */
  private static final LoadStudy.Patience PATIENCE = new LoadStudy.Patience(0.01, 0.05, 3, 20_000);

  /** Copies the lists. */
  public LoadPlan {
    cases = List.copyOf(cases);
    leftOut = List.copyOf(leftOut);
    trials = List.copyOf(trials);
    figures = List.copyOf(figures);
    notes = List.copyOf(notes);
  }

  /**
   * What is wanted of a plate.
   *
   * @param margin the least margin
   * @param deflection the most that hands may move it, mm
   */
  public record Wanted(double margin, Optional<Double> deflection) {

    /** What a shape file wants: no less than a margin of 0. */
    static Wanted of(LoadWish wish) {
      return new Wanted(
          wish.margin().map(Requested::value).orElse(0.0), wish.deflection().map(Requested::value));
    }

    /** Whether figures are as wanted. */
    boolean met(double margin, double deflection) {
      return margin >= this.margin && this.deflection.map(d -> deflection <= d).orElse(true);
    }
  }

  /**
   * Thicknesses that are tried.
   *
   * @param gauges thinnest first
   * @param all whether every one is; else those below the plate's own down to the first that does
   *     not do, and those above it up to the first that does
   * @param screws whether the screws hold in a plate of another thickness
   */
  public record Compared(
      List<Gauge> gauges, boolean all, BiPredicate<Gauge, List<ScrewDemand>> screws) {

    /** None. */
    public static final Compared NONE = new Compared(List.of(), true, (gauge, demands) -> true);

    public Compared {
      gauges = List.copyOf(gauges);
    }
  }

  /**
   * A case and what is to be thought of it.
   *
   * @param field what the plate does
   * @param change from a coarser mesh; empty after a single one
   * @param factor by which the load was multiplied for the margin
   * @param fall the fall that the force followed from
   * @param own whether the shape file gives it
   * @param bolts forces of the hub's screws: of the model, or shared out when the plate is clamped
   * @param least how far hands move the plate when it is held in the stiffer of two ways, mm
   * @param met whether margin and deflection are as wanted; a fall is told and not judged, since
   *     thickness hardly helps: a thicker plate is stiffer, and so the blow is harder
   */
  public record Judged(
      CaseField field,
      Optional<LoadResult.Change> change,
      double factor,
      Optional<Fall> fall,
      boolean own,
      List<CaseField.BoltForce> bolts,
      double least,
      boolean met) {

    /** Copies the list. */
    public Judged {
      bolts = List.copyOf(bolts);
    }

    /** How much more load there may be before it fails, as a part of the load times its factor. */
    public double margin() {
      return LoadPlan.margin(field, factor);
    }

    /** Force over deflection there, N/mm; empty with several hands. */
    public OptionalDouble stiffness() {
      return field.load().forces().size() == 1 && field.atLoad() > 0
          ? OptionalDouble.of(field.load().forces().get(0).size() / field.atLoad())
          : OptionalDouble.empty();
    }
  }

  /**
   * What a thickness would do.
   *
   * @param gauge the thickness
   * @param margin of the worst case
   * @param marginCase its name
   * @param deflection the most that a hand moves the plate, mm, falls left out
   * @param deflectionCase its name
   * @param screwsHold whether the hub's and the grips' screws hold
   * @param met whether both are as wanted, and the screws hold
   * @param own whether it is the plate's own
   */
  public record Trial(
      Gauge gauge,
      double margin,
      String marginCase,
      double deflection,
      String deflectionCase,
      boolean screwsHold,
      boolean met,
      boolean own) {}

  /** Margin of a field: 1 / (use times factor) - 1; very large where nothing is stressed. */
  static double margin(CaseField field, double factor) {
    double used = field.worst().use() * factor;
    return used <= 1e-6 ? 1e6 : 1 / used - 1;
  }

  /**
   * Reckons.
   *
   * @param range the thicknesses that the plate might be made in
   * @param others which of them to try beside its own
   * @throws LoadException when nothing holds the plate
   * @throws felloe.mesh.MeshException when it is too narrow to be meshed
   */
  public static LoadPlan of(
      Plate plate,
      ThicknessCandidates range,
      Compared others,
      HubHold hold,
      CasePlan plan,
      List<SourcedFigure> figures) {
    return of(plate, range, others, hold, plan, figures, PATIENCE);
  }

  /**
   * Reckons with more or less patience than is usual.
   *
   * @see #of(Plate, ThicknessCandidates, Compared, HubHold, CasePlan, List)
   */
  public static LoadPlan of(
      Plate plate,
      ThicknessCandidates range,
      Compared others,
      HubHold hold,
      CasePlan plan,
      List<SourcedFigure> figures,
      LoadStudy.Patience patience) {
    Region region = plate.region();
    Gauge gauge = range.now();
    List<LoadCase> loads = plan.cases().stream().map(CasePlan.Planned::load).toList();
    LoadStudy.Settled settled =
        new LoadStudy(region, gauge.section(), hold.support(), loads)
            .settled(patience, hold.other());
    LoadStudy.Reckoned one = settled.own();
    LoadResult trial = one.result();
    Optional<LoadStudy.Reckoned> other = settled.other();
    List<CaseField> worse = CaseField.worse(trial.cases(), other.map(o -> o.result().cases()));
    List<CaseField> fields = fallen(region, worse, plan, gauge);
    LoadResult result =
        new LoadResult(
            trial.section(),
            trial.support(),
            trial.mesh(),
            fields,
            trial.changes(),
            trial.unknowns(),
            trial.settled());
    Wanted wanted = Wanted.of(plate.load());
    List<Judged> judged = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      CasePlan.Planned planned = plan.cases().get(i);
      CaseField field = fields.get(i);
      int at = i;
      double least =
          other
              .map(o -> o.result().cases().get(at).atLoad())
              .filter(o -> planned.fall().isEmpty())
              .map(o -> Math.min(o, trial.cases().get(at).atLoad()))
              .orElse(field.atLoad());
      judged.add(judged(field, result, i, planned, hold, wanted, least));
    }
    List<Trial> trials =
        others.gauges().isEmpty()
            ? List.of()
            : new Thicknesses(
                    gauge,
                    fields,
                    one.plate(),
                    other.map(LoadStudy.Reckoned::plate),
                    plan,
                    hold,
                    wanted)
                .trials(others);
    List<String> notes = new ArrayList<>(range.notes());
    notes.addAll(gauge.section().notes());
    if (plate.grips().stream().anyMatch(Grip::bonded)) {
      notes.add(
          "bonded grips of one piece are counted as layers where they lie, of a low modulus, as"
              + " thick as they are where they are thinnest; those of several pieces are not. Their"
              + " glue is taken to hold, and is not judged");
    }
    if (plate.making().gripScale() > 0 || plate.grips().stream().anyMatch(g -> !g.bonded())) {
      notes.add(
          "grips are not counted: screwed on, they slip on the plate and stiffen it little; only"
              + " bonded ones would be layers of it");
    }
    return new LoadPlan(
        plate, gauge, hold, result, judged, plan.leftOut(), wanted, trials, figures, notes);
  }

  /** The fields, those of falls under the force that the fall comes to. */
  static List<CaseField> fallen(Region region, List<CaseField> fields, CasePlan plan, Gauge gauge) {
    List<CaseField> all = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      CaseField field = fields.get(i);
      Optional<Fall> fall = plan.cases().get(i).fall();
      if (fall.isPresent()) {
        double trial = field.load().forces().get(0).size();
        double force = fall.get().force(region, gauge, field);
        field = field.times(force / trial);
      }
      all.add(field);
    }
    return all;
  }

  private static Judged judged(
      CaseField field,
      LoadResult result,
      int index,
      CasePlan.Planned planned,
      HubHold hold,
      Wanted wanted,
      double least) {
    List<CaseField.BoltForce> bolts = ScrewUse.bolts(hold, field);
    Optional<LoadResult.Change> change =
        result.changes().isEmpty() ? Optional.empty() : Optional.of(result.changes().get(index));
    boolean fall = planned.fall().isPresent();
    return new Judged(
        field,
        change,
        planned.factor(),
        planned.fall(),
        planned.own(),
        bolts,
        least,
        fall || wanted.met(margin(field, planned.factor()), field.atLoad()));
  }

  /** Whether every case is as wanted; never so of a stack that is too rough for a verdict. */
  public boolean met() {
    return !gauge.section().coupled() && cases.stream().allMatch(Judged::met);
  }

  /** The most that a hand moves the plate, mm, falls left out; 0 where there are only falls. */
  public double deflection() {
    return cases.stream()
        .filter(one -> one.fall().isEmpty())
        .mapToDouble(one -> one.field().atLoad())
        .max()
        .orElse(0);
  }

  /** The case with the least margin, falls left out; the first case where there are only falls. */
  public Judged tightest() {
    return cases.stream()
        .filter(one -> one.fall().isEmpty())
        .min(Comparator.comparingDouble(Judged::margin))
        .orElse(cases.get(0));
  }

  /** The thinnest of the thicknesses that were tried that does all that is wanted. */
  public Optional<Trial> least() {
    return trials.stream().filter(Trial::met).findFirst();
  }

  /** The hub's holes that have screws. */
  public List<Hole> hubHoles() {
    return hold.holes();
  }
}
