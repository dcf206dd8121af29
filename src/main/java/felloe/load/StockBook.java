package felloe.load;

import felloe.plate.SourcedFigure;
import felloe.yaml.BuiltIn;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How sheet stock bears load, read from {@code felloe/load/stock.yaml}. */
final class StockBook {

  private static final String RESOURCE = "/felloe/load/stock.yaml";

  private final Map<String, Known> known = new LinkedHashMap<>();

  /**
   * A material.
   *
   * @param strength how it bears load
   * @param figures the figures of the file, each with its basis
   */
  record Known(StockStrength strength, List<Listed> figures) {

    /** The figures of a thickness, mm. */
    List<SourcedFigure> figures(double thickness) {
      return figures.stream().map(f -> f.at(thickness, strength)).toList();
    }
  }

  /**
   * A figure of a material.
   *
   * @param name what it is
   * @param values one, or one for each thickness that the material is told in
   * @param unit its unit
   * @param basis where it comes from
   */
  record Listed(String name, List<Double> values, String unit, String basis) {

    SourcedFigure at(double thickness, StockStrength strength) {
      double value =
          values.size() > 1 && strength instanceof StockStrength.Grain grain
              ? TableInterpolation.at(grain.thicknesses(), values, thickness)
              : values.get(0);
      return new SourcedFigure(name, value, unit, basis);
    }
  }

  private StockBook(Fields top, Problems problems) {
    Fields list = top.group("materials");
    for (String name : list.keys()) {
      material(list.group(name)).ifPresent(one -> known.put(name, one));
    }
    top.done();
    problems.throwIfAny();
  }

  /**
   * Reads the built-in file.
   *
   * @throws felloe.plate.BadInput when it is damaged
   */
  static StockBook builtIn() {
    Problems problems = new Problems();
    return new StockBook(BuiltIn.tree(RESOURCE).fields(problems), problems);
  }

  /** The material of a name, if there is one. */
  Optional<Known> find(String name) {
    return Optional.ofNullable(known.get(name));
  }

  private static Optional<Known> material(Fields f) {
    Optional<String> form = f.exactlyOneOf("yields", "cracks", "cloth", "grain");
    if (form.isEmpty()) {
      return Optional.empty();
    }
    Fields g = f.group(form.get());
    Figures figures = new Figures(g, f.group("basis"));
    StockStrength strength =
        switch (form.get()) {
          case "yields" ->
              new StockStrength.Yields(
                  figures.number("nu", "Poisson's ratio"), figures.stress("yield", "yield"));
          case "cracks" ->
              new StockStrength.Cracks(
                  figures.stress("E", "modulus"),
                  figures.number("nu", "Poisson's ratio"),
                  figures.stress("strength", "strength, pulled"));
          case "cloth" ->
              new StockStrength.Cloth(
                  figures.number("nu12", "Poisson's ratio"),
                  figures.stress("G12", "shear modulus"),
                  figures.stress("between", "shear modulus between plies"),
                  figures.stress("Xt", "strength along the fibres, pulled"),
                  figures.stress("Xc", "strength along the fibres, pressed"),
                  figures.stress("S", "shear strength"));
          default ->
              new StockStrength.Grain(
                  g.list("thicknesses").atLeast(1).lengths(),
                  figures.stresses("E-across", "modulus across the grain"),
                  figures.number("nu12", "Poisson's ratio"),
                  figures.stress("G12", "shear modulus"),
                  figures.stress("between", "shear modulus across the thickness"),
                  figures.stresses("along", "strength in bending along the grain"),
                  figures.stresses("across", "strength in bending across the grain"),
                  figures.stress("shear", "shear strength"));
        };
    return f.build(() -> new Known(strength, figures.list));
  }

  /** Reads figures, and keeps each with its basis. */
  private static final class Figures {
    private final Fields values;
    private final Fields bases;
    private final List<Listed> list = new ArrayList<>();

    Figures(Fields values, Fields bases) {
      this.values = values;
      this.bases = bases;
    }

    double number(String key, String name) {
      return keep(key, name, values.number(key).between(0, 0.5).required(), "");
    }

    double stress(String key, String name) {
      return keep(key, name, values.stress(key).positive().required(), "MPa");
    }

    List<Double> stresses(String key, String name) {
      List<Double> all = new ArrayList<>();
      for (Entry item : values.list(key).atLeast(1).entries()) {
        all.add(item.stress().positive().required());
      }
      list.add(new Listed(name, List.copyOf(all), "MPa", bases.text(key).required()));
      return all;
    }

    private double keep(String key, String name, double value, String unit) {
      list.add(new Listed(name, List.of(value), unit, bases.text(key).required()));
      return value;
    }
  }
}
