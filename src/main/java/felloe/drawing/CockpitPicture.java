package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A view of a wheel and of what is near it: to be looked at, not measured; the figures are in
 * words.
 */
public final class CockpitPicture {

  private static final double USUAL = 170;
  private static final double TEXT = 3.5;
  private static final double EDGE = 8;

  /** Middles that lie so near have their numbers side by side, mm. */
  private static final double TOGETHER = 12;

  /** Places along each side of a thing's box that are tried for its number. */
  private static final int TRIES = 24;

  /** What is left white round a number, and what its tails take up, in its heights. */
  private static final double WHITE = 0.25;

  private static final double TAILS = 0.3;

  /** What is worse than being far from the middle, mm: in another thing, in none, on a line. */
  private static final double OTHER = 1e4;

  private static final double OUTSIDE = 1e5;
  private static final double ON_LINE = 1e6;

  private CockpitPicture() {}

  /**
   * What is seen.
   *
   * @param title above it
   * @param wheel edges of the wheel as it stands
   * @param swept edges of what it sweeps
   * @param axes middle lines
   * @param driver a driver's lines and what he looks along; may be none
   * @param things what is near it, in order
   */
  public record View(
      String title,
      List<Contour> wheel,
      List<Contour> swept,
      List<Segment> axes,
      List<Segment> driver,
      List<Seen> things) {

    public View {
      wheel = List.copyOf(wheel);
      swept = List.copyOf(swept);
      axes = List.copyOf(axes);
      driver = List.copyOf(driver);
      things = List.copyOf(things);
    }
  }

  /**
   * A thing as it is seen.
   *
   * @param label its number
   * @param edges its outline, piece by piece
   * @param gap from the wheel's nearest place to its own; empty where these look one
   */
  public record Seen(String label, List<Contour> edges, Optional<Line> gap) {

    public Seen {
      edges = List.copyOf(edges);
    }

    private Box box() {
      return edges.stream().map(Contour::box).reduce(Box::union).orElseThrow();
    }
  }

  /** Numbers by the thing that they stand in; things seen one behind the other share one. */
  private static Map<Seen, String> labels(List<Seen> things) {
    Map<Seen, String> labels = new LinkedHashMap<>();
    for (Seen seen : things) {
      Point middle = seen.box().centre();
      Seen place =
          labels.keySet().stream()
              .filter(other -> other.box().centre().near(middle, TOGETHER))
              .findFirst()
              .orElse(seen);
      labels.merge(place, seen.label(), (one, more) -> one + ", " + more);
    }
    return labels;
  }

  /**
   * Where a number stands clear of lines and of other numbers: in its thing and in no other if that
   * can be, as near to its middle as can be.
   */
  private static Point place(
      Seen seen, String label, double height, View view, List<Segment> lines, List<Box> taken) {
    Box box = seen.box();
    Point best = box.centre();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= TRIES; i++) {
      for (int k = 0; k <= TRIES; k++) {
        Point at =
            new Point(box.minX() + box.width() * i / TRIES, box.minY() + box.height() * k / TRIES);
        Box room = room(label, at, height).grown(WHITE * height);
        double cost = at.distance(box.centre());
        if (!within(seen, at)) {
          cost += OUTSIDE;
        }
        for (Seen other : view.things()) {
          cost += other != seen && within(other, at) ? OTHER : 0;
        }
        if (taken.stream().anyMatch(room::touches)
            || lines.stream().anyMatch(line -> meets(room, line))) {
          cost += ON_LINE;
        }
        if (cost < least) {
          least = cost;
          best = at;
        }
      }
    }
    return best;
  }

  private static boolean within(Seen seen, Point at) {
    return seen.edges().stream().anyMatch(edge -> edge.contains(at));
  }

  /** What a number takes up that stands in the middle of a place, tails with it. */
  private static Box room(String label, Point middle, double height) {
    double half = TextWidth.of(label, height) / 2;
    double low = middle.y() - height / 2;
    return new Box(middle.x() - half, low - TAILS * height, middle.x() + half, low + height);
  }

  private static boolean meets(Box room, Segment line) {
    return room.touches(line.box())
        && (room.contains(line.from())
            || Contour.rectangle(room).segments().stream()
                .anyMatch(side -> !Gap.meetings(side, line).isEmpty()));
  }

  /** Draws it. */
  public static Picture of(View view) {
    Box box = view.axes().stream().map(Segment::box).reduce(Box::union).orElseThrow();
    for (Contour contour : view.swept()) {
      box = box.union(contour.box());
    }
    for (Segment segment : view.driver()) {
      box = box.union(segment.box());
    }
    for (Seen seen : view.things()) {
      box = box.union(seen.box());
    }
    double unit = Math.max(box.width(), box.height()) / USUAL;
    List<Mark> edges = new ArrayList<>();
    List<Mark> words = new ArrayList<>();
    view.things().forEach(seen -> edges.add(new Mark.Fill(seen.edges(), 0.12)));
    view.driver().forEach(line -> edges.add(Mark.Stroke.of(line, LineType.THIN)));
    view.axes().forEach(axis -> edges.add(Mark.Stroke.of(axis, LineType.CENTRE)));
    view.swept().forEach(contour -> edges.add(Mark.Stroke.of(contour, LineType.DASHED)));
    view.wheel().forEach(contour -> edges.add(Mark.Stroke.of(contour, LineType.EDGE)));
    for (Seen seen : view.things()) {
      seen.edges().forEach(contour -> edges.add(Mark.Stroke.of(contour, LineType.THIN)));
    }
    for (Seen seen : view.things()) {
      seen.gap().ifPresent(gap -> edges.add(Mark.Stroke.of(gap, LineType.EDGE)));
    }
    double height = TEXT * unit;
    List<Segment> lines = new ArrayList<>();
    for (Mark mark : edges) {
      if (mark instanceof Mark.Stroke stroke) {
        lines.addAll(stroke.segments());
      }
    }
    List<Box> taken = new ArrayList<>();
    labels(view.things())
        .forEach(
            (seen, label) -> {
              Point middle = place(seen, label, height, view, lines, taken);
              taken.add(room(label, middle, height));
              Point at = new Point(middle.x(), middle.y() - height / 2);
              words.add(Mark.Label.of(label, at, height, Anchor.MIDDLE));
            });
    Point title = new Point(box.minX(), box.maxY() + EDGE * unit / 2);
    words.add(Mark.Label.of(view.title(), title, 1.2 * TEXT * unit, Anchor.START));
    double wide = TextWidth.of(view.title(), 1.2 * TEXT * unit);
    Box page =
        new Box(
            box.minX() - EDGE * unit,
            box.minY() - EDGE * unit,
            Math.max(box.maxX(), box.minX() + wide) + EDGE * unit,
            box.maxY() + 2 * EDGE * unit);
    Drawing drawing =
        new Drawing(List.of(new Drawing.Layer("edges", edges), new Drawing.Layer("words", words)));
    return new Picture(drawing, page, unit);
  }
}
