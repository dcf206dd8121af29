package felloe.bringin;

import felloe.geometry.GeometryException;
import felloe.plate.FeatureTag;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

  /** A title is read as far as this: no label is as long. */
  private static final int LONGEST_TITLE = 100;

  /** What only holds others. */
  private static final Set<String> GROUPS = Set.of("g", "a", "switch");

  private final Reading reading;
  private final Sizing sizing;
  private final boolean parted;
  private final Deque<String> layers = new ArrayDeque<>();
  private final Deque<Affine> frames = new ArrayDeque<>();
  private final StringBuilder title = new StringBuilder();
  private Optional<Named> named = Optional.empty();
  private boolean titled;
  private int aside;

  /** Lines whose name follows them, as the title within their element. */
  private record Named(int line, List<List<Stroke>> lines, String layer, String kind) {}

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
    boolean parted = parted(text, reading);
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
          begin(new SvgElement(xml, line, reading));
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          end();
        } else if (titled && xml.isCharacters() && title.length() < LONGEST_TITLE) {
          title.append(xml.getText());
        }
      }
    } catch (XMLStreamException broken) {
      throw reading.refused(
          line, "", "", "is not whole XML: " + firstLine(broken), "save the drawing again");
    }
  }

  /** Whether a group is called as the outline. */
  private static boolean parted(String text, Reading reading) {
    try {
      XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text));
      while (xml.hasNext()) {
        if (xml.next() == XMLStreamConstants.START_ELEMENT
            && xml.getLocalName().equals("g")
            && !new SvgElement(xml, 0, reading).hidden()
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

  private void begin(SvgElement element) {
    if (aside > 0) {
      aside++;
      return;
    }
    if (named.isPresent() && element.name().equals("title") && title.length() == 0) {
      titled = true;
      aside = 1;
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
      frames.push(SvgPage.frame(element, sizing, reading));
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
    Affine frame = frames.peek().of(element.transform());
    frames.push(frame);
    String layer = Layers.named(element.text("id"));
    layers.push(layer.isEmpty() ? layers.peek() : layer);
    if (parted && layers.peek().isEmpty()) {
      if (SvgShapes.DRAWN.contains(name)) {
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
      titled &= aside > 0;
    } else {
      named.ifPresent(this::named);
      named = Optional.empty();
      frames.pop();
      layers.pop();
    }
  }

  /** Takes lines whose name is known now, or who have none. */
  private void named(Named drawn) {
    Optional<FeatureTag> tag = FeatureTag.read(title.toString(), drawn.kind.replace('-', ' '));
    drawn.lines.forEach(
        strokes -> reading.chain(drawn.line, strokes, new DrawnAs(drawn.layer, tag)));
  }

  private void draw(SvgElement element, Affine frame) {
    if (SvgShapes.DRAWN.contains(element.name())) {
      List<List<Stroke>> lines = SvgShapes.of(element, frame);
      Named own = new Named(element.line(), lines, layers.peek(), element.text("class"));
      named.ifPresent(this::named);
      named = Optional.empty();
      title.setLength(0);
      if (FeatureTag.isKindToken(own.kind)) {
        named = Optional.of(own);
      } else {
        named(own);
      }
    } else if (!GROUPS.contains(element.name())) {
      reading.passOver("others (" + element.name() + ")");
    }
  }
}
