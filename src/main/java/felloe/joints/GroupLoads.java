package felloe.joints;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint.HandLoads;
import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the hands' loads on the hub screws of a plate. */
final class GroupLoads {

  /** Wider holes take no screw, mm (ISO 273, coarse series for M10). */
  private static final double WIDEST_SCREW_HOLE = 12;

  private final Plate plate;
  private final List<Contour> edges = new ArrayList<>();
  private final List<Hole> screwHoles = new ArrayList<>();

  private GroupLoads(Plate plate) {
    this.plate = plate;
    edges.add(plate.outline());
    for (Window window : plate.windows()) {
      edges.add(window.contour());
    }
    for (Hole hole : plate.holes()) {
      boolean screw =
          hole.role() == HoleRole.BOLT
              || hole.role() == HoleRole.GRIP
              || hole.role() == HoleRole.OTHER && hole.diameter() <= WIDEST_SCREW_HOLE;
      if (screw) {
        screwHoles.add(hole);
      } else {
        edges.add(hole.contour());
      }
    }
  }

  /** The loads; empty when no hub screw is planned, or when one alone cannot carry the torque. */
  static Optional<GroupLoad> of(Plate plate, List<PlannedJoint> joints, Fasteners fasteners) {
    List<PlannedJoint> hub = joints.stream().filter(j -> j.role() == HoleRole.BOLT).toList();
    List<Point> centres = hub.stream().flatMap(j -> j.holes().stream()).map(Hole::centre).toList();
    if (centres.isEmpty() || !new BoltGroup(centres).carriesTorque()) {
      return Optional.empty();
    }
    return Optional.of(new GroupLoads(plate).load(hub, new BoltGroup(centres), fasteners));
  }

  private GroupLoad load(List<PlannedJoint> hub, BoltGroup group, Fasteners fasteners) {
    HandLoads own =
        hub.stream()
            .map(j -> j.joint().loads())
            .filter(l -> !l.equals(HandLoads.USUAL))
            .findFirst()
            .orElse(HandLoads.USUAL);
    double torque = own.torque().orElse(fasteners.torque().value());
    double pull = own.pull().orElse(fasteners.pull().value());
    double push = own.push().orElse(fasteners.push().value());
    List<String> basis =
        List.of(
            basis("torque", own.torque(), fasteners.torque()),
            basis("pull", own.pull(), fasteners.pull()),
            basis("push", own.push(), fasteners.push()));
    double reach = farthest(plate.outline(), group.centroid());
    List<Double> shares = group.worst(pull, Point.ORIGIN, torque * 1000);
    double direct = push / group.screws().size();
    Optional<List<Double>> tilts = group.worstTilt(push * reach);
    List<ScrewLoad> screws = new ArrayList<>();
    for (PlannedJoint joint : hub) {
      for (Hole hole : joint.holes()) {
        int i = screws.size();
        screws.add(screw(hole, joint, shares.get(i), tilts.map(t -> t.get(i) + direct)));
      }
    }
    return new GroupLoad(
        torque, pull, push, reach, basis, fasteners.allowables(plate.stock().material()), screws);
  }

  private static String basis(String name, Optional<Double> own, SourcedFigure usual) {
    return name + ": " + (own.isPresent() ? "set in the shape file" : usual.basis());
  }

  private ScrewLoad screw(Hole hole, PlannedJoint joint, double share, Optional<Double> pull) {
    double thickness = plate.stock().thickness();
    double edge = Double.POSITIVE_INFINITY;
    for (Contour contour : edges) {
      edge = Math.min(edge, contour.distance(hole.centre()));
    }
    double left = 2 * edge - hole.diameter();
    for (Hole other : screwHoles) {
      if (other != hole) {
        double apart = hole.centre().distance(other.centre());
        left = Math.min(left, apart - (hole.diameter() + other.diameter()) / 2);
      }
    }
    return new ScrewLoad(
        hole,
        joint,
        share,
        pull,
        edge,
        share / (joint.thread().diameter() * thickness),
        share / (2 * edge * thickness),
        share / (left * thickness));
  }

  /** Distance of the farthest point of a contour, mm. */
  static double farthest(Contour contour, Point from) {
    double far = 0;
    for (Segment segment : contour.segments()) {
      far = Math.max(far, segment.from().distance(from));
      if (segment instanceof Arc arc) {
        Point away = arc.centre().minus(from);
        double reach = away.norm() + arc.radius();
        Point end =
            away.norm() > Tolerances.SAME_POINT ? from.plus(away.unit(), reach) : arc.from();
        if (contour.distance(end) <= Tolerances.SAME_POINT) {
          far = Math.max(far, from.distance(end));
        }
      }
    }
    return far;
  }
}
