package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
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

  private CockpitPicture() {}

  /**
   * What is seen.
   *
   * @param title above it
   * @param wheel edges of the wheel as it stands
   * @param swept edges of what it sweeps
   * @param axes middle lines
   * @param things what is near it, in order
   */
  public record View(
      String title,
      List<Contour> wheel,
      List<Contour> swept,
      List<Segment> axes,
      List<Seen> things) {

    public View {
      wheel = List.copyOf(wheel);
      swept = List.copyOf(swept);
      axes = List.copyOf(axes);
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

  /** Numbers by where they stand; things that are seen one behind the other share a place. */
  private static Map<Point, String> labels(List<Seen> things) {
    Map<Point, String> labels = new LinkedHashMap<>();
    for (Seen seen : things) {
      Point middle = seen.box().centre();
      Point place =
          labels.keySet().stream()
              .filter(other -> other.near(middle, TOGETHER))
              .findFirst()
              .orElse(middle);
      labels.merge(place, seen.label(), (one, more) -> one + ", " + more);
    }
    return labels;
  }

  /** Draws it. */
  public static Picture of(View view) {
    Box box = Box.of(view.axes().get(0).from(), view.axes().get(0).to());
    for (Contour contour : view.swept()) {
      box = box.union(contour.box());
    }
    for (Seen seen : view.things()) {
      box = box.union(seen.box());
    }
    double unit = Math.max(box.width(), box.height()) / USUAL;
    List<Mark> edges = new ArrayList<>();
    List<Mark> words = new ArrayList<>();
    view.things().forEach(seen -> edges.add(new Mark.Fill(seen.edges(), 0.12)));
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
    labels(view.things())
        .forEach(
            (middle, label) -> {
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
