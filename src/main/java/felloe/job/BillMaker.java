package felloe.job;

import felloe.cutting.MachineJob;
import felloe.drilling.DrillStep;
import felloe.drilling.HoleGroup;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.RigidTransform;
import felloe.grips.GripWeight;
import felloe.grips.PlacedGrip;
import felloe.grips.Pocket;
import felloe.job.Bill.Group;
import felloe.job.Bill.Item;
import felloe.joints.GripPockets;
import felloe.joints.PlannedJoint;
import felloe.layup.ClothPiece;
import felloe.layup.LayupPlan;
import felloe.layup.LayupSupplies;
import felloe.layup.ResinPlan;
import felloe.layup.StockOption;
import felloe.layup.StockSource;
import felloe.layup.Supply;
import felloe.plate.Grip;
import felloe.plate.HoleRole;
import felloe.plate.Joint;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Puts a bill together. */
final class BillMaker {

  private static final String PLANNED = "planned from the stock's thickness";

  /** What a bought sheet is larger than the plate on each side, mm: common practice. */
  private static final double EDGE = 5;

  private final Parts parts;
  private final WorkOrder order;
  private final Plate plate;
  private final List<Item> items = new ArrayList<>();

  BillMaker(Parts parts, WorkOrder order) {
    this.parts = parts;
    this.order = order;
    this.plate = parts.plate();
  }

  Bill bill() {
    Optional<StockOption> way = parts.stock().flatMap(StockSource::option);
    parts.laidUp().ifPresentOrElse(plan -> laidUp(plan, way.orElseThrow()), () -> sheet(way));
    parts.joints().joints().forEach(this::joint);
    grips();
    items.addAll(BodyItems.of(plate));
    drills();
    cutters();
    usedUp();
    way.flatMap(w -> w.workCost().isPresent() ? Optional.of(w) : Optional.empty())
        .filter(w -> w.hours() > 0)
        .ifPresent(this::work);
    List<Item> grouped = new ArrayList<>();
    for (Group group : Group.values()) {
      items.stream().filter(item -> item.group() == group).forEach(grouped::add);
    }
    return new Bill(
        grouped,
        parts.stock().flatMap(s -> s.prices().currency()),
        way.map(StockOption::missingPrices).orElse(List.of()));
  }

  private void add(Group group, Supply supply, Act act, String basis) {
    add(group, supply, act, OptionalDouble.empty(), OptionalDouble.empty(), basis);
  }

  private void add(
      Group group, Supply supply, Act act, OptionalDouble mass, OptionalDouble cost, String basis) {
    items.add(new Item(group, supply, act, mass, cost, basis));
  }

  private void laidUp(LayupPlan plan, StockOption way) {
    List<Supply> all = LayupSupplies.of(plan);
    ResinPlan resin = plan.resin();
    // What stays in the plate is shared as it is shared in the blank.
    double fibre = resin.fibre() / (resin.fibre() + resin.inPart());
    double mass = plan.plateMass();
    OptionalDouble cost = way.cost(plan.choice().cloth().name());
    add(Group.STOCK, all.get(0), Act.CUT_CLOTH, OptionalDouble.of(fibre * mass), cost, PLANNED);
    plies(plan);
    double share = resin.resin() / resin.mix();
    OptionalDouble mix = way.cost(plan.choice().resin().name());
    resin(all.get(1), share, (1 - fibre) * mass, mix);
    resin(all.get(2), 1 - share, (1 - fibre) * mass, mix);
    for (Supply supply : all.subList(3, all.size())) {
      add(
          supply.spent() ? Group.USED_UP : Group.AT_HAND,
          supply,
          Act.LAY_UP,
          "common practice; the plan of the lay-up tells of each");
    }
    OptionalDouble sundries = way.cost(StockOption.SUNDRIES);
    if (sundries.isPresent()) {
      add(
          Group.USED_UP,
          Supply.spent("sundries of the lay-up: wax, brushes, gloves, film", 1, ""),
          Act.LAY_UP,
          OptionalDouble.empty(),
          sundries,
          "your price");
    }
  }

  private void resin(Supply part, double share, double mass, OptionalDouble cost) {
    add(
        Group.STOCK,
        part,
        Act.LAY_UP,
        OptionalDouble.of(share * mass),
        cost.isPresent() ? OptionalDouble.of(share * cost.getAsDouble()) : cost,
        PLANNED);
  }

  /** Pieces of one direction and size together. */
  private void plies(LayupPlan plan) {
    Map<String, List<ClothPiece>> alike = new LinkedHashMap<>();
    for (ClothPiece piece : plan.cloth().pieces()) {
      String kind = piece.direction() + size(piece);
      alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(piece);
    }
    alike
        .values()
        .forEach(
            pieces ->
                add(
                    Group.STOCK,
                    new Supply(
                        "pieces of it, " + pieces.get(0).direction(),
                        pieces.size(),
                        "",
                        size(pieces.get(0)),
                        true),
                    Act.CUT_CLOTH,
                    PLANNED));
  }

