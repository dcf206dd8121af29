package felloe.hub;

import felloe.geometry.Motion;
import felloe.geometry.Point;
import felloe.hub.RigidFit.Round;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One set of rings of a hub tried on the bolt holes of a plate.
 *
 * @param rings the rings that are used
 * @param bolts the plate's bolt holes
 * @param fit the best placement; empty when there are too few holes
 */
record Trial(List<HubRing> rings, List<Hole> bolts, Optional<RigidFit> fit) {

  static Trial of(List<HubRing> rings, List<Hole> bolts) {
    List<Round> screws = screws(rings);
    return new Trial(
        rings,
        bolts,
        bolts.size() < screws.size()
            ? Optional.empty()
            : Optional.of(RigidFit.of(screws, rounds(bolts, Hole::diameter))));
  }

  static List<Round> rounds(List<Hole> holes, ToDoubleFunction<Hole> diameter) {
    return holes.stream().map(h -> new Round(h.centre(), diameter.applyAsDouble(h))).toList();
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
    return fit.orElseThrow().holes().stream().map(bolts::get).toList();
  }

  List<Hole> spare() {
    return fit.isEmpty()
        ? List.of()
        : bolts.stream().filter(hole -> !used().contains(hole)).toList();
  }

  /** The room of the tightest screw; below everything when there are too few holes. */
  double clearance() {
    return fit.map(RigidFit::clearance).orElse(Double.NEGATIVE_INFINITY);
  }

  /** The same trial at another placement of the same pairing. */
  Trial at(Motion placement) {
    RigidFit old = fit.orElseThrow();
    List<Round> screws = screws();
    List<Double> clearances = new ArrayList<>();
    for (int i = 0; i < screws.size(); i++) {
      Hole hole = used().get(i);
      double distance = placement.of(screws.get(i).centre()).distance(hole.centre());
      clearances.add((hole.diameter() - screws.get(i).diameter()) / 2 - distance);
    }
    double least = clearances.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    return new Trial(
        rings,
        bolts,
        Optional.of(
            new RigidFit(
                placement, old.holes(), clearances, least, old.symmetry(), old.complete())));
  }
}
