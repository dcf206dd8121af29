package felloe.document;

import felloe.document.BenchText.Block;
import felloe.drawing.Anchor;
import felloe.drawing.Drawing;
import felloe.drawing.LoadMap;
import felloe.drawing.LoadView;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.Paragraph;
import felloe.drawing.Picture;
import felloe.drawing.ScaledPicture;
import felloe.drawing.ThicknessPlot;
import felloe.drawing.ThicknessView;
import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pages of a plate under its loads: the cases in words, the thicknesses with their plot, a page
 * of maps for each case, and what all of it rests on.
 */
public final class LoadPages {

  private static final double HEAD = 3.5;
  private static final double TEXT = 2.2;
  private static final double PITCH = 3.6;
  private static final double GAP = 5;

  private LoadPages() {}

  /**
   * What the pages carry.
   *
   * @param title of every page
   * @param foot at the lower edge of every page
   * @param cases words before the thicknesses
   * @param thicknesses words above the plot; none without a plot
   * @param plot of the thicknesses
   * @param maps a page each
   * @param after words at the end
   */
  public record Content(
      String title,
      String foot,
      List<WordBlock> cases,
      List<WordBlock> thicknesses,
      Optional<ThicknessView> plot,
      List<LoadView> maps,
      List<WordBlock> after) {

    /** Copies the lists. */
    public Content {
      cases = List.copyOf(cases);
      thicknesses = List.copyOf(thicknesses);
      maps = List.copyOf(maps);
      after = List.copyOf(after);
    }
  }

  /** The pages, upright. */
  public static List<Page> of(Content content, Paper paper) {
    Box field = FramedPages.field(paper, content.foot());
    List<Block> first = new ArrayList<>(WordBlock.blocks(content.cases()));
    if (content.plot().isPresent()) {
      first.addAll(WordBlock.blocks(content.thicknesses()));
      first.add(new BenchText.Drawn(ThicknessPlot.of(content.plot().get())));
    }
    List<Drawing> drawings = new ArrayList<>(BenchPages.of(first, field));
    content.maps().forEach(view -> drawings.add(maps(view, field)));
    drawings.addAll(BenchPages.of(WordBlock.blocks(content.after()), field));
    return FramedPages.of("Loads", content.title(), content.foot(), drawings, paper);
  }

  /** Maps one below the other, words at the foot. */
  private static Drawing maps(LoadView view, Box field) {
    List<String> lines = new ArrayList<>();
    view.words().forEach(text -> lines.addAll(Paragraph.wrap(text, TEXT, field.width())));
    double foot = field.minY() + lines.size() * PITCH;
    List<Mark> words = new ArrayList<>();
    String title = Paragraph.fit(view.load(), HEAD, field.width());
    Point head = new Point(field.minX(), field.maxY() - HEAD);
    words.add(Mark.Label.of(title, head, HEAD, Anchor.START));
    words.addAll(Paragraph.labels(lines, field.minX(), foot, TEXT, PITCH));
    Drawing drawing = Drawing.of("words", words);
    double top = field.maxY() - HEAD - GAP;
    double each = (top - foot - GAP) / view.maps().size();
    Box size = new Box(field.minX(), top - each, field.maxX(), top - 1);
    for (Picture map : LoadMap.fitted(view, size, TEXT)) {
      Box room = new Box(field.minX(), top - each, field.maxX(), top - 1);
      drawing = drawing.and(ScaledPicture.in(map, room));
      top -= each;
    }
    return drawing;
  }
}
