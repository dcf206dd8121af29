package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Body;
import felloe.plate.Cockpit;
import felloe.plate.Engraving;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.HubPatterns;
import felloe.plate.Joint;
import felloe.plate.LimitOverride;
import felloe.plate.LoadWish;
import felloe.plate.Making;
import felloe.plate.Note;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sketch;
import felloe.plate.Stock;
import felloe.plate.Window;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Overrides;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a shape file into a {@link Plate}. Every problem of the file comes out in one run, each
 * with its line and column; when there is one, there is no plate.
 */
public final class ShapeFile {

  /** The version of the shape file that this program reads. */
  public static final int VERSION = 1;

  private static final int MOST_LIMITS = 200;

  /** What is looked for at the top of a file, and where it stands. */
  private static final Map<String, String> ELSEWHERE =
      Map.ofEntries(
          Map.entry("chamfer", "making.chamfer"),
          Map.entry("edge", "making.edge_break"),
          Map.entry("edges", "making.edge_break"),
          Map.entry("edge_break", "making.edge_break"),
          Map.entry("position", "making.position"),
          Map.entry("cutter", "making.cutter"),
          Map.entry("blade", "making.blade"),
          Map.entry("text", "engravings"),
          Map.entry("engrave", "engravings"),
          Map.entry("material", "stock.material"),
          Map.entry("thickness", "stock.thickness"),
          Map.entry("sheet", "stock.sheet"));

  private final Problems problems = new Problems();
  private final YamlTree tree;
  private final Fields top;
  private final GeometryProblems reports;
  private final HubPatterns hubs;

  /** What was read as far as it can be drawn. */
  private Sketch drawn;

  private ShapeFile(YamlTree tree, HubPatterns hubs) {
    this.tree = tree;
    this.hubs = hubs;
    this.reports = new GeometryProblems(tree.root(), problems);
    this.top = tree.fields(problems);
  }

  /** The keys of the families that an outline may be, in the order in which they are told. */
  public static List<String> outlines() {
    return FamilyReader.OUTLINES;
  }

  /**
   * Reads a shape file.
   *
   * @param file the file; the plate is named after it
   * @param hubs the hubs it may name
   * @throws BadInput with every problem found
   */
  public static Plate read(Path file, Overrides overrides, HubPatterns hubs) {
    return new ShapeFile(YamlTree.read(file).with(overrides), hubs).plate();
  }

  /**
   * Reads a shape file's text.
   *
   * @param name the file name to show in messages and to name the plate after
   * @throws BadInput with every problem found
   */
  public static Plate parse(String name, String text, Overrides overrides, HubPatterns hubs) {
    return new ShapeFile(YamlTree.parse(name, text).with(overrides), hubs).plate();
  }

  /**
   * Makes the plate of a file's values.
   *
   * @param tree with its overrides; the plate is named after it
   * @throws BadInput with every problem found
   */
  public static Plate of(YamlTree tree, HubPatterns hubs) {
    return new ShapeFile(tree, hubs).plate();
  }

  /** What the values of a plate draw whose features clash; empty where nothing does. */
  public static Optional<Sketch> sketch(YamlTree tree, HubPatterns hubs) {
    return new ShapeFile(tree, hubs).sketch();
  }

  private Optional<Sketch> sketch() {
    try {
      plate();
    } catch (BadInput bad) {
      return Optional.ofNullable(drawn).filter(one -> !one.clashes().isEmpty());
    }
    return Optional.empty();
  }

