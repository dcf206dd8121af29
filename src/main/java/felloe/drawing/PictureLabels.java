package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Short labels of holes, and of windows too small to carry theirs: beside the hole where there is
 * room, over a centre line where there is none else, and farther away with a leader where both
 * fail. A window's label stands in the window or has a leader. What finds no place at all is
 * counted below.
 */
final class PictureLabels {

  private static final double INSIDE = 9;

  /** From an edge to its label, units. */
  private static final double GAP = 1.2;

  /** A leader is no longer than this, units; and no shorter than a letter. */
  private static final double FARTHEST = 70;

  private static final double NEAREST = 3;
  private static final double[] ASIDE = {0, 45, -45, 90, -90, 135, -135, 180};

  private final PictureInk ink;
  private final double unit;
  private final List<String> left = new ArrayList<>();

  PictureLabels(PictureInk ink) {
    this.ink = ink;
    this.unit = ink.unit();
  }

  /** What a label belongs to; a window has its contour. */
  private record Owner(String label, Point centre, double radius, Optional<Contour> window) {
    double outward(double unit) {
      return centre.norm() > unit ? centre.angle() : Math.PI / 4;
    }

    /** The point of its edge that is nearest to a point outside. */
    Point edge(Point from) {
      return window
          .map(contour -> contour.nearest(from))
          .orElseGet(() -> centre.plus(from.minus(centre).unit(), radius));
    }
  }

  void draw(List<Hole> holes, List<Window> windows) {
    List<Owner> owners = new ArrayList<>();
    for (Hole hole : holes) {
      owners.add(new Owner(hole.label(), hole.centre(), hole.diameter() / 2, Optional.empty()));
    }
    for (Window window : windows) {
      Box box = window.contour().box();
      double radius = Math.max(box.width(), box.height()) / 2;
      owners.add(new Owner(window.label(), box.centre(), radius, Optional.of(window.contour())));
    }
    List<Owner> tight = new ArrayList<>();
    for (Owner owner : owners) {
      if (!beside(owner, false)) {
        tight.add(owner);
      }
    }
    for (Owner owner : tight) {
      if (!beside(owner, true) && !byLeader(owner)) {
        left.add(owner.label());
      }
    }
  }

  /** How many labels found no place, in words; empty when all did. */
  Optional<String> lacks() {
    if (left.isEmpty()) {
      return Optional.empty();
    }
    String labels = left.size() == 1 ? "1 label has" : left.size() + " labels have";
    return Optional.of(
        labels + " no room here (" + left.get(0) + (left.size() > 1 ? " and more" : "") + ").");
  }

  private boolean beside(Owner owner, boolean overCentreLine) {
    for (double aside : ASIDE) {
      double angle = owner.outward(unit) + Math.toRadians(aside);
      if (labelled(owner, angle, overCentreLine)) {
        return true;
      }
    }
    return false;
  }

  private boolean labelled(Owner owner, double angle, boolean overCentreLine) {
    double tall = PictureInk.SMALL * unit;
    double half = TextWidth.of(owner.label(), tall) / 2;
    boolean inside = owner.radius() > INSIDE * unit + half;
    // Inside a wide hole the lettering hugs the lower left of the edge; else it stands just
    // outside.
    Point middle = owner.centre();
    if (inside) {
      double reach = owner.radius() - Math.hypot(half, tall / 2) - unit;
      middle = middle.plus(Point.polar(reach, angle + Math.toRadians(225)));
    } else {
      Point step = Point.polar(0.2 * unit, angle);
      while (aside(owner.centre(), middle, half, tall / 2) < owner.radius() + GAP * unit) {
        middle = middle.plus(step);
      }
    }
    Box box = box(owner, middle);
    Box room = box.grown(0.5 * unit);
    boolean within = owner.window().filter(w -> holds(w, room)).isPresent();
    if (ink.room().hardCost(room) > 0
        || (!overCentreLine && ink.room().onCentreLine(room))
        || (inside && owner.window().isPresent() && !within)) {
      return false;
    }
    if (owner.window().isPresent() && !within) {
      return led(owner, middle);
    }
    if (overCentreLine) {
      ink.wipe(box);
    }
    write(owner, middle);
    return true;
  }

  private static boolean holds(Contour window, Box box) {
    return window.contains(new Point(box.minX(), box.minY()))
        && window.contains(new Point(box.minX(), box.maxY()))
        && window.contains(new Point(box.maxX(), box.minY()))
        && window.contains(new Point(box.maxX(), box.maxY()));
  }

  /** Farther and farther away, outward first. */
  private boolean byLeader(Owner owner) {
    for (double away = NEAREST; away <= FARTHEST; away += NEAREST) {
      for (int i = 0; i < 2 * ASIDE.length; i++) {
        double aside = ((i + 1) / 2) * (i % 2 == 0 ? 1 : -1) * Math.PI / ASIDE.length;
        Point middle =
            owner
                .centre()
                .plus(Point.polar(owner.radius() + away * unit, owner.outward(unit) + aside));
        if (ink.room().cost(box(owner, middle).grown(0.5 * unit)) == 0 && led(owner, middle)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Writes a label with its leader, where that strikes no lettering. */
  private boolean led(Owner owner, Point middle) {
    Box box = box(owner, middle);
    Point edge = owner.edge(middle);
    Point start =
        new Point(
            Math.max(box.minX(), Math.min(box.maxX(), edge.x())),
            Math.max(box.minY(), Math.min(box.maxY(), edge.y())));
    if (start.near(edge, 0.1 * unit) || ink.room().cost(start, edge) > 0) {
      return false;
    }
    ink.line(start, edge, LineType.THIN);
    write(owner, middle);
    return true;
  }

  private void write(Owner owner, Point middle) {
    ink.text(owner.label(), base(middle), PictureInk.SMALL, 0, Anchor.MIDDLE);
  }

  private Box box(Owner owner, Point middle) {
    return ink.textBox(owner.label(), base(middle), PictureInk.SMALL, Anchor.MIDDLE);
  }

  private Point base(Point middle) {
    return new Point(middle.x(), middle.y() - PictureInk.SMALL * unit / 2);
  }

  /** Distance from a point to a box about a middle. */
  private static double aside(Point from, Point middle, double halfWidth, double halfHeight) {
    double dx = Math.max(0, Math.abs(from.x() - middle.x()) - halfWidth);
    double dy = Math.max(0, Math.abs(from.y() - middle.y()) - halfHeight);
    return Math.hypot(dx, dy);
  }
}
