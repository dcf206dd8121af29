package felloe.service;

import felloe.geometry.Numbers;
import felloe.load.DesignSpace;
import felloe.load.LoadPlan;
import felloe.load.ScrewUse;
import felloe.load.TriedDesign;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Looks for the lightest plate that passes its review and does what is wanted under its loads: a
 * grid first, then finer steps about the best. The shape file, the materials and the strips are
 * read once, so that a file that changes in the meantime changes nothing.
 */
public final class DesignSearch {

  /** Finer rounds about the best of the round before. */
  private static final int ROUNDS = 2;

  /** What was tried is kept so often, ns. */
  private static final long OFTEN = 2_000_000_000L;

  private final Study study;
  private final ShapeSource shape;
  private final Path hubs;
  private final PlateLoads.Request request;
  private final PlateLoads.Sources sources;
  private final DesignSpace space;
  private final Keeper keeper;
  private final Progress progress;
  private final Map<List<Double>, TriedDesign> tried = new LinkedHashMap<>();
  private int again;
  private long kept = System.nanoTime();
  private BadInput undrawn;

  /** Keeps what was tried, so that a search that was stopped goes on. */
  public interface Keeper {

    /** Keeps nothing. */
    Keeper NONE = designs -> {};

    /** What an earlier search of the same kind tried. */
    default List<TriedDesign> known() {
      return List.of();
    }

    /** Keeps all that was tried so far. */
    void keep(List<TriedDesign> designs);
  }

  private DesignSearch(
      Study study,
      Path folder,
      PlateLoads.Request request,
      PlateLoads.Sources sources,
      DesignSpace space,
      Keeper keeper,
      Progress progress) {
    this.study = study;
    this.shape = once(study.source());
    this.hubs = folder(study.source(), folder);
    this.request = request;
    this.sources = sources;
    this.space = space;
    this.keeper = keeper;
    this.progress = progress;
  }

  /**
   * Searches.
   *
   * @param study the plate to begin with
   * @param folder where names of files start from
   * @param sources of the request, read
   * @throws BadInput when no design can be drawn
   */
  public static SearchOutcome of(
      Study study,
      Path folder,
      PlateLoads.Request request,
      PlateLoads.Sources sources,
      DesignSpace space,
      Keeper keeper,
      Progress progress) {
    return new DesignSearch(study, folder, request, sources, space, keeper, progress).outcome();
  }

  /** The shape's text, as it is now. */
  private static ShapeSource once(ShapeSource source) {
    if (!(source instanceof ShapeSource.OfFile file)) {
      return source;
    }
    try {
      return new ShapeSource.OfText(
          file.file().toString(), Files.readString(file.file()), file.overrides());
    } catch (IOException gone) {
      throw new BadInput(
          new Problem(Place.ofFile(file.file().toString()), "", "", "cannot be read any more", ""));
    }
  }

  private static Path folder(ShapeSource source, Path folder) {
    if (source instanceof ShapeSource.OfFile file) {
      return file.file().getParent() == null ? Path.of("") : file.file().getParent();
    }
    return folder;
  }

  private SearchOutcome outcome() {
    Map<List<Double>, TriedDesign> known = new LinkedHashMap<>();
    keeper.known().forEach(one -> known.put(one.values(), one));
    ExecutorService workers =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      round(workers, space.grid(), known);
      if (undrawn != null && tried.values().stream().allMatch(one -> one.mass() == 0)) {
        throw undrawn;
      }
      for (int i = 1; i <= ROUNDS; i++) {
        Optional<TriedDesign> best = TriedDesign.lightest(List.copyOf(tried.values()));
        if (best.isPresent()) {
          round(workers, space.about(best.get().values(), i), known);
        }
      }
    } finally {
      workers.shutdownNow();
    }
    List<TriedDesign> designs = List.copyOf(tried.values());
    keeper.keep(designs);
    return new SearchOutcome(study.plate(), space.spans(), designs, again);
  }

  private void round(
      ExecutorService workers, List<List<Double>> designs, Map<List<Double>, TriedDesign> known) {
    Map<List<Double>, Future<TriedDesign>> running = new LinkedHashMap<>();
    for (List<Double> values : designs) {
      if (known.containsKey(values) && !tried.containsKey(values)) {
        tried.put(values, known.get(values));
        again++;
      } else if (!tried.containsKey(values)) {
        Callable<TriedDesign> work = () -> tried(values);
        running.put(values, workers.submit(work));
      }
    }
    int all = tried.size() + running.size();
    for (Map.Entry<List<Double>, Future<TriedDesign>> one : running.entrySet()) {
      progress.at("designs", tried.size(), all);
      tried.put(one.getKey(), done(one.getValue()));
      if (System.nanoTime() - kept > OFTEN) {
        keeper.keep(List.copyOf(tried.values()));
        kept = System.nanoTime();
      }
    }
  }

  private static TriedDesign done(Future<TriedDesign> work) {
    try {
      return work.get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped", stopped);
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  /** One design; what cannot be drawn or reckoned is told as that and does not end the search. */
  private TriedDesign tried(List<Double> values) {
    List<String> sets = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      sets.add(space.spans().get(i).path() + "=" + Numbers.brief(values.get(i), 6));
    }
    double mass = 0;
    try {
      Study varied = new Studies(hubs, Optional.empty()).study(shape.with(sets), study.hub());
      mass = varied.plate().mass();
      List<Finding> fails = varied.review().with(Verdict.FAIL);
      if (!fails.isEmpty()) {
        return new TriedDesign(values, mass, 0, 0, "review " + fails.get(0).rule());
      }
      return loaded(values, varied, PlateLoads.quick(varied, request, sources));
    } catch (BadInput bad) {
      note(bad);
      String who = bad.problems().get(0).who();
      String why = mass == 0 ? "cannot be drawn" : "cannot be reckoned";
      String fault = (who.isEmpty() ? why : why + " " + who).replaceAll("[,\\r\\n]", ";");
      return new TriedDesign(values, mass, 0, 0, fault);
    } catch (CancellationException stopped) {
      // It says nothing of the design.
      throw stopped;
    } catch (RuntimeException odd) {
      return new TriedDesign(values, mass, 0, 0, "cannot be reckoned (a fault of the program)");
    }
  }

  private synchronized void note(BadInput bad) {
    undrawn = undrawn == null ? bad : undrawn;
  }

  private static TriedDesign loaded(List<Double> values, Study study, LoadPlan plan) {
    double margin = plan.tightest().margin();
    String fault = "";
    if (!ScrewUse.unknown(plan.hold().holes(), study.joints()).isEmpty()) {
      fault = "screws are not known";
    } else if (!ScrewUse.of(plan, study.joints()).met()) {
      fault = "screws under load";
    } else if (!plan.met()) {
      boolean weak = margin < plan.wanted().margin();
      fault = weak ? "margin in " + plan.tightest().field().load().name() : "deflection";
    }
    return new TriedDesign(values, plan.gauge().mass(), plan.deflection(), margin, fault);
  }
}
