package felloe.shape;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.AreaProperties;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.LargestCircle;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Windows that follow from the rim: the outline moved inward by the rim's width, less the hub disc,
 * less the spokes, with every corner rounded that a cutter could not reach. Exact in lines and
 * arcs. A spoke that points where the disc already reaches the rim is left out, with a note.
 *
 * @param rimWidth width of the rim all round, mm
 * @param hubDisc diameter of the disc about the hub axis that stays whole, mm
 * @param spokes the spokes between disc and rim
 * @param radius radius of the inside corners, mm; 0 leaves them sharp
 * @param smallest windows smaller than this are left out, with a note, mm²
 */
public record DerivedWindows(
    double rimWidth, double hubDisc, List<Spoke> spokes, double radius, double smallest) {

  /** Smallest window unless the maker says otherwise, mm²: about a finger tip. */
  public static final double SMALLEST = 100;

  /** More spokes than this are refused. */
  public static final int MOST_SPOKES = 60;

  /**
   * A spoke with straight sides.
   *
   * @param direction of its middle line from the hub axis, radians counter-clockwise from +x
   * @param atHub width where it leaves the hub disc, mm
   * @param atRim width where its middle line meets the rim, mm
   */
  public record Spoke(double direction, double atHub, double atRim) {

    /**
     * Refuses figures that are not finite.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Spoke {
      Numbers.finite("direction", direction);
      Numbers.finite("atHub", atHub);
      Numbers.finite("atRim", atRim);
    }
  }

  /**
   * What came of it.
   *
   * @param windows clockwise from 12 o'clock by the direction of their centroids
   * @param notes what was left out, where and why, one sentence each
   */
  public record Result(List<Contour> windows, List<String> notes) {

    /** Keeps copies. */
    public Result {
      windows = List.copyOf(windows);
      notes = List.copyOf(notes);
    }
  }

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public DerivedWindows {
    spokes = List.copyOf(spokes);
    Numbers.finite("rimWidth", rimWidth);
    Numbers.finite("hubDisc", hubDisc);
    Numbers.finite("radius", radius);
    Numbers.finite("smallest", smallest);
  }

  /**
   * The windows inside an outline.
   *
   * @throws ShapeException naming {@code rim_width}, {@code hub_disc}, {@code radius}, {@code
   *     spokes[i].hub_width} or {@code spokes[i].rim_width} (i from 0)
   * @throws felloe.geometry.GeometryException when the geometry finds no sound result
   */
  public Result in(Contour outline) {
    check();
    List<Region> inner = Offset.of(outline, -rimWidth);
    if (inner.isEmpty()) {
      throw fault(
          ShapeFault.length(
              "rim_width",
              rimWidth,
              "leaves nothing inside the rim: must be below "
                  + ShapeFault.mm(Math.floor(widest(outline) * 10) / 10),
              "lower it"));
    }
    List<Region> solid = new ArrayList<>();
    solid.add(Region.of(Contour.circle(Point.ORIGIN, hubDisc / 2)));
    List<String> notes = new ArrayList<>();
    solid.addAll(spokeRegions(outline, inner, notes));
    List<Region> open = Combine.difference(inner, solid);
    if (open.isEmpty()) {
      throw fault(
          ShapeFault.length(
              "hub_disc",
              hubDisc,
              "reaches the rim all round, so that no window is left",
              "lower it"));
    }
    return rounded(open, notes);
  }

  private void check() {
    Faults faults = new Faults();
    faults.size("rim_width", rimWidth);
    faults.size("hub_disc", hubDisc);
    faults.radius("radius", radius);
    if (spokes.size() > MOST_SPOKES) {
      faults.add(
          new ShapeFault(
              "spokes", spokes.size() + " spokes", "must be at most " + MOST_SPOKES, ""));
    }
    for (int i = 0; i < spokes.size(); i++) {
      faults.size(name(i, "hub_width"), spokes.get(i).atHub);
      faults.size(name(i, "rim_width"), spokes.get(i).atRim);
      if (hubDisc > 0 && spokes.get(i).atHub >= hubDisc) {
        faults.add(
            ShapeFault.length(
                name(i, "hub_width"),
                spokes.get(i).atHub,
                "must be below the diameter of the hub disc, " + ShapeFault.mm(hubDisc),
                "lower it or enlarge the disc"));
      }
    }
    faults.refuse();
  }

  private static String name(int spoke, String key) {
    return "spokes[" + spoke + "]." + key;
  }

  private static ShapeException fault(ShapeFault fault) {
    return new ShapeException(List.of(fault));
  }

  private static double widest(Contour outline) {
    double high = Math.min(outline.box().width(), outline.box().height());
    double low = 0;
    for (int i = 0; i < 12; i++) {
      double middle = (low + high) / 2;
      if (Offset.of(outline, -middle).isEmpty()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  private List<Region> spokeRegions(Contour outline, List<Region> inner, List<String> notes) {
    double reach = 0;
    for (int i = 0; i < 4; i++) {
      double x = i % 2 == 0 ? outline.box().minX() : outline.box().maxX();
      double y = i < 2 ? outline.box().minY() : outline.box().maxY();
      reach = Math.max(reach, Math.hypot(x, y));
    }
    List<Region> regions = new ArrayList<>();
    for (int i = 0; i < spokes.size(); i++) {
      Spoke spoke = spokes.get(i);
      double rim = rimDistance(spoke, inner);
      if (rim <= hubDisc / 2) {
        notes.add("spokes[" + i + "] was left out: the hub disc reaches the rim there");
      } else {
        regions.add(Region.of(trapezoid(spoke, rim, reach + 1)));
        noteNarrow(i, rim, notes);
      }
    }
    return regions;
  }

  /** A side so slanted that it starts inside the disc leaves it where the spoke is narrower. */
  private void noteNarrow(int number, double rim, List<String> notes) {
    double h = spokes.get(number).atHub / 2;
    double leaves = leaves(spokes.get(number));
    double slope = slope(spokes.get(number), rim);
    double axis = h - slope * leaves;
    // Where the side's line meets the disc's circle on the way out.
    double foot = -slope * axis / (1 + slope * slope);
    double out = Math.abs(foot - leaves);
    if (slope < 0 && leaves < foot - 0.005) {
      notes.add(
          "spokes["
              + number
              + "] leaves the hub disc "
              + Numbers.brief(2 * (axis + slope * (foot + out)), 2)
              + " mm wide, not "
              + Numbers.brief(2 * h, 2)
              + ": its sides run into the disc; enlarge the disc or lower its hub_width");
    }
  }

  private static double rimDistance(Spoke spoke, List<Region> inner) {
    return inner.stream()
        .map(region -> new ArcLengthIndex(region.outer()).outermost(spoke.direction))
        .flatMap(Optional::stream)
        .mapToDouble(Point::norm)
        .max()
        .orElse(0);
  }

  /** Where the middle line has come when the spoke's full hub width lies on the disc's circle. */
  private double leaves(Spoke spoke) {
    double h = spoke.atHub / 2;
    return Math.sqrt((hubDisc / 2 - h) * (hubDisc / 2 + h));
  }

  /** How much wider each half of a spoke becomes a millimetre. */
  private double slope(Spoke spoke, double rim) {
    return (spoke.atRim - spoke.atHub) / 2 / (rim - leaves(spoke));
  }

  /**
   * From inside the hub disc to beyond the outline, along the lines of the spoke's sides. A spoke
   * that grows toward the hub begins where its sides' lines are nearest to the axis: farther back
   * they would come out of the disc again.
   */
  private Contour trapezoid(Spoke spoke, double rim, double reach) {
    double h = spoke.atHub / 2;
    double leaves = leaves(spoke);
    double slope = slope(spoke, rim);
    double least = Math.min(h, spoke.atRim / 2) / 20;
    // A spoke that grows toward the rim ends before its sides would meet.
    double start =
        slope > 0
            ? Math.max(0, leaves - (h - least) / slope)
            : -slope * (h - slope * leaves) / (1 + slope * slope);
    double end = slope < 0 ? Math.min(reach, rim + (least - spoke.atRim / 2) / slope) : reach;
    double in = h + slope * (start - leaves);
    double out = h + slope * (end - leaves);
    Point along = Point.polar(1, spoke.direction);
    Point side = along.left();
    return Contour.polygon(
        List.of(
            along.times(start).plus(side, -in),
            along.times(end).plus(side, -out),
            along.times(end).plus(side, out),
            along.times(start).plus(side, in)));
  }

  private Result rounded(List<Region> open, List<String> before) {
    List<Contour> windows = new ArrayList<>();
    List<String> notes = new ArrayList<>(before);
    for (Region region : open) {
      if (!region.holes().isEmpty()) {
        throw fault(
            new ShapeFault(
                "spokes",
                "",
                "do not hold the hub disc: a window would run all round it",
                "add a spoke that reaches the rim"));
      }
      List<Region> parts = radius > 0 ? Offset.opened(region, radius) : List.of(region);
      if (parts.isEmpty()) {
        double wide = 2 * LargestCircle.inside(region.outer()).radius();
        notes.add(
            note(
                region.outer(),
                "is "
                    + mm(wide)
                    + " wide at its widest; two corner radii are "
                    + mm(2 * radius)
                    + ", and it must be wider"));
      }
      for (Region part : parts) {
        if (part.outer().area() < smallest) {
          notes.add(note(part.outer(), "is below " + Numbers.brief(smallest, 1) + " mm²"));
        } else {
          windows.add(part.outer());
        }
      }
    }
    if (windows.isEmpty()) {
      throw fault(
          ShapeFault.length(
              "radius",
              radius,
              "leaves no window between rim, hub disc and spokes"
                  + (notes.isEmpty() ? "" : ": " + String.join("; ", notes)),
              "lower the radius, the rim width or the spoke widths"));
    }
    windows.sort(
        Comparator.comparingDouble(DerivedWindows::clock)
            .thenComparingDouble(w -> w.properties().centroid().norm()));
    return new Result(windows, notes);
  }

  private static String mm(double value) {
    return ShapeFault.mm(value);
  }

  private static String note(Contour leftover, String why) {
    AreaProperties p = leftover.properties();
    return "a leftover of "
        + Numbers.brief(p.area(), 1)
        + " mm² at "
        + p.centroid()
        + " mm was left out: it "
        + why;
  }

  /** Clockwise angle of the centroid from 12 o'clock, radians; a hair before 12 counts as 12. */
  private static double clock(Contour window) {
    Point c = window.properties().centroid();
    double angle = Math.atan2(c.x(), c.y());
    return angle < -Tolerances.SAME_DIRECTION ? angle + 2 * Math.PI : Math.max(0, angle);
  }
}
