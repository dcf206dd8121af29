package felloe.grips;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.Strip;
import felloe.geometry.Tolerances;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Printer;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.Window;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lays one grip on the rim, and tells what does not fit. */
final class GripPlacing {

  /** A grip shorter than this holds no finger, mm. */
  private static final double SHORTEST = 20;

  /** A turn of the outline of more than this is a corner, radians: free curves turn less. */
  private static final double CORNER = Math.toRadians(2);

  /** What a tight bend leaves between the grip's inner edge and its centre, mm. */
  private static final double LEFT = 1;

  /** Room that the back of a hand wants outside the rim, mm: common practice. */
  private static final double KNUCKLES = 40;

  /** Steps at which the room outside is looked at, mm. */
  private static final double STEP = 5;

  /** A grip that reaches less far into an opening than this ends at its edge, mm. */
  private static final double FLUSH = 0.01;

  private final Plate plate;
  private final Grip grip;
  private final Problems problems;
  private final Map<List<Double>, List<Region>> bands;
  private boolean good = true;

  /**
   * @param bands those along the whole outline that were made for other grips of the plate, by
   *     where they begin and end
   */
  GripPlacing(Plate plate, Grip grip, Map<List<Double>, List<Region>> bands, Problems problems) {
    this.bands = bands;
    this.plate = plate;
    this.grip = grip;
    this.problems = problems;
  }

  Optional<PlacedGrip> placed() {
    Optional<GripRun> run = run();
    if (run.isEmpty()) {
      return Optional.empty();
    }
    GripRun on = run.get();
    lengthOf(on);
    bends(on);
    outside(on);
    OptionalDouble swell = on(on, grip.swell().map(Grip.Swell::at), "swell");
    OptionalDouble thumb = on(on, grip.thumbRest().map(Grip.ThumbRest::at), "thumb_rest");
    rounds();
    walls();
    if (!good) {
      return Optional.empty();
    }
    PlacedGrip bare =
        new PlacedGrip(grip, on, plate.stock().asMade(), swell, thumb, List.of(), List.of());
    List<Region> footprint;
    try {
      footprint = footprint(on, bare.past(), bare.over());
    } catch (GeometryException e) {
      wrong("over", "", "cannot be laid on this rim: " + e.getMessage(), "make it narrower");
      return Optional.empty();
    }
    inside(on, bare);
    thinnest(bare);
    List<Hole> holes = holes(footprint);
    return good
        ? Optional.of(
            new PlacedGrip(grip, on, plate.stock().asMade(), swell, thumb, footprint, holes))
        : Optional.empty();
  }

  private Optional<GripRun> run() {
    ArcLengthIndex outline = new ArcLengthIndex(plate.outline());
    if (grip.along() instanceof Grip.BetweenClocks c) {
      Optional<Point> from = outline.outermost(c.from());
      Optional<Point> to = outline.outermost(c.to());
      if (from.isEmpty() || to.isEmpty()) {
        wrong("along", "", "names a direction in which the plate has no edge", "see the picture");
        return Optional.empty();
      }
      // Clock positions run clockwise, the outline runs counter-clockwise.
      return Optional.of(
          GripRun.between(outline, outline.position(to.get()), outline.position(from.get())));
    }
    if (grip.along() instanceof Grip.BetweenHoles h) {
      double from = outline.position(hole(h.to()).centre()) - h.beyond();
      double to = outline.position(hole(h.from()).centre()) + h.beyond();
      GripRun bare = GripRun.between(outline, from + h.beyond(), to - h.beyond());
      if (bare.length() + 2 * h.beyond() >= outline.length()) {
        wrong(
            "between",
            mm(bare.length() + 2 * h.beyond()),
            "would be the length of the grip, more than once round the outline of "
                + mm(outline.length()),
            "make 'beyond' less, or write all_round: true");
        return Optional.empty();
      }
      return Optional.of(GripRun.between(outline, from, to));
    }
    return Optional.of(GripRun.round(plate.outline()));
  }

