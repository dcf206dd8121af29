package felloe.bringin;

import felloe.geometry.GeometryException;
import felloe.plate.FeatureTag;
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
          "foreignObject", "foreign objects",
          "svg", "drawings within the drawing");

  private static final Pattern STYLED =
      Pattern.compile("transform(-origin)?\\s{0,9}:|transform-origin");

  /** What is drawn where it is copied to. */
  private static final Set<String> SYMBOLS = Set.of("symbol", "svg");

  /** Letters of all elements that are read, those of copies each time. */
  private static final long MOST_LETTERS = 2L * Limits.BYTES;

  /** What only holds others. */
  private static final Set<String> GROUPS = Set.of("g", "a", "switch");

  private final Reading reading;
  private final SvgTree tree;
  private final boolean parted;
  private int steps;
  private long letters;

  private SvgDrawing(Reading reading, SvgTree tree) {
    this.reading = reading;
    this.tree = tree;
    this.parted = hasOutline(tree.root());
  }

  /**
   * Reads.
   *
   * @param reading what gathers the lines, and what is wrong
   * @throws felloe.plate.BadInput with everything that is wrong
   */
  static Drawn read(byte[] bytes, Reading reading, Sizing sizing) {
    String text = decoded(bytes);
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
      throw reading.refused(
          0,
          "",
          "",
          "has a document type with entities of its own, which are not read",
          "save it anew as plain SVG");
    }
    SvgDrawing svg = new SvgDrawing(reading, SvgTree.of(text, reading));
    if (svg.parted && text.contains("MIRRORED")) {
      throw reading.refused(
          0,
          "",
          "",
          "is a mirrored template, for the back face",
          "bring in the kit's DXF file, which is as the driver sees the plate");
    }
    svg.page(sizing);
    return reading.drawn();
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

  /** Whether a group is called as the outline. */
  private static boolean hasOutline(SvgElement element) {
    Deque<SvgElement> left = new ArrayDeque<>(List.of(element));
    while (!left.isEmpty()) {
      SvgElement one = left.pop();
      if (one.name().equals("g")
          && !one.hidden()
          && Layers.OUTLINE.equals(Layers.named(one.text("id")))) {
        return true;
      }
      left.addAll(one.children());
    }
    return false;
  }

  private void page(Sizing sizing) {
    SvgElement root = tree.root();
    if (!root.text("transform").isEmpty()) {
      throw reading.refused(
          root.line(),
          "svg.transform",
          root.text("transform"),
          "is not read on the drawing as a whole",
          "save it as plain SVG, its transforms applied");
    }
    Affine frame = SvgPage.frame(root, sizing, reading);
    root.children().forEach(child -> element(child, frame, "", 1));
  }

  /**
   * An element and what it holds.
   *
   * @param outer the frame that it stands in
   * @param above the layer that it stands on
   * @param depth how many groups and copies it lies in
   */
  private void element(SvgElement element, Affine outer, String above, int depth) {
    if (depth >= Limits.DEPTH) {
      throw reading.refused(
          element.line(),
          element.name(),
          "",
          "lies deeper than " + Limits.DEPTH + " groups and copies (use), or copies itself",
          "ungroup the drawing, and make copies real");
    }
    letters += element.letters();
    if (++steps > Limits.STEPS || letters > MOST_LETTERS) {
      throw reading.refused(
          element.line(), "", "", "asks for too many copies (use)", "make the copies real");
    }
    String name = element.name();
    if (name.equals("style")) {
      reading.note("Style sheets were passed over: what they hide was read.");
    }
    if (!element.text("clip-path").isEmpty() || !element.text("mask").isEmpty()) {
      reading.note("Clips and masks were passed over: what they cut off was read.");
    }
    if (element.hidden()) {
      reading.passOver("hidden");
      return;
    }
    if (NO_LINE.containsKey(name)) {
      reading.passOver(NO_LINE.get(name));
    }
    if (ASIDE.contains(name) || NO_LINE.containsKey(name)) {
      return;
    }
    Affine frame = outer.of(element.transform());
    String own = Layers.named(element.text("id"));
    String layer = own.isEmpty() ? above : own;
    if (name.equals("use")) {
      copy(element, frame, layer, depth);
      return;
    }
    if (SvgShapes.DRAWN.contains(name)) {
      line(element, frame, layer);
    } else if (!GROUPS.contains(name) && !(parted && layer.isEmpty())) {
      reading.passOver("others (" + name + ")");
    }
    element.children().forEach(child -> element(child, frame, layer, depth + 1));
  }

  /** A copy of what stands elsewhere in the file (W3C SVG 2, 5.6). */
  private void copy(SvgElement use, Affine frame, String layer, int depth) {
    String href = use.text("href");
    SvgElement copied = href.startsWith("#") ? tree.byId().get(href.substring(1)) : null;
    if (copied == null) {
      reading.passOver("copies (use) of what is not in the file");
      return;
    }
    Affine put = frame.of(Affine.shift(use.number("x", 0), use.number("y", 0)));
    if (!SYMBOLS.contains(copied.name())) {
      element(copied, put, layer, depth + 1);
    } else if (copied.text("viewBox").isEmpty() && copied.text("transform").isEmpty()) {
      copied.children().forEach(child -> element(child, put, layer, depth + 1));
    } else {
      reading.passOver("copies (use) of drawings with a view of their own");
    }
  }

  private void line(SvgElement element, Affine frame, String layer) {
    if (parted && layer.isEmpty()) {
      reading.passOver("beside the groups of the part");
      return;
    }
    if (!frame.isPlane()) {
      reading.passOver("flattened by a transform");
      return;
    }
    try {
      String kind = element.text("class").replace('-', ' ');
      Optional<FeatureTag> tag = FeatureTag.read(element.title().toString(), kind);
      for (List<Stroke> strokes : SvgShapes.of(element, frame)) {
        reading.chain(element.line(), strokes, new DrawnAs(layer, tag));
      }
    } catch (GeometryException | IllegalArgumentException wrong) {
      reading.wrong(
          element.line(),
          element.name(),
          "",
          "cannot be drawn: " + wrong.getMessage(),
          "mend it there");
    }
  }
}
