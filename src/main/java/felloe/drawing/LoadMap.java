package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
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
public final class LoadMap {

  static final double TEXT = 3.2;
  static final double SMALL = 2.3;
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
  private final MapLegend legend;
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
    this.legend = new MapLegend(map, limits, plate, unit);
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

  /**
   * Draws all maps at one size and place, so that letters have a height when each is made to fit on
   * a field of a size.
   */
  public static List<Picture> fitted(LoadView view, Box field, double height) {
    double unit = 1;
    for (int i = 0; i < 5; i++) {
      Box page = page(view, unit);
      double scale =
          Math.min(1, Math.min(field.width() / page.width(), field.height() / page.height()));
      unit = height / TEXT / scale;
    }
    double last = unit;
    Box page = page(view, unit);
    return view.maps().stream()
        .map(map -> new Picture(of(view, map, last).drawing(), page, last))
        .toList();
  }

  /** What is seen of all maps, one upon the other. */
  private static Box page(LoadView view, double unit) {
    return view.maps().stream()
        .map(map -> new LoadMap(view, map, unit).page())
        .reduce(Box::union)
        .orElseThrow();
  }

  private Picture draw() {
    List<Mark> bands = new ArrayList<>();
    List<Isobands.Area> areas = new ArrayList<>();
    bands.add(Mark.Tone.of(view.region().contours(), legend.tone(0)));
    Isobands cut = new Isobands(map.field());
    ThinnedChain thinned = new ThinnedChain(THIN * unit);
    for (int i = 0; i < limits.limits().size(); i++) {
      Isobands.Area area = cut.above(limits.limits().get(i));
      areas.add(area);
      List<List<Segment>> rings =
          area.rings().stream().map(r -> thinned.of(r, true)).filter(r -> r.size() > 2).toList();
      if (!rings.isEmpty()) {
        bands.add(new Mark.Tone(rings, legend.tone(i + 1)));
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
    layer("heading", List.of(heading()));
    layer("legend", legend.marks());
    return new Picture(new Drawing(layers), page(), unit);
  }

  private Mark heading() {
    double top = Math.max(plate.maxY() + 12 * unit, legend.box().maxY() + 3 * unit);
    Point at = new Point(plate.minX() - 14 * unit, top);
    return Mark.Label.of(map.title(), at, 1.1 * TEXT * unit, Anchor.START);
  }

  /** What is seen of it, known before anything is drawn. */
  private Box page() {
    Box heading = heading().box();
    Box most =
        new Box(
            plate.minX() - 20 * unit,
            plate.minY() - 11 * unit,
            plate.maxX() + 20 * unit,
            heading.maxY() + 2 * unit);
    return most.union(heading).union(legend.box()).grown(0.5 * unit);
  }

  /** Where lettering may stand: beside the plate, and a little above and below it. */
  private Box lettered() {
    return new Box(
        plate.minX() - 19 * unit,
        plate.minY() - 10 * unit,
        plate.maxX() + 19 * unit,
        plate.maxY() + 10 * unit);
  }

  private void layer(String name, List<Mark> marks) {
    if (!marks.isEmpty()) {
      layers.add(new Drawing.Layer(name, marks));
    }
  }

  private void isoline(Isobands.Isoline line, ThinnedChain thinned, LineType type) {
    List<Segment> chain = thinned.of(line.points(), line.closed());
    if (!chain.isEmpty()) {
      lines.add(new Mark.Stroke(chain, line.closed() && chain.size() > 2, type));
    }
  }

  /** The line beyond which the material fails is thick. */
  private void failing(Isobands cut, ThinnedChain thinned) {
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

  private static void line(List<Mark> marks, Point from, Point to, LineType type) {
    if (!from.near(to, Tolerances.SAME_POINT)) {
      marks.add(Mark.Stroke.of(new Line(from, to), type));
    }
  }
}
