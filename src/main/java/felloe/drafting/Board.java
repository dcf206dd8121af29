package felloe.drafting;

import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A drawing in the making: its views, and the dimensions and notes that found a place. */
final class Board {

  /** What costs more than this is no clear drawing, mm of leader: it goes to a table. */
  private static final double MOST = 60;

  /** A note that stands on the plate, and not in an opening or beside it. */
  private static final double ON_PLATE = 5;

  private final Views views;
  private final double text;
  private final Sheet sheet;
  private final Region material;
  private final List<Drawing.Layer> layers = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private int failed;

  /**
   * @param text height of figures, mm
   */
  Board(Views views, double width, double height, double text) {
    this.views = views;
    this.text = text;
    this.sheet =
        new Sheet(new Box(0, 0, width, height).grown(-Views.MARGIN - LineType.EDGE.width()));
    this.material = views.plate().region();
    views
        .lines()
        .forEach(
            (name, lines) -> {
              lines.forEach(line -> sheet.take(line.segment(), line.ink()));
              layers.add(layer(name, lines.stream().map(Piece.Stroke::mark)));
            });
  }

  Views views() {
    return views;
  }

  /** Height of figures, mm. */
  double text() {
    return text;
  }

  /** A length or a size as it is written: millimetres, at most two decimals. */
  static String figure(double length) {
    return Numbers.brief(length, 2);
  }

  /** How often a size is there, before it: nothing for once. */
  static String times(int count) {
    return count == 1 ? "" : count + " \u00d7 ";
  }

  /** Draws the best of several ways that meets nothing; false when there is none. */
  boolean place(List<Option> options) {
    return place(options, MOST);
  }

  /** The same for what must not cost more than so much, mm of leader. */
  boolean place(List<Option> options, double most) {
    Piece best = null;
    double least = most;
    Option[] ranked = options.toArray(Option[]::new);
    Arrays.sort(ranked, (a, b) -> Double.compare(a.cost(), b.cost()));
    for (Option option : ranked) {
      if (option.cost() >= least) {
        break;
      }
      Piece piece = option.piece().get();
      double cost = option.cost() + sheet.cost(piece);
      if (cost < least) {
        cost += onPlate(piece);
      }
      if (cost < least) {
        least = cost;
        best = piece;
      }
    }
    if (best == null) {
      failed++;
      return false;
    }
    sheet.take(best);
    pieces.add(best);
    return true;
  }

  /** Draws the sign of projection, in the lower right of what is drawn where there is room. */
  boolean projection() {
    Box ink = drawing().box().orElseThrow();
    Box frame = sheet.frame();
    double width = ProjectionSymbol.width() / 2;
    double height = ProjectionSymbol.height() / 2;
    double right = Math.min(frame.maxX(), ink.maxX()) - width;
    double low = Math.max(frame.minY() + height, ink.minY() - 3 * height);
    List<Point> places = new ArrayList<>();
    for (double y = low; y <= frame.maxY() - height; y += height) {
      for (double x = right; x >= frame.minX() + width; x -= width) {
        places.add(new Point(x, y));
      }
    }
    double floor = ink.minY() + height;
    places.sort(
        Comparator.comparingDouble(p -> 3 * Math.max(0, floor - p.y()) + p.y() + right - p.x()));
    for (Point middle : places) {
      Box box = ProjectionSymbol.box(middle);
      if (sheet.isFree(box)) {
        sheet.take(box);
        layers.add(
            layer("projection", ProjectionSymbol.at(middle).stream().map(Piece.Stroke::mark)));
        return true;
      }
    }
    return false;
  }

  /** How much has found no place. */
  int failed() {
    return failed;
  }

  private double onPlate(Piece piece) {
    double cost = 0;
    for (Mark.Label label : piece.texts()) {
      Point middle = Slab.of(label).middle();
      if (views.front().contains(middle)) {
        Point p = middle.minus(views.scaled().shift()).times(1 / views.factor());
        cost += material.contains(p) ? ON_PLATE : 0;
      }
    }
    return cost;
  }

  /** All that is drawn, cut to its size. */
  Picture picture() {
    Drawing drawing = drawing();
    return new Picture(drawing, drawing.box().orElseThrow().grown(Views.MARGIN), 1);
  }

  /** The dimensions, notes and labels that found a place, in order. */
  List<Piece> pieces() {
    return List.copyOf(pieces);
  }

  private Drawing drawing() {
    List<Drawing.Layer> all = new ArrayList<>(layers);
    all.add(lines("extension-lines", Ink.EXTENSION));
    all.add(lines("dimension-lines", Ink.DIMENSION));
    all.add(lines("leaders", Ink.LEADER));
    all.add(
        layer(
            "arrowheads",
            pieces.stream().flatMap(p -> p.arrows().stream()).map(Piece.Arrow::mark)));
    all.add(layer("figures", pieces.stream().flatMap(p -> p.texts().stream())));
    return new Drawing(all.stream().filter(layer -> !layer.marks().isEmpty()).toList());
  }

  private Drawing.Layer lines(String name, Ink ink) {
    return layer(
        name,
        pieces.stream()
            .flatMap(p -> p.lines().stream())
            .filter(line -> line.ink() == ink)
            .map(Piece.Stroke::mark));
  }

  private static Drawing.Layer layer(String name, Stream<? extends Mark> marks) {
    return new Drawing.Layer(name, marks.<Mark>map(mark -> mark).toList());
  }
}
