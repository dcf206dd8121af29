package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** A drawing with a stamp in hollow letters where it covers the least of what is drawn. */
public final class StampedPicture {

  /** Distance of the places that are tried, mm. */
  private static final double STEP = 4;

  /** So much worse it is to cover words than a line. */
  private static final double WORDS = 20;

  /** Nothing that is covered is worth smaller letters. */
  private static final double SMALLER = 1e6;

  /** Pieces of a line that count by themselves. */
  private static final int PARTS = 24;

  private StampedPicture() {}

  /**
   * The same picture, stamped; unchanged where there is nothing to print.
   *
   * @param width that it may take, mm; a narrower one is made so wide
   */
  public static Picture of(Picture picture, double width, Stamp stamp) {
    if (stamp.isNone()) {
      return picture;
    }
    Box own = picture.page();
    double side = Math.max(0, width - own.width()) / 2;
    Box page = new Box(own.minX() - side, own.minY(), own.maxX() + side, own.maxY());
    List<Box> words = new ArrayList<>();
    List<Point> lines = new ArrayList<>();
    for (Mark mark : picture.drawing().marks()) {
      if (mark instanceof Mark.Label label) {
        words.add(label.box());
      } else if (mark instanceof Mark.Stroke stroke) {
        stroke.segments().forEach(segment -> points(segment, lines));
      }
    }
    List<Mark> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (double share : new double[] {0.9, 0.6, 0.4}) {
      List<String> told = stamp.lines(share * page.width(), 2);
      double wide = TextWidth.widest(told, Stamp.LETTER);
      double high = Stamp.height(told);
      // Letters are smaller only where the page has no room for them.
      double scale = Math.min(1, Math.min(page.width() / wide, page.height() / high));
      double w = Math.min(scale * wide, page.width()) / 2;
      double h = Math.min(scale * high, page.height()) / 2;
      for (double y = page.minY() + h; y <= page.maxY() - h; y += STEP) {
        for (double x = page.minX() + w; x <= page.maxX() - w; x += STEP) {
          Box box = new Box(x - w, y - h, x + w, y + h);
          double cost =
              SMALLER * (1 - scale)
                  + WORDS * words.stream().filter(box::touches).count()
                  + lines.stream().filter(box::contains).count()
                  + page.centre().distance(new Point(x, y)) / STEP;
          if (cost < least) {
            least = cost;
            best = Stamp.labels(told, new Point(x, y + h), scale, true);
          }
        }
      }
    }
    Drawing both = picture.drawing().and(Drawing.of("stamp", best));
    return new Picture(both, page, picture.pen());
  }

  private static void points(Segment segment, List<Point> points) {
    for (int i = 0; i <= PARTS; i++) {
      points.add(segment.at((double) i / PARTS));
    }
  }
}
