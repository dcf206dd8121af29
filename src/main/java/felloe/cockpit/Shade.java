package felloe.cockpit;

import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Polygons.Polygon;
import felloe.geometry.Region;
import felloe.grips.PlacedGrip;
import felloe.plate.Body;
import felloe.plate.BoltCircle;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Something that turns with the wheel and hides what lies beyond it, in the wheel's axes: as if it
 * filled all of an outline from one height to another.
 *
 * @param polygons what it covers, arcs flattened
 * @param back its least height above the end of the column, mm
 * @param front its greatest
 */
public record Shade(List<Polygon> polygons, double back, double front) {

  public Shade {
    polygons = List.copyOf(polygons);
  }

  private static Shade of(List<Region> regions, double back, double front) {
    return new Shade(
        regions.stream().map(region -> Polygon.of(region, Sight.CHORD)).toList(), back, front);
  }

  /**
   * All of a wheel: the plate, through whose grip and open windows one sees; grips at their
   * thickest; what sits in openings, as wide behind as its bezel where its shank is not told; the
   * hub and what lies below it, one hole's diameter beyond the centres of its screws. The farthest
   * from the driver comes first.
   */
  public static List<Shade> of(Plate plate, List<PlacedGrip> grips, double stack) {
    double thick = plate.stock().asMade();
    double scale = plate.making().gripScale();
    List<Contour> through =
        plate.windows().stream()
            .filter(w -> w.use() == WindowUse.GRIP || w.use() == WindowUse.OPEN)
            .map(Window::contour)
            .toList();
    List<Shade> all = new ArrayList<>();
    all.add(
        of(List.of(new Region(plate.outline(), through)), stack - scale, stack + thick + scale));
    for (PlacedGrip placed : grips) {
      Grip grip = placed.grip();
      double edge = grip.swell().map(Grip.Swell::edge).orElse(0.0);
      List<Region> cover = new ArrayList<>();
      for (Region region : placed.footprint()) {
        cover.addAll(edge > 0 ? Offset.of(region, edge) : List.of(region));
      }
      double behind =
          grip.faces().has(Face.BACK)
              ? grip.profile().back() + grip.swell().map(Grip.Swell::back).orElse(0.0)
              : 0;
      double before =
          grip.faces().has(Face.FRONT)
              ? grip.profile().front() + grip.swell().map(Grip.Swell::front).orElse(0.0)
              : 0;
      all.add(of(cover, stack - behind, stack + thick + before));
    }
    for (Body body : plate.bodies()) {
      boolean front = body.face() == Face.FRONT;
      double deep = Math.max(0, body.depth() - thick);
      all.add(standing(body.bezel(), front, body.height(), stack, thick));
      all.add(standing(body.shank().orElse(body.bezel()), !front, deep, stack, thick));
      body.arm()
          .ifPresent(
              arm ->
                  all.add(standing(arm.edge(), front, arm.off() + arm.thickness(), stack, thick)));
    }
    double hub = 0;
    for (BoltCircle ring : plate.boltCircles()) {
      for (Point centre : ring.centres()) {
        hub = Math.max(hub, centre.norm() + ring.holeDiameter());
      }
    }
    if (hub > 0 && stack > 0) {
      all.add(of(List.of(Region.of(Contour.circle(Point.ORIGIN, hub))), 0, stack));
    }
    all.sort(Comparator.comparingDouble(Shade::back));
    return all;
  }

  private static Shade standing(
      Contour edge, boolean front, double high, double stack, double thick) {
    List<Region> region = List.of(Region.of(edge));
    return front
        ? of(region, stack + thick, stack + thick + high)
        : of(region, stack - high, stack);
  }
}
