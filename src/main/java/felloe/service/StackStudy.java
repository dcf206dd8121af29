package felloe.service;

import felloe.laminate.StackFile;
import felloe.laminate.StackResult;
import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;

/** Works out a stack on its own, without a shape. */
public final class StackStudy {

  private StackStudy() {}

  /**
   * Reads a stack and works it out.
   *
   * @param sets values to take instead of the file's
   * @throws felloe.plate.BadInput with every problem of the file
   */
  public static StackResult of(Path file, List<String> sets) {
    return StackResult.of(StackFile.read(YamlTree.read(file).with(sets)));
  }
}
