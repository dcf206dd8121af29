package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Camera and sheets as the marks of one photo tell them, all at once (a bundle adjustment): the
 * lens, where the camera stands, and where each sheet lies on the plane of the paper.
 *
 * <p>First from the corners as they were detected, then from many places along the sides of each
 * mark, each found to part of a pixel across the side, so that a bent image of a straight side does
 * no harm.
 */
final class FrameFit {

  /** Places along a side, from one corner to the other, corners left out. */
  private static final int PLACES = 12;

  /** How far from a mark's corner its side is looked at: its rounding by blur stays outside. */
  private static final double MARGIN = 0.08;

  /** The focal length of telephones and cameras in the longer side of a photo; from memory. */
  private static final double USUAL_FOCAL = 0.78;

  private static final double FOCAL_SPREAD = 0.15;

  /** How far the principal point lies from the middle, of the longer side; an assumption. */
  private static final double PRINCIPAL_SPREAD = 0.006;

  private static final double RADIAL_SPREAD = 0.3;
  private static final double TANGENTIAL_SPREAD = 0.002;

  /** A residual this many times the usual is none of the edge's. */
  private static final double OUTLIER = 4;

  private final Light light;
  private final OptionalDouble height;
  private final List<MarksFound.Seen> seen;

  /** Which unknowns a sheet begins at; -1 for sheets that are not seen, the first has none. */
  private final int[] sheetAt = new int[FrameMarks.SHEETS];

  private int first = -1;
  private double[] base;
  private double[] numbers;
  private double[] likely;
  private double[] spread;
  private List<Sight> sights = List.of();
  private double noise;
  private double[][] covariance;
  private double blur = 1;

  /**
   * A place of a sheet that the photo shows.
   *
   * @param across the direction in which it was measured, pixels
   */
  private record Sight(int sheet, Point place, Point pixel, Point across) {}

  private FrameFit(Light light, List<MarksFound.Seen> seen, OptionalDouble height) {
    this.light = light;
    this.seen = seen;
    this.height = height;
  }

  /**
   * Fits.
   *
   * @param height of the camera over the paper, mm, when the maker measured it
   */
  static FrameFit of(Light light, List<MarksFound.Seen> seen, OptionalDouble height) {
    FrameFit fit = new FrameFit(light, seen, height);
    fit.begin();
    fit.sights = fit.corners();
    fit.settle(1.0);
    for (int round = 0; round < 3; round++) {
      fit.sights = fit.sides(round == 0 ? 5 : 3);
      fit.settle(0.05);
    }
    return fit;
  }

  Camera camera() {
    return new Camera(base, numbers);
  }

  /** Root mean square of what is left across the marks' sides, pixels. */
  double noise() {
    return noise;
  }

  /** Blur of the photo's edges, standard deviation in pixels. */
  double blur() {
    return blur;
  }

  /** The sheet on whose first mark the paper's origin lies. */
  int first() {
    return first;
  }

  int sights() {
    return sights.size();
  }

  /** Corners of each sheet's marks on the plane of the paper. */
  List<List<Point>> sheets() {
    double x = (FrameMarks.COLUMNS - 1) * FrameMarks.PITCH + FrameMarks.SIDE;
    double y = (FrameMarks.ROWS - 1) * FrameMarks.PITCH + FrameMarks.SIDE;
    List<List<Point>> all = new ArrayList<>();
    for (int sheet = 0; sheet < FrameMarks.SHEETS; sheet++) {
      if (sheetAt[sheet] >= 0) {
        List<Point> corners = new ArrayList<>();
        for (Point p :
            List.of(new Point(0, 0), new Point(x, 0), new Point(x, y), new Point(0, y))) {
          corners.add(laid(sheet, p, numbers));
        }
        all.add(corners);
      }
    }
    return all;
  }

  /** Variances and covariances of the numbers of camera and sheets. */
  double[][] covariance() {
    return covariance;
  }

  double[] numbers() {
    return numbers;
  }

  double[] base() {
    return base;
  }

