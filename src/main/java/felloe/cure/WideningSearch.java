package felloe.cure;

import felloe.load.LoadPlan;
import felloe.load.LoadPlan.Judged;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Widens webs, the one that gives most for a gram first, until a plate does what is wanted. */
public final class WideningSearch {

  /** Over so many mm a derivative is taken: a mesh's own noise is small against that. */
  private static final double PROBE = 3;

  /** Nobody widens one figure by more in all, mm; nor by more in one round. */
  private static final double MOST = 24;

  private static final double STEP = 10;

  /** Figures are written in multiples of this, mm. */
  private static final double GRAIN = 0.5;

  /** So many times the widening is gone on with; most plates need one to three. */
  private static final int ROUNDS = 5;

  /** A change that adds less than this, g for a mm, counts as adding so much. */
  private static final double LIGHT = 0.01;

  /** What is aimed below what is wanted, as one mesh tells it. */
  private static final double SPARE = 0.015;

  /** Cases that lack nothing by at least this do not become the worst by a few mm. */
  private static final double FAR = 0.2;

  /** Reckons a plate with more overrides of its shape file. */
  public interface Reckoning {
    /**
     * On one mesh.
     *
     * @param cases that count; empty for all
     * @return empty where they make no plate, where its review has more to say than before, or
     *     where it cannot be reckoned
     */
    Optional<LoadPlan> quick(List<String> sets, List<String> cases);

    /** With all patience; empty as above. */
    Optional<LoadPlan> whole(List<String> sets);

    /** Told before each round. */
    void round(int done, int all);
  }

  /** Figures that are changed together; sense is -1 where smaller ones make webs wider. */
  private record Lever(List<String> paths, int sense) {}

  /** A plate with so much more of each lever, and what one mesh says of it. */
  private record Tried(double[] by, LoadPlan plan, double lacks) {}

  private final LoadPlan own;
  private final Reckoning reckoning;
  private final ShapeFigures figures;
  private final List<Lever> levers = new ArrayList<>();
  private final Map<String, Double> settled = new HashMap<>();

  private WideningSearch(LoadPlan own, YamlTree shape, Reckoning reckoning) {
    this.own = own;
    this.reckoning = reckoning;
    this.figures = new ShapeFigures(shape);
    for (String rim : figures.below("windows", "derived.rim_width")) {
      String derived = rim.substring(0, rim.lastIndexOf('.'));
      List<String> spokes = new ArrayList<>(figures.below(derived + ".spokes", "hub_width"));
      spokes.addAll(figures.below(derived + ".spokes", "rim_width"));
      lever(1, List.of(rim));
      lever(1, figures.below(derived, "derived.hub_disc"));
      lever(1, spokes);
      lever(1, figures.below(derived, "derived.radius"));
    }
    for (String family : List.of("rectangle", "four_sided")) {
      for (String key : List.of("width", "height")) {
        figures.below("windows", family + "." + key).forEach(path -> lever(-1, List.of(path)));
      }
      figures.below("windows", family + ".radius").forEach(path -> lever(1, List.of(path)));
    }
  }

  /**
   * Searches.
   *
   * @param own what the plate does as it is, which is not as wanted
   * @param shape its shape file with its overrides
   * @return empty where the shape file has no figure that widens a web
   */
  public static Optional<Widening> of(LoadPlan own, YamlTree shape, Reckoning reckoning) {
    WideningSearch search = new WideningSearch(own, shape, reckoning);
    return search.levers.isEmpty() ? Optional.empty() : search.search();
  }

  private void lever(int sense, List<String> paths) {
    if (!paths.isEmpty()) {
      levers.add(new Lever(paths, sense));
    }
  }

  private Optional<Widening> search() {
    Optional<Tried> start = tried(new double[levers.size()], List.of());
    if (start.isEmpty()) {
      return Optional.empty();
    }
    settle(own, start.get());
    Tried now = judged(start.get());
    reckoning.round(0, ROUNDS);
    List<Optional<Tried>> probes = probes(now);
    List<Widening.Effect> effects = new ArrayList<>();
    for (int i = 0; i < levers.size(); i++) {
      if (probes.get(i).isPresent()) {
        effects.add(effect(levers.get(i), now, probes.get(i).get()));
      }
    }
    effects.sort(Comparator.comparingDouble(e -> -e.use() / Math.max(e.mass(), LIGHT)));
    Optional<Widening.Found> found = Optional.empty();
    for (int round = 0; round < ROUNDS && found.isEmpty(); round++) {
      List<Optional<Tried>> about = round == 0 ? probes : probes(now);
      Optional<Tried> next = now.lacks() <= 0 ? Optional.of(now) : step(now, about);
      if (next.isEmpty()) {
        break;
      }
      now = next.get();
      reckoning.round(round + 1, ROUNDS);
      if (now.lacks() <= 0) {
        found = proved(now);
        // Where one mesh had told too good a figure, the search goes on with what it now lacks.
        now = judged(now);
      }
    }
    return Optional.of(new Widening(effects, found));
  }

