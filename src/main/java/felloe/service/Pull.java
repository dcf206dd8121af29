package felloe.service;

import felloe.cure.ShapeChange;
import felloe.cure.ShapeFigures;
import felloe.plate.BadInput;
import felloe.plate.Verdict;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which value of a shape file would bring a figure of the plate to where it is wanted: found by its
 * derivative, tried, and told only where it does and fails no more checks than before.
 */
public final class Pull {

  /** Parts of the file whose lengths make the plate. */
  private static final List<String> PARTS =
      List.of("outline", "windows", "bore", "holes", "stock.thickness");

  /** The most values that are tried. */
  private static final int MOST = 60;

  private static final int ROUNDS = 4;

  /** A value is never changed by more than this share of it. */
  private static final double FARTHEST = 0.5;

  /** First step of a derivative, as a share of the value, and at least mm. */
  private static final double STEP = 0.01;

  private static final double LEAST_STEP = 0.5;

  /** Values are written in multiples of this, mm. */
  private static final double GRAIN = 0.1;

  /** As near to what is wanted as this share of the way is there. */
  private static final double NEAR = 0.03;

  /** A derivative that would take a value farther than this is none to go by. */
  private static final double FLAT = 1e-9;

  private final Study study;
  private final Studies studies;
  private final PlateLoads.Sources sources;
  private final Target target;
  private final double now;
  private final double wanted;

  private Pull(Study study, Studies studies, PlateLoads.Sources sources, Target target, double by) {
    this.study = study;
    this.studies = studies;
    this.sources = sources;
    this.target = target;
    this.now = figure(study).orElseThrow();
    this.wanted = now + by;
  }

  /** Figures that can be pulled. */
  public enum Target {
    /** Mass of the plate, g. */
    MASS,
    /** How far hands move it, mm, in the worst case and on one mesh. */
    DEFLECTION
  }

  /**
   * A change that does it.
   *
   * @param change what to write
   * @param reached the figure then
   * @param mass of the plate then, g
   * @param study the plate then
   */
  public record Way(ShapeChange change, double reached, double mass, Study study) {}

  /**
   * What was found.
   *
   * @param target the figure
   * @param now what it is
   * @param wanted what it should be
   * @param ways that do it, those that change the mass least first
   * @param tried how many values were tried
   */
  public record Outcome(Target target, double now, double wanted, List<Way> ways, int tried) {

    public Outcome {
      ways = List.copyOf(ways);
    }
  }

  /**
   * Finds the values that would do it.
   *
   * @param by how much the figure should change, in its unit
   * @param progress is told how far it has come
   * @throws BadInput when loads cannot be reckoned
   */
  public static Outcome of(
      Study study, Studies studies, Path folder, Target target, double by, Progress progress) {
    PlateLoads.Sources sources = PlateLoads.Sources.of(PlateLoads.Request.USUAL, folder);
    return new Pull(study, studies, sources, target, by).found(progress);
  }

  private Outcome found(Progress progress) {
    ShapeFigures figures = new ShapeFigures(study.source().tree());
    List<String> paths =
        figures.paths().stream()
            .filter(path -> PARTS.stream().anyMatch(path::startsWith))
            .filter(path -> !path.endsWith("count") && !path.endsWith("clock"))
            .limit(MOST)
            .toList();
    List<Way> ways = new ArrayList<>();
    for (int i = 0; i < paths.size(); i++) {
      progress.at("values tried", i, paths.size());
      way(figures, paths.get(i)).ifPresent(ways::add);
    }
    ways.sort(Comparator.comparingDouble(w -> Math.abs(w.mass() - study.plate().mass())));
    return new Outcome(target, now, wanted, ways, paths.size());
  }

  private Optional<Way> way(ShapeFigures figures, String path) {
    double value = figures.figure(path).orElse(0.0);
    double step = Math.max(LEAST_STEP, STEP * Math.abs(value));
    if (value == 0) {
      return Optional.empty();
    }
    OptionalDouble first = at(figures, path, value + step);
    if (first.isEmpty() || Math.abs(first.getAsDouble() - now) < FLAT) {
      return Optional.empty();
    }
    double slope = (first.getAsDouble() - now) / step;
    double to = value + (wanted - now) / slope;
    for (int i = 0; i < ROUNDS; i++) {
      if (Math.abs(to - value) > FARTHEST * Math.abs(value)) {
        return Optional.empty();
      }
      double steps = (to - value) / GRAIN;
      double rounded = value + GRAIN * (steps > 0 ? Math.ceil(steps) : Math.floor(steps));
      OptionalDouble reached = at(figures, path, rounded);
      if (reached.isEmpty() || rounded == value) {
        return Optional.empty();
      }
      if (near(reached.getAsDouble())) {
        return judged(figures.change(path, rounded), reached.getAsDouble());
      }
      double secant = (reached.getAsDouble() - now) / (rounded - value);
      if (Math.abs(secant) < FLAT) {
        return Optional.empty();
      }
      to = value + (wanted - now) / secant;
    }
    return Optional.empty();
  }

  private boolean near(double reached) {
    return Math.abs(reached - wanted) <= NEAR * Math.abs(wanted - now) + GRAIN * GRAIN
        || (target == Target.MASS && Math.abs(reached - wanted) < 1);
  }

  private Optional<Way> judged(ShapeChange change, double reached) {
    return studies
        .varied(study, change.sets())
        .filter(v -> v.count(Verdict.FAIL) <= study.count(Verdict.FAIL))
        .map(v -> new Way(change, reached, v.plate().mass(), v));
  }

  private OptionalDouble at(ShapeFigures figures, String path, double value) {
    return studies
        .varied(study, figures.change(path, value).sets())
        .map(this::figure)
        .orElse(OptionalDouble.empty());
  }

  private OptionalDouble figure(Study plate) {
    if (target == Target.MASS) {
      return OptionalDouble.of(plate.plate().mass());
    }
    try {
      return OptionalDouble.of(
          PlateLoads.quick(plate, PlateLoads.Request.USUAL, sources).deflection());
    } catch (BadInput cannot) {
      if (plate == study) {
        throw cannot;
      }
      return OptionalDouble.empty();
    }
  }
}
