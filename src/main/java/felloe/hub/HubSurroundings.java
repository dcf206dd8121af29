package felloe.hub;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies round the hub on the plate: all holes, and outline and windows when they are known.
 *
 * @param holes of every role
 * @param outline the plate's edge, if known
 * @param windows openings, if known
 */
record HubSurroundings(List<Hole> holes, Optional<Contour> outline, List<Window> windows) {

  /** Material between a new hole and its nearest neighbour, with the neighbour's name. */
  record Web(double width, String to) {
    static final Web ENDLESS = new Web(Double.POSITIVE_INFINITY, "");

    Web lesser(double other, String name) {
      return other < width ? new Web(other, name) : this;
    }
  }

  static HubSurroundings of(Plate plate) {
    return new HubSurroundings(plate.holes(), Optional.of(plate.outline()), plate.windows());
  }

  static HubSurroundings of(List<Hole> holes) {
    return new HubSurroundings(holes, Optional.empty(), List.of());
  }

  List<Hole> bolts() {
    List<Hole> bolts = new ArrayList<>();
    for (Hole hole : holes) {
      if (hole.role() == HoleRole.BOLT) {
        bolts.add(hole);
      }
    }
    return bolts;
  }

  /** The same without the hole or window of a label. */
  HubSurroundings without(String label) {
    return new HubSurroundings(
        holes.stream().filter(h -> !h.label().equals(label)).toList(),
        outline,
        windows.stream().filter(w -> !w.label().equals(label)).toList());
  }

  /** The same with one more hole. */
  HubSurroundings with(Hole hole) {
    List<Hole> more = new ArrayList<>(holes);
    more.add(hole);
    return new HubSurroundings(more, outline, windows);
  }

  /** The least material round some new holes of one diameter. */
  Web web(List<Point> centres, double diameter) {
    Web web = Web.ENDLESS;
    for (Point p : centres) {
      for (Hole hole : holes) {
        double between = p.distance(hole.nearest(p)) - hole.diameter() / 2;
        web = web.lesser(between - diameter / 2, hole.label());
      }
      if (outline.isPresent()) {
        Contour edge = outline.get();
        double inside = edge.contains(p) ? edge.distance(p) : -edge.distance(p);
        web = web.lesser(inside - diameter / 2, "the outline");
      }
      for (Window window : windows) {
        Contour edge = window.contour();
        double outside = edge.contains(p) ? -edge.distance(p) : edge.distance(p);
        web = web.lesser(outside - diameter / 2, window.label());
      }
    }
    return web;
  }

  /** The opening that a spigot at a place has most room in. */
  PilotFit pilot(double pilot, Point axis) {
    PilotFit best = new PilotFit(pilot, Optional.empty(), Optional.empty(), Optional.empty());
    for (Hole hole : holes) {
      double room = (hole.diameter() - pilot) / 2 - hole.nearest(axis).distance(axis);
      boolean round =
          hole.role() == HoleRole.BORE || hole.nearest(axis).distance(axis) < hole.diameter() / 2;
      if (round && room > best.clearance().orElse(Double.NEGATIVE_INFINITY)) {
        best =
            new PilotFit(
                pilot, Optional.of(hole.label()), Optional.of(hole.diameter()), Optional.of(room));
      }
    }
    for (Window window : windows) {
      double room = window.contour().distance(axis) - pilot / 2;
      if (window.contour().contains(axis)
          && room > best.clearance().orElse(Double.NEGATIVE_INFINITY)) {
        best =
            new PilotFit(pilot, Optional.of(window.label()), Optional.empty(), Optional.of(room));
      }
    }
    return best;
  }
}
