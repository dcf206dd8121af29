package felloe.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Mark;
import felloe.geometry.Arc;
import felloe.geometry.ArcMerge;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.BoltCircle;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Each figure is the plate's to its last digit: lengths and angles are measured again between the
 * tips of the drawn arrowheads, sizes and radii are those of the hole, circle or arc that the arrow
 * touches, and so many of them as are told are on the plate.
 */
final class Figures {

  private static final Pattern FIGURE =
      Pattern.compile("(?:(\\d+) \u00d7 )?([\u00d8R]?)([0-9.]+)(\u00b0?)");

  /** An arrowhead touches what is nearer to its tip, mm on the sheet. */
  private static final double TOUCHES = 0.01;

  /** Half of the last digit that figures tell, with what arithmetic leaves over. */
  private static final double LAST = 0.005 + 1e-9;

  private final Plate plate;
  private final Draughtsman.Result drawn;
  private final double factor;
  private final List<Segment> lines = new ArrayList<>();
  private final Point origin;
  private final String what;

  Figures(Plate plate, double width, double height) {
    this.plate = plate;
    this.drawn = PlateDrawing.drawn(plate, width, height);
    this.factor = drawn.drawing().scale().factor();
    this.what = plate.name() + " ";
    // Where the sheet's lines are: the outline's lower left gives the shift.
    List<Mark> outline = layer("outline");
    double left =
        outline.stream()
            .mapToDouble(m -> ((Mark.Stroke) m).segments().get(0).box().minX())
            .min()
            .orElseThrow();
    double low =
        outline.stream()
            .mapToDouble(m -> ((Mark.Stroke) m).segments().get(0).box().minY())
            .min()
            .orElseThrow();
    this.origin = new Point(left - factor * plate.box().minX(), low - factor * plate.box().minY());
    for (String name : List.of("outline", "windows", "holes", "centre-lines", "edge-view")) {
      layer(name).forEach(mark -> lines.addAll(((Mark.Stroke) mark).segments()));
    }
  }

  private List<Mark> layer(String name) {
    return drawn.drawing().picture().drawing().layers().stream()
        .filter(layer -> layer.name().equals(name))
        .flatMap(layer -> layer.marks().stream())
        .toList();
  }

  private Point onPlate(Point p) {
    return p.minus(origin).times(1 / factor);
  }

  /** Checks every figure; returns how many there are. */
  int check() {
    int figures = 0;
    for (Piece piece : drawn.pieces()) {
      String text = piece.texts().get(0).text();
      if (piece.arrows().isEmpty()) {
        assertLabel(piece);
        continue;
      }
      figures++;
      piece.arrows().forEach(arrow -> assertTouches(arrow.tip(), piece));
      Matcher figure = FIGURE.matcher(text);
      if (text.contains("slot ")) {
        assertHole(piece, text);
      } else {
        assertTrue(figure.matches(), what + text);
        if (piece.arrows().size() == 2) {
          assertMeasured(piece, figure);
        } else if (figure.group(2).equals("R")) {
          assertRadius(piece, figure);
        } else {
          assertHole(piece, text);
        }
      }
    }
    return figures;
  }

  /** Dimension lines end on their extension line, an edge or an axis; leaders on an edge. */
  private void assertTouches(Point tip, Piece piece) {
    boolean own =
        piece.lines().stream()
            .anyMatch(l -> l.ink() == Ink.EXTENSION && l.segment().distance(tip) < TOUCHES);
    boolean part = lines.stream().anyMatch(line -> line.distance(tip) < TOUCHES);
    assertTrue(own || part, what + piece.texts().get(0).text() + " at " + tip);
  }

  private void assertMeasured(Piece piece, Matcher figure) {
    Point a = piece.arrows().get(0).tip();
    Point b = piece.arrows().get(1).tip();
    double measured = a.distance(b) / factor;
    if (!figure.group(4).isEmpty()) {
      Point u = a.minus(origin);
      Point v = b.minus(origin);
      measured = Math.toDegrees(Math.abs(Math.atan2(u.cross(v), u.dot(v))));
    }
    assertEquals(Double.parseDouble(figure.group(3)), measured, LAST, what + figure.group());
  }

