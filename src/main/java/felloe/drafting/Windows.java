package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Windows told by dimensions: upright boxes and slots by width, height, corner radius and place,
 * windows between rim, spokes and hub disc by radii, spokes and straight sides. Any other is free,
 * and its edge is a table.
 */
final class Windows {

  /** More kinds of boxes than this crowd the drawing. */
  private static final int MOST_BOXES = 4;

  /** What it costs to measure to the side that is farther from the axis, mm of leader. */
  private static final double FARTHER = 8;

  private final Board board;
  private final Views views;
  private final Places places;
  private final List<Spoke> spokes;
  private final Map<Window, Form> forms = new LinkedHashMap<>();
  private final Map<Window, Box> boxes = new LinkedHashMap<>();
  private final Set<Window> untold = new HashSet<>();

  Windows(Board board) {
    this.board = board;
    this.views = board.views();
    this.places = new Places(board);
    this.spokes = views.spokes();
    for (Window window : views.plate().windows()) {
      if (window.asHole().isEmpty()) {
        forms.put(window, Form.of(window.contour()));
      }
    }
    forms.forEach((window, form) -> form.asBox().ifPresent(box -> boxes.put(window, box)));
  }

  /** Draws lengths and directions, which have the least choice of places. */
  void lengths() {
    forms.forEach(
        (window, form) -> {
          if (!boxes.containsKey(window) && !isAboutHub(window, form)) {
            untold.add(window);
          }
        });
    new Spokes(board).draw(spokes, untold);
    sizes();
    sides();
  }

  /**
   * Whether every line of a window is the side of a spoke, level or upright, its arcs no others.
   */
  private boolean isAboutHub(Window window, Form form) {
    for (int i = 0; i < form.chain().size(); i++) {
      if (form.kinds().get(i) == Form.Kind.FREE
          || form.kinds().get(i) == Form.Kind.SLANTED && !isSpoke(window, i)) {
        return false;
      }
    }
    return true;
  }

  private boolean isSpoke(Window window, int index) {
    return spokes.stream()
        .anyMatch(s -> is(s.left(), window, index) || is(s.right(), window, index));
  }

  private static boolean is(Spoke.Side side, Window window, int index) {
    return side.window().equals(window) && side.index() == index;
  }

  /** Draws the radii; returns the windows that the drawing does not tell in full. */
  Set<Window> radii() {
    List<Arc> arcs = new ArrayList<>();
    forms.forEach(
        (window, form) -> {
          if (!untold.contains(window)) {
            arcs.addAll(form.arcs());
          }
        });
    Set<String> left = new Radii(board).draw(arcs);
    forms.forEach(
        (window, form) -> {
          if (form.arcs().stream().map(Radii::figure).anyMatch(left::contains)) {
            untold.add(window);
          }
        });
    return untold;
  }

  /** Width and height of boxes, each size once, and where they are. */
  private void sizes() {
    Map<String, List<Window>> kinds = new LinkedHashMap<>();
    boxes.forEach(
        (window, box) ->
            kinds
                .computeIfAbsent(
                    Board.figure(box.width()) + "x" + Board.figure(box.height()),
                    k -> new ArrayList<>())
                .add(window));
    kinds.values().forEach(alike -> size(alike, kinds.size()));
    boxes.forEach(
        (window, box) -> {
          if (!untold.contains(window) && !hasTwin(window)) {
            place(window, box);
          }
        });
  }

  private void size(List<Window> alike, int kinds) {
    List<Option> width = new ArrayList<>();
    List<Option> height = new ArrayList<>();
    String times = Board.times(alike.size());
    for (Window window : alike) {
      List<Line> sides = sides(forms.get(window));
      width.addAll(between(Places.RIGHT, sides, boxes.get(window), times));
      height.addAll(between(Places.UP, sides, boxes.get(window), times));
    }
    if (kinds > MOST_BOXES || !board.place(width) || !board.place(height)) {
      untold.addAll(alike);
    }
  }

  private static List<Line> sides(Form form) {
    return form.chain().stream().filter(Line.class::isInstance).map(Line.class::cast).toList();
  }

  private List<Option> between(Point along, List<Line> sides, Box box, String times) {
    Line low = side(along, sides, box, false);
    Line high = side(along, sides, box, true);
    return places.between(along, low, high, times);
  }

