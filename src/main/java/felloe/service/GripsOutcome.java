package felloe.service;

import felloe.geometry.AreaProperties;
import felloe.geometry.Point;
import felloe.grips.GripBodies;
import felloe.grips.GripBody;
import felloe.grips.GripPlan;
import felloe.grips.GripStation;
import felloe.grips.GripStations;
import felloe.grips.GripWeight;
import felloe.grips.GripWrap;
import felloe.grips.PlacedGrip;
import felloe.grips.Pocket;
import felloe.joints.GripPockets;
import felloe.plate.Body;
import felloe.plate.Plate;
import felloe.solid.Relief;
import felloe.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * The grips of a plate.
 *
 * @param study the plate
 * @param grips in the order of the shape file
 * @param wheel what the plate weighs with them
 */
public record GripsOutcome(Study study, List<Described> grips, Wheel wheel) {

  /** Chords of bodies that are only looked at, mm. */
  private static final double SEEN = 0.2;

  public GripsOutcome {
    grips = List.copyOf(grips);
  }

  /**
   * A grip with its figures.
   *
   * @param placed where it lies
   * @param pockets let into it
   * @param weight of it, without its wrap
   * @param stations its girth at every 5 mm
   * @param wraps unrolled; none where it has none
   */
  public record Described(
      PlacedGrip placed,
      List<Pocket> pockets,
      GripWeight weight,
      List<GripStation> stations,
      List<GripWrap> wraps) {

    public Described {
      pockets = List.copyOf(pockets);
      stations = List.copyOf(stations);
      wraps = List.copyOf(wraps);
    }

    /** The places that fingers go round, its tapered ends left out. */
    public List<GripStation> held() {
      return stations.stream().filter(s -> s.held() && !placed.tapered(s)).toList();
    }
  }

  /**
   * Plate, grips and what sits in its openings together, without screws and wrap. A body is as
   * heavy all over its bezel.
   *
   * @param mass g
   * @param centre centre of mass, mm
   * @param inertia about the hub axis, g mm²: what the hands feel when they turn it
   * @param plateInertia of the plate alone, g mm²
   * @param bodies mass of what sits in its openings, as far as it was weighed, g
   */
  public record Wheel(
      double mass, Point centre, double inertia, double plateInertia, double bodies) {

    static Wheel of(Plate plate, List<Described> grips) {
      AreaProperties area = plate.region().properties();
      double mass = plate.mass();
      double own = (area.ixx() + area.iyy()) * mass / area.area();
      Point moment = new Point(area.centroid().x() * mass, area.centroid().y() * mass);
      double all = mass;
      double inertia = own;
      for (Described grip : grips) {
        all += grip.weight().mass();
        moment = moment.plus(grip.weight().centre(), grip.weight().mass());
        inertia += grip.weight().inertia();
      }
      double bodies = 0;
      for (Body body : plate.bodies()) {
        double grams = body.mass().orElse(0.0);
        AreaProperties bezel = body.bezel().properties();
        bodies += grams;
        moment = moment.plus(bezel.centroid(), grams);
        inertia += grams * (bezel.ixx() + bezel.iyy()) / bezel.area();
      }
      all += bodies;
      return new Wheel(all, new Point(moment.x() / all, moment.y() / all), inertia, own, bodies);
    }
  }

  /** Describes the grips of a plate; there may be none. */
  public static GripsOutcome of(Study study) {
    Plate plate = study.plate();
    List<Pocket> pockets = GripPockets.of(study.joints());
    List<Described> grips =
        study.joints().grips().grips().stream()
            .map(grip -> described(plate, grip, pockets))
            .toList();
    return new GripsOutcome(study, grips, Wheel.of(plate, grips));
  }

  private static Described described(Plate plate, PlacedGrip grip, List<Pocket> pockets) {
    List<Pocket> own =
        pockets.stream()
            .filter(p -> grip.holes().stream().anyMatch(h -> h.label().equals(p.hole())))
            .toList();
    return new Described(
        grip,
        own,
        GripWeight.of(grip, own),
        GripStations.of(plate, grip),
        GripWrap.of(plate, grip));
  }

  /**
   * Them as bodies.
   *
   * @throws felloe.plate.BadInput when no piece fits on the printer's bed
   */
  public List<GripBody> bodies() {
    GripPlan plan = study.joints().grips();
    return GripBodies.of(plan, grips.stream().flatMap(g -> g.pockets().stream()).toList());
  }

  /** The finished wheel, its plate and its grips, as fine as a picture shows. */
  public static List<Solid> look(Study study) {
    Plate plate = study.plate();
    List<Solid> all = new ArrayList<>();
    all.add(Relief.slab(plate.region(), -plate.stock().asMade(), 0, SEEN));
    GripBodies.of(study.joints().grips(), GripPockets.of(study.joints()), SEEN)
        .forEach(body -> all.add(body.solid()));
    return all;
  }

  /** Mass of all grips, g. */
  public double mass() {
    return grips.stream().mapToDouble(grip -> grip.weight().mass()).sum();
  }
}
