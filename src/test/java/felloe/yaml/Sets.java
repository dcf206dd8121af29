package felloe.yaml;

import felloe.plate.Place;
import java.util.List;

/** Overrides as they come from the command line. */
public final class Sets {

  private static final Place GIVEN = Place.ofOption("--set");

  private Sets() {}

  /** Such as {@code outline.width=280}. */
  public static Overrides of(String... values) {
    return of(List.of(values));
  }

  /** The same, already in a list. */
  public static Overrides of(List<String> values) {
    return new Overrides(GIVEN, values);
  }
}
