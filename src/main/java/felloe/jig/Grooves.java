package felloe.jig;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.shape.Letters;
import felloe.solid.PlanLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Letters as shallow grooves in a printed face.
 *
 * @param text what they say; empty where there was no room
 * @param lines the edges of the grooves in plan
 */
record Grooves(String text, List<PlanLine> lines) {

  static final Grooves NONE = new Grooves("", List.of());

  /** Depth of a groove, mm: three layers of a usual print; common practice. */
  static final double DEPTH = 0.6;

  private static final double HIGHEST = 7;
  private static final double LOWEST = 3;

  /** Material between letters and any edge, mm. */
  private static final double CLEAR = 1.5;

  private static final double CHORD = 0.05;
  private static final int STEPS = 60;
  private static final int ROUND = 8;

  boolean at(Point p) {
    return lines.stream().anyMatch(line -> line.surrounds(p));
  }

  /**
   * A text where a part has most room for it.
   *
   * @param nozzle width of the printer's nozzle, mm: no groove is narrower than two
   */
  static Grooves in(Region region, String text, Letters letters, double nozzle) {
    Optional<Letters.Form> form = letters.text(text);
    if (form.isEmpty()) {
      return NONE;
    }
    double half = Math.hypot(form.get().width(), 1) / 2;
    Point best = region.outer().box().centre();
    double room = 0;
    Box box = region.outer().box();
    double step = Math.max(box.width(), box.height()) / STEPS;
    for (double y = box.minY() + step / 2; y < box.maxY(); y += step) {
      for (double x = box.minX() + step / 2; x < box.maxX(); x += step) {
        Point p = new Point(x, y);
        double clear = Double.MAX_VALUE;
        for (Contour contour : region.contours()) {
          clear = Math.min(clear, contour.distance(p));
          if (clear <= room) {
            break;
          }
        }
        if (clear > room && region.contains(p)) {
          room = clear;
          best = p;
        }
      }
    }
    double height = Math.min(HIGHEST, (room - CLEAR - nozzle) / half);
    return height < LOWEST ? NONE : at(form.get(), text, best, height, letters, nozzle);
  }

  private static Grooves at(
      Letters.Form form, String text, Point middle, double height, Letters letters, double nozzle) {
    double half = Math.max(letters.lineWidth() * height, 2 * nozzle) / 2;
    RigidTransform shift =
        RigidTransform.shift(middle.x() - form.width() * height / 2, middle.y() - height / 2);
    List<PlanLine> lines = new ArrayList<>();
    for (List<Segment> stroke : form.strokes()) {
      List<Segment> placed = Letters.moved(Letters.scaled(stroke, height), shift);
      Point from = placed.get(0).from();
      lines.add(dot(from, half));
      for (Segment segment : placed) {
        for (Point to : segment.chords(CHORD)) {
          Point side = to.minus(from).unit().left().times(half);
          lines.add(
              PlanLine.closed(
                  List.of(from.minus(side), to.minus(side), to.plus(side), from.plus(side))));
          lines.add(dot(to, half));
          from = to;
        }
      }
    }
    return new Grooves(text, lines);
  }

  private static PlanLine dot(Point at, double radius) {
    List<Point> round = new ArrayList<>();
    for (int i = 0; i < ROUND; i++) {
      round.add(at.plus(Point.polar(radius, 2 * Math.PI * (i + 0.5) / ROUND)));
    }
    return PlanLine.closed(round);
  }
}
