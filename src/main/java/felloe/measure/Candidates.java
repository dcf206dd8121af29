package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.hub.HubPractice;
import felloe.hub.HubRing;
import felloe.hub.HubSpec;
import felloe.hub.RigidFit;
import felloe.hub.RigidFit.Round;
import felloe.hub.ScrewThread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Ranks known hubs by how well they fit what was measured. Only hubs with as many screws are asked.
 *
 * <p>The misfit of a hub adds two parts by their squares: how far the worst hole is off, over what
 * the readings and the hub's own tolerance leave open; and how far the size is outside what suits
 * the hub's screws, over its own error. Holes suit that are no smaller than the screw and no larger
 * than its coarse clearance hole; screws suit that are at most a tolerance under their nominal
 * diameter; threaded holes suit from their smallest size (d - 1.0825 P, ISO 68-1) up to a tolerance
 * more.
 */
public final class Candidates {

  private static final double LEAST_ERROR = 0.02;

  /** More than the coarse holes of any thread here leave on a circle, mm. */
  private static final double FAR = 4;

  private final SurveyResult survey;
  private final Pattern pattern;
  private final MeasurePractice practice;
  private final double drilling;
  private final double far;

  private Candidates(SurveyResult survey, MeasurePractice practice, HubPractice hubs, double far) {
    this.far = far;
    this.survey = survey;
    this.pattern = survey.pattern().orElseThrow();
    this.practice = practice;
    this.drilling = hubs.drilling().get(0).zone();
  }

  /**
   * The hubs with as many screws, the best first; none when the survey has no pattern.
   *
   * @param hubs those that are known
   */
  public static List<Candidate> of(SurveyResult survey, List<HubSpec> hubs) {
    return of(survey, hubs, MeasurePractice.standard(), HubPractice.standard());
  }

  static List<Candidate> of(
      SurveyResult survey, List<HubSpec> hubs, MeasurePractice practice, HubPractice hubPractice) {
    return of(survey, hubs, practice, hubPractice, FAR);
  }

  /**
   * The same.
   *
   * @param far how far off a circle must be for a rough placement to do, mm
   */
  static List<Candidate> of(
      SurveyResult survey,
      List<HubSpec> hubs,
      MeasurePractice practice,
      HubPractice hubPractice,
      double far) {
    if (survey.pattern().isEmpty()) {
      return List.of();
    }
    Candidates candidates = new Candidates(survey, practice, hubPractice, far);
    List<Candidate> all = new ArrayList<>();
    for (HubSpec hub : hubs) {
      candidates.candidate(hub).ifPresent(all::add);
    }
    // Of hubs with the same ring the one without a second ring comes first: that would be seen.
    all.sort(
        Comparator.comparingDouble((Candidate c) -> Math.rint(c.misfit() / Tolerances.SAME_LENGTH))
            .thenComparing(c -> c.hub().rings().size()));
    return all.stream().map(one -> one.with(candidates.like(one, all))).toList();
  }

  private Optional<Candidate> candidate(HubSpec hub) {
    Candidate best = null;
    for (List<HubRing> rings : hub.choices()) {
      int screws = rings.stream().mapToInt(HubRing::count).sum();
      if (screws == pattern.count()) {
        Candidate next = candidate(hub, rings);
        best = best == null || next.misfit() < best.misfit() ? next : best;
      }
    }
    return Optional.ofNullable(best);
  }

  private Candidate candidate(HubSpec hub, List<HubRing> rings) {
    List<Round> meant = new ArrayList<>();
    List<ScrewThread> threads = new ArrayList<>();
    List<Double> plateHoles = new ArrayList<>();
    for (HubRing ring : rings) {
      for (Point centre : ring.centres()) {
        meant.add(new Round(centre, 0));
        threads.add(ring.thread());
        plateHoles.add(ring.plateHole());
      }
    }
    double pcdOff = pattern.pcd() - rings.get(0).pitchDiameter();
    Pairing centres = rings.size() == 1 && Math.abs(pcdOff) > far ? roughly(meant) : best(meant);
    double off = centres.off();
    double open = Math.hypot(open(), hub.positionTolerance() / 2);
    Optional<Double> outside = outside(threads, centres);
    double sizeError = Math.max(LEAST_ERROR, sizeError());
    double misfit = Math.hypot(off / open, outside.orElse(0.0) / sizeError);
    Optional<Double> clearance = clearance(meant, threads, plateHoles, centres);
    double zone =
        survey.measured().on() == ContactFeature.HOLES ? hub.positionTolerance() : drilling;
    double unsure = zone / 2 + within() + sizeHalf() / 2;
    return new Candidate(
        hub,
        misfit,
        off,
        pcdOff,
        outside.map(far -> far <= Reading.COVERAGE * sizeError),
        clearance,
        clearance.map(c -> c - unsure),
        List.of());
  }

  /**
   * Which hole each screw's place goes to.
   *
   * @param off how far the worst is off, mm
   * @param exact whether no placement is better
   */
  private record Pairing(List<Integer> holes, double off, boolean exact) {}

