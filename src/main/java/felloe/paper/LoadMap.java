package felloe.paper;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * One map on a plate: bands between lines of equal value, the plate's edges over them, what holds
 * it, the hands and the peak, with a legend at the right. Lengths of lettering and symbols are in
 * units.
 *
 * <p>Every band reaches under those above it, so that no light shows between two of them. Nothing
 * is told by colour alone: lines part the bands, and figures stand at lines, legend and peak.
 */
final class LoadMap {

  static final double TEXT = 3.2;
  private static final double SMALL = 2.3;
  private static final int MOST_BANDS = 12;

  /** What a thinned line may be off, units. */
  private static final double THIN = 0.05;

  private static final double SYMBOL = 4;
  private static final double ARROW = 22;
  private static final double CROSS = 3;

  private final LoadView view;
  private final LoadView.Map map;
  private final double unit;
  private final Box plate;
  private final RoundLimits limits;
  private final boolean falling;
  private final MapLabels labels;
  private final List<Drawing.Layer> layers = new ArrayList<>();
  private final List<Mark> lines = new ArrayList<>();

  private LoadMap(LoadView view, LoadView.Map map, double unit) {
    this.view = view;
    this.map = map;
    this.unit = unit;
    this.plate = view.region().outer().box();
    double least = map.field().least();
    double most = map.field().most();
    // What hardly moves is one band, not two with a line of rounding errors between.
    this.limits = RoundLimits.of(least, most, MOST_BANDS).withoutZero();
    // Dark is much, whichever way the plate is moved.
    this.falling = -least > 1.05 * most;
    this.labels = new MapLabels(view.region(), lettered(), unit);
  }

  /**
   * Draws a map.
   *
   * @param unit of lettering, mm on the plate
   */
  static Picture of(LoadView view, LoadView.Map map, double unit) {
    return new LoadMap(view, map, unit).draw();
  }

  /** Draws a map so that its letters have a height when it is made to fit on a field. */
  static Picture fitted(LoadView view, LoadView.Map map, Box field, double height) {
    double unit = 1;
    Picture picture = of(view, map, unit);
    for (int i = 0; i < 4; i++) {
      Box page = picture.page();
      double scale =
          Math.min(1, Math.min(field.width() / page.width(), field.height() / page.height()));
      unit = height / TEXT / scale;
      picture = of(view, map, unit);
    }
    return picture;
  }

  private Picture draw() {
    List<Mark> bands = new ArrayList<>();
    List<Isobands.Area> areas = new ArrayList<>();
    bands.add(Mark.Tone.of(view.region().contours(), tone(0)));
    Isobands cut = new Isobands(map.field());
    Thinned thinned = new Thinned(THIN * unit);
    for (int i = 0; i < limits.limits().size(); i++) {
      Isobands.Area area = cut.above(limits.limits().get(i));
      areas.add(area);
      List<List<Segment>> rings =
          area.rings().stream().map(r -> thinned.of(r, true)).filter(r -> r.size() > 2).toList();
      if (!rings.isEmpty()) {
        bands.add(new Mark.Tone(rings, tone(i + 1)));
      }
      area.lines().forEach(line -> isoline(line, thinned, LineType.THIN));
    }
    failing(cut, thinned);
    layer("bands", bands);
    layer("lines-of-equal-value", lines);
    support();
    List<Mark> edges = new ArrayList<>();
    view.region().contours().forEach(c -> edges.add(Mark.Stroke.of(c, LineType.EDGE)));
    layer("edges", edges);
    hands();
    peak();
    labels(areas);
    layer("labels", labels.marks());
    double top = plate.maxY() + 12 * unit;
    layer("heading", List.of(label(map.title(), plate.minX() - 14 * unit, top, 1.1 * TEXT)));
    double right = legend();
    double wide = plate.minX() - 14 * unit + TextWidth.of(map.title(), 1.1 * TEXT * unit);
    Box page =
        new Box(
            plate.minX() - 20 * unit,
            plate.minY() - 11 * unit,
            Math.max(right, wide) + 2 * unit,
            top + 6 * unit);
    return new Picture(new Drawing(layers), page, unit);
  }

