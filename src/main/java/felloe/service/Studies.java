package felloe.service;

import felloe.cure.ShapeCures;
import felloe.geometry.GeometryException;
import felloe.hub.HubCatalogue;
import felloe.hub.HubFit;
import felloe.hub.HubFitResult;
import felloe.hub.HubSpec;
import felloe.joints.JointPlan;
import felloe.layup.LaidUp;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.Sketch;
import felloe.review.Review;
import felloe.review.ReviewReport;
import felloe.shape.ShapeFile;
import felloe.yaml.Problems;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Reads and judges shapes, and keeps every problem until all have been read. */
public final class Studies {

  private final Path folder;
  private final Optional<Requested<String>> hub;
  private final String twice;
  private final Problems problems = new Problems();

  /**
   * @param folder where the names of files in texts, and of {@code hub}, start from
   * @param hub the hub to compare with instead of the shape's own
   */
  public Studies(Path folder, Optional<Requested<String>> hub) {
    this(folder, hub, "name it once");
  }

  /**
   * @param folder where the names of files in texts, and of {@code hub}, start from
   * @param hub the hub to compare with instead of the shape's own
   * @param twice what to do instead of naming one file twice
   */
  public Studies(Path folder, Optional<Requested<String>> hub, String twice) {
    this.folder = folder;
    this.hub = hub;
    this.twice = twice;
  }

  /** The plate of a shape, not judged. */
  public static Plate plate(ShapeSource source, Path folder) {
    return LaidUp.of(ShapeFile.of(source.tree(), hubs(source, folder)));
  }

  /**
   * What a shape draws whose features clash, so that it is no plate; empty where nothing clashes.
   *
   * @throws BadInput when it cannot be read at all
   */
  public static Optional<Sketch> sketch(ShapeSource source, Path folder) {
    return ShapeFile.sketch(source.tree(), hubs(source, folder));
  }

  /** A hub file that a shape file names lies beside it. */
  private static HubCatalogue hubs(ShapeSource source, Path folder) {
    if (source instanceof ShapeSource.OfFile file) {
      Path parent = file.file().getParent();
      return new HubCatalogue(parent == null ? Path.of("") : parent);
    }
    return new HubCatalogue(folder);
  }

  /** Reads something else whose problems belong to the same run; null when it has any. */
  public <T> T with(Supplier<T> reading) {
    try {
      return reading.get();
    } catch (BadInput bad) {
      problems.add(bad);
      return null;
    }
  }

  /**
   * Reads a shape and does not judge it.
   *
   * @throws BadInput with all problems so far
   */
  public Plate plate(ShapeSource shape) {
    Plate plate = with(() -> plate(shape, folder));
    problems.throwIfAny();
    return plate;
  }

  /**
   * Reads and judges a shape.
   *
   * @throws BadInput with all problems so far
   */
  public Study one(ShapeSource shape) {
    return read(List.of(shape)).get(0);
  }

  /**
   * Reads and judges shapes, with advice that was tried.
   *
   * @throws BadInput with all problems so far
   */
  public List<Study> all(List<ShapeSource> shapes) {
    return read(shapes).stream().map(this::advised).toList();
  }

  private List<Study> read(List<ShapeSource> shapes) {
    Optional<HubSpec> other = Optional.ofNullable(with(this::other));
    List<Study> studies = new ArrayList<>();
    for (ShapeSource shape : shapes) {
      Study one = with(() -> study(shape, other));
      if (one != null) {
        studies.add(one);
      }
    }
    refuseTwins(studies);
    problems.throwIfAny();
    return studies;
  }

  /** The same study with advice that was tried; see {@link ShapeCures}. */
  public Study advised(Study study) {
    return advised(study, Progress.SILENT);
  }

  /** The same, telling how far it has come: each trial takes as long as the review. */
  public Study advised(Study study, Progress progress) {
    AtomicInteger tried = new AtomicInteger();
    ReviewReport review =
        ShapeCures.advised(
            study.plate(),
            study.joints(),
            study.review(),
            study.source()::tree,
            sets -> {
              progress.at("cures tried", tried.getAndIncrement(), ShapeCures.TRIALS);
              return trial(study, sets);
            });
    return new Study(
        study.source(), study.plate(), study.hub(), study.fit(), study.joints(), review);
  }

  /** A plate with more overrides, judged against the same hub; empty where they make no plate. */
  Optional<Study> varied(Study study, List<String> sets) {
    try {
      return Optional.of(study(study.source().with(sets), study.hub()));
    } catch (BadInput | GeometryException impossible) {
      return Optional.empty();
    }
  }

  private Optional<ShapeCures.Trial> trial(Study study, List<String> sets) {
    try {
      Plate plate = plate(study.source().with(sets), folder);
      JointPlan joints = JointPlan.of(plate, study.hub());
      return Optional.of(
          new ShapeCures.Trial() {
            @Override
            public List<Finding> of(String rule) {
              return Review.of(rule, plate, joints);
            }

            @Override
            public List<Finding> all() {
              return judged(plate, joints, study.hub().map(s -> HubFit.of(plate, s))).findings();
            }
          });
    } catch (BadInput | GeometryException impossible) {
      return Optional.empty();
    }
  }

  /** Has something done with each shape, and keeps what is wrong until all are done. */
  public void each(List<Study> studies, Consumer<Study> work) {
    for (Study one : studies) {
      with(
          () -> {
            work.accept(one);
            return one;
          });
    }
    problems.throwIfAny();
  }

  private HubSpec other() {
    return hub.map(h -> new HubCatalogue(folder).spec(h.value(), h.place())).orElse(null);
  }

  Study study(ShapeSource source, Optional<HubSpec> other) {
    Plate plate = plate(source, folder);
    Optional<HubSpec> spec =
        other.or(() -> plate.hub().map(name -> hubs(source, folder).spec(name, Place.BUILT_IN)));
    Optional<HubFitResult> fit = spec.map(s -> HubFit.of(plate, s));
    JointPlan joints = JointPlan.of(plate, spec);
    return new Study(source, plate, spec, fit, joints, judged(plate, joints, fit));
  }

  private static ReviewReport judged(Plate plate, JointPlan joints, Optional<HubFitResult> fit) {
    return Review.of(plate, joints, fit.map(HubFitResult::findings).orElse(List.of()));
  }

  /** Names that differ only by case or by the way of writing accents are one on many disks. */
  private void refuseTwins(List<Study> studies) {
    Map<String, Study> byName = new LinkedHashMap<>();
    for (Study one : studies) {
      String name = Normalizer.normalize(one.plate().name(), Normalizer.Form.NFC);
      Study twin = byName.putIfAbsent(name.toLowerCase(Locale.ROOT), one);
      if (twin != null) {
        boolean same = one.source().equals(twin.source());
        problems.add(
            new Problem(
                Place.ofFile(one.source().name()),
                "",
                "",
                same
                    ? "is named twice"
                    : "would have the same kit folder '"
                        + one.plate().name()
                        + "' as "
                        + Place.ofFile(twin.source().name()),
                same
                    ? twice
                    : "rename one of them, or make them one after the other into different"
                        + " folders"));
      }
    }
  }
}
