package felloe.service;

import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import java.nio.file.Path;
import java.util.List;

/**
 * Hubs that the program knows.
 *
 * @param hubs in the order in which they are told
 */
public record KnownHubs(List<HubSpec> hubs) {

  public KnownHubs {
    hubs = List.copyOf(hubs);
  }

  /** All that the program knows. */
  public static KnownHubs all(Path folder) {
    return new KnownHubs(new HubCatalogue(folder).all());
  }
}
