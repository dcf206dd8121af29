package felloe.paper;

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
   * @param plan words before the pictures
   * @param stack the stack
   * @param roll the cutting plan
   * @param blank the blank
   * @param after words after the pictures
   */
  public record Content(
      String title,
      String foot,
      List<WordBlock> plan,
      StackView stack,
      RollView roll,
      BlankView blank,
      List<WordBlock> after) {

    /** Copies the lists. */
    public Content {
      plan = List.copyOf(plan);
      after = List.copyOf(after);
    }
  }

  /** The pages, upright. */
  public static List<Page> of(Content content, Paper paper) {
    Box field = FramedPages.field(paper);
    List<Drawing> drawings = new ArrayList<>(WordFlow.set(content.plan(), field));
    drawings.add(Reduced.in(StackPicture.of(content.stack()), field));
    drawings.add(Reduced.in(RollPicture.in(content.roll(), field.width(), field.height()), field));
    drawings.addAll(PieceLabels.set(content.roll(), field));
    drawings.add(Reduced.in(BlankPicture.of(content.blank()), field));
    drawings.addAll(WordFlow.set(content.after(), field));
    return FramedPages.of("Lay-up", content.title(), content.foot(), drawings, paper);
  }
}
