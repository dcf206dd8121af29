package felloe.bringin;

import felloe.geometry.Point;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/**
 * A photo that was never taken: a flat part among the sheets of the frame, as a camera with a bent
 * lens sees it, with blur, noise, uneven light, a cast shadow and the losses of JPEG; the truth is
 * known. Light is followed in the plain: no formula of the reader is used but the camera's.
 */
final class PhotoScene {

  /** What the maker says of the part's thickness, mm. */
  final double thickness;

  final String name;
  final int width;
  final int height;
  final Random random;
  final Camera camera;
  final double[] stands;
  final double paperScale;
  final TruePart part;
  final Laid laid;
  private final Amiss amiss;
  final double[][] sheets;
  private final double[] light;

  /** Of a sheet's marks, as they are printed: an own reckoning. */
  private static final double SIDE = 38;

  private static final double PITCH = 53;

  /** The same of the ring about a small part. */
  private static final double RING_SIDE = 24;

  private static final double RING_PITCH = 36;

  private final double topShade;
  private final double benchShade;
  private final double wallShade;
  private final double blur;
  private final double noise;
  private final double[] falloff = new double[6];

  /** Dots of a printer, 600 to an inch, mm; where the sheet's origin lies among them, of a dot. */
  private static final double DOT = 25.4 / 600;

  private static final double FIRST_DOT = 0.3;

  private final boolean[][][] modules = new boolean[66][][];
  final double trueThickness;

  /** How the sheets of the frame lie. */
  enum Laid {
    /** Four round a wheel of 300 mm, a metre away. */
    FOUR(1000),
    /** Two beside a wheel that is no higher than they are, a metre away. */
    TWO(1000),
    /** A small part lies on one by itself, 0.4 m away. */
    ONE(400);

    private final double away;

    Laid(double away) {
      this.away = away;
    }

    boolean has(int sheet) {
      return switch (this) {
        case FOUR -> sheet < 4;
        case TWO -> sheet == 1 || sheet == 3;
        case ONE -> sheet == FrameMarks.TARGET;
      };
    }
  }

  PhotoScene(long seed, int width, int height, double focalShare, double barSpread) {
    this(seed, width, height, focalShare, barSpread, Laid.FOUR);
  }

  PhotoScene(long seed, int width, int height, double focalShare, double barSpread, Laid laid) {
    this(seed, width, height, focalShare, barSpread, laid, Amiss.NOTHING);
  }

  /**
   * What is wrong with a photo that must be refused.
   *
   * @param oblique degrees from straight down instead of some 15; 0 for these
   * @param lift how high the middle of the second sheet lies over the paper of the others, mm
   * @param lean how much it rises along the paper's x, mm for each mm
   */
  record Amiss(double oblique, double lift, double lean) {
    static final Amiss NOTHING = new Amiss(0, 0, 0);
  }