  /** The side of a box that is crossed by a direction; where it is all round, its tip. */
  private static Line side(Point along, List<Line> sides, Box box, boolean high) {
    Point corner = high ? new Point(box.maxX(), box.maxY()) : new Point(box.minX(), box.minY());
    for (Line line : sides) {
      boolean across = Math.abs(line.direction().dot(along)) < Tolerances.SAME_POINT;
      if (across && Math.abs(line.from().minus(corner).dot(along)) < Tolerances.SAME_LENGTH) {
        return line;
      }
    }
    Point middle = box.centre();
    Point tip =
        along.equals(Places.RIGHT)
            ? new Point(corner.x(), middle.y())
            : new Point(middle.x(), corner.y());
    Point hair = along.left().times(10 * Tolerances.SAME_POINT);
    return new Line(tip.minus(hair), tip.plus(hair));
  }

  /** Whether a window is told with its mirror image to the right, or below. */
  private boolean hasTwin(Window window) {
    Box box = boxes.get(window);
    return boxes.entrySet().stream()
        .anyMatch(e -> isTwin(e.getValue(), box) && box.centre().x() < 0);
  }

  /** Whether one box is the mirror image of the other, about the upright axis. */
  private static boolean isTwin(Box a, Box b) {
    return Math.abs(a.minX() + b.maxX()) < Tolerances.SAME_LENGTH
        && Math.abs(a.maxX() + b.minX()) < Tolerances.SAME_LENGTH
        && Math.abs(a.minY() - b.minY()) < Tolerances.SAME_LENGTH
        && Math.abs(a.maxY() - b.maxY()) < Tolerances.SAME_LENGTH;
  }

  private void place(Window window, Box box) {
    List<Line> sides = sides(forms.get(window));
    boolean twin = boxes.values().stream().anyMatch(b -> b != box && isTwin(b, box));
    String times = Board.times(twin ? 2 : 1);
    if (!place(Places.RIGHT, sides, box, times) || !place(Places.UP, sides, box, times)) {
      untold.add(window);
      boxes.forEach(
          (other, b) -> {
            if (isTwin(b, box)) {
              untold.add(other);
            }
          });
    }
  }

  /** From the axis to the nearer side, unless the axis is in the middle. */
  private boolean place(Point along, List<Line> sides, Box box, String times) {
    double low = along.equals(Places.RIGHT) ? box.minX() : box.minY();
    double high = along.equals(Places.RIGHT) ? box.maxX() : box.maxY();
    if (Math.abs(low + high) < Tolerances.SAME_LENGTH) {
      return true;
    }
    List<Option> options = new ArrayList<>();
    for (boolean upper : new boolean[] {false, true}) {
      if (Math.abs(upper ? high : low) > Tolerances.SAME_LENGTH) {
        Line side = side(along, sides, box, upper);
        options.addAll(places.fromAxis(along, side.from(), side.to(), DimensionStyle.GAP, times));
      }
    }
    return board.place(options);
  }

  /** Level and upright sides of windows about the hub that no spoke has. */
  private void sides() {
    Map<String, List<Line>> alike = new LinkedHashMap<>();
    Map<String, Set<Window>> owners = new LinkedHashMap<>();
    forms.forEach(
        (window, form) -> {
          for (int i = 0; i < form.chain().size(); i++) {
            Segment side = form.chain().get(i);
            Form.Kind kind = form.kinds().get(i);
            boolean straight = kind == Form.Kind.LEVEL || kind == Form.Kind.UPRIGHT;
            if (straight
                && !boxes.containsKey(window)
                && !untold.contains(window)
                && !isSpoke(window, i)) {
              Point along = kind == Form.Kind.LEVEL ? Places.UP : Places.RIGHT;
              String key = kind + Board.figure(Math.abs(side.from().dot(along)));
              alike.computeIfAbsent(key, k -> new ArrayList<>()).add((Line) side);
              owners.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(window);
            }
          }
        });
    alike.forEach(
        (key, lines) -> {
          if (!side(lines)) {
            untold.addAll(owners.get(key));
          }
        });
  }

  private boolean side(List<Line> lines) {
    List<Option> options = new ArrayList<>();
    for (Line line : lines) {
      boolean level = Math.abs(line.direction().y()) < Math.abs(line.direction().x());
      Point along = level ? Places.UP : Places.RIGHT;
      if (Math.abs(line.from().dot(along)) < Tolerances.SAME_LENGTH) {
        return true;
      }
      options.addAll(
          places.fromAxis(
              along, line.from(), line.to(), DimensionStyle.GAP, Board.times(lines.size())));
    }
    return board.place(options);
  }
}
