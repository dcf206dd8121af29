package felloe.shape;

import felloe.plate.Grip.GripMaterial;
import felloe.plate.MaterialKind;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What grips may be made of, read from {@code felloe/grip-materials.yaml}. */
final class GripMaterials {

  private static final String RESOURCE = "/felloe/grip-materials.yaml";

  private final Map<String, GripMaterial> byName = new TreeMap<>();

  private GripMaterials(Fields top, Problems problems) {
    Fields list = top.group("materials");
    for (String name : list.keys()) {
      Fields f = list.group(name);
      String title = f.text("title").required();
      MaterialKind kind = f.oneOf("kind", MaterialKind.class).required();
      double density = f.number("density").positive().required();
      double modulus = f.number("modulus").positive().required();
      String basis = f.longText("basis").required();
      f.build(() -> new GripMaterial(name, title, kind, density, modulus, basis))
          .ifPresent(material -> byName.put(name, material));
    }
    top.done();
    problems.throwIfAny();
  }

  /**
   * Reads the built-in materials.
   *
   * @throws felloe.plate.BadInput when the data is damaged
   */
  static GripMaterials builtIn() {
    Problems problems = new Problems();
    return new GripMaterials(BuiltIn.tree(RESOURCE).fields(problems), problems);
  }

  Optional<GripMaterial> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** All names, in order. */
  List<String> names() {
    return List.copyOf(byName.keySet());
  }
}
