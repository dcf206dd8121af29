package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece of the plane: what lies inside one contour and outside every one of some others.
 *
 * @param outer its outer edge
 * @param holes the contours taken out of it, each inside {@code outer}, clear of it and each other
 */
public record Region(Contour outer, List<Contour> holes) {

  /**
   * Refuses holes that lie outside, touch the edge, or touch or lie in each other.
   *
   * @throws GeometryException saying which hole (numbered from 1) and where
   */
  public Region {
    holes = List.copyOf(holes);
    if (!holes.isEmpty()) {
      refuseMeetings(outer, holes);
      refuseMisplaced(outer, holes);
    }
  }

  /** A region without holes. */
  public static Region of(Contour outer) {
    return new Region(outer, List.of());
  }

  private static void refuseMeetings(Contour outer, List<Contour> holes) {
    List<Segment> all = new ArrayList<>(outer.segments());
    List<Integer> owner = new ArrayList<>();
    outer.segments().forEach(s -> owner.add(0));
    for (int i = 0; i < holes.size(); i++) {
      int number = i + 1;
      all.addAll(holes.get(i).segments());
      holes.get(i).segments().forEach(s -> owner.add(number));
    }
    new SegmentIndex(all)
        .firstClash(
            (i, j) -> {
              if (owner.get(i).equals(owner.get(j))) {
                return Optional.empty();
              }
              Gap gap = Gap.between(all.get(i), all.get(j));
              return gap.distance() <= Tolerances.SAME_POINT
                  ? Optional.of(gap.from())
                  : Optional.empty();
            })
        .ifPresent(
            clash -> {
              throw new GeometryException(
                  name(owner.get(clash.first()))
                      + " and "
                      + name(owner.get(clash.second()))
                      + " cross or touch",
                  clash.where());
            });
  }

  private static String name(int number) {
    return number == 0 ? "the outer edge" : "hole " + number;
  }

  private static void refuseMisplaced(Contour outer, List<Contour> holes) {
    List<Box> boxes = holes.stream().map(Contour::box).toList();
    for (int i = 0; i < holes.size(); i++) {
      Point p = holes.get(i).segments().get(0).from();
      if (!outer.contains(p)) {
        throw new GeometryException(name(i + 1) + " lies outside", p);
      }
      for (int j = 0; j < holes.size(); j++) {
        if (j != i && boxes.get(j).contains(p) && holes.get(j).contains(p)) {
          throw new GeometryException(name(i + 1) + " lies in " + name(j + 1), p);
        }
      }
    }
  }

  /** The outer edge and then the holes. */
  public List<Contour> contours() {
    List<Contour> all = new ArrayList<>();
    all.add(outer);
    all.addAll(holes);
    return List.copyOf(all);
  }

  /** Area, centroid and second moments, holes taken out. */
  public AreaProperties properties() {
    AreaProperties rest = outer.properties();
    for (Contour hole : holes) {
      rest = rest.less(hole.properties());
    }
    return rest;
  }

  /** Length of all edges, mm. */
  public double length() {
    return contours().stream().mapToDouble(Contour::length).sum();
  }

  /** Whether a point lies in the material. On an edge the answer may be either. */
  public boolean contains(Point p) {
    return outer.contains(p) && holes.stream().noneMatch(hole -> hole.contains(p));
  }

  /** The region after a rigid motion. */
  public Region moved(RigidTransform motion) {
    return new Region(outer.moved(motion), holes.stream().map(hole -> hole.moved(motion)).toList());
  }
}
