package felloe.template;

import felloe.drawing.Anchor;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Paragraph;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.BoltCircle;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Finds places for the words and arrows of a template and draws them there. */
final class Lettering {

  private static final double CLEAR = 0.9;
  private static final double GOOD = 60;
  private static final double LONGEST_NAME = 40;

  /** Where there is room a window's label stands as much farther from others, mm. */
  private static final double AIR = 2;

  /** What stands on no other lettering costs less. */
  private static final double COVERED = FreeSpace.TAKEN / 2;

  private static final double UNWANTED = 80;
  private static final Predicate<Point> ANYWHERE = p -> true;

  /** Where words may stand outside of a part too small for them, mm beyond its rough line. */
  static final double SURROUND = 14;

  private final FreeSpace ground;
  private final LaidShape shape;
  private final List<Mark> marks = new ArrayList<>();

  Lettering(FreeSpace ground, LaidShape shape) {
    this.ground = ground;
    this.shape = shape;
  }

  List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** What a hole in the waste is, and its diameter; off the part, where there is room. */
  void waste(WasteHole hole) {
    String text = "waste  \u00d8" + Numbers.brief(hole.diameter(), 2);
    beside(text, hole.at(), hole.diameter() / 2, this::inWaste);
  }

  private boolean inWaste(Point p) {
    return !shape.outline().contains(p) || shape.windows().stream().anyMatch(w -> w.contains(p));
  }

  /** A hole's label and diameter beside it. */
  void hole(Hole hole) {
    String text = Paragraph.fit(hole.label(), StripText.SMALL, LONGEST_NAME) + "  " + hole.size();
    beside(text, hole.centre(), hole.length() / 2, ANYWHERE);
  }

  /** Farther than this from a hole its label has a leader, mm. */
  private static final double NEAR = 3;

  private void beside(String text, Point centre, double radius, Predicate<Point> wanted) {
    Mark.Label best = null;
    double least = Double.POSITIVE_INFINITY;
    double reach = 0;
    for (double away : new double[] {1, NEAR, 6, 10, 15, 21, 28, 36, 45, 55, 66, 78, 90}) {
      for (int i = 0; i < 16; i++) {
        Point out = Point.polar(1, Math.PI / 8 * (i + 0.5));
        Mark.Label label = label(text, centre.plus(out, radius + away), out);
        double cost = ground.cost(label.box().grown(CLEAR)) + 4 * away + (out.x() < 0 ? 0.5 : 0);
        cost += wanted.test(label.box().centre()) ? 0 : UNWANTED;
        if (away > NEAR && cost < least) {
          cost += FreeSpace.TAKEN * ground.taken(leader(label, centre, radius));
        }
        if (cost < least) {
          least = cost;
          best = label;
          reach = away;
        }
      }
      if (least < 5 * away) {
        break;
      }
    }
    put(best);
    if (reach > NEAR) {
      put(Mark.Stroke.of(leader(best, centre, radius), LineType.THIN));
    }
  }

  private static Line leader(Mark.Label label, Point centre, double radius) {
    Point end = nearestCorner(label.box(), centre);
    return new Line(centre.plus(end.minus(centre).unit(), radius), end);
  }

  private Mark.Label label(String text, Point at, Point out) {
    Anchor anchor =
        Math.abs(out.x()) < 0.4 ? Anchor.MIDDLE : out.x() > 0 ? Anchor.START : Anchor.END;
    double drop = StripText.SMALL * (0.5 - 0.5 * out.y());
    return Mark.Label.of(text, new Point(at.x(), at.y() - drop), StripText.SMALL, anchor);
  }

  private static Point nearestCorner(Box box, Point p) {
    double y = (box.minY() + box.maxY()) / 2;
    double x = Math.max(box.minX() - 0.5, Math.min(box.maxX() + 0.5, p.x()));
    boolean beside = p.x() < box.minX() || p.x() > box.maxX();
    if (beside) {
      return new Point(x, y);
    }
    return new Point(x, p.y() > y ? box.maxY() + 0.5 : box.minY() - 0.3);
  }

