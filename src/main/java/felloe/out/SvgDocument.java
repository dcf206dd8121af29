package felloe.out;

import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.TextWidth;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import java.util.Base64;
import java.util.HashSet;
import java.util.Set;
import javax.xml.XMLConstants;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Builds the tree of an SVG document from a drawing. The caller chooses how labels are set. */
final class SvgDocument {

  static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  /** How a label becomes an element. */
  interface Lettering {
    /**
     * Fills an element's content in.
     *
     * @param document to make elements with
     * @param label whose text is already what {@link TextWidth#shown} leaves
     */
    Element element(Document document, Mark.Label label);
  }

  private final Document document;
  private final Lettering lettering;
  private final double pen;
  private final Set<String> ids = new HashSet<>();

  private SvgDocument(Document document, Lettering lettering, double pen) {
    this.document = document;
    this.lettering = lettering;
    this.pen = pen;
  }

  /**
   * The tree of a drawing.
   *
   * @param dom makes the document
   * @param page what is seen of the drawing, mm
   * @param pen factor on the widths and dashes of lines
   */
  static Document of(
      DOMImplementation dom,
      Drawing drawing,
      Box page,
      double pen,
      About about,
      Lettering lettering) {
    Document document = dom.createDocument(NAMESPACE, "svg", null);
    // Lets a character reference stand where a name would be wanted: see addCharacters.
    document.setStrictErrorChecking(false);
    new SvgDocument(document, lettering, pen).fill(drawing, page, about);
    return document;
  }

  private void fill(Drawing drawing, Box page, About about) {
    Element root = document.getDocumentElement();
    // Without it the serialiser invents a prefix, which simple readers trip over.
    root.setAttributeNS(XMLConstants.XMLNS_ATTRIBUTE_NS_URI, "xmlns", NAMESPACE);
    String width = SvgPath.number(page.width());
    String height = SvgPath.number(page.height());
    root.setAttribute("width", width + "mm");
    root.setAttribute("height", height + "mm");
    String left = SvgPath.number(page.minX());
    String top = SvgPath.number(-page.maxY());
    root.setAttribute("viewBox", left + " " + top + " " + width + " " + height);
    root.setAttribute("version", "1.1");
    // Else Java's renderer moves every joint to the middle of a pixel and dents smooth chains.
    root.setAttribute("shape-rendering", "geometricPrecision");
    addText(root, "title", about.title());
    addText(root, "desc", about.description());
    for (Drawing.Layer layer : drawing.layers()) {
      newLine(root);
      root.appendChild(group(layer));
    }
    newLine(root);
  }

  private void addText(Element parent, String name, String text) {
    newLine(parent);
    Element element = element(name);
    addCharacters(element, TextWidth.shown(text));
    parent.appendChild(element);
  }

  /**
   * Adds text to an element. Batik's serialiser refuses characters beyond U+FFFF, so each of those
   * goes in as a numeric character reference.
   */
  static void addCharacters(Element element, String text) {
    Document document = element.getOwnerDocument();
    StringBuilder run = new StringBuilder();
    for (int c : text.codePoints().toArray()) {
      if (Character.isBmpCodePoint(c)) {
        run.appendCodePoint(c);
        continue;
      }
      element.appendChild(document.createTextNode(run.toString()));
      run.setLength(0);
      element.appendChild(document.createEntityReference("#x" + Integer.toHexString(c)));
    }
    element.appendChild(document.createTextNode(run.toString()));
  }

  private Element group(Drawing.Layer layer) {
    Element group = element("g");
    group.setAttribute("id", freshId(layer.name()));
    group.setAttribute("fill", "none");
    group.setAttribute("stroke", "#000000");
    group.setAttribute("stroke-linejoin", "round");
    for (Mark mark : layer.marks()) {
      newLine(group);
      group.appendChild(element(mark));
    }
    newLine(group);
    return group;
  }

  private String freshId(String name) {
    String id = name;
    for (int i = 2; !ids.add(id); i++) {
      id = name + "-" + i;
    }
    return id;
  }