  private void assertRadius(Piece piece, Matcher figure) {
    Point tip = piece.arrows().get(0).tip();
    List<Arc> outline = arcs(plate.outline().segments());
    List<Arc> windows = new ArrayList<>();
    Set<String> tabled = new HashSet<>();
    drawn.drawing().edges().forEach(edge -> tabled.add(edge.label()));
    plate.windows().stream()
        .filter(w -> w.asHole().isEmpty())
        .forEach(w -> windows.addAll(arcs(w.contour().segments())));
    int count = figure.group(1) == null ? 1 : Integer.parseInt(figure.group(1));
    boolean found = false;
    for (List<Arc> some : List.of(outline, windows)) {
      List<Arc> alike =
          some.stream()
              .filter(arc -> Numbers.brief(arc.radius(), 2).equals(figure.group(3)))
              .toList();
      boolean touched =
          alike.stream().anyMatch(arc -> arc.distance(onPlate(tip)) < TOUCHES / factor);
      // Windows that are free are not counted: their radii stand in their table.
      found |= touched && (some == windows ? count <= alike.size() : count == alike.size());
    }
    assertTrue(found, what + figure.group());
  }

  private static List<Arc> arcs(List<Segment> chain) {
    return ArcMerge.closed(chain).stream()
        .filter(Arc.class::isInstance)
        .map(Arc.class::cast)
        .toList();
  }

  private void assertHole(Piece piece, String text) {
    Point tip = onPlate(piece.arrows().get(0).tip());
    String size = text.replaceFirst("^\\d+ \u00d7 ", "");
    int count = text.equals(size) ? 1 : Integer.parseInt(text.substring(0, text.indexOf(' ')));
    for (BoltCircle ring : plate.boltCircles()) {
      if (Math.abs(tip.norm() - ring.pitchDiameter() / 2) < TOUCHES / factor
          && size.equals("\u00d8" + Numbers.brief(ring.pitchDiameter(), 2))) {
        return;
      }
    }
    List<Hole> alike =
        plate.benchHoles(1e9).stream().filter(hole -> hole.size().equals(size)).toList();
    assertTrue(
        alike.stream().anyMatch(h -> h.contour().distance(tip) < TOUCHES / factor), what + text);
    long onRings =
        alike.stream()
            .filter(
                h ->
                    plate.boltCircles().stream()
                        .flatMap(ring -> ring.centres().stream())
                        .anyMatch(c -> c.near(h.centre(), 1e-6)))
            .count();
    boolean ring = piece.texts().size() == 2 || alike.size() == onRings;
    if (ring) {
      assertTrue(
          plate.boltCircles().stream().anyMatch(r -> r.count() == count) || count == alike.size(),
          what + text);
    } else {
      assertTrue(count == alike.size() || count == alike.size() - onRings, what + text);
    }
    if (piece.texts().size() == 2) {
      String apart = Numbers.brief(360.0 / count, 2);
      assertEquals(count + " \u00d7 " + apart + "\u00b0", piece.texts().get(1).text());
    }
  }

  private void assertLabel(Piece piece) {
    String label = piece.texts().get(0).text();
    boolean known =
        plate.holes().stream().anyMatch(hole -> hole.label().equals(label))
            || plate.windows().stream().map(Window::label).anyMatch(label::equals);
    assertTrue(known, what + label);
  }

  /** A label without a line stands nearest to its own hole. */
  void assertLabelsNearTheirHoles() {
    List<Hole> holes = plate.benchHoles(1e9);
    for (Piece piece : drawn.pieces()) {
      if (piece.arrows().isEmpty() && piece.lines().isEmpty()) {
        Mark.Label label = piece.texts().get(0);
        Point middle = onPlate(label.at().plus(new Point(0, label.height() / 2)));
        holes.stream()
            .filter(hole -> hole.label().equals(label.text()))
            .forEach(
                own -> {
                  double near = own.contour().distance(middle);
                  for (Hole other : holes) {
                    assertTrue(
                        other.contour().distance(middle) >= near - 1e-9, what + label.text());
                  }
                });
      }
    }
  }
}
