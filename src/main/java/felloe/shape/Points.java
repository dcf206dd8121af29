package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Fillet;
import felloe.geometry.FilletException;
import felloe.geometry.FilletFault;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A chain of corners joined by straight or bulged edges, every corner rounded by its own radius.
 *
 * <p>With {@code mirrored} the corners are one half, and the other half is their mirror image at
 * the y axis. The corners then lie all on one side. A first or last corner on the axis (x = 0) is a
 * corner of the whole; from one beside the axis an edge crosses to its image.
 *
 * @param corners the corners in order, either way round
 * @param mirrored whether they are one half
 * @param startRise with {@code mirrored}: the rise of the edge that crosses the axis to the first
 *     corner, mm; 0 when the first corner lies on the axis, and 0 for a whole
 */
public record Points(List<Corner> corners, boolean mirrored, double startRise) implements Family {

  /** For so many corners without room the largest radius is worked out; beyond, it is estimated. */
  private static final int MOST_SEARCHED = 6;

  /** More corners than this are refused. */
  public static final int MOST = 2_000;

  /**
   * A corner and the edge that follows it.
   *
   * @param at where it is, mm
   * @param radius its rounding, mm; 0 leaves it sharp
   * @param rise how far the edge to the next corner bulges over its chord, mm: positive outward,
   *     negative inward, 0 straight
   */
  public record Corner(Point at, double radius, double rise) {

    /**
     * Refuses figures that are not finite.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Corner {
      Numbers.finite("radius", radius);
      Numbers.finite("rise", rise);
    }

    private Corner image(double newRise) {
      return new Corner(new Point(-at.x(), at.y()), radius, newRise);
    }

    private boolean onAxis() {
      return Math.abs(at.x()) <= Tolerances.SAME_POINT;
    }
  }

  /**
   * Refuses a figure that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Points {
    corners = List.copyOf(corners);
    Numbers.finite("startRise", startRise);
  }

  /** A whole given corner by corner. */
  public static Points whole(List<Corner> corners) {
    return new Points(corners, false, 0);
  }

  /** One half, with a straight edge to the first corner should it lie beside the axis. */
  public static Points half(List<Corner> corners) {
    return new Points(corners, true, 0);
  }

  /**
   * {@inheritDoc}
   *
   * <p>Faults name {@code corners}, {@code corners[i].at}, {@code corners[i].radius}, {@code
   * corners[i].rise} (i from 0) and {@code startRise}.
   */
  @Override
  public Contour contour() {
    Faults faults = new Faults();
    if (corners.size() > MOST) {
      faults.add(
          new ShapeFault("corners", corners.size() + " corners", "must be at most " + MOST, ""));
      faults.refuse();
    }
    for (int i = 0; i < corners.size(); i++) {
      faults.radius(name(i, "radius"), corners.get(i).radius);
      faults.coordinate(name(i, "at"), corners.get(i).at.x());
      faults.coordinate(name(i, "at"), corners.get(i).at.y());
    }
    if (mirrored) {
      checkSides(faults);
    }
    faults.refuse();
    List<Corner> all = mirrored ? completed() : corners;
    checkEdges(all, faults);
    return faults.make(() -> Fillet.chain(chain(all), radii(all)), e -> crowded(e, all));
  }

  private static String name(int corner, String key) {
    return "corners[" + corner + "]." + key;
  }

  private int side() {
    for (Corner corner : corners) {
      if (!corner.onAxis()) {
        return corner.at.x() > 0 ? 1 : -1;
      }
    }
    return 0;
  }

  private void checkSides(Faults faults) {
    int side = side();
    int last = corners.size() - 1;
    for (int i = 0; i <= last; i++) {
      Corner corner = corners.get(i);
      if (corner.onAxis() && i != 0 && i != last) {
        faults.add(
            new ShapeFault(
                name(i, "at"),
                corner.at.toString(),
                "lies on the mirror axis (x = 0), where only the first or last corner of a half"
                    + " may",
                "give the corners from one end of the half to the other"));
      } else if (!corner.onAxis() && corner.at.x() * side < 0) {
        faults.add(
            new ShapeFault(
                name(i, "at"),
                corner.at.toString(),
                "lies across the mirror axis (x = 0) from the corners before it",
                "keep a half to one side, or give the whole without mirroring"));
      }
    }
    if (last >= 0 && corners.get(last).onAxis() && corners.get(last).rise != 0) {
      faults.add(
          ShapeFault.length(
              name(last, "rise"),
              corners.get(last).rise,
              "has no edge to bulge: the half ends here on the axis",
              "leave it out"));
    }
    if (startRise != 0 && last >= 0 && corners.get(0).onAxis()) {
      faults.add(
          ShapeFault.length(
              "startRise",
              startRise,
              "has no edge to bulge: the half starts on the axis",
              "leave it out"));
    }
  }

