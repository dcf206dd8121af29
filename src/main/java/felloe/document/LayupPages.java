package felloe.document;

import felloe.drawing.BlankPicture;
import felloe.drawing.BlankView;
import felloe.drawing.Drawing;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.drawing.RollPicture;
import felloe.drawing.RollView;
import felloe.drawing.StackPicture;
import felloe.drawing.StackView;
import felloe.geometry.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * The pages of a lay-up: the plan in words with boxes to tick, the stack, the cutting plan of the
 * cloth, labels for its pieces, the blank on its mould, and what the plan rests on.
 */
public final class LayupPages {

  private LayupPages() {}

  /**
   * What the pages carry.
   *
   * @param title of every page
   * @param foot at the lower edge of every page
   * @param plan what stands before the pictures
   * @param stack the stack
   * @param roll the cutting plan
   * @param blank the blank
   * @param after what stands after the pictures
   */
  public record Content(
      String title,
      String foot,
      List<Block> plan,
      StackView stack,
      RollView roll,
      BlankView blank,
      List<Block> after) {

    /** Copies the lists. */
    public Content {
      plan = List.copyOf(plan);
      after = List.copyOf(after);
    }
  }

  /** The pages, upright. */
  public static List<Page> of(Content content, Paper paper) {
    Box field = FramedPages.field(paper, content.foot());
    List<Block> first = new ArrayList<>(content.plan());
    first.add(new Block.Figure(StackPicture.of(content.stack())));
    first.add(new Block.PageBreak());
    Picture roll = RollPicture.in(content.roll(), field.width(), field.height());
    first.add(new Block.Figure(roll));
    List<Block> last = new ArrayList<>();
    last.add(new Block.Figure(BlankPicture.of(content.blank())));
    last.addAll(content.after());
    List<Drawing> drawings = new ArrayList<>(BenchPages.of(first, field));
    drawings.addAll(PieceLabels.set(content.roll(), field));
    drawings.addAll(BenchPages.of(last, field));
    return FramedPages.of("Lay-up", content.title(), content.foot(), drawings, paper);
  }
}
