package felloe.template;

import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.BoltCircle;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a plate as they are laid on paper: mirrored for the back face, turned where that
 * saves paper, moved for a pen, with the rough lines. Coordinates are the drawing's, millimetres.
 *
 * @param plate what it is of
 * @param markOut how it gets onto the stock
 * @param face the face that it goes on
 * @param motion how plate coordinates become the drawing's
 * @param outline the outer line, moved for the pen
 * @param windows the windows' lines, moved for the pen, in the plate's order
 * @param rough where the saw goes: round the outline, and inside each window that has room for it
 * @param holes the holes, their centres moved
 * @param waste holes in the waste, their centres moved
 */
record LaidShape(
    Plate plate,
    MarkOut markOut,
    Face face,
    RigidTransform motion,
    Contour outline,
    List<Contour> windows,
    List<Contour> rough,
    List<Hole> holes,
    List<WasteHole> waste) {

  /** The plate as it is to be seen on a face, not turned; without holes in the waste. */
  static LaidShape of(Plate plate, MarkOut markOut, Face face) {
    return of(plate, List.of(), markOut, face);
  }

  /**
   * The plate as it is to be seen on a face, not turned.
   *
   * @param waste holes to drill in the waste
   */
  static LaidShape of(Plate plate, List<WasteHole> waste, MarkOut markOut, Face face) {
    double offset = markOut.lineOffset();
    Contour outline = moved(plate.outline(), offset, "outline", Place.BUILT_IN, markOut);
    List<Contour> windows = new ArrayList<>();
    for (Window window : plate.windows()) {
      windows.add(
          moved(window.contour(), -offset, "window " + window.label(), window.place(), markOut));
    }
    LaidShape plain =
        new LaidShape(
            plate,
            markOut,
            face,
            RigidTransform.NONE,
            outline,
            List.copyOf(windows),
            rough(plate),
            plate.holes(),
            waste);
    return face == Face.BACK ? plain.moved(RigidTransform.MIRROR) : plain;
  }

  private static Contour moved(
      Contour contour, double by, String who, Place place, MarkOut markOut) {
    if (by == 0) {
      return contour;
    }
    List<Region> pieces = Offset.of(contour, by);
    if (pieces.size() != 1) {
      throw new BadInput(
          new Problem(
              place,
              who,
              "",
              "is too narrow somewhere to be traced with a pen of "
                  + Numbers.brief(markOut.penWidth(), 2)
                  + " mm",
              "take a finer pen, or stick the template on"));
    }
    return pieces.get(0).outer();
  }

  private static List<Contour> rough(Plate plate) {
    double allowance = plate.making().roughAllowance();
    if (allowance <= Tolerances.SAME_POINT) {
      return List.of();
    }
    List<Contour> rough = new ArrayList<>();
    Offset.of(plate.outline(), allowance).forEach(region -> rough.add(region.outer()));
    for (Window window : plate.windows()) {
      Offset.of(window.contour(), -allowance).forEach(region -> rough.add(region.outer()));
    }
    return List.copyOf(rough);
  }

  /** The same after one more motion. */
  LaidShape moved(RigidTransform more) {
    if (more.equals(RigidTransform.NONE)) {
      return this;
    }
    return new LaidShape(
        plate,
        markOut,
        face,
        motion.then(more),
        outline.moved(more),
        windows.stream().map(window -> window.moved(more)).toList(),
        rough.stream().map(line -> line.moved(more)).toList(),
        holes.stream().map(h -> h.moved(more)).toList(),
        waste.stream().map(w -> new WasteHole(more.of(w.at()), w.diameter())).toList());
  }

  /** Windows that are round: they are drilled or sawn like holes, so their centres are marked. */
  List<Hole> rounds() {
    List<Hole> all = plate.benchHoles(Double.POSITIVE_INFINITY);
    return all.subList(holes.size(), all.size()).stream().map(h -> h.moved(motion)).toList();
  }

  /**
   * What is cut shallow into the face that it goes on, in the plate's own axes; nothing where holes
   * are all that is worked.
   */
  List<Engraving> engravings() {
    return markOut.method() == MarkOut.Method.CENTRES ? List.of() : plate.engravings(face);
  }

  /**
   * Dashed, what bezels on the face that it goes on will cover; nothing where holes are all that is
   * worked.
   */
  List<Mark> bezels() {
    return markOut.method() == MarkOut.Method.CENTRES
        ? List.of()
        : plate.bodies().stream()
            .filter(body -> body.face() == face)
            .<Mark>map(body -> Mark.Stroke.of(body.bezel().moved(motion), LineType.DASHED))
            .toList();
  }

  /** The outermost line. */
  Contour outermost() {
    return plate.making().roughAllowance() > markOut.lineOffset() && !rough.isEmpty()
        ? rough.get(0)
        : outline;
  }

  /** The box round all of its lines. */
  Box box() {
    return outermost().box();
  }

  /** The box round all of its lines once it is turned. */
  Box box(double turn) {
    RigidTransform more = RigidTransform.turn(turn);
    return outermost().segments().stream()
        .map(segment -> segment.moved(more).box())
        .reduce(Box::union)
        .orElseThrow();
  }

  /** The bolt circles' pitch circles. */
  List<Contour> pitchCircles() {
    List<Contour> circles = new ArrayList<>();
    for (BoltCircle ring : plate.boltCircles()) {
      if (ring.count() > 1) {
        circles.add(
            Contour.circle(motion.of(felloe.geometry.Point.ORIGIN), ring.pitchDiameter() / 2));
      }
    }
    return circles;
  }
}
