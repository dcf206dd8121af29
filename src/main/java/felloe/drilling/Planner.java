package felloe.drilling;

import felloe.drilling.MeasuredPairs.Pair;
import felloe.drilling.StepMaker.Guide;
import felloe.geometry.Numbers;
import felloe.hub.HubFitResult;
import felloe.hub.ScrewFit;
import felloe.hub.ScrewThread;
import felloe.plate.EdgeFinish;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the plan: groups, their steps, and the distances to measure. */
final class Planner {

  private static final List<HoleRole> ORDER =
      List.of(HoleRole.BOLT, HoleRole.BORE, HoleRole.GRIP, HoleRole.OTHER, HoleRole.WINDOW);

  /** Twice five eighths of the height of the thread's triangle, over the pitch (ISO 68-1, 724). */
  private static final double MINOR = 1.0825318;

  /** Distances from the bore's edge to hub holes. */
  private static final int FROM_BORE = 3;

  /** Distances between grip holes. */
  private static final int GRIPS = 12;

  private final Plate plate;
  private final DrillTable table;
  private final DrillMaterial material;
  private final HubHoles hub;
  private final StepMaker maker;

  Planner(Plate plate, Optional<HubFitResult> fit, DrillTable table) {
    this.plate = plate;
    this.table = table;
    this.material = table.material(plate.stock().material());
    this.hub = new HubHoles(plate, fit);
    this.maker = new StepMaker(table, material, plate.stock().thickness(), !hub.machine());
  }

  DrillingPlan plan() {
    List<List<Hole>> all = grouped();
    List<HoleGroup> groups = new ArrayList<>();
    int leftOut = 0;
    for (List<Hole> holes : all) {
      if (groups.size() < DrillingPlan.MOST_GROUPS) {
        groups.add(group(holes));
      } else {
        leftOut += holes.size();
      }
    }
    List<Hole> ring = hub.ring();
    List<Hole> measured = ring.subList(0, Math.min(ring.size(), DrillingPlan.MOST_MEASURED));
    Optional<Double> pilot = pilot(groups);
    return new DrillingPlan(
        material,
        hub.name(),
        hub.throughHub(),
        before(measured),
        groups,
        leftOut,
        pilot,
        pilot.map(p -> afterPilot(measured, p)).orElse(List.of()),
        sizes(measured),
        ring.size() - measured.size(),
        readings(measured),
        others(measured),
        table.plusMinus(),
        material.cautions(),
        bases());
  }

  /** Holes of one role and size together; hub pattern first, each role's sizes as drawn. */
  private List<List<Hole>> grouped() {
    List<List<Hole>> groups = new ArrayList<>();
    for (HoleRole role : ORDER) {
      Map<List<Long>, List<Hole>> sizes = new LinkedHashMap<>();
      for (Hole hole : plate.benchHoles(table.opener(material).largest())) {
        List<Long> size =
            List.of(Math.round(hole.diameter() * 1000), Math.round(hole.length() * 1000));
        if (hole.role() == role) {
          sizes.computeIfAbsent(size, s -> new ArrayList<>()).add(hole);
        }
      }
      groups.addAll(sizes.values());
    }
    return groups;
  }

  private HoleGroup group(List<Hole> holes) {
    Hole first = holes.get(0);
    int grade = holes.stream().mapToInt(hub::grade).min().orElseThrow();
    HubHoles.Zone zone =
        holes.stream()
            .map(hub::zone)
            .min(Comparator.comparingDouble(HubHoles.Zone::diameter))
            .orElseThrow();
    SizeLimits limits = table.limits(first.diameter(), grade);
    Optional<Guide> guide = guide(holes);
    List<String> labels =
        (guide.isPresent() ? oppositeSecond(holes) : holes).stream().map(Hole::label).toList();
    List<String> notes = new ArrayList<>();
    if (guide.isPresent()) {
      notes.add(
          (hub.wished()
                  ? "The shape file says that these holes are drilled through the hub."
                  : "From the paper these holes may miss the screws at the worst of the"
                      + " tolerances.")
              + " Clamp the plate on the hub by its marks. First hole, "
              + labels.get(0)
              + ": "
              + Numbers.brief(guide.get().drill(), 2)
              + " mm through the hub; take the plate off, open it to "
              + Numbers.brief(first.diameter(), 2)
              + " mm, screw the plate on by it."
              + further(labels));
    } else if (hub.machine() && hub.mayMiss() && hub.screw(first).isPresent()) {
      notes.add(
          "At the worst of the tolerances these holes may miss the screws, though a machine makes"
              + " them: lay the plate on the hub before windows and outline are cut.");
    }
    return new HoleGroup(
        first.role(),
        labels,
        first.diameter(),
        first.length(),
        limits,
        "H" + grade,
        zone.diameter(),
        zone.words(),
        finished(first, maker.steps(first.diameter(), limits, guide)),
        notes);
  }

