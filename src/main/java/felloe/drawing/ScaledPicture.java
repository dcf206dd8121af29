package felloe.drawing;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Drawings at another scale and place, so that they fit on a page. Line widths stay as they are;
 * lettering shrinks with the rest.
 *
 * @param scale length on the page to length in the drawing
 * @param shift where the drawing's origin goes on the page
 */
public record ScaledPicture(double scale, Point shift) {

  /** Refuses a scale that is not above zero. */
  public ScaledPicture {
    Numbers.positive("scale", scale);
  }

  /** A picture in the upper middle of a field, as large as the field allows, at most full size. */
  public static Drawing in(Picture picture, Box field) {
    Box page = picture.page();
    double scale =
        Math.min(1, Math.min(field.width() / page.width(), field.height() / page.height()));
    Point shift =
        new Point(
            field.centre().x() - scale * page.centre().x(), field.maxY() - scale * page.maxY());
    return new ScaledPicture(scale, shift).of(picture.drawing());
  }

  /** A drawing moved, at its size. */
  public static Drawing moved(Drawing drawing, Point shift) {
    return new ScaledPicture(1, shift).of(drawing);
  }

  private Drawing of(Drawing drawing) {
    List<Drawing.Layer> layers = new ArrayList<>();
    for (Drawing.Layer layer : drawing.layers()) {
      layers.add(new Drawing.Layer(layer.name(), layer.marks().stream().map(this::mark).toList()));
    }
    return new Drawing(layers);
  }

  private Mark mark(Mark mark) {
    if (mark instanceof Mark.Stroke stroke) {
      List<Segment> segments = stroke.segments().stream().map(this::segment).toList();
      return new Mark.Stroke(segments, stroke.closed(), stroke.type());
    }
    if (mark instanceof Mark.Fill fill) {
      return new Mark.Fill(fill.contours().stream().map(this::contour).toList(), fill.ink());
    }
    if (mark instanceof Mark.Tone tone) {
      return new Mark.Tone(
          tone.rings().stream().map(ring -> ring.stream().map(this::segment).toList()).toList(),
          tone.tone());
    }
    if (mark instanceof Mark.Shade shade) {
      Box box = shade.box();
      Point low = point(new Point(box.minX(), box.minY()));
      return new Mark.Shade(shade.shaded(), Box.of(low, point(new Point(box.maxX(), box.maxY()))));
    }
    Mark.Label label = (Mark.Label) mark;
    return new Mark.Label(
        label.text(),
        point(label.at()),
        scale * label.height(),
        label.turn(),
        label.anchor(),
        label.hollow());
  }

  /** A contour on the page. */
  public Contour contour(Contour contour) {
    return new Contour(contour.segments().stream().map(this::segment).toList());
  }

  /** A line or an arc on the page. */
  public Segment segment(Segment segment) {
    Point from = point(segment.from());
    Point to = point(segment.to());
    if (segment instanceof Arc arc) {
      return new Arc(from, to, point(arc.centre()), scale * arc.radius(), arc.sweep());
    }
    return new Line(from, to);
  }

  /** A point on the page. */
  public Point point(Point p) {
    return p.times(scale).plus(shift);
  }
}
