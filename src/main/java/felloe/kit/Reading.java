package felloe.kit;

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
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Reads and reviews shapes, and keeps every problem until all have been read. */
final class Reading {

  private final Path folder;
  private final Optional<String> hub;
  private final Problems problems = new Problems();

  /**
   * A shape that was read and reviewed.
   *
   * @param source where from
   * @param plate the plate
   * @param answer what the check says
   * @param fit how it meets the hub, where there is one
   * @param joints the plan of its screws
   */
  record Studied(
      ShapeSource source,
      Plate plate,
      CheckAnswer answer,
      Optional<HubFitResult> fit,
      JointPlan joints) {}

  /**
   * A reading.
   *
   * @param folder where the names of files in texts, and of {@code hub}, start from
   * @param hub the hub to compare with instead of the shape's own
   */
  Reading(Path folder, Optional<String> hub) {
    this.folder = folder;
    this.hub = hub;
  }

  /** The plate of a shape, not reviewed. */
  static Plate plate(ShapeSource source, Path folder) {
    if (source instanceof ShapeSource.OfFile file) {
      return LaidUp.of(ShapeFile.read(file.file(), file.sets(), hubs(source, folder)));
    }
    ShapeSource.OfText text = (ShapeSource.OfText) source;
    return LaidUp.of(ShapeFile.parse(text.name(), text.text(), text.sets(), hubs(source, folder)));
  }

  /** The hub that a plate's shape file names. */
  static Optional<HubSpec> hub(Plate plate, ShapeSource source, Path folder) {
    return plate.hub().map(name -> hubs(source, folder).spec(name, Place.BUILT_IN));
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
  <T> T with(Supplier<T> reading) {
    try {
      return reading.get();
    } catch (BadInput bad) {
      problems.add(bad);
      return null;
    }
  }

  /**
   * Reads and reviews shapes.
   *
   * @throws BadInput with all problems of this reading
   */
  List<Studied> all(List<ShapeSource> shapes) {
    HubSpec other =
        with(
            () ->
                hub.map(h -> new HubCatalogue(folder).spec(h, Place.ofOption("--hub", "")))
                    .orElse(null));
    List<Studied> studied = new ArrayList<>();
    for (ShapeSource shape : shapes) {
      Studied one = with(() -> study(shape, Optional.ofNullable(other)));
      if (one != null) {
        studied.add(one);
      }
    }
    refuseTwins(studied);
    problems.throwIfAny();
    return studied;
  }

  /** Has something done with each shape, and keeps what is wrong until all are done. */
  void each(List<Studied> studied, Consumer<Studied> work) {
    for (Studied one : studied) {
      try {
        work.accept(one);
      } catch (BadInput bad) {
        problems.add(bad);
      }
    }
    problems.throwIfAny();
  }

  /** The hub that a shape was compared with, if there is one. */
  Optional<HubSpec> hub(Studied studied) {
    return hub.map(h -> new HubCatalogue(folder).spec(h, Place.ofOption("--hub", "")))
        .or(
            () ->
                studied
                    .plate()
                    .hub()
                    .map(name -> hubs(studied.source(), folder).spec(name, Place.BUILT_IN)));
  }

  private Studied study(ShapeSource source, Optional<HubSpec> other) {
    Plate plate = plate(source, folder);
    Optional<HubSpec> spec = other.or(() -> hub(plate, source, folder));
    Optional<HubFitResult> fit = spec.map(s -> HubFit.of(plate, s));
    List<Finding> fits = fit.map(HubFitResult::findings).orElse(List.of());
    JointPlan joints = JointPlan.of(plate, spec);
    ReviewReport report = Review.of(plate, joints, fits);
    return new Studied(
        source,
        plate,
        new CheckAnswer(plate, report.findings(), report.cautions(), fit.map(HubAnswer::of)),
        fit,
        joints);
  }

  /** Names that differ only by case or by the way of writing accents are one on many disks. */
  private void refuseTwins(List<Studied> studied) {
    Map<String, Studied> byName = new LinkedHashMap<>();
    for (Studied one : studied) {
      String name = Normalizer.normalize(one.plate().name(), Normalizer.Form.NFC);
      Studied twin = byName.putIfAbsent(name.toLowerCase(Locale.ROOT), one);
      if (twin != null) {
        problems.add(
            new Problem(
                Place.ofFile(name(one.source())),
                "",
                "",
                "would have the same kit folder '"
                    + one.plate().name()
                    + "' as "
                    + Place.ofFile(name(twin.source())),
                "rename one of them, or make them one after the other with another --out"));
      }
    }
  }

  private static String name(ShapeSource source) {
    return source instanceof ShapeSource.OfFile file
        ? file.file().toString()
        : ((ShapeSource.OfText) source).name();
  }
}
