package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.drawing.Drawing;
import felloe.drawing.Page;
import felloe.drawing.Picture;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.out.About;
import felloe.out.SvgWriter;
import felloe.service.TemplateOutcome;
import java.nio.charset.StandardCharsets;

/** The pages of a template as they lie on their paper, to be looked at and for nothing else. */
final class Papers {

  private static final int PLACES = 3;

  private Papers() {}

  /** All pages, in printing order. */
  static String of(TemplateOutcome outcome) {
    StringBuilder html = new StringBuilder("<div class=\"papers\">\n");
    int number = 1;
    for (Page page : outcome.tiled().pages()) {
      html.append("<figure class=\"paper\"><svg viewBox=\"0 0 ").append(n(page.width()));
      html.append(' ').append(n(page.height())).append("\" role=\"img\" aria-label=\"page ");
      html.append(escaped(page.name())).append("\">");
      for (Page.Placed part : page.parts()) {
        html.append(part(page, part));
      }
      html.append("</svg><figcaption>page ").append(Integer.toString(number)).append(": ");
      html.append(escaped(page.name())).append("</figcaption></figure>\n");
      number++;
    }
    return html.append("</div>\n").toString();
  }

  private static String part(Page page, Page.Placed part) {
    Box window = part.clip().orElse(new Box(0, 0, page.width(), page.height()));
    Point shift = part.shift();
    Box own =
        new Box(
            window.minX() - shift.x(),
            window.minY() - shift.y(),
            window.maxX() - shift.x(),
            window.maxY() - shift.y());
    Drawing drawing = part.drawing();
    byte[] bytes = SvgWriter.write(new Picture(drawing, own, 1), new About("page", "", ""));
    String svg = new String(bytes, StandardCharsets.UTF_8);
    int root = svg.indexOf("<svg");
    int end = svg.indexOf('>', root);
    String box =
        "viewBox=\""
            + n(own.minX())
            + ' '
            + n(-own.maxY())
            + ' '
            + n(own.width())
            + ' '
            + n(own.height())
            + '"';
    return "<svg x=\""
        + n(window.minX())
        + "\" y=\""
        + n(page.height() - window.maxY())
        + "\" width=\""
        + n(window.width())
        + "\" height=\""
        + n(window.height())
        + "\" "
        + box
        + ">"
        + svg.substring(end + 1);
  }

  private static String n(double value) {
    return Numbers.brief(value, PLACES);
  }
}
