package felloe.template;

import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.FeatureTag;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/**
 * The template of a plate as one drawing at full size: the finish line of outline and windows, the
 * rough line, holes with centre crosses, pitch circles, datum axes, and the words and arrows that
 * belong to them. Layers, bottom first: {@code centre-lines}, {@code rough}, {@code waste-holes},
 * {@code outline}, {@code windows}, {@code holes}, {@code engraving}, {@code bodies}, {@code
 * notes}.
 *
 * <p>Accuracy: the middle of each line is the plate's own line or arc, moved as the mark-out method
 * says; it is never flattened.
 */
public final class TemplateDrawing {

  /** How far the arms of a centre cross reach beyond the hole, mm. */
  private static final double ARM = 2;

  /** Size of the circle round a centre mark, to see whether the first drill came out in it, mm. */
  private static final double TARGET = 2;

  /** How far the arms of the cross of a hole in the waste reach, across and up, mm. */
  private static final double SLANT = 1.5;

  /** Size of a cross in an opening so wide that lines through it would only confuse, mm. */
  private static final double WIDE = 30;

  private final LaidShape shape;
  private final FreeSpace ground;

  private TemplateDrawing(LaidShape shape, FreeSpace ground) {
    this.shape = shape;
    this.ground = ground;
  }

  /**
   * The template as it is to be seen on a face of the stock. A drawing for the back face is
   * mirrored; its text is not, and says so in large letters.
   *
   * @param stamp printed across it when the plate fails
   * @throws felloe.plate.BadInput when a window is too narrow for the pen
   */
  public static Drawing of(Plate plate, MarkOut markOut, Face face, Stamp stamp) {
    return of(plate, List.of(), markOut, face, stamp);
  }

  /**
   * The same for a plate that is sawn by hand.
   *
   * @param waste holes to drill in the waste first
   */
  public static Drawing of(
      Plate plate, List<WasteHole> waste, MarkOut markOut, Face face, Stamp stamp) {
    LaidShape shape = LaidShape.of(plate, waste, markOut, face);
    TemplateDrawing drawing = on(shape, shape.box().grown(20));
    Drawing plain = drawing.lines().and(drawing.notes());
    List<Mark> large =
        new LargeWords(drawing.ground()).in(shape.box(), shape.outline(), face, stamp);
    return large.isEmpty() ? plain : plain.and(Drawing.of("stamp", large));
  }

  /** Starts a drawing; the ground knows its lines. Words stay inside the area. */
  static TemplateDrawing on(LaidShape shape, Box area) {
    FreeSpace ground = new FreeSpace(area);
    List<Contour> edges = new ArrayList<>();
    edges.add(shape.outline());
    edges.addAll(shape.windows());
    shape.holes().forEach(hole -> edges.add(hole.contour()));
    ground.waste(edges);
    TemplateDrawing drawing = new TemplateDrawing(shape, ground);
    for (Mark mark : drawing.lines().marks()) {
      boolean edge = mark instanceof Mark.Stroke stroke && stroke.type() == drawing.edge();
      ground.mark(mark, edge ? FreeSpace.EDGE : FreeSpace.THIN);
    }
    return drawing;
  }

  /**
   * Where words have room that are not of the part: outside of it; also in its windows; anywhere
   * off the lines.
   */
  static List<FreeSpace.Free> room(LaidShape shape) {
    Box area = shape.box().grown(1);
    List<Contour> edges = new ArrayList<>(List.of(shape.outermost()));
    FreeSpace outside = new FreeSpace(area);
    outside.waste(edges);
    outside.takeInside();
    edges.addAll(shape.windows());
    FreeSpace windows = new FreeSpace(area);
    windows.waste(edges);
    windows.takeInside();
    FreeSpace anywhere = new FreeSpace(area);
    TemplateDrawing drawing = new TemplateDrawing(shape, anywhere);
    for (Mark mark : drawing.lines().marks()) {
      for (FreeSpace ground : List.of(outside, windows, anywhere)) {
        ground.mark(mark, FreeSpace.EDGE);
      }
    }
    // Labels of holes find their place near them.
    for (Hole hole : shape.holes()) {
      Box box = Box.of(hole.centre(), hole.centre()).grown(hole.diameter() / 2 + ARM + 4);
      anywhere.block(box, FreeSpace.TAKEN);
    }
    return List.of(outside.freeBeyond(), windows.freeBeyond(), anywhere.freeBeyond());
  }

  FreeSpace ground() {
    return ground;
  }

  /** Whether holes are all that is worked by it. */
  private boolean centres() {
    return shape.markOut().method() == MarkOut.Method.CENTRES;
  }

  /** The line of edges: wide where the plate is cut along it. */
  private LineType edge() {
    return centres() ? LineType.THIN : LineType.EDGE;
  }

