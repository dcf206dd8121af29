package felloe.out;

import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Segment;
import felloe.plate.FeatureTag;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Cut lines as an SVG file for a laser or another machine that follows lines: paths only, one group
 * a role, no text. The edge of a window or a hole has its kind as its class and its label as its
 * title, which no machine draws. One user unit is one millimetre and the size of the page is stated
 * in mm. Arcs are {@code A} commands. A caution stands in {@code desc}, which no machine draws.
 *
 * <p>Lines are hairlines of 0.025 mm (0.001 in): drivers that choose between cutting and engraving
 * by the width of a line take none that thin for a filled stroke. <i>Common practice, from
 * memory.</i> Each role has its colour, so that a machine that sorts by colour can still tell what
 * is cut first; the groups stand in the order of cutting.
 *
 * <p>Accuracy: 1e-7 mm at each end; see {@link SvgPath} for arcs.
 */
public final class CutSvgWriter {

  /** Width of every line, mm. */
  static final double HAIRLINE = 0.025;

  private CutSvgWriter() {}

  /**
   * The file's bytes, UTF-8.
   *
   * @param drawing what is cut
   * @param page what is seen of it, mm; the size of the picture
   */
  public static byte[] write(CutDrawing drawing, Box page, About about) {
    StringBuilder file = new StringBuilder();
    String width = SvgPath.number(page.width());
    String height = SvgPath.number(page.height());
    file.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    file.append("<svg xmlns=\"").append(SvgDocument.NAMESPACE).append("\" version=\"1.1\"");
    file.append(" width=\"").append(width).append("mm\" height=\"").append(height).append("mm\"");
    file.append(" viewBox=\"").append(SvgPath.number(page.minX())).append(' ');
    file.append(SvgPath.number(-page.maxY())).append(' ');
    file.append(width).append(' ').append(height).append("\">\n");
    file.append("<title>").append(text(about.title())).append("</title>\n");
    file.append("<desc>").append(text(about.description())).append("</desc>\n");
    for (CutLayer layer : drawing.layers()) {
      group(file, layer);
    }
    return file.append("</svg>\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void group(StringBuilder file, CutLayer layer) {
    CutRole role = layer.role();
    file.append("<g id=\"").append(role.id()).append("\" fill=\"none\" stroke=\"");
    file.append(role.colour()).append("\" stroke-width=\"").append(SvgPath.number(HAIRLINE));
    file.append("\">\n");
    for (Segment mark : layer.marks()) {
      path(file, SvgPath.of(List.of(mark), false));
    }
    for (List<Segment> chain : layer.chains()) {
      path(file, SvgPath.of(chain, false));
    }
    for (CutEdge edge : layer.edges()) {
      String data = SvgPath.of(edge.contour().segments(), true);
      edge.tag().ifPresentOrElse(tag -> path(file, data, tag), () -> path(file, data));
    }
    file.append("</g>\n");
  }

  private static void path(StringBuilder file, String data) {
    file.append("<path d=\"").append(data).append("\"/>\n");
  }

  private static void path(StringBuilder file, String data, FeatureTag tag) {
    file.append("<path class=\"").append(tag.kindToken()).append("\" d=\"").append(data);
    file.append("\"><title>").append(text(tag.label())).append("</title></path>\n");
  }

  private static String text(String text) {
    return TextWidth.shown(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
