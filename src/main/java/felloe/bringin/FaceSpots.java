package felloe.bringin;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A second look at the part's face, within the edges that were found: spots that are lighter or
 * darker than the face round them. A small deep hole shows its wall and little or no ground, and so
 * is missed by the first look, which parts face and ground.
 */
final class FaceSpots {

  /** Side of a square, mm, and how many there are at the most: on a larger part they are larger. */
  private static final double SQUARE = 0.5;

  private static final double MOST = 4e6;

  /** What is as near to an edge that was found belongs to it, squares: blur, and what it is off. */
  private static final int BESIDE_EDGE = 4;

  /** How far round a square the face's own shade is taken from, squares. */
  private static final int AROUND = 20;

  /** A spot differs from the face round it by so much of its light at least. */
  private static final double LEAST = 0.08;

  /** And by so many times what the face's squares differ by themselves. */
  private static final double TIMES = 5;

  /** A face whose own shades hide spots that differ by as much is too uneven to be looked over. */
  private static final double UNEVEN = 0.15;

  /** What is smaller is dirt, mm². */
  private static final double SMALLEST = 3;

  /** Light below which noise does not fall further. */
  private static final double DARKEST = 0.004;

  /** The median deviation of a normal distribution times this is its standard deviation. */
  private static final double OF_MEDIAN = 1.4826;

  private final double side;
  private final double minX;
  private final double minY;
  private final int columns;
  private final int rows;
  private final boolean[] face;
  private final float[] value;

  /**
   * A spot.
   *
   * @param middle on the plane of the upper face
   * @param radius of a circle of its area, mm
   */
  record Spot(Point middle, double radius) {}

  /**
   * What was seen.
   *
   * @param spots the largest first
   * @param faintest how much of the face's light a spot must differ by to be seen here
   */
  record Seen(List<Spot> spots, double faintest) {
    Seen {
      spots = List.copyOf(spots);
    }

    /** Whether spots may be there that cannot be told from the face's own shades. */
    boolean uneven() {
      return faintest > UNEVEN;
    }
  }

