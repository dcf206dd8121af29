package felloe.bringin;

import felloe.geometry.Point;

/**
 * How well a photo measures: from what is left over at the marks, carried on to the plane of the
 * part's upper face.
 */
final class PhotoAccuracy {

  /** Two-sided 95 % of the normal distribution. */
  static final double TWO_SIDED = 1.96;

  /**
   * Places along one side err together (blur, compression, the fit's own bend), so that they say
   * less than as many single ones: variances grow by this. From rendered scenes, others than those
   * that the bound is judged by.
   */
  static final double TOGETHER = 2;

  /** The bar of the paper is read within this, standard deviation, share of its length. */
  static final double BAR = 0.1 / 200;

  /** Thickness is measured within this, standard deviation, mm. */
  static final double THICKNESS = 0.05;

  /**
   * All of an edge may lie to one side by this, standard deviation, pixels: how its blur, its wall
   * and its shadow differ from what is taken for them. From rendered scenes.
   */
  private static final double ASIDE = 0.06;

  /**
   * A diameter is off by this however near the camera, standard deviation, mm: on a near photo the
   * rest comes to less than what one sees. From rendered scenes with one sheet, others than those
   * that the bound is judged by.
   */
  private static final double NEAREST = 0.0125;

  /** Places along an edge err together over about so many, so that a fit has so many fewer. */
  private static final double TOGETHER_ALONG = 8;

  private final FrameFit fit;
  private final double thickness;

  PhotoAccuracy(FrameFit fit, double thickness) {
    this.fit = fit;
    this.thickness = thickness;
  }

  /**
   * The 95 % bound of a distance between two places of the upper face, mm.
   *
   * @param aside what both ends bring when all edges lie aside, standard deviation, mm
   * @param edges standard deviation that the edges at both ends bring each for itself, mm
   */
  private double bound(Point a, Point b, double aside, double edges) {
    Point along = b.minus(a).unit();
    double length = a.distance(b);
    double[] slope = new double[Camera.NUMBERS];
    for (int i = 0; i < slope.length; i++) {
      double h = Camera.step(i);
      double[] moved = fit.numbers().clone();
      moved[i] += h;
      Camera other = new Camera(fit.base(), moved);
      slope[i] = along.dot(shift(other, b).minus(shift(other, a))) / h;
    }
    double high = fit.camera().stands()[2] - thickness;
    double bar = BAR * length;
    double rise = THICKNESS * length / high;
    return TWO_SIDED
        * Math.sqrt(fit.variance(slope) + aside * aside + edges * edges + bar * bar + rise * rise);
  }

  /** The 95 % bound of the scale between two places, share: paper, thickness and camera alone. */
  double scale(Point a, Point b) {
    return bound(a, b, 0, 0) / a.distance(b);
  }

  /** The 95 % bound of the camera's height over the paper, mm. */
  double height() {
    return TWO_SIDED * fit.heightSpread();
  }

  /** The 95 % bound of a width of the part, between places of one edge or of two, mm. */
  double width(Point a, Point b, EdgeChain one, EdgeChain other) {
    double edges = Math.hypot(place(one), place(other));
    return bound(a, b, aside(a) + aside(b), Math.hypot(edges, Math.max(over(a), over(b))));
  }

  /** The 95 % bound of the diameter of a round hole, mm. */
  double diameter(EdgeChain hole) {
    Point r = new Point(hole.radius(), 0);
    double edge = Math.hypot(NEAREST, over(hole.centre()));
    double places = Math.hypot(2 * centre(hole), edge);
    return bound(hole.centre().minus(r), hole.centre().plus(r), 2 * aside(hole.centre()), places);
  }

  /** The 95 % bound of the distance between the middles of two round holes, mm. */
  double middles(EdgeChain one, EdgeChain other) {
    return bound(one.centre(), other.centre(), 0, Math.hypot(centre(one), centre(other)));
  }

  private double aside(Point p) {
    double[] g = fit.camera().growth(p, thickness);
    return ASIDE / Math.sqrt(Math.abs(g[0] * g[3] - g[1] * g[2]));
  }

  /**
   * By how much an edge lies off that is told by its wall's foot, standard deviation, mm: the upper
   * edge lies over the foot by the thickness. Of two edges across from each other one has its wall
   * in sight.
   */
  private double over(Point p) {
    double[] at = fit.camera().stands();
    return THICKNESS * p.distance(new Point(at[0], at[1])) / at[2];
  }

  /** How far an edge lies off at a place of it, standard deviation, mm. */
  private static double place(EdgeChain chain) {
    return chain.spread() / Math.sqrt(2);
  }

  /** How far a circle's middle and radius are off, standard deviation, mm. */
  private static double centre(EdgeChain hole) {
    if (hole.whole()) {
      return hole.spread();
    }
    double places = Math.max(1, 2 * Math.PI * hole.radius() / TOGETHER_ALONG);
    return hole.spread() / Math.sqrt(Math.max(2, places));
  }

  /** How far a measured place moves when the camera is another one. */
  private Point shift(Camera other, Point p) {
    double[] here = new double[2];
    double[] there = new double[2];
    Camera camera = fit.camera();
    camera.project(p.x(), p.y(), thickness, here);
    other.project(p.x(), p.y(), thickness, there);
    double[] g = camera.growth(p, thickness);
    double u = here[0] - there[0];
    double v = here[1] - there[1];
    double det = g[0] * g[3] - g[1] * g[2];
    return new Point((u * g[3] - v * g[1]) / det, (g[0] * v - g[2] * u) / det);
  }
}