  /** The hole most nearly opposite the first stands second: two screws hold the plate best so. */
  private static List<Hole> oppositeSecond(List<Hole> holes) {
    Hole first = holes.get(0);
    List<Hole> order = new ArrayList<>(holes);
    holes.stream()
        .max(Comparator.comparingDouble(h -> Math.rint(1e6 * h.centre().distance(first.centre()))))
        .filter(far -> far != first)
        .ifPresent(
            far -> {
              order.remove(far);
              order.add(1, far);
            });
    return order;
  }

  /** What is done with the holes after the first. */
  private static String further(List<String> labels) {
    return switch (labels.size()) {
      case 1 -> "";
      case 2 -> " Then " + labels.get(1) + " likewise.";
      default ->
          " Then "
              + labels.get(1)
              + ", the one most nearly opposite, likewise. With two screws in, drill the rest"
              + " through the hub, then open them off the hub.";
    };
  }

  /** The steps, with what a slotted hole and the edge of a round window need beside drilling. */
  private List<DrillStep> finished(Hole hole, List<DrillStep> steps) {
    List<DrillStep> all = new ArrayList<>(steps);
    int last = all.size();
    while (last > 0 && edges(all.get(last - 1))) {
      last--;
    }
    if (hole.isSlotted()) {
      all.add(
          last,
          DrillStep.byHand(
              Stage.TRIM,
              "",
              "Slotted: all of the above at both ends, "
                  + Numbers.brief(hole.length() - hole.diameter(), 2)
                  + " mm apart. Saw or file out what stands between them, then file the sides"
                  + " straight to "
                  + Numbers.brief(hole.diameter(), 2)
                  + " mm wide and "
                  + Numbers.brief(hole.length(), 2)
                  + " mm long over all."));
    }
    if (hole.role() == HoleRole.WINDOW) {
      edgeWords().ifPresent(words -> all.add(DrillStep.byHand(Stage.DEBURR, "", words)));
    }
    return all;
  }

  private static boolean edges(DrillStep step) {
    return step.stage() == Stage.COUNTERSINK || step.stage() == Stage.DEBURR;
  }

  /** What the shape file says of the edges of outline and windows. */
  private Optional<String> edgeWords() {
    EdgeFinish edges = plate.making().edges();
    if (edges.chamfer() > 0) {
      return Optional.of(
          "Chamfer of " + Numbers.brief(edges.chamfer(), 2) + " mm at 45\u00b0 on both faces.");
    }
    return edges.edgeBreak() > 0
        ? Optional.of(
            "Edges broken by " + Numbers.brief(edges.edgeBreak(), 2) + " mm on both faces.")
        : Optional.empty();
  }

  /**
   * The drill that goes through the hub's thread without biting: below its minor diameter, d less
   * 1.0825 of the pitch (ISO 724).
   */
  private Optional<Guide> guide(List<Hole> holes) {
    if (!hub.throughHub()) {
      return Optional.empty();
    }
    Optional<ScrewThread> thread =
        holes.stream().flatMap(hole -> hub.screw(hole).stream()).map(ScrewFit::thread).findFirst();
    return thread.flatMap(
        t ->
            table
                .sizes()
                .atOrBelow(t.diameter() - MINOR * t.pitch())
                .map(d -> new Guide(t.name(), d)));
  }

  private static Optional<Double> pilot(List<HoleGroup> groups) {
    return groups.stream()
        .filter(group -> group.role() == HoleRole.BOLT)
        .findFirst()
        .flatMap(
            group ->
                group.steps().stream()
                    .filter(step -> step.stage() == Stage.PILOT)
                    .findFirst()
                    .flatMap(DrillStep::diameter));
  }

