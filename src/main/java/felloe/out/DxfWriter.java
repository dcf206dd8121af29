package felloe.out;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.FeatureTag;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Cut lines as a plain ASCII DXF file with the entities of R12 ({@code AC1009}), which every reader
 * knows. Each contour is one closed {@code POLYLINE} with a vertex a segment and a bulge an arc; a
 * whole circle is a {@code CIRCLE}; a line that leads in and out is an open {@code POLYLINE}; loose
 * marks are {@code LINE} and {@code ARC}. One layer a role. The edge of a window or a hole carries
 * its label and its kind as extended data of the application {@value FeatureTag#APPLICATION}, which
 * no machine follows. Millimetres, said by {@code $INSUNITS} and, since R12 itself has no unit, in
 * a comment. Lines end in CR LF.
 *
 * <p>Accuracy: {@value #DECIMALS} decimals, so an edge reads back within 1e-9 mm. A vertex is
 * written once and both its segments end there, so a contour is closed to the last digit.
 *
 * <p>Source: DXF Reference, R12 entities and groups. A bulge is the tangent of a quarter of the
 * sweep, positive counter-clockwise.
 */
public final class DxfWriter {

  /** Decimals of every figure. */
  static final int DECIMALS = 12;

  /** Hexadecimal digits of a letter's number. */
  private static final int LETTER_DIGITS = 4;

  /** R12 keeps strings of up to 255 characters. */
  private static final int LONGEST_COMMENT = 200;

  private final StringBuilder file = new StringBuilder();

  private DxfWriter() {}

  /**
   * The file's bytes, ASCII.
   *
   * @param drawing what is cut
   * @param about what the file says of itself, in comments
   */
  public static byte[] write(CutDrawing drawing, About about) {
    DxfWriter writer = new DxfWriter();
    writer.comments(about);
    writer.header(drawing.box());
    writer.tables(drawing.layers());
    writer.pair(0, "SECTION");
    writer.pair(2, "ENTITIES");
    drawing.layers().forEach(writer::entities);
    writer.pair(0, "ENDSEC");
    writer.pair(0, "EOF");
    return writer.file.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private void comments(About about) {
    comment("Unit: millimetre, 1:1");
    comment(about.title());
    comment("Revision " + about.revision());
    comment(about.caution());
  }

  private void comment(String text) {
    PlainText.wrapped(PlainText.of(text), LONGEST_COMMENT).forEach(line -> pair(999, line));
  }

  private void header(Box box) {
    pair(0, "SECTION");
    pair(2, "HEADER");
    pair(9, "$ACADVER");
    pair(1, "AC1009");
    pair(9, "$INSUNITS");
    pair(70, "4");
    pair(9, "$EXTMIN");
    corner(box.minX(), box.minY());
    pair(9, "$EXTMAX");
    corner(box.maxX(), box.maxY());
    pair(0, "ENDSEC");
  }

  private void corner(double x, double y) {
    figure(10, x);
    figure(20, y);
    figure(30, 0);
  }

  private void tables(List<CutLayer> layers) {
    pair(0, "SECTION");
    pair(2, "TABLES");
    table("LTYPE", 1);
    pair(0, "LTYPE");
    pair(2, "CONTINUOUS");
    pair(70, "0");
    pair(3, "Solid line");
    pair(72, "65");
    pair(73, "0");
    figure(40, 0);
    pair(0, "ENDTAB");
    table("LAYER", layers.size() + 1);
    layer("0", 7);
    layers.forEach(layer -> layer(layer.role().name(), layer.role().colourNumber()));
    pair(0, "ENDTAB");
    table("APPID", 1);
    pair(0, "APPID");
    pair(2, FeatureTag.APPLICATION);
    pair(70, "0");
    pair(0, "ENDTAB");
    pair(0, "ENDSEC");
  }

  private void table(String name, int entries) {
    pair(0, "TABLE");
    pair(2, name);
    pair(70, Integer.toString(entries));
  }

  private void layer(String name, int colour) {
    pair(0, "LAYER");
    pair(2, name);
    pair(70, "0");
    pair(62, Integer.toString(colour));
    pair(6, "CONTINUOUS");
  }

  private void entities(CutLayer layer) {
    String name = layer.role().name();
    for (Segment mark : layer.marks()) {
      mark(name, mark);
    }
    layer.chains().forEach(chain -> polyline(name, chain, false, Optional.empty()));
    for (CutEdge edge : layer.edges()) {
      Contour contour = edge.contour();
      contour
          .asCircle()
          .ifPresentOrElse(
              circle -> {
                circle(name, circle);
                edge.tag().ifPresent(this::extended);
              },
              () -> polyline(name, contour.segments(), true, edge.tag()));
    }
  }

  private void mark(String layer, Segment mark) {
    if (mark instanceof Line line) {
      entity("LINE", layer);
      point(line.from());
      figure(11, line.to().x());
      figure(21, line.to().y());
      figure(31, 0);
      return;
    }
    Arc arc = (Arc) mark;
    if (arc.isCircle()) {
      circle(layer, arc);
      return;
    }
    // An ARC runs counter-clockwise by definition.
    Arc turned = arc.sweep() > 0 ? arc : arc.reversed();
    entity("ARC", layer);
    point(arc.centre());
    figure(40, arc.radius());
    figure(50, degrees(turned.startAngle()));
    figure(51, degrees(turned.reversed().startAngle()));
  }

  private static double degrees(double angle) {
    double degrees = Math.toDegrees(angle);
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private void circle(String layer, Arc circle) {
    entity("CIRCLE", layer);
    point(circle.centre());
    figure(40, circle.radius());
  }

  private void polyline(
      String layer, List<Segment> chain, boolean closed, Optional<FeatureTag> tag) {
    entity("POLYLINE", layer);
    pair(66, "1");
    point(Point.ORIGIN);
    pair(70, closed ? "1" : "0");
    tag.ifPresent(this::extended);
    for (Segment segment : chain) {
      entity("VERTEX", layer);
      point(segment.from());
      if (segment instanceof Arc arc) {
        figure(42, Math.tan(arc.sweep() / 4));
      }
    }
    if (!closed) {
      entity("VERTEX", layer);
      point(chain.get(chain.size() - 1).to());
    }
    entity("SEQEND", layer);
  }

  /** What the entity is, as extended data: its label, and its kind. */
  private void extended(FeatureTag tag) {
    pair(1001, FeatureTag.APPLICATION);
    pair(1000, escaped(tag.label()));
    pair(1000, tag.kind());
  }

  /** Letters beyond ASCII as the format writes them, such as {@code \\U+00E9}. */
  private static String escaped(String text) {
    StringBuilder all = new StringBuilder();
    for (char c : text.toCharArray()) {
      if (c >= ' ' && c < 127 && c != '\\') {
        all.append(c);
      } else {
        String number = Integer.toHexString(c).toUpperCase(Locale.ROOT);
        all.append("\\U+").append("0".repeat(LETTER_DIGITS - number.length())).append(number);
      }
    }
    return all.toString();
  }

  private void entity(String type, String layer) {
    pair(0, type);
    pair(8, layer);
  }

  private void point(Point p) {
    corner(p.x(), p.y());
  }

  private void figure(int code, double value) {
    String text = Numbers.brief(value, DECIMALS);
    pair(code, text.indexOf('.') < 0 ? text + ".0" : text);
  }

  private void pair(int code, String value) {
    String number = Integer.toString(code);
    // Codes stand right-aligned in three columns, as the format's own examples print them.
    file.append(" ".repeat(Math.max(0, 3 - number.length()))).append(number).append("\r\n");
    file.append(value).append("\r\n");
  }
}
