package felloe.jig;

import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.Plate;
import felloe.plate.Printer;
import felloe.plate.Problem;
import felloe.plate.Window;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The drill jig in plan. */
final class JigBody {

  /** Material of a jig beyond its outermost hole, mm; common practice. */
  private static final double EDGE = 7;

  /** Width of a rim round the plate, mm; common practice. */
  private static final double RIM = 6;

  private final Plate plate;
  private final JigWish wish;
  private final Printer printer;
  private final Locator locator;

  JigBody(Plate plate, JigWish wish, Printer printer, Locator locator) {
    this.plate = plate;
    this.wish = wish;
    this.printer = printer;
    this.locator = locator;
  }

  /**
   * The jig in plan: the plate with a rim, a disc round the hub's holes, or the plate without its
   * holes.
   */
  Region of(List<Guide> guides) {
    List<Guide> round = new ArrayList<>(guides);
    if (!locator.spigot() && !locator.rim()) {
      locator
          .holes()
          .forEach(hole -> round.add(new Guide(hole, locator.size(), Optional.empty(), List.of())));
    }
    List<Contour> edges = new ArrayList<>();
    Contour outer;
    if (locator.rim()) {
      outer = Offset.of(plate.outline(), locator.size() + RIM).get(0).outer();
      plate.windows().stream().map(Window::contour).forEach(edges::add);
    } else if (wish.all()) {
      outer = plate.outline();
      plate.windows().stream().map(Window::contour).forEach(edges::add);
    } else {
      Point middle = locator.middle();
      double reach = locator.spigot() ? locator.size() / 2 : 0;
      for (Guide guide : round) {
        reach = Math.max(reach, guide.hole().centre().distance(middle) + guide.bore() / 2);
      }
      outer = Contour.circle(middle, reach + EDGE);
    }
    refuseThinWalls(round, outer, edges);
    round.forEach(g -> edges.add(Contour.circle(g.hole().centre(), g.bore() / 2)));
    return new Region(outer, edges);
  }

  private void refuseThinWalls(List<Guide> guides, Contour outer, List<Contour> edges) {
    Problems problems = new Problems();
    double least = printer.thinnestWall();
    for (int i = 0; i < guides.size(); i++) {
      Guide guide = guides.get(i);
      Point at = guide.hole().centre();
      double wall = outer.distance(at) - guide.bore() / 2;
      for (Contour edge : edges) {
        wall = Math.min(wall, edge.distance(at) - guide.bore() / 2);
      }
      String beside = "the edge";
      for (Guide other : guides.subList(0, i)) {
        double between = at.distance(other.hole().centre()) - (guide.bore() + other.bore()) / 2;
        if (between < wall) {
          wall = between;
          beside = other.hole().label();
        }
      }
      if (locator.spigot()) {
        double between = at.distance(locator.middle()) - guide.bore() / 2 - locator.size() / 2;
        if (between < wall) {
          wall = between;
          beside = "the spigot";
        }
      }
      if (wall < least) {
        problems.add(
            new Problem(
                guide.hole().place(),
                "guide " + guide.hole().label(),
                "",
                "leaves a wall of "
                    + JigMaker.mm(Math.max(0, wall))
                    + " to "
                    + beside
                    + "; a nozzle of "
                    + JigMaker.mm(printer.nozzle())
                    + " needs "
                    + JigMaker.mm(least),
                wish.bushes() ? "guide it without bushes, or print finer" : "print finer"));
      }
    }
    problems.throwIfAny();
  }
}