  private Element element(Mark mark) {
    if (mark instanceof Mark.Stroke stroke) {
      return stroke(stroke);
    }
    if (mark instanceof Mark.Fill fill) {
      return area(SvgPath.of(fill.contours()), grey(fill.ink()));
    }
    if (mark instanceof Mark.Tone tone) {
      return area(SvgPath.ofRings(tone.rings()), ToneColour.of(tone.tone()).hex());
    }
    if (mark instanceof Mark.Shade shade) {
      return dots(shade);
    }
    Mark.Label label = (Mark.Label) mark;
    Element element =
        lettering.element(
            document,
            new Mark.Label(
                TextWidth.shown(label.text()),
                label.at(),
                label.height(),
                label.turn(),
                label.anchor()));
    if (label.hollow()) {
      element.setAttribute("fill", "none");
      element.setAttribute("stroke", "#000000");
      element.setAttribute("stroke-width", SvgPath.number(Mark.Label.HOLLOW_LINE * pen));
    }
    return element;
  }

  private Element stroke(Mark.Stroke stroke) {
    Element element = line(stroke);
    LineType type = stroke.type();
    element.setAttribute("stroke-width", SvgPath.number(type.width() * pen));
    double[] dashes = type.dashes();
    if (dashes.length > 0) {
      StringBuilder text = new StringBuilder();
      for (double dash : dashes) {
        text.append(text.length() == 0 ? "" : " ").append(SvgPath.number(dash * pen));
      }
      element.setAttribute("stroke-dasharray", text.toString());
    }
    stroke
        .tag()
        .ifPresent(
            tag -> {
              element.setAttribute("class", tag.kindToken());
              Element title = element("title");
              addCharacters(title, TextWidth.shown(tag.label()));
              element.appendChild(title);
            });
    return element;
  }

  private Element line(Mark.Stroke stroke) {
    Element element;
    if (stroke.segments().size() == 1
        && stroke.segments().get(0) instanceof Arc arc
        && arc.isCircle()) {
      element = element("circle");
      element.setAttribute("cx", SvgPath.number(arc.centre().x()));
      element.setAttribute("cy", SvgPath.number(-arc.centre().y()));
      element.setAttribute("r", SvgPath.number(arc.radius()));
    } else {
      element = element("path");
      element.setAttribute("d", SvgPath.of(stroke.segments(), stroke.closed()));
    }
    return element;
  }

  /** Dots as a picture within the file. */
  private Element dots(Mark.Shade shade) {
    Box box = shade.box();
    Element image = element("image");
    image.setAttribute("x", SvgPath.number(box.minX()));
    image.setAttribute("y", SvgPath.number(-box.maxY()));
    image.setAttribute("width", SvgPath.number(box.width()));
    image.setAttribute("height", SvgPath.number(box.height()));
    image.setAttribute("preserveAspectRatio", "none");
    image.setAttributeNS(XMLConstants.XMLNS_ATTRIBUTE_NS_URI, "xmlns:xlink", XLINK);
    byte[] png = PngFile.shaded(shade.shaded(), box.width());
    image.setAttributeNS(
        XLINK, "xlink:href", "data:image/png;base64," + Base64.getEncoder().encodeToString(png));
    return image;
  }

  private Element area(String path, String colour) {
    Element element = element("path");
    element.setAttribute("d", path);
    element.setAttribute("fill", colour);
    element.setAttribute("fill-rule", "evenodd");
    element.setAttribute("stroke", "none");
    return element;
  }

  /** A grey as a colour, {@code #rrggbb}; ink beyond 0 to 1 is taken for the nearer end. */
  private static String grey(double ink) {
    double kept = Math.max(0, Math.min(1, Numbers.finite("ink", ink)));
    int level = (int) Math.round(255 * (1 - kept));
    return new ToneColour(level, level, level).hex();
  }

  private Element element(String name) {
    return document.createElementNS(NAMESPACE, name);
  }

  private void newLine(Element parent) {
    parent.appendChild(document.createTextNode("\n"));
  }
}
