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
   * less than as many single ones: variances grow by this. An assumption, not yet measured.
   */
  private static final double TOGETHER = 4;

  /** The bar of the paper is read within this, standard deviation, share of its length. */
  static final double BAR = 0.1 / 200;

  /** Thickness is measured within this, standard deviation, mm. */
  static final double THICKNESS = 0.05;

  private final FrameFit fit;
  private final double thickness;

  PhotoAccuracy(FrameFit fit, double thickness) {
    this.fit = fit;
    this.thickness = thickness;
  }

  /**
   * The 95 % bound of a distance between two places of the upper face, mm.
   *
   * @param edges standard deviation that the edges at both ends bring, mm
   */
  double bound(Point a, Point b, double edges) {
    Point along = b.minus(a).unit();
    double length = a.distance(b);
    double[][] covariance = fit.covariance();
    double[] slope = new double[Camera.NUMBERS];
    for (int i = 0; i < slope.length; i++) {
      double h = i < Camera.PLACE ? 1e-6 : 1e-4;
      if (i == Camera.PRINCIPAL || i == Camera.PRINCIPAL + 1) {
        h = 1e-3;
      }
      double[] moved = fit.numbers().clone();
      moved[i] += h;
      Camera other = new Camera(fit.base(), moved);
      slope[i] = along.dot(shift(other, b).minus(shift(other, a))) / h;
    }
    double variance = 0;
    for (int i = 0; i < slope.length; i++) {
      for (int j = 0; j < slope.length; j++) {
        variance += slope[i] * covariance[i][j] * slope[j];
      }
    }
    double high = fit.camera().stands()[2] - thickness;
    double bar = BAR * length;
    double rise = THICKNESS * length / high;
    return TWO_SIDED * Math.sqrt(variance * TOGETHER + edges * edges + bar * bar + rise * rise);
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
