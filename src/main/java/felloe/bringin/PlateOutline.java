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
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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
 * @param digits how exactly figures are written that were drawn, mm: no more of them is rounded
 * @param notes what else was changed or passed over, in words
 */
public record PlateOutline(
    Contour outline,
    List<Opening> windows,
    List<Ring> rings,
    Optional<Drilled> bore,
    List<Drilled> holes,
    List<Contour> drawn,
    Set<Contour> fitted,
    String centre,
    Point moved,
    double off,
    double unsure,
    double digits,
    List<String> notes) {

  /** Wider round openings are windows, mm: no hand drill makes them (common practice). */
  static final double WIDEST_HOLE = 16;

  /** More holes and openings than a shape file takes are not looked at. */
  private static final int MOST_LOOPS = 2_501;

  /** Lines nearer than this touch, mm. */
  private static final double EDGE = 1e-3;

  /** Diameters nearer than this are one, mm. */
  static final double SAME = 0.05;

  /** What the digits of an exact drawing leave open, mm. */
  private static final double DIGITS = 2e-4;

  private static final String BORE = "the middle of its bore";

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

  /** Whether it is of the program's own drawing, which names its features. */
  public boolean named() {
    return digits < DIGITS;
  }

  /**
   * An opening that is no drilled hole.
   *
   * @param label as the drawing names it; empty where it does not
   */
  public record Opening(Contour contour, WindowUse use, String label) {
    /** An opening of which nothing is said. */
    static Opening of(Contour contour) {
      return new Opening(contour, WindowUse.OPEN, "");
    }
  }

  /**
   * A drilled hole.
   *
   * @param centre of a slotted one the middle of its length
   * @param diameter mm; of a slotted one its width
   * @param slot how it is slotted; empty for a round hole
   * @param role what it is for, as the drawing says
   * @param label as the drawing names it; empty where it does not
   */
  public record Drilled(
      Point centre, double diameter, Optional<Hole.Slot> slot, HoleRole role, String label) {
    /** A round hole without a name. */
    static Drilled round(Point centre, double diameter, HoleRole role) {
      return new Drilled(centre, diameter, Optional.empty(), role, "");
    }

    /** The same under a label. */
    Drilled named(String name) {
      return new Drilled(centre, diameter, slot, role, name);
    }

    /** The same for another use. */
    Drilled as(HoleRole use) {
      return new Drilled(centre, diameter, slot, use, label);
    }
  }

  /**
   * A ring of evenly spaced holes.
   *
   * @param count how many
   * @param pitchDiameter mm
   * @param diameter of each hole, mm
   * @param first direction of one of them, radians
   * @param slots those that are slotted
   * @param labels of all, counter-clockwise from the first; empty where the drawing names none
   */
  public record Ring(
      int count,
      double pitchDiameter,
      double diameter,
      double first,
      List<Slotted> slots,
      List<String> labels) {
    /** Keeps copies. */
    public Ring {
      slots = List.copyOf(slots);
      labels = List.copyOf(labels);
    }
  }

  /**
   * A slotted hole of a ring.
   *
   * @param number which one, counted from 1
   * @param length over all, mm
   * @param direction which way it runs, radians
   * @param oneWay whether it is made longer that way alone, from where the round hole would be
   */
  public record Slotted(int number, double length, double direction, boolean oneWay) {}

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
    List<PlatePart> contours = new ArrayList<>();
    double off = 0;
    for (Joining.Loop loop : joined.loops()) {
      try {
        Recognised found = Recognised.of(loop, within);
        contours.add(
            new PlatePart(
                found.contour(), loop.as(), found.off() > EDGE || drawn.unsure().places() > 0));
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
    Map<PlatePart, Integer> order = new IdentityHashMap<>();
    contours.forEach(part -> order.put(part, order.size()));
    contours.sort(Comparator.comparingDouble((PlatePart part) -> part.contour().area()).reversed());
    PlatePart edge = contours.get(0);
    Contour outline = edge.contour();
    List<PlatePart> inside = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    int beside = 0;
    int nested = 0;
    for (PlatePart part : contours.subList(1, contours.size())) {
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
    OwnFeatures own = OwnFeatures.of(inside);
    if (own.any()) {
      // Its features keep their order.
      inside.sort(Comparator.comparingInt(order::get));
    }
    return about(edge, inside, own, off + joined.moved(), drawn.unsure(), notes);
  }

  /** What no plate has: lines in openings, openings over the edge, an edge that is left open. */
  private static void refuseOdd(
      Contour outline,
      List<PlatePart> inside,
      Joining joined,
      Drawn drawn,
      int nested,
      String file) {
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
    for (PlatePart part : inside) {
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

  /** Where the axis is, and in words what it was taken from. */
  private record Axis(Point at, String words) {}

  private static PlateOutline about(
      PlatePart edge,
      List<PlatePart> inside,
      OwnFeatures own,
      double off,
      Unsure unsure,
      List<String> notes) {
    Axis axis = own.any() ? axis(own) : axis(edge, inside, unsure);
    RigidTransform shift = RigidTransform.shift(-axis.at().x(), -axis.at().y());
    return sorted(
        edge.moved(shift),
        inside.stream().map(part -> part.moved(shift)).toList(),
        axis.words(),
        shift.of(Point.ORIGIN),
        off,
        unsure,
        notes);
  }

  private static Axis axis(OwnFeatures own) {
    Point at = own.axis();
    List<Ring> rings = new ArrayList<>();
    own.rings(at, rings);
    if (!rings.isEmpty()) {
      return new Axis(at, ring(rings.get(0).count()));
    }
    boolean bore = own.bore().filter(b -> b.centre().equals(at)).isPresent();
    return new Axis(at, bore ? BORE : "the drawing's own origin");
  }

  private static String ring(int holes) {
    return "the middle of its ring of " + holes + " holes";
  }

  private static Axis axis(PlatePart edge, List<PlatePart> inside, Unsure unsure) {
    Contour outline = edge.contour();
    double same = Math.max(SAME, unsure.places());
    List<Arc> circles =
        inside.stream()
            .filter(part -> !part.isWindow())
            .flatMap(part -> part.contour().asCircle().stream())
            .toList();
    Point middle = outline.properties().centroid();
    Optional<HoleRings.Found> hub =
        HoleRings.all(circles, WIDEST_HOLE, same, unsure.diameters()).stream()
            .min(Comparator.comparingDouble(ring -> ring.centre().distance(middle)))
            .filter(ring -> ring.centre().distance(middle) <= reach(outline));
    Optional<Arc> bore =
        circles.stream()
            .filter(c -> c.centre().distance(middle) <= NEAR_MIDDLE)
            .max(Comparator.comparingDouble(Arc::radius));
    if (hub.isPresent()) {
      return new Axis(hub.get().centre(), ring(hub.get().holes().size()));
    } else if (bore.isPresent()) {
      return new Axis(bore.get().centre(), BORE);
    }
    return new Axis(
        middle(outline, middle, same),
        "the middle of its outline, since it has no ring of holes and no bore");
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
      PlatePart outline,
      List<PlatePart> inside,
      String centre,
      Point moved,
      double off,
      Unsure unsure,
      List<String> notes) {
    double same = Math.max(SAME, unsure.places());
    List<Contour> drawn = new ArrayList<>(List.of(outline.contour()));
    Set<Contour> fitted = new HashSet<>();
    Stream.concat(Stream.of(outline), inside.stream())
        .filter(PlatePart::fitted)
        .forEach(part -> fitted.add(part.contour()));
    OwnFeatures own = OwnFeatures.of(inside);
    List<Opening> windows = new ArrayList<>(own.windows());
    List<Arc> left = new ArrayList<>();
    List<Arc> grips = new ArrayList<>();
    inside.forEach(part -> drawn.add(part.contour()));
    for (PlatePart part : own.others()) {
      Optional<Arc> circle = part.contour().asCircle().filter(c -> !part.isWindow());
      circle.ifPresentOrElse(left::add, () -> windows.add(Opening.of(part.contour())));
      circle.filter(c -> part.isGripHole()).ifPresent(grips::add);
    }
    left.removeAll(grips);
    List<Ring> rings = new ArrayList<>();
    List<Drilled> holes = new ArrayList<>(own.rings(Point.ORIGIN, rings));
    for (HoleRings.Found ring : HoleRings.all(left, WIDEST_HOLE, same, unsure.diameters())) {
      if (ring.centre().norm() <= same && left.containsAll(ring.holes())) {
        rings.add(ring.about());
        left.removeAll(ring.holes());
      }
    }
    Optional<Arc> bore =
        left.stream()
            .filter(c -> own.bore().isEmpty() && c.centre().norm() <= same)
            .max(Comparator.comparingDouble(Arc::radius));
    bore.ifPresent(left::remove);
    holes.addAll(own.holes());
    grips.forEach(g -> holes.add(Drilled.round(g.centre(), 2 * g.radius(), HoleRole.GRIP)));
    for (Arc circle : left) {
      if (2 * circle.radius() <= WIDEST_HOLE) {
        holes.add(Drilled.round(circle.centre(), 2 * circle.radius(), HoleRole.OTHER));
      } else {
        windows.add(Opening.of(Contour.circle(circle.centre(), circle.radius())));
      }
    }
    note(notes, own.twice(), "label", "", "there twice, and the later feature has a new one");
    return new PlateOutline(
        outline.contour(),
        windows,
        rings,
        own.bore()
            .or(() -> bore.map(b -> Drilled.round(Point.ORIGIN, 2 * b.radius(), HoleRole.BORE))),
        holes,
        drawn,
        fitted,
        centre,
        moved,
        off,
        unsure.places(),
        own.any() ? OwnFeatures.DIGITS : DIGITS,
        notes);
  }
}
