package felloe.service;

import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import felloe.plate.BadInput;
import felloe.plate.Requested;
import java.nio.file.Path;

/**
 * A hub with everything that is known of it.
 *
 * @param hub its figures, each with where it comes from
 */
public record KnownHub(HubSpec hub) {

  /**
   * A hub by its name or its file.
   *
   * @param folder where names of files start from
   * @throws BadInput when there is none of that name, or its file is wrong
   */
  public static KnownHub of(Requested<String> name, Path folder) {
    return new KnownHub(new HubCatalogue(folder).spec(name.value(), name.place()));
  }
}
