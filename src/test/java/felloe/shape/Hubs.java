package felloe.shape;

import felloe.plate.HubPattern;
import felloe.plate.HubPatterns;
import java.util.List;
import java.util.Optional;

/** Two invented hubs under names of the catalogue, so that these tests need no other room. */
enum Hubs implements HubPatterns {
  /** Both of them. */
  TWO;

  private static final HubPattern SIX =
      new HubPattern("6x70-m5", 6, 70, 5, Math.PI / 2, Optional.empty());
  private static final HubPattern THREE =
      new HubPattern("3x58-m6", 3, 58, 6.4, Math.PI / 2, Optional.of(25.0));

  @Override
  public Optional<HubPattern> find(String name) {
    return List.of(SIX, THREE).stream().filter(hub -> hub.name().equals(name)).findFirst();
  }

  @Override
  public List<String> names() {
    return List.of(THREE.name(), SIX.name());
  }
}
