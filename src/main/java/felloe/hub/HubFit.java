package felloe.hub;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.hub.RigidFit.Round;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells whether all screws of a hub enter the holes of a plate.
 *
 * <p>The hub is turned and shifted, and its screws are given to the holes, so that the tightest
 * screw has most room: see {@link RigidFit}. A screw's diameter is its nominal major diameter; real
 * screws are a few hundredths smaller, which is room on the safe side.
 *
 * <p><b>Worst case.</b> Each threaded hole's centre may lie anywhere in a zone of diameter T1 (the
 * hub's position tolerance, ISO 1101), each drilled one in a zone of T2 (the way of drilling), so
 * two centres may come nearer or part by (T1 + T2)/2. With the placement kept, no screw loses more
 * than that; with a new placement the room can only be better. So room less (T1 + T2)/2 is certain:
 * it is the fixed-fastener formula H - F = T1 + T2 for any pattern. It is reached when all errors
 * point the worst way at once. A drilled hole counts at its nominal diameter: drills cut over size,
 * not under.
 *
 * <p>A slotted hole takes its screw anywhere along its middle line: see {@link SlottedFit}. A zone
 * of T2 about each place of that line is counted like that of a round hole.
 *
 * @param practice figures of the trade
 * @param drilling how the plate's holes are made
 */
public record HubFit(HubPractice practice, DrillingMethod drilling) {

  /** Room of which so little lacks is room, mm: rounding must not refuse 5.0 mm on M5. */
  static final double ROUNDING = Tolerances.SAME_POINT;

  private static final double SAME_FIGURE = 0.01;

  /** With the program's own figures and the usual way of drilling. */
  public static HubFit standard() {
    HubPractice practice = HubPractice.standard();
    return new HubFit(practice, practice.drilling().get(0));
  }

  /**
   * With the program's own figures and the way of drilling that a plate's maker means to use; the
   * usual one when the shape file says nothing.
   */
  public static HubFit standard(Plate plate) {
    HubPractice practice = HubPractice.standard();
    DrillingMethod usual = practice.drilling().get(0);
    return new HubFit(
        practice,
        plate.making().position().flatMap(p -> practice.drilling(p.word())).orElse(usual));
  }

  /** Fits a plate to a hub with the standard figures and the plate's own way of drilling. */
  public static HubFitResult of(Plate plate, HubSpec hub) {
    return standard(plate).fit(plate, hub);
  }

  /** Fits holes to a hub with the standard figures; see {@link #fit(List, HubSpec)}. */
  public static HubFitResult of(List<Hole> holes, HubSpec hub) {
    return standard().fit(holes, hub);
  }

  public HubFitResult fit(Plate plate, HubSpec hub) {
    return fit(plate, hub, List.of());
  }

  /**
   * Fits a plate to a hub.
   *
   * @param odd holes that are known to be the odd ones out, with how far each is off
   */
  public HubFitResult fit(Plate plate, HubSpec hub, List<Mismatch> odd) {
    return fit(HubSurroundings.of(plate), hub, odd);
  }

  /**
   * Fits holes to a hub, when outline and windows are not known.
   *
   * @param holes all holes of the plate; screws go into those whose role is {@link HoleRole#BOLT}
   */
  public HubFitResult fit(List<Hole> holes, HubSpec hub) {
    return fit(holes, hub, List.of());
  }

  /** The same, with odd holes as above. */
  public HubFitResult fit(List<Hole> holes, HubSpec hub, List<Mismatch> odd) {
    return fit(HubSurroundings.of(holes), hub, odd);
  }

  private HubFitResult fit(HubSurroundings around, HubSpec hub, List<Mismatch> odd) {
    return result(placed(around, hub), around, hub, odd);
  }

  /**
   * What would mend a drilled plate beside opening its holes: slots, else new holes.
   *
   * @param plate as drilled
   * @param odd labels of holes that are known to be the odd ones out: they alone are cured if that
   *     does it
   */
  public List<Cure> besideOpening(Plate plate, HubSpec hub, List<String> odd) {
    HubSurroundings around = HubSurroundings.of(plate);
    double least = leastRoom(hub);
    return Cures.drilled(placed(around, hub), around, practice, allowance(hub), least)
        .besideOpening(odd);
  }

  /**
   * Room that a cure of a drilled plate leaves the tightest screw, mm: what the hub's own tolerance
   * may take of it. What the readings leave open can be measured again.
   */
  public static double leastRoom(HubSpec hub) {
    return hub.positionTolerance() / 2;
  }

  /** What the tolerances of hub and plate may take from the room of a screw, mm. */
  public double allowance(HubSpec hub) {
    return (hub.positionTolerance() + drilling.zone()) / 2;
  }

  private static RingTrial placed(HubSurroundings around, HubSpec hub) {
    RingTrial trial = null;
    for (List<HubRing> rings : hub.choices()) {
      RingTrial next = RingTrial.of(rings, around.bolts());
      if (trial == null || next.clearance() > trial.clearance()) {
        trial = next;
      }
    }
    if (hub.pilot().isPresent()) {
      trial = withPilot(trial, around, hub.pilot().get());
    }
    return trial;
  }

