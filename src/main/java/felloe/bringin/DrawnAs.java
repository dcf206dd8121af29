package felloe.bringin;

import felloe.plate.FeatureTag;
import java.util.Optional;

/**
 * What a file says that a line is.
 *
 * @param layer on which it was drawn, in capitals; empty where the file has none
 * @param tag the feature whose edge it is, where the program's own drawing names it
 */
record DrawnAs(String layer, Optional<FeatureTag> tag) {

  /** Nothing is said. */
  static final DrawnAs NOTHING = on("");

  /** Only its layer. */
  static DrawnAs on(String layer) {
    return new DrawnAs(layer, Optional.empty());
  }
}