  PhotoScene(
      long seed,
      int width,
      int height,
      double focalShare,
      double barSpread,
      Laid laid,
      Amiss amiss) {
    this.laid = laid;
    this.amiss = amiss;
    String kind = laid == Laid.FOUR ? "" : laid.name().toLowerCase(java.util.Locale.ROOT) + "-";
    this.name = "scene-" + kind + seed + (barSpread > 0 ? "-bar" : "");
    this.width = width;
    this.height = height;
    random = new Random(seed);
    part = new TruePart(random, laid);
    double longer = Math.max(width, height);
    double focal = longer * focalShare * Math.exp(0.06 * normal());
    double usual = 15 + 2 * normal();
    double tilt = Math.toRadians(amiss.oblique > 0 ? amiss.oblique : usual);
    double side = 2 * Math.PI * random.nextDouble();
    double roll = 2 * Math.PI * random.nextDouble();
    double[] down = {1, 0, 0, 0, -1, 0, 0, 0, -1};
    double[] turn =
        Camera.times(
            Camera.rotation(Math.cos(side) * tilt, Math.sin(side) * tilt, 0),
            Camera.times(Camera.rotation(0, 0, roll), down));
    double[] numbers = new double[Camera.NUMBERS];
    numbers[Camera.FOCAL] = Math.log(focal);
    numbers[Camera.PRINCIPAL] = (width - 1) / 2.0 + 0.005 * longer * normal();
    numbers[Camera.PRINCIPAL + 1] = (height - 1) / 2.0 + 0.005 * longer * normal();
    numbers[Camera.RADIAL] = 0.08 * normal();
    numbers[Camera.RADIAL + 1] = 0.05 * normal();
    numbers[Camera.TANGENTIAL] = 0.001 * normal();
    numbers[Camera.TANGENTIAL + 1] = 0.001 * normal();
    double away = laid.away / 1000;
    numbers[Camera.PLACE] = 25 * away * normal();
    numbers[Camera.PLACE + 1] = 25 * away * normal();
    numbers[Camera.PLACE + 2] = laid.away + 40 * away * normal();
    camera = new Camera(turn, numbers);
    stands = camera.stands();
    paperScale = 1 + barSpread * normal();
    thickness = 4 + random.nextInt(9);
    trueThickness = thickness + PhotoAccuracy.THICKNESS * normal() * (barSpread > 0 ? 1 : 0);
    // What lies on white paper is darker than it.
    boolean dark = random.nextBoolean() || laid == Laid.ONE;
    topShade = dark ? 0.04 + 0.08 * random.nextDouble() : 0.45 + 0.25 * random.nextDouble();
    benchShade = dark ? 0.4 + 0.3 * random.nextDouble() : 0.05 + 0.1 * random.nextDouble();
    wallShade = 0.45 + 0.4 * random.nextDouble();
    blur = 0.6 + 0.5 * random.nextDouble();
    noise = 1 + 1.5 * random.nextDouble();
    double lightAngle = 2 * Math.PI * random.nextDouble();
    double slope = 0.2 + 0.5 * random.nextDouble();
    light = new double[] {slope * Math.cos(lightAngle), slope * Math.sin(lightAngle)};
    for (int i = 0; i < 6; i++) {
      falloff[i] = (i < 3 ? 0.15 : 0.08) * (2 * random.nextDouble() - 1);
    }
    sheets = new double[FrameMarks.SHEETS][3];
    lay();
    for (int id = 0; id < modules.length; id++) {
      modules[id] = new boolean[8][8];
      for (int r = 0; r < 8; r++) {
        for (int c = 0; c < 8; c++) {
          boolean border = r == 0 || c == 0 || r == 7 || c == 7;
          modules[id][r][c] = border || MarksFound.black(id, r - 1, c - 1);
        }
      }
    }
  }

  double normal() {
    return random.nextGaussian();
  }

  /** Sheets round the part, not quite square to each other. */
  private void lay() {
    double w = 2 * PITCH + SIDE;
    double h = 3 * PITCH + SIDE;
    double[][] middle = {{0, 278, 90}, {278, 0, 0}, {0, -278, 90}, {-278, 0, 0}};
    for (int k = 0; k < 4; k++) {
      double turn = Math.toRadians(middle[k][2] + 4 * normal());
      double cx = middle[k][0] + 4 * normal();
      double cy = middle[k][1] + 4 * normal();
      sheets[k][0] = cx - (Math.cos(turn) * w / 2 - Math.sin(turn) * h / 2);
      sheets[k][1] = cy - (Math.sin(turn) * w / 2 + Math.cos(turn) * h / 2);
      sheets[k][2] = turn;
    }
    if (laid == Laid.ONE) {
      sheets[FrameMarks.TARGET][0] = -(4 * RING_PITCH + RING_SIDE) / 2 + 2 * normal();
      sheets[FrameMarks.TARGET][1] = -(5 * RING_PITCH + RING_SIDE) / 2 + 2 * normal();
      sheets[FrameMarks.TARGET][2] = 0.02 * normal();
    }
  }

  /** What a ray through a pixel meets, in light. */
  private double shade(double gx, double gy, boolean[] edge) {
    // The ray on the plane of the upper face.
    double t = trueThickness / stands[2];
    double px = gx + (stands[0] - gx) * t;
    double py = gy + (stands[1] - gy) * t;
    double d = part.outside(px, py);
    edge[0] |= Math.abs(d) < 0.7;
    double lit = lit(gx, gy);
    if (d <= 0) {
      double grain = 1 + 0.03 * Math.sin(0.9 * px + 2 * Math.sin(0.05 * py));
      return topShade * lit * grain;
    }
    double length = Math.hypot(gx - px, gy - py);
    double ux = length > 0 ? (gx - px) / length : 0;
    double uy = length > 0 ? (gy - py) / length : 0;
    for (double s = d; s < length; ) {
      double e = part.outside(px + ux * s, py + uy * s);
      if (e < 0.004) {
        edge[0] = true;
        return topShade * wallShade * lit;
      }
      s += Math.max(e, 0.004);
    }
    double dg = part.outside(gx, gy);
    edge[0] |= Math.abs(dg) < 0.7;
    double ground = benchShade;
    for (int k = 0; k < sheets.length; k++) {
      if (!laid.has(k)) {
        continue;
      }
      double cos = Math.cos(sheets[k][2]);
      double sin = Math.sin(sheets[k][2]);
      double sx = gx;
      double sy = gy;
      if (k == 1 && amiss != Amiss.NOTHING) {
        double beside = gx - 278;
        double s = (amiss.lift + amiss.lean * beside) / (stands[2] - amiss.lean * (stands[0] - gx));
        double along = beside + s * (stands[0] - gx);
        sx = 278 + along * Math.hypot(1, amiss.lean);
        sy = gy + s * (stands[1] - gy);
      }
      double x = (cos * (sx - sheets[k][0]) + sin * (sy - sheets[k][1])) / paperScale;
      double y = (-sin * (sx - sheets[k][0]) + cos * (sy - sheets[k][1])) / paperScale;
      if (k == FrameMarks.TARGET) {
        if (x > -25.5 && y > -74 && x < 184.5 && y < 223) {
          ground = paper(x, y, 48, 5, 6, RING_SIDE, RING_PITCH, edge);
        }
      } else if (x > -37.5 && y > -81 && x < 172.5 && y < 216) {
        ground = paper(x, y, k * 12, 3, 4, SIDE, PITCH, edge);
      }
    }
    return ground * lit * shadow(gx, gy, dg);
  }