  /** Where lettering may stand: beside the plate, and a little above and below it. */
  private Box lettered() {
    return new Box(
        plate.minX() - 19 * unit,
        plate.minY() - 10 * unit,
        plate.maxX() + 19 * unit,
        plate.maxY() + 10 * unit);
  }

  private double tone(int band) {
    int last = limits.limits().size();
    double tone = last == 0 ? 0 : (double) band / last;
    return falling ? 1 - tone : tone;
  }

  private void layer(String name, List<Mark> marks) {
    if (!marks.isEmpty()) {
      layers.add(new Drawing.Layer(name, marks));
    }
  }

  private Mark label(String text, double x, double y, double height) {
    return Mark.Label.of(text, new Point(x, y), height * unit, Anchor.START);
  }

  private void isoline(Isobands.Isoline line, Thinned thinned, LineType type) {
    List<Segment> chain = thinned.of(line.points(), line.closed());
    if (!chain.isEmpty()) {
      lines.add(new Mark.Stroke(chain, line.closed() && chain.size() > 2, type));
    }
  }

  /** The line beyond which the material fails is thick. */
  private void failing(Isobands cut, Thinned thinned) {
    if (map.fails().isPresent() && map.fails().getAsDouble() < map.field().most()) {
      cut.above(map.fails().getAsDouble())
          .lines()
          .forEach(line -> isoline(line, thinned, LineType.EDGE));
    }
  }

  private void support() {
    List<Mark> marks = new ArrayList<>();
    view.held().forEach(c -> marks.add(Mark.Stroke.of(c, LineType.DASHED)));
    for (Contour head : view.heads()) {
      marks.add(Mark.Stroke.of(head, LineType.THIN));
      Box box = head.box();
      Point c = box.centre();
      double arm = box.width() / 2 + unit;
      line(marks, c.minus(new Point(arm, 0)), c.plus(new Point(arm, 0)), LineType.CENTRE);
      line(marks, c.minus(new Point(0, arm)), c.plus(new Point(0, arm)), LineType.CENTRE);
    }
    layer("held", marks);
  }

  private void hands() {
    List<Mark> marks = new ArrayList<>();
    for (LoadView.Hand hand : view.hands()) {
      boolean across = Math.hypot(hand.x(), hand.y()) > 0;
      if (across) {
        Point along = new Point(hand.x(), hand.y()).unit();
        Point from = hand.z() == 0 ? hand.at() : hand.at().plus(along, SYMBOL * unit);
        arrow(marks, from, hand.at().plus(along, ARROW * unit));
      }
      if (hand.z() != 0) {
        outOrIn(marks, hand.at(), hand.z() > 0);
      } else {
        marks.add(new Mark.Fill(List.of(Contour.circle(hand.at(), 0.9 * unit)), 1));
      }
      labels.take(Box.of(hand.at(), hand.at()).grown((SYMBOL + 0.5) * unit));
    }
    layer("hands", marks);
  }

  /** The point of an arrow that comes out of the page, or the feathers of one that goes in. */
  private void outOrIn(List<Mark> marks, Point at, boolean out) {
    Contour ring = Contour.circle(at, SYMBOL * unit);
    marks.add(new Mark.Fill(List.of(ring), 0));
    marks.add(Mark.Stroke.of(ring, LineType.EDGE));
    if (out) {
      marks.add(new Mark.Fill(List.of(Contour.circle(at, 1.2 * unit)), 1));
    } else {
      double arm = SYMBOL * unit * Math.sqrt(0.5);
      line(marks, at.plus(new Point(-arm, -arm)), at.plus(new Point(arm, arm)), LineType.EDGE);
      line(marks, at.plus(new Point(-arm, arm)), at.plus(new Point(arm, -arm)), LineType.EDGE);
    }
  }