  /** All lines, without words. */
  Drawing lines() {
    List<Mark> windows = new ArrayList<>();
    for (int i = 0; i < shape.windows().size(); i++) {
      FeatureTag tag = FeatureTag.of(shape.plate().windows().get(i));
      windows.add(Mark.Stroke.of(shape.windows().get(i), edge(), tag));
    }
    List<Mark> rough = new ArrayList<>();
    if (!centres()) {
      shape.rough().forEach(line -> rough.add(Mark.Stroke.of(line, LineType.ROUGH)));
    }
    List<Drawing.Layer> layers = new ArrayList<>();
    layers.add(new Drawing.Layer("centre-lines", centreLines()));
    layers.add(new Drawing.Layer("rough", rough));
    layers.add(new Drawing.Layer("waste-holes", waste()));
    layers.add(new Drawing.Layer("outline", List.of(Mark.Stroke.of(shape.outline(), edge()))));
    layers.add(new Drawing.Layer("windows", windows));
    layers.add(new Drawing.Layer("holes", holes()));
    layers.add(new Drawing.Layer("engraving", engraving()));
    layers.add(new Drawing.Layer("bodies", shape.bezels()));
    layers.removeIf(layer -> layer.marks().isEmpty());
    return new Drawing(layers);
  }

  /** Dashed circles, each with a cross that lies on its side: nothing of the plate looks so. */
  private List<Mark> waste() {
    List<Mark> marks = new ArrayList<>();
    for (WasteHole hole : shape.waste()) {
      marks.add(Mark.Stroke.of(hole.edge(), LineType.DASHED));
      for (Point arm : List.of(new Point(1, 1), new Point(1, -1))) {
        Point reach = arm.times(SLANT);
        marks.add(
            Mark.Stroke.of(new Line(hole.at().minus(reach), hole.at().plus(reach)), LineType.THIN));
      }
    }
    return marks;
  }

  /** Texts and marks of the face that it goes on: the middle of each line. */
  private List<Mark> engraving() {
    List<Mark> marks = new ArrayList<>();
    for (Engraving engraving : shape.engravings()) {
      for (List<Segment> stroke : engraving.strokes()) {
        List<Segment> laid = stroke.stream().map(s -> s.moved(shape.motion())).toList();
        marks.add(new Mark.Stroke(laid, false, LineType.THIN));
      }
    }
    return marks;
  }

  private List<Mark> centreLines() {
    List<Mark> marks = new ArrayList<>();
    Box box = shape.box();
    Point origin = shape.motion().of(Point.ORIGIN);
    if (box.contains(origin)) {
      // From the origin outward, so that long dashes cross there.
      for (Point end :
          List.of(
              new Point(box.maxX(), origin.y()),
              new Point(box.minX(), origin.y()),
              new Point(origin.x(), box.maxY()),
              new Point(origin.x(), box.minY()))) {
        if (!end.near(origin, 1)) {
          marks.add(Mark.Stroke.of(new Line(origin, end), LineType.CENTRE));
        }
      }
    }
    shape.pitchCircles().forEach(circle -> marks.add(Mark.Stroke.of(circle, LineType.CENTRE)));
    return marks;
  }

  private List<Mark> holes() {
    List<Mark> marks = new ArrayList<>();
    for (Hole hole : shape.holes()) {
      marks.add(Mark.Stroke.of(hole.contour(), edge(), FeatureTag.of(hole)));
    }
    List<Hole> all = new ArrayList<>(shape.holes());
    all.addAll(shape.rounds());
    for (Hole hole : all) {
      for (Point end : hole.ends()) {
        cross(hole, end, marks);
      }
    }
    return marks;
  }

  /** A cross where a drill goes. */
  private void cross(Hole hole, Point c, List<Mark> marks) {
    if (centres() && hole.diameter() > 2 * TARGET) {
      marks.add(Mark.Stroke.of(Contour.circle(c, TARGET / 2), LineType.THIN));
    }
    double arm = hole.diameter() > WIDE ? WIDE / 6 : hole.diameter() / 2 + ARM;
    marks.add(
        Mark.Stroke.of(
            new Line(c.plus(new Point(-arm, 0)), c.plus(new Point(arm, 0))), LineType.THIN));
    marks.add(
        Mark.Stroke.of(
            new Line(c.plus(new Point(0, -arm)), c.plus(new Point(0, arm))), LineType.THIN));
  }

  /** Words and arrows, each where it covers least; call once, when all lines are on the ground. */
  Drawing notes() {
    Lettering lettering = new Lettering(ground, shape);
    for (Hole hole : shape.holes()) {
      if (hole.role() != HoleRole.BORE) {
        lettering.hole(hole);
      }
    }
    shape.holes().stream().filter(h -> h.role() == HoleRole.BORE).forEach(lettering::hole);
    shape.rounds().forEach(lettering::hole);
    shape.waste().forEach(lettering::waste);
    if (!centres()) {
      lettering.windows();
    }
    lettering.pitchCircles();
    lettering.up();
    if (!centres()) {
      lettering.grain();
    }
    lettering.name();
    return Drawing.of("notes", lettering.marks());
  }
}
