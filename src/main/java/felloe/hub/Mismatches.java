package felloe.hub;

import felloe.geometry.Point;
import felloe.hub.RigidFit.Round;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Says which figures keep the screws of a trial out.
 *
 * @param trial the screws in their holes
 * @param odd holes that are known to be off their places, where all others are not
 * @param unsure how far a hole may be off and not be told so, since readings alone place it, mm
 */
record Mismatches(RingTrial trial, List<Mismatch> odd, double unsure) {

  private static final double SAME_CIRCLE = 1e-3;

  List<Mismatch> all() {
    List<Mismatch> found = new ArrayList<>();
    List<Round> screws = trial.screws();
    if (trial.fit().isEmpty()) {
      found.add(
          new Mismatch(Mismatch.Kind.COUNT, "plate", trial.bolts().size(), screws.size(), ""));
      found.addAll(allOnAnotherCircle());
      return found;
    }
    List<Hole> used = trial.used();
    for (int i = 0; i < screws.size(); i++) {
      if (used.get(i).diameter() < screws.get(i).diameter() - HubFit.ROUNDING) {
        found.add(
            new Mismatch(
                Mismatch.Kind.HOLE_SIZE,
                used.get(i).label(),
                used.get(i).diameter(),
                screws.get(i).diameter(),
                "mm"));
      }
    }
    double misplaced = misplaced(screws, used);
    double room = Math.max(0, room(screws, used)) + unsure + HubFit.ROUNDING;
    if (!odd.isEmpty() && othersMisplaced(screws, used) <= room) {
      found.addAll(odd);
      return found;
    }
    if (misplaced <= room && !found.isEmpty()) {
      return found;
    }
    List<HubRing> scaled = new ArrayList<>();
    int from = 0;
    for (HubRing ring : trial.rings()) {
      List<Point> centres =
          used.subList(from, from + ring.count()).stream().map(Hole::centre).toList();
      from += ring.count();
      double own =
          PatternFigures.of(centres)
              .map(PatternFigures::pitchDiameter)
              .orElse(ring.pitchDiameter());
      scaled.add(
          new HubRing(ring.count(), own, ring.thread(), ring.firstAngle(), ring.plateHole()));
    }
    List<Round> fitted = RingTrial.screws(scaled);
    double rest = misplaced(fitted, used);
    double largest = used.stream().mapToDouble(Hole::diameter).max().orElseThrow();
    if (trial.bolts().size() != screws.size() && rest > largest) {
      // Another number of holes, and a screw far from any: the counts do not go together.
      found.add(
          new Mismatch(Mismatch.Kind.COUNT, "plate", trial.bolts().size(), screws.size(), ""));
      found.addAll(allOnAnotherCircle());
      return found;
    }
    if (rest < misplaced - HubFit.ROUNDING) {
      for (int k = 0; k < scaled.size(); k++) {
        double plate = scaled.get(k).pitchDiameter();
        double hub = trial.rings().get(k).pitchDiameter();
        if (Math.abs(plate - hub) > SAME_CIRCLE) {
          found.add(new Mismatch(Mismatch.Kind.PITCH_DIAMETER, "plate", plate, hub, "mm"));
        }
      }
    }
    if (rest > room || found.isEmpty()) {
      found.addAll(odd.isEmpty() ? List.of(worst(fitted, used)) : odd);
    }
    return found;
  }

  /** How far the worst centre is off when the odd holes are left out. */
  private double othersMisplaced(List<Round> screws, List<Hole> used) {
    List<Round> others = new ArrayList<>();
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < screws.size(); i++) {
      String label = used.get(i).label();
      if (odd.stream().noneMatch(one -> one.subject().equals(label))) {
        others.add(screws.get(i));
        holes.add(used.get(i));
      }
    }
    return misplaced(others, holes);
  }

  /** When all bolt holes stand on one circle and it is not the hub's. */
  private List<Mismatch> allOnAnotherCircle() {
    double hub = trial.rings().get(0).pitchDiameter();
    return PatternFigures.of(trial.bolts().stream().map(Hole::centre).toList())
        .filter(p -> trial.rings().size() == 1 && p.roundness() < SAME_CIRCLE)
        .filter(p -> Math.abs(p.pitchDiameter() - hub) > SAME_CIRCLE)
        .map(p -> new Mismatch(Mismatch.Kind.PITCH_DIAMETER, "plate", p.pitchDiameter(), hub, "mm"))
        .stream()
        .toList();
  }

  /** How far the worst centre is from its screw when hub and plate are laid best on each other. */
  private static double misplaced(List<Round> screws, List<Hole> used) {
    return -centres(screws, used).clearance();
  }

  private static RigidFit centres(List<Round> screws, List<Hole> used) {
    return RigidFit.of(RingTrial.centres(screws), RingTrial.centres(RingTrial.rounds(used)));
  }

  private static double room(List<Round> screws, List<Hole> used) {
    double room = Double.POSITIVE_INFINITY;
    for (int i = 0; i < screws.size(); i++) {
      room = Math.min(room, (used.get(i).diameter() - screws.get(i).diameter()) / 2);
    }
    return room;
  }

  /**
   * The hole that is off its place: the one without which the others match best, measured from
   * where they put it.
   */
  private static Mismatch worst(List<Round> screws, List<Hole> used) {
    int worst = 0;
    double off = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < screws.size() && screws.size() > 2; i++) {
      List<Round> others = new ArrayList<>(screws);
      Round left = others.remove(i);
      List<Hole> holes = new ArrayList<>(used);
      Hole hole = holes.remove(i);
      RigidFit rest = centres(others, holes);
      double misplaced = -rest.clearance();
      if (misplaced < least) {
        least = misplaced;
        worst = i;
        off = rest.placement().of(left.centre()).distance(hole.centre());
      }
    }
    if (screws.size() <= 2) {
      off = misplaced(screws, used);
    }
    return new Mismatch(Mismatch.Kind.SPACING, used.get(worst).label(), off, 0, "mm");
  }

  /** The circle of the holes that are used, or of all when there are too few. */
  static Optional<PatternFigures> pattern(RingTrial trial) {
    List<Point> centres = new ArrayList<>();
    for (Hole hole : trial.fit().isPresent() ? trial.used() : trial.bolts()) {
      centres.add(hole.centre());
    }
    return PatternFigures.of(centres);
  }
}
