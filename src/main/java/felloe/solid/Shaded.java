package felloe.solid;

import felloe.geometry.Box;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How bodies look: dots of grey on white, the light from the upper left, sharp edges and outlines
 * as dark lines. What is hidden is left out dot by dot, by how near each body is there.
 */
public final class Shaded {

  /** Dots that are looked at for one that is shown, each way. */
  private static final int FINE = 3;

  private static final Vertex LIGHT = new Vertex(-0.45, 0.6, 0.66);

  /** Grey of a face that the light does not reach, and how much the light adds, of 255. */
  private static final double SHADE = 96;

  private static final double LIT = 140;
  private static final int INK = 16;
  private static final int WHITE = 255;

  /** Faces seen so nearly on edge have no width to be seen. */
  private static final double ON_EDGE = 1e-4;

  /** Faces that turn by more than 30 degrees meet in an edge. */
  private static final double EDGE = Math.cos(Math.toRadians(30));

  /** Faces whose planes lie farther apart, in fine dots, are one behind the other. */
  private static final double STEP = 3;

  /**
   * What is no wider, in fine dots, between faces that go on into each other, or along the rim of a
   * body, is not there: two bodies that lie flush part by as much where their chords differ.
   */
  private static final int SLIVER = FINE;

  /** And no deeper than this, in fine dots: grooves and gaps are to be seen. */
  private static final double SHALLOW = 2;

  private final int width;
  private final int height;
  private final byte[] greys;
  private final Box box;

  private Shaded(int width, int height, byte[] greys, Box box) {
    this.width = width;
    this.height = height;
    this.greys = greys;
    this.box = box;
  }

  /**
   * The bodies as seen from somewhere.
   *
   * @param longest dots along the longer side, at least 8
   */
  public static Shaded of(List<Solid> bodies, View view, int longest) {
    List<Triangle> seen = new ArrayList<>();
    List<Vertex> corners = new ArrayList<>();
    for (Solid body : bodies) {
      body.vertices().forEach(v -> corners.add(view.seen(v)));
      for (Triangle t : body.triangles()) {
        Triangle there = new Triangle(view.seen(t.a()), view.seen(t.b()), view.seen(t.c()));
        if (there.outward().z() > ON_EDGE * there.outward().norm()) {
          seen.add(there);
        }
      }
    }
    Extent extent = Extent.of(corners);
    double most = Math.max(extent.size().x(), extent.size().y());
    // A dot of white all round, so that outlines are whole.
    double dot = most / (longest - 2);
    int width = (int) Math.ceil(extent.size().x() / dot) + 2;
    int height = (int) Math.ceil(extent.size().y() / dot) + 2;
    double left = extent.centre().x() - width * dot / 2;
    double low = extent.centre().y() - height * dot / 2;
    Dots dots = new Dots(FINE * width, FINE * height, left, low, dot / FINE);
    seen.forEach(dots::add);
    dots.closeSlivers();
    Box box = new Box(left, low, left + width * dot, low + height * dot);
    return new Shaded(width, height, dots.greys(width, height), box);
  }

  /** Dots in a row. */
  public int width() {
    return width;
  }

  /** Rows of dots. */
  public int height() {
    return height;
  }

  /** Where the dots lie as they are seen, mm. */
  public Box box() {
    return box;
  }

  /**
   * The grey of a dot, 0 black to 255 white.
   *
   * @param x from the left, from 0
   * @param y from the top, from 0
   */
  public int grey(int x, int y) {
    return greys[y * width + x] & WHITE;
  }

  /** Fine dots, each with the nearest triangle over it; rows count from below. */
  private static final class Dots {
    private final int width;
    private final int height;
    private final double left;
    private final double low;
    private final double size;
    private final int[] nearest;
    private final float[] depth;
    private final List<Plane> planes = new ArrayList<>();

    /** Depth of a triangle over the dots, how much it changes from dot to dot, its light. */
    private record Plane(double at, double perX, double perY, Vertex normal, int grey) {
      double depth(int x, int y) {
        return at + perX * x + perY * y;
      }
    }

    Dots(int width, int height, double left, double low, double size) {
      this.width = width;
      this.height = height;
      this.left = left;
      this.low = low;
      this.size = size;
      this.nearest = new int[width * height];
      this.depth = new float[width * height];
    }

    private double column(Vertex v) {
      return (v.x() - left) / size - 0.5;
    }

    private double row(Vertex v) {
      return (v.y() - low) / size - 0.5;
    }

    void add(Triangle t) {
      Vertex outward = t.outward();
      double norm = outward.norm();
      Vertex normal = new Vertex(outward.x() / norm, outward.y() / norm, outward.z() / norm);
      double perX = -normal.x() / normal.z();
      double perY = -normal.y() / normal.z();
      double at = t.a().z() / size - perX * column(t.a()) - perY * row(t.a());
      int grey = (int) (SHADE + LIT * Math.max(0, normal.dot(LIGHT)));
      planes.add(new Plane(at, perX, perY, normal, Math.min(grey, WHITE)));
      fill(t, planes.size());
    }

