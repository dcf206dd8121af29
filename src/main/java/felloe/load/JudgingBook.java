package felloe.load;

import felloe.plate.MaterialKind;
import felloe.plate.SourcedFigure;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * Where a plate's material is judged, read from {@code felloe/load/judging.yaml}, which tells the
 * basis of each figure.
 *
 * @param pointStress distance from edges at which laminates are judged, mm
 * @param besideRigid distance from heads, ends of clamped edges and sharp corners within which
 *     nothing is judged, in thicknesses
 * @param faceBesideHead distance from heads within which the hub's face is left out, in thicknesses
 * @param proofSpread how far a sound plate may bend more or less than reckoned, as a part of it
 * @param proofLeft what may be left of the deflection when the load is off, as a part of it
 */
record JudgingBook(
    double pointStress,
    double besideRigid,
    double faceBesideHead,
    Map<MaterialKind, SourcedFigure> proofSpread,
    SourcedFigure proofLeft) {

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
      Fields spreads = top.group("proof-spread");
      Map<MaterialKind, SourcedFigure> spread = new EnumMap<>(MaterialKind.class);
      for (MaterialKind kind : MaterialKind.values()) {
        String key = kind.name().toLowerCase(Locale.ROOT);
        spread.put(kind, sourced(spreads, key, "spread of the deflection"));
      }
      spreads.done();
      SourcedFigure left = sourced(top, "proof-left", "left when the weight is off");
      top.done();
      problems.throwIfAny();
      return new JudgingBook(point, rigid, face, spread, left);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double figure(Fields top, String key) {
    return sourced(top, key, key).value();
  }

  private static SourcedFigure sourced(Fields top, String key, String name) {
    Fields f = top.group(key);
    double value = f.number("value").positive().required();
    String basis = f.text("basis").required();
    f.done();
    return new SourcedFigure(name, value, "", basis);
  }
}
