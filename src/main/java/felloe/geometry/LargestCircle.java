package felloe.geometry;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * A largest circle that lies inside a contour, found by halving squares: the square that may still
 * hold the best centre is looked at first, and one that cannot beat the best so far by more than
 * the stated accuracy is dropped.
 *
 * @param centre its centre, mm
 * @param radius mm; never more than the true largest, and less by at most the accuracy asked for
 */
public record LargestCircle(Point centre, double radius) {

  private record Square(Point centre, double half, double distance) {
    double most() {
      return distance + half * Math.sqrt(2);
    }
  }

  /**
   * A largest circle inside a contour.
   *
   * @param accuracy how much less than the true largest the radius may be, mm, above zero
   * @throws IllegalArgumentException when the accuracy is not above zero
   */
  public static LargestCircle inside(Contour contour, double accuracy) {
    if (!(accuracy > 0)) {
      throw new IllegalArgumentException("accuracy must be above zero, not " + accuracy);
    }
    SegmentIndex index = new SegmentIndex(contour.segments());
    Box box = contour.box();
    // The centroid and the middle are the very centre of the common openings.
    Square best = square(contour, index, contour.properties().centroid(), 0);
    Square middle = square(contour, index, box.centre(), 0);
    best = middle.distance() > best.distance() ? middle : best;
    PriorityQueue<Square> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Square::most)
                .reversed()
                .thenComparingDouble(s -> s.centre().x())
                .thenComparingDouble(s -> s.centre().y()));
    double half = Math.min(box.width(), box.height()) / 2;
    for (double x = box.minX() + half; x < box.maxX() + half; x += 2 * half) {
      for (double y = box.minY() + half; y < box.maxY() + half; y += 2 * half) {
        open.add(square(contour, index, new Point(x, y), half));
      }
    }
    while (!open.isEmpty() && open.peek().most() - best.distance() > accuracy) {
      Square next = open.poll();
      double quarter = next.half() / 2;
      for (int k = 0; k < 4; k++) {
        Point corner = new Point(k % 2 == 0 ? quarter : -quarter, k < 2 ? quarter : -quarter);
        Square part = square(contour, index, next.centre().plus(corner), quarter);
        best = part.distance() > best.distance() ? part : best;
        if (part.most() - best.distance() > accuracy) {
          open.add(part);
        }
      }
    }
    return new LargestCircle(best.centre(), best.distance());
  }

  private static Square square(Contour contour, SegmentIndex index, Point centre, double half) {
    double distance = index.distance(centre);
    return new Square(centre, half, contour.contains(centre) ? distance : -distance);
  }
}
