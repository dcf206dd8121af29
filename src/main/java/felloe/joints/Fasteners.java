package felloe.joints;

import felloe.plate.Joint.Head;
import felloe.plate.Joint.Nut;
import felloe.plate.Joint.Surface;
import felloe.plate.Joint.Tapped;
import felloe.plate.Joint.Washer;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
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
import java.util.function.BiFunction;

/**
 * Screws, washers, nuts and figures of practice that the program knows, each with its basis, from
 * the resources in {@code felloe/fasteners}.
 */
public final class Fasteners {

  private static final String FOLDER = "/felloe/fasteners/";

  /** Read once, when the first joint is planned. */
  private static final Fasteners STANDARD = new Fasteners();

  private final Map<String, HeadSize> heads;
  private final Map<String, WasherSize> washers;
  private final Map<String, NutSize> nuts;
  private final List<StrengthClass> classes = new ArrayList<>();
  private final Map<Boolean, List<Double>> lengths = new LinkedHashMap<>();
  private final Map<Boolean, String> lengthBases = new LinkedHashMap<>();
  private final Map<Surface, NutFactor> factors = new LinkedHashMap<>();
  private final Map<Tapped, SourcedFigure> engagements = new LinkedHashMap<>();
  private final Map<String, SourcedFigure> loads = new LinkedHashMap<>();
  private final Map<String, Allowables> allowables = new LinkedHashMap<>();
  private final SourcedFigure preload;
  private final SourcedFigure partFace;

  /** The program's own tables. */
  public static Fasteners standard() {
    return STANDARD;
  }

  private Fasteners() {
    Problems problems = new Problems();
    heads = sizes(problems, "heads", Fasteners::head);
    washers = sizes(problems, "washers", Fasteners::washer);
    nuts = sizes(problems, "nuts", Fasteners::nut);
    Fields top = top(problems, "classes");
    for (Fields f : top.list("classes").mappings()) {
      classes.add(
          new StrengthClass(
              f.text("name").required(),
              f.bool("inch").required(),
              f.number("proof").positive().required(),
              f.number("tensile").positive().required(),
              f.text("basis").required()));
    }
    top.done();
    top = top(problems, "lengths");
    for (boolean inch : new boolean[] {false, true}) {
      Fields f = top.mapping(inch ? "inch" : "metric").required();
      lengths.put(inch, List.copyOf(f.list("lengths").lengths()));
      lengthBases.put(inch, f.text("basis").required());
    }
    top.done();
    Fields practice = top(problems, "practice");
    preload = based(practice, "preload", "part of the proof load that a screw is tightened to", "");
    Fields surfaces = practice.mapping("surface").required();
    for (Surface surface : Surface.values()) {
      Fields f = surfaces.mapping(Entry.nameOf(surface)).required();
      double low = f.number("low").positive().required();
      double high = f.number("high").positive().required();
      factors.put(surface, new NutFactor(low, high, f.text("basis").required()));
    }
    Fields least = practice.mapping("engagement").required();
    for (Tapped tapped : Tapped.values()) {
      String material = Entry.nameOf(tapped);
      engagements.put(tapped, based(least, material, "least engagement in " + material, "d"));
    }
    Fields hands = practice.mapping("loads").required();
    loads.put("couple", based(hands, "couple", "turning moment over the wheel's diameter", "N"));
    loads.put("pull", based(hands, "pull", "pull in the plane of the plate", "N"));
    loads.put("push", based(hands, "push", "push square to the plate", "N"));
    practice.done();
    Fields strengths = top(problems, "allowables");
    Fields materials = strengths.mapping("materials").required();
    for (String material : materials.keys()) {
      Fields f = materials.mapping(material).required();
      allowables.put(
          material,
          new Allowables(
              based(f, "bearing", "bearing", "MPa"),
              based(f, "shear", "shear", "MPa"),
              based(f, "tension", "tension", "MPa"),
              based(f, "face", "face", "MPa")));
    }
    partFace = based(strengths, "part-face", "face of a clamped part", "MPa");
    strengths.done();
    problems.throwIfAny();
  }

  static Fields top(Problems problems, String name) {
    return BuiltIn.tree(FOLDER + name + ".yaml").fields(problems);
  }

  static SourcedFigure based(Fields f, String key, String name, String unit) {
    Fields figure = f.mapping(key).required();
    return new SourcedFigure(
        name, figure.number("value").required(), unit, figure.text("basis").required());
  }

