package felloe.bringin;

import felloe.geometry.CubicCurve;
import felloe.geometry.EllipticalArc;
import felloe.geometry.FreeCurve;
import felloe.geometry.GeometryException;
import felloe.geometry.Point;
import felloe.geometry.QuadraticCurve;
import felloe.shape.PathFault;
import felloe.shape.PathReader;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the lines of an SVG drawing (W3C SVG 2): paths, circles, ellipses, rectangles, lines and
 * polygons, in groups with transforms. Units after CSS: 96 px to the inch. What is no line is
 * passed over and named. Where a group is called {@code outline}, only groups are read that are
 * called as a part of the plate: the program's own drawings have them. Nothing outside of the file
 * is looked at, and entities are refused.
 */
final class SvgDrawing {

  /** Millimetres of the units that have a size. Source: CSS Values and Units, absolute lengths. */
  private static final Map<String, Double> UNITS =
      Map.of(
          "mm", 1.0, "cm", 10.0, "q", 0.25, "in", 25.4, "pt", 25.4 / 72, "pc", 25.4 / 6, "px",
          25.4 / 96);

  /** What is only drawn where something else refers to it. */
  private static final Set<String> ASIDE =
      Set.of(
          "defs",
          "symbol",
          "clipPath",
          "mask",
          "marker",
          "pattern",
          "linearGradient",
          "radialGradient",
          "filter",
          "metadata",
          "style",
          "script",
          "title",
          "desc",
          "namedview");

  /** What is seen and no line. */
  private static final Map<String, String> NO_LINE =
      Map.of(
          "text", "texts",
          "image", "images",
          "use", "copies (use)",
          "foreignObject", "foreign objects",
          "svg", "drawings within the drawing");

  private static final Pattern STYLED =
      Pattern.compile("transform(-origin)?\\s{0,9}:|transform-origin");

  /** Coordinates in the drawing's own unit may be as large as this. */
  private static final double FAR = 1e9;

  private static final Set<String> DRAWN =
      Set.of("path", "circle", "ellipse", "rect", "line", "polygon", "polyline");

  private final Reading reading;
  private final Sizing sizing;
  private final boolean parted;
  private final Deque<String> layers = new ArrayDeque<>();
  private final Deque<Affine> frames = new ArrayDeque<>();
  private int aside;

  private SvgDrawing(Reading reading, Sizing sizing, boolean parted) {
    this.reading = reading;
    this.sizing = sizing;
    this.parted = parted;
  }

  /**
   * Reads.
   *
   * @param reading what gathers the lines, and what is wrong
   * @throws felloe.plate.BadInput with everything that is wrong
   */
  static Drawn read(byte[] bytes, Reading reading, Sizing sizing) {
    String text = decoded(bytes);
    boolean parted = parted(text);
    SvgDrawing svg = new SvgDrawing(reading, sizing, parted);
    if (parted && text.contains("MIRRORED")) {
      throw reading.refused(
          0,
          "",
          "",
          "is a mirrored template, for the back face",
          "bring in the kit's DXF file, which is as the driver sees the plate");
    }
    if (STYLED.matcher(text).find()) {
      throw reading.refused(
          0,
          "",
          "",
          "moves or turns lines by its style sheets, which are not read",
          "save it as plain SVG, its transforms applied");
    }
    // The parser reads none either way; who wrote them hoped for something.
    if (text.contains("<!ENTITY")) {
      throw svg.reading.refused(
          0,
          "",
          "",
          "has a document type with entities of its own, which are not read",
          "save it anew as plain SVG");
    }
    svg.elements(text);
    return svg.reading.drawn();
  }

