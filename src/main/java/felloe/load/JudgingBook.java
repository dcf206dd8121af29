package felloe.load;

import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * Where a plate's material is judged, read from {@code felloe/load/judging.yaml}, which tells the
 * basis of each figure.
 *
 * @param pointStress distance from edges at which laminates are judged, mm
 * @param besideRigid distance from heads, ends of clamped edges and sharp corners within which
 *     nothing is judged, in thicknesses
 * @param faceBesideHead distance from heads within which the hub's face is left out, in thicknesses
 */
record JudgingBook(double pointStress, double besideRigid, double faceBesideHead) {

  private static final String RESOURCE = "/felloe/load/judging.yaml";

  /**
   * Reads the built-in file.
   *
   * @throws felloe.plate.BadInput when it is damaged
   */
  static JudgingBook builtIn() {
    try (InputStream in = JudgingBook.class.getResourceAsStream(RESOURCE)) {
      Problems problems = new Problems();
      Fields top = YamlTree.read("built-in judging.yaml", in).fields(problems);
      double point = figure(top, "point-stress");
      double rigid = figure(top, "beside-rigid");
      double face = figure(top, "face-beside-head");
      top.done();
      problems.throwIfAny();
      return new JudgingBook(point, rigid, face);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double figure(Fields top, String key) {
    Fields f = top.group(key);
    double value = f.number("value").positive().required();
    f.text("basis").required();
    f.done();
    return value;
  }
}
