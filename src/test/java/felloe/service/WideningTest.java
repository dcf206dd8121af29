package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cure.Widening;
import felloe.cure.WideningSearch;
import felloe.load.LoadPlan;
import felloe.yaml.Sets;
import felloe.yaml.YamlValue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A plate that is too weak is told which figure of the shape file to change, and to what. */
class WideningTest {

  private static final Path FOLDER = Path.of("shapes").toAbsolutePath();

  private static LoadOutcome loads(List<String> sets) {
    ShapeSource shape = ShapeSource.file(FOLDER.resolve("dunlin.yaml"), Sets.of(sets));
    return PlateLoads.of(
        shape,
        PlateLoads.Request.USUAL,
        new Studies(FOLDER, Optional.empty()),
        FOLDER,
        Progress.SILENT);
  }

  private static List<String> thin() {
    List<String> sets = new ArrayList<>(List.of("stock.thickness=5"));
    for (int i = 0; i < 3; i++) {
      sets.add("windows[0].derived.spokes[" + i + "].hub_width=26");
      sets.add("windows[0].derived.spokes[" + i + "].rim_width=24");
    }
    return sets;
  }

  @Test
  void theChangeThatIsOfferedDoesWhenItIsWrittenIntoTheFile() {
    LoadOutcome weak = loads(thin());
    assertTrue(!weak.plan().met(), "the plate must be too weak for this test");
    Widening widening = weak.widening().orElseThrow();
    Widening.Found found = widening.found().orElseThrow();
    List<String> sets = new ArrayList<>(thin());
    sets.addAll(found.change().sets());
    LoadOutcome mended = loads(sets);
    assertTrue(mended.plan().met(), found.change().words());
    assertTrue(mended.widening().isEmpty(), "what is as wanted needs no cure");
    assertEquals(mended.plan().tightest().margin(), found.margin(), 1e-9);
    assertEquals(mended.plan().deflection(), found.deflection(), 1e-9);
    assertEquals(mended.plate().mass() - weak.plate().mass(), found.mass(), 1e-9);
    eachMillimetreAddsTheMassThatTheShapeTells(weak, widening);
  }

  /** Against the mass of the exact shape, which knows nothing of meshes. */
  private static void eachMillimetreAddsTheMassThatTheShapeTells(LoadOutcome weak, Widening all) {
    for (Widening.Effect effect : all.effects()) {
      List<String> sets = new ArrayList<>(thin());
      for (String key : effect.keys()) {
        sets.add(key + "=" + (figure(weak, key) + effect.sense()));
      }
      double mass =
          new Studies(FOLDER, Optional.empty())
              .one(ShapeSource.file(FOLDER.resolve("dunlin.yaml"), Sets.of(sets)))
              .plate()
              .mass();
      double gained = mass - weak.plate().mass();
      // Over three millimetres where this is over one: an inside corner's area goes with its
      // square.
      assertEquals(gained, effect.mass(), 0.1 * Math.abs(gained) + 0.5, effect.keys().toString());
      assertTrue(effect.deflection() > 0, "wider webs are stiffer: " + effect.keys());
    }
  }

  /**
   * A thin plate whose tightest case is not the one that moves it most: both are compared with
   * themselves. Reckoned once more for each, on meshes of the same fineness.
   */
  @Test
  void whatAMillimetreDoesIsToldOfTheSameCases() {
    List<String> thin = List.of("stock.thickness=4.5");
    Study study =
        new Studies(FOLDER, Optional.empty())
            .one(ShapeSource.file(FOLDER.resolve("heron.yaml"), Sets.of(thin)));
    PlateLoads.Sources sources = PlateLoads.Sources.of(PlateLoads.Request.USUAL, FOLDER);
    LoadPlan own = PlateLoads.quick(study, PlateLoads.Request.USUAL, sources);
    WideningSearch.Reckoning first =
        new WideningSearch.Reckoning() {
          private int rounds;

          @Override
          public Optional<LoadPlan> quick(List<String> sets, List<String> cases) {
            return rounds > 1 ? Optional.empty() : Optional.of(on(sets, cases));
          }

          @Override
          public Optional<LoadPlan> whole(List<String> sets) {
            return Optional.empty();
          }

          @Override
          public void round(int done, int all) {
            rounds++;
          }

          private LoadPlan on(List<String> sets, List<String> cases) {
            Study varied = new Studies(FOLDER, Optional.empty()).one(study.source().with(sets));
            return PlateLoads.quick(varied, PlateLoads.Request.USUAL.of(cases), sources);
          }
        };
    Widening widening = WideningSearch.of(own, study.source().tree(), first).orElseThrow();
    String rim = "windows[0].derived.rim_width";
    Widening.Effect effect =
        widening.effects().stream()
            .filter(e -> e.keys().equals(List.of(rim)))
            .findFirst()
            .orElseThrow();
    List<String> wider = List.of(rim + "=37");
    Study varied = new Studies(FOLDER, Optional.empty()).one(study.source().with(wider));
    LoadPlan then = PlateLoads.quick(varied, PlateLoads.Request.USUAL, sources);
    assertTrue(
        !own.tightest().field().load().name().startsWith("lean"), "the tightest moves it most");
    double gained = (own.deflection() - then.deflection()) / 3;
    assertEquals(gained, effect.deflection(), 0.1 * gained);
    double use = 1 - then.tightest().field().worst().use() / own.tightest().field().worst().use();
    assertEquals(use / 3, effect.use(), 0.01);
  }

  private static double figure(LoadOutcome of, String key) {
    YamlValue at = of.study().source().tree().root();
    for (String step : key.replace("[", ".").replace("]", "").split("\\.")) {
      at =
          at instanceof YamlValue.Sequence list
              ? list.items().get(Integer.parseInt(step))
              : ((YamlValue.Mapping) at).entries().get(step).value();
    }
    return Double.parseDouble(((YamlValue.Scalar) at).text());
  }
}
