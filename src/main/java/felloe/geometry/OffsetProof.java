package felloe.geometry;

import java.util.List;

/**
 * Measures an offset against its source, sharing nothing with the code that made it: every edge
 * must keep the distance, and nowhere may the source come nearer.
 */
final class OffsetProof {

  private final SegmentIndex source;
  private final double distance;
  private final double tolerance;

  /**
   * Prepares to measure.
   *
   * @param source every edge of the source
   * @param distance the distance to keep, above zero, mm
   * @param tolerance greatest error allowed, mm
   */
  OffsetProof(SegmentIndex source, double distance, double tolerance) {
    this.source = source;
    this.distance = distance;
    this.tolerance = tolerance;
  }

  /**
   * Measures all edges.
   *
   * @throws GeometryException at a point that lies off the distance
   */
  void check(List<Region> result) {
    for (Region region : result) {
      for (Contour contour : region.contours()) {
        contour.segments().forEach(this::check);
      }
    }
  }

  private void check(Segment edge) {
    check(edge.from());
    check(edge.at(0.5));
    // What comes nearer between these points is bounded by curves no sharper than the distance, so
    // it is no deeper than the rise of such a curve over half the edge.
    double bend = 1 / distance + Math.abs(edge.curvature());
    if (edge.length() * edge.length() * bend / 32 > tolerance) {
      source.touching(edge.box().grown(distance), number -> checkClear(edge, source.get(number)));
    }
  }

  private void check(Point p) {
    if (Math.abs(source.distance(p) - distance) > tolerance) {
      throw off(p);
    }
  }

  private void checkClear(Segment edge, Segment other) {
    Gap gap = Gap.between(edge, other);
    if (gap.distance() < distance - tolerance) {
      throw off(gap.from());
    }
  }

  private static GeometryException off(Point p) {
    return new GeometryException("an offset edge lies off its distance", p);
  }
}