  private Plate plate() {
    checkVersion();
    String name = PlateName.of(tree.name());
    String title = top.text("title").or(name);
    double tolerance = top.length("tolerance").between(0.001, 1).or(Tolerances.FREE_CURVE);
    // A wrong tolerance is reported; the curves are read on with the usual one.
    FamilyReader families =
        new FamilyReader(reports, Double.isNaN(tolerance) ? Tolerances.FREE_CURVE : tolerance);
    Optional<Contour> outline = outline(families);
    Labels labels = new Labels();
    WindowReader windowReader = new WindowReader(reports, families, labels, outline);
    List<Window> wishingWindows = windowReader.read(top);
    HoleReader holeReader = new HoleReader(reports, labels, outline, hubs);
    holeReader.read(top);
    Optional<String> hub = hub(holeReader);
    Optional<Stock> stock = StockReader.read(top);
    Optional<Making> making = MakingReader.read(top, stock);
    List<LimitOverride> limits = limits();
    List<Window> windows = labels.windows(wishingWindows);
    List<Hole> holes = labels.holes(holeReader.holes());
    List<Body> bodies = new ArrayList<>(windowReader.bodies(windows));
    bodies.addAll(holeReader.bodies(holes));
    List<Joint> joints = new JointReader(holes).read(top);
    Optional<LoadWish> load = LoadReader.read(top);
    EngravingReader engravingReader = new EngravingReader(reports, labels);
    List<Engraving> engravings = engravingReader.read(top, stock);
    List<Grip> grips =
        new GripReader(labels, holes).read(top, making.map(Making::gripScale).orElse(0.0));
    Optional<Cockpit> cockpit = CockpitReader.read(top);
    top.elsewhere(ELSEWHERE);
    top.done();
    outline.ifPresent(
        edge -> {
          List<Sketch.Clash> clashes = new PlacementCheck(reports, edge).check(windows, holes);
          Place place = Place.ofFile(tree.name());
          drawn =
              new Sketch(
                  name, title, Revision.of(tree.root()), place, edge, windows, holes, clashes);
          engravingReader.check(edge, windows, holes);
        });
    problems.throwIfAny();
    List<Note> notes = new ArrayList<>(windowReader.notes());
    oldSpellings().ifPresent(notes::add);
    return new Plate(
        name,
        title,
        Revision.of(tree.root()),
        outline.orElseThrow(),
        windows,
        holes,
        holeReader.boltCircles(),
        hub,
        stock.orElseThrow(),
        making.orElseThrow(),
        limits,
        notes,
        joints,
        load.orElseThrow(),
        engravings,
        grips,
        bodies,
        cockpit);
  }

  /** One note for all keys in the spelling of before, so that it is told once. */
  private Optional<Note> oldSpellings() {
    Map<String, Place> old = problems.oldSpellings();
    if (old.isEmpty()) {
      return Optional.empty();
    }
    String first = old.keySet().iterator().next();
    return Optional.of(
        new Note(
            old.get(first),
            "keys are written with underscores now; those with hyphens ("
                + String.join(", ", old.keySet())
                + ") are read in this version only: write "
                + first.replace('-', '_')
                + " for "
                + first));
  }

  private void checkVersion() {
    Entry version = top.entry("felloe");
    if (top.keys().isEmpty()) {
      return;
    }
    if (!top.keys().get(0).equals("felloe")) {
      top.problem("must start with the key 'felloe'", "make 'felloe: 1' the first line");
    }
    if (version.present()) {
      version
          .integer()
          .optional()
          .ifPresent(
              number -> {
                if (number != VERSION) {
                  version.problem(
                      "must be " + VERSION + ", the version of shape file that this program reads",
                      number > VERSION ? "use a newer Felloe" : "write 1");
                }
              });
    }
  }

  private Optional<Contour> outline(FamilyReader families) {
    if (!top.has("outline")) {
      top.problem("must have an outline", "add the key 'outline' with one of the families");
      return Optional.empty();
    }
    Fields f = top.group("outline");
    Optional<String> family = f.exactlyOneOf(FamilyReader.OUTLINES.toArray(String[]::new));
    List<Contour> contours = family.map(key -> families.read(f, key)).orElse(List.of());
    f.done();
    if (contours.size() > 1) {
      f.problem(
          family.orElseThrow(),
          "has " + contours.size() + " closed paths; an outline is one",
          "give the others as windows");
      return Optional.empty();
    }
    return contours.stream().findFirst();
  }

  private Optional<String> hub(HoleReader holes) {
    Optional<String> named = top.text("hub").optional();
    named.ifPresent(name -> HoleReader.findHub(hubs, top.entry("hub"), name));
    return named.or(holes::hub);
  }

  private List<LimitOverride> limits() {
    Fields f = top.group("limits");
    List<LimitOverride> limits = new ArrayList<>();
    List<String> rules = f.keys();
    if (rules.size() > MOST_LIMITS) {
      f.problem(
          "has " + rules.size() + " keys; the review has fewer rules than " + MOST_LIMITS,
          "take out those that are no rules");
      rules = rules.subList(0, MOST_LIMITS);
    }
    f.allow(f.keys().toArray(String[]::new));
    for (String rule : rules) {
      Entry entry = f.entry(rule);
      entry
          .number()
          .optional()
          .ifPresent(value -> limits.add(new LimitOverride(rule, value, entry.place())));
    }
    f.done();
    return limits;
  }
}
