package felloe.drilling;

import felloe.geometry.Tolerances;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Drills, speeds and sizes to start from, from the resource {@code drilling.yaml}. */
public final class DrillTable {

  private static final String RESOURCE = "/felloe/drilling.yaml";

  /**
   * One row of the table of tolerance grades, mm.
   *
   * @param to up to and with this size
   * @param it12 grade 12
   * @param it13 grade 13
   * @param it14 grade 14
   */
  private record Grades(double to, double it12, double it13, double it14) {}

  /**
   * A row of touching holes inside the line of an opening.
   *
   * @param drill diameter of each, mm
   * @param web left between two, mm
   * @param clear left between them and the line, mm
   */
  record Chain(double drill, double web, double clear) {}

  private final DrillSizes sizes;
  private final List<Double> press;
  private final double pilotShare;
  private final double pilotLeast;
  private final double stepShare;
  private final double widen;
  private final double edgeSpeed;
  private final Chain chain;
  private final double plusMinus;
  private final List<Grades> grades;
  private final List<Opener> openers;
  private final List<DrillMaterial> materials;
  private final List<String> bases = new ArrayList<>();

  private DrillTable(YamlTree tree) {
    Problems problems = new Problems();
    Fields top = tree.fields(problems);
    top.integer("felloe-drilling").between(1, 1).required();
    Fields drills = top.group("drills");
    this.sizes = new DrillSizes(drills.list("series").atLeast(1).each(DrillTable::series));
    basis("drill sizes", drills);
    Fields turns = top.group("press");
    this.press = turns.list("speeds").atLeast(1).lengths();
    basis("steps of the drill press", turns);
    Fields pilot = top.group("pilot");
    this.pilotShare = pilot.number("share").positive().required();
    this.pilotLeast = pilot.length("least").positive().required();
    basis("pilot holes", pilot);
    Fields step = top.group("step");
    this.stepShare = step.number("share").positive().lessThan(1).required();
    basis("drilling in steps", step);
    Fields edge = top.group("edge-break");
    this.widen = edge.length("widen").positive().required();
    this.edgeSpeed = edge.number("speed-share").positive().required();
    basis("broken edges", edge);
    Fields row = top.group("chain");
    this.chain =
        new Chain(
            row.length("drill").positive().required(),
            row.length("web").notNegative().required(),
            row.length("clear").notNegative().required());
    basis("rows of holes", row);
    Fields calliper = top.group("calliper");
    this.plusMinus = calliper.length("plus-minus").positive().required();
    basis("calliper", calliper);
    Fields limits = top.group("size-limits");
    this.grades = limits.list("grades").atLeast(1).each(DrillTable::grades);
    basis("limits of size", limits);
    this.openers = top.list("openers").atLeast(1).each(DrillTable::opener);
    this.materials = top.list("materials").atLeast(1).each(DrillTable::material);
    top.done();
    problems.throwIfAny();
  }

  private void basis(String of, Fields f) {
    bases.add(of + ": " + f.longText("basis").required());
  }

  private static Optional<DrillSizes.Series> series(Fields f) {
    double from = f.length("from").positive().required();
    double to = f.length("to").atLeast(from).required();
    double step = f.length("step").positive().required();
    return f.build(() -> new DrillSizes.Series(from, to, step));
  }

  private static Optional<Grades> grades(Fields f) {
    double to = f.length("to").positive().required();
    double it12 = f.length("it12").positive().required();
    double it13 = f.length("it13").atLeast(it12).required();
    double it14 = f.length("it14").atLeast(it13).required();
    return f.build(() -> new Grades(to, it12, it13, it14));
  }

  private static Optional<Opener> opener(Fields f) {
    String name = f.text("name").required();
    f.text("title").required();
    List<Double> sizes = f.list("sizes").atLeast(1).lengths();
    double under = f.length("under").notNegative().required();
    double pilot = f.length("pilot").notNegative().required();
    String basis = f.longText("basis").required();
    return f.build(() -> new Opener(name, sizes, under, pilot, basis));
  }

  private static List<String> texts(Fields f, String key) {
    List<String> texts = new ArrayList<>();
    f.list(key)
        .atLeast(1)
        .entries()
        .forEach(entry -> entry.longText().optional().ifPresent(texts::add));
    return texts;
  }

