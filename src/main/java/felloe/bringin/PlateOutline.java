package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a drawing turns out to be, about the hub axis: outline, openings, holes.
 *
 * @param outline the outermost line
 * @param windows openings that are no drilled holes
 * @param rings evenly spaced holes about the axis
 * @param bore the opening round the axis
 * @param holes all other drilled holes
 * @param drawn every line of the part as it was drawn, about the axis
 * @param fitted those of them that stand for chords or curves, and so are round to no digit
 * @param centre what the axis was taken from, in words
 * @param moved where the drawing's origin is now
 * @param off the greatest distance of any line of the drawing from what stands for it, mm
 * @param unsure how far figures may be off that were measured, mm; 0 for what was drawn
 * @param notes what else was changed or passed over, in words
 */
public record PlateOutline(
    Contour outline,
    List<Contour> windows,
    List<Ring> rings,
    Optional<Arc> bore,
    List<Drilled> holes,
    List<Contour> drawn,
    Set<Contour> fitted,
    String centre,
    Point moved,
    double off,
    double unsure,
    List<String> notes) {

  /** Wider round openings are windows, mm: no hand drill makes them (common practice). */
  static final double WIDEST_HOLE = 16;

  /** More holes and openings than a shape file takes are not looked at. */
  private static final int MOST_LOOPS = 2_501;

  /** Lines nearer than this touch, mm. */
  private static final double EDGE = 1e-3;

  /** Diameters nearer than this are one, mm. */
  private static final double SAME = 0.05;

  /** A round opening this near to the middle of the outline is its bore, mm. */
  private static final double NEAR_MIDDLE = 3;

  /** Keeps copies. */
  public PlateOutline {
    windows = List.copyOf(windows);
    rings = List.copyOf(rings);
    holes = List.copyOf(holes);
    drawn = List.copyOf(drawn);
    fitted = Set.copyOf(fitted);
    notes = List.copyOf(notes);
  }

  /**
   * A drilled hole.
   *
   * @param grip whether its layer says that a screw through a grip stands in it
   */
  public record Drilled(Point centre, double diameter, boolean grip) {}

  /** A closed line, its layer, and whether it stands for chords or curves. */
  private record Part(Contour contour, String layer, boolean fitted) {
    Part moved(RigidTransform motion) {
      return new Part(contour.moved(motion), layer, fitted);
    }
  }

  /**
   * A ring of evenly spaced holes.
   *
   * @param count how many
   * @param pitchDiameter mm
   * @param diameter of each hole, mm
   * @param first direction of one of them, radians
   */
  public record Ring(int count, double pitchDiameter, double diameter, double first) {}

  /**
   * Makes it of closed lines.
   *
   * @param within how far arcs may lie from what they stand for, mm
   * @throws BadInput when there is no outline, or lines cross
   */
  static PlateOutline of(Joining joined, Drawn drawn, double within, String file) {
    if (joined.loops().size() > MOST_LOOPS) {
      throw new BadInput(
          new Problem(
              Place.ofFile(file),
              "",
              Integer.toString(joined.loops().size()),
              "closed lines are too many: a plate has at most " + MOST_LOOPS,
              "leave out what is not the part"));
    }
    List<Problem> problems = new ArrayList<>();
    List<Part> contours = new ArrayList<>();
    double off = 0;
    for (Joining.Loop loop : joined.loops()) {
      try {
        Recognised found = Recognised.of(loop, within);
        contours.add(
            new Part(found.contour(), loop.layer(), found.off() > EDGE || drawn.unsure() > 0));
        off = Math.max(off, found.off());
      } catch (GeometryException wrong) {
        Point at = wrong.where().orElse(loop.strokes().get(0).from());
        problems.add(
            new Problem(
                Place.ofFile(file),
                "",
                "",
                "has a closed line that " + says(wrong) + " near " + at,
                "draw it without crossings"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    if (contours.isEmpty()) {
      throw new BadInput(
          new Problem(
              Place.ofFile(file),
              "",
              "",
              "has no closed line, and so no outline" + passed(drawn),
              "draw the edge of the part as one closed line"));
    }
    contours.sort(Comparator.comparingDouble((Part part) -> part.contour().area()).reversed());
    Part edge = contours.get(0);
    Contour outline = edge.contour();
    List<Part> inside = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    int beside = 0;
    int nested = 0;
    for (Part part : contours.subList(1, contours.size())) {
      Point at = part.contour().segments().get(0).from();
      if (!outline.contains(at) && !crosses(outline, part.contour())) {
        beside++;
      } else if (inside.stream().anyMatch(other -> other.contour().contains(at))) {
        nested++;
      } else {
        inside.add(part);
      }
    }
    refuseOdd(outline, inside, joined, drawn, nested, file);
    note(notes, beside, "closed line", "beside the outline", "passed over");
    note(notes, joined.doubles(), "line", "", "there twice");
    note(notes, joined.loose(), "open line", "", "passed over");
    if (!drawn.passedOver().isEmpty()) {
      notes.add("Passed over: " + String.join(", ", drawn.passedOver()) + ".");
    }
    if (joined.closed() > Tolerances.SAME_POINT) {
      notes.add("Gaps of up to " + Numbers.brief(joined.closed(), 3) + " mm were closed.");
    }
    notes.addAll(drawn.notes());
    return about(edge, inside, off + joined.moved(), drawn.unsure(), notes);
  }

  /** What no plate has: lines in openings, openings over the edge, an edge that is left open. */
  private static void refuseOdd(
      Contour outline, List<Part> inside, Joining joined, Drawn drawn, int nested, String file) {
    List<Problem> problems = new ArrayList<>();
    Place place = Place.ofFile(file);
    if (nested > 0) {
      problems.add(
          new Problem(
              place,
              "",
              "",
              "has " + nested + " closed lines within an opening, where no plate is",
              "leave out what is drawn round the part, such as a frame, or twice"));
    }
    for (Part part : inside) {
      if (crosses(outline, part.contour())) {
        problems.add(
            new Problem(
                place,
                "",
                "",
                "has a closed line that crosses or touches the outline near "
                    + outline.gap(part.contour()).from(),
                "draw what is cut away there as a part of the outline"));
      }
    }
    Box box = outline.box();
    for (Chain chain : drawn.chains()) {
      Box all = null;
      for (Stroke stroke : chain.strokes()) {
        Box own =
            Box.of(stroke.from(), stroke.to()).union(Box.of(stroke.middle(), stroke.middle()));
        all = all == null ? own : all.union(own);
      }
      boolean open = !chain.from().near(chain.to(), EDGE);
      if (open
          && chain.strokes().size() > 2
          && joined.loose() > 0
          && all.width() > box.width()
          && all.height() > box.height()) {
        problems.add(
            new Problem(
                place,
                "",
                "",
                Joining.unclosed(chain.from(), chain.to(), chain.from().distance(chain.to()))
                    + ", though it is larger than any that does",
                "close it"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static boolean crosses(Contour outline, Contour other) {
    return outline.box().touches(other.box()) && outline.gap(other).distance() <= EDGE;
  }

  private static String says(GeometryException wrong) {
    return wrong.getMessage().endsWith("cross or touch") ? "crosses or touches itself" : "fails";
  }

  private static String passed(Drawn drawn) {
    return drawn.passedOver().isEmpty()
        ? ""
        : " (passed over: " + String.join(", ", drawn.passedOver()) + ")";
  }

  private static void note(List<String> notes, int count, String what, String where, String done) {
    if (count > 0) {
      String things = count + " " + what + (count == 1 ? "" : "s");
      String place = where.isEmpty() ? "" : " " + where;
      notes.add(things + place + (count == 1 ? " was " : " were ") + done + ".");
    }
  }

  private static PlateOutline about(
      Part edge, List<Part> inside, double off, double unsure, List<String> notes) {
    Contour outline = edge.contour();
    double same = Math.max(SAME, unsure);
    List<Arc> circles =
        inside.stream()
            .filter(part -> !part.layer().equals(Layers.WINDOWS))
            .flatMap(part -> part.contour().asCircle().stream())
            .toList();
    Point middle = outline.properties().centroid();
    Optional<HoleRings.Found> hub =
        HoleRings.all(circles, WIDEST_HOLE, same).stream()
            .min(Comparator.comparingDouble(ring -> ring.centre().distance(middle)))
            .filter(ring -> ring.centre().distance(middle) <= reach(outline));
    Optional<Arc> bore =
        circles.stream()
            .filter(c -> c.centre().distance(middle) <= NEAR_MIDDLE)
            .max(Comparator.comparingDouble(Arc::radius));
    Point axis;
    String centre;
    if (hub.isPresent()) {
      axis = hub.get().centre();
      centre = "the middle of its ring of " + hub.get().holes().size() + " holes";
    } else if (bore.isPresent()) {
      axis = bore.get().centre();
      centre = "the middle of its bore";
    } else {
      axis = middle(outline, middle, same);
      centre = "the middle of its outline, since it has no ring of holes and no bore";
    }
    RigidTransform shift = RigidTransform.shift(-axis.x(), -axis.y());
    return sorted(
        edge.moved(shift),
        inside.stream().map(part -> part.moved(shift)).toList(),
        centre,
        shift.of(Point.ORIGIN),
        off,
        unsure,
        notes);
  }

  private static double reach(Contour outline) {
    Box box = outline.box();
    return Math.max(box.width(), box.height()) / 4;
  }

  /** Of an outline that is as wide on either side of its middle across, that; else its centroid. */
  private static Point middle(Contour outline, Point centroid, double same) {
    Point box = outline.box().centre();
    return Math.abs(box.x() - centroid.x()) <= same ? new Point(box.x(), centroid.y()) : centroid;
  }

  private static PlateOutline sorted(
      Part outline,
      List<Part> inside,
      String centre,
      Point moved,
      double off,
      double unsure,
      List<String> notes) {
    double same = Math.max(SAME, unsure);
    List<Contour> drawn = new ArrayList<>(List.of(outline.contour()));
    Set<Contour> fitted = new HashSet<>();
    Stream.concat(Stream.of(outline), inside.stream())
        .filter(Part::fitted)
        .forEach(part -> fitted.add(part.contour()));
    List<Contour> windows = new ArrayList<>();
    List<Arc> left = new ArrayList<>();
    List<Arc> grips = new ArrayList<>();
    for (Part part : inside) {
      drawn.add(part.contour());
      Optional<Arc> circle =
          part.contour().asCircle().filter(c -> !part.layer().equals(Layers.WINDOWS));
      circle.ifPresentOrElse(left::add, () -> windows.add(part.contour()));
      circle.filter(c -> part.layer().equals(Layers.GRIP_HOLES)).ifPresent(grips::add);
    }
    left.removeAll(grips);
    List<Ring> rings = new ArrayList<>();
    for (HoleRings.Found ring : HoleRings.all(left, WIDEST_HOLE, same)) {
      if (ring.centre().norm() <= same && left.containsAll(ring.holes())) {
        rings.add(ring.about());
        left.removeAll(ring.holes());
      }
    }
    Optional<Arc> bore =
        left.stream()
            .filter(c -> c.centre().norm() <= same)
            .max(Comparator.comparingDouble(Arc::radius));
    bore.ifPresent(left::remove);
    List<Drilled> holes = new ArrayList<>();
    grips.forEach(g -> holes.add(new Drilled(g.centre(), 2 * g.radius(), true)));
    for (Arc circle : left) {
      if (2 * circle.radius() <= WIDEST_HOLE) {
        holes.add(new Drilled(circle.centre(), 2 * circle.radius(), false));
      } else {
        windows.add(Contour.circle(circle.centre(), circle.radius()));
      }
    }
    return new PlateOutline(
        outline.contour(),
        windows,
        rings,
        bore,
        holes,
        drawn,
        fitted,
        centre,
        moved,
        off,
        unsure,
        notes);
  }
}
