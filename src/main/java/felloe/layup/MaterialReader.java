package felloe.layup;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.laminate.PlyStrength;
import felloe.plate.FibreKind;
import felloe.plate.LayupWish;
import felloe.plate.Sheet;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.PriceList;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a file of materials on top of those that are known already. */
final class MaterialReader {

  /** In this order, since a cloth names its fibre. */
  private static final List<String> SECTIONS =
      List.of("fibres", "cloths", "resins", "processes", "sheets");

  private static final String NAME = "[a-z0-9][a-z0-9.-]*";

  /** How far the two ratios of one resin may disagree. */
  private static final double RATIO_SLACK = 0.06;

  private final MaterialBook.Builder book;

  private MaterialReader(MaterialBook.Builder book) {
    this.book = book;
  }

  /**
   * Reads one file.
   *
   * @throws felloe.plate.BadInput with every problem of it
   */
  static void read(YamlTree tree, MaterialBook.Builder book) {
    Problems problems = new Problems();
    Fields top = tree.fields(problems);
    top.integer("felloe-materials").between(1, 1).required();
    MaterialReader reader = new MaterialReader(book);
    for (String section : SECTIONS) {
      if (top.has(section)) {
        reader.each(section, top.group(section));
      }
    }
    book.prices(PriceList.read(top).over(book.prices()));
    top.done();
    problems.throwIfAny();
  }

  private void each(String section, Fields list) {
    for (String name : list.keys()) {
      Fields f = list.group(name);
      if (!name.matches(NAME)) {
        f.problem("must have a name of small letters, digits, dots and hyphens", "rename it");
      }
      switch (section) {
        case "fibres" -> keep(book.fibres(), name, fibre(name, f));
        case "cloths" -> keep(book.cloths(), name, cloth(name, f));
        case "resins" -> keep(book.resins(), name, resin(name, f));
        case "processes" -> keep(book.processes(), name, process(name, f));
        default -> keep(book.sheets(), name, sheet(name, f));
      }
    }
  }

  private static <T> void keep(Map<String, T> all, String name, Optional<T> made) {
    if (made.isPresent()) {
      all.put(name, made.get());
    }
  }

  private static double gigapascals(Fields f, String key) {
    return gigapascals(f.entry(key));
  }

  private static double gigapascals(Entry entry) {
    return entry.stress().positive().required() / 1000;
  }

  private Optional<Fibre> fibre(String name, Fields f) {
    String title = f.text("title").or(name);
    FibreKind kind = f.oneOf("kind", FibreKind.class).or(FibreKind.OTHER);
    double density = f.number("density").between(0.5, 5).required();
    double modulus = gigapascals(f, "modulus");
    double cross = gigapascals(f, "cross-modulus");
    Bases bases = Bases.read(f, List.of("density", "modulus", "cross-modulus"));
    return f.build(() -> new Fibre(name, title, kind, density, modulus, cross, bases));
  }

  private Optional<Cloth> cloth(String name, Fields f) {
    String title = f.text("title").or(name);
    String[] known = book.fibres().keySet().toArray(String[]::new);
    String fibre = f.entry("fibre").oneOf(known).required();
    double weight = f.number("areal-weight").between(10, 3000).required();
    Weave weave = f.oneOf("weave", Weave.class).required();
    double width = f.length("roll-width").between(50, 5000).required();
    Fields g = f.group("stiffness");
    double e1 = gigapascals(g, "E1");
    double e2 = gigapascals(g, "E2");
    double g12 = gigapascals(g, "G12");
    double nu12 = g.number("nu12").between(0, 0.9).required();
    double fraction =
        g.number("fraction").between(LayupWish.LEAST_FRACTION, LayupWish.MOST_FRACTION).required();
    g.done();
    Optional<PlyStrength> strength = strength(f);
    int strip = f.integer("strip-class").between(1, 4).required();
    Bases bases =
        Bases.read(
            f, List.of("areal-weight", "roll-width", "stiffness", "strength", "strip-class"));
    return f.build(
        () ->
            new Cloth(
                name,
                title,
                book.fibres().get(fibre),
                weight,
                weave,
                width,
                new Cloth.Stiffness(e1, e2, g12, nu12, fraction),
                strength,
                strip,
                bases));
  }

