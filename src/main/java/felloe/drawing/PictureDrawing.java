package felloe.drawing;

import felloe.drawing.PictureFindings.Entry;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.Body;
import felloe.plate.BoltCircle;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Sketch;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The picture of a plate: the part at its true coordinates with its main dimensions, what its holes
 * and windows are, a scale bar, and the findings of a review marked where they are. Lettering and
 * pen grow with the plate, so that a picture of a knob and one of a boat's wheel read alike.
 */
public final class PictureDrawing {

  /** The size of plate that the picture's units are millimetres for. */
  private static final double USUAL = 280;

  private static final double MATERIAL = 0.1;
  private static final double TITLE = 7;
  private static final double AXIS_BEYOND = 6;
  private static final double CROSS_BEYOND = 1.6;
  // A template's lines are thin so as to be cut along; a picture's are to be seen from farther off.
  private static final double PEN = 1.4;
  private static final double MARGIN = 8;
  private static final double LEAST_COLUMN = 120;
  private static final double CAUTION_WIDTH = 190;
  private static final String CAUTION =
      Cautions.USE + " Figures are millimetres. This picture is no template: do not cut by it.";

  private final Sketch shown;

  /** The plate, unless what is shown cannot be one. */
  private final Optional<Plate> plate;

  private final double unit;
  private final PictureRoom room;

  private PictureDrawing(Sketch shown, Optional<Plate> plate) {
    this.shown = shown;
    this.plate = plate;
    Box box = shown.outline().box();
    this.unit = Math.max(box.width(), box.height()) / USUAL;
    this.room = new PictureRoom(unit, box);
  }

  /**
   * The picture of a plate.
   *
   * @param findings of a review; cautions and fails are marked, passes are not; may be empty
   */
  public static Picture of(Plate plate, List<Finding> findings) {
    return of(plate, findings, findings);
  }

  /**
   * The picture of a plate.
   *
   * @param findings of a review: what fails is counted, as on screen
   * @param told the same, those that are alike on both sides told once: these are marked
   */
  public static Picture of(Plate plate, List<Finding> findings, List<Finding> told) {
    Sketch lines =
        new Sketch(
            plate.name(),
            plate.title(),
            plate.revision(),
            plate.stock().place(),
            plate.outline(),
            plate.windows(),
            plate.holes(),
            List.of());
    return new PictureDrawing(lines, Optional.of(plate))
        .draw(Entry.of(told), Stamp.of(Stamp.Act.CUT, findings));
  }

  /** The picture of what cannot be a plate, each clash marked. */
  public static Picture of(Sketch sketch) {
    return new PictureDrawing(sketch, Optional.empty())
        .draw(
            sketch.clashes().stream().map(Entry::of).toList(),
            new Stamp(Stamp.Act.CUT, 0, List.of("this cannot be a plate")));
  }

