package felloe.render;

import felloe.document.BenchPages;
import felloe.document.FramedPages;
import felloe.document.Report;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.geometry.Box;
import felloe.out.PdfWriter;
import java.util.List;

/** Reports as pages. */
public final class PageRenderer {

  private PageRenderer() {}

  /** The pages, upright, under the report's title and over its foot. */
  public static List<Page> pages(Report report, Paper paper) {
    Box field = FramedPages.field(paper, report.foot());
    Box first =
        report
            .titleBlock()
            .map(block -> FramedPages.field(paper, report.foot(), block))
            .orElse(field);
    return FramedPages.of(report, BenchPages.of(report.blocks(), first, field), paper);
  }

  /** The same as PDF. */
  public static byte[] pdf(Report report, Paper paper) {
    return PdfWriter.write(pages(report, paper), report.title());
  }
}
