package felloe.measure;

import felloe.geometry.GeometryException;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.hub.Cure;
import felloe.hub.DrillingMethod;
import felloe.hub.FastenerFormula;
import felloe.hub.HubFit;
import felloe.hub.HubFitResult;
import felloe.hub.HubPractice;
import felloe.hub.HubSpec;
import felloe.hub.Mismatch;
import felloe.plate.BadInput;
import felloe.plate.Basis;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Proves a drilled plate against its hub: the holes where the readings have them, as large as they
 * were measured, in the same fit that the drawing was checked with.
 *
 * <p>Readings tell how the holes lie to each other, not where the plate's outline is, so the hub's
 * axis may move with them. Hub holes alone are laid on their places; other holes that were measured
 * are told in the same axes.
 */
public final class AsDrilled {

  private final Plate plate;
  private final HubSpec hub;
  private final Measured measured;
  private final boolean bonus;
  private final MeasurePractice practice = MeasurePractice.standard();
  private final HubPractice hubPractice = HubPractice.standard();
  private final List<Hole> meant;

  private AsDrilled(Plate plate, HubSpec hub, Measured measured, boolean bonus) {
    this.plate = plate;
    this.hub = hub;
    this.measured = measured;
    this.bonus = bonus;
    this.meant = new PlateHoles(plate, hub).of(measured);
  }

  /**
   * Proves a plate.
   *
   * @param bonus whether a hole that is larger than drawn may be so much further off (ISO 2692,
   *     maximum material condition)
   * @throws BadInput when the file names holes that the plate has not, when a hub hole was not
   *     measured, when the readings tell too little, or when the holes do not fit their numbers
   */
  public static AsDrilledResult of(Plate plate, HubSpec hub, Measured measured, boolean bonus) {
    return new AsDrilled(plate, hub, measured, bonus).result();
  }

  private AsDrilledResult result() {
    new KindSlips(measured, meant).refuse(practice, Numbering.FAR);
    List<Point> places = meant.stream().map(Hole::centre).toList();
    SurveyResult survey = Survey.about(places, measured, practice);
    if (!survey.told()) {
      throw new BadInput(survey.refusals());
    }
    List<Point> found = survey.holes().stream().map(FoundHole::at).toList();
    List<Point> bolts = only(places);
    List<Double> more = new ArrayList<>();
    for (int i = 0; i < meant.size(); i++) {
      more.add(bonus(meant.get(i), survey.holes().get(i)));
    }
    Alignment all = Alignment.of(only(found), bolts, only(more), !measuredFromBothEdges());
    Numbering.check(measured, labels(), only(found), bolts, all);
    List<Integer> odd = odd(survey, all, only(found), bolts);
    Alignment aligned =
        odd.isEmpty()
            ? all
            : Alignment.laid(
                without(only(found), odd),
                without(bolts, odd),
                without(only(more), odd),
                all.mirrored());
    List<DrilledHole> holes = new ArrayList<>();
    for (int i = 0; i < meant.size(); i++) {
      holes.add(drilled(i, survey.holes().get(i), aligned.of(found.get(i))));
    }
    List<OddHole> odds = new ArrayList<>();
    for (int i : odd) {
      DrilledHole hole = only(holes).get(i);
      odds.add(new OddHole(hole.meant().label(), hole.at().minus(hole.meant().centre())));
    }
    return result(survey, holes, odds);
  }

  private AsDrilledResult result(SurveyResult survey, List<DrilledHole> holes, List<OddHole> odds) {
    double zone = zone(survey);
    DrillingMethod method =
        new DrillingMethod(
            DrillingMethod.MEASURED,
            "as measured; 95 % bounds of the readings counted in the worst case",
            zone,
            Basis.of("measured with a calliper").orElseThrow());
    HubFit by = new HubFit(hubPractice, method);
    Placed placed = fit(by, holes, odds);
    HubFitResult fit = placed.fit();
    // A plate that is broken out is not mended by larger holes.
    DrilledCures cures =
        placed
            .plate()
            .map(as -> DrilledCures.of(as, by, fit, holes, odds, practice.drillStep()))
            .orElse(DrilledCures.NONE);
    List<Cure> others = new ArrayList<>(cures.cures());
    others.addAll(fit.cures());
    List<Finding> findings = new DrilledFindings(practice).of(holes, odds);
    return new AsDrilledResult(
        verdict(survey, holes, placed, findings),
        odds,
        fit,
        cures.openings(),
        others,
        findings,
        holes,
        least(this::fixed),
        least(hole -> FastenerFormula.floatingTolerance(hole.diameter(), screw(hole))),
        bonus,
        survey,
        placed.plate(),
        notes(
            survey, placed, !cures.openings().isEmpty() || others.stream().anyMatch(Cure::works)));
  }

