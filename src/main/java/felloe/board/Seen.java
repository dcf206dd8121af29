package felloe.board;

import felloe.plate.BadInput;
import felloe.plate.Problem;
import felloe.plate.Sketch;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a shape file's text says: a plate with its review, or why there is none.
 *
 * @param text the text
 * @param tree its values; empty where it cannot be read at all
 * @param study the plate; empty where it is none
 * @param sketch what it draws whose features clash; empty where nothing does
 * @param problems what is wrong with it; none where it is a plate
 */
record Seen(
    String text,
    Optional<YamlTree> tree,
    Optional<Study> study,
    Optional<Sketch> sketch,
    List<Problem> problems) {

  /**
   * Reads and judges a text.
   *
   * @param name of the shape file
   * @param folder where names of hub files start from
   */
  static Seen of(String name, String text, Path folder) {
    YamlTree tree;
    try {
      tree = YamlTree.parse(name, text);
    } catch (BadInput bad) {
      return new Seen(text, Optional.empty(), Optional.empty(), Optional.empty(), bad.problems());
    }
    ShapeSource source = ShapeSource.tree(tree);
    try {
      Study study = new Studies(folder, Optional.empty()).one(source);
      return new Seen(text, Optional.of(tree), Optional.of(study), Optional.empty(), List.of());
    } catch (BadInput bad) {
      Optional<Sketch> sketch = Studies.sketch(source, folder);
      return new Seen(text, Optional.of(tree), Optional.empty(), sketch, bad.problems());
    }
  }

  /** Whether there is something new to draw. */
  boolean drawn() {
    return study.isPresent() || sketch.isPresent();
  }
}
