package felloe.plate;

import java.util.List;
import java.util.Optional;

/** The hub patterns that a shape file may name. */
public interface HubPatterns {

  /** The pattern with a name, if there is one. */
  Optional<HubPattern> find(String name);

  /** All names, in order, to offer when one is misspelt. */
  List<String> names();
}