  private Pairing best(List<Round> meant) {
    List<Round> found = survey.holes().stream().map(h -> new Round(h.at(), 0)).toList();
    RigidFit fit = RigidFit.of(meant, found);
    return new Pairing(fit.holes(), Math.max(0, -fit.clearance()), true);
  }

  /**
   * For a circle so far off that no hole leaves the room: round the circle, by least squares. It is
   * many times faster, and no better placement would let a screw in.
   */
  private Pairing roughly(List<Round> meant) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < meant.size(); i++) {
      order.add(i);
    }
    Point centre = pattern.centre();
    order.sort(Comparator.comparingDouble(i -> survey.holes().get(i).at().minus(centre).angle()));
    List<Point> places = meant.stream().map(Round::centre).toList();
    List<Integer> best = order;
    double off = Double.POSITIVE_INFINITY;
    for (int shift = 0; shift < order.size(); shift++) {
      List<Integer> holes = new ArrayList<>(order.subList(shift, order.size()));
      holes.addAll(order.subList(0, shift));
      List<Point> found = holes.stream().map(h -> survey.holes().get(h).at()).toList();
      double worst = Alignment.bySquares(found, places);
      if (worst < off) {
        off = worst;
        best = holes;
      }
    }
    return new Pairing(best, off, false);
  }

  /** How far holes may be off by the readings alone, one standard error of the worst. */
  private double open() {
    double most = LEAST_ERROR;
    for (FoundHole hole : survey.holes()) {
      most = Math.max(most, Math.max(hole.errorX(), hole.errorY()));
    }
    return most;
  }

  private double within() {
    return survey.holes().stream().mapToDouble(FoundHole::within).max().orElse(0);
  }

  private double sizeError() {
    return survey.holes().stream().mapToDouble(FoundHole::sizeError).max().orElse(0);
  }

  private double sizeHalf() {
    return Reading.COVERAGE * sizeError();
  }

  /** How far the worst size lies outside what suits its screw; empty when no size is known. */
  private Optional<Double> outside(List<ScrewThread> threads, Pairing centres) {
    double worst = 0;
    for (int i = 0; i < threads.size(); i++) {
      Optional<Double> size = survey.holes().get(centres.holes().get(i)).size();
      if (size.isEmpty()) {
        return Optional.empty();
      }
      SizeRange range = SizeRange.of(survey.measured().on(), threads.get(i), practice);
      worst = Math.max(worst, range.outside(size.get()));
    }
    return Optional.of(worst);
  }

  /** Room of the tightest screw. */
  private Optional<Double> clearance(
      List<Round> meant, List<ScrewThread> threads, List<Double> plateHoles, Pairing centres) {
    ContactFeature on = survey.measured().on();
    boolean needsSize = on != ContactFeature.THREADS;
    if (needsSize && survey.holes().stream().anyMatch(h -> h.size().isEmpty())) {
      return Optional.empty();
    }
    List<Round> screws = new ArrayList<>();
    List<Round> holes = new ArrayList<>();
    boolean alike = true;
    for (int i = 0; i < meant.size(); i++) {
      FoundHole found = survey.holes().get(i);
      double thread = threads.get(i).diameter();
      if (on == ContactFeature.HOLES) {
        screws.add(new Round(meant.get(i).centre(), thread));
        holes.add(new Round(found.at(), found.size().orElseThrow()));
      } else {
        double screw = on == ContactFeature.SCREWS ? found.size().orElseThrow() : thread;
        screws.add(new Round(found.at(), screw));
        holes.add(new Round(meant.get(i).centre(), plateHoles.get(i)));
      }
      alike &=
          screws.get(i).diameter() == screws.get(0).diameter()
              && holes.get(i).diameter() == holes.get(0).diameter();
    }
    if (alike || !centres.exact()) {
      // With the same room everywhere the placement of the centres is the placement of the screws.
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < holes.size(); i++) {
        least = Math.min(least, (holes.get(i).diameter() - screws.get(i).diameter()) / 2);
      }
      return Optional.of(least - centres.off());
    }
    return Optional.of(RigidFit.of(screws, holes).clearance());
  }

  /** Others whose circle lies as well within the bounds, whose size suits as well. */
  private List<String> like(Candidate one, List<Candidate> all) {
    List<String> names = new ArrayList<>();
    for (Candidate other : all) {
      if (other != one && possible(one) && possible(other)) {
        names.add(other.hub().name());
      }
    }
    return names;
  }

  /** Within the bounds of the readings and of what a hub's own holes leave open. */
  private boolean possible(Candidate candidate) {
    double half = (pattern.pcdHigh() - pattern.pcdLow()) / 2;
    // Each hole may be off by half the zone; their mean by a root of the count less.
    double own = candidate.hub().positionTolerance() / Math.sqrt(pattern.count());
    return Math.abs(candidate.pcdOff()) <= Math.hypot(half, own)
        && candidate.sizeSuits().orElse(true);
  }
}