  /** What a place of a sheet shows, whose marks count from a number, row by row. */
  private double paper(
      double onSheetX,
      double onSheetY,
      int first,
      int columns,
      int rows,
      double side,
      double pitch,
      boolean[] edge) {
    double x = printed(onSheetX);
    double y = printed(onSheetY);
    int c = (int) Math.floor(x / pitch);
    int r = (int) Math.floor(y / pitch);
    if (r < 0 && words(x, -y)) {
      edge[0] = true;
      return 0.05;
    }
    if (c < 0 || r < 0 || c >= columns || r >= rows) {
      return 0.8;
    }
    int id = first + r * columns + c;
    if (first == 48) {
      boolean inner = r > 0 && r < rows - 1 && c > 0 && c < columns - 1;
      if (inner) {
        return 0.8;
      }
      // Between the lowest row and the highest each has two marks.
      id = r == 0 ? 48 + c : r == rows - 1 ? 61 + c : 53 + 2 * (r - 1) + (c > 0 ? 1 : 0);
    }
    double mx = (x - c * pitch) / side * 8;
    double my = (y - r * pitch) / side * 8;
    double fx = mx - Math.rint(mx);
    double fy = my - Math.rint(my);
    edge[0] |= mx < 8.2 && my < 8.2 && (Math.abs(fx) < 0.1 || Math.abs(fy) < 0.1);
    return mx < 8 && my < 8 && modules[id][7 - (int) my][(int) mx] ? 0.03 : 0.8;
  }

  /** The middle of the printer's dot that covers a place. */
  private static double printed(double at) {
    return (Math.floor(at / DOT + FIRST_DOT) + 0.5 - FIRST_DOT) * DOT;
  }

  /**
   * Rows of letters below the marks, such as the sheet has: strokes as chance has them.
   *
   * @param below the marks' lower edge, mm
   */
  private static boolean words(double x, double below) {
    int row = (int) Math.floor((below - 6) / 5);
    double high = below - 6 - 5 * row;
    int letter = (int) Math.floor(x / 1.9);
    if (below < 6 || row > 5 || high > 2.5 || x < -20 || x > 150) {
      return false;
    }
    int shape = (int) Math.floorMod(letter * 2_654_435L + row * 40_503L, 61L);
    double across = x - 1.9 * letter;
    boolean upright = across < 0.35 || (shape % 3 == 0 && across > 1.1 && across < 1.45);
    boolean level = high < 0.35 || (shape % 5 < 2 && Math.abs(high - 1.2) < 0.18);
    return shape % 7 > 0 && across < 1.5 && (upright || level);
  }

  private double lit(double x, double y) {
    double a = x / 400;
    double b = y / 400;
    return 0.85
        * (1
            + falloff[0] * a
            + falloff[1] * b
            + falloff[2] * a * b
            + falloff[3] * a * a
            + falloff[4] * b * b)
        / 1.3;
  }

  /** A soft shadow beside the part: how near the way to the lamp passes it. */
  private double shadow(double gx, double gy, double dg) {
    if (dg > 12) {
      return 1;
    }
    double dark = 0;
    for (int i = 0; i <= 8; i++) {
      double h = trueThickness * i / 8;
      double d = part.outside(gx + light[0] * h, gy + light[1] * h);
      double soft = 0.3 + 0.12 * h;
      dark = Math.max(dark, Math.min(1, Math.max(0, 0.5 - d / (2 * soft))));
    }
    return 1 - 0.45 * dark;
  }

