package felloe.render;

import felloe.document.BenchPages;
import felloe.document.FramedPages;
import felloe.document.Report;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.out.PdfWriter;
import java.util.List;

/** Reports as pages. */
public final class PageRenderer {

  private PageRenderer() {}

  /** The pages, upright, under the report's title and over its foot. */
  public static List<Page> pages(Report report, Paper paper) {
    return FramedPages.of(
        report.title(),
        report.title(),
        report.foot(),
        BenchPages.of(report.blocks(), FramedPages.field(paper, report.foot())),
        paper);
  }

  /** The same as PDF. */
  public static byte[] pdf(Report report, Paper paper) {
    return PdfWriter.write(pages(report, paper), report.title());
  }
}
