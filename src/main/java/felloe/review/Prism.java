package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.plate.Face;
import java.util.List;

/**
 * What stands on a face of the plate with upright sides.
 *
 * @param name what findings call it
 * @param face of the plate
 * @param regions its plan, as the driver sees it
 * @param grown how far it reaches past them all round, mm
 * @param low where it begins above the face, mm
 * @param high where it ends, mm
 */
record Prism(String name, Face face, List<Region> regions, double grown, double low, double high) {

  /** A stretch is looked at in so many places, and then between the best of them. */
  private static final int PLACES = 48;

  private static final int HALVINGS = 40;

  Prism {
    regions = List.copyOf(regions);
  }

  static Prism of(String name, Face face, Contour edge, double low, double high) {
    return new Prism(name, face, List.of(Region.of(edge)), 0, low, high);
  }

  /**
   * The room between two on one face, mm; below zero how far one reaches into the other, as seen by
   * the driver, or in height where that is less and one of them stands off the face. Exact where
   * they are apart; the depth of an overlap to a thousandth.
   */
  double room(Prism other) {
    double apart = plan(other) - grown - other.grown;
    double above = Math.max(other.low - high, low - other.high);
    if (apart < 0 && above < 0) {
      return low > 0 || other.low > 0 ? Math.max(apart, above) : apart;
    }
    return Math.hypot(Math.max(0, apart), Math.max(0, above));
  }

  /** Whether their boxes come nearer than a distance. */
  boolean nears(Prism other, double distance) {
    return face == other.face
        && regions.stream()
            .anyMatch(
                a ->
                    other.regions.stream()
                        .anyMatch(
                            b ->
                                a.outer()
                                    .box()
                                    .grown(distance + grown + other.grown)
                                    .touches(b.outer().box())));
  }

  private double plan(Prism other) {
    double least = Double.POSITIVE_INFINITY;
    for (Region a : regions) {
      for (Region b : other.regions) {
        least = Math.min(least, between(a, b));
      }
    }
    return least;
  }

  /** Distance of two figures; below zero how far one reaches into the other. */
  static double between(Region a, Region b) {
    double gap = Double.POSITIVE_INFINITY;
    for (Contour edge : a.contours()) {
      for (Contour other : b.contours()) {
        // The way back is as long, and the one of fewer edges is the sooner indexed.
        boolean fewer = edge.segments().size() < other.segments().size();
        gap = Math.min(gap, (fewer ? other.gap(edge) : edge.gap(other)).distance());
      }
    }
    if (gap > 0 && !a.contains(start(b)) && !b.contains(start(a))) {
      return gap;
    }
    return -Math.max(0, Math.max(deepest(a, b), deepest(b, a)));
  }

  /** How far a figure lies inside another; below zero how far it reaches out of it. */
  static double inside(Contour outer, Contour inner) {
    double gap = outer.gap(inner).distance();
    if (gap > 0 && outer.contains(inner.segments().get(0).from())) {
      return gap;
    }
    double out = 0;
    for (Segment segment : inner.segments()) {
      out =
          Math.max(
              out, most(segment, p -> outer.contains(p) ? -outer.distance(p) : outer.distance(p)));
    }
    return -out;
  }

  private static Point start(Region region) {
    return region.outer().segments().get(0).from();
  }

  /** How deep the edge of a figure goes into another; below zero where it does not. */
  private static double deepest(Region of, Region in) {
    double most = Double.NEGATIVE_INFINITY;
    for (Segment segment : of.outer().segments()) {
      most = Math.max(most, most(segment, p -> in.contains(p) ? to(in, p) : -to(in, p)));
    }
    return most;
  }

  private static double to(Region region, Point p) {
    return region.contours().stream().mapToDouble(c -> c.distance(p)).min().orElseThrow();
  }

  private interface Depth {
    double at(Point p);
  }

  /** Between neighbours of each place that is deeper than both. */
  private static double most(Segment segment, Depth depth) {
    double[] here = new double[PLACES + 1];
    for (int i = 0; i <= PLACES; i++) {
      here[i] = depth.at(segment.at((double) i / PLACES));
    }
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= PLACES; i++) {
      boolean top = (i == 0 || here[i] >= here[i - 1]) && (i == PLACES || here[i] >= here[i + 1]);
      if (top) {
        double low = Math.max(0, i - 1.0) / PLACES;
        double high = Math.min(PLACES, i + 1.0) / PLACES;
        most = Math.max(most, Math.max(here[i], most(segment, depth, low, high)));
      }
    }
    return most;
  }

  private static double most(Segment segment, Depth depth, double from, double to) {
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double left = low + (high - low) / 3;
      double right = high - (high - low) / 3;
      if (depth.at(segment.at(left)) < depth.at(segment.at(right))) {
        low = left;
      } else {
        high = right;
      }
    }
    return depth.at(segment.at((low + high) / 2));
  }
}
