package felloe.document;

import java.util.List;
import java.util.Optional;

/**
 * What is told, ready for every face. The most important thing stands first: the verdict, what to
 * do, then tables, then where figures come from.
 *
 * @param title what it is about, such as {@code Heron, revision 1f3a: review}
 * @param foot at the end, and on every page; may be empty
 * @param blocks in order
 * @param titleBlock at the lower edge of the first page of a drawing; others have none
 */
public record Report(
    String title, String foot, List<Block> blocks, Optional<TitleBlock> titleBlock) {

  public Report {
    blocks = List.copyOf(blocks);
  }

  /** A report that is no drawing. */
  public Report(String title, String foot, List<Block> blocks) {
    this(title, foot, blocks, Optional.empty());
  }

  /** A report without a foot. */
  public Report(String title, List<Block> blocks) {
    this(title, "", blocks);
  }
}
