package felloe.kit;

import java.util.Optional;

/**
 * How templates are wanted, in the words that the maker wrote. What is left out is as usual. The
 * words are read, and all that is wrong with them is said, when the request is carried out.
 *
 * @param paper such as {@code A4} or {@code Letter}
 * @param margin edge that the printer cannot print, such as {@code 10} or {@code 0.4 in}
 * @param overlap what neighbouring pages share
 * @param method how the shape gets onto the stock: {@code stuck-on}, {@code traced} or {@code
 *     pricked}
 * @param pen width of the pen that traces
 * @param ink which edge of the pen's line is the finish line: {@code plate-side} or {@code
 *     waste-side}
 * @param face {@code front} or {@code back}; usually the shape file's own
 * @param bars the two check bars as measured on an earlier print, such as {@code 99.6x100.2}
 * @param turn whether the plate may be turned to save pages
 */
public record TemplateRequest(
    Optional<String> paper,
    Optional<String> margin,
    Optional<String> overlap,
    Optional<String> method,
    Optional<String> pen,
    Optional<String> ink,
    Optional<String> face,
    Optional<String> bars,
    boolean turn) {

  /** Everything as usual: A4, stuck on, not turned, not corrected. */
  public static TemplateRequest usual() {
    Optional<String> none = Optional.empty();
    return new TemplateRequest(none, none, none, none, none, none, none, none, false);
  }

  /** The same on another paper. */
  public TemplateRequest on(String other) {
    return new TemplateRequest(
        Optional.of(other), margin, overlap, method, pen, ink, face, bars, turn);
  }
}
