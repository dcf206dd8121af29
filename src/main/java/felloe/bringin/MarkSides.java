package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Many places along the sides of each mark, each found to part of a pixel across the side, so that
 * a bent image of a straight side does no harm; and how blurred the photo is there.
 */
final class MarkSides {

  /** Places along a side, from one corner to the other, corners left out. */
  private static final int PLACES = 12;

  /** Of the four sides of a mark so many places are found at least, on the average. */
  static final int FEWEST = 24;

  /** How far from a mark's corner its side is looked at: its rounding by blur stays outside. */
  private static final double MARGIN = 0.08;

  /** By what a side is moved to learn what follows, mm. */
  private static final double MOVED = 0.01;

  /** Blurs that are tried in turn until sides are found, standard deviations in pixels. */
  private static final double[] BLURS = {1, 2.5, 5, 9};

  /** The blur is looked for up to this, standard deviation in pixels. */
  private static final double MOST_BLUR = 14;

  private final Light light;
  private double blur = BLURS[0];

  MarkSides(Light light) {
    this.light = light;
  }

  /**
   * A straight line of a sheet on which sides of one mark or of several lie: dots of a printer put
   * all of it to one side.
   *
   * @param upright whether x is the same all along it, not y
   * @param at that one, tenths of a micron, so that sums of one place are one
   */
  record Line(int sheet, boolean upright, long at) {

    private static final double TENTHS = 1e4;

    private static Line of(int sheet, Point from, Point to) {
      boolean upright = Math.abs(to.x() - from.x()) < Math.abs(to.y() - from.y());
      return new Line(sheet, upright, Math.round((upright ? from.x() : from.y()) * TENTHS));
    }
  }

  /**
   * A place of a sheet that the photo shows.
   *
   * @param across the direction in which it was measured, pixels
   * @param line that it lies on; empty for a corner
   * @param perMm pixels that it moves across when its line moves by a millimetre
   */
  record Sight(
      int sheet, Point place, Point pixel, Point across, Optional<Line> line, double perMm) {

    Sight(int sheet, Point place, Point pixel, Point across) {
      this(sheet, place, pixel, across, Optional.empty(), 0);
    }
  }

  /** Blur of the photo's edges, standard deviation in pixels. */
  double blur() {
    return blur;
  }

  /** The corners as they were detected, each both ways. */
  static List<Sight> corners(List<MarksFound.Seen> seen) {
    List<Sight> all = new ArrayList<>();
    for (MarksFound.Seen one : seen) {
      for (int k = 0; k < 4; k++) {
        Point place = one.mark().corners().get(k);
        all.add(new Sight(one.mark().sheet(), place, one.corners().get(k), new Point(1, 0)));
        all.add(new Sight(one.mark().sheet(), place, one.corners().get(k), new Point(0, 1)));
      }
    }
    return all;
  }

  /**
   * The same for the first time, when the blur is not known yet.
   *
   * @return none where the photo is too blurred to show them
   */
  List<Sight> sidesAtFirst(
      List<MarksFound.Seen> seen, Camera camera, SheetsLaid laid, double[] numbers, double reach) {
    for (double tried : BLURS) {
      blur = tried;
      List<Sight> all = sides(seen, camera, laid, numbers, reach + tried);
      if (all.size() >= FEWEST / 2 * seen.size()) {
        return all;
      }
    }
    blur = Double.POSITIVE_INFINITY;
    return List.of();
  }

