package felloe.service;

import felloe.laminate.StripsFile;
import felloe.laminate.TestedStrips;
import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;

/**
 * What broken strips tell of their laminate.
 *
 * @param tested the strips and what they come to
 */
public record StripsOutcome(TestedStrips tested) {

  /**
   * Reads a file of strips.
   *
   * @param sets values to take instead of the file's
   * @throws felloe.plate.BadInput with every problem of the file
   */
  public static StripsOutcome of(Path file, List<String> sets) {
    return new StripsOutcome(StripsFile.read(YamlTree.read(file).with(sets)));
  }
}
