package felloe.hub;

import felloe.geometry.Point;
import felloe.hub.RigidFit.Round;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * One set of rings of a hub tried on the bolt holes of a plate.
 *
 * @param rings the rings that are used
 * @param bolts the plate's bolt holes
 * @param fit the best placement; empty when there are too few holes
 */
record RingTrial(List<HubRing> rings, List<Hole> bolts, Optional<RigidFit> fit) {

  static RingTrial of(List<HubRing> rings, List<Hole> bolts) {
    List<Round> screws = screws(rings);
    return new RingTrial(
        rings,
        bolts,
        bolts.size() < screws.size()
            ? Optional.empty()
            : Optional.of(SlottedFit.of(screws, bolts)));
  }

  /** The holes as round ones; a slotted one where its screw stands at the best placement. */
  List<Round> usedRounds() {
    RigidFit best = fit.orElseThrow();
    List<Round> screws = screws();
    List<Hole> used = used();
    List<Round> rounds = new ArrayList<>(used.size());
    for (int i = 0; i < used.size(); i++) {
      Point at = used.get(i).nearest(best.placement().of(screws.get(i).centre()));
      rounds.add(new Round(at, used.get(i).diameter()));
    }
    return rounds;
  }

  /** The holes as round ones about their middles. */
  static List<Round> rounds(List<Hole> holes) {
    List<Round> rounds = new ArrayList<>(holes.size());
    for (Hole hole : holes) {
      rounds.add(new Round(hole.centre(), hole.diameter()));
    }
    return rounds;
  }

  /** Things of no size at the places of others: for comparing centres alone. */
  static List<Round> centres(List<Round> rounds) {
    List<Round> centres = new ArrayList<>(rounds.size());
    for (Round round : rounds) {
      centres.add(new Round(round.centre(), 0));
    }
    return centres;
  }

  /** The same with diameters of the other sign: screws and holes change parts. */
  static List<Round> swapped(List<Round> rounds) {
    List<Round> swapped = new ArrayList<>(rounds.size());
    for (Round round : rounds) {
      swapped.add(new Round(round.centre(), -round.diameter()));
    }
    return swapped;
  }

  static List<Round> screws(List<HubRing> rings) {
    List<Round> screws = new ArrayList<>();
    for (HubRing ring : rings) {
      for (Point centre : ring.centres()) {
        screws.add(new Round(centre, ring.thread().diameter()));
      }
    }
    return screws;
  }

  List<Round> screws() {
    return screws(rings);
  }

  /** The thread of each screw. */
  List<ScrewThread> threads() {
    List<ScrewThread> threads = new ArrayList<>();
    for (HubRing ring : rings) {
      for (int i = 0; i < ring.count(); i++) {
        threads.add(ring.thread());
      }
    }
    return threads;
  }

  /** The hole of each screw. */
  List<Hole> used() {
    List<Hole> used = new ArrayList<>();
    for (int hole : fit.orElseThrow().holes()) {
      used.add(bolts.get(hole));
    }
    return used;
  }

  List<Hole> spare() {
    List<Hole> spare = new ArrayList<>();
    for (int i = 0; fit.isPresent() && i < bolts.size(); i++) {
      if (!fit.get().holes().contains(i)) {
        spare.add(bolts.get(i));
      }
    }
    return spare;
  }

  /** The room of the tightest screw; below everything when there are too few holes. */
  double clearance() {
    return fit.isPresent() ? fit.get().clearance() : Double.NEGATIVE_INFINITY;
  }

  /**
   * The same trial at the placement of a fit that has one thing more than the screws, on holes that
   * are those used here and one more.
   */
  RingTrial at(RigidFit more) {
    RigidFit old = fit.orElseThrow();
    List<Integer> holes = new ArrayList<>();
    List<Double> clearances = new ArrayList<>();
    for (int i = 0; i < old.holes().size(); i++) {
      holes.add(old.holes().get(more.holes().get(i)));
      clearances.add(more.clearances().get(i));
    }
    double least = Collections.min(clearances);
    return new RingTrial(
        rings,
        bolts,
        Optional.of(
            new RigidFit(
                more.placement(), holes, clearances, least, old.symmetry(), old.complete())));
  }
}
