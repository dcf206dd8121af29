package felloe.kit;

import felloe.geometry.Numbers;
import felloe.out.Json;
import felloe.template.PageSet;
import java.util.Optional;

/**
 * The pages that a template takes.
 *
 * @param paper what they are printed on
 * @param pages how many there are
 * @param rows rows of tiles
 * @param columns columns of tiles
 * @param bar true length of both check bars, mm
 * @param seamDistance least distance of a seam from a hole's centre, mm; empty without seams or
 *     holes
 * @param cutHoles holes that a seam runs through
 */
public record Pages(
    String paper,
    int pages,
    int rows,
    int columns,
    double bar,
    Optional<Double> seamDistance,
    int cutHoles) {

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Pages {
    Numbers.finite("bar", bar);
  }

  static Pages of(PageSet set) {
    return new Pages(
        set.paper(),
        set.pages().size(),
        set.grid().rows(),
        set.grid().columns(),
        set.bar(),
        Double.isFinite(set.seamDistance()) ? Optional.of(set.seamDistance()) : Optional.empty(),
        set.cutHoles());
  }

  Json json() {
    return Json.object()
        .with("paper", paper)
        .with("pages", pages)
        .with("rows", rows)
        .with("columns", columns)
        .with("bar", bar, 3)
        .with("seamDistance", Json.maybe(seamDistance, mm -> Json.number(mm, 3)))
        .with("cutHoles", cutHoles);
  }
}
