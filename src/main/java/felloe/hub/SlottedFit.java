package felloe.hub;

import felloe.geometry.Point;
import felloe.hub.RigidFit.Round;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The placement of screws in holes of which some are slotted. A screw may stand anywhere along a
 * slot's middle line, so each slotted hole is a round one that may be shifted along it: it is put
 * where the screw stands nearest, the screws are placed anew, and so on. Each step leaves the
 * tightest screw no less room than the one before.
 */
public final class SlottedFit {

  private static final int ROUNDS = 400;

  /** Rounds end when one gains less than this, mm: as {@link TurnSearch#PRECISION}. */
  private static final double SETTLED = TurnSearch.PRECISION;

  private SlottedFit() {}

  /**
   * The best placement found; the room it tells is there, and for shifts of a pattern that is
   * turned little no other leaves more.
   *
   * @param screws at least one
   * @param holes at least as many as there are screws
   */
  public static RigidFit of(List<Round> screws, List<Hole> holes) {
    RigidFit best = RigidFit.of(screws, RingTrial.rounds(holes));
    if (holes.stream().noneMatch(Hole::isSlotted)) {
      return best;
    }
    best = settled(screws, holes, best);
    // Holes as round as their slots are long tell another pairing to start from.
    List<Round> wide = new ArrayList<>();
    holes.forEach(hole -> wide.add(new Round(hole.centre(), hole.length())));
    RigidFit other = settled(screws, holes, RigidFit.of(screws, wide));
    return other.clearance() > best.clearance() ? other : best;
  }

  private static RigidFit settled(List<Round> screws, List<Hole> holes, RigidFit start) {
    RigidFit fit = judged(screws, holes, start);
    for (int round = 0; round < ROUNDS; round++) {
      List<Round> shifted = new ArrayList<>(RingTrial.rounds(holes));
      for (int i = 0; i < screws.size(); i++) {
        int h = fit.holes().get(i);
        Hole hole = holes.get(h);
        Round at =
            new Round(hole.nearest(fit.placement().of(screws.get(i).centre())), hole.diameter());
        shifted.set(h, at);
      }
      RigidFit next = judged(screws, holes, RigidFit.of(screws, shifted));
      boolean done = next.clearance() <= fit.clearance() + SETTLED;
      fit = next.clearance() > fit.clearance() ? next : fit;
      if (done) {
        break;
      }
    }
    return fit;
  }

  /** A placement with the room that each screw has in its hole as it is. */
  private static RigidFit judged(List<Round> screws, List<Hole> holes, RigidFit placed) {
    List<Double> clearances = new ArrayList<>();
    for (int i = 0; i < screws.size(); i++) {
      Hole hole = holes.get(placed.holes().get(i));
      Point at = placed.placement().of(screws.get(i).centre());
      clearances.add(
          (hole.diameter() - screws.get(i).diameter()) / 2 - at.distance(hole.nearest(at)));
    }
    return new RigidFit(
        placed.placement(),
        placed.holes(),
        clearances,
        Collections.min(clearances),
        placed.symmetry(),
        placed.complete());
  }
}
