package felloe.report;

import felloe.cockpit.Clearance;
import felloe.cockpit.CockpitPlan;
import felloe.cockpit.WheelAxes;
import felloe.drawing.CockpitPicture;
import felloe.drawing.CockpitPicture.Seen;
import felloe.drawing.CockpitPicture.View;
import felloe.drawing.Picture;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Block;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Room;
import felloe.plate.Cockpit.Spot;
import felloe.service.CockpitOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The wheel and what is near it, seen along the column and from the driver's left. */
public final class CockpitPictures {

  /** A shorter gap is not seen in a picture, mm. */
  private static final double SHOWN = 1;

  /** How large the mark of an eye is drawn, mm. */
  private static final double EYE = 12;

  private final CockpitOutcome outcome;
  private final CockpitPlan plan;
  private final WheelAxes axes;

  public CockpitPictures(CockpitOutcome outcome) {
    this.outcome = outcome;
    this.plan = outcome.plan();
    this.axes = WheelAxes.of(plan.cockpit());
  }

  /** Along the column, as the driver sees the wheel. */
  public Picture front() {
    double reach = 1.15 * plan.outline().farthest(Point.ORIGIN);
    return CockpitPicture.of(
        new View(
            "Along the column, as the driver sees it",
            List.of(plan.outline()),
            plan.swept().contours(),
            List.of(
                new Line(new Point(-reach, 0), new Point(reach, 0)),
                new Line(new Point(0, -reach), new Point(0, reach))),
            List.of(),
            things(
                spot -> {
                  Spot wheel = axes.toWheel(spot);
                  return new Point(wheel.x(), wheel.y());
                })));
  }

  /** From the driver's left: the driver sits on the right. */
  public Picture side() {
    Box swept = plan.swept().outer().box();
    double end = plan.front() + 60;
    return CockpitPicture.of(
        new View(
            "From the left: the driver sits to the right",
            List.of(slab(plan.outline().box())),
            List.of(slab(swept)),
            List.of(new Line(beside(0, -120), beside(0, end))),
            driver(),
            things(CockpitPictures::beside)));
  }

  /** Trunk and right arm as lines, the eye, and what it looks along to the instrument. */
  private List<Segment> driver() {
    List<Segment> lines = new ArrayList<>();
    plan.seated()
        .ifPresent(
            driver -> {
              Cockpit.Seat seat = plan.cockpit().seat().orElseThrow();
              Point shoulder = beside(driver.shoulder(1));
              Point elbow = beside(driver.elbow(1));
              Point hand = beside(outcome.hands().right().y(), (plan.back() + plan.front()) / 2);
              lines.add(new Line(new Point(seat.behind(), seat.height()), shoulder));
              lines.add(new Line(shoulder, elbow));
              lines.add(new Line(elbow, hand));
              lines.add(Arc.circle(beside(driver.eye()), EYE));
            });
    outcome
        .sight()
        .ifPresent(
            sight -> {
              Point eye = beside(sight.eye());
              Cockpit.Instrument instrument = sight.instrument();
              Point high = beside(instrument.spot(new Point(0, instrument.height() / 2)));
              Point low = beside(instrument.spot(new Point(0, -instrument.height() / 2)));
              lines.add(new Line(low, high));
              lines.add(new Line(eye, high));
              lines.add(new Line(eye, low));
            });
    return lines;
  }

  private static Point beside(Spot spot) {
    return new Point(spot.z(), spot.y());
  }

  private Contour slab(Box box) {
    return Contour.polygon(
        List.of(
            beside(box.minY(), plan.back()),
            beside(box.minY(), plan.front()),
            beside(box.maxY(), plan.front()),
            beside(box.maxY(), plan.back())));
  }

  private Point beside(double y, double z) {
    return beside(axes.toCar(new Spot(0, y, z)));
  }

  private List<Seen> things(Function<Spot, Point> seen) {
    List<Seen> all = new ArrayList<>();
    for (Clearance one : plan.clearances()) {
      Point wheel = seen.apply(one.wheel());
      Point near = seen.apply(one.near());
      String label = Integer.toString(all.size() + 1);
      Optional<Line> gap =
          wheel.distance(near) > SHOWN ? Optional.of(new Line(wheel, near)) : Optional.empty();
      all.add(new Seen(label, edges(one.thing().room(), seen), gap));
    }
    return all;
  }

  private static List<Contour> edges(Room room, Function<Spot, Point> seen) {
    if (room instanceof Limb limb) {
      return List.of(rounded(seen.apply(limb.from()), seen.apply(limb.to()), limb.radius()));
    }
    Block block = (Block) room;
    Box box = null;
    for (Spot x : List.of(block.low(), block.high())) {
      for (Spot y : List.of(block.low(), block.high())) {
        for (Spot z : List.of(block.low(), block.high())) {
          Point p = seen.apply(new Spot(x.x(), y.y(), z.z()));
          box = box == null ? Box.of(p, p) : box.union(Box.of(p, p));
        }
      }
    }
    return List.of(Contour.rectangle(box));
  }

  private static Contour rounded(Point from, Point to, double radius) {
    if (from.distance(to) < SHOWN) {
      return Contour.circle(from, radius);
    }
    Point side = to.minus(from).times(radius / from.distance(to)).right();
    return Contour.of(
        new Line(from.plus(side), to.plus(side)),
        Arc.about(to, to.plus(side), to.minus(side), true),
        new Line(to.minus(side), from.minus(side)),
        Arc.about(from, from.minus(side), from.plus(side), true));
  }
}