  private void begin() {
    Arrays.fill(sheetAt, -1);
    int next = Camera.NUMBERS;
    int[] count = new int[FrameMarks.SHEETS];
    for (MarksFound.Seen one : seen) {
      count[one.mark().sheet()]++;
    }
    for (int sheet = 0; sheet < count.length; sheet++) {
      if (count[sheet] > 0 && (first < 0 || count[sheet] > count[first])) {
        first = sheet;
      }
    }
    for (int sheet = 0; sheet < count.length; sheet++) {
      if (count[sheet] > 0) {
        sheetAt[sheet] = sheet == first ? 0 : next;
        next += sheet == first ? 0 : 3;
      }
    }
    numbers = new double[next];
    likely = new double[next];
    spread = new double[next];
    double longer = Math.max(light.width(), light.height());
    likely[Camera.FOCAL] = Math.log(USUAL_FOCAL * longer);
    spread[Camera.FOCAL] = FOCAL_SPREAD;
    likely[Camera.PRINCIPAL] = (light.width() - 1) / 2.0;
    likely[Camera.PRINCIPAL + 1] = (light.height() - 1) / 2.0;
    spread[Camera.PRINCIPAL] = PRINCIPAL_SPREAD * longer;
    spread[Camera.PRINCIPAL + 1] = PRINCIPAL_SPREAD * longer;
    spread[Camera.RADIAL] = RADIAL_SPREAD;
    spread[Camera.RADIAL + 1] = RADIAL_SPREAD;
    spread[Camera.TANGENTIAL] = TANGENTIAL_SPREAD;
    spread[Camera.TANGENTIAL + 1] = TANGENTIAL_SPREAD;
    System.arraycopy(likely, 0, numbers, 0, Camera.TURN);

    double[] h = homography(first);
    double focal = Math.exp(numbers[Camera.FOCAL]);
    double[][] column = new double[3][3];
    for (int c = 0; c < 3; c++) {
      column[c][0] = (h[c] - numbers[Camera.PRINCIPAL] * h[6 + c]) / focal;
      column[c][1] = (h[3 + c] - numbers[Camera.PRINCIPAL + 1] * h[6 + c]) / focal;
      column[c][2] = h[6 + c];
    }
    double scale = Math.sqrt(norm(column[0]) * norm(column[1]));
    for (double[] c : column) {
      for (int i = 0; i < 3; i++) {
        c[i] /= scale;
      }
    }
    double[] a = unit(column[0]);
    double[] third = unit(cross(column[0], column[1]));
    double[] b = cross(third, a);
    base = new double[] {a[0], b[0], third[0], a[1], b[1], third[1], a[2], b[2], third[2]};
    System.arraycopy(column[2], 0, numbers, Camera.PLACE, 3);

    for (int sheet = 0; sheet < sheetAt.length; sheet++) {
      if (sheetAt[sheet] > 0) {
        place(sheet, h);
      }
    }
  }

  /** Where another sheet lies, from the first one's homography. */
  private void place(int sheet, double[] h) {
    double[] back = inverse(h);
    double sx = 0;
    double sy = 0;
    double tx = 0;
    double ty = 0;
    List<Point[]> pairs = new ArrayList<>();
    for (MarksFound.Seen one : seen) {
      if (one.mark().sheet() == sheet) {
        for (int k = 0; k < 4; k++) {
          Point s = one.mark().corners().get(k);
          Point t = through(back, one.corners().get(k));
          pairs.add(new Point[] {s, t});
          sx += s.x();
          sy += s.y();
          tx += t.x();
          ty += t.y();
        }
      }
    }
    int n = pairs.size();
    Point sm = new Point(sx / n, sy / n);
    Point tm = new Point(tx / n, ty / n);
    double dot = 0;
    double cross = 0;
    for (Point[] pair : pairs) {
      Point s = pair[0].minus(sm);
      Point t = pair[1].minus(tm);
      dot += s.dot(t);
      cross += s.cross(t);
    }
    double angle = Math.atan2(cross, dot);
    int at = sheetAt[sheet];
    numbers[at + 2] = angle;
    numbers[at] = tm.x() - (Math.cos(angle) * sm.x() - Math.sin(angle) * sm.y());
    numbers[at + 1] = tm.y() - (Math.sin(angle) * sm.x() + Math.cos(angle) * sm.y());
  }

