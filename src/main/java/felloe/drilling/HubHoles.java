package felloe.drilling;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.hub.ClearanceSeries;
import felloe.hub.DrillingMethod;
import felloe.hub.FastenerFormula;
import felloe.hub.HubFitResult;
import felloe.hub.HubPractice;
import felloe.hub.ScrewFit;
import felloe.plate.Hole;
import felloe.plate.HolePosition;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the hub asks of the holes that its screws go through. */
final class HubHoles {

  private final Plate plate;
  private final Optional<HubFitResult> fit;
  private final boolean machine;
  private final DrillingMethod usual;
  private final DrillingMethod through;

  HubHoles(Plate plate, Optional<HubFitResult> fit) {
    HubPractice practice = HubPractice.standard();
    this.plate = plate;
    this.fit = fit;
    this.machine = plate.making().places(HolePosition.MACHINE);
    HolePosition first = machine ? HolePosition.MACHINE : HolePosition.TEMPLATE;
    this.usual = practice.drilling(first.word()).orElseThrow();
    this.through = practice.drilling("through-hub").orElseThrow();
  }

  /** Whether the shape file says that hub holes are drilled through the hub. */
  boolean wished() {
    return plate.making().places(HolePosition.THROUGH_HUB);
  }

  /** Whether a machine makes the holes, so that nothing is marked by hand. */
  boolean machine() {
    return machine;
  }

  /** Whether screws may not enter at the worst of the tolerances. */
  boolean mayMiss() {
    return fit.flatMap(HubFitResult::worst).filter(worst -> worst < 0).isPresent();
  }

  /** Whether hub holes are drilled through the hub: by wish, or since the paper's may miss. */
  boolean throughHub() {
    return wished() ? fit.isPresent() : !machine && mayMiss();
  }

  /**
   * A zone for the centres of holes.
   *
   * @param diameter mm
   * @param words where it comes from
   */
  record Zone(double diameter, String words) {}

  /**
   * Where the centre of a hole may lie, about its place as drawn. From the paper: the usual zone of
   * that. For a hub's screw: what the fixed-fastener formula leaves, H - F - T1. Drilled through
   * the hub, a hole follows the hub's own, which stray as well, and its screw enters all the same.
   * A machine is held to no less than it can do: that screws may miss then is told.
   */
  Zone zone(Hole hole) {
    Optional<ScrewFit> screw = screw(hole);
    if (screw.isEmpty()) {
      return asMade();
    }
    double hubs = fit.orElseThrow().hub().positionTolerance();
    double size = screw.get().thread().diameter();
    double rest = FastenerFormula.fixedRest(hole.diameter(), size, hubs);
    double follows = through.zone() + hubs;
    if (throughHub() && rest < follows) {
      return new Zone(
          follows,
          through.title()
              + ": "
              + Numbers.brief(through.zone(), 2)
              + " about the hub's own holes, and these in a zone of "
              + Numbers.brief(hubs, 2));
    }
    if (rest < usual.zone() && machine) {
      return asMade();
    }
    return new Zone(
        rest,
        "hole less screw less the hub's own zone: "
            + Numbers.brief(hole.diameter(), 2)
            + " - "
            + Numbers.brief(size, 2)
            + " - "
            + Numbers.brief(hubs, 2));
  }

  /** What the way of making holes is good for, whatever a hub wants. */
  private Zone asMade() {
    return new Zone(usual.zone(), usual.title().replace("paper template", "paper"));
  }

  /** The tolerance grade of a hole's size: what ISO 273 has for the series that it belongs to. */
  int grade(Hole hole) {
    Optional<ScrewFit> screw = screw(hole);
    if (screw.isEmpty()) {
      return 13;
    }
    ClearanceSeries series = screw.get().series();
    if (series.compareTo(ClearanceSeries.FINE) <= 0) {
      return 12;
    }
    return series == ClearanceSeries.MEDIUM ? 13 : 14;
  }

  /** The screw that goes through a hole. */
  Optional<ScrewFit> screw(Hole hole) {
    return fit.stream()
        .flatMap(f -> f.screws().stream())
        .filter(s -> s.hole().label().equals(hole.label()))
        .findFirst();
  }

  /**
   * The holes that are measured: those that the hub's screws use, or all bolt holes, round their
   * middle from the first, counter-clockwise.
   */
  List<Hole> ring() {
    List<Hole> holes = new ArrayList<>(plate.holes(HoleRole.BOLT));
    List<Hole> used = holes.stream().filter(hole -> screw(hole).isPresent()).toList();
    if (!used.isEmpty()) {
      holes = new ArrayList<>(used);
    }
    if (holes.size() < 3) {
      return holes;
    }
    double x = holes.stream().mapToDouble(h -> h.centre().x()).average().orElseThrow();
    double y = holes.stream().mapToDouble(h -> h.centre().y()).average().orElseThrow();
    Point middle = new Point(x, y);
    double first = holes.get(0).centre().minus(middle).angle();
    holes.sort(
        Comparator.comparingDouble((Hole h) -> turn(h.centre().minus(middle).angle() - first))
            .thenComparingDouble(h -> h.centre().distance(middle)));
    return holes;
  }

  /** An angle from 0 to a whole turn; what is a hair below a whole turn is none. */
  private static double turn(double angle) {
    double whole = 2 * Math.PI;
    double turned = angle - whole * Math.floor(angle / whole);
    return turned > whole - Tolerances.SAME_DIRECTION ? 0 : Math.rint(turned * 1e9) / 1e9;
  }

  Optional<String> name() {
    return fit.map(f -> f.hub().name());
  }

  Optional<HubFitResult> fit() {
    return fit;
  }
}
