package felloe.template;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Another way of printing the same template on fewer pages.
 *
 * @param change what is done otherwise
 * @param options how it is then printed
 * @param pages how many pages then carry a part of the drawing
 */
public record PageSaving(Change change, TemplateOptions options, int pages) {

  /** A small margin that many printers print within, mm (common practice). */
  private static final double SMALL = 5;

  /** One thing that is done otherwise. */
  public enum Change {
    /** The plate is turned on the pages. */
    TURN,
    /** The margin is {@value #SMALL} mm. */
    MARGIN,
    /** The paper is the next larger one. */
    PAPER
  }

  /**
   * The ways that save pages, one change each.
   *
   * @param pages how many carry a part of the drawing with some options
   * @param now how many do as it is
   */
  static List<PageSaving> of(
      ToIntFunction<TemplateOptions> pages, TemplateOptions options, int now) {
    List<PageSaving> ways = new ArrayList<>();
    if (now == 1) {
      return ways;
    }
    if (!options.turning()) {
      ways.add(of(Change.TURN, options.withTurning(true), pages));
    }
    if (options.margin() > SMALL) {
      ways.add(of(Change.MARGIN, options.withMargin(SMALL), pages));
    }
    options
        .paper()
        .larger()
        .ifPresent(paper -> ways.add(of(Change.PAPER, options.withPaper(paper), pages)));
    ways.removeIf(way -> way.pages() >= now);
    return ways;
  }

  private static PageSaving of(
      Change change, TemplateOptions options, ToIntFunction<TemplateOptions> pages) {
    return new PageSaving(change, options, pages.applyAsInt(options));
  }
}