  /**
   * Where the spigot does not enter at the best place for the screws, a place where both enter is
   * looked for: the spigot is one more round thing that goes into a hole.
   */
  private static RingTrial withPilot(RingTrial trial, HubSurroundings around, double pilot) {
    if (trial.fit().isEmpty()) {
      return trial;
    }
    Point axis = trial.fit().get().placement().shift();
    if (around.pilot(pilot, axis).enters()) {
      return trial;
    }
    for (Hole bore : around.holes()) {
      if (bore.role() == HoleRole.BORE && bore.diameter() >= pilot) {
        List<Round> screws = new ArrayList<>(trial.screws());
        screws.add(new Round(Point.ORIGIN, pilot));
        List<Round> holes = new ArrayList<>(trial.usedRounds());
        holes.add(new Round(bore.centre(), bore.diameter()));
        RigidFit both = RigidFit.of(screws, holes);
        int last = screws.size() - 1;
        if (both.holes().get(last) == last && both.clearance() >= -ROUNDING) {
          return trial.at(both);
        }
      }
    }
    return trial;
  }

  private HubFitResult result(
      RingTrial trial, HubSurroundings around, HubSpec hub, List<Mismatch> odd) {
    double allowance = allowance(hub);
    Optional<RigidFit> fit = trial.fit();
    Optional<PilotFit> pilot = Optional.empty();
    if (hub.pilot().isPresent()) {
      Point axis = fit.isPresent() ? fit.get().placement().shift() : Point.ORIGIN;
      pilot = Optional.of(around.pilot(hub.pilot().get(), axis));
    }
    List<Mismatch> mismatches = new ArrayList<>();
    List<Cure> cures = new ArrayList<>();
    Cures possible = Cures.drawn(trial, around, practice, allowance);
    boolean drawn = !drilling.measured();
    if (trial.clearance() < -ROUNDING) {
      mismatches.addAll(new Mismatches(trial, odd, drawn ? 0 : drilling.zone() / 2).all());
      cures.addAll(drawn ? possible.all() : List.of());
    } else if (drawn && trial.clearance() - allowance < -ROUNDING) {
      for (Cure.OpenHoles open : possible.openings()) {
        if (open.worst() >= -ROUNDING) {
          cures.add(open);
        }
      }
    }
    if (pilot.isPresent() && !pilot.get().enters()) {
      mismatches.add(pilotMismatch(pilot.get()));
      cures.add(possible.bore(pilot.get(), hub.bore()));
    }
    List<ScrewFit> screws = fit.isPresent() ? screws(trial, fit.get(), allowance) : List.of();
    List<Finding> findings =
        new HubFindings(this, hub, allowance).of(trial, screws, pilot, mismatches, cures, around);
    Verdict verdict = Verdict.PASS;
    for (Finding finding : findings) {
      verdict = finding.verdict().compareTo(verdict) > 0 ? finding.verdict() : verdict;
    }
    List<CalliperFigures> hubCalliper = new ArrayList<>();
    for (HubRing ring : trial.rings()) {
      hubCalliper.add(ring.calliper());
    }
    Optional<PatternFigures> pattern = Mismatches.pattern(trial);
    Optional<CalliperFigures> plateCalliper =
        pattern.isPresent()
            ? plateCalliper(pattern.get(), fit.isPresent() ? trial.used() : trial.bolts())
            : Optional.empty();
    Optional<Double> clearance = Optional.empty();
    Optional<Double> worst = Optional.empty();
    if (fit.isPresent()) {
      clearance = Optional.of(tidy(trial.clearance()));
      worst = Optional.of(clearance.get() - allowance);
    }
    return new HubFitResult(
        hub,
        trial.rings(),
        drilling,
        verdict,
        clearance,
        worst,
        fit.map(RigidFit::placement),
        2 * Math.PI / (fit.isPresent() ? fit.get().symmetry() : 1),
        screws,
        trial.spare(),
        pilot,
        pattern,
        hubCalliper,
        plateCalliper,
        mismatches,
        cures,
        findings,
        fit.isEmpty() || fit.get().complete());
  }

  private static Mismatch pilotMismatch(PilotFit pilot) {
    double opening =
        pilot.clearance().isPresent() ? pilot.pilot() + 2 * pilot.clearance().get() : 0;
    return new Mismatch(
        Mismatch.Kind.PILOT, pilot.opening().orElse("plate"), opening, pilot.pilot(), "mm");
  }

  private static List<ScrewFit> screws(RingTrial trial, RigidFit fit, double allowance) {
    List<ScrewFit> screws = new ArrayList<>();
    List<Round> rounds = trial.screws();
    RigidTransform placement = fit.placement();
    for (int i = 0; i < rounds.size(); i++) {
      Hole hole = trial.used().get(i);
      ScrewThread thread = trial.threads().get(i);
      Point at = placement.of(rounds.get(i).centre());
      double clearance = tidy(fit.clearances().get(i));
      screws.add(
          new ScrewFit(
              "S" + (i + 1),
              thread,
              at,
              hole,
              at.distance(hole.nearest(at)),
              clearance,
              clearance - allowance,
              ClearanceSeries.of(thread, hole.diameter())));
    }
    return screws;
  }

  /** What the search leaves of an exact zero is zero. */
  private static double tidy(double value) {
    return Math.abs(value) <= TurnSearch.PRECISION ? 0 : value;
  }

  private static Optional<CalliperFigures> plateCalliper(PatternFigures pattern, List<Hole> holes) {
    double diameter = holes.get(0).diameter();
    boolean alike =
        pattern.roundness() < SAME_FIGURE
            && pattern.unevenness() * pattern.pitchDiameter() / 2 < SAME_FIGURE;
    for (Hole hole : holes) {
      alike &= Math.abs(hole.diameter() - diameter) < SAME_FIGURE;
    }
    return alike
        ? Optional.of(CalliperFigures.of(holes.size(), pattern.pitchDiameter(), diameter))
        : Optional.empty();
  }
}
