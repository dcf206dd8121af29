package felloe.hub;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.hub.Cure.Opening;
import felloe.hub.RigidFit.Round;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds what would make a plate fit a hub that it does not fit, or fits with too little room. */
final class Cures {

  private static final int TURNS_TRIED = 120;

  private final RingTrial trial;
  private final HubSurroundings around;
  private final HubPractice practice;
  private final double allowance;
  private final double least;
  private final Optional<ClearanceSeries> narrowest;

  private Cures(
      RingTrial trial,
      HubSurroundings around,
      HubPractice practice,
      double allowance,
      double least,
      Optional<ClearanceSeries> narrowest) {
    this.trial = trial;
    this.around = around;
    this.practice = practice;
    this.allowance = allowance;
    this.least = least;
    this.narrowest = narrowest;
  }

  /**
   * Of a plate as drawn: its screws must enter.
   *
   * @param allowance what the tolerances may take from the room of a screw, mm
   */
  static Cures drawn(
      RingTrial trial, HubSurroundings around, HubPractice practice, double allowance) {
    return new Cures(trial, around, practice, allowance, 0, Optional.empty());
  }

  /**
   * Of a drilled plate, whose slots are made but once: they are as wide as the fine series, and
   * leave the tightest screw room.
   *
   * @param least room that a cure leaves, mm
   */
  static Cures drilled(
      RingTrial trial,
      HubSurroundings around,
      HubPractice practice,
      double allowance,
      double least) {
    return new Cures(trial, around, practice, allowance, least, Optional.of(ClearanceSeries.FINE));
  }

  /** Cures for screws that do not enter as drawn, each proved by the fit of the plate with it. */
  List<Cure> all() {
    List<Cure> cures = new ArrayList<>();
    if (trial.fit().isPresent()) {
      cures.addAll(openings());
      if (cures.isEmpty()) {
        slots().ifPresent(cures::add);
      }
    } else {
      missing().ifPresent(cures::add);
    }
    return orNewHoles(cures);
  }

  /**
   * Cures of a drilled plate beside opening its holes, proved as above: slots, of the odd holes
   * alone where that does it; new holes where its screws do not enter otherwise.
   *
   * @param odd labels of holes that are known to be the odd ones out
   */
  List<Cure> besideOpening(List<String> odd) {
    List<Cure> cures = new ArrayList<>();
    if (trial.fit().isPresent()) {
      (odd.isEmpty() ? slots() : without(odd).or(this::slots)).ifPresent(cures::add);
    } else {
      missing().ifPresent(cures::add);
    }
    return trial.clearance() < -HubFit.ROUNDING ? orNewHoles(cures) : cures;
  }

  private List<Cure> orNewHoles(List<Cure> cures) {
    if (cures.stream().noneMatch(Cure::works)) {
      cures.add(newRing());
    }
    if (cures.stream().noneMatch(Cure::works)) {
      cures.add(
          new Cure.Nothing(
              "no clearance hole and no slot reaches the screws, and there is no room for new"
                  + " holes; choose another hub or cut a new plate."));
    }
    return cures;
  }

  /**
   * Opening the holes to a series: the first that lets all screws enter as drawn, and the first
   * that does so at the worst of the tolerances. The pairing is the one that brings centres
   * nearest, whatever the holes' sizes are now.
   */
  List<Cure.OpenHoles> openings() {
    List<Round> screws = trial.screws();
    List<ScrewThread> threads = trial.threads();
    List<Round> bolts = RingTrial.rounds(trial.bolts());
    boolean slotted = trial.bolts().stream().anyMatch(Hole::isSlotted);
    List<Integer> pairs =
        slotted
            ? trial.fit().orElseThrow().holes()
            : RigidFit.of(RingTrial.centres(screws), RingTrial.centres(bolts)).holes();
    List<Cure.OpenHoles> found = new ArrayList<>();
    for (ClearanceSeries series :
        List.of(ClearanceSeries.FINE, ClearanceSeries.MEDIUM, ClearanceSeries.COARSE)) {
      List<Hole> opened = new ArrayList<>();
      List<Opening> openings = new ArrayList<>();
      for (int i = 0; i < pairs.size(); i++) {
        Hole hole = trial.bolts().get(pairs.get(i));
        double to = Math.max(hole.diameter(), threads.get(i).hole(series));
        opened.add(hole.withDiameter(to));
        if (to > hole.diameter() + ClearanceSeries.SAME_DIAMETER) {
          openings.add(new Opening(hole.label(), hole.diameter(), to));
        }
      }
      if (openings.isEmpty()) {
        continue;
      }
      openings.sort((a, b) -> LabelOrder.compare(a.hole(), b.hole()));
      double clearance = SlottedFit.of(screws, opened).clearance();
      double worst = clearance - allowance;
      if (worst >= -HubFit.ROUNDING) {
        found.add(new Cure.OpenHoles(openings, series, clearance, worst));
        return found;
      }
      if (clearance >= -HubFit.ROUNDING && found.isEmpty()) {
        found.add(new Cure.OpenHoles(openings, series, clearance, worst));
      }
    }
    return found;
  }

