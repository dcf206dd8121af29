package felloe.bringin;

import felloe.geometry.Point;

/**
 * A camera over the paper: a pinhole with radial distortion of two terms and tangential distortion
 * (Brown 1966, as photogrammetry has them). The paper is the plane z = 0, mm, z towards the camera;
 * pixels are counted from the middle of the first, x right, y down.
 *
 * <p>Its numbers: log of the focal length in pixels; the principal point; k1, k2; p1, p2; a small
 * turn from the base turn; the place of the paper's origin before the camera, mm.
 */
final class Camera {

  static final int FOCAL = 0;
  static final int PRINCIPAL = 1;
  static final int RADIAL = 3;
  static final int TANGENTIAL = 5;
  static final int TURN = 7;
  static final int PLACE = 10;

  /** How many numbers a camera has. */
  static final int NUMBERS = 13;

  /** A smaller turn is as its series begins, radians. */
  private static final double NO_TURN = 1e-9;

  /** By what each number is moved to learn what follows: figures of the lens; pixels; the rest. */
  private static final double LENS_STEP = 1e-6;

  private static final double PIXEL_STEP = 1e-3;
  private static final double PLACE_STEP = 1e-4;

  private final double[] base;
  private final double[] numbers;
  private final double[] turn;
  private final double focal;

  /**
   * A camera.
   *
   * @param base turn from paper to camera, by rows
   * @param numbers at least {@link #NUMBERS}; what follows is not of the camera
   */
  Camera(double[] base, double[] numbers) {
    this.base = base;
    this.numbers = numbers;
    this.focal = Math.exp(numbers[FOCAL]);
    this.turn = times(rotation(numbers[TURN], numbers[TURN + 1], numbers[TURN + 2]), base);
  }

  /** By what one of all numbers, those of sheets among them, is moved to learn what follows. */
  static double step(int number) {
    boolean pixels = number == PRINCIPAL || number == PRINCIPAL + 1;
    return pixels ? PIXEL_STEP : number < PLACE ? LENS_STEP : PLACE_STEP;
  }

  double[] numbers() {
    return numbers;
  }

  double[] base() {
    return base;
  }

  /** Where a point over the paper is seen, pixels; NaN where it is behind the camera. */
  void project(double x, double y, double z, double[] pixel) {
    double cz = turn[6] * x + turn[7] * y + turn[8] * z + numbers[PLACE + 2];
    if (cz <= 0) {
      pixel[0] = Double.NaN;
      pixel[1] = Double.NaN;
      return;
    }
    double u = (turn[0] * x + turn[1] * y + turn[2] * z + numbers[PLACE]) / cz;
    double v = (turn[3] * x + turn[4] * y + turn[5] * z + numbers[PLACE + 1]) / cz;
    double r2 = u * u + v * v;
    double radial = 1 + r2 * (numbers[RADIAL] + r2 * numbers[RADIAL + 1]);
    double p1 = numbers[TANGENTIAL];
    double p2 = numbers[TANGENTIAL + 1];
    pixel[0] = focal * (u * radial + 2 * p1 * u * v + p2 * (r2 + 2 * u * u)) + numbers[PRINCIPAL];
    pixel[1] =
        focal * (v * radial + p1 * (r2 + 2 * v * v) + 2 * p2 * u * v) + numbers[PRINCIPAL + 1];
  }

  /** Where the camera stands: x, y, and its height over the paper, mm. */
  double[] stands() {
    double[] at = new double[3];
    for (int i = 0; i < 3; i++) {
      at[i] =
          -(turn[i] * numbers[PLACE]
              + turn[3 + i] * numbers[PLACE + 1]
              + turn[6 + i] * numbers[PLACE + 2]);
    }
    return at;
  }

  /**
   * By which its numbers change, all but the focal length, when its focal length grows by a share
   * of 1 and it shows the paper nearly as before: it goes as much farther away and tilts as much
   * more, for the same perspective.
   */
  double[] farther() {
    double[] by = new double[NUMBERS];
    by[PLACE + 2] = numbers[PLACE + 2];
    // A turn that makes the third row's share along the paper grow by itself.
    double det = turn[0] * turn[4] - turn[3] * turn[1];
    by[TURN] = (turn[0] * turn[7] - turn[1] * turn[6]) / det;
    by[TURN + 1] = (turn[3] * turn[7] - turn[4] * turn[6]) / det;
    return by;
  }

  /** How far it looks from straight down, radians. */
  double oblique() {
    return Math.acos(Math.min(1, Math.abs(turn[8])));
  }

  /**
   * How pixels move as a point moves on a plane level with the paper: du/dx, du/dy, dv/dx, dv/dy.
   */
  double[] growth(Point p, double z) {
    double h = 0.01;
    double[] a = new double[2];
    double[] b = new double[2];
    double[] all = new double[4];
    project(p.x() + h, p.y(), z, a);
    project(p.x() - h, p.y(), z, b);
    all[0] = (a[0] - b[0]) / (2 * h);
    all[2] = (a[1] - b[1]) / (2 * h);
    project(p.x(), p.y() + h, z, a);
    project(p.x(), p.y() - h, z, b);
    all[1] = (a[0] - b[0]) / (2 * h);
    all[3] = (a[1] - b[1]) / (2 * h);
    return all;
  }

  /** A turn about an axis by its length, radians, by rows (Rodrigues). */
  static double[] rotation(double x, double y, double z) {
    double angle = Math.sqrt(x * x + y * y + z * z);
    double a = angle < NO_TURN ? 1 : Math.sin(angle) / angle;
    double b = angle < NO_TURN ? 0.5 : (1 - Math.cos(angle)) / (angle * angle);
    return new double[] {
      1 - b * (y * y + z * z),
      b * x * y - a * z,
      b * x * z + a * y,
      b * x * y + a * z,
      1 - b * (x * x + z * z),
      b * y * z - a * x,
      b * x * z - a * y,
      b * y * z + a * x,
      1 - b * (x * x + y * y)
    };
  }

  static double[] times(double[] a, double[] b) {
    double[] c = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        c[3 * i + j] = a[3 * i] * b[j] + a[3 * i + 1] * b[3 + j] + a[3 * i + 2] * b[6 + j];
      }
    }
    return c;
  }
}
