package felloe.render;

import felloe.document.Block;
import felloe.document.Block.Depth;
import felloe.document.Block.Fill;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Report;
import felloe.drawing.Picture;
import felloe.out.About;
import felloe.out.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reports as one web page that needs nothing from elsewhere: tables as tables, pictures as drawings
 * within it. It reads well on a telephone and prints in black.
 */
public final class HtmlRenderer {

  private static final String STYLE =
      """
      :root{color-scheme:light dark;--ink:#1a1a1a;--paper:#fdfcf8;--rule:#8a8577}
      @media (prefers-color-scheme:dark){:root{--ink:#eeeae0;--paper:#1d1c19;--rule:#8f897a}}
      body{margin:0 auto;max-width:60rem;padding:1rem;background:var(--paper);color:var(--ink);
      font:1rem/1.45 system-ui,sans-serif}
      h1{font-size:1.35rem}h2{font-size:1.1rem;margin-top:1.6rem}
      .callout{border:1px solid var(--rule);border-left-width:.4rem;padding:.4rem .8rem;margin:.8rem 0}
      .fail{border-left-style:double;border-left-width:.7rem;font-weight:600}
      .table{overflow-x:auto}table{border-collapse:collapse;margin:.6rem 0}
      caption{text-align:left;padding:.2rem 0}
      th,td{border-bottom:1px solid var(--rule);padding:.2rem .6rem .2rem 0;text-align:left;
      vertical-align:top}
      .fails{font-weight:600}
      .figure{text-align:right;font-variant-numeric:tabular-nums}
      svg{max-width:100%;height:auto;background:#fff}figure{margin:1rem 0}
      details{margin:1rem 0}footer{border-top:1px solid var(--rule);margin-top:2rem;font-size:.9rem}
      @media print{:root{--ink:#000;--paper:#fff}details{display:block}}
      """;

  private final StringBuilder html = new StringBuilder(1 << 14);

  /** Whether what is for paper alone is there too, with fields in the place of boxes and blanks. */
  private final boolean bench;

  /** What stands above the table that is being written. */
  private String heading = "";

  /** How often what stands beside a field has been written. */
  private final Map<String, Integer> fields = new HashMap<>();

  private HtmlRenderer(boolean bench) {
    this.bench = bench;
  }

  /** A whole page. */
  public static String page(Report report) {
    HtmlRenderer page = new HtmlRenderer(false);
    page.html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    page.html.append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n");
    page.element("title", "", report.title());
    page.html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n");
    page.html.append(article(report));
    page.html.append("</body>\n</html>\n");
    return page.html.toString();
  }

  /** The report alone, to stand within a page. */
  public static String article(Report report) {
    return article(report, false);
  }

  /**
   * The same to work by: boxes can be ticked and blanks filled in. Each field is known by what
   * stands beside it ({@code data-note}), so that a row that says something else has another.
   */
  public static String workSheet(Report report) {
    return article(report, true);
  }

  private static String article(Report report, boolean bench) {
    HtmlRenderer article = new HtmlRenderer(bench);
    article.html.append("<main>\n");
    article.element("h1", "", report.title());
    article.blocks(report.blocks());
    if (!report.foot().isEmpty()) {
      article.element("footer", "", report.foot());
    }
    article.html.append("</main>\n");
    return article.html.toString();
  }

  private void blocks(List<Block> blocks) {
    blocks.forEach(this::block);
  }

  private void block(Block block) {
    if (block instanceof Block.Heading head) {
      heading = head.text();
      element("h2", "", head.text());
    } else if (block instanceof Block.Paragraph words) {
      element("p", "", words.text());
    } else if (block instanceof Block.Callout callout) {
      html.append("<div class=\"callout ")
          .append(tone(callout.tone()))
          .append("\" role=\"note\">\n");
      callout.texts().forEach(text -> element("p", "", text));
      html.append("</div>\n");
    } else if (block instanceof Block.Steps steps) {
      html.append("<ol>\n");
      steps.texts().forEach(text -> element("li", "", text));
      html.append("</ol>\n");
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Figure figure) {
      figure.pictures().forEach(this::picture);
    } else if (block instanceof Block.Folded fold) {
      folded(fold);
    }
  }