  /** Of a piece as it is cut, in the plate's frame. */
  private static String size(ClothPiece piece) {
    RigidTransform upright = RigidTransform.turn(-piece.fromPlate().turn());
    return size(piece.region().outer().moved(upright).box());
  }

  private static String size(Box box) {
    return size(box.width(), box.height());
  }

  private static String size(double width, double height) {
    return Numbers.brief(width, 1) + " x " + Numbers.brief(height, 1) + " mm";
  }

  private void sheet(Optional<StockOption> way) {
    Box box = plate.box();
    Optional<Sheet> sheet = way.flatMap(StockOption::sheet).or(() -> plate.stock().sheet());
    String size =
        sheet
            .map(s -> size(s.width(), s.height()))
            .orElseGet(() -> size(box.width() + 2 * EDGE, box.height() + 2 * EDGE));
    add(
        Group.STOCK,
        new Supply(
            plate.stock().material().title()
                + ", "
                + Numbers.brief(plate.stock().thickness(), 2)
                + " mm",
            1,
            "",
            size,
            true),
        Act.MEASURE_STOCK,
        OptionalDouble.of(parts.mass()),
        way.map(w -> w.cost(w.name())).orElse(OptionalDouble.empty()),
        way.flatMap(StockOption::sheet).isPresent()
            ? "the smallest usual size that the plate fits on"
            : sheet.isPresent() ? "the shape file" : "the plate and 5 mm all round");
  }

  private void joint(PlannedJoint joint) {
    int count = joint.holes().size();
    Act act = joint.role() == HoleRole.GRIP ? Act.FIT_GRIPS : Act.BOLT;
    String strength = ", class " + joint.strength().name();
    fitting("screws " + joint.screwName() + strength, count, act, FittingMass.screw(joint));
    String thread = joint.thread().name();
    joint
        .washer()
        .ifPresent(
            w ->
                fitting(
                    "washers " + thread + ", " + w.standard(), count, act, FittingMass.washer(w)));
    joint
        .nut()
        .ifPresent(
            n ->
                fitting(
                    "nuts " + thread + ", " + n.standard(),
                    count,
                    act,
                    FittingMass.nut(n, joint.thread().diameter())));
    joint
        .nutWasher()
        .ifPresent(
            w ->
                fitting(
                    "washers " + thread + " under the nuts, " + w.standard(),
                    count * joint.nutWashers(),
                    act,
                    FittingMass.washer(w)));
    if (joint.tapped().filter(t -> t.material() == Joint.Tapped.INSERT).isPresent()) {
      add(
          Group.FITTINGS,
          Supply.spent("threaded inserts " + thread, count, ""),
          act,
          "one a screw; length and hole are their maker's");
    }
  }

  private void fitting(String what, int count, Act act, double each) {
    if (count > 0) {
      add(
          Group.FITTINGS,
          Supply.spent(what, count, ""),
          act,
          OptionalDouble.of(count * each),
          OptionalDouble.empty(),
          FittingMass.BASIS);
    }
  }

  private void grips() {
    List<Pocket> pockets = GripPockets.of(parts.joints());
    for (PlacedGrip grip : parts.joints().grips().grips()) {
      List<Pocket> own =
          pockets.stream()
              .filter(p -> grip.holes().stream().anyMatch(h -> h.label().equals(p.hole())))
              .toList();
      add(
          Group.FITTINGS,
          Supply.spent(described(grip), grip.grip().on().size(), ""),
          Act.FIT_GRIPS,
          OptionalDouble.of(GripWeight.of(grip, own).mass()),
          OptionalDouble.empty(),
          "the shape file; " + grip.grip().material().basis());
    }
    double scale = plate.making().gripScale();
    if (scale > 0) {
      add(
          Group.FITTINGS,
          Supply.spent(
              "grip scales for both faces, " + Numbers.brief(scale, 2) + " mm thick", 1, "set"),
          Act.FIT_GRIPS,
          "the shape file; their outline is yours, so their mass is not known");
    }
  }