  private Point laid(int sheet, Point p, double[] all) {
    int at = sheetAt[sheet];
    if (at == 0) {
      return p;
    }
    double cos = Math.cos(all[at + 2]);
    double sin = Math.sin(all[at + 2]);
    return new Point(all[at] + cos * p.x() - sin * p.y(), all[at + 1] + sin * p.x() + cos * p.y());
  }

  private List<Sight> corners() {
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

  /** Places along the sides, looked for within so many pixels of where they should be. */
  private List<Sight> sides(double reach) {
    Camera camera = camera();
    List<Sight> all = new ArrayList<>();
    double[] a = new double[2];
    double[] b = new double[2];
    for (MarksFound.Seen one : seen) {
      List<Point> corners = one.mark().corners();
      for (int k = 0; k < 4; k++) {
        Point from = corners.get(k);
        Point to = corners.get((k + 1) % 4);
        for (int i = 0; i < PLACES; i++) {
          double t = MARGIN + (1 - 2 * MARGIN) * i / (PLACES - 1);
          Point place = from.plus(to.minus(from), t);
          Point here = laid(one.mark().sheet(), place, numbers);
          Point along = laid(one.mark().sheet(), place.plus(to.minus(from), 0.001), numbers);
          camera.project(here.x(), here.y(), 0, a);
          camera.project(along.x(), along.y(), 0, b);
          Point pixel = new Point(a[0], a[1]);
          Point tangent = new Point(b[0] - a[0], b[1] - a[1]).unit();
          // To the right of the side in the photo, whose y runs down: out of the mark.
          Point across = new Point(-tangent.y(), tangent.x());
          EdgeFit.Found found = across(pixel, across, tangent, reach, blur);
          if (found.well() && found.rise() > 0) {
            all.add(new Sight(one.mark().sheet(), place, pixel.plus(across, found.at()), across));
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
    int half = (int) Math.ceil((reach + 3) / step);
    double[] values = new double[2 * half + 1];
    if (!light.holds(pixel.x(), pixel.y(), reach + 6)) {
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
        values, -half * step, step, -reach, reach, new EdgeFit.Steps(0, 1, 0, width, true));
  }

  /** The blur that fits a few dozen of the sides best. */
  private double blurOf(List<Sight> all) {
    double best = Double.POSITIVE_INFINITY;
    double kept = blur;
    for (double width = 0.4; width < 4; width *= 1.12) {
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

  /** Gauss and Newton's steps, sights that are far off left out. */
  private void settle(double usual) {
    int n = numbers.length;
    noise = usual;
    double damping = 1e-3;
    double before = cost(numbers);
    for (int round = 0; round < 40; round++) {
      NormalEquations equations = equations();
      double[] step = equations.step(damping);
      double[] next = numbers.clone();
      for (int i = 0; i < n; i++) {
        next[i] += step[i];
      }
      double after = cost(next);
      if (after <= before) {
        boolean still = before - after < 1e-7 * before && damping < 1e-5;
        numbers = next;
        before = after;
        damping = Math.max(damping / 10, 1e-12);
        if (still) {
          break;
        }
        if (round % 3 == 2) {
          noise = spreadOf();
          before = cost(numbers);
        }
      } else {
        damping = Math.max(damping * 10, 1e-8);
      }
    }
    noise = spreadOf();
    covariance = equations().inverse();
  }

  private double spreadOf() {
    Camera camera = camera();
    double[] off = new double[sights.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = Math.abs(residual(sights.get(i), camera, numbers));
    }
    Arrays.sort(off);
    return Math.max(0.01, 1.4826 * off[off.length / 2]);
  }

  private double cost(double[] all) {
    Camera camera = new Camera(base, all);
    double sum = 0;
    for (Sight sight : sights) {
      double r = residual(sight, camera, all) / noise;
      sum += Math.min(r * r, OUTLIER * OUTLIER);
      if (Double.isNaN(r)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (int i = 0; i < spread.length; i++) {
      if (spread[i] > 0) {
        double r = (all[i] - likely[i]) / spread[i];
        sum += r * r;
      }
    }
    if (height.isPresent()) {
      double r = (camera.stands()[2] - height.getAsDouble()) / heightSpread();
      sum += r * r;
    }
    return sum;
  }

  /** A tape held beside a telephone: within 5 mm; an assumption. */
  private static double heightSpread() {
    return 5;
  }

  private NormalEquations equations() {
    int n = numbers.length;
    NormalEquations equations = new NormalEquations(n);
    double[] moved = numbers.clone();
    Camera camera = camera();
    Camera[] cameras = new Camera[Camera.NUMBERS];
    double[] by = new double[n];
    for (int i = 0; i < n; i++) {
      by[i] = i < Camera.PLACE ? 1e-6 : 1e-4;
      if (i == Camera.PRINCIPAL || i == Camera.PRINCIPAL + 1) {
        by[i] = 1e-3;
      }
      if (i < Camera.NUMBERS) {
        double[] one = numbers.clone();
        one[i] += by[i];
        cameras[i] = new Camera(base, one);
      }
    }
    for (Sight sight : sights) {
      double r = residual(sight, camera, numbers);
      if (Math.abs(r) > OUTLIER * noise) {
        continue;
      }
      double[] row = new double[n];
      for (int i = 0; i < Camera.NUMBERS; i++) {
        row[i] = (residual(sight, cameras[i], numbers) - r) / by[i];
      }
      int at = sheetAt[sight.sheet()];
      for (int i = at; at > 0 && i < at + 3; i++) {
        moved[i] += by[i];
        row[i] = (residual(sight, camera, moved) - r) / by[i];
        moved[i] = numbers[i];
      }
      equations.add(row, r, 1 / (noise * noise));
    }
    for (int i = 0; i < n; i++) {
      if (spread[i] > 0) {
        double[] row = new double[n];
        row[i] = 1;
        equations.add(row, numbers[i] - likely[i], 1 / (spread[i] * spread[i]));
      }
    }
    if (height.isPresent()) {
      double[] row = new double[n];
      double high = camera.stands()[2];
      for (int i = Camera.TURN; i < Camera.NUMBERS; i++) {
        row[i] = (cameras[i].stands()[2] - high) / by[i];
      }
      double weight = 1 / (heightSpread() * heightSpread());
      equations.add(row, high - height.getAsDouble(), weight);
    }
    return equations;
  }

  private double residual(Sight sight, Camera camera, double[] all) {
    Point p = laid(sight.sheet(), sight.place(), all);
    double[] pixel = new double[2];
    camera.project(p.x(), p.y(), 0, pixel);
    return sight.across().x() * (pixel[0] - sight.pixel().x())
        + sight.across().y() * (pixel[1] - sight.pixel().y());
  }

  /** From a sheet to the photo, by the corners of its marks; distortion left aside. */
  private double[] homography(int sheet) {
    double[] h = new double[8];
    // Two rounds: the second weighs each equation by its own denominator.
    for (int round = 0; round < 3; round++) {
      NormalEquations equations = new NormalEquations(8);
      for (MarksFound.Seen one : seen) {
        if (one.mark().sheet() != sheet) {
          continue;
        }
        for (int k = 0; k < 4; k++) {
          double x = one.mark().corners().get(k).x() / 100;
          double y = one.mark().corners().get(k).y() / 100;
          double u = one.corners().get(k).x() / 1000;
          double v = one.corners().get(k).y() / 1000;
          double w = 1 + h[6] * x + h[7] * y;
          equations.add(new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y}, -u, 1 / (w * w));
          equations.add(new double[] {0, 0, 0, x, y, 1, -v * x, -v * y}, -v, 1 / (w * w));
        }
      }
      h = equations.step(0);
    }
    return new double[] {
      h[0] * 10,
      h[1] * 10,
      h[2] * 1000,
      h[3] * 10,
      h[4] * 10,
      h[5] * 1000,
      h[6] / 100,
      h[7] / 100,
      1
    };
  }

  private static Point through(double[] h, Point p) {
    double w = h[6] * p.x() + h[7] * p.y() + h[8];
    return new Point(
        (h[0] * p.x() + h[1] * p.y() + h[2]) / w, (h[3] * p.x() + h[4] * p.y() + h[5]) / w);
  }

  static double[] inverse(double[] m) {
    double[] a = {
      m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
      m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
      m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]
    };
    return a;
  }

  private static double norm(double[] a) {
    return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
  }

  private static double[] unit(double[] a) {
    double n = norm(a);
    return new double[] {a[0] / n, a[1] / n, a[2] / n};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }
}