  /** As the file says itself; UTF-8 where it says nothing. What is no letter there is replaced. */
  private static String decoded(byte[] bytes) {
    boolean wide =
        bytes.length > 1
            && ((bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff)
                || (bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe));
    String begin = new String(bytes, 0, Math.min(200, bytes.length), StandardCharsets.ISO_8859_1);
    boolean latin = begin.toLowerCase(Locale.ROOT).contains("encoding=\"iso-8859-1\"");
    Charset charset =
        wide
            ? StandardCharsets.UTF_16
            : latin ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    String text = new String(bytes, charset);
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing outside of the file is read");
        });
    return factory;
  }

  private void elements(String text) {
    int line = 0;
    boolean any = false;
    try {
      XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text));
      while (xml.hasNext()) {
        int event = xml.next();
        line = xml.getLocation().getLineNumber();
        if (event == XMLStreamConstants.START_ELEMENT) {
          if (!any && !xml.getLocalName().equals("svg")) {
            throw reading.refused(
                line, "", xml.getLocalName(), "is not the beginning of an SVG drawing", "");
          }
          any = true;
          begin(new Element(xml, line));
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          end();
        }
      }
    } catch (XMLStreamException broken) {
      throw reading.refused(
          line, "", "", "is not whole XML: " + firstLine(broken), "save the drawing again");
    }
  }

  /** Whether a group is called as the outline. */
  private static boolean parted(String text) {
    try {
      XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text));
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT
            && xml.getLocalName().equals("g")
            && Layers.OUTLINE.equals(
                Layers.named(String.valueOf(xml.getAttributeValue(null, "id"))))) {
          return true;
        }
      }
      return false;
    } catch (XMLStreamException broken) {
      // Told when it is read.
      return false;
    }
  }

  private static String firstLine(XMLStreamException broken) {
    String message = String.valueOf(broken.getMessage());
    int from = message.indexOf("Message: ");
    String words = from < 0 ? message : message.substring(from + 9);
    return words.lines().findFirst().orElse("it breaks off");
  }

  /** An element's name and attributes. */
  private record Element(XMLStreamReader xml, int line) {
    String name() {
      return xml.getLocalName();
    }

    String text(String attribute) {
      String value = xml.getAttributeValue(null, attribute);
      return value == null ? "" : value.strip();
    }

    boolean hidden() {
      String style = text("style").replace(" ", "");
      return text("display").equals("none")
          || style.contains("display:none")
          || text("visibility").equals("hidden")
          || text("visibility").equals("collapse")
          || style.contains("visibility:hidden");
    }
  }

  private void begin(Element element) {
    if (aside > 0) {
      aside++;
      return;
    }
    if (frames.isEmpty()) {
      if (!element.text("transform").isEmpty()) {
        throw reading.refused(
            element.line(),
            "svg.transform",
            element.text("transform"),
            "is not read on the drawing as a whole",
            "save it as plain SVG, its transforms applied");
      }
      frames.push(root(element));
      layers.push("");
      return;
    }
    if (frames.size() >= Limits.DEPTH) {
      throw reading.refused(
          element.line(),
          element.name(),
          "",
          "lies deeper than " + Limits.DEPTH + " groups",
          "ungroup the drawing");
    }
    String name = element.name();
    if (name.equals("style")) {
      reading.note("Style sheets were passed over: what they hide was read.");
    }
    if (!element.text("clip-path").isEmpty() || !element.text("mask").isEmpty()) {
      reading.note("Clips and masks were passed over: what they cut off was read.");
    }
    if (ASIDE.contains(name) || NO_LINE.containsKey(name) || element.hidden()) {
      if (element.hidden()) {
        reading.passOver("hidden");
      } else if (NO_LINE.containsKey(name)) {
        reading.passOver(NO_LINE.get(name));
      }
      aside = 1;
      return;
    }
    Affine frame = frames.peek().of(transform(element));
    frames.push(frame);
    String layer = Layers.named(element.text("id"));
    layers.push(layer.isEmpty() ? layers.peek() : layer);
    if (parted && layers.peek().isEmpty()) {
      if (DRAWN.contains(name)) {
        reading.passOver("beside the groups of the part");
      }
      return;
    }
    if (!frame.isPlane()) {
      reading.passOver("flattened by a transform");
      return;
    }
    try {
      draw(element, frame);
    } catch (GeometryException | IllegalArgumentException wrong) {
      reading.wrong(
          element.line(), name, "", "cannot be drawn: " + wrong.getMessage(), "mend it there");
    }
  }

  private void end() {
    if (aside > 0) {
      aside--;
    } else {
      frames.pop();
      layers.pop();
    }
  }

  private void draw(Element element, Affine frame) {
    switch (element.name()) {
      case "path" -> path(element, frame);
      case "circle" -> ellipse(element, frame, number(element, "r", 0), number(element, "r", 0));
      case "ellipse" -> ellipse(element, frame, number(element, "rx", 0), number(element, "ry", 0));
      case "rect" -> rectangle(element, frame);
      case "line" ->
          chain(
              element,
              Stroke.line(
                  frame.of(new Point(number(element, "x1", 0), number(element, "y1", 0))),
                  frame.of(new Point(number(element, "x2", 0), number(element, "y2", 0)))));
      case "polygon" -> polygon(element, frame, true);
      case "polyline" -> polygon(element, frame, false);
      case "g", "a", "switch" -> {}
      default -> reading.passOver("others (" + element.name() + ")");
    }
  }

  private void chain(Element element, List<Stroke> strokes) {
    reading.chain(element.line(), strokes, layers.peek());
  }

  private void ellipse(Element element, Affine frame, double rx, double ry) {
    if (rx <= 0 || ry <= 0) {
      return;
    }
    Point centre = new Point(number(element, "cx", 0), number(element, "cy", 0));
    EllipticalArc arc = EllipticalArc.about(centre, rx, ry, 0, 0, 2 * Math.PI);
    chain(element, List.of(Stroke.of(frame.of(arc))));
  }

  /** W3C SVG 2, 10.2: a missing radius is as the other one, and none is more than half a side. */
  private void rectangle(Element element, Affine frame) {
    double w = number(element, "width", 0);
    double h = number(element, "height", 0);
    if (w <= 0 || h <= 0) {
      return;
    }
    double givenX = number(element, "rx", -1);
    double givenY = number(element, "ry", -1);
    double rx = Math.min(w / 2, Math.max(0, givenX >= 0 ? givenX : givenY));
    double ry = Math.min(h / 2, Math.max(0, givenY >= 0 ? givenY : givenX));
    double x = number(element, "x", 0);
    double y = number(element, "y", 0);
    boolean sharp = rx == 0 || ry == 0;
    double cx = sharp ? 0 : rx;
    double cy = sharp ? 0 : ry;
    double[][] corners = {
      {x + w - cx, y + cy, -Math.PI / 2},
      {x + w - cx, y + h - cy, 0},
      {x + cx, y + h - cy, Math.PI / 2},
      {x + cx, y + cy, Math.PI}
    };
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Point centre = new Point(corners[i][0], corners[i][1]);
      double[] next = corners[(i + 1) % 4];
      Point end = centre;
      if (!sharp) {
        EllipticalArc arc = EllipticalArc.about(centre, rx, ry, 0, corners[i][2], Math.PI / 2);
        strokes.add(Stroke.of(frame.of(arc)));
        end = arc.to();
      }
      Point start = new Point(next[0], next[1]);
      if (!sharp) {
        start = EllipticalArc.about(start, rx, ry, 0, next[2], Math.PI / 2).from();
      }
      strokes.addAll(Stroke.line(frame.of(end), frame.of(start)));
    }
    chain(element, strokes);
  }

  private void polygon(Element element, Affine frame, boolean closed) {
    List<Double> all = numbers(element, "points");
    List<Stroke> strokes = new ArrayList<>();
    Point first = null;
    Point pen = null;
    for (int i = 0; i + 1 < all.size(); i += 2) {
      Point next = frame.of(new Point(all.get(i), all.get(i + 1)));
      if (pen == null) {
        first = next;
      } else {
        strokes.addAll(Stroke.line(pen, next));
      }
      pen = next;
    }
    if (closed && pen != null) {
      strokes.addAll(Stroke.line(pen, first));
    }
    chain(element, strokes);
  }

  private void path(Element element, Affine frame) {
    PathReader path = new PathReader(element.text("d"), FAR, Limits.STROKES);
    List<PathReader.Subpath> subpaths = path.read();
    for (PathFault fault : path.faults()) {
      reading.wrong(element.line(), "path", fault.read(), fault.wanted(), fault.cure());
    }
    for (PathReader.Subpath subpath : subpaths) {
      List<Stroke> strokes = new ArrayList<>();
      Point pen = subpath.start();
      for (PathReader.Step step : subpath.steps()) {
        if (step.curve().isPresent()) {
          strokes.add(moved(frame, step.curve().get()));
        } else {
          strokes.addAll(Stroke.line(frame.of(pen), frame.of(step.to())));
        }
        pen = step.to();
      }
      if (subpath.closed()) {
        strokes.addAll(Stroke.line(frame.of(pen), frame.of(subpath.start())));
      }
      chain(element, strokes);
    }
  }

  private static Stroke moved(Affine frame, FreeCurve curve) {
    if (curve instanceof CubicCurve cubic) {
      return Stroke.of(frame.of(cubic));
    }
    return curve instanceof QuadraticCurve quadratic
        ? Stroke.of(frame.of(quadratic))
        : Stroke.of(frame.of((EllipticalArc) curve));
  }

  /** Millimetres, y up, about the drawing's own origin. */
  private Affine root(Element svg) {
    List<Double> box = svg.text("viewBox").isEmpty() ? List.of() : numbers(svg, "viewBox");
    if (!box.isEmpty() && (box.size() != 4 || box.get(2) <= 0 || box.get(3) <= 0)) {
      throw reading.refused(
          svg.line(),
          "viewBox",
          svg.text("viewBox"),
          "must be four numbers, width and height above 0",
          "");
    }
    if (sizing.scale().isPresent()) {
      double scale = sizing.scale().getAsDouble();
      return Affine.scale(scale, -scale);
    }
    OptionalDouble width = size(svg, "width");
    OptionalDouble height = size(svg, "height");
    boolean bare =
        plain(svg.text("width")).isPresent() != plain(svg.text("height")).isPresent()
            && !svg.text("width").isEmpty()
            && !svg.text("height").isEmpty();
    if (bare || (width.isEmpty() && height.isEmpty())) {
      throw reading.refused(
          svg.line(),
          "width",
          svg.text("width"),
          "has no unit, so the drawing has no size",
          reading.asked().size());
    }
    if (box.isEmpty()) {
      // Without a view box a unit of the drawing is a pixel.
      double px = UNITS.get("px");
      return Affine.scale(px, -px);
    }
    double across = width.orElse(Double.POSITIVE_INFINITY) / box.get(2);
    double up = height.orElse(Double.POSITIVE_INFINITY) / box.get(3);
    boolean stretched =
        svg.text("preserveAspectRatio").startsWith("none")
            && width.isPresent()
            && height.isPresent();
    boolean slice =
        svg.text("preserveAspectRatio").contains("slice")
            && width.isPresent()
            && height.isPresent();
    double even = slice ? Math.max(across, up) : Math.min(across, up);
    return stretched ? Affine.scale(across, -up) : Affine.scale(even, -even);
  }

  /** A length with a unit, mm. */
  private OptionalDouble size(Element svg, String attribute) {
    String text = svg.text(attribute).toLowerCase(Locale.ROOT);
    int end = text.length();
    while (end > 0 && Character.isLetter(text.charAt(end - 1))) {
      end--;
    }
    Optional<Double> unit = Optional.ofNullable(UNITS.get(text.substring(end)));
    OptionalDouble value = plain(text.substring(0, end).strip());
    return unit.isPresent() && value.isPresent() && value.getAsDouble() > 0
        ? OptionalDouble.of(value.getAsDouble() * unit.get())
        : OptionalDouble.empty();
  }

  private static OptionalDouble plain(String text) {
    try {
      double value = Double.parseDouble(text);
      return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (NumberFormatException none) {
      return OptionalDouble.empty();
    }
  }

  /** A coordinate or a radius: a bare number, or one with a unit of a fixed size. */
  private double number(Element element, String attribute, double usual) {
    String text = element.text(attribute);
    if (text.isEmpty() || text.equals("auto")) {
      return usual;
    }
    OptionalDouble bare = plain(text);
    if (bare.isPresent()) {
      return bare.getAsDouble();
    }
    OptionalDouble mm = size(element, attribute);
    if (mm.isPresent()) {
      return mm.getAsDouble() / UNITS.get("px");
    }
    reading.wrong(element.line(), element.name() + "." + attribute, text, "must be a number", "");
    return usual;
  }

  private List<Double> numbers(Element element, String attribute) {
    List<Double> all = new ArrayList<>();
    String text = element.text(attribute);
    List<Double> found = SvgTransform.numbers(text);
    if (found.isEmpty() && !text.isEmpty()) {
      reading.wrong(element.line(), element.name() + "." + attribute, text, "must be numbers", "");
    }
    all.addAll(found);
    return all;
  }

  private Affine transform(Element element) {
    String text = element.text("transform");
    if (text.isEmpty()) {
      return Affine.NONE;
    }
    Optional<Affine> transform = SvgTransform.read(text);
    if (transform.isEmpty()) {
      reading.wrong(
          element.line(),
          element.name() + ".transform",
          text,
          "must be a list of matrix, translate, scale, rotate, skewX and skewY",
          "");
    }
    return transform.orElse(Affine.NONE);
  }
}
