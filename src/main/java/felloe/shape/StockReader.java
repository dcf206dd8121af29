package felloe.shape;

import felloe.plate.Face;
import felloe.plate.LayupWish;
import felloe.plate.Material;
import felloe.plate.Sheet;
import felloe.plate.Stock;
import felloe.yaml.Fields;
import java.util.Optional;

/** Reads what the plate is cut from. */
final class StockReader {

  private static final double THICKEST = 100;

  private StockReader() {}

  static Optional<Stock> read(Fields top) {
    if (!top.has("stock")) {
      top.problem("must have stock", "add 'stock: {material: birch-plywood, thickness: 6 mm}'");
      return Optional.empty();
    }
    Fields f = top.group("stock");
    Materials materials = Materials.builtIn();
    String[] names = materials.names().toArray(String[]::new);
    String name = f.entry("material").oneOf(names).required();
    double thickness = f.length("thickness").positive().atMost(THICKEST).required();
    Optional<Double> density =
        f.has("density")
            ? Optional.of(f.number("density").positive().atMost(25).required())
            : Optional.empty();
    Face face = f.oneOf("template_face", Face.class).or(Face.FRONT);
    Optional<Optional<Sheet>> sheet = sheet(f);
    Optional<LayupWish> layup = LayupReader.read(f);
    return f.build(
        () ->
            new Stock(
                own(materials.find(name).orElseThrow(), density),
                thickness,
                sheet.orElseThrow(),
                face,
                layup.orElseThrow(),
                f.place()));
  }

  private static Material own(Material material, Optional<Double> density) {
    return density.map(material::weighed).orElse(material);
  }

  /** Outer empty: wrong; inner empty: none was given. */
  private static Optional<Optional<Sheet>> sheet(Fields f) {
    if (!f.has("sheet")) {
      return Optional.of(Optional.empty());
    }
    Fields g = f.group("sheet");
    double width = g.length("width").positive().required();
    double height = g.length("height").positive().required();
    return g.build(() -> Optional.of(new Sheet(width, height)));
  }
}
