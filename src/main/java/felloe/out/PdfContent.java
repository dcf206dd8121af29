package felloe.out;

import felloe.drawing.Anchor;
import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.TextWidth;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.solid.Shaded;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The content of one page as operators of ISO 32000. */
final class PdfContent {

  /** Decimals of a coordinate in millimetres. */
  static final int DECIMALS = 5;

  private static final double PIECE = Math.PI / 4;

  private static final String IMAGE = "/Im";

  private final PdfText text;
  private final List<Shaded> images = new ArrayList<>();
  private final StringBuilder out = new StringBuilder(1 << 14);
  private Point shift = Point.ORIGIN;

  PdfContent(PdfText text) {
    this.text = text;
  }

  byte[] page(Page page) throws IOException {
    double unit = 72 / 25.4;
    Correction c = page.correction();
    Point middle = page.centre();
    out.append("q\n");
    factor(unit * c.x());
    out.append("0 0 ");
    factor(unit * c.y());
    factor(unit * (1 - c.x()) * middle.x());
    factor(unit * (1 - c.y()) * middle.y());
    out.append("cm\n1 J 1 j\n");
    for (Page.Placed part : page.parts()) {
      out.append("q\n");
      if (part.clip().isPresent()) {
        Box clip = part.clip().get();
        shift = Point.ORIGIN;
        number(clip.minX());
        number(clip.minY());
        number(clip.width());
        number(clip.height());
        out.append("re W n\n");
      }
      shift = part.shift();
      draw(part.drawing());
      out.append("Q\n");
    }
    out.append("Q\n");
    return out.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private void draw(Drawing drawing) throws IOException {
    LineType last = null;
    for (Mark mark : drawing.marks()) {
      if (mark instanceof Mark.Stroke stroke) {
        if (stroke.type() != last) {
          last = stroke.type();
          type(last);
        }
        chain(stroke.segments(), stroke.closed());
        out.append("S\n");
      } else if (mark instanceof Mark.Fill fill) {
        number(1 - fill.ink());
        out.append("g\n");
        for (Contour contour : fill.contours()) {
          chain(contour.segments(), true);
        }
        out.append("f*\n0 g\n");
      } else if (mark instanceof Mark.Tone tone) {
        tone(tone);
      } else if (mark instanceof Mark.Shade shade) {
        dots(shade);
      } else if (mark instanceof Mark.Label label) {
        label(label);
        if (label.hollow()) {
          last = null;
        }
      }
    }
  }

  /** What is drawn in dots, in the order of the names {@code Im1}, {@code Im2} and so on. */
  List<Shaded> images() {
    return images;
  }

  private void dots(Mark.Shade shade) {
    images.add(shade.shaded());
    Box box = shade.box();
    out.append("q ");
    number(box.width());
    out.append("0 0 ");
    number(box.height());
    point(new Point(box.minX(), box.minY()));
    out.append("cm ").append(IMAGE).append(images.size()).append(" Do Q\n");
  }

  private void tone(Mark.Tone tone) {
    ToneColour colour = ToneColour.of(tone.tone());
    number(colour.red() / 255.0);
    number(colour.green() / 255.0);
    number(colour.blue() / 255.0);
    out.append("rg\n");
    tone.rings().forEach(ring -> chain(ring, true));
    out.append("f*\n0 g\n");
  }

  private void type(LineType type) {
    number(type.width());
    out.append("w [");
    for (double dash : type.dashes()) {
      number(dash);
    }
    // Round caps fill the gaps of short dashes, so dashed lines get square ends.
    out.append(type.dashes().length > 0 ? "] 0 d 0 J\n" : "] 0 d 1 J\n");
  }

  private void chain(List<Segment> segments, boolean closed) {
    point(segments.get(0).from());
    out.append("m\n");
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      if (segment instanceof Arc arc) {
        curves(arc);
      } else if (!closed || i + 1 < segments.size()) {
        point(segment.to());
        out.append("l\n");
      }
    }
    if (closed) {
      out.append("h\n");
    }
  }

  /** Cubic pieces that meet the arc at their ends and middles. */
  private void curves(Arc arc) {
    int n = (int) Tolerances.up(Math.abs(arc.sweep()) / PIECE);
    double reach = 4.0 / 3 * Math.tan(arc.sweep() / n / 4) * arc.radius();
    for (int i = 0; i < n; i++) {
      Point a = arc.at((double) i / n);
      Point b = arc.at((double) (i + 1) / n);
      point(a.plus(a.minus(arc.centre()).left(), reach / arc.radius()));
      point(b.plus(b.minus(arc.centre()).left(), -reach / arc.radius()));
      point(b);
      out.append("c\n");
    }
  }

  private void label(Mark.Label label) throws IOException {
    double size = TextWidth.fontSize(label.height());
    double width = text.width(label.text()) * size;
    double back =
        label.anchor() == Anchor.START ? 0 : label.anchor() == Anchor.MIDDLE ? width / 2 : width;
    double cos = Math.cos(label.turn());
    double sin = Math.sin(label.turn());
    Point start = label.at().plus(new Point(cos, sin), -back);
    if (label.hollow()) {
      number(Mark.Label.HOLLOW_LINE);
      out.append("w [] 0 d 1 J\n");
    }
    out.append("BT /F1 ");
    number(size);
    out.append(label.hollow() ? "Tf 1 Tr " : "Tf ");
    number(cos);
    number(sin);
    number(-sin);
    number(cos);
    point(start);
    out.append("Tm ")
        .append(text.hex(label.text()))
        .append(label.hollow() ? " Tj 0 Tr ET\n" : " Tj ET\n");
  }

  private void point(Point p) {
    number(p.x() + shift.x());
    number(p.y() + shift.y());
  }

  private void number(double value) {
    out.append(Numbers.brief(value, DECIMALS)).append(' ');
  }

  private void factor(double value) {
    out.append(Numbers.brief(value, 9)).append(' ');
  }
}
