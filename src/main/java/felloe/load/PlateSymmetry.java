package felloe.load;

import felloe.geometry.AreaProperties;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.geometry.Tolerances;
import felloe.laminate.PlaneStiffness;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Turns and mirrors that carry a plate, its screws and its stiffness onto themselves.
 *
 * <p>What a load does and what its image does are then one answer, told on two parts of the mesh.
 * The mean of both is the better one, and it is the same for both, as symmetry wants.
 *
 * @param images the motions, that which moves nothing first
 * @param bolts the screws
 */
record PlateSymmetry(List<RigidTransform> images, List<Support.Bolt> bolts) {

  PlateSymmetry {
    images = List.copyOf(images);
    bolts = List.copyOf(bolts);
  }

  /** The symmetry of a plate on screws; of a clamped one none is looked for. */
  static PlateSymmetry of(Region region, PlateSection section, Support support) {
    List<RigidTransform> images = new ArrayList<>(List.of(RigidTransform.NONE));
    List<Support.Bolt> bolts =
        support instanceof Support.Bolted bolted ? bolted.bolts() : List.of();
    SegmentIndex edges = SegmentIndex.of(region.contours());
    int turns = 2 * bolts.size();
    for (int i = 1; i < 2 * turns; i++) {
      boolean mirrored = i >= turns;
      RigidTransform motion =
          new RigidTransform(mirrored, 2 * Math.PI * (i % turns) / turns, Point.ORIGIN);
      boolean carries =
          carries(motion, bolts)
              && carries(motion, section.d())
              && carries(motion, section.a())
              && carries(motion, section.bonding())
              && carries(motion, region, edges);
      if (carries) {
        images.add(motion);
      }
    }
    return new PlateSymmetry(images, bolts);
  }

  /** Whether what is glued on lies where its image would: by layers, area and middle. */
  private static boolean carries(RigidTransform motion, Bonding bonding) {
    return bonding.patches().stream()
        .allMatch(one -> bonding.patches().stream().anyMatch(other -> alike(motion, one, other)));
  }

  private static boolean alike(RigidTransform motion, Bonding.Patch one, Bonding.Patch other) {
    AreaProperties here = one.over().get(0).properties();
    AreaProperties there = other.over().get(0).properties();
    return one.layers().equals(other.layers())
        && Math.abs(here.area() - there.area()) <= Tolerances.SAME_CURVE * here.area()
        && motion.of(here.centroid()).near(there.centroid(), Tolerances.SAME_POINT);
  }

  private static boolean carries(RigidTransform motion, List<Support.Bolt> bolts) {
    return bolts.stream()
        .allMatch(
            one ->
                bolts.stream()
                    .anyMatch(
                        other ->
                            other.head() == one.head() && near(other.at(), motion.of(one.at()))));
  }

  private static boolean carries(RigidTransform motion, PlaneStiffness stiffness) {
    PlaneStiffness mirrored =
        motion.mirrored()
            ? new PlaneStiffness(
                stiffness.m11(),
                stiffness.m12(),
                stiffness.m22(),
                -stiffness.m16(),
                -stiffness.m26(),
                stiffness.m66())
            : stiffness;
    PlaneStiffness moved = mirrored.turned(Math.toDegrees(motion.turn()));
    return moved.plus(stiffness.times(-1)).largest() <= 1e-9 * stiffness.largest();
  }

  /** Ends and two points between tell a line or an arc. */
  private static boolean carries(RigidTransform motion, Region region, SegmentIndex edges) {
    for (Contour contour : region.contours()) {
      for (Segment segment : contour.segments()) {
        for (double along : new double[] {0, 0.3, 0.7}) {
          if (edges.distance(motion.of(segment.at(along))) > Tolerances.SAME_POINT) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private static boolean near(Point a, Point b) {
    return a.near(b, Tolerances.SAME_POINT);
  }

  /** Whether there is none. */
  boolean isNone() {
    return images.size() == 1;
  }

  /** Cases, and what else must be solved so that each has all of its images. */
  List<LoadCase> all(List<LoadCase> cases) {
    List<LoadCase> all = new ArrayList<>(cases);
    for (LoadCase one : cases) {
      for (RigidTransform motion : images) {
        LoadCase image = image(motion, one);
        if (all.stream().noneMatch(other -> same(other, image))) {
          all.add(image);
        }
      }
    }
    return all;
  }

  /**
   * The mean over the images of each of the first cases: of each screw's forces and of the movement
   * under each hand.
   *
   * @param movements of {@link #all}
   */
  List<Movement> means(List<Movement> movements, int cases) {
    return IntStream.range(0, cases).mapToObj(i -> mean(movements.get(i), movements)).toList();
  }

  private Movement mean(Movement one, List<Movement> movements) {
    double[] moves = new double[one.atLoads().size()];
    double[] tensions = new double[bolts.size()];
    double[] shears = new double[bolts.size()];
    double part = 1.0 / images.size();
    for (RigidTransform motion : images) {
      LoadCase image = image(motion, one.load());
      Movement there =
          movements.stream().filter(other -> same(other.load(), image)).findFirst().orElseThrow();
      for (int f = 0; f < moves.length; f++) {
        HandForce moved = image.forces().get(f);
        int at = first(moves.length, i -> same(there.load().forces().get(i), moved));
        moves[f] += part * there.atLoads().get(at);
      }
      for (int b = 0; b < tensions.length; b++) {
        Point moved = motion.of(bolts.get(b).at());
        int at = first(tensions.length, i -> near(bolts.get(i).at(), moved));
        tensions[b] += part * there.bolts().get(at).tension();
        shears[b] += part * there.bolts().get(at).shear();
      }
    }
    return new Movement(
        one.load(),
        Arrays.stream(moves).boxed().toList(),
        IntStream.range(0, tensions.length)
            .mapToObj(b -> new CaseField.BoltForce(bolts.get(b).label(), tensions[b], shears[b]))
            .toList());
  }

  private static int first(int count, IntPredicate wanted) {
    return IntStream.range(0, count).filter(wanted).findFirst().orElseThrow();
  }

  private static LoadCase image(RigidTransform motion, LoadCase load) {
    return new LoadCase(
        load.name(),
        load.title(),
        load.forces().stream()
            .map(
                f -> {
                  Point way = motion.of(new Point(f.x(), f.y()));
                  return new HandForce(motion.of(f.at()), way.x(), way.y(), f.z());
                })
            .toList(),
        load.patch(),
        load.basis());
  }

  private static boolean same(LoadCase a, LoadCase b) {
    return a.patch() == b.patch()
        && a.forces().size() == b.forces().size()
        && a.forces().stream().allMatch(f -> b.forces().stream().anyMatch(g -> same(f, g)));
  }

  private static boolean same(HandForce a, HandForce b) {
    double apart = Math.abs(a.x() - b.x()) + Math.abs(a.y() - b.y()) + Math.abs(a.z() - b.z());
    return near(a.at(), b.at()) && apart <= 1e-9 * a.size();
  }
}