    /** A scan line at a time, from its left to its right end. */
    private void fill(Triangle t, int number) {
      Vertex[] corners = {t.a(), t.b(), t.c()};
      double least = Math.min(row(t.a()), Math.min(row(t.b()), row(t.c())));
      double most = Math.max(row(t.a()), Math.max(row(t.b()), row(t.c())));
      Plane plane = planes.get(number - 1);
      for (int y = Math.max(0, (int) Math.ceil(least)); y <= Math.min(height - 1, most); y++) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
          Vertex a = corners[i];
          Vertex b = corners[(i + 1) % 3];
          double ya = row(a);
          double yb = row(b);
          if (ya != yb && Math.min(ya, yb) <= y && y <= Math.max(ya, yb)) {
            double x = column(a) + (y - ya) / (yb - ya) * (column(b) - column(a));
            from = Math.min(from, x);
            to = Math.max(to, x);
          }
        }
        for (int x = Math.max(0, (int) Math.ceil(from)); x <= Math.min(width - 1, to); x++) {
          int dot = y * width + x;
          float z = (float) plane.depth(x, y);
          if (nearest[dot] == 0 || z > depth[dot]) {
            nearest[dot] = number;
            depth[dot] = z;
          }
        }
      }
    }

    private void closeSlivers() {
      for (int y = SLIVER; y + SLIVER < height; y++) {
        for (int x = SLIVER; x + SLIVER < width; x++) {
          closeSliver(x, y, 1, 0);
          closeSliver(x, y, 0, 1);
        }
      }
    }

    /** From just behind a place to just beyond what is narrow and shallow enough in a direction. */
    private void closeSliver(int x, int y, int dx, int dy) {
      int step = dy * width + dx;
      int first = y * width + x;
      int before = nearest[first - step];
      if (nearest[first] == 0 || !edge(x - dx, y - dy, x, y)) {
        return;
      }
      for (int k = 1; k <= SLIVER; k++) {
        int beyond = nearest[first + k * step];
        int toX = x + k * dx;
        int toY = y + k * dy;
        boolean rim = (before == 0) != (beyond == 0) && edge(toX - dx, toY - dy, toX, toY);
        boolean flush = before != 0 && beyond != 0 && !edge(x - dx, y - dy, toX, toY);
        if (rim || flush) {
          int by = before == 0 ? beyond : before;
          if (shallow(x, y, planes.get(by - 1))
              && shallow(toX - dx, toY - dy, planes.get(by - 1))) {
            for (int i = 0; i < k; i++) {
              nearest[first + i * step] = by;
            }
          }
          return;
        }
      }
    }

    /** Whether what is seen at a dot lies almost in a plane. */
    private boolean shallow(int x, int y, Plane plane) {
      return Math.abs(depth[y * width + x] - plane.depth(x, y)) * plane.normal.z() <= SHALLOW;
    }

    private boolean edge(int x, int y, int toX, int toY) {
      int one = nearest[y * width + x];
      int two = nearest[toY * width + toX];
      if (one == two) {
        return false;
      }
      if (one == 0 || two == 0) {
        return true;
      }
      Plane a = planes.get(one - 1);
      Plane b = planes.get(two - 1);
      double behind =
          Math.min(
              Math.abs(a.depth(toX, toY) - b.depth(toX, toY)) * a.normal.z(),
              Math.abs(a.depth(x, y) - b.depth(x, y)) * b.normal.z());
      return a.normal.dot(b.normal) < EDGE || behind > STEP;
    }

    /** Lines of four fine dots, two on each side of an edge; the rim of the dots is white. */
    private boolean[] edges() {
      boolean[] edges = new boolean[width * height];
      for (int y = 1; y + 2 < height; y++) {
        for (int x = 1; x + 2 < width; x++) {
          int dot = y * width + x;
          if (edge(x, y, x + 1, y)) {
            Arrays.fill(edges, dot - 1, dot + 3, true);
          }
          if (edge(x, y, x, y + 1)) {
            for (int row = -1; row <= 2; row++) {
              edges[dot + row * width] = true;
            }
          }
        }
      }
      return edges;
    }

    /** The mean of the fine dots of each dot, rows from the top. */
    byte[] greys(int columns, int rows) {
      boolean[] edges = edges();
      byte[] greys = new byte[columns * rows];
      for (int y = 0; y < rows; y++) {
        for (int x = 0; x < columns; x++) {
          int sum = 0;
          for (int k = 0; k < FINE * FINE; k++) {
            int dot = (FINE * (rows - 1 - y) + k / FINE) * width + FINE * x + k % FINE;
            int number = nearest[dot];
            sum += edges[dot] ? INK : number == 0 ? WHITE : planes.get(number - 1).grey;
          }
          greys[y * columns + x] = (byte) (sum / (FINE * FINE));
        }
      }
      return greys;
    }
  }
}
