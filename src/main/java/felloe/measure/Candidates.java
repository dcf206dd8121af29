package felloe.measure;

import felloe.geometry.Point;
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

  private static final double MINOR = 1.082532;
  private static final double LEAST_ERROR = 0.02;

  private final SurveyResult survey;
  private final Pattern pattern;
  private final MeasurePractice practice;
  private final double drilling;

  private Candidates(SurveyResult survey, MeasurePractice practice, HubPractice hubs) {
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
    if (survey.pattern().isEmpty()) {
      return List.of();
    }
    Candidates candidates = new Candidates(survey, practice, hubPractice);
    List<Candidate> all = new ArrayList<>();
    for (HubSpec hub : hubs) {
      candidates.candidate(hub).ifPresent(all::add);
    }
    all.sort(Comparator.comparingDouble(Candidate::misfit));
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
    List<Round> found = survey.holes().stream().map(h -> new Round(h.at(), 0)).toList();
    RigidFit centres = RigidFit.of(meant, found);
    double off = Math.max(0, -centres.clearance());
    double pcdOff = pattern.pcd() - rings.get(0).pitchDiameter();
    double open = Math.hypot(open(), hub.positionTolerance() / 2);
    Optional<Double> outside = outside(threads, centres);
    double sizeError = Math.max(LEAST_ERROR, sizeError());
    double misfit = Math.hypot(off / open, outside.orElse(0.0) / sizeError);
    Optional<Double> clearance = clearance(meant, threads, plateHoles);
    double zone = survey.measured().on() == On.HOLES ? hub.positionTolerance() : drilling;
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
  private Optional<Double> outside(List<ScrewThread> threads, RigidFit centres) {
    double worst = 0;
    for (int i = 0; i < threads.size(); i++) {
      Optional<Double> size = survey.holes().get(centres.holes().get(i)).size();
      if (size.isEmpty()) {
        return Optional.empty();
      }
      ScrewThread thread = threads.get(i);
      double low;
      double high;
      switch (survey.measured().on()) {
        case SCREWS -> {
          low = thread.diameter() - practice.screwUnder();
          high = thread.diameter();
        }
        case THREADS -> {
          low = thread.diameter() - MINOR * thread.pitch();
          high = low + practice.threadOver() * thread.pitch();
        }
        default -> {
          low = thread.diameter();
          high = thread.coarse();
        }
      }
      worst = Math.max(worst, Math.max(low - size.get(), size.get() - high));
    }
    return Optional.of(worst);
  }

  /** Room of the tightest screw. */
  private Optional<Double> clearance(
      List<Round> meant, List<ScrewThread> threads, List<Double> plateHoles) {
    On on = survey.measured().on();
    boolean needsSize = on != On.THREADS;
    if (needsSize && survey.holes().stream().anyMatch(h -> h.size().isEmpty())) {
      return Optional.empty();
    }
    List<Round> screws = new ArrayList<>();
    List<Round> holes = new ArrayList<>();
    for (int i = 0; i < meant.size(); i++) {
      FoundHole found = survey.holes().get(i);
      double thread = threads.get(i).diameter();
      if (on == On.HOLES) {
        screws.add(new Round(meant.get(i).centre(), thread));
        holes.add(new Round(found.at(), found.size().orElseThrow()));
      } else {
        double screw = on == On.SCREWS ? found.size().orElseThrow() : thread;
        screws.add(new Round(found.at(), screw));
        holes.add(new Round(meant.get(i).centre(), plateHoles.get(i)));
      }
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