  private static String tone(Tone tone) {
    return switch (tone) {
      case WELL -> "well";
      case CAUTION -> "caution";
      case FAIL -> "fail";
      case NOTE -> "note";
    };
  }

  private void folded(Block.Folded fold) {
    if (fold.depth() == Depth.ALL || fold.depth() == Depth.SOURCES) {
      html.append("<details>\n");
      element("summary", "", fold.depth() == Depth.ALL ? "More" : "Where figures come from");
      blocks(fold.blocks());
      html.append("</details>\n");
    } else {
      // Pages to write on are for paper, but their pictures are worth a look here too.
      fold.blocks().stream()
          .filter(b -> bench || fold.depth() == Depth.SCREEN || b instanceof Block.Figure)
          .forEach(this::block);
    }
  }

  private void table(Block.Table table) {
    if (table.rows().isEmpty()) {
      return;
    }
    html.append("<div class=\"table\"><table>\n");
    if (!table.caption().isEmpty()) {
      element("caption", "", table.caption());
    }
    html.append("<thead><tr>");
    for (Block.Column column : table.columns()) {
      if (shown(column)) {
        cell("th", column, column.heading(), false);
      }
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (List<Cell> row : table.rows()) {
      html.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        Block.Column column = table.columns().get(i);
        if (shown(column)) {
          boolean fail = row.get(i) instanceof Cell.Verdict v && v.tone() == Tone.FAIL;
          String text = row.get(i).text(column.unit());
          if (column.fill() == Fill.TICK || column.fill() == Fill.BLANK) {
            note(table, row, column, text);
          } else {
            cell("td", column, text, fail);
          }
        }
      }
      html.append("</tr>\n");
    }
    html.append("</tbody></table></div>\n");
  }

  /** A field to tick or to fill in. */
  private void note(Block.Table table, List<Cell> row, Block.Column column, String text) {
    StringBuilder beside = new StringBuilder(heading).append(", ").append(table.caption());
    for (int i = 0; i < row.size(); i++) {
      if (table.columns().get(i).fill() != Fill.BLANK) {
        beside.append(", ").append(row.get(i).text(table.columns().get(i).unit()));
      }
    }
    boolean box = column.fill() == Fill.TICK;
    html.append("<td>");
    if (!box || !text.isEmpty()) {
      String about = own(beside.append(", ").append(column.head()).toString());
      html.append(box ? "<label><input type=\"checkbox\"" : "<input type=\"text\"");
      html.append(" data-note=\"").append(escaped(about)).append("\" aria-label=\"");
      html.append(escaped(about)).append("\">");
      html.append(box ? escaped(text.equals("[ ]") ? "" : text) + "</label>" : "");
    } else {
      html.append(escaped(text));
    }
    html.append("</td>");
  }

  /** The words a field is known by; of several that say the same each has its number. */
  private String own(String about) {
    int count = fields.merge(about, 1, Integer::sum);
    return count == 1 ? about : about + ", no. " + count;
  }

  private boolean shown(Block.Column column) {
    return bench || column.fill() != Fill.TICK && column.fill() != Fill.BLANK;
  }

  private void cell(String tag, Block.Column column, String text, boolean fails) {
    String kinds = (column.fill() == Fill.FIGURES ? "figure" : "") + (fails ? " fails" : "");
    html.append('<').append(tag).append(kinds.isEmpty() ? "" : " class=\"" + kinds.strip() + '"');
    html.append(tag.equals("th") ? " scope=\"col\">" : ">");
    html.append(escaped(text)).append("</").append(tag).append('>');
  }

  private void picture(Picture picture) {
    byte[] svg = SvgWriter.write(picture, new About("picture", "", ""));
    String text = new String(svg, StandardCharsets.UTF_8);
    html.append("<figure>").append(text, text.indexOf("<svg"), text.length()).append("</figure>\n");
  }

  private void element(String tag, String attributes, String text) {
    html.append('<').append(tag).append(attributes).append('>').append(escaped(text));
    html.append("</").append(tag).append(">\n");
  }

  /** A text as it can stand within a page, or within a quoted attribute. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
