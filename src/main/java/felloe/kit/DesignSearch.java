package felloe.kit;

import static java.nio.charset.StandardCharsets.UTF_8;

import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.OutFile;
import felloe.geometry.Numbers;
import felloe.load.DesignSpace;
import felloe.load.FigureRange;
import felloe.load.LoadPlan;
import felloe.load.TriedDesign;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.yaml.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Looks for the lightest plate that passes its review and does what is wanted under its loads: a
 * grid of designs, then two finer rounds about the lightest. All cores work; what was tried is kept
 * in a file now and then, so that a search that was stopped goes on.
 */
final class DesignSearch {

  private static final int ROUNDS = 2;

  /** Time between two writings of the file, ns. */
  private static final long OFTEN = 2_000_000_000L;

  private final Path folder;
  private final Disk disk;
  private final Progress progress;

  DesignSearch(Path folder, Disk disk, Progress progress) {
    this.folder = folder;
    this.disk = disk;
    this.progress = progress;
  }

  /**
   * Searches.
   *
   * @param out where what was tried is kept; empty for nowhere
   * @throws BadInput with everything that is wrong with request and shape, or when no design can be
   *     drawn
   * @throws CannotWrite when the disk says no
   */
  SearchAnswer answer(
      ShapeSource shape, LoadRequest load, SearchRequest request, Optional<Path> out)
      throws CannotWrite {
    Problems problems = new Problems();
    DesignSpace space = null;
    LoadOrder order = null;
    Plate plate = null;
    try {
      space = SearchOrder.read(request);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    try {
      order = LoadOrder.of(load, folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    try {
      plate = Reading.plate(shape, folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    problems.throwIfAny();
    return new Run(shape, order, plate, space, file(plate, shape, load, space, out)).answer();
  }

  private Optional<DesignFile> file(
      Plate plate, ShapeSource shape, LoadRequest load, DesignSpace space, Optional<Path> out) {
    StringBuilder head = new StringBuilder("# felloe ");
    head.append(Kit.version()).append(", ").append(plate.name());
    head.append(" revision ").append(plate.revision());
    for (FigureRange span : space.spans()) {
      head.append(", ").append(span.path());
    }
    load.support().ifPresent(s -> head.append(", support ").append(s));
    load.cases().forEach(c -> head.append(", case ").append(c));
    load.materials().ifPresent(m -> head.append(", materials ").append(digest(m)));
    load.tested().ifPresent(t -> head.append(", tested ").append(digest(t)));
    Reading.hub(plate, shape, folder)
        .ifPresent(hub -> head.append(", hub ").append(digest(hub.toString().getBytes(UTF_8))));
    String line = head.toString().replaceAll("[\\r\\n]", " ");
    String name = plate.name() + "-designs.csv";
    return out.map(folder -> new DesignFile(folder, name, disk, line, space.spans()));
  }

  /** What tells a file that was read from one that has changed since. */
  private String digest(String file) {
    try {
      return digest(Files.readAllBytes(folder.resolve(file)));
    } catch (IOException gone) {
      // It was read a moment ago; a file that is gone is told apart from one that is there.
      return "gone";
    }
  }

  private static String digest(byte[] bytes) {
    return bytes.length == 0 ? "" : new OutFile("read", bytes).sha256();
  }

  /** One search. */
  private final class Run {

    private final ShapeSource shape;
    private final LoadOrder order;
    private final Plate plate;
    private final DesignSpace space;
    private final Optional<DesignFile> file;
    private final Map<List<Double>, TriedDesign> known;
    private final Map<List<Double>, TriedDesign> tried = new LinkedHashMap<>();
    private int again;
    private long written = System.nanoTime();
    private BadInput undrawn;

    Run(
        ShapeSource shape,
        LoadOrder order,
        Plate plate,
        DesignSpace space,
        Optional<DesignFile> file) {
      this.shape = shape;
      this.order = order;
      this.plate = plate;
      this.space = space;
      this.file = file;
      this.known = file.map(DesignFile::read).orElseGet(LinkedHashMap::new);
    }

    SearchAnswer answer() throws CannotWrite {
      ExecutorService workers =
          Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
      try {
        round(workers, space.grid());
        if (undrawn != null && tried.values().stream().allMatch(one -> one.mass() == 0)) {
          throw undrawn;
        }
        for (int i = 1; i <= ROUNDS; i++) {
          Optional<TriedDesign> best = TriedDesign.lightest(List.copyOf(tried.values()));
          if (best.isPresent()) {
            round(workers, space.about(best.get().values(), i));
          }
        }
      } finally {
        workers.shutdownNow();
      }
      Optional<Path> path = Optional.empty();
      if (file.isPresent()) {
        path = Optional.of(file.get().write(List.copyOf(tried.values())));
      }
      return new SearchAnswer(plate, space.spans(), List.copyOf(tried.values()), again, path);
    }

    private void round(ExecutorService workers, List<List<Double>> designs) throws CannotWrite {
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
        if (file.isPresent() && System.nanoTime() - written > OFTEN) {
          file.get().write(List.copyOf(tried.values()));
          written = System.nanoTime();
        }
      }
    }

    private TriedDesign done(Future<TriedDesign> work) {
      try {
        return work.get();
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("stopped", stopped);
      } catch (ExecutionException failed) {
        if (failed.getCause() instanceof RuntimeException broken) {
          throw broken;
        }
        throw new IllegalStateException(failed.getCause());
      }
    }

    private TriedDesign tried(List<Double> values) {
      List<String> sets = new ArrayList<>(shape.sets());
      for (int i = 0; i < values.size(); i++) {
        sets.add(space.spans().get(i).path() + "=" + Numbers.brief(values.get(i), 2));
      }
      ShapeSource varied =
          shape instanceof ShapeSource.OfFile of
              ? ShapeSource.file(of.file(), sets)
              : ShapeSource.text(
                  ((ShapeSource.OfText) shape).name(), ((ShapeSource.OfText) shape).text(), sets);
      double mass = 0;
      try {
        Reading.Studied studied = new Reading(folder, Optional.empty()).all(List.of(varied)).get(0);
        mass = studied.plate().mass();
        Optional<Finding> fails =
            studied.answer().findings().stream()
                .filter(finding -> finding.verdict() == Verdict.FAIL)
                .findFirst();
        if (fails.isPresent()) {
          return new TriedDesign(values, mass, 0, 0, "review " + fails.get().rule());
        }
        LoadPlan plan =
            LoadBench.quick(studied.plate(), Reading.hub(studied.plate(), varied, folder), order);
        return loaded(values, plan);
      } catch (BadInput bad) {
        keep(bad);
        return new TriedDesign(values, mass, 0, 0, fault(mass, bad));
      }
    }

    private synchronized void keep(BadInput bad) {
      undrawn = undrawn == null ? bad : undrawn;
    }

    private String fault(double mass, BadInput bad) {
      String who = bad.problems().get(0).who();
      String why = mass == 0 ? "cannot be drawn" : "cannot be reckoned";
      return (who.isEmpty() ? why : why + " " + who).replaceAll("[,\\r\\n]", ";");
    }

    private TriedDesign loaded(List<Double> values, LoadPlan plan) {
      double margin = plan.tightest().margin();
      double deflection = plan.deflection();
      String fault = "";
      if (!plan.met()) {
        boolean weak = margin < plan.wanted().margin();
        fault = weak ? "margin in " + plan.tightest().field().load().name() : "deflection";
      }
      return new TriedDesign(values, plan.gauge().mass(), deflection, margin, fault);
    }
  }
}
