package felloe.cutting;

import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Starting speeds, feeds and depths, from the resource {@code feeds.yaml}, each with its basis.
 * Feed = speed x flutes x chip load; surface speed = pi x diameter x speed.
 */
public final class FeedTable {

  private static final String RESOURCE = "/felloe/feeds.yaml";

  /**
   * One material.
   *
   * @param materials names of materials that it is for
   * @param kind other materials of this kind take it too, if it stands first for the kind
   */
  private record Row(
      String title,
      List<String> materials,
      MaterialKind kind,
      double surfaceSpeed,
      double slowest,
      double fastest,
      double chip,
      double leastChip,
      double mostChip,
      double mostFeed,
      double stepDown,
      double ramp,
      double drillSurfaceSpeed,
      double drillFeed,
      String basis,
      String note,
      Optional<StartingFeed.Wear> wear) {}

  /**
   * A width that a process takes.
   *
   * @param width mm
   * @param basis where it comes from
   */
  public record Kerf(double width, String basis) {}

  /**
   * What is usual of V tools, mm.
   *
   * @param tip width of the flat at the tip
   * @param aside how far the flat stays off an edge
   * @param basis where it comes from
   */
  public record VTip(double tip, double aside, String basis) {}

  private final List<Row> rows;
  private final double travel;
  private final double highestSpeed;
  private final Kerf laser;
  private final Kerf waterjet;
  private final JigsawBlade blade;
  private final VTip vTool;

  private FeedTable(YamlTree tree) {
    Problems problems = new Problems();
    Fields top = tree.fields(problems);
    top.integer("felloe-feeds").between(1, 1).required();
    Fields machine = top.group("machine");
    this.travel = machine.number("travel").positive().required();
    this.highestSpeed = machine.number("highest-speed").positive().required();
    machine.text("basis").required();
    Fields kerfs = top.group("kerf");
    this.laser = kerf(kerfs.group("laser"));
    this.waterjet = kerf(kerfs.group("waterjet"));
    Fields saw = top.group("jigsaw");
    this.blade =
        new JigsawBlade(
            saw.length("blade").positive().required(),
            saw.length("kerf").positive().required(),
            saw.length("turn").positive().required());
    saw.text("basis").required();
    Fields cone = top.group("v-tool");
    this.vTool =
        new VTip(
            cone.length("tip").positive().required(),
            cone.length("aside").positive().required(),
            cone.text("basis").required());
    this.rows = new ArrayList<>(top.list("routing").atLeast(1).each(FeedTable::row));
    top.done();
    problems.throwIfAny();
  }

  private static Kerf kerf(Fields f) {
    return new Kerf(f.length("width").positive().required(), f.text("basis").required());
  }

  private static Optional<Row> row(Fields f) {
    String title = f.text("title").required();
    List<String> materials = f.list("materials").atLeast(1).texts();
    MaterialKind kind = f.oneOf("kind", MaterialKind.class).required();
    double surface = f.number("surface-speed").positive().required();
    double slowest = f.number("slowest").positive().required();
    double fastest = f.number("fastest").atLeast(slowest).required();
    double chip = f.number("chip-per-diameter").positive().required();
    double leastChip = f.number("least-chip").positive().required();
    double mostChip = f.number("most-chip").atLeast(leastChip).required();
    double mostFeed = f.number("most-feed").positive().required();
    double step = f.number("step-down").positive().required();
    double ramp = Math.toRadians(f.angle("ramp").positive().required());
    double drill = f.number("drill-surface-speed").positive().required();
    double drillFeed = f.length("drill-feed").positive().required();
    String basis = f.longText("basis").required();
    String note = f.longText("note").required();
    Optional<StartingFeed.Wear> wear = Optional.empty();
    if (f.has("wear")) {
      Fields w = f.group("wear");
      double metres = w.number("metres").positive().required();
      String words = w.longText("note").required();
      wear = Optional.of(new StartingFeed.Wear(metres, words));
    }
    Optional<StartingFeed.Wear> worn = wear;
    return f.build(
        () ->
            new Row(
                title, materials, kind, surface, slowest, fastest, chip, leastChip, mostChip,
                mostFeed, step, ramp, drill, drillFeed, basis, note, worn));
  }

  /** The program's own figures. Read anew at each call; keep it. */
  public static FeedTable standard() {
    return new FeedTable(BuiltIn.tree(RESOURCE));
  }

  /**
   * Starting figures for a cutter. A material without a row of its own takes the first row of its
   * kind.
   *
   * @param cutter diameter, mm, above zero
   * @param flutes cutting edges, at least 1
   */
  public StartingFeed routing(Material material, double cutter, int flutes) {
    return routing(material, cutter, flutes, highestSpeed, OptionalDouble.empty());
  }

  /**
   * Starting figures for a cutter in a certain spindle.
   *
   * @param cutter diameter, mm, above zero
   * @param flutes cutting edges, at least 1
   * @param highest the spindle's highest speed, 1/min; the speed stays below it
   * @param asked the speed, where the maker has chosen one; the feed follows it
   */
  public StartingFeed routing(
      Material material, double cutter, int flutes, double highest, OptionalDouble asked) {
    Row row = row(material);
    double speed = 1000 * row.surfaceSpeed() / (Math.PI * cutter);
    speed = 100 * Math.rint(Math.max(row.slowest(), Math.min(row.fastest(), speed)) / 100);
    speed = highest > 0 ? Math.min(speed, highest) : speed;
    speed = asked.isPresent() && asked.getAsDouble() > 0 ? asked.getAsDouble() : speed;
    double chip = Math.max(row.leastChip(), Math.min(row.mostChip(), row.chip() * cutter));
    double feed = Math.min(row.mostFeed(), speed * flutes * chip);
    feed = Math.max(10, 10 * Math.floor(feed / 10 + 1e-9));
    return new StartingFeed(
        row.title(),
        speed,
        feed,
        feed / (speed * flutes),
        row.mostChip(),
        Math.PI * cutter * speed / 1000,
        row.stepDown() * cutter,
        row.ramp(),
        row.drillSurfaceSpeed(),
        row.drillFeed(),
        row.basis(),
        row.note(),
        row.wear());
  }

  private Row row(Material material) {
    return rows.stream()
        .filter(row -> row.materials().contains(material.name()))
        .findFirst()
        .or(() -> rows.stream().filter(row -> row.kind() == material.kind()).findFirst())
        .orElseThrow(() -> new IllegalStateException("feeds.yaml has no " + material.kind()));
  }

  /** How fast a small machine travels, mm/min, for time estimates. */
  public double travel() {
    return travel;
  }

  /** Highest speed of a small spindle, 1/min. */
  public double highestSpeed() {
    return highestSpeed;
  }

  /** The usual kerf of a laser in sheet. */
  public Kerf laser() {
    return laser;
  }

  /** The usual kerf of an abrasive water jet. */
  public Kerf waterjet() {
    return waterjet;
  }

  /** What is usual of V tools. */
  VTip vTool() {
    return vTool;
  }

  /** The usual blade of a jigsaw. */
  public JigsawBlade blade() {
    return blade;
  }
}
