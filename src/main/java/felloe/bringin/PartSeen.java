package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The part within the frame, coarsely: the plane of its upper face is laid out in squares, each is
 * of the part or of the ground, and the lines between them are its edges within a millimetre or
 * two.
 *
 * <p>Light that falls off over the bench does no harm: part and ground each have a brightness that
 * changes evenly over the plane, by a surface of the second degree.
 */
final class PartSeen {

  /** Side of a square, mm. */
  private static final double SQUARE = 0.5;

  /** Marks and what is as near to them are no part, mm. */
  static final double BESIDE_MARKS = 6;

  /** Paper farther from its marks is as light as between them, but for this share. */
  private static final double WHITE = 0.75;

  /** Less than so much of the marks' sheet is lighter than its paper. */
  private static final double LIGHTEST = 0.9;

  /** Places along a side of the marks at which paper is looked at. */
  private static final int PLACES = 60;

  /** With two sheets the part is looked for as far beyond the marks, mm. */
  private static final double BEYOND_MARKS = 100;

  /** What is smaller is dirt, mm². */
  private static final double SMALLEST = 3;

  /** What is smaller is no part, mm². */
  private static final double LEAST_PART = 150;

  /** Share of the part's size that may lie elsewhere and look like it. */
  private static final double ELSEWHERE = 0.08;

  /** Where between ground and part the line is drawn: at first, and once the part is known. */
  private static final double HALFWAY = 0.5;

  private static final double NEAR_PART = 0.65;

  private static final int TERMS = 6;

  /** Keeps a surface of few squares from running away. */
  private static final double HELD = 1e-6;

  /** No square is quite 0, so that every line has its sides. */
  private static final double OFF_ZERO = 1e-4;

  private final double minX;
  private final double minY;
  private final int columns;
  private final int rows;
  private final float[] bright;
  private final byte[] use;

