package felloe.load;

import felloe.plate.MaterialKind;
import felloe.plate.SourcedFigure;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The usual load cases and what goes with them, read from {@code felloe/load/cases.yaml}. */
public final class CaseBook {

  private static final String RESOURCE = "/felloe/load/cases.yaml";

  private final SourcedFigure breadth;
  private final SourcedFigure rim;
  private final SourcedFigure strong;
  private final SourcedFigure hotWet;
  private final List<String> judged = new ArrayList<>();
  private final Map<String, SourcedFigure> factors = new LinkedHashMap<>();
  private final List<Usual> cases;

  /**
   * A hand on the rim.
   *
   * @param clock direction from the hub axis, degrees counter-clockwise from +x
   * @param x force to the right, N
   * @param y up
   * @param z toward the driver
   */
  record Hand(double clock, double x, double y, double z) {}

  /**
   * A usual case.
   *
   * @param name short name
   * @param title in words
   * @param hands what holds where; of a fall, a push of 1 N where it strikes
   * @param set the set that it belongs to, such as {@code rule}
   * @param strong whether forces are multiplied for a strong driver
   * @param turn moment about the hub axis over the wheel's diameter, N, that the forces, which then
   *     only tell their proportion, are brought to
   * @param fall the fall, if it is one
   * @param basis where the figures come from
   */
  record Usual(
      String name,
      String title,
      List<Hand> hands,
      String set,
      boolean strong,
      Optional<Double> turn,
      Optional<Fall> fall,
      String basis) {}

  private CaseBook(Fields top, Problems problems) {
    breadth = figure(top, "hand-breadth", "breadth of a hand", "mm");
    rim = figure(top, "rim", "the widest rim that a hand closes about", "mm");
    strong = figure(top, "strong", "strong driver over the 5th percentile man", "");
    hotWet = figure(top, "hot-wet", "strength that is left of a laminate, hot and wet", "");
    top.list("judged").entries().forEach(item -> judged.add(item.text().required()));
    Fields f = top.group("factors");
    for (String kind : f.keys()) {
      factors.put(kind, figure(f, kind, "factor on the loads, " + kind, ""));
    }
    cases = top.list("cases").each(CaseBook::usual);
    top.done();
    problems.throwIfAny();
  }

  /**
   * Reads the built-in file.
   *
   * @throws felloe.plate.BadInput when it is damaged
   */
  public static CaseBook builtIn() {
    Problems problems = new Problems();
    return new CaseBook(BuiltIn.tree(RESOURCE).fields(problems), problems);
  }

  private static SourcedFigure figure(Fields top, String key, String name, String unit) {
    Fields f = top.group(key);
    double value = f.number("value").positive().required();
    String basis = f.text("basis").required();
    f.done();
    return new SourcedFigure(name, Double.isNaN(value) ? 1 : value, unit, basis);
  }

  private static Optional<Usual> usual(Fields f) {
    String name = f.text("name").required();
    String title = f.text("title").required();
    List<Hand> hands = new ArrayList<>();
    Optional<Fall> fall = Optional.empty();
    if (f.has("fall")) {
      Fields g = f.group("fall");
      hand(g, "towards").ifPresent(hands::add);
      double height = g.length("height").positive().required();
      double mass = g.number("mass").notNegative().required();
      fall = g.build(() -> new Fall(height, mass));
    } else {
      for (Fields g : f.list("hands").atLeast(1).mappings()) {
        hand(g, "force").ifPresent(hands::add);
        g.done();
      }
    }
    String set = f.text("set").required();
    Optional<Double> turn =
        f.has("turn") ? Optional.of(f.number("turn").positive().required()) : Optional.empty();
    boolean strong = f.bool("strong").or(false);
    String basis = f.longText("basis").required();
    Optional<Fall> falls = fall;
    return f.build(
        () -> new Usual(name, title, List.copyOf(hands), set, strong, turn, falls, basis));
  }

  private static Optional<Hand> hand(Fields g, String key) {
    double clock = g.clock("clock").required();
    List<Double> n = new ArrayList<>();
    g.list(key).exactly(3).entries().forEach(item -> n.add(item.force().required()));
    return n.size() == 3
        ? Optional.of(new Hand(clock, n.get(0), n.get(1), n.get(2)))
        : Optional.empty();
  }

  /** Diameter of the patch that a hand presses on, mm. */
  public SourcedFigure breadth() {
    return breadth;
  }

  /** The widest rim that a hand closes about, mm. */
  public SourcedFigure rim() {
    return rim;
  }

  /** What a strong driver does over the 5th percentile man. */
  public SourcedFigure strong() {
    return strong;
  }

  /** What is left of a laminate's strength in a hot, damp car. */
  public SourcedFigure hotWet() {
    return hotWet;
  }

  /** Whether a case is judged though nobody asked for it. */
  boolean judged(Usual usual) {
    return judged.contains(usual.set());
  }

  /** The names of the sets. */
  public List<String> sets() {
    return cases.stream().map(Usual::set).distinct().toList();
  }

  /** The usual factor on loads. */
  public SourcedFigure factor(MaterialKind kind, boolean tested) {
    return factors.get(tested ? "tested" : kind.name().toLowerCase(Locale.ROOT));
  }

  /** The usual cases. */
  List<Usual> cases() {
    return cases;
  }

  /** The names of the usual cases. */
  public List<String> names() {
    return cases.stream().map(Usual::name).toList();
  }
}
