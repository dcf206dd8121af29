package felloe.review;

import felloe.geometry.Gap;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Edge distance of each hole that takes a fastener: from its centre to the outline, to each window
 * and to each opening that takes none (the bore, wide holes), in hole diameters. The nearest edge
 * is told in any case, and every other one that is beyond the limit.
 */
record EdgeDistance() implements Rule {

  private record Reach(NamedContour edge, double distance) {}

  @Override
  public String id() {
    return "edge-distance";
  }

  @Override
  public String why() {
    return "A screw hole too near an edge tears out.";
  }

  @Override
  public String unit() {
    return "D";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    List<NamedContour> edges = new ArrayList<>();
    edges.add(NamedContour.outline(plate));
    plate.windows().forEach(window -> edges.add(NamedContour.of(window)));
    for (Hole hole : plate.holes()) {
      if (!NamedContour.takesFastener(hole, limits)) {
        edges.add(NamedContour.of(hole));
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (Hole hole : plate.holes()) {
      if (NamedContour.takesFastener(hole, limits)) {
        LimitPair bounds = limits.of(this, NamedContour.row(plate, hole.role()), Sense.AT_LEAST, 1);
        add(hole, edges, bounds, findings);
      }
    }
    return findings;
  }

  /** From where the screw may stand: the centre, or any place along a slotted hole. */
  private static double distance(NamedContour edge, Hole hole) {
    if (!hole.isSlotted()) {
      return edge.contour().distance(hole.centre());
    }
    Line axis = new Line(hole.ends().get(0), hole.ends().get(1));
    return edge.contour().segments().stream()
        .mapToDouble(segment -> Gap.between(axis, segment).distance())
        .min()
        .orElseThrow();
  }

  private void add(Hole hole, List<NamedContour> edges, LimitPair bounds, List<Finding> findings) {
    List<Reach> reaches =
        edges.stream()
            .map(edge -> new Reach(edge, LimitPair.rounded(distance(edge, hole))))
            .sorted(Comparator.comparingDouble(Reach::distance))
            .toList();
    for (Reach reach : reaches) {
      double ratio = reach.distance() / hole.diameter();
      if (reach == reaches.get(0) || bounds.judge(ratio) != Verdict.PASS) {
        findings.add(
            bounds.finding(
                this,
                hole.label() + " to " + reach.edge().label(),
                "edge distance e/D",
                ratio,
                Optional.of(hole.centre()),
                hole.place(),
                (hole.isSlotted() ? "its middle line lies " : "its centre lies ")
                    + Numbers.brief(reach.distance(), 2)
                    + " mm from the edge; "
                    + bounds.keeps(ratio, hole.diameter())));
      }
    }
  }
}
