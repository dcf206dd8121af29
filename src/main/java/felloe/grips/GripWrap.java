package felloe.grips;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The wrap of a grip, unrolled, for one stretch that it can go round: between spokes. Its width at
 * each place is the girth at the middle of the wrap's thickness; its length is that of the grip's
 * outer edge, since leather is pressed together on the inside and never pulled on the outside
 * (common practice).
 *
 * @param number which stretch of the grip it is, from 1, clockwise
 * @param length along the outer edge, mm, without allowances
 * @param least least width between the fold lines, mm
 * @param most greatest width, mm
 * @param cut where it is cut: a seam's allowance outside the fold lines and the ends
 * @param stitches places of the stitches on both fold lines, as many on each
 * @param area between the fold lines, mm²
 */
public record GripWrap(
    int number,
    double length,
    double least,
    double most,
    Contour cut,
    List<Point> stitches,
    double area) {

  /** What is turned under along each edge and end, mm: common practice. */
  public static final double SEAM = 6;

  /** Distance of stitches, mm: common practice. */
  public static final double STITCH = 5;

  /** Widest tape for a spiral that still lies flat on a rim, mm: common practice. */
  public static final double TAPE = 25;

  /** How much of the tape's width each turn lies on the one before: common practice. */
  public static final double LAP = 0.5;

  public GripWrap {
    stitches = List.copyOf(stitches);
  }

  /** Length of tape for a spiral of half laps over the same stretch, mm. */
  public double tape() {
    return area / (TAPE * (1 - LAP));
  }

  /** The wraps of a grip; none where it has none. */
  public static List<GripWrap> of(Plate plate, PlacedGrip grip) {
    List<GripWrap> all = new ArrayList<>();
    if (grip.grip().wrap() <= 0) {
      return all;
    }
    List<GripStation> run = new ArrayList<>();
    for (GripStation station : GripStations.of(plate, grip)) {
      if (station.held()) {
        run.add(station);
      } else {
        add(grip, run, all);
        run.clear();
      }
    }
    add(grip, run, all);
    return all;
  }

  private static void add(PlacedGrip grip, List<GripStation> run, List<GripWrap> all) {
    if (run.size() < 3) {
      return;
    }
    double wrap = grip.grip().wrap();
    List<Point> upper = new ArrayList<>();
    List<Point> lower = new ArrayList<>();
    List<Point> stitches = new ArrayList<>();
    double x = 0;
    double area = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    double before = 0;
    Point last = null;
    for (GripStation station : run) {
      double s = grip.run().length() - station.s();
      Point outer = grip.run().at(s, -grip.section(s).past());
      double width = station.girth().orElseThrow() - Math.PI * wrap;
      if (last != null) {
        double step = arc(grip, s, last, outer);
        area += step * (width + before) / 2;
        x += step;
      }
      stitches.add(new Point(x, width / 2));
      stitches.add(new Point(x, -width / 2));
      upper.add(new Point(x, width / 2 + SEAM));
      lower.add(new Point(x, -width / 2 - SEAM));
      least = Math.min(least, width);
      most = Math.max(most, width);
      before = width;
      last = outer;
    }
    ends(upper, x);
    ends(lower, x);
    Collections.reverse(upper);
    lower.addAll(upper);
    all.add(new GripWrap(all.size() + 1, x, least, most, Contour.polygon(lower), stitches, area));
  }

  /** The way along the outer edge between two stations: the chord, and what the bend adds to it. */
  private static double arc(PlacedGrip grip, double s, Point from, Point to) {
    double chord = from.distance(to);
    double bend = Math.abs(grip.run().curvature(s));
    double half = chord / 2 * bend / (1 + bend * Math.max(0, grip.section(s).past()));
    return bend == 0 || half >= 1 ? chord : chord * Math.asin(half) / half;
  }

  private static void ends(List<Point> edge, double length) {
    edge.add(0, new Point(-SEAM, edge.get(0).y()));
    edge.add(new Point(length + SEAM, edge.get(edge.size() - 1).y()));
  }
}