  /** A scale with the piece of sheet it is cut from, a shell with the box it fills. */
  private static String described(PlacedGrip placed) {
    Grip grip = placed.grip();
    Box box =
        placed.footprint().stream().map(r -> r.outer().box()).reduce(Box::union).orElseThrow();
    String size =
        Numbers.brief(Math.ceil(box.width()), 0)
            + " x "
            + Numbers.brief(Math.ceil(box.height()), 0);
    List<String> heights =
        grip.on().stream()
            .map(face -> Numbers.brief(grip.profile().height(face) - grip.wrap(), 2))
            .distinct()
            .toList();
    return (grip.form() == Grip.Form.SCALE ? "grip scale " : "grip shell ")
        + grip.label()
        + ", "
        + grip.material().title()
        + ", "
        + size
        + " mm, "
        + String.join(" and ", heights)
        + " mm "
        + (grip.form() == Grip.Form.SCALE ? "thick" : "high");
  }

  private void drills() {
    if (parts.holesByMachine()) {
      return;
    }
    Map<String, SortedSet<Double>> tools = new LinkedHashMap<>();
    for (HoleGroup group : parts.drilling().groups()) {
      for (DrillStep step : group.steps()) {
        if (!step.tool().isEmpty() && step.diameter().isPresent()) {
          tools.computeIfAbsent(step.tool(), t -> new TreeSet<>()).add(step.diameter().get());
        }
      }
    }
    tools.forEach(this::drill);
  }

  /** A countersink as wide as the widest does all. */
  private void drill(String tool, SortedSet<Double> sizes) {
    boolean sink = tool.endsWith("countersink");
    String all = sink ? Numbers.brief(sizes.last(), 2) + " mm or wider" : sizes(sizes);
    Supply supply = Supply.tool(tool + ", \u00d8" + all, sink ? 1 : sizes.size());
    add(Group.CUTTERS, supply, Act.DRILL_HOLES, "order of drilling");
  }

  private static String sizes(SortedSet<Double> sizes) {
    return sizes.stream().map(d -> Numbers.brief(d, 2)).collect(Collectors.joining(", ")) + " mm";
  }

  private void cutters() {
    if (parts.cutting() instanceof Cutting.Saw saw) {
      SortedSet<Double> sizes = new TreeSet<>();
      saw.holes().forEach(hole -> sizes.add(hole.diameter()));
      if (!sizes.isEmpty()) {
        add(
            Group.CUTTERS,
            Supply.tool("drill or hole saw in the waste, \u00d8" + sizes(sizes), sizes.size()),
            Act.START_HOLES,
            "as large as the blade needs to start or turn");
      }
    } else if (parts.cutting() instanceof Cutting.Machine machine) {
      machine.router().stream()
          .map(MachineJob::steps)
          .flatMap(List::stream)
          .map(step -> step.operation().tool().name())
          .distinct()
          .forEach(
              tool ->
                  add(
                      Group.CUTTERS,
                      Supply.tool(tool, 1),
                      Act.MACHINE,
                      "the router's program with the usual figures"));
    }
  }

  private void usedUp() {
    if (order.has(Act.PRINT_TEMPLATE)) {
      add(
          Group.USED_UP,
          Supply.spent("paper " + parts.print().paper(), parts.print().pages() + 1, "sheets"),
          Act.PRINT_TEMPLATE,
          "counted: check sheet and template");
    }
    for (Consumable row : Consumable.standard()) {
      if (row.suits(order, plate.stock().material().kind())) {
        Group group = row.spent() ? Group.USED_UP : Group.AT_HAND;
        add(group, named(row.of(size(row.per()))), row.act(), row.basis());
      }
    }
    parts
        .proof()
        .map(p -> p.hangs().stream().mapToDouble(h -> h.weight()).max().orElse(0))
        .filter(kg -> kg > 0 && order.has(Act.PROVE))
        .ifPresent(
            kg ->
                add(
                    Group.AT_HAND,
                    new Supply("weights in four equal parts", kg, "kg", "", false),
                    Act.PROVE,
                    "the proof load"));
  }

  /** A blade is asked for by its width. */
  private Supply named(Supply supply) {
    return parts.cutting() instanceof Cutting.Saw saw && supply.what().startsWith("jigsaw blade")
        ? Supply.spent(
            supply.what() + ", " + Numbers.brief(saw.blade(), 1) + " mm",
            supply.amount(),
            supply.unit())
        : supply;
  }

  private double size(Consumable.Per per) {
    return switch (per) {
      case JOB -> 1;
      case FACE -> plate.box().width() * plate.box().height() / 1e6;
      case EDGE ->
          (plate.outline().length()
                  + plate.windows().stream()
                      .map(Window::contour)
                      .mapToDouble(edge -> edge.length())
                      .sum())
              / 1000;
      case HOLE ->
          parts.drilling().groups().stream().mapToInt(group -> group.labels().size()).sum();
    };
  }

  private void work(StockOption way) {
    add(
        Group.WORK,
        new Supply("work on the lay-up", way.hours(), "hours", "", true),
        Act.LAY_UP,
        OptionalDouble.empty(),
        way.workCost(),
        "your price; hours as planned");
  }
}