  /** Holes that lie elsewhere than the others have them; none when all keep their zones. */
  private List<Integer> odd(
      SurveyResult survey, Alignment all, List<Point> found, List<Point> bolts) {
    List<FoundHole> holes = only(survey.holes());
    List<Hole> drawn = only(meant);
    List<Double> reach = new ArrayList<>();
    List<Point> seen = new ArrayList<>();
    double floor = 0;
    boolean keep = true;
    for (int i = 0; i < drawn.size(); i++) {
      double zone = fixed(drawn.get(i)) + bonus(drawn.get(i), holes.get(i));
      double along = drawn.get(i).slot().map(slot -> slot.travel() / 2).orElse(0.0);
      reach.add(Math.max(zone / 2, practice.even()) + holes.get(i).within() + along);
      floor = Math.max(floor, holes.get(i).within() / 2);
      keep &= all.of(found.get(i)).distance(bolts.get(i)) <= reach.get(i);
      seen.add(all.first().of(found.get(i)));
    }
    return keep ? List.of() : OddHoles.of(seen, bolts, reach, floor);
  }

  private static <T> List<T> without(List<T> all, List<Integer> odd) {
    List<T> rest = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (!odd.contains(i)) {
        rest.add(all.get(i));
      }
    }
    return rest;
  }

  /**
   * How the hub meets the plate as drilled.
   *
   * @param plate as drilled; empty when it is broken
   * @param broken which holes run into each other or out of the plate; empty when none does
   */
  private record Placed(HubFitResult fit, Optional<Plate> plate, Optional<String> broken) {}

  private boolean measuredFromBothEdges() {
    boolean across = false;
    boolean up = false;
    for (Reading reading : measured.readings()) {
      ReferenceEdge edge = reading.edge().orElse(null);
      across |= edge == ReferenceEdge.LEFT || edge == ReferenceEdge.RIGHT;
      up |= edge == ReferenceEdge.BOTTOM || edge == ReferenceEdge.TOP;
    }
    return across && up;
  }

  private <T> List<T> only(List<T> all) {
    List<T> bolts = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (meant.get(i).role() == HoleRole.BOLT) {
        bolts.add(all.get(i));
      }
    }
    return bolts;
  }

  private List<String> labels() {
    return only(meant.stream().map(Hole::label).toList());
  }

  /** The screw that goes through a hole: that of the ring which is nearest to it, mm. */
  private double screw(Hole hole) {
    return hub.ringAt(hole.centre()).thread().diameter();
  }

  private double least(ToDoubleFunction<Hole> tolerance) {
    return only(meant).stream().mapToDouble(tolerance).min().orElseThrow();
  }

  private double fixed(Hole hole) {
    return FastenerFormula.fixedRest(hole.diameter(), screw(hole), hub.positionTolerance());
  }

  private double bonus(Hole hole, FoundHole found) {
    boolean asked = bonus && hole.role() == HoleRole.BOLT;
    return asked ? Math.max(0, found.size().orElse(hole.diameter()) - hole.diameter()) : 0;
  }

  private DrilledHole drilled(int i, FoundHole found, Point at) {
    Hole hole = meant.get(i);
    double diameter = found.size().orElse(hole.diameter());
    boolean bolt = hole.role() == HoleRole.BOLT;
    double more = bonus(hole, found);
    return new DrilledHole(
        hole,
        at,
        diameter,
        found.size().map(size -> Reading.COVERAGE * found.sizeError()),
        2 * at.distance(hole.nearest(at)),
        found.within(),
        bolt ? Optional.of(fixed(hole) + more) : Optional.empty(),
        more);
  }

  /** How much nearer hole and screw may be than measured, as the zone of a way of drilling. */
  private static double zone(SurveyResult survey) {
    double most = 0;
    for (FoundHole hole : survey.holes()) {
      most = Math.max(most, hole.within() + Reading.COVERAGE * hole.sizeError() / 2);
    }
    return 2 * most;
  }

  private Placed fit(HubFit fit, List<DrilledHole> drilled, List<OddHole> odds) {
    List<Mismatch> odd =
        odds.stream()
            .map(one -> new Mismatch(Mismatch.Kind.SPACING, one.label(), one.off(), 0, "mm"))
            .toList();
    List<Hole> holes = new ArrayList<>();
    for (Hole hole : plate.holes()) {
      Optional<Hole> one =
          drilled.stream().filter(d -> d.meant() == hole).findFirst().map(DrilledHole::hole);
      if (one.isPresent()) {
        holes.add(one.get());
      } else if (hole.role() != HoleRole.BOLT) {
        holes.add(hole);
      }
    }
    try {
      Plate as = plate.with(holes, plate.joints());
      return new Placed(fit.fit(as, hub, odd), Optional.of(as), Optional.empty());
    } catch (GeometryException overlap) {
      // Then there is no plate to look round in, but the screws can still be laid on the holes.
      return new Placed(
          fit.fit(holes, hub, odd), Optional.empty(), Optional.of(overlap.getMessage()));
    }
  }

  private Verdict verdict(
      SurveyResult survey, List<DrilledHole> holes, Placed placed, List<Finding> findings) {
    HubFitResult fit = placed.fit();
    if (!fit.enters() || placed.broken().isPresent() || fit.verdict() == Verdict.FAIL) {
      return Verdict.FAIL;
    }
    boolean sure = fit.worst().orElse(-1.0) >= -Tolerances.SAME_LENGTH;
    boolean keeps = holes.stream().noneMatch(DrilledHole::misses);
    boolean trusted = survey.suspects().isEmpty() && survey.freedom() > 0 && !survey.scattered();
    boolean sized = survey.holes().stream().noneMatch(h -> h.size().isEmpty());
    boolean good = fit.verdict() == Verdict.PASS && findings.isEmpty();
    return sure && keeps && trusted && sized && good && !another() ? Verdict.PASS : Verdict.CAUTION;
  }

  /** Whether the readings say that they are of another plate, or of another state of this one. */
  private boolean another() {
    return !measured.plate().orElse(plate.name()).equals(plate.name())
        || !measured.revision().orElse(plate.revision()).equals(plate.revision());
  }

  /**
   * What the maker should know.
   *
   * @param mended whether something lets the screws in
   */
  private List<String> notes(SurveyResult survey, Placed placed, boolean mended) {
    HubFitResult fit = placed.fit();
    List<String> notes = new ArrayList<>();
    placed
        .broken()
        .ifPresent(
            how -> notes.add("The plate as drilled is broken out: " + how + ". Do not use it."));
    if (measured.plate().isPresent() && !measured.plate().get().equals(plate.name())) {
      notes.add("The readings say they are of " + measured.plate().get() + ", not of this plate.");
    }
    if (measured.revision().isPresent() && !measured.revision().get().equals(plate.revision())) {
      notes.add(
          "The shape file has changed since it was drilled: the readings are of revision "
              + measured.revision().get()
              + ", the file is now "
              + plate.revision()
              + ".");
    }
    if (survey.holes().stream().anyMatch(h -> h.size().isEmpty())) {
      notes.add("Holes whose size was not measured count as drawn.");
    }
    if (!measured.waiting().isEmpty()) {
      int blank = measured.waiting().size();
      notes.add(blank + (blank == 1 ? " reading was" : " readings were") + " not taken.");
    }
    if (survey.freedom() == 0) {
      notes.add("No reading checks another: a slip would not show. Take one or two more.");
    }
    if (survey.scattered()) {
      notes.add("The readings differ more than their plus and minus allows.");
    }
    if (!fit.enters() && !mended) {
      notes.add("Scrap: nothing mends it for this hub.");
    }
    return notes;
  }
}