  /** Each window's label, inside it where it has room, else beside it. */
  void windows() {
    for (int i = 0; i < shape.windows().size(); i++) {
      Window window = shape.plate().windows().get(i);
      if (window.asHole().isPresent()) {
        continue;
      }
      Contour edge = shape.windows().get(i);
      Box box = edge.box();
      List<String> texts = List.of(window.label() + "  " + window.use().words(), window.label());
      Spot best = null;
      String said = "";
      for (String text : texts) {
        Spot spot = spot(text, AIR, box, box.centre(), edge::contains);
        if (!ground.covers(text(text, spot.middle()).box().grown(AIR))) {
          best = spot;
          said = text;
          break;
        }
        spot = spot(text, 0, box, box.centre(), edge::contains);
        if (best == null || spot.cost() < best.cost()) {
          best = spot;
          said = text;
        }
        if (best.cost() < GOOD) {
          break;
        }
      }
      if (best.cost() >= COVERED) {
        best = spot(said, 0, box.grown(20), box.centre(), ANYWHERE);
      }
      put(text(said, best.middle()));
    }
  }

  /** What each pitch circle carries. */
  void pitchCircles() {
    for (BoltCircle ring : shape.plate().boltCircles()) {
      if (ring.count() < 2) {
        continue;
      }
      String text =
          ring.count()
              + " x \u00d8"
              + Numbers.brief(ring.holeDiameter(), 2)
              + " on PCD "
              + Numbers.brief(ring.pitchDiameter(), 3);
      Point origin = shape.motion().of(Point.ORIGIN);
      double radius = ring.pitchDiameter() / 2 + 6;
      Point near = origin.plus(new Point(0, -radius));
      double reach = radius + 25;
      Box area =
          new Box(origin.x() - reach, origin.y() - reach, origin.x() + reach, origin.y() + reach);
      put(text(text, spot(text, 0, area, near, ANYWHERE).middle()));
    }
  }

  /** An arrow that points up as the driver sees the wheel. */
  void up() {
    Point up = shape.motion().of(new Point(0, 1)).minus(shape.motion().of(Point.ORIGIN));
    Box box = shape.outline().box();
    double length = Math.min(18, box.height() / 4);
    double wide = Math.abs(up.x()) * length + Math.abs(up.y()) * 9;
    double high = Math.abs(up.y()) * length + Math.abs(up.x()) * 9;
    Point top = shape.motion().of(new Point(0, 0)).plus(up, box.height() / 3);
    Point middle = spot(wide + 2, high + 2, box, top, ANYWHERE).middle();
    Point along = up.times(length / 2);
    Point beside = up.right().times(-2);
    arrow(middle.minus(along).plus(beside), middle.plus(along).plus(beside), 3.5, false);
    double turn = Math.atan2(-up.x(), up.y());
    Point base = middle.plus(up.right(), 0.5).plus(up, -1.2);
    put(new Mark.Label("UP", base, 2.5, turn, Anchor.START));
    ground.block(
        new Box(
            middle.x() - wide / 2,
            middle.y() - high / 2,
            middle.x() + wide / 2,
            middle.y() + high / 2),
        FreeSpace.TAKEN);
  }

  /** The direction of fibre or face grain; nothing for stock that has none. */
  void grain() {
    MaterialKind kind = shape.plate().stock().material().kind();
    if (kind != MaterialKind.LAMINATE && kind != MaterialKind.WOOD) {
      return;
    }
    String text = kind == MaterialKind.LAMINATE ? "0\u00b0 fibre" : "face grain";
    Point along = shape.motion().of(new Point(1, 0)).minus(shape.motion().of(Point.ORIGIN));
    double turn =
        Math.atan(
            along.y()
                / (Math.abs(along.x()) < Tolerances.ROUNDING ? Tolerances.ROUNDING : along.x()));
    Point reading = Point.polar(1, turn);
    Box box = shape.outline().box();
    double half =
        Math.max(TextWidth.of(text, StripText.SMALL) / 2 + 1, Math.min(16, box.width() / 6));
    double wide = Math.abs(along.x()) * 2 * half + Math.abs(along.y()) * 7;
    double high = Math.abs(along.y()) * 2 * half + Math.abs(along.x()) * 7;
    Point preferred = shape.motion().of(new Point(0, -box.height() / 3));
    Point middle = spot(wide + 2, high + 2, box, preferred, ANYWHERE).middle();
    Point line = middle.plus(reading.left(), -2);
    arrow(line.plus(reading, -half), line.plus(reading, half), 3, true);
    put(
        new Mark.Label(
            text, middle.plus(reading.left(), -0.3), StripText.SMALL, turn, Anchor.MIDDLE));
    ground.block(
        new Box(
            middle.x() - wide / 2,
            middle.y() - high / 2,
            middle.x() + wide / 2,
            middle.y() + high / 2),
        FreeSpace.TAKEN);
  }

