package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the fit of camera and sheets begins: a usual lens, the first sheet's plane by its marks'
 * corners, the other sheets as that plane shows them.
 */
final class FrameStart {

  /** How far the principal point lies from the middle, of the longer side; an assumption. */
  private static final double PRINCIPAL_SPREAD = 0.006;

  private static final double RADIAL_SPREAD = 0.3;
  private static final double TANGENTIAL_SPREAD = 0.002;

  private final List<MarksFound.Seen> seen;
  private final SheetsLaid sheets;

  /** All numbers to begin with. */
  final double[] numbers;

  /** What is likely before anything is seen, and how much it may differ; 0 where nothing is. */
  final double[] likely;

  final double[] spread;

  /** The turn of the camera. */
  final double[] base;

  FrameStart(Light light, Lens lens, List<MarksFound.Seen> seen, SheetsLaid sheets) {
    this.seen = seen;
    this.sheets = sheets;
    numbers = new double[sheets.count()];
    likely = new double[sheets.count()];
    spread = new double[sheets.count()];
    double longer = Math.max(light.width(), light.height());
    likely[Camera.FOCAL] = Math.log(lens.focal());
    spread[Camera.FOCAL] = lens.spread();
    likely[Camera.PRINCIPAL] = (light.width() - 1) / 2.0;
    likely[Camera.PRINCIPAL + 1] = (light.height() - 1) / 2.0;
    spread[Camera.PRINCIPAL] = PRINCIPAL_SPREAD * longer;
    spread[Camera.PRINCIPAL + 1] = PRINCIPAL_SPREAD * longer;
    spread[Camera.RADIAL] = RADIAL_SPREAD;
    spread[Camera.RADIAL + 1] = RADIAL_SPREAD;
    spread[Camera.TANGENTIAL] = TANGENTIAL_SPREAD;
    spread[Camera.TANGENTIAL + 1] = TANGENTIAL_SPREAD;
    System.arraycopy(likely, 0, numbers, 0, Camera.TURN);

    double[] h = homography(sheets.first());
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

    for (int sheet = 0; sheet < FrameMarks.SHEETS; sheet++) {
      if (sheets.at()[sheet] > 0) {
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
    int at = sheets.at()[sheet];
    numbers[at + 2] = angle;
    numbers[at] = tm.x() - (Math.cos(angle) * sm.x() - Math.sin(angle) * sm.y());
    numbers[at + 1] = tm.y() - (Math.sin(angle) * sm.x() + Math.cos(angle) * sm.y());
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
