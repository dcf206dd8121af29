package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;

/**
 * Holds every window and hole against the outline and against each other, and says which reaches
 * into which, where and by how much.
 */
final class PlacementCheck {

  private static final int SAMPLES = 32;

  private final Reports reports;
  private final Contour outline;

  PlacementCheck(Reports reports, Contour outline) {
    this.reports = reports;
    this.outline = outline;
  }

  private record Opening(String name, Contour contour, Place place) {}

  void check(List<Window> windows, List<Hole> holes) {
    List<Opening> openings = new ArrayList<>();
    for (Window w : windows) {
      openings.add(new Opening(w.use().words() + " " + w.label(), w.contour(), w.place()));
    }
    for (Hole h : holes) {
      openings.add(new Opening(h.role().words() + " " + h.label(), h.contour(), h.place()));
    }
    for (int i = 0; i < openings.size(); i++) {
      againstOutline(openings.get(i));
      for (int j = 0; j < i; j++) {
        againstEachOther(openings.get(i), openings.get(j));
      }
    }
  }

  private void againstOutline(Opening opening) {
    Point start = opening.contour.segments().get(0).from();
    boolean meets = meets(opening.contour, outline);
    if (!meets && outline.contains(start)) {
      return;
    }
    Depth out = deepest(opening.contour, outline, false);
    boolean whole = !meets && !outline.contains(start);
    reports.add(
        opening.place,
        opening.name,
        "",
        whole
            ? "lies outside the outline, near " + out.at + " mm"
            : "reaches " + mm(out.by) + " outside the outline, near " + out.at + " mm",
        "move it inward or make it smaller");
  }

  private void againstEachOther(Opening later, Opening earlier) {
    if (!later.contour.box().grown(Tolerances.SAME_POINT).touches(earlier.contour.box())) {
      return;
    }
    boolean meets = meets(later.contour, earlier.contour);
    boolean inside = earlier.contour.contains(later.contour.segments().get(0).from());
    boolean round = later.contour.contains(earlier.contour.segments().get(0).from());
    if (!meets && !inside && !round) {
      return;
    }
    Depth in = deepest(later.contour, earlier.contour, true);
    String how =
        meets
            ? "reaches " + mm(in.by) + " into " + earlier.name + ", near " + in.at + " mm"
            : inside
                ? "lies in " + earlier.name + ", at " + in.at + " mm"
                : "lies round " + earlier.name + ", at " + in.at + " mm";
    reports.add(
        later.place,
        later.name,
        "",
        how + " (" + earlier.place + ")",
        "move one of them or make it smaller");
  }

  private static boolean meets(Contour a, Contour b) {
    if (!a.box().grown(Tolerances.SAME_POINT).touches(b.box())) {
      return false;
    }
    Gap gap = a.gap(b);
    return gap.distance() <= Tolerances.SAME_POINT;
  }

  private record Depth(Point at, double by) {}

  /** The sampled point of {@code a} that lies deepest inside, or farthest outside, of {@code b}. */
  private static Depth deepest(Contour a, Contour b, boolean inside) {
    Depth deepest = new Depth(a.segments().get(0).from(), 0);
    for (Segment segment : a.segments()) {
      for (int i = 0; i < SAMPLES; i++) {
        Point p = segment.at((double) i / SAMPLES);
        if (b.contains(p) == inside) {
          double by = b.distance(p);
          if (by > deepest.by) {
            deepest = new Depth(p, by);
          }
        }
      }
    }
    return deepest;
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }
}