  private static Optional<PlyStrength> strength(Fields f) {
    if (!f.has("strength")) {
      return Optional.empty();
    }
    Fields g = f.group("strength");
    double xt = g.stress("Xt").positive().required();
    double xc = g.stress("Xc").positive().required();
    double yt = g.stress("Yt").positive().required();
    double yc = g.stress("Yc").positive().required();
    double s = g.stress("S").positive().required();
    return g.build(() -> new PlyStrength(xt, xc, yt, yc, s));
  }

  private Optional<ResinSystem> resin(String name, Fields f) {
    String title = f.text("title").or(name);
    double density = f.number("density").between(0.8, 2).required();
    OptionalDouble resin = optional(f, "resin-density", 0.7, 2);
    OptionalDouble hardener = optional(f, "hardener-density", 0.7, 2);
    OptionalDouble volume = optional(f, "hardener-by-volume", 0.5, 200);
    double weight = byWeight(f, resin, hardener, volume);
    TimeCurve pot = curve(f, "pot-life", "minutes");
    double doubled =
        f.has("pot-life-doubled")
            ? f.number("pot-life-doubled").between(0.2, 1).required()
            : ResinSystem.USUAL_DOUBLED;
    TimeCurve working = curve(f, "working-time", "minutes");
    TimeCurve cure = curve(f, "cure", "hours");
    Optional<ResinSystem.PostCure> post = Optional.empty();
    if (f.has("post-cure")) {
      Fields g = f.group("post-cure");
      double at = g.number("at").between(20, 250).required();
      double hours = g.number("hours").positive().atMost(200).required();
      post = g.build(() -> new ResinSystem.PostCure(at, hours));
    }
    double limit = f.number("pot-limit").between(10, 5000).required();
    Bases bases =
        Bases.read(
            f,
            List.of(
                "density",
                "resin-density",
                "hardener-density",
                "hardener-by-weight",
                "hardener-by-volume",
                "pot-life",
                "pot-life-doubled",
                "working-time",
                "cure",
                "post-cure",
                "pot-limit"));
    Optional<ResinSystem.PostCure> after = post;
    return f.build(
        () ->
            new ResinSystem(
                name, title, density, resin, hardener, weight, volume, pot, doubled, working, cure,
                after, limit, bases));
  }

  /** The ratio by weight; one by volume alone will not do, since the plan is weighed out. */
  private static double byWeight(
      Fields f, OptionalDouble resin, OptionalDouble hardener, OptionalDouble volume) {
    if (!f.has("hardener-by-weight") && f.has("hardener-by-volume")) {
      f.allow("hardener-by-weight");
      f.problem(
          "hardener-by-volume",
          "will not do alone: resin is weighed, and a ratio by volume is another number than one by"
              + " weight",
          "add hardener-by-weight from the data sheet"
              + (volume.isPresent() && resin.isPresent() && hardener.isPresent()
                  ? ", near "
                      + Numbers.brief(
                          volume.getAsDouble() * hardener.getAsDouble() / resin.getAsDouble(), 1)
                      + " by these densities"
                  : ""));
      return Double.NaN;
    }
    double weight = f.number("hardener-by-weight").between(0.5, 200).required();
    if (!Double.isNaN(weight) && volume.isPresent() && resin.isPresent() && hardener.isPresent()) {
      double other = volume.getAsDouble() * hardener.getAsDouble() / resin.getAsDouble();
      if (Math.abs(other / weight - 1) > RATIO_SLACK) {
        f.problem(
            "hardener-by-weight",
            "does not agree with hardener-by-volume and the densities, which make it "
                + Numbers.brief(other, 1)
                + " by weight",
            "check whether one of them was taken for the other");
      }
    }
    return weight;
  }

  private static OptionalDouble optional(Fields f, String key, double least, double most) {
    return f.has(key) ? f.number(key).between(least, most).optional() : OptionalDouble.empty();
  }

