package felloe.kit;

import felloe.plate.Plate;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/**
 * The plan of a lay-up, and the other ways of getting the stock.
 *
 * @param plate the plate
 * @param laidUp whether the shape file's stock is one that is laid up
 * @param possible whether the lay-up can be done as planned
 * @param obstacles why it cannot
 * @param sections the plan in words; only the ways when the stock is not laid up
 * @param sources the figures that the plan rests on, each with where it comes from
 * @param warnings what the maker should know
 * @param cautions what goes along wherever the plan is shown
 * @param writer makes the JSON text, when it is asked for
 * @param files what was written
 */
public record LayupAnswer(
    Plate plate,
    boolean laidUp,
    boolean possible,
    List<String> obstacles,
    List<LayupSection> sections,
    LayupSection sources,
    List<String> warnings,
    List<String> cautions,
    Supplier<String> writer,
    List<Path> files) {

  /** Copies the lists. */
  public LayupAnswer {
    obstacles = List.copyOf(obstacles);
    sections = List.copyOf(sections);
    warnings = List.copyOf(warnings);
    cautions = List.copyOf(cautions);
    files = List.copyOf(files);
  }

  /** The whole plan as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return writer.get();
  }
}