  /** Name, revision, scale, face and use, in narrow lines on the part itself. */
  void name() {
    Plate plate = shape.plate();
    List<String> lines =
        List.of(
            Paragraph.fit(plate.name(), StripText.SMALL, LONGEST_NAME)
                + "  rev "
                + plate.revision()
                + "  1:1",
            shape.face() == Face.FRONT ? "front face" : "BACK FACE (mirrored)",
            "closed-course use; not for public roads");
    double small = StripText.SMALL;
    double pitch = StripText.PITCH;
    double width = TextWidth.widest(lines, small);
    Box one = Mark.Label.of(lines.get(0), Point.ORIGIN, small, Anchor.START).box();
    double high = pitch * (lines.size() - 1) + one.height();
    Box box = shape.outline().box();
    Point near = new Point(box.centre().x(), box.minY() + box.height() / 6);
    // A small part has no room for it; then it stands below, outside of the rough line.
    Box area = box.width() < 150 ? shape.box().grown(SURROUND) : box;
    Point middle = spot(width, high, area, near, ANYWHERE).middle();
    for (int i = 0; i < lines.size(); i++) {
      Point at = new Point(middle.x() - width / 2, middle.y() + high / 2 - one.maxY() - i * pitch);
      put(Mark.Label.of(lines.get(i), at, small, Anchor.START));
    }
  }

  /** A label about the middle of its box. */
  private Mark.Label text(String text, Point middle) {
    Mark.Label label = Mark.Label.of(text, middle, StripText.SMALL, Anchor.MIDDLE);
    double drop = label.box().centre().y() - middle.y();
    return Mark.Label.of(
        text, new Point(middle.x(), middle.y() - drop), StripText.SMALL, Anchor.MIDDLE);
  }

  /** A place for a box: its middle, and what the box would cover there. */
  private record Spot(Point middle, double cost) {}

  /** The place for a label, tails of its letters and all, with some more air round it. */
  private Spot spot(String text, double air, Box area, Point preferred, Predicate<Point> allowed) {
    Box box = Mark.Label.of(text, Point.ORIGIN, StripText.SMALL, Anchor.MIDDLE).box();
    return spot(box.width() + 2 * air, box.height() + 2 * air, area, preferred, allowed);
  }

  /** The place in an area where a box of some size covers least, its corners on allowed points. */
  private Spot spot(
      double width, double high, Box area, Point preferred, Predicate<Point> allowed) {
    Point best = preferred;
    double least = 20.0 * FreeSpace.TAKEN;
    double stepX = Math.max(1, area.width() / 40);
    double stepY = Math.max(1, area.height() / 40);
    double w = width / 2 + CLEAR;
    double h = high / 2 + CLEAR;
    for (double y = area.minY() + h; y <= area.maxY() - h; y += stepY) {
      for (double x = area.minX() + w; x <= area.maxX() - w; x += stepX) {
        double away = 0.2 * Math.hypot(x - preferred.x(), y - preferred.y());
        if (away >= least) {
          continue;
        }
        Box box = new Box(x - w, y - h, x + w, y + h);
        double cost = ground.cost(box) + away;
        if (cost < least
            && allowed.test(new Point(box.minX(), box.minY()))
            && allowed.test(new Point(box.minX(), box.maxY()))
            && allowed.test(new Point(box.maxX(), box.minY()))
            && allowed.test(new Point(box.maxX(), box.maxY()))) {
          least = cost;
          best = new Point(x, y);
        }
      }
    }
    return new Spot(best, least);
  }

  private void arrow(Point from, Point to, double head, boolean both) {
    put(Mark.Stroke.of(new Line(from, to), LineType.EDGE));
    head(from, to, head);
    if (both) {
      head(to, from, head);
    }
  }

  private void head(Point from, Point to, double size) {
    Point along = to.minus(from).unit();
    Point back = to.plus(along, -size);
    List<Point> corners =
        List.of(to, back.plus(along.left(), size / 4), back.plus(along.right(), size / 4));
    put(new Mark.Fill(List.of(Contour.polygon(corners)), 1));
  }

  private void put(Mark mark) {
    marks.add(mark);
    ground.mark(mark, FreeSpace.TAKEN);
  }

  /** Segments of an upright cross. */
  static List<Segment> cross(Point middle, double arm) {
    return List.of(
        new Line(middle.plus(new Point(-arm, 0)), middle.plus(new Point(arm, 0))),
        new Line(middle.plus(new Point(0, -arm)), middle.plus(new Point(0, arm))));
  }
}