  private static TimeCurve curve(Fields f, String key, String unit) {
    List<TimeCurve.Known> known = new ArrayList<>();
    for (Fields g : f.list(key).atLeast(1).atMost(20).mappings()) {
      double at = g.number("at").between(0, 100).required();
      double time = g.number(unit).positive().atMost(10_000).required();
      g.build(() -> new TimeCurve.Known(at, time)).ifPresent(known::add);
    }
    known.sort(Comparator.comparingDouble(TimeCurve.Known::temperature));
    for (int i = 1; i < known.size(); i++) {
      if (known.get(i).temperature() == known.get(i - 1).temperature()) {
        f.problem(key, "has two times at one temperature", "keep one of them");
      } else if (known.get(i).time() > known.get(i - 1).time()) {
        f.problem(
            key,
            "is longer when it is warmer; resin sets faster in the warm",
            "check the temperatures and the times against the data sheet");
      }
    }
    return new TimeCurve(known.isEmpty() ? List.of(new TimeCurve.Known(20, 1)) : known);
  }

  private Optional<Process> process(String name, Fields f) {
    String title = f.text("title").or(name);
    Fields g = f.group("fraction");
    double low = fraction(g, "low", LayupWish.LEAST_FRACTION);
    double usual = fraction(g, "usual", low);
    double high = fraction(g, "high", usual);
    g.done();
    Fields l = f.group("losses");
    Process.Losses losses =
        new Process.Losses(
            l.number("brush").between(0, 1000).required(),
            l.number("roller").between(0, 1000).required(),
            l.number("pot").between(0, 100).required(),
            l.number("squeeze-out").between(0, 200).required(),
            l.number("absorbed").between(0, 5000).required());
    l.done();
    Fields m = f.group("minutes");
    Process.Minutes minutes =
        new Process.Minutes(
            m.number("ply").between(0, 600).required(),
            m.number("square-metre").between(0, 600).required(),
            m.number("mix").between(0, 60).required(),
            m.number("close").between(0, 600).required());
    m.done();
    boolean together = f.bool("together").or(false);
    double pressure = f.number("pressure").between(0, 10_000).required();
    int plates = f.integer("plates").between(1, 2).required();
    Fields h = f.group("hours");
    double ready = h.number("ready").between(0, 100).required();
    double finish = h.number("finish").between(0, 100).required();
    h.done();
    Bases bases =
        Bases.read(f, List.of("fraction", "losses", "minutes", "pressure", "plates", "hours"));
    return f.build(
        () ->
            new Process(
                name,
                title,
                new Process.Fraction(low, usual, high),
                losses,
                minutes,
                together,
                pressure,
                plates,
                ready,
                finish,
                bases));
  }

  private static double fraction(Fields f, String key, double least) {
    return f.number(key).atLeast(least).atMost(LayupWish.MOST_FRACTION).required();
  }

  private Optional<SheetStock> sheet(String name, Fields f) {
    String title = f.text("title").or(name);
    String material = f.text("material").required();
    List<Double> thicknesses = new ArrayList<>(f.list("thicknesses").atLeast(1).lengths());
    for (int i = 1; i < thicknesses.size(); i++) {
      if (thicknesses.get(i) <= thicknesses.get(i - 1)) {
        f.problem("thicknesses", "must grow from the first to the last", "sort them");
        break;
      }
    }
    List<Sheet> sizes = new ArrayList<>();
    for (Point size : f.list("sizes").atLeast(1).points()) {
      if (size.x() <= 0 || size.y() <= 0) {
        f.problem("sizes", "must be above zero", "write [width, height]");
      } else {
        sizes.add(new Sheet(size.x(), size.y()));
      }
    }
    sizes.sort(Comparator.comparingDouble(size -> size.width() * size.height()));
    List<Double> moduli = moduli(f, thicknesses.size());
    Bases bases = Bases.read(f, List.of("thicknesses", "sizes", "E"));
    return f.build(() -> new SheetStock(name, title, material, thicknesses, sizes, moduli, bases));
  }

  private static List<Double> moduli(Fields f, int count) {
    if (f.entry("E").kind() != Entry.Kind.LIST) {
      double one = gigapascals(f, "E");
      return Double.isNaN(one) ? List.of() : Collections.nCopies(count, one);
    }
    List<Double> each = f.list("E").entries().stream().map(MaterialReader::gigapascals).toList();
    if (each.size() != count) {
      f.problem("E", "must be one figure, or one for each of the " + count + " thicknesses", "");
    }
    return each;
  }
}
