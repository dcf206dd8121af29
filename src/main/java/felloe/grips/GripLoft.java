package felloe.grips;

import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.solid.Plan;
import felloe.solid.PlanLine;
import felloe.solid.Relief;
import felloe.solid.Solid;
import felloe.solid.Storey;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The body of a grip on one face, or of a piece of it between two places: rows along the rim and
 * stations across it, as many as keep every chord within the stated error of the true form.
 */
final class GripLoft {

  private final PlacedGrip grip;
  private final Face face;
  private final double chord;
  private final List<Pocket> pockets;

  /** Lines of the holes and pockets that are let in, with what they are. */
  private record Cut(PlanLine line, Optional<Pocket> pocket) {}

  /**
   * A tongue that reaches into the next piece, and the socket that takes it.
   *
   * @param corners of the tongue as seen from above
   * @param room the same with the play of the socket
   * @param height of the tongue above the plate, mm
   * @param play between tongue and socket on every side, mm
   */
  record Tongue(List<Point> corners, List<Point> room, double height, double play) {}

  /**
   * @param chord greatest distance of a chord from the true form, mm
   * @param pockets those of this grip; only those on this face count
   */
  GripLoft(PlacedGrip grip, Face face, double chord, List<Pocket> pockets) {
    this.grip = grip;
    this.face = face;
    this.chord = chord;
    this.pockets = pockets.stream().filter(p -> p.face() == face).toList();
  }

  /** The whole grip. */
  Solid whole() {
    return piece(0, grip.run().length(), Optional.empty(), Optional.empty());
  }

  /**
   * A piece.
   *
   * @param from where it starts, mm along the stretch
   * @param to where it ends
   * @param socket of the tongue of the piece before
   * @param tongue into the piece after
   */
  Solid piece(double from, double to, Optional<Tongue> socket, Optional<Tongue> tongue) {
    boolean ring = grip.run().closed() && from == 0 && to == grip.run().length();
    List<Double> stations = stations(from, to);
    if (ring) {
      stations = stations.subList(0, stations.size() - 1);
    }
    List<List<Point>> across = new ArrayList<>();
    for (double s : stations) {
      across.add(across(s));
    }
    List<PlanLine> lines = new ArrayList<>();
    across.forEach(line -> lines.add(PlanLine.open(line)));
    int rows = across.get(0).size();
    for (int k = 0; k < rows; k++) {
      List<Point> row = new ArrayList<>();
      for (List<Point> station : across) {
        row.add(station.get(k));
      }
      lines.add(new PlanLine(row, ring));
    }
    List<PlanLine> borders = borders(across, ring);
    List<Cut> cuts = cuts(from, to);
    cuts.forEach(cut -> lines.add(cut.line));
    cuts.forEach(cut -> lines.addAll(down(cut)));
    Optional<PlanLine> into = socket.map(t -> PlanLine.closed(t.room));
    into.ifPresent(lines::add);
    Optional<PlanLine> out = tongue.map(t -> PlanLine.closed(t.corners));
    out.ifPresent(lines::add);
    Plan plan =
        p -> {
          if (out.isPresent() && out.get().surrounds(p)) {
            return Optional.of(storey(0, tongue.orElseThrow().height));
          }
          if (!borders.get(0).surrounds(p) || borders.size() > 1 && borders.get(1).surrounds(p)) {
            return Optional.empty();
          }
          Optional<Pocket> floor = Optional.empty();
          double low = grip.run().foot(p).d() < -GripSection.LIP_ROOM ? -grip.lip() : 0;
          for (Cut cut : cuts) {
            if (cut.line.surrounds(p)) {
              if (cut.pocket.isEmpty()) {
                return Optional.empty();
              }
              Pocket pocket = cut.pocket.get();
              if (pocket.fromPlate()) {
                low = Math.max(low, pocket.depth());
              } else {
                floor = Optional.of(pocket);
              }
            }
          }
          if (into.isPresent() && into.get().surrounds(p)) {
            low = Math.max(low, socket.orElseThrow().height + socket.orElseThrow().play);
          }
          return Optional.of(new Between(low, floor));
        };
    return Relief.of(lines, plan);
  }

  /** From one level up to the grip's surface, or to a floor below it. */
  private final class Between implements Storey {
    private final double low;
    private final Optional<Pocket> pocket;
    private final double deepest;

    Between(double low, Optional<Pocket> pocket) {
      this.low = low;
      this.pocket = pocket;
      this.deepest =
          pocket.map(p -> grip.surface(face, p.centre()) - p.depth()).orElse(Double.MAX_VALUE);
    }

    private double up(Point p) {
      double floor = deepest + pocket.map(one -> one.rise(p)).orElse(0.0);
      return Math.max(low, Math.min(floor, grip.surface(face, p)));
    }

    @Override
    public double top(Point p) {
      return face == Face.FRONT ? up(p) : -grip.thickness() - low;
    }

    @Override
    public double bottom(Point p) {
      return face == Face.FRONT ? low : -grip.thickness() - up(p);
    }
  }

