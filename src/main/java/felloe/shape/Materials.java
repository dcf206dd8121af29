package felloe.shape;

import felloe.plate.FibreKind;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** The sheet materials that a shape file may name, read from {@code felloe/materials.yaml}. */
public final class Materials {

  private static final String RESOURCE = "/felloe/materials.yaml";

  private final TreeMap<String, Material> byName = new TreeMap<>();

  private Materials(Fields top, Problems problems) {
    Fields list = top.group("materials");
    for (String name : list.keys()) {
      Fields f = list.group(name);
      String title = f.text("title").required();
      MaterialKind kind = f.oneOf("kind", MaterialKind.class).required();
      double density = f.number("density").positive().required();
      String basis = f.longText("basis").required();
      Optional<FibreKind> fibre =
          f.has("fibre") ? f.oneOf("fibre", FibreKind.class).optional() : Optional.empty();
      boolean laidUp = f.bool("laid-up").or(false);
      f.build(() -> new Material(name, title, kind, density, basis, fibre, laidUp))
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
  public static Materials builtIn() {
    Problems problems = new Problems();
    return new Materials(BuiltIn.tree(RESOURCE).fields(problems), problems);
  }

  /** The material with a name, if there is one. */
  public Optional<Material> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** All names, in order. */
  public List<String> names() {
    return List.copyOf(byName.keySet());
  }
}