  private Picture draw(List<Entry> marks, Stamp order) {
    Box box = shown.outline().box();
    PictureInk material = new PictureInk(unit, room);
    plate.ifPresent(p -> material.fill(p.region().contours(), MATERIAL));
    PictureInk outline = new PictureInk(unit, room);
    outline.contour(shown.outline(), LineType.EDGE);
    PictureInk windows = new PictureInk(unit, room);
    shown.windows().forEach(window -> windows.contour(window.contour(), LineType.EDGE));
    PictureInk holes = new PictureInk(unit, room);
    shown.holes().forEach(hole -> holes.contour(hole.contour(), LineType.EDGE));
    PictureInk engraved = new PictureInk(unit, room);
    engravings(Face.FRONT).forEach(line -> engraved.chain(line, LineType.THIN));
    engravings(Face.BACK).forEach(line -> engraved.chain(line, LineType.DASHED));
    PictureInk bezels = new PictureInk(unit, room);
    for (Body body : plate.map(Plate::bodies).orElse(List.of())) {
      bezels.contour(body.bezel(), body.face() == Face.FRONT ? LineType.THIN : LineType.DASHED);
    }
    PictureInk centres = new PictureInk(unit, room);
    centreLines(centres, box);

    PictureInk marked = new PictureInk(unit, room);
    PictureFindings list = new PictureFindings(marked, marks);
    list.dots();
    PictureInk callouts = new PictureInk(unit, room);
    PictureCallouts kinds = new PictureCallouts(callouts);
    plate.ifPresent(kinds::draw);
    PictureInk dimensions = new PictureInk(unit, room);
    PictureDimensions sizes = new PictureDimensions(dimensions);
    sizes.overall(shown.outline());
    plate.ifPresent(sizes::rim);
    PictureLabels labels = new PictureLabels(callouts);
    labels.draw(shown.holes(), plate.isPresent() ? kinds.small() : shown.windows());

    list.balloons();
    if (!list.isEmpty()) {
      double x = room.extent().maxX() + 12 * unit;
      double floor = Math.min(box.minY(), box.maxY() - LEAST_COLUMN * unit);
      list.list(new Point(x, box.maxY()), floor);
    }
    List<Mark> stamp = stamp(order);
    PictureInk notes = new PictureInk(unit, room);
    words(notes, labels.lacks());
    Box page = room.extent().grown(MARGIN * unit);
    List<Drawing.Layer> layers = new ArrayList<>();
    layers.add(material.layer("material"));
    layers.add(outline.layer("outline"));
    layers.add(windows.layer("windows"));
    layers.add(holes.layer("holes"));
    layers.add(engraved.layer("engravings"));
    if (plate.filter(p -> !p.bodies().isEmpty()).isPresent()) {
      layers.add(bezels.layer("bodies"));
    }
    layers.add(centres.layer("centre-lines"));
    layers.add(dimensions.layer("dimensions"));
    layers.add(callouts.layer("callouts"));
    layers.add(marked.layer("findings"));
    layers.add(notes.layer("notes"));
    if (!stamp.isEmpty()) {
      layers.add(new Drawing.Layer("stamp", stamp));
    }
    return new Picture(new Drawing(layers), page, PEN * unit);
  }

  /** What is cut shallow into a face. */
  private List<List<Segment>> engravings(Face face) {
    return plate.stream()
        .flatMap(p -> p.engravings(face).stream())
        .flatMap(engraving -> engraving.strokes().stream())
        .toList();
  }

  /** The stamp of a plate that fails, across it where it covers least, its lines hollow. */
  private List<Mark> stamp(Stamp stamp) {
    if (stamp.isNone()) {
      return List.of();
    }
    Box box = shown.outline().box();
    List<Mark> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (double share : new double[] {1, 0.6, 0.4}) {
      List<String> lines = stamp.lines(share * box.width() / unit, 2);
      double scale = Math.min(unit, box.height() / (Stamp.height(lines) + 4));
      double w = scale * (TextWidth.widest(lines, Stamp.LETTER) / 2 + 1);
      double h = scale * (Stamp.height(lines) / 2 + 2);
      for (double y = box.minY() + h; y <= box.maxY() - h; y += 4 * unit) {
        for (double x = box.minX() + w; x <= box.maxX() - w; x += 4 * unit) {
          Point middle = new Point(x, y);
          double cost =
              room.cost(new Box(x - w, y - h, x + w, y + h))
                  + 0.1 * box.centre().distance(middle) / unit;
          if (cost < least) {
            least = cost;
            best = Stamp.labels(lines, middle.plus(new Point(0, h - 2 * scale)), scale, true);
          }
        }
      }
    }
    return best;
  }

  private void centreLines(PictureInk ink, Box box) {
    double beyond = AXIS_BEYOND * unit;
    Box axes = box.union(Box.of(Point.ORIGIN, Point.ORIGIN)).grown(beyond);
    ink.centreLine(new Line(new Point(axes.minX(), 0), new Point(axes.maxX(), 0)));
    ink.centreLine(new Line(new Point(0, axes.minY()), new Point(0, axes.maxY())));
    for (BoltCircle ring : plate.map(Plate::boltCircles).orElse(List.of())) {
      ink.centreLine(Arc.circle(Point.ORIGIN, ring.pitchDiameter() / 2));
    }
    for (Hole hole : shown.holes()) {
      cross(ink, hole.centre(), hole.diameter() / 2 + CROSS_BEYOND * unit);
    }
    for (Window window : shown.windows()) {
      window
          .contour()
          .asCircle()
          .ifPresent(circle -> cross(ink, circle.centre(), circle.radius() + CROSS_BEYOND * unit));
    }
  }