  /** The half and its image. The edge after a corner's image is the one before the corner. */
  private List<Corner> completed() {
    List<Corner> all = new ArrayList<>();
    int last = corners.size() - 1;
    for (int i = 0; i <= last; i++) {
      Corner c = corners.get(i);
      boolean end = i == 0 || i == last;
      all.add(end && c.onAxis() ? new Corner(new Point(0, c.at.y()), c.radius, c.rise) : c);
    }
    if (last >= 0 && corners.get(last).onAxis() && last > 0) {
      Corner end = all.get(last);
      all.set(last, new Corner(end.at, end.radius, corners.get(last - 1).rise));
    }
    for (int i = last; i >= 0; i--) {
      if (!corners.get(i).onAxis()) {
        all.add(corners.get(i).image(i == 0 ? startRise : corners.get(i - 1).rise));
      }
    }
    return all;
  }

  /** The corner as the maker numbered it, from 0. */
  private int given(int corner, int total) {
    if (corner < corners.size()) {
      return corner;
    }
    boolean startsOnAxis = corners.get(0).onAxis();
    return total - 1 - corner + (startsOnAxis ? 1 : 0);
  }

  private void checkEdges(List<Corner> all, Faults faults) {
    int n = all.size();
    for (int i = 0; n > 1 && i < corners.size(); i++) {
      Point from = all.get(i).at;
      Point to = all.get((i + 1) % n).at;
      boolean ended = mirrored && i == corners.size() - 1 && corners.get(i).onAxis();
      if (from.near(to, Tolerances.SAME_POINT)) {
        faults.add(
            new ShapeFault(
                name(given((i + 1) % n, n), "at"),
                to.toString(),
                "is the same point as the corner before it",
                "leave one of them out"));
      } else if (!ended) {
        Edges.checkRise(name(i, "rise"), all.get(i).rise, from.distance(to), faults);
      }
    }
    if (mirrored && n > corners.size() && !corners.get(0).onAxis()) {
      Edges.checkRise("startRise", startRise, 2 * Math.abs(corners.get(0).at.x()), faults);
    }
    boolean bulged = all.stream().anyMatch(c -> c.rise != 0);
    if (n < (bulged ? 2 : 3)) {
      faults.add(
          new ShapeFault(
              "corners",
              n + (n == 1 ? " corner" : " corners"),
              "must be at least 3, or 2 with a bulged edge",
              "add corners"));
    }
  }

  private static List<Segment> chain(List<Corner> all) {
    // A rise is outward: to the right of travel only when the corners run counter-clockwise.
    double outward = signedArea(all) < 0 ? -1 : 1;
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Corner corner = all.get(i);
      Point next = all.get((i + 1) % all.size()).at;
      chain.add(Edges.edge(corner.at, next, outward * corner.rise));
    }
    return chain;
  }

  private static double signedArea(List<Corner> all) {
    double area = 0;
    for (int i = 0; i < all.size(); i++) {
      area += all.get(i).at.cross(all.get((i + 1) % all.size()).at);
    }
    return area / 2;
  }

  private static double[] radii(List<Corner> all) {
    return all.stream().mapToDouble(Corner::radius).toArray();
  }

  /** One fault a corner as given: a corner and its image fail together. */
  private List<ShapeFault> crowded(FilletException e, List<Corner> all) {
    TreeMap<Integer, ShapeFault> faults = new TreeMap<>();
    for (FilletFault fault : e.faults()) {
      int corner = given(fault.corner() - 1, all.size());
      if (faults.containsKey(corner)) {
        continue;
      }
      double largest = faults.size() < MOST_SEARCHED ? largest(corner, all) : 0;
      faults.put(
          corner,
          ShapeFault.length(
              name(corner, "radius"),
              fault.wanted(),
              "must be at most "
                  + Faults.limit(largest > 0 ? largest : fault.largest())
                  + " here: "
                  + fault.why(),
              "lower it or move the corners apart"));
    }
    return List.copyOf(faults.values());
  }

  /** The largest radius of a corner, and of its image, with all others as they are. */
  private double largest(int corner, List<Corner> all) {
    Set<Integer> unrelated = faulty(0, corner, all);
    return SharedRadii.largest(
        all.get(corner).radius, r -> unrelated.containsAll(faulty(r, corner, all)));
  }

  /** The corners that have no room when one, with its image, has the radius {@code tried}. */
  private Set<Integer> faulty(double tried, int corner, List<Corner> all) {
    double[] radii = radii(all);
    for (int i = 0; i < radii.length; i++) {
      if (given(i, all.size()) == corner) {
        radii[i] = tried;
      }
    }
    Set<Integer> faulty = new TreeSet<>();
    Fillet.faults(chain(all), radii).forEach(f -> faulty.add(f.corner()));
    return faulty;
  }
}