  private FaceSpots(Light light, Camera camera, double thickness, List<EdgeChain> edges) {
    List<Point> outer = edges.get(0).places();
    Box box = Box.of(outer.get(0), outer.get(0));
    for (Point p : outer) {
      box = box.union(Box.of(p, p));
    }
    side = Math.max(SQUARE, Math.sqrt(box.width() * box.height() / MOST));
    minX = box.minX();
    minY = box.minY();
    columns = (int) (box.width() / side) + 1;
    rows = (int) (box.height() / side) + 1;
    face = new boolean[columns * rows];
    value = new float[columns * rows];
    for (EdgeChain edge : edges) {
      turnOver(edge.places());
    }
    narrow();
    double[] pixel = new double[2];
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        int k = j * columns + i;
        if (face[k]) {
          Point p = at(i, j);
          camera.project(p.x(), p.y(), thickness, pixel);
          face[k] = light.holds(pixel[0], pixel[1], 2);
          value[k] = (float) Math.log(DARKEST + light.at(pixel[0], pixel[1]));
        }
      }
    }
  }

  /** Looks at the face between edges, the outer one first. */
  static Seen in(Light light, Camera camera, double thickness, List<EdgeChain> edges) {
    return new FaceSpots(light, camera, thickness, edges).seen();
  }

  private Point at(double i, double j) {
    return new Point(minX + (i + 0.5) * side, minY + (j + 0.5) * side);
  }

  /** Turns over what lies within a closed line: openings take away what the outline gave. */
  private void turnOver(List<Point> line) {
    int n = line.size();
    for (int j = 0; j < rows; j++) {
      double y = at(0, j).y();
      double[] crossings = new double[n];
      int count = 0;
      for (int k = 0; k < n; k++) {
        Point a = line.get(k);
        Point b = line.get((k + 1) % n);
        if (a.y() > y != b.y() > y) {
          crossings[count++] = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
        }
      }
      Arrays.sort(crossings, 0, count);
      for (int c = 0; c + 1 < count; c += 2) {
        int from = Math.max(0, (int) Math.ceil((crossings[c] - minX) / side - 0.5));
        int to = Math.min(columns - 1, (int) Math.floor((crossings[c + 1] - minX) / side - 0.5));
        for (int i = from; i <= to; i++) {
          face[j * columns + i] ^= true;
        }
      }
    }
  }

  /** Leaves out what is near an edge. */
  private void narrow() {
    boolean[] wide = face.clone();
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        for (int b = -BESIDE_EDGE; wide[j * columns + i] && b <= BESIDE_EDGE; b++) {
          for (int a = -BESIDE_EDGE; a <= BESIDE_EDGE; a++) {
            boolean near = a * a + b * b <= BESIDE_EDGE * BESIDE_EDGE;
            boolean in = i + a >= 0 && j + b >= 0 && i + a < columns && j + b < rows;
            if (near && (!in || !wide[(j + b) * columns + i + a])) {
              face[j * columns + i] = false;
            }
          }
        }
      }
    }
  }

  private Seen seen() {
    float[] smooth = means(value, face, 1);
    boolean[] usual = face.clone();
    float[] off = new float[value.length];
    double faintest = LEAST;
    // Once with all that is seen, then without the spots, which took part in what is round them.
    for (int round = 0; round < 3; round++) {
      float[] shade = means(value, usual, AROUND);
      double[] sizes = new double[value.length];
      int n = 0;
      for (int k = 0; k < off.length; k++) {
        off[k] = face[k] ? smooth[k] - shade[k] : 0;
        if (face[k]) {
          sizes[n++] = Math.abs(off[k]);
        }
      }
      Arrays.sort(sizes, 0, n);
      faintest = n == 0 ? LEAST : Math.max(LEAST, TIMES * OF_MEDIAN * sizes[n / 2]);
      for (int k = 0; k < off.length; k++) {
        usual[k] = face[k] && Math.abs(off[k]) < faintest / 2;
      }
    }
    return new Seen(spots(off, faintest), faintest);
  }

  /** The mean of the squares that count, in a window of so many to each side. */
  private float[] means(float[] values, boolean[] counts, int reach) {
    double[] sums = new double[(columns + 1) * (rows + 1)];
    int[] number = new int[sums.length];
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        int k = j * columns + i;
        int at = (j + 1) * (columns + 1) + i + 1;
        int up = at - columns - 1;
        sums[at] = sums[at - 1] + sums[up] - sums[up - 1] + (counts[k] ? values[k] : 0);
        number[at] = number[at - 1] + number[up] - number[up - 1] + (counts[k] ? 1 : 0);
      }
    }
    float[] out = new float[values.length];
    for (int j = 0; j < rows; j++) {
      int low = Math.max(0, j - reach) * (columns + 1);
      int high = Math.min(rows, j + reach + 1) * (columns + 1);
      for (int i = 0; i < columns; i++) {
        int left = Math.max(0, i - reach);
        int right = Math.min(columns, i + reach + 1);
        int n =
            number[high + right] - number[high + left] - number[low + right] + number[low + left];
        double sum = sums[high + right] - sums[high + left] - sums[low + right] + sums[low + left];
        int k = j * columns + i;
        out[k] = n > 0 ? (float) (sum / n) : values[k];
      }
    }
    return out;
  }

  private List<Spot> spots(float[] off, double faintest) {
    boolean[] taken = new boolean[off.length];
    int[] queue = new int[off.length];
    List<Spot> all = new ArrayList<>();
    for (int seed = 0; seed < off.length; seed++) {
      if (taken[seed] || Math.abs(off[seed]) < faintest) {
        continue;
      }
      int end = 1;
      queue[0] = seed;
      taken[seed] = true;
      double x = 0;
      double y = 0;
      for (int head = 0; head < end; head++) {
        int i = queue[head] % columns;
        int j = queue[head] / columns;
        x += i;
        y += j;
        for (int way = 0; way < 4; way++) {
          int a = i + (way == 0 ? 1 : way == 1 ? -1 : 0);
          int b = j + (way == 2 ? 1 : way == 3 ? -1 : 0);
          int next = b * columns + a;
          boolean in = a >= 0 && b >= 0 && a < columns && b < rows;
          if (in && !taken[next] && Math.abs(off[next]) >= faintest) {
            taken[next] = true;
            queue[end++] = next;
          }
        }
      }
      double area = end * side * side;
      if (area >= SMALLEST) {
        all.add(new Spot(at(x / end, y / end), Math.sqrt(area / Math.PI)));
      }
    }
    all.sort((a, b) -> Double.compare(b.radius(), a.radius()));
    return all;
  }
}