  private List<DistanceCheck> afterPilot(List<Hole> ring, double pilot) {
    List<DistanceCheck> checks = new ArrayList<>();
    SizeLimits size = table.limits(pilot, 12);
    for (Pair pair : MeasuredPairs.quick(ring.size())) {
      Hole from = ring.get(pair.from());
      Hole to = ring.get(pair.to());
      add(checks, from, to, "outside", size, size);
    }
    return checks;
  }

  private List<SizeCheck> sizes(List<Hole> ring) {
    List<SizeCheck> sizes = new ArrayList<>();
    for (Hole hole : ring) {
      sizes.add(
          new SizeCheck(
              sizes.size() + 1, hole.label(), table.limits(hole.diameter(), hub.grade(hole))));
    }
    return sizes;
  }

  private List<DistanceCheck> readings(List<Hole> ring) {
    List<DistanceCheck> checks = new ArrayList<>();
    for (Pair pair : MeasuredPairs.of(ring.size())) {
      add(checks, ring.get(pair.from()), ring.get(pair.to()), "outside");
    }
    return checks.stream()
        .map(
            c ->
                new DistanceCheck(ring.size() + c.number(), c.from(), c.to(), c.over(), c.limits()))
        .toList();
  }

  private List<DistanceCheck> others(List<Hole> ring) {
    List<DistanceCheck> checks = new ArrayList<>();
    List<Hole> bores = plate.holes(HoleRole.BORE);
    int count = Math.min(FROM_BORE, ring.size());
    for (int i = 0; i < count && !bores.isEmpty(); i++) {
      add(checks, bores.get(0), ring.get(i * ring.size() / count), "inside");
    }
    List<Hole> grips = plate.holes(HoleRole.GRIP);
    for (int i = 1; i < Math.min(grips.size(), GRIPS + 1); i++) {
      Hole grip = grips.get(i);
      Hole nearest =
          grips.subList(0, i).stream()
              .min(Comparator.comparingDouble(g -> g.centre().distance(grip.centre())))
              .orElseThrow();
      add(checks, nearest, grip, "outside");
    }
    return checks;
  }

  private void add(List<DistanceCheck> checks, Hole from, Hole to, String over) {
    SizeLimits first = table.limits(from.diameter(), hub.grade(from));
    SizeLimits second = table.limits(to.diameter(), hub.grade(to));
    add(checks, from, to, over, first, second);
  }

  private void add(
      List<DistanceCheck> checks,
      Hole from,
      Hole to,
      String over,
      SizeLimits first,
      SizeLimits second) {
    double centres = from.centre().distance(to.centre());
    double zones = hub.zone(from).diameter() + hub.zone(to).diameter();
    DistanceLimits limits =
        over.equals("outside")
            ? DistanceLimits.outside(centres, zones, first, second)
            : DistanceLimits.inside(centres, zones, first, second);
    checks.add(new DistanceCheck(checks.size() + 1, from.label(), to.label(), over, limits));
  }

  private List<String> before(List<Hole> ring) {
    List<String> before = new ArrayList<>();
    if (hub.machine()) {
      before.add(
          "The shape file says that a machine makes the holes (router, laser or waterjet): nothing"
              + " is marked by hand. The drills and speeds below are for one that drills.");
    } else if (hub.wished() && !hub.throughHub()) {
      before.add(
          "The shape file says that the hub holes are drilled through the hub, and names no hub:"
              + " name it, and the steps are told for its thread.");
    }
    before.add(
        "Drill all holes before windows and outline are cut: as long as the sheet is whole there is"
            + " something to clamp.");
    before.addAll(material.before());
    before.add("Drill a row of each size in scrap of the same stock first, and measure it.");
    if (ring.size() > 1) {
      before.add(
          "Hub pattern first: a plate whose pattern is out costs nothing yet. Lay it on the hub, or"
              + " look through it at the hub, after the first drill.");
    }
    edgeWords()
        .ifPresent(
            words ->
                before.add("Outline and windows, when they are cut, after the holes: " + words));
    return before;
  }

  private List<String> bases() {
    List<String> bases = new ArrayList<>();
    bases.add("drills and speeds in this material: " + material.basis());
    bases.addAll(table.bases());
    return bases;
  }
}