  private Storey storey(double low, double high) {
    double t = grip.thickness();
    return face == Face.FRONT ? Storey.level(low, high) : Storey.level(-t - high, -t - low);
  }

  /** The line round the piece; of a ring the outer and the inner one. */
  private static List<PlanLine> borders(List<List<Point>> across, boolean ring) {
    int last = across.get(0).size() - 1;
    List<Point> outer = new ArrayList<>();
    List<Point> inner = new ArrayList<>();
    for (List<Point> station : across) {
      outer.add(station.get(0));
      inner.add(station.get(last));
    }
    if (ring) {
      return List.of(PlanLine.closed(outer), PlanLine.closed(inner));
    }
    Collections.reverse(inner);
    outer.addAll(inner);
    return List.of(PlanLine.closed(outer));
  }

  private List<Cut> cuts(double from, double to) {
    List<Cut> cuts = new ArrayList<>();
    for (Hole hole : grip.holes()) {
      double s = grip.run().foot(hole.centre()).s();
      if (s >= from && s <= to && !Pocket.closes(pockets, hole, face)) {
        cuts.add(new Cut(PlanLine.of(hole.contour(), chord), Optional.empty()));
      }
    }
    for (Pocket pocket : pockets) {
      double s = grip.run().foot(pocket.centre()).s();
      if (s >= from && s <= to) {
        cuts.add(new Cut(PlanLine.of(pocket.edge(), chord), Optional.of(pocket)));
      }
    }
    return cuts;
  }

  /** Lines straight down a cone, a little into the hole, so that its pieces do not span it. */
  private static List<PlanLine> down(Cut cut) {
    if (cut.pocket.flatMap(Pocket::cone).isEmpty()) {
      return List.of();
    }
    Point middle = cut.pocket.get().centre();
    double in = 0.45 * cut.pocket.get().cone().orElseThrow().to();
    return cut.line.points().stream()
        .map(p -> PlanLine.open(List.of(p, middle.plus(p.minus(middle).unit(), in))))
        .toList();
  }

  /** Points across the rim at a place, from outside in: on the roundings at equal angles. */
  private List<Point> across(double s) {
    GripSection section = grip.section(s);
    double outer = section.round(face);
    double inner = section.innerRound(face);
    List<Double> distances = new ArrayList<>();
    int out = steps(outerRadius());
    for (int i = 0; i <= out; i++) {
      distances.add(outer * (1 - Math.cos(Math.PI / 2 * i / out)) - section.past());
    }
    int in = steps(innerRadius());
    for (int i = in; i >= 0; i--) {
      distances.add(section.over() - inner * (1 - Math.cos(Math.PI / 2 * i / in)));
    }
    if (grip.lip() > 0) {
      distances.add(-GripSection.LIP_ROOM);
      Collections.sort(distances);
    }
    return distances.stream().map(d -> grip.run().at(s, d)).toList();
  }

  private double outerRadius() {
    return grip.grip().profile().round();
  }

  private double innerRadius() {
    return grip.grip().profile().innerRound();
  }

  /** So many chords keep a quarter round of a radius within the chord error. */
  private int steps(double radius) {
    return radius <= chord ? 1 : (int) Math.ceil(Math.PI / 2 / (2 * Math.acos(1 - chord / radius)));
  }

  /** Places between two ends at which the form is cut across. */
  private List<Double> stations(double from, double to) {
    TreeSet<Double> ends = new TreeSet<>();
    ends.add(from);
    ends.add(to);
    grip.breaks().stream().filter(s -> s > from && s < to).forEach(ends::add);
    List<Double> breaks = List.copyOf(ends);
    List<Double> all = new ArrayList<>();
    for (int i = 0; i + 1 < breaks.size(); i++) {
      double a = breaks.get(i);
      double b = breaks.get(i + 1);
      int steps = (int) Math.max(1, Math.ceil((b - a) / step((a + b) / 2)));
      for (int k = 0; k < steps; k++) {
        all.add(a + (b - a) * k / steps);
      }
    }
    all.add(to);
    return all;
  }

  /** The longest step along the rim whose chord stays within the error. */
  private double step(double s) {
    double bend = Math.abs(grip.run().curvature(s));
    GripSection section = grip.section(s);
    double reach = grip.run().curvature(s) > 0 ? section.past() : section.over();
    double step = Double.POSITIVE_INFINITY;
    if (bend > 0) {
      double radius = 1 / bend + Math.max(reach, 0);
      step = 2 * Math.acos(1 - chord / radius) / bend;
    }
    if (grip.grip().swell().isPresent()) {
      Grip.Swell swell = grip.grip().swell().get();
      double rise = Math.max(Math.max(swell.front(), swell.back()), swell.edge());
      double foot = swell.length() / 2;
      // The wave of the cosine bends by rise / 2 * (pi / foot)^2 at most.
      double most = rise / 2 * (Math.PI / foot) * (Math.PI / foot);
      step = Math.min(step, Math.sqrt(8 * chord / most));
    }
    return step;
  }
}
