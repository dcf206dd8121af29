package felloe.drafting;

import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
  private final List<Mark> marks = new ArrayList<>();

  /**
   * @param text height of figures, mm
   */
  Board(Views views, double width, double height, double text) {
    this.views = views;
    this.text = text;
    this.sheet = new Sheet(new Box(0, 0, width, height).grown(-Views.MARGIN));
    this.material = views.plate().region();
    views
        .lines()
        .forEach(
            (name, lines) -> {
              lines.forEach(line -> sheet.take(line.segment(), line.ink()));
              layers.add(new Drawing.Layer(name, new Piece(lines, List.of(), List.of()).marks()));
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

  /** Draws the best of several ways that meets nothing; false when there is none. */
  boolean place(List<Option> options) {
    Piece best = null;
    double least = MOST;
    for (Option option :
        options.stream().sorted(Comparator.comparingDouble(Option::cost)).toList()) {
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
      return false;
    }
    sheet.take(best);
    marks.addAll(best.marks());
    return true;
  }

  /** Draws the sign of projection in a corner, or along the lower or upper side. */
  boolean projection() {
    Box frame = sheet.frame();
    double width = ProjectionSymbol.width() / 2;
    double height = ProjectionSymbol.height() / 2;
    for (double y : new double[] {frame.minY() + height, frame.maxY() - height}) {
      for (double x = frame.maxX() - width; x >= frame.minX() + width; x -= 2 * width) {
        Point middle = new Point(x, y);
        Box box = ProjectionSymbol.box(middle);
        if (sheet.isFree(box)) {
          sheet.take(box);
          layers.add(new Drawing.Layer("projection", ProjectionSymbol.at(middle).marks()));
          return true;
        }
      }
    }
    return false;
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

  /** All that is drawn. */
  Drawing drawing() {
    List<Drawing.Layer> all = new ArrayList<>(layers);
    all.add(new Drawing.Layer("dimensions", marks));
    return new Drawing(all.stream().filter(layer -> !layer.marks().isEmpty()).toList());
  }
}
