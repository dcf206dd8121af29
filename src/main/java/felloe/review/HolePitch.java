package felloe.review;

import felloe.geometry.Numbers;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pitch of holes that take fasteners: centre to centre, in diameters of the larger one. Two holes
 * of which one is a hub bolt's are held against the bolt limit, others against that of light duty.
 * The closest pair of each kind is told in any case, and every other one that is beyond the limit.
 */
record HolePitch() implements Rule {

  /**
   * Two holes.
   *
   * @param pitch from centre to centre, mm
   * @param ratio the pitch in diameters of the larger one
   */
  private record Pair(Hole a, Hole b, double pitch, double ratio) {

    static Pair of(Hole a, Hole b) {
      double pitch = pitch(a, b);
      return new Pair(a, b, pitch, LimitPair.rounded(pitch / diameter(a, b)));
    }

    private static double pitch(Hole a, Hole b) {
      if (!a.isSlotted() && !b.isSlotted()) {
        return LimitPair.rounded(a.centre().distance(b.centre()));
      }
      // The nearest that the screws may come to stand, by the edges of the holes.
      double web = a.contour().gap(b.contour()).distance();
      return LimitPair.rounded(web + (a.diameter() + b.diameter()) / 2);
    }

    private static double diameter(Hole a, Hole b) {
      return Math.max(a.diameter(), b.diameter());
    }

    double diameter() {
      return diameter(a, b);
    }
  }

  @Override
  public String id() {
    return "hole-pitch";
  }

  @Override
  public String why() {
    return "Screw holes too close together tear into each other.";
  }

  @Override
  public String unit() {
    return "D";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    List<Hole> holes =
        plate.holes().stream().filter(hole -> NamedContour.takesFastener(hole, limits)).toList();
    List<Finding> findings = new ArrayList<>();
    for (boolean bolted : new boolean[] {true, false}) {
      String row = NamedContour.row(plate, bolted ? HoleRole.BOLT : HoleRole.GRIP);
      LimitPair bounds = limits.of(this, row, Sense.AT_LEAST, 1);
      Pair closest = null;
      List<Pair> open = new ArrayList<>();
      for (Pair pair : pairs(holes, bolted)) {
        closest = closest == null || pair.ratio() < closest.ratio() ? pair : closest;
        if (bounds.judge(pair.ratio()) != Verdict.PASS) {
          open.add(pair);
        }
      }
      // Where none is open, the closest still tells how much room there is.
      List<Pair> told = closest == null || !open.isEmpty() ? open : List.of(closest);
      told.forEach(pair -> findings.add(finding(pair, bounds)));
    }
    return findings;
  }

  private static List<Pair> pairs(List<Hole> holes, boolean bolted) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      for (int j = i + 1; j < holes.size(); j++) {
        if (isBolted(holes.get(i), holes.get(j)) == bolted) {
          pairs.add(Pair.of(holes.get(i), holes.get(j)));
        }
      }
    }
    return pairs;
  }

  private static boolean isBolted(Hole a, Hole b) {
    return a.role() == HoleRole.BOLT || b.role() == HoleRole.BOLT;
  }

  private Finding finding(Pair pair, LimitPair bounds) {
    return bounds.finding(
        this,
        pair.a().label() + " to " + pair.b().label(),
        "pitch p/D",
        pair.ratio(),
        Optional.of(pair.a().centre().middle(pair.b().centre())),
        pair.b().place(),
        "the centres are "
            + Numbers.brief(pair.pitch(), 2)
            + " mm apart; "
            + bounds.keeps(pair.ratio(), pair.diameter()));
  }
}