  /** Tables of sizes by kind and thread; each table with its standard and the basis of columns. */
  private static <T> Map<String, T> sizes(
      Problems problems, String name, BiFunction<Fields, Fields, T> row) {
    Map<String, T> sizes = new LinkedHashMap<>();
    Fields top = top(problems, name);
    Fields kinds = top.mapping(name).required();
    for (String kind : kinds.keys()) {
      for (Fields table : kinds.list(kind).mappings()) {
        Fields rows = table.mapping("sizes").required();
        for (String thread : rows.keys()) {
          sizes.put(kind + " " + thread, row.apply(table, rows.mapping(thread).required()));
        }
        table.allow("standard", "basis", "angle");
      }
    }
    top.done();
    return sizes;
  }

  private static HeadSize head(Fields table, Fields row) {
    return new HeadSize(
        table.text("standard").required(),
        row.length("diameter").required(),
        row.length("height").required(),
        row.length("bearing").required(),
        Math.toRadians(table.angle("angle").or(0)),
        basis(table));
  }

  private static WasherSize washer(Fields table, Fields row) {
    return new WasherSize(
        table.text("standard").required(),
        row.length("hole").required(),
        row.length("diameter").required(),
        row.length("thickness").required(),
        basis(table));
  }

  private static NutSize nut(Fields table, Fields row) {
    return new NutSize(
        table.text("standard").required(),
        row.length("height").required(),
        row.length("flats").required(),
        row.length("corners").required(),
        row.length("bearing").required(),
        basis(table));
  }

  private static String basis(Fields table) {
    Entry entry = table.entry("basis");
    if (entry.kind() != Entry.Kind.MAPPING) {
      return entry.text().required();
    }
    Fields columns = entry.mapping().required();
    List<String> texts = new ArrayList<>();
    for (String column : columns.keys()) {
      texts.add(column + ": " + columns.text(column).required());
    }
    return String.join("; ", texts);
  }

  /** The head of a screw, if it is known for the thread. */
  public Optional<HeadSize> head(Head head, String thread) {
    return Optional.ofNullable(heads.get(Entry.nameOf(head) + " " + thread));
  }

  /** A washer, if it is known for the thread; empty for {@link Washer#NONE}. */
  public Optional<WasherSize> washer(Washer washer, String thread) {
    return Optional.ofNullable(washers.get(Entry.nameOf(washer) + " " + thread));
  }

  /** A nut, if it is known for the thread. */
  public Optional<NutSize> nut(Nut nut, String thread) {
    return Optional.ofNullable(nuts.get(Entry.nameOf(nut) + " " + thread));
  }

  /** The strength classes, in order; of each kind of thread the usual one first. */
  public List<StrengthClass> classes() {
    return List.copyOf(classes);
  }

  /** The class with a name, if there is one. */
  public Optional<StrengthClass> strength(String name) {
    return classes.stream().filter(c -> c.name().equals(name)).findFirst();
  }

  /** The class that is taken when none is named. */
  public StrengthClass usualStrength(boolean inch) {
    return classes.stream().filter(c -> c.inch() == inch).findFirst().orElseThrow();
  }

  /** The standard lengths, from short to long, mm. */
  public List<Double> lengths(boolean inch) {
    return lengths.get(inch);
  }

  /** Where the standard lengths come from. */
  public String lengthBasis(boolean inch) {
    return lengthBases.get(inch);
  }

  /** The part of its proof load that a screw is tightened to at most. */
  public SourcedFigure preload() {
    return preload;
  }

  public NutFactor factor(Surface surface) {
    return factors.get(surface);
  }

  /** The engagement that a screw's length is chosen by, in thread diameters. */
  public SourcedFigure engagement(Tapped tapped) {
    return engagements.get(tapped);
  }

  /** The usual turning moment of both hands over the wheel's diameter, N. */
  public SourcedFigure couple() {
    return loads.get("couple");
  }

  /** The usual force of one hand along the rim, N. */
  public SourcedFigure pull() {
    return loads.get("pull");
  }

  /** The usual push or pull of one hand square to the plate, N. */
  public SourcedFigure push() {
    return loads.get("push");
  }

  /** Pressure that a clamped part of unknown material stands, MPa. */
  public SourcedFigure partFace() {
    return partFace;
  }

  /** Strength of a plate; of the weakest of its kind when the material has no row. */
  public Allowables allowables(Material material) {
    Allowables own = allowables.get(material.name());
    return own != null ? own : allowables.get(weakest(material.kind()));
  }

  /** The names of the materials that have rows. */
  public List<String> materials() {
    return List.copyOf(allowables.keySet());
  }

  private static String weakest(MaterialKind kind) {
    return switch (kind) {
      case LAMINATE -> "glass-laminate";
      case METAL -> "aluminium-6061-t6";
      case WOOD -> "birch-plywood";
      case PLASTIC -> "acrylic";
    };
  }
}
