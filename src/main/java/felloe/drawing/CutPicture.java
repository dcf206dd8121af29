package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.LargestCircle;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * The picture of a cut: finish lines, the path, what is left over and must be filed off, tabs, the
 * sheet with its clamps and the direction of its grain, and work zero. To be looked at, not
 * measured.
 */
public final class CutPicture {

  /** The width or height that one unit of lettering is made for, mm. */
  private static final double USUAL = 280;

  private static final double TEXT = 3.2;

  /** How much larger the heading is. */
  private static final double HEAD = 1.3;

  private static final double LEADING = 1.75;

  /** As many left-overs have a line in the list below; all have a mark. */
  private static final int LISTED = 12;

  private final CutView view;
  private final Box shown;
  private final double unit;
  private final List<Drawing.Layer> layers = new ArrayList<>();

  private CutPicture(CutView view) {
    this.view = view;
    this.shown = shown(view);
    this.unit = Math.max(shown.width(), shown.height()) / USUAL;
  }

  /** Draws it. */
  public static Picture of(CutView view) {
    return new CutPicture(view).draw();
  }

  private static Box shown(CutView view) {
    List<Box> boxes = new ArrayList<>(view.keepOut());
    view.sheet().ifPresent(boxes::add);
    view.parts().forEach(part -> boxes.add(part.region().outer().box()));
    view.paths().forEach(path -> boxes.add(path.box()));
    boxes.add(Box.of(Point.ORIGIN, Point.ORIGIN));
    return boxes.stream().reduce(Box::union).orElseThrow();
  }

  private Picture draw() {
    sheet();
    parts();
    paths();
    tabs();
    leftOvers();
    zero();
    double bottom = legend();
    double edge = 8 * unit;
    double left = shown.minX() - edge;
    // The list below needs its width, however narrow the part.
    double right = Math.max(shown.maxX() + edge, left + 220 * unit);
    double height = HEAD * TEXT * unit;
    List<String> heading = Paragraph.wrap(view.title(), height, right - edge - shown.minX());
    double top = shown.maxY() + 10 * unit + heading.size() * LEADING * height;
    layer(
        "heading",
        Paragraph.labels(heading, shown.minX(), top - 4 * unit, height, LEADING * height));
    Box page = new Box(left, bottom - edge / 2, right, top);
    return new Picture(new Drawing(layers), page, unit);
  }

  private void layer(String name, List<Mark> marks) {
    if (!marks.isEmpty()) {
      layers.add(new Drawing.Layer(name, marks));
    }
  }

