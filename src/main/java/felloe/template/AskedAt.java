package felloe.template;

import felloe.plate.Place;
import java.util.Objects;

/**
 * Where the maker says what the pages depend on. Messages show it, and so do printed pages: they
 * tell by it how a reading is given back.
 *
 * @param paper the paper
 * @param bars a reading of the check bars
 */
public record AskedAt(Place paper, Place bars) {

  /** Refuses a missing place. */
  public AskedAt {
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(bars, "bars");
  }
}
