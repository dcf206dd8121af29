package felloe.service;

import felloe.load.FigureRange;
import felloe.load.TriedDesign;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;

/**
 * What a search tried.
 *
 * @param plate that it began with
 * @param spans the figures that it varied
 * @param designs all that were tried, in order
 * @param again how many of them an earlier search had tried
 */
public record SearchOutcome(
    Plate plate, List<FigureRange> spans, List<TriedDesign> designs, int again) {

  public SearchOutcome {
    spans = List.copyOf(spans);
    designs = List.copyOf(designs);
  }

  /** The lightest that does all that is wanted. */
  public Optional<TriedDesign> lightest() {
    return TriedDesign.lightest(designs);
  }

  /** Those that do and that no other is lighter and stiffer than, lightest first. */
  public List<TriedDesign> front() {
    return TriedDesign.front(designs);
  }
}
