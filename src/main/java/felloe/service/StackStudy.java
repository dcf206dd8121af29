package felloe.service;

import felloe.laminate.StackFile;
import felloe.laminate.StackResult;
import felloe.yaml.Overrides;
import felloe.yaml.YamlTree;
import java.nio.file.Path;

/** Works out a stack on its own, without a shape. */
public final class StackStudy {

  private StackStudy() {}

  /**
   * Reads a stack and works it out.
   *
   * @throws felloe.plate.BadInput with every problem of the file
   */
  public static StackResult of(Path file, Overrides overrides) {
    return StackResult.of(StackFile.read(YamlTree.read(file).with(overrides)));
  }
}
