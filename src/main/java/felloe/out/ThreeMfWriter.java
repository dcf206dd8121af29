package felloe.out;

import felloe.drawing.TextWidth;
import felloe.geometry.Numbers;
import felloe.solid.Extent;
import felloe.solid.Part;
import felloe.solid.Solid;
import felloe.solid.Vertex;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Bodies as one 3MF file: an object with a name for each, in millimetres, and an item of the build
 * for each. On the printer's bed they lie in a row, each on its lowest point; in their own
 * coordinates they stay where they are.
 *
 * <p>Accuracy: coordinates are rounded to 0.000001 mm. The same bodies give the same bytes on every
 * machine: the parts of the package are stored as they are, with one fixed time.
 *
 * <p>Source: 3MF Core Specification 1.2.2, its published schema (verified); names of the parts of
 * the package and their relationship: from memory of the same and of ISO/IEC 29500-2, and read back
 * in tests by a reader that is not ours.
 */
public final class ThreeMfWriter {

  private static final int DECIMALS = 6;

  /** Room between two bodies on the bed, mm. */
  private static final double GAP = 5;

  /**
   * After 1980: that year's first second stands for no time, and the zone of the machine goes in.
   */
  private static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

  private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String TYPES =
      XML
          + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
          + "<Default Extension=\"rels\""
          + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
          + "<Default Extension=\"model\""
          + " ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>"
          + "</Types>\n";
  private static final String RELATIONSHIPS =
      XML
          + "<Relationships"
          + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
          + "<Relationship Id=\"rel0\" Target=\"/3D/3dmodel.model\""
          + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
          + "</Relationships>\n";

  private ThreeMfWriter() {}

  /** The file's bytes. */
  public static byte[] write(List<Part> parts, About about) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      zip.setMethod(ZipOutputStream.STORED);
      store(zip, "[Content_Types].xml", TYPES);
      store(zip, "_rels/.rels", RELATIONSHIPS);
      store(zip, "3D/3dmodel.model", model(parts, about));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void store(ZipOutputStream zip, String name, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    CRC32 sum = new CRC32();
    sum.update(bytes);
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(TIME);
    entry.setSize(bytes.length);
    entry.setCrc(sum.getValue());
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }

  private static String model(List<Part> parts, About about) {
    StringBuilder xml = new StringBuilder(1 << 16).append(XML);
    xml.append("<model unit=\"millimeter\" xml:lang=\"en\"")
        .append(" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n");
    metadata(xml, "Title", about.title());
    metadata(xml, "Description", about.description());
    metadata(xml, "Application", "Felloe");
    xml.append("<resources>\n");
    for (int i = 0; i < parts.size(); i++) {
      xml.append("<object id=\"").append(i + 1).append("\" type=\"model\" name=\"");
      xml.append(escaped(parts.get(i).name())).append("\"><mesh>\n");
      mesh(xml, parts.get(i).body());
      xml.append("</mesh></object>\n");
    }
    xml.append("</resources>\n<build>\n");
    double along = 0;
    for (int i = 0; i < parts.size(); i++) {
      Extent extent = parts.get(i).body().extent();
      xml.append("<item objectid=\"").append(i + 1);
      xml.append("\" transform=\"1 0 0 0 1 0 0 0 1 ").append(number(along - extent.least().x()));
      xml.append(' ').append(number(-extent.least().y()));
      xml.append(' ').append(number(-extent.least().z())).append("\"/>\n");
      along += extent.size().x() + GAP;
    }
    return xml.append("</build>\n</model>\n").toString();
  }

  private static void metadata(StringBuilder xml, String name, String text) {
    xml.append("<metadata name=\"").append(name).append("\">");
    xml.append(escaped(text)).append("</metadata>\n");
  }

  private static void mesh(StringBuilder xml, Solid body) {
    xml.append("<vertices>\n");
    for (Vertex v : body.vertices()) {
      xml.append("<vertex x=\"").append(number(v.x()));
      xml.append("\" y=\"").append(number(v.y()));
      xml.append("\" z=\"").append(number(v.z())).append("\"/>\n");
    }
    xml.append("</vertices>\n<triangles>\n");
    for (int i = 0; i < body.triangles().size(); i++) {
      xml.append("<triangle v1=\"").append(body.corner(i, 0));
      xml.append("\" v2=\"").append(body.corner(i, 1));
      xml.append("\" v3=\"").append(body.corner(i, 2)).append("\"/>\n");
    }
    xml.append("</triangles>\n");
  }

  private static String number(double value) {
    return Numbers.brief(value, DECIMALS);
  }

  private static String escaped(String text) {
    return TextWidth.shown(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