  private Hole hole(String label) {
    return plate.holes().stream()
        .filter(hole -> hole.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private void lengthOf(GripRun run) {
    double least = Math.max(SHORTEST, grip.taper().map(taper -> 2 * taper.length()).orElse(0.0));
    if (!run.closed() && run.length() < least) {
      wrong(
          grip.taper().isPresent() && least > SHORTEST ? "taper" : "along",
          mm(run.length()),
          "is the length of the grip, which must be at least "
              + mm(least)
              + (least > SHORTEST ? " (its two tapered ends)" : ""),
          least > SHORTEST ? "shorten the taper, or let the grip go on" : "let it go on farther");
    }
  }

  /** The grip must not fold at bends and corners of the outline. */
  private void bends(GripRun run) {
    double over = grip.profile().over() - grip.wrap();
    double past =
        grip.profile().pastEdge() + grip.swell().map(Grip.Swell::edge).orElse(0.0) - grip.wrap();
    Segment before = run.closed() ? run.segments().get(run.segments().size() - 1) : null;
    for (Segment segment : run.segments()) {
      double bend = segment.curvature();
      if (bend > 0 && 1 / bend < over + LEFT) {
        tight("over", segment.at(0.5), "a corner of radius " + mm(1 / bend), over, 1 / bend);
      }
      if (bend < 0 && -1 / bend < past + LEFT) {
        tight("past_edge", segment.at(0.5), "a hollow of radius " + mm(-1 / bend), past, -1 / bend);
      }
      if (before != null) {
        Point a = before.tangent(1);
        Point b = segment.tangent(0);
        if (Math.abs(Math.atan2(a.cross(b), a.dot(b))) > CORNER) {
          wrong(
              "along",
              "",
              "goes round a sharp corner of the outline at " + segment.from() + " mm",
              "end the grip before it, or round the corner with more than " + mm(over + LEFT));
        }
      }
      before = segment;
    }
  }

  private void tight(String key, Point at, String what, double reach, double radius) {
    double most = radius - LEFT + grip.wrap();
    wrong(
        key,
        mm(reach + grip.wrap()),
        "is too much for " + what + " at " + at + " mm: the grip would fold",
        most > 0
            ? "make it at most " + mm(Math.floor(most * 10) / 10) + ", or end the grip before it"
            : "end the grip before it");
  }

  /** No hand goes where the plate itself lies outside. */
  private void outside(GripRun run) {
    for (double s = STEP / 2; s < run.length(); s += STEP) {
      for (double away = STEP; away <= KNUCKLES; away += STEP) {
        if (plate.outline().contains(run.at(s, -away))) {
          wrong(
              "along",
              "",
              "lies in a gap of the outline at "
                  + run.at(s, 0)
                  + " mm: the plate is there again "
                  + mm(away)
                  + " on, and no hand goes in",
              "end the grip before the gap");
          return;
        }
      }
    }
  }

  private OptionalDouble on(GripRun run, Optional<Double> direction, String key) {
    if (direction.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble at = run.toward(direction.get());
    if (at.isEmpty()) {
      wrong(key, "", "lies beside the grip", "give it a clock position on the grip's own stretch");
    }
    return at;
  }

  private void rounds() {
    Grip.Profile p = grip.profile();
    double lowest = Double.POSITIVE_INFINITY;
    for (Face face : grip.on()) {
      lowest = Math.min(lowest, p.height(face));
    }
    double lip =
        new PlacedGrip(
                grip,
                null,
                plate.stock().asMade(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of())
            .lip();
    double breadth = p.pastEdge() + p.over();
    most("round", p.round(), Math.min(lowest + lip, breadth / 2));
    most("inner_round", p.innerRound(), Math.min(lowest, breadth / 2));
  }

  /** What is printed must hold at its thinnest. */
  private void walls() {
    if (grip.form() == Grip.Form.SCALE) {
      return;
    }
    Printer printer = plate.making().printer().map(Requested::value).orElse(Printer.USUAL);
    double wall = printer.thinnestWall();
    double past = grip.profile().pastEdge() - grip.wrap();
    double lip = past - GripSection.LIP_ROOM;
    if (lip > 0 && lip < wall) {
      wrong(
          "past_edge",
          mm(grip.profile().pastEdge()),
          "leaves a lip of " + mm(lip) + ", thinner than two lines of the nozzle, " + mm(wall),
          "write 0, or "
              + mm(Math.ceil(10 * (wall + GripSection.LIP_ROOM + grip.wrap())) / 10)
              + " or more");
    }
    double end = grip.taper().map(Grip.Taper::to).orElse(Double.POSITIVE_INFINITY) - grip.wrap();
    if (end < wall) {
      wrong(
          "taper",
          mm(end + grip.wrap()),
          "leaves ends of " + mm(end) + ", thinner than two lines of the nozzle, " + mm(wall),
          "taper them to more");
    }
  }

  /** Where a thumb rest is sunk or the wrap taken off, a shell must keep its wall. */
  private void thinnest(PlacedGrip bare) {
    if (grip.form() == Grip.Form.SCALE) {
      return;
    }
    double wall = Requested.or(plate.making().printer(), Printer.USUAL).thinnestWall();
    for (Face face : grip.on()) {
      double least =
          bare.breaks().stream().mapToDouble(s -> bare.height(face, s)).min().orElseThrow();
      boolean rest = face == Face.FRONT && grip.thumbRest().isPresent();
      if (least < wall) {
        wrong(
            rest ? "thumb_rest" : face == Face.FRONT ? "front" : "back",
            "",
            "leaves "
                + mm(Math.max(0, least))
                + " of the grip where it is thinnest, less than two lines of the nozzle, "
                + mm(wall),
            rest ? "sink the thumb rest less, or make the grip higher" : "make it higher");
        return;
      }
    }
  }

  private void most(String key, double radius, double most) {
    if (radius > most + Tolerances.SAME_LENGTH) {
      wrong(
          key,
          mm(radius),
          "must be at most " + mm(most) + " here (the height, or half the breadth)",
          "lower it");
    }
  }

  /** The grip must not reach into a window or past the plate's other edge. */
  private void inside(GripRun run, PlacedGrip bare) {
    List<Region> inner;
    try {
      inner = footprint(run, Math.min(-FLUSH, bare.past()), bare.over() - FLUSH);
      for (Window window : plate.windows()) {
        for (Region into : Combine.intersection(inner, List.of(Region.of(window.contour())))) {
          Point at = into.outer().properties().centroid();
          GripRun.Foot foot = run.foot(at);
          wrong(
              "over",
              mm(grip.profile().over()),
              "closes part of "
                  + window.use().words()
                  + " "
                  + window.label()
                  + " at "
                  + at
                  + " mm, where the rim is "
                  + mm(web(run, foot.s()))
                  + " wide",
              "make it narrower, or end the grip before it");
          break;
        }
      }
      for (Region off : Combine.difference(inner, List.of(Region.of(plate.outline())))) {
        wrong(
            "over",
            mm(grip.profile().over()),
            "reaches past the other edge of the plate at "
                + off.outer().properties().centroid()
                + " mm",
            "make it narrower, or end the grip before it");
        break;
      }
    } catch (GeometryException e) {
      wrong("over", "", "cannot be laid on this rim: " + e.getMessage(), "make it narrower");
    }
  }

  private double web(GripRun run, double s) {
    return GripStations.web(plate, run, s).width();
  }

  private List<Hole> holes(List<Region> footprint) {
    List<Hole> inside = new ArrayList<>();
    for (Hole hole : plate.holes()) {
      Contour edge = hole.contour();
      boolean meets = false;
      boolean within = false;
      for (Region region : footprint) {
        boolean centre =
            region.outer().contains(hole.centre())
                && region.holes().stream().noneMatch(h -> h.contains(hole.centre()));
        double clear = region.outer().gap(edge).distance();
        for (Contour h : region.holes()) {
          clear = Math.min(clear, h.gap(edge).distance());
        }
        within |= centre && clear > 0;
        meets |= centre || clear <= 0;
      }
      if (meets && hole.role() != HoleRole.GRIP) {
        wrong(
            "over",
            "",
            "covers "
                + hole.role().words()
                + " "
                + hole.label()
                + " at "
                + hole.centre()
                + " mm, whose screw could not be put in",
            "end the grip before it, or give the hole 'role: grip'");
      } else if (meets && !within) {
        wrong(
            "over",
            "",
            "cuts grip hole " + hole.label() + " at " + hole.centre() + " mm with its edge",
            "move the hole or the grip's edge");
      } else if (within) {
        inside.add(hole);
      }
    }
    return inside;
  }

  /**
   * What a band along the stretch covers, exact in lines and arcs.
   *
   * @param past how far outside the outline it begins; below zero inside
   * @param over how far inside it ends
   */
  private List<Region> footprint(GripRun run, double past, double over) {
    if (run.closed()) {
      return bandOf(past, over);
    }
    return Strip.along(plate.outline(), run.segments(), past, over)
        .map(List::of)
        .orElseGet(
            () ->
                Combine.intersection(
                    bandOf(past, over), List.of(Region.of(cover(run, past, over)))));
  }

  private List<Region> bandOf(double past, double over) {
    return bands.computeIfAbsent(List.of(past, over), key -> band(past, over));
  }

  private List<Region> band(double past, double over) {
    List<Region> outer =
        past == 0 ? List.of(Region.of(plate.outline())) : Offset.of(plate.outline(), past);
    return Combine.difference(outer, Offset.of(plate.outline(), -over));
  }

  /** A polygon over the stretch, wider than the band, whose ends stand square to the outline. */
  private static Contour cover(GripRun run, double past, double over) {
    double room = LEFT / 2;
    List<Point> out = new ArrayList<>();
    List<Point> in = new ArrayList<>();
    List<Double> joints = run.joints();
    for (int i = 0; i + 1 < joints.size(); i++) {
      double from = joints.get(i);
      double to = joints.get(i + 1);
      double bend = Math.abs(run.curvature((from + to) / 2));
      int steps = 1;
      if (bend > 0) {
        double reach = 1 / bend + past + over + room;
        double turn = 2 * Math.acos(1 - room / 4 / reach);
        steps = (int) Math.ceil((to - from) * bend / turn);
      }
      for (int k = i == 0 ? 0 : 1; k <= steps; k++) {
        double s = from + (to - from) * k / steps;
        // At a joint of free curves the two tangents differ by a hair; the ends are exact.
        out.add(run.at(s, -past - room));
        in.add(run.at(s, over + room));
      }
    }
    Collections.reverse(in);
    out.addAll(in);
    return Contour.polygon(out);
  }

  private void wrong(String key, String value, String wanted, String cure) {
    good = false;
    String who = grip.path() + (key.isEmpty() ? "" : "." + key);
    // What is wrong with a grip is wrong with its image.
    problems.addOnce(new Problem(grip.place(key), who, value, wanted, cure));
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }
}
