package felloe.template;

import felloe.drawing.Mark;
import felloe.drawing.Stamp;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Face;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Words on a page that are read at arm's length: that it is mirrored, and the stamp of a plate that
 * fails. They stand where they cover least. Where that is over lines, they are hollow, so that no
 * line is hidden.
 */
final class LargeWords {

  /** On pages for the back face. */
  static final String MIRRORED = "MIRRORED";

  private static final String BACK = "back face";
  private static final double EDGE = 3;
  private static final double STEP = 4;

  /** Room for the longest words of a stamp, mm. */
  private static final double NARROWEST = 100;

  private static final int FAULT_LINES = 2;

  /** More than any place on the part costs. */
  private static final double ELSEWHERE = 1e6;

  private final FreeSpace ground;
  private final List<Box> taken;

  LargeWords(FreeSpace ground) {
    this(ground, List.of());
  }

  /**
   * @param taken what else they must keep off, also where the ground does not reach
   */
  LargeWords(FreeSpace ground, List<Box> taken) {
    this.ground = ground;
    this.taken = List.copyOf(taken);
  }

  /**
   * All that a sheet for a face has to say in large letters, each where it covers least; the ground
   * knows them then.
   *
   * @param part the stamp stands on it where the area has any of it, so that it is not cut away
   */
  List<Mark> in(Box area, Contour part, Face face, Stamp stamp) {
    List<Mark> marks = new ArrayList<>();
    double width = area.width() - 2 * EDGE - 3;
    if (!stamp.isNone()) {
      List<List<String>> ways = new ArrayList<>();
      for (double share : new double[] {1, 0.6, 0.4}) {
        ways.add(stamp.lines(Math.min(width, Math.max(share * width, NARROWEST)), FAULT_LINES));
      }
      marks.addAll(place(area, ways, part::contains));
    }
    if (face == Face.BACK) {
      marks.addAll(place(area, List.of(List.of(MIRRORED, BACK)), p -> true));
    }
    return marks;
  }

  private List<Mark> place(Box area, List<List<String>> ways, Predicate<Point> wanted) {
    Spot best = null;
    for (List<String> lines : ways) {
      Spot spot = spot(area, lines, wanted);
      best = best == null || spot.cost() < best.cost() ? spot : best;
    }
    boolean hollow = ground.covers(best.box());
    ground.block(best.box(), FreeSpace.TAKEN);
    Point top = new Point(best.box().centre().x(), best.box().maxY() - 1);
    return Stamp.labels(best.lines(), top, best.scale(), hollow);
  }

  private record Spot(List<String> lines, Box box, double scale, double cost) {}

  private Spot spot(Box area, List<String> lines, Predicate<Point> wanted) {
    // A page that is smaller than the words has smaller words.
    double full = Stamp.height(lines) + TextWidth.TAILS * TextWidth.fontSize(Stamp.LETTER);
    double scale =
        Math.min(
            1,
            Math.min(
                (area.height() - 2 * EDGE) / (full + 2),
                (area.width() - 2 * EDGE) / (TextWidth.widest(lines, Stamp.LETTER) + 2)));
    double w = scale * (TextWidth.widest(lines, Stamp.LETTER) / 2 + 1);
    double h = scale * (full / 2 + 1);
    Box room = area.grown(-EDGE);
    Spot best = null;
    for (double y : steps(room.minY() + h, room.maxY() - h)) {
      for (double x : steps(room.minX() + w, room.maxX() - w)) {
        Point middle = new Point(x, y);
        Box box = new Box(x - w, y - h, x + w, y + h);
        double away = 0.2 * area.centre().distance(middle);
        double cost =
            ground.covered(box)
                + taken.stream().mapToDouble(other -> FreeSpace.TAKEN * shared(box, other)).sum()
                + away
                + (wanted.test(middle) ? 0 : ELSEWHERE);
        if (best == null || cost < best.cost()) {
          best = new Spot(lines, box, scale, cost);
        }
      }
    }
    return best;
  }

  /** The area that two boxes share, mm2. */
  private static double shared(Box a, Box b) {
    double width = Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX());
    double height = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
    return Math.max(0, width) * Math.max(0, height);
  }

  private static List<Double> steps(double from, double to) {
    int count = (int) Math.max(0, Math.floor((to - from) / STEP));
    List<Double> steps = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      steps.add(to < from ? (from + to) / 2 : from + i * STEP);
    }
    return steps;
  }

  /** The same on a page without a drawing, from the upper edge of a field. */
  static List<Mark> head(Box field, Stamp stamp) {
    List<String> lines = stamp.head(field.width());
    return Stamp.labels(lines, new Point(field.centre().x(), field.maxY() - 1), 1, false);
  }

  /** What is left of a field below that. */
  static Box below(Box field, Stamp stamp) {
    if (stamp.isNone()) {
      return field;
    }
    double height = Stamp.height(stamp.head(field.width())) + 6;
    return new Box(field.minX(), field.minY(), field.maxX(), field.maxY() - height);
  }
}
