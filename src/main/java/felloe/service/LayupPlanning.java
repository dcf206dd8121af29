package felloe.service;

import felloe.layup.LayupPlan;
import felloe.layup.MaterialBook;
import felloe.plate.LayupWish;
import felloe.shape.Materials;
import java.nio.file.Path;
import java.util.Optional;

/** Plans how the stock of a plate is laid up, beside the other ways of getting it. */
public final class LayupPlanning {

  private LayupPlanning() {}

  /**
   * How a plan is asked for.
   *
   * @param wish before what the shape file asks for
   * @param materials a file of the maker's own materials and prices
   */
  public record Request(LayupWish wish, Optional<Path> materials) {

    /** As the shape file has it, or as usual. */
    public static final Request USUAL = new Request(LayupWish.NONE, Optional.empty());
  }

  /**
   * The whole plan, and the plate that it is for.
   *
   * @param study the plate, judged
   * @param plan how it is laid up
   */
  public record Planned(Study study, LayupPlan plan) {}

  /**
   * The whole plan.
   *
   * @param studies what reads the shape; its problems and the request's are told together
   * @param folder where names of files start from
   * @throws felloe.plate.BadInput with everything that is wrong
   */
  public static Planned of(ShapeSource shape, Request request, Studies studies, Path folder) {
    MaterialBook book = studies.with(() -> book(request.materials(), folder));
    Study study = studies.one(shape);
    LayupPlan plan = LayupPlan.of(study.plate(), request.wish(), book, Materials.builtIn()::find);
    return new Planned(study, plan);
  }

  /**
   * The materials that are known, the maker's own among them.
   *
   * @throws felloe.plate.BadInput with everything that is wrong with the file
   */
  public static MaterialBook book(Optional<Path> own, Path folder) {
    MaterialBook known = MaterialBook.builtIn();
    return own.map(file -> known.with(folder.resolve(file))).orElse(known);
  }
}
