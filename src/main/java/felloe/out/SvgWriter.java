package felloe.out;

import felloe.drawing.Anchor;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.drawing.TextWidth;
import felloe.geometry.Numbers;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.dom.util.DOMUtilities;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A drawing as a true-scale SVG file.
 *
 * <p>One user unit is one millimetre; {@code width} and {@code height} are the same figures in mm.
 * The origin of the drawing (the hub axis, for a plate) is the origin of the file's coordinates;
 * only y changes sign, since SVG's y runs down. Each layer is a group with the layer's name as its
 * id. Arcs are arcs, whole circles are circles, labels are text. Widths and dashes are millimetres.
 *
 * <p>The edge of a window or a hole has its kind as its class and its label as its title, so that
 * the program knows it again.
 *
 * <p>Accuracy: coordinates are rounded to 1e-7 mm; no point of a contour is off by more than 1e-6
 * mm. The same drawing gives the same bytes on every machine. Characters that XML forbids are
 * dropped from labels.
 */
public final class SvgWriter {

  private static final String FAMILY =
      "'DejaVu Sans Condensed', 'Arial Narrow', 'DejaVu Sans', sans-serif";

  private SvgWriter() {}

  /** The file's bytes, UTF-8; the page is the size of the picture, mm. */
  public static byte[] write(Picture picture, About about) {
    Document document =
        SvgDocument.of(
            GenericDOMImplementation.getDOMImplementation(),
            picture.drawing(),
            picture.page(),
            picture.pen(),
            about,
            SvgWriter::text);
    StringWriter text = new StringWriter();
    text.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    try {
      DOMUtilities.writeDocument(document, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    text.write('\n');
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A label as text; its length is stated, so that it keeps its room in whatever font is there. */
  private static Element text(Document document, Mark.Label label) {
    Element element = document.createElementNS(SvgDocument.NAMESPACE, "text");
    String x = SvgPath.number(label.at().x());
    String y = SvgPath.number(-label.at().y());
    element.setAttribute("x", x);
    element.setAttribute("y", y);
    element.setAttribute("font-family", FAMILY);
    element.setAttribute("font-size", SvgPath.number(TextWidth.fontSize(label.height())));
    element.setAttribute("fill", "#000000");
    element.setAttribute("stroke", "none");
    double width = TextWidth.of(label.text(), label.height());
    if (width > 0) {
      element.setAttribute("textLength", SvgPath.number(width));
      element.setAttribute("lengthAdjust", "spacingAndGlyphs");
    }
    if (label.anchor() != Anchor.START) {
      element.setAttribute("text-anchor", label.anchor() == Anchor.MIDDLE ? "middle" : "end");
    }
    if (label.turn() != 0) {
      String degrees = Numbers.brief(-Math.toDegrees(label.turn()), 4);
      element.setAttribute("transform", "rotate(" + degrees + " " + x + " " + y + ")");
    }
    SvgDocument.addCharacters(element, label.text());
    return element;
  }
}