  /** One more probe of each lever, from where it is now. */
  private List<Optional<Tried>> probes(Tried now) {
    // The tightest, and the one that moves most, are told of: they must be among those compared.
    List<String> told = List.of(name(now.plan().tightest()), name(softest(now.plan())));
    List<String> cases =
        now.plan().cases().stream()
            .filter(one -> one.fall().isEmpty())
            .filter(one -> lacks(one) > now.lacks() - FAR || told.contains(name(one)))
            .map(WideningSearch::name)
            .toList();
    return IntStream.range(0, levers.size())
        .mapToObj(
            i ->
                now.by()[i] + PROBE > MOST
                    ? Optional.<Tried>empty()
                    : tried(more(now, i, PROBE), cases))
        .toList();
  }

  /** The case in which a hand moves the plate most. */
  private static Judged softest(LoadPlan plan) {
    return plan.cases().stream()
        .filter(one -> one.fall().isEmpty())
        .max(Comparator.comparingDouble(one -> one.field().atLoad()))
        .orElseThrow();
  }

  private static double[] more(Tried now, int lever, double by) {
    double[] all = now.by().clone();
    all[lever] += by;
    return all;
  }

  /** A lever with what a millimetre of it gives. */
  private record Promise(int lever, double gain, double grams) {
    double forGram() {
      return gain / grams;
    }
  }

  /** By as much as it should take, of the lever that gives most for a gram and does no harm. */
  private Optional<Tried> step(Tried now, List<Optional<Tried>> probes) {
    double mass = now.plan().gauge().mass();
    List<Promise> promises = new ArrayList<>();
    for (int i = 0; i < levers.size(); i++) {
      if (probes.get(i).isPresent()) {
        Tried probe = probes.get(i).get();
        double grams = Math.max(LIGHT, (probe.plan().gauge().mass() - mass) / PROBE);
        promises.add(new Promise(i, (now.lacks() - probe.lacks()) / PROBE, grams));
      }
    }
    promises.removeIf(promise -> promise.gain() <= 0);
    promises.sort(Comparator.comparingDouble(Promise::forGram).reversed());
    for (Promise one : promises) {
      double needed = Math.min(STEP, (now.lacks() + SPARE) / one.gain());
      double by = Math.min(Math.ceil(needed / GRAIN) * GRAIN, MOST - now.by()[one.lever()]);
      Optional<Tried> further =
          by <= 0 ? Optional.empty() : tried(more(now, one.lever(), by), List.of());
      if (further.isPresent() && further.get().lacks() < now.lacks()) {
        return further;
      }
    }
    return Optional.empty();
  }

  /** The same, with what it lacks judged anew by what is known of the finer mesh. */
  private Tried judged(Tried one) {
    return new Tried(one.by(), one.plan(), lacks(one.plan()));
  }

  /** Reckoned with all patience. */
  private Optional<Widening.Found> proved(Tried tried) {
    ShapeChange change = change(tried.by());
    Optional<LoadPlan> proof = reckoning.whole(change.sets());
    if (proof.isEmpty()) {
      return Optional.empty();
    }
    LoadPlan plan = proof.get();
    settle(plan, tried);
    double mass = plan.gauge().mass() - own.gauge().mass();
    return plan.met()
        ? Optional.of(new Widening.Found(change, plan.tightest().margin(), plan.deflection(), mass))
        : Optional.empty();
  }

  /** What one mesh makes of each case's use, against what all patience does. */
  private void settle(LoadPlan plan, Tried tried) {
    for (int i = 0; i < plan.cases().size(); i++) {
      double fine = plan.cases().get(i).field().worst().use();
      double rough = tried.plan().cases().get(i).field().worst().use();
      settled.put(name(plan.cases().get(i)), rough > 0 ? fine / rough : 1);
    }
  }

  private Optional<Tried> tried(double[] by, List<String> cases) {
    return reckoning.quick(change(by).sets(), cases).map(plan -> new Tried(by, plan, lacks(plan)));
  }

  private ShapeChange change(double[] by) {
    List<ShapeChange.Setting> settings = new ArrayList<>();
    for (int i = 0; i < by.length; i++) {
      Lever lever = levers.get(i);
      if (by[i] != 0) {
        settings.addAll(figures.changes(lever.paths(), lever.sense() * by[i]).settings());
      }
    }
    return new ShapeChange(settings);
  }

  private double lacks(LoadPlan plan) {
    return plan.cases().stream().mapToDouble(this::lacks).max().orElse(0);
  }

  /** By which share a case is beyond what is wanted; 0 or less when it is as wanted. */
  private double lacks(Judged one) {
    if (one.fall().isPresent()) {
      return Double.NEGATIVE_INFINITY;
    }
    double use = one.field().worst().use() * settled.getOrDefault(name(one), 1.0);
    double beyond = use * one.factor() * (1 + own.wanted().margin()) - 1;
    double moved =
        own.wanted().deflection().map(most -> one.field().atLoad() / most - 1).orElse(beyond);
    return Math.max(beyond, moved);
  }

  private static String name(Judged one) {
    return one.field().load().name();
  }

  private static Widening.Effect effect(Lever lever, Tried now, Tried then) {
    double use = then.plan().tightest().field().worst().use();
    double was = now.plan().tightest().field().worst().use();
    return new Widening.Effect(
        lever.paths(),
        lever.sense(),
        (1 - use / was) / PROBE,
        (now.plan().deflection() - then.plan().deflection()) / PROBE,
        (then.plan().gauge().mass() - now.plan().gauge().mass()) / PROBE);
  }
}
