package felloe.hub;

import java.util.Comparator;

/** Labels of holes in the order a maker counts them: H2 before H10. */
final class Labels {

  static final Comparator<String> ORDER =
      Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder());

  private Labels() {}
}
