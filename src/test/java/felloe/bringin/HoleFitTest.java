package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Small holes on painted photos: rays through each pixel meet face, wall or ground, and what they
 * meet is blurred. Walls are as light as the face at their upper rim and darker with depth, as open
 * sky lights them; the shades are invented.
 */
class HoleFitTest {

  private static final int SIZE = 96;
  private static final double BLUR = 1;
  private static final double THICKNESS = 8;
  private static final double HEIGHT = 1000;
  private static final double FOCAL = 3_500;

  /** Rays to a pixel each way. */
  private static final int RAYS = 4;

  private static Camera camera(double tilt) {
    double[] down = {1, 0, 0, 0, -1, 0, 0, 0, -1};
    double[] numbers = new double[Camera.NUMBERS];
    numbers[Camera.FOCAL] = Math.log(FOCAL);
    numbers[Camera.PRINCIPAL] = SIZE / 2.0;
    numbers[Camera.PRINCIPAL + 1] = SIZE / 2.0;
    numbers[Camera.PLACE + 2] = HEIGHT;
    return new Camera(Camera.times(Camera.rotation(Math.toRadians(tilt), 0, 0), down), numbers);
  }

  /** Where the ray through a pixel meets a level, mm. */
  private static Point level(Camera camera, double px, double py, double z) {
    Point p = Point.ORIGIN;
    double[] at = new double[2];
    for (int i = 0; i < 8; i++) {
      camera.project(p.x(), p.y(), z, at);
      double[] g = camera.growth(p, z);
      double det = g[0] * g[3] - g[1] * g[2];
      double u = px - at[0];
      double v = py - at[1];
      p = p.plus(new Point((u * g[3] - v * g[1]) / det, (g[0] * v - g[2] * u) / det));
    }
    return p;
  }

  /**
   * What a ray meets.
   *
   * @param rim the wall's light at its upper rim, of the face's
   */
  private static double shade(Point top, Point bottom, double radius, double face, double rim) {
    if (top.norm() >= radius) {
      return face;
    }
    if (bottom.norm() < radius) {
      return 0.05;
    }
    // Where the ray leaves the cylinder, as a share of the depth.
    double inside = 0;
    double outside = 1;
    for (int i = 0; i < 30; i++) {
      double middle = (inside + outside) / 2;
      if (top.towards(bottom, middle).norm() < radius) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return face * rim * (1 - 0.7 * inside);
  }

  private static Light painted(Camera camera, double radius, double face, double rim) {
    double[][] sharp = new double[SIZE][SIZE];
    for (int j = 0; j < SIZE; j++) {
      for (int i = 0; i < SIZE; i++) {
        for (int k = 0; k < RAYS * RAYS; k++) {
          double px = i + (k % RAYS + 0.5) / RAYS - 0.5;
          double py = j + (k / RAYS + 0.5) / RAYS - 0.5;
          Point top = level(camera, px, py, THICKNESS);
          Point bottom = level(camera, px, py, 0);
          sharp[j][i] += shade(top, bottom, radius, face, rim) / (RAYS * RAYS);
        }
      }
    }
    double[][] once = blurred(sharp, true);
    double[][] twice = blurred(once, false);
    float[] values = new float[SIZE * SIZE];
    for (int k = 0; k < values.length; k++) {
      values[k] = (float) twice[k / SIZE][k % SIZE];
    }
    return new Light(SIZE, SIZE, values);
  }

  private static double[][] blurred(double[][] image, boolean across) {
    double[][] out = new double[SIZE][SIZE];
    int reach = (int) Math.ceil(4 * BLUR);
    for (int j = 0; j < SIZE; j++) {
      for (int i = 0; i < SIZE; i++) {
        double sum = 0;
        double weights = 0;
        for (int k = -reach; k <= reach; k++) {
          int x = Math.max(0, Math.min(SIZE - 1, across ? i + k : i));
          int y = Math.max(0, Math.min(SIZE - 1, across ? j : j + k));
          double weight = Math.exp(-k * k / (2 * BLUR * BLUR));
          sum += weight * image[y][x];
          weights += weight;
        }
        out[j][i] = sum / weights;
      }
    }
    return out;
  }

  @ParameterizedTest(name = "{0} mm, {1} degrees aside, face {2}, rim {3}")
  @CsvSource({
    "4, 15, 0.45, 0.95",
    "5.5, 15, 0.45, 0.95",
    "6.5, 19, 0.45, 0.95",
    "6.5, 19, 0.45, 0.6",
    "5, 5, 0.3, 0.8"
  })
  void aWallThatGrowsDarkerWithDepthIsTakenForWhatItIs(
      double diameter, double tilt, double face, double rim) {
    Camera camera = camera(tilt);
    Light light = painted(camera, diameter / 2, face, rim);
    HoleFit.Hole hole =
        new HoleFit(light, camera, THICKNESS, BLUR).near(new Point(0.3, -0.2), diameter / 2);
    assertTrue(hole.well(), hole.toString());
    assertEquals(diameter, 2 * hole.radius(), 0.1);
    assertEquals(0, hole.centre().norm(), 0.05);
  }

  @Test
  void anEvenFaceHasNoHole() {
    Camera camera = camera(10);
    float[] values = new float[SIZE * SIZE];
    Arrays.fill(values, 0.4f);
    HoleFit.Hole hole =
        new HoleFit(new Light(SIZE, SIZE, values), camera, THICKNESS, BLUR).near(Point.ORIGIN, 2.5);
    assertTrue(!hole.well() && !hole.faint(), hole.toString());
  }
}
