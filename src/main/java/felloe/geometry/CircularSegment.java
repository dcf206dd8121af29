package felloe.geometry;

/**
 * The figure between an arc and its chord, in axes with their origin at the middle of the chord: u
 * across the chord toward the arc, v along the chord. The integrals follow from ∬ over the circular
 * segment of half angle h in terms of sin h, sin 2h and so on; where these differences would lose
 * their digits the same expressions are summed as power series. Relative error about 1e-14.
 *
 * @param area area
 * @param u ∬ u dA
 * @param uu ∬ u² dA
 * @param vv ∬ v² dA
 */
record CircularSegment(double area, double u, double uu, double vv) {

  /** A term of a series below this share of its sum no longer changes it. */
  private static final double LAST = 1e-18;

  // From here up the closed forms keep at least ten digits of the least of the figures.
  private static final double SERIES_TO = 1;

  /** The cap of an arc. */
  static CircularSegment of(Arc arc) {
    double h = Math.abs(arc.sweep()) / 2;
    double r = arc.radius();
    CircularSegment unit = h < SERIES_TO ? series(h) : closed(h);
    return new CircularSegment(
        unit.area * r * r, unit.u * r * r * r, unit.uu * r * r * r * r, unit.vv * r * r * r * r);
  }

  private static CircularSegment closed(double h) {
    double t = 2 * h;
    return new CircularSegment(
        (t - Math.sin(t)) / 2,
        0.75 * Math.sin(h) + Math.sin(3 * h) / 12 - h * Math.cos(h),
        3 * t / 8 - 7 * Math.sin(t) / 12 + t * Math.cos(t) / 4 - Math.sin(2 * t) / 48,
        t / 8 - Math.sin(t) / 6 + Math.sin(2 * t) / 48);
  }

  private static CircularSegment series(double h) {
    double t = 2 * h;
    return new CircularSegment(
        odd(t, 1, -0.5, 0, 0, 1),
        odd(h, 2, 0.75, -1, 1.0 / 12, 3),
        odd(t, 3, -7.0 / 12, 0.25, -1.0 / 48, 2),
        odd(t, 2, -1.0 / 6, 0, 1.0 / 48, 2));
  }

  /**
   * a sin x + b x cos x + c sin(base x) as the sum over n = 2k + 1 of (-1)^k (a + b n + c base^n)
   * x^n / n!, from k = first on, what is before being known to cancel.
   */
  private static double odd(double x, int first, double a, double b, double c, double base) {
    double term = x;
    double power = base;
    int n = 1;
    while (n < 2 * first + 1) {
      term *= -x * x / ((n + 1) * (n + 2));
      power *= base * base;
      n += 2;
    }
    double sum = 0;
    double part;
    do {
      part = term * (a + b * n + c * power);
      sum += part;
      term *= -x * x / ((n + 1) * (n + 2));
      power *= base * base;
      n += 2;
    } while (Math.abs(part) > LAST * Math.abs(sum));
    return sum;
  }
}