  private static void cross(PictureInk ink, Point at, double reach) {
    if (at.norm() > reach) {
      ink.line(new Point(at.x() - reach, at.y()), new Point(at.x() + reach, at.y()), LineType.THIN);
      ink.line(new Point(at.x(), at.y() - reach), new Point(at.x(), at.y() + reach), LineType.THIN);
    }
  }

  /** Title above everything, scale bar and caution below. */
  private void words(PictureInk ink, Optional<String> lacks) {
    Box all = room.extent();
    double width = all.width();
    List<String> about =
        TextWrap.lines(
            facts() + lacks.map(words -> " \u00b7 " + words).orElse(""),
            PictureInk.TEXT * unit,
            width,
            3);
    List<String> title = TextWrap.lines(shown.title(), TITLE * unit, width, 2);
    double y =
        all.maxY()
            + 10 * unit
            + (about.size() * PictureInk.TEXT + (title.size() - 1) * TITLE)
                * PictureInk.LEADING
                * unit;
    double last = ink.lines(title, new Point(all.minX(), y), TITLE, Anchor.START);
    ink.lines(
        about,
        new Point(all.minX(), last - PictureInk.LEADING * PictureInk.TEXT * unit),
        PictureInk.TEXT,
        Anchor.START);

    double below = all.minY() - 12 * unit;
    double end = scaleBar(ink, new Point(all.minX(), below)) + 16 * unit;
    double size = PictureInk.SMALL;
    double wide = Math.min(CAUTION_WIDTH * unit, Math.max(all.maxX() - end, 100 * unit));
    List<String> caution = TextWrap.lines(CAUTION, size * unit, wide, 6);
    ink.lines(caution, new Point(end, below), size, Anchor.START);
  }

  private String facts() {
    String stock =
        plate
            .map(
                p ->
                    p.stock().material().title()
                        + ", "
                        + p.stock().thicknessWords()
                        + " \u00b7 "
                        + Numbers.brief(p.mass(), p.mass() < 10 ? 1 : 0)
                        + " g \u00b7 ")
            .orElse("");
    boolean behind =
        plate.stream().flatMap(p -> p.bodies().stream()).anyMatch(body -> body.face() == Face.BACK);
    String back =
        engravings(Face.BACK).isEmpty()
            ? behind ? " \u00b7 dashes: bezels on the back" : ""
            : " \u00b7 dashes: " + (behind ? "bezels and engraved" : "engraved") + " on the back";
    return stock + "as the driver sees it \u00b7 revision " + shown.revision() + back;
  }

  /** A bar of a round length in four parts, black and white in turn; returns where it ends. */
  private double scaleBar(PictureInk ink, Point at) {
    double length = round(0.36 * USUAL * unit);
    double part = length / 4;
    double height = 1.8 * unit;
    for (int i = 0; i < 4; i++) {
      double x = at.x() + i * part;
      Contour block =
          Contour.polygon(
              List.of(
                  new Point(x, at.y()),
                  new Point(x + part, at.y()),
                  new Point(x + part, at.y() + height),
                  new Point(x, at.y() + height)));
      ink.patch(block, i % 2 == 0 ? 1 : 0);
      ink.contour(block, LineType.THIN);
    }
    double base = at.y() - 5 * unit;
    String whole = Numbers.brief(length, 3) + " mm";
    ink.text("0", new Point(at.x(), base), PictureInk.SMALL, 0, Anchor.START);
    ink.text(
        Numbers.brief(length / 2, 3),
        new Point(at.x() + length / 2, base),
        PictureInk.SMALL,
        0,
        Anchor.MIDDLE);
    ink.text(whole, new Point(at.x() + length, base), PictureInk.SMALL, 0, Anchor.MIDDLE);
    return at.x() + length;
  }

  /** The largest of 1, 2, 5 times a power of ten that is not above a length. */
  private static double round(double length) {
    double power = Math.pow(10, Math.floor(Math.log10(length)));
    double lead = length / power;
    return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }
}
