package felloe.kit;

import felloe.drawing.Cautions;
import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.Transaction;
import felloe.layup.LayupPlan;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.Plate;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.shape.Materials;
import felloe.yaml.Problems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans lay-ups and writes their files. */
final class LayupBench {

  private final Path folder;
  private final Disk disk;

  LayupBench(Path folder, Disk disk) {
    this.folder = folder;
    this.disk = disk;
  }

  LayupAnswer answer(ShapeSource shape, LayupRequest request, Optional<Path> out)
      throws CannotWrite {
    Problems problems = new Problems();
    LayupOrder order = null;
    Plate plate = null;
    try {
      order = LayupOrder.of(request, folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    try {
      plate = Studies.plate(shape, folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    problems.throwIfAny();
    Materials materials = Materials.builtIn();
    LayupPlan plan = LayupPlan.of(plate, order.wish(), order.book(), materials::find);
    boolean laidUp = laidUp(plate, request);
    List<Path> files =
        out.isPresent() && laidUp
            ? Transaction.into(out.get(), disk)
                .here(KitNames.set("layup", plate, new LayupSheet(plan).files(order.paper())))
                .commit()
                .files()
            : List.of();
    LayupSections sections = new LayupSections(plan);
    List<LayupSection> told = new ArrayList<>();
    if (laidUp) {
      told.add(LayupSection.words("", List.of(sections.heading())));
      told.addAll(sections.all());
    } else {
      told.add(sections.ways());
    }
    List<String> warnings = new ArrayList<>();
    if (laidUp) {
      warnings.addAll(plan.stack().warnings());
      warnings.addAll(plan.notes());
    } else if (out.isPresent()) {
      warnings.add(
          "no pages are made for stock that is bought; --cloth plans a lay-up and makes them");
    }
    return new LayupAnswer(
        plate,
        laidUp,
        !laidUp || plan.possible(),
        laidUp ? plan.pots().obstacles() : List.of(),
        told,
        sections.sources(),
        warnings,
        laidUp ? plan.cautions() : bought(plate),
        () -> LayupJson.text(plan, laidUp, files),
        files);
  }

  private static List<String> bought(Plate plate) {
    List<String> cautions = new ArrayList<>(Cautions.cutting(plate.stock().material().kind()));
    cautions.add(Cautions.USE);
    return cautions;
  }

  /** Whether the stock is one that is laid up: a laminate that is not bought, or when asked for. */
  private static boolean laidUp(Plate plate, LayupRequest request) {
    LayupWish wish = plate.stock().layup();
    boolean asked =
        request.value("--cloth").isPresent()
            || request.value("--plies").isPresent()
            || wish.cloth().isPresent()
            || wish.plies().isPresent()
            || wish.angles().isPresent();
    return asked || plate.stock().material().laidUp();
  }
}