  /** The photo, 8 bits, encoded as JPEG and decoded again. */
  byte[] jpeg() throws IOException {
    double[] h = groundFromCamera();
    float[] lightAt = new float[width * height];
    boolean[] edge = new boolean[1];
    double[] g = new double[2];
    for (int j = 0; j < height; j++) {
      for (int i = 0; i < width; i++) {
        ground(i, j, h, g);
        if (Math.abs(g[0]) > 460 || Math.abs(g[1]) > 460) {
          lightAt[j * width + i] = (float) benchShade * 0.6f;
          continue;
        }
        edge[0] = false;
        double value = shade(g[0], g[1], edge);
        if (edge[0]) {
          value = 0;
          for (int b = 0; b < 4; b++) {
            for (int a = 0; a < 4; a++) {
              ground(i + (a - 1.5) / 4, j + (b - 1.5) / 4, h, g);
              value += shade(g[0], g[1], edge) / 16;
            }
          }
        }
        lightAt[j * width + i] = (float) value;
      }
    }
    blur(lightAt);
    byte[] pixels = new byte[lightAt.length];
    for (int k = 0; k < pixels.length; k++) {
      double v = Math.max(0, lightAt[k]);
      double s = v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
      pixels[k] = (byte) Math.max(0, Math.min(255, Math.rint(255 * s + noise * normal())));
    }
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    image.getRaster().setDataElements(0, 0, width, height, pixels);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(0.9f);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), how);
    }
    writer.dispose();
    return bytes.toByteArray();
  }

  /** The camera without its distortion, as a matrix, from rays to the ground. */
  private double[] groundFromCamera() {
    double[] n = camera.numbers().clone();
    double[] r = Camera.times(Camera.rotation(n[7], n[8], n[9]), camera.base());
    double[] m = {
      r[0], r[1], n[10],
      r[3], r[4], n[11],
      r[6], r[7], n[12]
    };
    return FrameStart.inverse(m);
  }

  private void ground(double u, double v, double[] h, double[] out) {
    double[] n = camera.numbers();
    double f = Math.exp(n[0]);
    double xd = (u - n[1]) / f;
    double yd = (v - n[2]) / f;
    double x = xd;
    double y = yd;
    for (int k = 0; k < 7; k++) {
      double r2 = x * x + y * y;
      double radial = 1 + r2 * (n[3] + r2 * n[4]);
      double dx = 2 * n[5] * x * y + n[6] * (r2 + 2 * x * x);
      double dy = n[5] * (r2 + 2 * y * y) + 2 * n[6] * x * y;
      x = (xd - dx) / radial;
      y = (yd - dy) / radial;
    }
    double w = h[6] * x + h[7] * y + h[8];
    out[0] = (h[0] * x + h[1] * y + h[2]) / w;
    out[1] = (h[3] * x + h[4] * y + h[5]) / w;
  }

  private void blur(float[] image) {
    int reach = 4;
    float[] kernel = new float[2 * reach + 1];
    float sum = 0;
    for (int i = -reach; i <= reach; i++) {
      kernel[i + reach] = (float) Math.exp(-i * i / (2 * blur * blur));
      sum += kernel[i + reach];
    }
    for (int i = 0; i < kernel.length; i++) {
      kernel[i] /= sum;
    }
    float[] row = new float[width];
    for (int j = 0; j < height; j++) {
      for (int i = 0; i < width; i++) {
        float v = 0;
        for (int k = -reach; k <= reach; k++) {
          v += kernel[k + reach] * image[j * width + Math.min(width - 1, Math.max(0, i + k))];
        }
        row[i] = v;
      }
      System.arraycopy(row, 0, image, j * width, width);
    }
    float[] out = new float[image.length];
    for (int k = -reach; k <= reach; k++) {
      for (int j = 0; j < height; j++) {
        int from = Math.min(height - 1, Math.max(0, j + k)) * width;
        for (int i = 0; i < width; i++) {
          out[j * width + i] += kernel[k + reach] * image[from + i];
        }
      }
    }
    System.arraycopy(out, 0, image, 0, out.length);
  }

  /** Places of the marks that the truth has, for tests of the marks alone. */
  List<Point> trueCorners(FrameMarks.Mark mark) {
    List<Point> all = new ArrayList<>();
    double[] s = sheets[mark.sheet()];
    double[] pixel = new double[2];
    for (Point p : mark.corners()) {
      double x = p.x() * paperScale;
      double y = p.y() * paperScale;
      camera.project(
          s[0] + Math.cos(s[2]) * x - Math.sin(s[2]) * y,
          s[1] + Math.sin(s[2]) * x + Math.cos(s[2]) * y,
          0,
          pixel);
      all.add(new Point(pixel[0], pixel[1]));
    }
    return all;
  }
}
