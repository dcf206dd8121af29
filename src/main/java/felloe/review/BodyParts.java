package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Body;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;

/**
 * A body with the parts that stand out of the plate.
 *
 * @param body what the maker wrote
 * @param opening edge of the opening that it sits in
 * @param bearing parts that lie on the plate: bezel, washer, nut
 * @param others its rear, an arm, a cable
 */
record BodyParts(Body body, Contour opening, List<Prism> bearing, List<Prism> others) {

  /** All bodies of a plate. */
  static List<BodyParts> of(Plate plate) {
    return plate.bodies().stream()
        .map(body -> of(body, opening(plate, body), plate.stock().asMade()))
        .toList();
  }

  private static Contour opening(Plate plate, Body body) {
    for (Window window : plate.windows()) {
      if (window.label().equals(body.opening())) {
        return window.contour();
      }
    }
    return plate.holes().stream()
        .filter(hole -> hole.label().equals(body.opening()))
        .findFirst()
        .map(Hole::contour)
        .orElseThrow();
  }

  private static BodyParts of(Body body, Contour opening, double thickness) {
    List<Prism> bearing = new ArrayList<>();
    List<Prism> others = new ArrayList<>();
    Face rear = body.rear();
    bearing.add(Prism.of("bezel", body.face(), body.bezel(), 0, body.height()));
    Point middle = opening.box().centre();
    double under = body.washer().map(Body.Washer::thickness).orElse(0.0);
    body.washer()
        .ifPresent(
            w -> bearing.add(Prism.of("washer", rear, disc(middle, w.diameter()), 0, under)));
    body.nut()
        .ifPresent(
            n ->
                bearing.add(
                    Prism.of(
                        "nut", rear, disc(middle, n.corners()), under, under + n.thickness())));
    body.arm()
        .ifPresent(
            a ->
                others.add(
                    Prism.of("arm", body.face(), a.edge(), a.off(), a.off() + a.thickness())));
    Contour shank = body.shank().orElse(opening);
    double behind = body.depth() - thickness;
    if (behind > 0) {
      others.add(Prism.of("rear", rear, shank, 0, behind));
    }
    body.cable().ifPresent(c -> others.add(cable(c, shank, rear, Math.max(0, behind))));
    return new BodyParts(body, opening, bearing, others);
  }

  private static Contour disc(Point middle, double diameter) {
    return Contour.circle(middle, diameter / 2);
  }

  /**
   * Straight back it is as wide as the shank. To a side it may leave at any height behind the
   * plate, since where on the rear it does is not told.
   */
  private static Prism cable(Body.Cable cable, Contour shank, Face rear, double behind) {
    if (cable.side().isEmpty()) {
      return Prism.of("cable", rear, shank, behind, behind + cable.free());
    }
    Point way = Point.polar(1, cable.side().get());
    Point middle = shank.box().centre();
    Extent extent = new Extent(shank);
    Point end = middle.plus(way, extent.reach(way) - middle.dot(way) + cable.free());
    Point half = way.left().times(cable.thickness() / 2);
    Contour strip =
        Contour.polygon(
            List.of(middle.minus(half), end.minus(half), end.plus(half), middle.plus(half)));
    return Prism.of("cable", rear, strip, 0, Math.max(behind, cable.thickness()));
  }

  List<Prism> all() {
    List<Prism> all = new ArrayList<>(bearing);
    all.addAll(others);
    return all;
  }
}
