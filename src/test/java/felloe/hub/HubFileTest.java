package felloe.hub;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.plate.Basis;
import felloe.plate.Place;
import felloe.yaml.YamlTree;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class HubFileTest {

  private static final long SEED = 4_112_026L;

  private static HubSpec at(HubSpec hub, Place place) {
    return new HubSpec(
        hub.name(),
        hub.title(),
        hub.ring(),
        hub.second(),
        hub.use(),
        hub.pilot(),
        hub.bore(),
        hub.positionTolerance(),
        hub.bases(),
        place);
  }

  private static void same(HubSpec hub, String which) {
    String text = HubFile.text(hub);
    HubSpec again = HubReader.read(YamlTree.parse("my-hub.yaml", text));
    assertEquals(at(hub, again.place()), again, which + "\n" + text);
    assertEquals(text, HubFile.text(again), which);
  }

  @Test
  void everyKnownHubIsReadBackEqual() {
    for (HubSpec hub : HubCatalogue.here().all()) {
      same(hub, hub.name());
    }
  }

  /** Figures to the last bit, and texts with whatever a person may write. */
  @Test
  void anyHubIsReadBackEqual() {
    Random random = new Random(SEED);
    List<ScrewThread> threads = ScrewThreads.all();
    String[] words = {"a \"hub\": of #2", "it's {odd}", "back\\slash", "ü ° ±", "x"};
    for (int run = 0; run < 300; run++) {
      boolean two = random.nextBoolean();
      boolean pilot = random.nextBoolean();
      HubRing first = ring(random, threads);
      Optional<HubRing> second = two ? Optional.of(ring(random, threads)) : Optional.empty();
      double spigot = 20 + random.nextDouble();
      Map<String, Basis> bases = new TreeMap<>();
      for (String key : new String[] {"count", "pcd", "thread", "first", "plate-hole"}) {
        bases.put(key, basis(words, random));
        if (two) {
          bases.put("second." + key, basis(words, random));
        }
      }
      bases.put("position-tolerance", basis(words, random));
      if (pilot) {
        bases.put("pilot", basis(words, random));
        bases.put("bore", basis(words, random));
      }
      HubSpec hub =
          new HubSpec(
              "hub-" + run,
              "Hub " + words[random.nextInt(words.length)],
              first,
              second,
              two && random.nextBoolean() ? RingUse.BOTH : RingUse.EITHER,
              pilot ? Optional.of(spigot) : Optional.empty(),
              pilot ? Optional.of(spigot + random.nextDouble()) : Optional.empty(),
              random.nextDouble(),
              bases,
              Place.BUILT_IN);
      same(hub, "seed " + SEED + ", run " + run);
    }
  }

  private static Basis basis(String[] words, Random random) {
    return Basis.of("measured " + words[random.nextInt(words.length)]).orElseThrow();
  }

  private static HubRing ring(Random random, List<ScrewThread> threads) {
    ScrewThread thread = threads.get(random.nextInt(threads.size()));
    return new HubRing(
        1 + random.nextInt(6),
        60 + 40 * random.nextDouble(),
        thread,
        Math.toRadians(720 * random.nextDouble() - 360),
        thread.diameter() + random.nextDouble());
  }
}
