package felloe.geometry;

import java.util.List;

/**
 * Area, centroid and second moments of area of a plane figure bounded by lines and arcs, in closed
 * form by Green's theorem: the polygon of the chords plus, for each arc, the circular segment over
 * its chord. Relative error about 1e-12 for figures of a plate's size near the origin.
 *
 * @param area mm²
 * @param centroid centre of area, mm
 * @param ixx ∬ y² dA about the x axis through the origin, mm⁴
 * @param iyy ∬ x² dA about the y axis through the origin, mm⁴
 * @param ixy ∬ x y dA about the origin, mm⁴
 */
public record AreaProperties(double area, Point centroid, double ixx, double iyy, double ixy) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public AreaProperties {
    Numbers.finite("area", area);
    Numbers.finite("ixx", ixx);
    Numbers.finite("iyy", iyy);
    Numbers.finite("ixy", ixy);
  }

  /** Properties of the figure inside a closed chain; negative area when it runs clockwise. */
  static AreaProperties of(List<Segment> chain) {
    Sums sums = new Sums();
    for (Segment segment : chain) {
      sums.addChord(segment.from(), segment.to());
      if (segment instanceof Arc arc) {
        sums.addCap(arc);
      }
    }
    return sums.total();
  }

  /** This figure less another that lies inside it. */
  public AreaProperties less(AreaProperties hole) {
    double rest = area - hole.area;
    Point moment = centroid.times(area).plus(hole.centroid, -hole.area);
    return new AreaProperties(
        rest, moment.times(1 / rest), ixx - hole.ixx, iyy - hole.iyy, ixy - hole.ixy);
  }

  /** The same about axes through another point, parallel to x and y (Steiner's theorem). */
  public AreaProperties about(Point origin) {
    double cx = centroid.x();
    double cy = centroid.y();
    double dx = cx - origin.x();
    double dy = cy - origin.y();
    return new AreaProperties(
        area,
        new Point(dx, dy),
        ixx + area * (dy * dy - cy * cy),
        iyy + area * (dx * dx - cx * cx),
        ixy + area * (dx * dy - cx * cy));
  }

  /** The same about axes through its own centroid. */
  public AreaProperties central() {
    return about(centroid);
  }

  /** Polar second moment about the origin, mm⁴. */
  public double polar() {
    return ixx + iyy;
  }

  private static final class Sums {
    // Below this half angle the cap's own moment across its chord is taken from the parabola over
    // the chord, since the circle's formula loses its digits; the parabola errs by half angle².
    private static final double FLAT = 0.01;

    private double area;
    private double mx;
    private double my;
    private double ixx;
    private double iyy;
    private double ixy;

    /** The triangle from the origin over a chord. */
    void addChord(Point a, Point b) {
      double cross = a.cross(b);
      area += cross / 2;
      mx += cross * (a.x() + b.x()) / 6;
      my += cross * (a.y() + b.y()) / 6;
      ixx += cross * (a.y() * a.y() + a.y() * b.y() + b.y() * b.y()) / 12;
      iyy += cross * (a.x() * a.x() + a.x() * b.x() + b.x() * b.x()) / 12;
      ixy += cross * (2 * a.x() * a.y() + a.x() * b.y() + b.x() * a.y() + 2 * b.x() * b.y()) / 24;
    }

    /** The circular segment between an arc and its chord; taken away where the arc turns right. */
    void addCap(Arc arc) {
      double r = arc.radius();
      double half = Math.abs(arc.sweep()) / 2;
      double s = Math.sin(half);
      double c = Math.cos(half);
      double cap = r * r * capFactor(half, s, c);
      // Moments in axes u (along the bisector, away from the centre) and v (along the chord).
      double reach = 2.0 / 3.0 * r * r * r * s * s * s / cap;
      double uu;
      if (half < FLAT) {
        double rise = r * (1 - c);
        uu = cap * rise * rise * 12 / 175;
      } else {
        double aboutCentre = Math.pow(r, 4) * ((half + s * c) / 4 - s * c * c * c / 2);
        uu = aboutCentre - cap * reach * reach;
      }
      double vv = Math.pow(r, 4) * ((half - s * c) / 4 - s * s * s * c / 6);
      Point u = arc.isCircle() ? new Point(1, 0) : arc.at(0.5).minus(arc.centre()).unit();
      Point g = arc.centre().plus(u, reach);
      double sign = Math.signum(arc.sweep());
      double cx = u.x();
      double cy = u.y();
      area += sign * cap;
      mx += sign * cap * g.x();
      my += sign * cap * g.y();
      ixx += sign * (uu * cy * cy + vv * cx * cx + cap * g.y() * g.y());
      iyy += sign * (uu * cx * cx + vv * cy * cy + cap * g.x() * g.x());
      ixy += sign * ((uu - vv) * cx * cy + cap * g.x() * g.y());
    }

    /** half - sin half cos half, without losing digits at small angles. */
    private static double capFactor(double half, double s, double c) {
      if (half > 0.1) {
        return half - s * c;
      }
      double x = 2 * half;
      double term = x * x * x / 6;
      double sum = 0;
      for (int k = 4; Math.abs(term) > 1e-18 * Math.abs(sum); k += 2) {
        sum += term;
        term *= -x * x / (k * (k + 1));
      }
      return sum / 2;
    }

    AreaProperties total() {
      // A chain that runs back on itself encloses nothing and has no centroid; its maker refuses
      // it.
      Point centroid = area == 0 ? Point.ORIGIN : new Point(mx / area, my / area);
      return new AreaProperties(area, centroid, ixx, iyy, ixy);
    }
  }
}