  private PartSeen(Light light, Camera camera, double thickness, List<FrameMarks.Block> blocks) {
    double x0 = Double.POSITIVE_INFINITY;
    double y0 = Double.POSITIVE_INFINITY;
    double x1 = Double.NEGATIVE_INFINITY;
    double y1 = Double.NEGATIVE_INFINITY;
    for (FrameMarks.Block block : blocks) {
      for (Point p : block.corners()) {
        x0 = Math.min(x0, p.x());
        y0 = Math.min(y0, p.y());
        x1 = Math.max(x1, p.x());
        y1 = Math.max(y1, p.y());
      }
    }
    // Beside two sheets the part may be as high as their paper, which is higher than their marks.
    double beyond = blocks.size() == 2 ? BEYOND_MARKS : 0;
    minX = x0 - beyond;
    minY = y0 - beyond;
    columns = (int) ((x1 + beyond - minX) / SQUARE);
    rows = (int) ((y1 + beyond - minY) / SQUARE);
    bright = new float[columns * rows];
    use = new byte[columns * rows];
    double[] pixel = new double[2];
    double[] white = blocks.stream().mapToDouble(b -> white(b, light, camera)).toArray();
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        Point p = at(i, j);
        camera.project(p.x(), p.y(), thickness, pixel);
        int k = j * columns + i;
        double apart = Double.POSITIVE_INFINITY;
        boolean ground = true;
        for (int b = 0; b < blocks.size(); b++) {
          FrameMarks.Block block = blocks.get(b);
          double own = outside(block.corners(), p);
          apart = Math.min(apart, own);
          ground &= own > block.rim();
          if (ground && own < block.foot() && isBelow(block, p)) {
            ground = light.at(pixel[0], pixel[1]) < WHITE * white[b];
          }
        }
        // The outermost squares are not looked at, so that nothing that reaches them lies free.
        boolean rim = i == 0 || j == 0 || i == columns - 1 || j == rows - 1;
        if (!rim && apart > BESIDE_MARKS && light.holds(pixel[0], pixel[1], 2)) {
          use[k] = (byte) (ground ? 2 : 1);
          // Logarithms: light that falls off takes the same from part and ground.
          bright[k] = (float) Math.log(0.004 + light.at(pixel[0], pixel[1]));
        }
      }
    }
  }

  private Point at(double i, double j) {
    return new Point(minX + (i + 0.5) * SQUARE, minY + (j + 0.5) * SQUARE);
  }

  /** How far a point lies beyond a rectangle's sides; less than 0 within. */
  private static double outside(List<Point> corners, Point p) {
    double far = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point side = corners.get((i + 1) % corners.size()).minus(a).unit();
      far = Math.max(far, -side.cross(p.minus(a)));
    }
    return far;
  }

  /**
   * Whether a point lies below the first side of a block, no farther out at the others than paper.
   */
  private static boolean isBelow(FrameMarks.Block block, Point p) {
    List<Point> corners = block.corners();
    boolean below = true;
    for (int i = 1; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point side = corners.get((i + 1) % corners.size()).minus(a).unit();
      below &= -side.cross(p.minus(a)) <= block.rim();
    }
    return below;
  }

  /** How light the paper between marks is: lighter than all but a tenth of what lies there. */
  private static double white(FrameMarks.Block block, Light light, Camera camera) {
    double[] seen = new double[PLACES * PLACES];
    Point origin = block.corners().get(0);
    Point across = block.corners().get(1).minus(origin);
    Point up = block.corners().get(3).minus(origin);
    double[] pixel = new double[2];
    for (int i = 0; i < seen.length; i++) {
      double a = (i % PLACES + 0.5) / PLACES;
      double b = (i / PLACES + 0.5) / PLACES;
      Point p = origin.plus(across, a).plus(up, b);
      camera.project(p.x(), p.y(), 0, pixel);
      seen[i] = light.at(pixel[0], pixel[1]);
    }
    Arrays.sort(seen);
    return seen[(int) (LIGHTEST * seen.length)];
  }

  /** Why no part is told. */
  enum Trouble {
    NONE,
    /** Nothing stands out from the ground. */
    NOTHING,
    /** Something as light as the part hangs together with the marks or the edge of what is seen. */
    REACHES_OUT
  }

  /**
   * What was found.
   *
   * @param lines closed, mm on the plane of the paper, the part to the left of each; the outer one
   *     first; none where there is trouble
   */
  record Found(List<List<Point>> lines, Trouble trouble) {
    static Found none(Trouble trouble) {
      return new Found(List.of(), trouble);
    }
  }

  /** Finds the part's edges coarsely. */
  static Found edges(Light light, Camera camera, double thickness, List<FrameMarks.Block> blocks) {
    PartSeen seen = new PartSeen(light, camera, thickness, blocks);
    float[] lean = seen.lean(HALFWAY, 0);
    if (lean == null) {
      return Found.none(Trouble.NOTHING);
    }
    // Walls and shadows lie between part and ground: once it is known which is which, what does not
    // look like the part's face is none of it.
    int sign = seen.sign(lean);
    if (sign == 0) {
      return Found.none(Trouble.NOTHING);
    }
    lean = seen.lean(NEAR_PART, sign);
    Patches patches = seen.patches(lean);
    if (patches.part() == 0) {
      return Found.none(Trouble.NOTHING);
    }
    if (patches.sizes().get(patches.part()) * SQUARE * SQUARE < LEAST_PART) {
      return Found.none(Trouble.NOTHING);
    }
    if (seen.reachesOut(lean, patches, sign)) {
      return Found.none(Trouble.REACHES_OUT);
    }
    List<List<Point>> lines = seen.trace(lean);
    return lines.isEmpty() ? Found.none(Trouble.NOTHING) : new Found(lines, Trouble.NONE);
  }

  /**
   * Whether what looks like the part lies on the ground elsewhere, in one piece that is no dirt and
   * does not lie free: the part itself may, and a hole in it be taken for the part.
   */
  private boolean reachesOut(float[] lean, Patches patches, int sign) {
    int part = patches.part();
    boolean other = false;
    int[] beyond = new int[patches.sizes().size()];
    for (int k = 0; k < lean.length; k++) {
      int patch = patches.of()[k];
      if (use[k] == 2 && patch > 0 && patch != part && lean[k] * sign > 0) {
        beyond[patch]++;
      } else if (patch == part && lean[k] * sign < 0) {
        other = true;
      }
    }
    double most = 0;
    for (int squares : beyond) {
      most = Math.max(most, squares);
    }
    return other || most > ELSEWHERE * patches.sizes().get(part);
  }

  /** For each square how much it leans to the part: above 0 one kind, below 0 the other. */
  private float[] lean(double share, int sign) {
    double[] sorted = new double[bright.length];
    int n = 0;
    for (int k = 0; k < bright.length; k++) {
      if (use[k] == 2) {
        sorted[n++] = bright[k];
      }
    }
    if (n < 1000) {
      return null;
    }
    double threshold = valley(Arrays.copyOf(sorted, n));
    float[] lean = new float[bright.length];
    for (int k = 0; k < lean.length; k++) {
      lean[k] = (float) (bright[k] - threshold);
    }
    for (int round = 0; round < 6; round++) {
      NormalEquations low = new NormalEquations(TERMS);
      NormalEquations high = new NormalEquations(TERMS);
      for (int j = 0; j < rows; j += 4) {
        for (int i = 0; i < columns; i += 4) {
          int k = j * columns + i;
          if (use[k] == 2) {
            (lean[k] > 0 ? high : low).add(terms(i, j), -bright[k], 1);
          }
        }
      }
      double[] below = low.step(HELD);
      double[] above = high.step(HELD);
      for (int j = 0; j < rows; j++) {
        for (int i = 0; i < columns; i++) {
          int k = j * columns + i;
          double[] t = terms(i, j);
          lean[k] = (float) (bright[k] - between(dot(below, t), dot(above, t), share, sign));
        }
      }
    }
    return lean;
  }

  /** A light part's shades go by the light itself, a dark one's ground by its logarithm. */
  private static double between(double low, double high, double share, int sign) {
    return sign > 0
        ? Math.log(share * Math.exp(high) + (1 - share) * Math.exp(low))
        : share * low + (1 - share) * high;
  }

  private double[] terms(int i, int j) {
    double x = 2.0 * i / columns - 1;
    double y = 2.0 * j / rows - 1;
    return new double[] {1, x, y, x * x, x * y, y * y};
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** The level that parts the values into two kinds that differ most (N. Otsu, 1979). */
  private static double valley(double[] values) {
    Arrays.sort(values);
    double all = 0;
    for (double value : values) {
      all += value;
    }
    double sum = 0;
    double best = -1;
    double level = values[values.length / 2];
    for (int i = 0; i < values.length - 1; i++) {
      sum += values[i];
      double n = i + 1.0;
      double m = values.length - n;
      double apart = sum / n - (all - sum) / m;
      double between = n * m * apart * apart;
      if (between > best) {
        best = between;
        level = (values[i] + values[i + 1]) / 2;
      }
    }
    return level;
  }

  /**
   * Squares of one kind that hang together.
   *
   * @param of each square's patch, from 1; 0 for squares that are not looked at
   * @param sizes in squares
   * @param part the largest patch that lies free within the frame; 0 for none
   */
  private record Patches(int[] of, List<Integer> sizes, int part) {}

  private Patches patches(float[] lean) {
    int[] patch = new int[lean.length];
    int best = 0;
    long bestSize = 0;
    int patches = 0;
    int[] queue = new int[lean.length];
    List<Integer> sizes = new ArrayList<>();
    sizes.add(0);
    for (int seed = 0; seed < lean.length; seed++) {
      if (patch[seed] != 0 || use[seed] == 0) {
        continue;
      }
      patches++;
      boolean high = lean[seed] > 0;
      boolean free = true;
      int end = 1;
      queue[0] = seed;
      patch[seed] = patches;
      int lowI = columns;
      int highI = 0;
      int lowJ = rows;
      int highJ = 0;
      for (int head = 0; head < end; head++) {
        int k = queue[head];
        int i = k % columns;
        int j = k / columns;
        lowI = Math.min(lowI, i);
        highI = Math.max(highI, i);
        lowJ = Math.min(lowJ, j);
        highJ = Math.max(highJ, j);
        for (int next : new int[] {k - 1, k + 1, k - columns, k + columns}) {
          if (use[next] == 0) {
            free = false;
          } else if (patch[next] == 0 && (lean[next] > 0) == high) {
            patch[next] = patches;
            queue[end++] = next;
          }
        }
      }
      sizes.add(end);
      long size = (long) (highI - lowI) * (highJ - lowJ);
      if (free && size > bestSize) {
        bestSize = size;
        best = patches;
      }
    }
    return new Patches(patch, sizes, best);
  }

  /** 1 for a part lighter than the ground, -1 for a darker one, 0 for none. */
  private int sign(float[] lean) {
    Patches patches = patches(lean);
    for (int k = 0; patches.part() > 0 && k < lean.length; k++) {
      if (patches.of()[k] == patches.part()) {
        return lean[k] > 0 ? 1 : -1;
      }
    }
    return 0;
  }

  private List<List<Point>> trace(float[] lean) {
    Patches patches = patches(lean);
    int best = patches.part();
    if (best == 0) {
      return List.of();
    }
    int[] patch = patches.of();
    int sign = sign(lean);
    // Dirt on either side takes the kind of what is round it.
    float[] field = new float[lean.length];
    for (int k = 0; k < field.length; k++) {
      boolean own = patch[k] == best;
      boolean other = !own && lean[k] * sign > 0;
      boolean dirt =
          !own
              && !other
              && patch[k] > 0
              && patches.sizes().get(patch[k]) * SQUARE * SQUARE < SMALLEST;
      field[k] = own || dirt ? 1 : -1;
    }
    return new EdgeTrace(smooth(field), columns, rows)
        .outerWithOpenings().stream()
            .map(loop -> loop.stream().map(p -> at(p.x(), p.y())).toList())
            .toList();
  }

  private float[] smooth(float[] field) {
    float[] out = new float[field.length];
    Arrays.fill(out, -1);
    for (int j = 1; j < rows - 1; j++) {
      for (int i = 1; i < columns - 1; i++) {
        float sum = 0;
        for (int b = -1; b <= 1; b++) {
          for (int a = -1; a <= 1; a++) {
            sum += field[(j + b) * columns + i + a];
          }
        }
        out[j * columns + i] = sum / 9 + (float) OFF_ZERO;
      }
    }
    return out;
  }
}
