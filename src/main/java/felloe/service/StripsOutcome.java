package felloe.service;

import felloe.laminate.StripsFile;
import felloe.laminate.TestedStrips;
import felloe.yaml.Overrides;
import felloe.yaml.YamlTree;
import java.nio.file.Path;

/**
 * What broken strips tell of their laminate.
 *
 * @param tested the strips and what they come to
 */
public record StripsOutcome(TestedStrips tested) {

  /**
   * Reads a file of strips.
   *
   * @throws felloe.plate.BadInput with every problem of the file
   */
  public static StripsOutcome of(Path file, Overrides overrides) {
    return new StripsOutcome(StripsFile.read(YamlTree.read(file).with(overrides)));
  }
}