  /** Places along the sides, looked for within so many pixels of where they should be. */
  List<Sight> sides(
      List<MarksFound.Seen> seen, Camera camera, SheetsLaid laid, double[] numbers, double reach) {
    List<Sight> all = new ArrayList<>();
    double[] a = new double[2];
    double[] b = new double[2];
    double[] c = new double[2];
    for (MarksFound.Seen one : seen) {
      List<Point> corners = one.mark().corners();
      for (int k = 0; k < 4; k++) {
        Point from = corners.get(k);
        Point to = corners.get((k + 1) % 4);
        Point out = to.minus(from).unit().left().times(-MOVED);
        Optional<Line> line = Optional.of(Line.of(one.mark().sheet(), from, to));
        for (int i = 0; i < PLACES; i++) {
          double t = MARGIN + (1 - 2 * MARGIN) * i / (PLACES - 1);
          Point place = from.plus(to.minus(from), t);
          Point here = laid.laid(one.mark().sheet(), place, numbers);
          Point along = laid.laid(one.mark().sheet(), place.plus(to.minus(from), 0.001), numbers);
          camera.project(here.x(), here.y(), 0, a);
          camera.project(along.x(), along.y(), 0, b);
          Point pixel = new Point(a[0], a[1]);
          Point tangent = new Point(b[0] - a[0], b[1] - a[1]).unit();
          // To the right of the side in the photo, whose y runs down: out of the mark.
          Point across = new Point(-tangent.y(), tangent.x());
          EdgeFit.Found found = across(pixel, across, tangent, reach, blur);
          if (found.well() && found.rise() > 0) {
            Point moved = laid.laid(one.mark().sheet(), place.plus(out), numbers);
            camera.project(moved.x(), moved.y(), 0, c);
            double perMm = new Point(c[0] - a[0], c[1] - a[1]).dot(across) / MOVED;
            Point at = pixel.plus(across, found.at());
            all.add(new Sight(one.mark().sheet(), place, at, across, line, perMm));
          }
        }
      }
    }
    blur = blurOf(all);
    return all;
  }

  private EdgeFit.Found across(
      Point pixel, Point across, Point tangent, double reach, double width) {
    double step = 0.5;
    int half = (int) Math.ceil((reach + 3 * Math.max(1, width)) / step);
    double[] values = new double[2 * half + 1];
    if (!light.holds(pixel.x(), pixel.y(), reach + 3 + 3 * Math.max(1, width))) {
      return EdgeFit.Found.NONE;
    }
    for (int i = -half; i <= half; i++) {
      Point at = pixel.plus(across, i * step);
      double sum = 0;
      for (int j = -1; j <= 1; j++) {
        sum += light.at(at.x() + j * tangent.x(), at.y() + j * tangent.y());
      }
      values[i + half] = sum / 3;
    }
    return EdgeFit.strongest(
        values, -half * step, step, -reach, reach, new EdgeFit.Steps(0, false, 1, 0, width, true));
  }

  /**
   * How soft the sides are, as the blur that would make them rise as little from pixel to pixel as
   * they do, standard deviation in pixels: true too where the photo is so blurred that no step fits
   * any more.
   */
  double softness(List<MarksFound.Seen> seen) {
    List<Double> all = new ArrayList<>();
    for (MarksFound.Seen one : seen) {
      for (int k = 0; k < 4; k++) {
        Point a = one.corners().get(k);
        Point b = one.corners().get((k + 1) % 4);
        Point out = b.minus(a).unit().left();
        int half = (int) Math.max(3, a.distance(b) / FrameMarks.MODULES);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double steepest = 0;
        double before = Double.NaN;
        for (int i = -half; i <= half; i++) {
          Point p = a.middle(b).plus(out, i);
          double value = light.at(p.x(), p.y());
          low = Math.min(low, value);
          high = Math.max(high, value);
          steepest = i > -half ? Math.max(steepest, Math.abs(value - before)) : 0;
          before = value;
        }
        all.add((high - low) / (steepest * Math.sqrt(2 * Math.PI)));
      }
    }
    all.sort(Double::compare);
    return all.get(all.size() / 2);
  }

  /** The blur that fits a few dozen of the sides best. */
  private double blurOf(List<Sight> all) {
    double best = Double.POSITIVE_INFINITY;
    double kept = blur;
    for (double width = 0.4; width < MOST_BLUR; width *= 1.12) {
      double off = 0;
      for (int i = 0; i < all.size(); i += Math.max(1, all.size() / 60)) {
        Sight sight = all.get(i);
        Point tangent = new Point(-sight.across().y(), sight.across().x());
        EdgeFit.Found found = across(sight.pixel(), sight.across(), tangent, 1.5, width);
        off += found.well() ? found.off() * found.off() / (found.rise() * found.rise()) : 0.1;
      }
      if (off < best) {
        best = off;
        kept = width;
      }
    }
    return kept;
  }
}