  private void arrow(List<Mark> marks, Point from, Point tip) {
    Point back = from.minus(tip).unit().times(5 * unit);
    Point side = back.left().times(0.35);
    Point neck = tip.plus(back, 0.9);
    // Wide enough to be told from every other line.
    Point half = side.unit().times(0.6 * unit);
    Contour shaft =
        Contour.polygon(
            List.of(from.plus(half), from.minus(half), neck.minus(half), neck.plus(half)));
    marks.add(new Mark.Fill(List.of(shaft), 1));
    Contour head =
        Contour.polygon(List.of(tip, tip.plus(back).plus(side), tip.plus(back).minus(side)));
    marks.add(new Mark.Fill(List.of(head), 1));
    for (int i = 0; i <= 6; i++) {
      Point p = from.towards(tip, i / 6.0);
      labels.take(Box.of(p, p).grown(2 * unit));
    }
  }

  private void peak() {
    Point at = map.peakAt();
    List<Mark> marks = new ArrayList<>();
    double arm = CROSS * unit;
    Point rise = new Point(arm, arm);
    Point fall = new Point(arm, -arm);
    // White beneath, so that it is seen on the darkest band.
    marks.add(bar(at.minus(rise), at.plus(rise)));
    marks.add(bar(at.minus(fall), at.plus(fall)));
    line(marks, at.minus(rise), at.plus(rise), LineType.EDGE);
    line(marks, at.minus(fall), at.plus(fall), LineType.EDGE);
    labels.take(Box.of(at, at).grown(arm));
    layer("peak", marks);
  }

  private Mark bar(Point from, Point to) {
    Point side = to.minus(from).unit().left().times(0.75 * unit);
    return new Mark.Fill(
        List.of(
            Contour.polygon(
                List.of(from.plus(side), from.minus(side), to.minus(side), to.plus(side)))),
        0);
  }

  private void labels(List<Isobands.Area> areas) {
    labels.beside(map.peak(), map.peakAt(), CROSS * unit, TEXT);
    for (LoadView.Hand hand : view.hands()) {
      labels.beside(hand.words(), hand.at(), SYMBOL * unit, TEXT);
    }
    for (int i = 0; i < areas.size(); i++) {
      labels.on(areas.get(i).lines(), limits.text(limits.limits().get(i)), SMALL);
    }
  }

  /** The bands one on the other with their limits; returns its right end. */
  private double legend() {
    int bands = limits.limits().size() + 1;
    double left = plate.maxX() + 22 * unit;
    double high = Math.max(5.5 * unit, Math.min(11 * unit, plate.height() / bands));
    double wide = 9 * unit;
    double bottom = plate.centre().y() - high * bands / 2;
    List<Mark> marks = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    double half = SMALL * unit / 2;
    double text = left + wide + 2 * unit;
    for (int i = 0; i < bands; i++) {
      Box box = new Box(left, bottom + i * high, left + wide, bottom + (i + 1) * high);
      marks.add(Mark.Tone.of(List.of(PageMap.rectangle(box)), tone(i)));
      marks.add(Mark.Stroke.of(PageMap.rectangle(box), LineType.THIN));
      if (i > 0) {
        String limit = limits.text(limits.limits().get(i - 1));
        texts.add(limit);
        marks.add(label(limit, text, box.minY() - half, SMALL));
      }
    }
    double top = bottom + bands * high;
    String most = end(map.field().most());
    String least = end(map.field().least());
    texts.addAll(List.of(most, least, map.unit()));
    marks.add(label(map.unit(), left, top + 3 * unit, TEXT));
    marks.add(label(most, text, top - half, SMALL));
    marks.add(label(least, text, bottom - half, SMALL));
    layer("legend", marks);
    return text + Math.max(TextWidth.widest(texts, SMALL * unit), 8 * unit);
  }

  /** An end of the range, with a place more than the limits have. */
  private String end(double value) {
    int decimals = limits.limits().isEmpty() ? 3 : Math.min(9, limits.decimals() + 1);
    return Numbers.brief(value, decimals).replace('-', '\u2212');
  }

  private static void line(List<Mark> marks, Point from, Point to, LineType type) {
    if (!from.near(to, Tolerances.SAME_POINT)) {
      marks.add(Mark.Stroke.of(new Line(from, to), type));
    }
  }
}