  private static Optional<DrillMaterial> material(Fields f) {
    String title = f.text("title").required();
    List<String> names = f.list("materials").atLeast(1).texts();
    MaterialKind kind = f.oneOf("kind", MaterialKind.class).required();
    String drill = f.text("drill").required();
    String opening = f.text("opening-drill").required();
    double speed = f.number("surface-speed").positive().required();
    double feed = f.length("feed").positive().required();
    boolean piloted = f.bool("piloted").required();
    double stepAbove = f.length("step-above").positive().required();
    double largest = f.length("largest-drill").positive().required();
    String opener = f.text("opener").required();
    String openerTitle = f.text("opener-title").required();
    double openerSpeed = f.number("opener-speed").positive().required();
    String basis = f.longText("basis").required();
    String mark = f.longText("mark").required();
    Optional<String> spot = f.longText("spot").optional();
    String through = f.longText("through").required();
    String trim = f.longText("trim").required();
    String deburr = f.longText("deburr").required();
    List<String> before = texts(f, "before");
    List<String> cautions = texts(f, "cautions");
    return f.build(
        () ->
            new DrillMaterial(
                title,
                names,
                kind,
                drill,
                opening,
                speed,
                feed,
                piloted,
                stepAbove,
                largest,
                opener,
                openerTitle,
                openerSpeed,
                basis,
                mark,
                spot,
                through,
                trim,
                deburr,
                before,
                cautions));
  }

  /** The program's own figures. Read anew at each call; keep it. */
  public static DrillTable standard() {
    return new DrillTable(BuiltIn.tree(RESOURCE));
  }

  /** How holes are made in a material; one without a row of its own takes the first of its kind. */
  public DrillMaterial material(Material material) {
    return materials.stream()
        .filter(row -> row.materials().contains(material.name()))
        .findFirst()
        .or(() -> materials.stream().filter(row -> row.kind() == material.kind()).findFirst())
        .orElseThrow(() -> new IllegalStateException("drilling.yaml has no " + material.kind()));
  }

  /** The drills that are made. */
  public DrillSizes sizes() {
    return sizes;
  }

  /**
   * The limits of a hole: its nominal size, and that with the tolerance grade on top (H class of
   * ISO 286-1). A hole larger than the table takes its last row.
   *
   * @param grade 12, 13 or 14
   */
  public SizeLimits limits(double diameter, int grade) {
    Grades row =
        grades.stream()
            .filter(g -> diameter <= g.to())
            .findFirst()
            .orElse(grades.get(grades.size() - 1));
    double width = grade == 12 ? row.it12() : grade == 13 ? row.it13() : row.it14();
    return new SizeLimits(diameter, diameter + width);
  }

  /**
   * How fast a tool turns: n = 1000 v/(pi d).
   *
   * @param diameter of the tool, mm, above zero
   * @param surfaceSpeed v, m/min
   */
  public static double turns(double diameter, double surfaceSpeed) {
    return 1000 * surfaceSpeed / (Math.PI * diameter);
  }

  /** The step of a drill press at or below a speed; the slowest when all are faster. */
  public double setting(double turns) {
    return press.stream()
        .filter(step -> step <= turns * (1 + Tolerances.ROUNDING))
        .reduce((a, b) -> b)
        .orElse(press.get(0));
  }

  /** The tool for openings in a material that are wider than its drills. */
  public Opener opener(DrillMaterial material) {
    return openers.stream()
        .filter(opener -> opener.name().equals(material.opener()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("drilling.yaml has no " + material.opener()));
  }

  double pilotShare() {
    return pilotShare;
  }

  double pilotLeast() {
    return pilotLeast;
  }

  double stepShare() {
    return stepShare;
  }

  double widen() {
    return widen;
  }

  double edgeSpeed() {
    return edgeSpeed;
  }

  Chain chain() {
    return chain;
  }

  /** What a calliper's reading is good for, mm. */
  public double plusMinus() {
    return plusMinus;
  }

  /** Where the figures that all materials share come from, one sentence each. */
  public List<String> bases() {
    return List.copyOf(bases);
  }
}