  /** One slot when all but one screw enter; else a slot for each screw that does not. */
  private Optional<Cure> slots() {
    List<Hole> used = trial.used();
    for (Hole hole : used) {
      Optional<Cure> one = used.size() > 2 ? without(List.of(hole.label())) : Optional.empty();
      if (one.isPresent()) {
        return one;
      }
    }
    List<Round> screws = trial.screws();
    List<SlottedHole> slots = new ArrayList<>();
    RigidFit fit = trial.fit().orElseThrow();
    for (int i = 0; i < screws.size(); i++) {
      if (fit.clearances().get(i) < -HubFit.ROUNDING) {
        Optional<SlottedHole> slot = slot(i, fit.placement());
        if (slot.isEmpty()) {
          return Optional.empty();
        }
        slots.add(slot.get());
      }
    }
    return proved(slots, least);
  }

  /** Slots for some holes alone, where the others let their screws in. */
  private Optional<Cure> without(List<String> labels) {
    List<Round> screws = trial.screws();
    List<Hole> used = trial.used();
    List<Round> others = new ArrayList<>();
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < screws.size(); i++) {
      if (!labels.contains(used.get(i).label())) {
        others.add(screws.get(i));
        holes.add(used.get(i));
      }
    }
    if (others.size() < 2) {
      return Optional.empty();
    }
    RigidFit rest = SlottedFit.of(others, holes);
    // Paired in another order round the circle, these holes are not the ones that are off.
    if (rest.clearance() < -HubFit.ROUNDING || !inOrder(rest)) {
      return Optional.empty();
    }
    List<SlottedHole> slots = new ArrayList<>();
    for (int i = 0; i < screws.size(); i++) {
      if (labels.contains(used.get(i).label())) {
        Optional<SlottedHole> slot = slot(i, rest.placement());
        if (slot.isEmpty()) {
          return Optional.empty();
        }
        slots.add(slot.get());
      }
    }
    // Where the other holes leave less than is wanted, no slot of these leaves more.
    return proved(slots, Math.min(least, rest.clearance()));
  }

  /** The slots, if the plate with them leaves all screws the room that is wanted. */
  private Optional<Cure> proved(List<SlottedHole> slots, double wanted) {
    if (slots.isEmpty()) {
      return Optional.empty();
    }
    List<Hole> cut = new ArrayList<>(trial.bolts());
    for (SlottedHole slot : slots) {
      cut.replaceAll(hole -> hole.label().equals(slot.hole()) ? slot.of(hole) : hole);
    }
    double clearance = SlottedFit.of(trial.screws(), cut).clearance();
    slots.sort((a, b) -> LabelOrder.compare(a.hole(), b.hole()));
    return clearance >= wanted - HubFit.ROUNDING
        ? Optional.of(new Cure.Slots(slots, clearance, clearance - allowance))
        : Optional.empty();
  }

  private static boolean inOrder(RigidFit fit) {
    for (int i = 0; i < fit.holes().size(); i++) {
      if (fit.holes().get(i) != i) {
        return false;
      }
    }
    return true;
  }

  /** The slot that brings a screw into its hole; none when it is too long or has no length. */
  private Optional<SlottedHole> slot(int number, RigidTransform placement) {
    Round screw = trial.screws().get(number);
    Hole hole = trial.used().get(number);
    double needed = narrowest.map(trial.threads().get(number)::hole).orElse(screw.diameter());
    double width = Math.max(hole.diameter(), needed);
    SlottedHole slot =
        new SlottedHole(hole.label(), hole.centre(), placement.of(screw.centre()), width);
    boolean fits =
        !hole.isSlotted()
            && slot.travel() > HubFit.ROUNDING
            && slot.travel() <= practice.slot() * hole.diameter();
    return fits ? Optional.of(slot) : Optional.empty();
  }

  /** The holes that lack, when those there are match the hub. */
  private Optional<Cure> missing() {
    if (trial.bolts().isEmpty()) {
      return Optional.empty();
    }
    List<Round> screws = trial.screws();
    // The holes are laid on the screws: slack is the same when both change sign and part.
    RigidFit reversed =
        RigidFit.of(RingTrial.swapped(RingTrial.rounds(trial.bolts())), RingTrial.swapped(screws));
    if (reversed.clearance() < -HubFit.ROUNDING) {
      return Optional.empty();
    }
    RigidTransform there = reversed.placement();
    RigidTransform turnBack = RigidTransform.turn(-there.turn());
    RigidTransform back =
        new RigidTransform(false, -there.turn(), turnBack.of(there.shift()).times(-1));
    List<Point> centres = new ArrayList<>();
    for (int i = 0; i < screws.size(); i++) {
      if (!reversed.holes().contains(i)) {
        centres.add(back.of(screws.get(i).centre()));
      }
    }
    return Optional.of(tried(drill(centres, back.turn())));
  }

  /**
   * The hub's own pattern about the plate's axis: not turned if there is room, else where most is.
   */
  private Cure newRing() {
    Cure.DrillHoles straight = drill(ring(0), 0);
    if (straight.hasRoom()) {
      return tried(straight);
    }
    double turn = 2 * Math.PI / trial.rings().get(0).count();
    return tried(
        IntStream.range(0, TURNS_TRIED)
            .mapToObj(k -> drill(ring(turn * k / TURNS_TRIED), turn * k / TURNS_TRIED))
            .max(Comparator.comparingDouble(d -> d.web().orElse(Double.POSITIVE_INFINITY)))
            .orElseThrow());
  }

  private List<Point> ring(double turn) {
    RigidTransform motion = RigidTransform.turn(turn);
    return trial.screws().stream().map(s -> motion.of(s.centre())).toList();
  }

  private static Optional<Double> finite(double width) {
    return Double.isInfinite(width) ? Optional.empty() : Optional.of(width);
  }

  /** New holes, as large as the largest screw asks for, beside those there are. */
  private Cure.DrillHoles drill(List<Point> centres, double turn) {
    double diameter = trial.rings().stream().mapToDouble(HubRing::plateHole).max().orElseThrow();
    HubSurroundings.Web web = around.web(centres, diameter);
    return new Cure.DrillHoles(
        centres, diameter, turn, finite(web.width()), web.to(), practice.web() * diameter, 0);
  }

  /**
   * The same with the room of the tightest screw in the holes, old and new, as the plate then is.
   */
  private Cure.DrillHoles tried(Cure.DrillHoles drill) {
    // A whole new ring takes all screws.
    boolean whole = drill.centres().size() == trial.screws().size();
    List<Hole> holes = new ArrayList<>(whole ? List.of() : trial.bolts());
    for (Point centre : drill.centres()) {
      holes.add(new Hole("new", HoleRole.BOLT, centre, drill.diameter(), Place.BUILT_IN));
    }
    return new Cure.DrillHoles(
        drill.centres(),
        drill.diameter(),
        drill.turn(),
        drill.web(),
        drill.webTo(),
        drill.least(),
        SlottedFit.of(trial.screws(), holes).clearance());
  }

  /**
   * The bore opened until the spigot enters, or a new one, tried on the plate.
   *
   * @param hubBore diameter that the hub file asks for
   */
  Cure bore(PilotFit pilot, Optional<Double> hubBore) {
    Point axis = trial.fit().map(f -> f.placement().shift()).orElse(Point.ORIGIN);
    String label = pilot.opening().orElse("a bore at the hub axis");
    Optional<Hole> old =
        pilot
            .bore()
            .flatMap(d -> around.holes().stream().filter(h -> h.label().equals(label)).findFirst());
    double needed = pilot.pilot();
    if (old.isPresent()) {
      needed = old.get().diameter() - 2 * pilot.clearance().orElseThrow();
    }
    double diameter = Math.max(needed, hubBore.orElse(needed));
    Hole opened =
        new Hole(
            label,
            HoleRole.BORE,
            old.map(Hole::centre).orElse(axis),
            diameter,
            old.map(Hole::place).orElse(Place.BUILT_IN));
    HubSurroundings others = around.without(label);
    HubSurroundings.Web web = others.web(List.of(opened.centre()), diameter);
    double beside = trial.bolts().stream().mapToDouble(Hole::diameter).max().orElse(0);
    return new Cure.OpenBore(
        label,
        diameter,
        finite(web.width()),
        web.to(),
        practice.web() * beside,
        others.with(opened).pilot(pilot.pilot(), axis).clearance().orElse(-1.0)
            >= -HubFit.ROUNDING);
  }
}