  private void sheet() {
    List<Mark> marks = new ArrayList<>();
    view.sheet().ifPresent(box -> marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.THIN)));
    for (Box box : view.keepOut()) {
      marks.add(new Mark.Fill(List.of(Contour.rectangle(box)), 0.12));
      marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.THIN));
      line(marks, new Point(box.minX(), box.minY()), new Point(box.maxX(), box.maxY()));
      line(marks, new Point(box.minX(), box.maxY()), new Point(box.maxX(), box.minY()));
    }
    if (view.grain() && view.sheet().isPresent()) {
      grain(marks, view.sheet().get());
    }
    layer("sheet", marks);
  }

  /** An arrow with two heads along x, above the sheet's upper edge at its right end. */
  private void grain(List<Mark> marks, Box sheet) {
    double y = sheet.maxY() + 6 * unit;
    double length = 30 * unit;
    Point right = new Point(sheet.maxX(), y);
    Point left = new Point(right.x() - length, y);
    line(marks, left, right);
    head(marks, right, Math.PI);
    head(marks, left, 0);
    marks.add(
        Mark.Label.of(
            "grain, 0\u00b0 fibres",
            new Point(left.x() - 2 * unit, y - TEXT * unit / 2),
            TEXT * unit,
            Anchor.END));
  }

  private void head(List<Mark> marks, Point tip, double from) {
    Point back = Point.polar(3 * unit, from);
    Point side = back.left().times(0.27);
    marks.add(
        new Mark.Fill(
            List.of(
                Contour.polygon(
                    List.of(tip, tip.plus(back).plus(side), tip.plus(back).minus(side)))),
            1));
  }

  private void parts() {
    List<Mark> marks = new ArrayList<>();
    List<Mark> names = new ArrayList<>();
    for (CutView.Part part : view.parts()) {
      marks.add(new Mark.Fill(part.region().contours(), 0.07));
      part.region().contours().forEach(c -> marks.add(Mark.Stroke.of(c, LineType.EDGE)));
      name(names, part);
    }
    layer("finish-lines", marks);
    layer(
        "engravings",
        view.engravings().stream()
            .<Mark>map(line -> new Mark.Stroke(line, false, LineType.THIN))
            .toList());
    layer("names", names);
  }

  /** The name, where the part has room for it. */
  private void name(List<Mark> marks, CutView.Part part) {
    Box box = part.region().outer().box();
    boolean narrow = box.width() < box.height() && box.width() < 25 * unit;
    double room = narrow ? box.height() : box.width();
    double height = Math.min(TEXT * unit, (narrow ? box.width() : box.height()) / 2);
    String text = Paragraph.fit(part.name(), height, 0.9 * room);
    if (TextWidth.of(text, 1) == 0) {
      return;
    }
    Point at = box.centre();
    if (!part.region().holes().isEmpty()) {
      // The middle of a wheel is its bore: the name stands in the largest opening.
      at =
          part.region().holes().stream()
              .max((a, b) -> Double.compare(a.area(), b.area()))
              .map(hole -> LargestCircle.inside(hole).centre())
              .orElse(at);
    }
    double turn = narrow ? Math.PI / 2 : 0;
    Point base = at.plus(Point.polar(height / 2, turn - Math.PI / 2));
    marks.add(new Mark.Label(text, base, height, turn, Anchor.MIDDLE));
  }

  private void paths() {
    List<Mark> marks = new ArrayList<>();
    view.paths().forEach(path -> marks.add(Mark.Stroke.of(path, LineType.DASHED)));
    view.leads().forEach(lead -> marks.add(Mark.Stroke.of(lead, LineType.THIN)));
    layer("paths", marks);
    List<Mark> holes = new ArrayList<>();
    view.wasteHoles().forEach(hole -> holes.add(Mark.Stroke.of(hole, LineType.THIN)));
    for (Contour hole : view.wasteHoles()) {
      Point c = hole.box().centre();
      double arm = hole.box().width() / 2 + unit;
      line(holes, c.minus(new Point(arm, 0)), c.plus(new Point(arm, 0)));
      line(holes, c.minus(new Point(0, arm)), c.plus(new Point(0, arm)));
    }
    layer("waste-holes", holes);
  }

  private void tabs() {
    List<Mark> marks = new ArrayList<>();
    double half = 1.6 * unit;
    for (Point at : view.tabs()) {
      Box box = Box.of(at, at).grown(half);
      marks.add(new Mark.Fill(List.of(Contour.rectangle(box)), 0));
      marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.EDGE));
    }
    layer("tabs", marks);
  }

  private void leftOvers() {
    List<Mark> marks = new ArrayList<>();
    double radius = 3 * unit;
    for (CutView.LeftOver left : view.leftOvers()) {
      marks.add(new Mark.Fill(left.region().contours(), 1));
      marks.add(Mark.Stroke.of(Contour.circle(left.at(), radius), LineType.THIN));
      marks.add(
          Mark.Label.of(
              Integer.toString(left.number()),
              left.at().plus(new Point(radius + unit, -TEXT * unit / 2)),
              0.8 * TEXT * unit,
              Anchor.START));
    }
    layer("left-overs", marks);
  }

  private void zero() {
    List<Mark> marks = new ArrayList<>();
    double arm = 5 * unit;
    line(marks, new Point(-arm, 0), new Point(arm, 0));
    line(marks, new Point(0, -arm), new Point(0, arm));
    marks.add(Mark.Stroke.of(Contour.circle(Point.ORIGIN, 2 * unit), LineType.EDGE));
    layer("work-zero", marks);
  }

  /** The list below; returns its lower end. */
  private double legend() {
    List<String> lines = new ArrayList<>();
    lines.add("Thick line: finish line. Dashes: " + view.pathWords() + ".");
    if (!view.leads().isEmpty()) {
      lines.add("Thin arcs and lines beside the dashes: ways onto the path and off it.");
    }
    if (!view.engravings().isEmpty()) {
      lines.add("Thin letters and marks on the part: cut shallow, never through.");
    }
    lines.add("Small circle with a cross: work zero, " + view.zero() + ".");
    if (!view.tabs().isEmpty()) {
      lines.add("White squares: tabs. Cut them by hand and file them flush.");
    }
    if (!view.wasteHoles().isEmpty()) {
      lines.add("Thin circles: holes to drill in the waste first.");
    }
    if (!view.keepOut().isEmpty()) {
      lines.add("Crossed boxes: kept free for clamps.");
    }
    if (!view.leftOvers().isEmpty()) {
      lines.add("Black, ringed and numbered: the cutter cannot reach it; file it off by hand.");
    }
    for (int i = 0; i < Math.min(LISTED, view.leftOvers().size()); i++) {
      CutView.LeftOver left = view.leftOvers().get(i);
      lines.add(
          "    "
              + left.number()
              + "   "
              + left.label()
              + ", stands out "
              + Numbers.fixed(left.reach(), 2)
              + " mm at ("
              + Numbers.fixed(left.at().x(), 1)
              + ", "
              + Numbers.fixed(left.at().y(), 1)
              + ")");
    }
    if (view.leftOvers().size() > LISTED) {
      lines.add("    and " + (view.leftOvers().size() - LISTED) + " more");
    }
    List<Mark> marks = new ArrayList<>();
    double y = shown.minY() - 6 * unit;
    for (String text : lines) {
      y -= LEADING * TEXT * unit;
      marks.add(Mark.Label.of(text, new Point(shown.minX(), y), TEXT * unit, Anchor.START));
    }
    layer("legend", marks);
    return y;
  }

  private static void line(List<Mark> marks, Point from, Point to) {
    if (!from.near(to, Tolerances.SAME_POINT)) {
      marks.add(Mark.Stroke.of(new Line(from, to), LineType.THIN));
    }
  }
}
