package felloe.service;

import felloe.layup.LayupPlan;
import felloe.layup.MaterialBook;
import felloe.plate.LayupWish;
import felloe.plate.Plate;
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
   * The whole plan.
   *
   * @param studies what reads the shape; its problems and the request's are told together
   * @param folder where names of files start from
   * @throws felloe.plate.BadInput with everything that is wrong
   */
  public static LayupPlan of(ShapeSource shape, Request request, Studies studies, Path folder) {
    MaterialBook book = studies.with(() -> book(request.materials(), folder));
    Plate plate = studies.plate(shape);
    return LayupPlan.of(plate, request.wish(), book, Materials.builtIn()::find);
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
