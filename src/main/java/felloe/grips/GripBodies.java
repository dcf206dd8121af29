package felloe.grips;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Place;
import felloe.plate.Printer;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The grips of a plate as bodies: each face for itself, printed shells split where they are longer
 * than the printer's bed, with a tongue that finds its socket.
 */
public final class GripBodies {

  /** Chords of bodies stay this near to the true form, mm. */
  public static final double CHORD = 0.05;

  /** Room on the bed beside a body, for its brim, mm: common practice. */
  private static final double BRIM = 5;

  /** A piece that is shorter than this is no longer worth a joint, mm. */
  private static final double SHORTEST = 40;

  /** A joint keeps this far from pockets and holes, mm: length of the tongue and a wall. */
  private static final double CLEAR = 12;

  private static final double TONGUE = 8;
  private static final double TALLEST_TONGUE = 6;

  private final PlacedGrip grip;
  private final Printer printer;
  private final Place place;
  private final List<Pocket> pockets;
  private final double chord;

  private GripBodies(
      PlacedGrip grip, Printer printer, Place place, List<Pocket> pockets, double chord) {
    this.chord = chord;
    this.grip = grip;
    this.printer = printer;
    this.place = place;
    this.pockets = pockets;
  }

  /**
   * All bodies, in the order of grips, faces and pieces.
   *
   * @param pockets let into them
   * @throws BadInput when no piece fits on the printer's bed
   */
  public static List<GripBody> of(GripPlan plan, List<Pocket> pockets) {
    return of(plan, pockets, CHORD);
  }

  /**
   * The same, finer or coarser.
   *
   * @param chord greatest distance of a chord from the true form, mm
   */
  public static List<GripBody> of(GripPlan plan, List<Pocket> pockets, double chord) {
    Optional<Requested<Printer>> printer = plan.plate().making().printer();
    List<Supplier<GripBody>> work = new ArrayList<>();
    for (PlacedGrip grip : plan.grips()) {
      List<Pocket> own =
          pockets.stream()
              .filter(p -> grip.holes().stream().anyMatch(h -> h.label().equals(p.hole())))
              .toList();
      Place place = printer.map(Requested::place).orElse(grip.grip().place());
      new GripBodies(grip, printer.map(Requested::value).orElse(Printer.USUAL), place, own, chord)
          .plan(work);
    }
    return work.parallelStream().map(Supplier::get).toList();
  }

  /**
   * In how many pieces a face of a grip comes, its pockets left out of account.
   *
   * @throws BadInput when no piece fits on the printer's bed
   */
  public static int pieces(PlacedGrip grip, Printer printer) {
    Place place = grip.grip().place();
    return new GripBodies(grip, printer, place, List.of(), CHORD).cuts().size() - 1;
  }

  private void plan(List<Supplier<GripBody>> work) {
    List<Double> cuts = cuts();
    int pieces = cuts.size() - 1;
    for (Face face : grip.grip().on()) {
      GripLoft loft = new GripLoft(grip, face, chord, pockets);
      List<Optional<GripLoft.Tongue>> tongues = new ArrayList<>();
      for (int i = 0; i <= pieces; i++) {
        boolean joint = i > 0 && i < pieces || grip.run().closed() && pieces > 1;
        tongues.add(joint ? tongue(cuts.get(i), face) : Optional.empty());
      }
      for (int i = 0; i < pieces; i++) {
        int k = i;
        work.add(
            () -> {
              Solid body =
                  pieces == 1
                      ? loft.whole()
                      : loft.piece(
                          cuts.get(k), cuts.get(k + 1), tongues.get(k), tongues.get(k + 1));
              return new GripBody(grip.grip().label(), face, k + 1, pieces, body);
            });
      }
    }
  }

  /** Where it is cut: both ends alone where it fits as a whole, or is not printed. */
  private List<Double> cuts() {
    double length = grip.run().length();
    if (grip.grip().form() == Grip.Form.SCALE) {
      return List.of(0.0, length);
    }
    int most = (int) Math.max(1, length / SHORTEST);
    for (int pieces = 1; pieces <= most; pieces++) {
      List<Double> cuts = new ArrayList<>();
      for (int i = 0; i <= pieces; i++) {
        double even = length * i / pieces;
        cuts.add(i == 0 || i == pieces ? even : clear(even));
      }
      boolean fits = true;
      for (int i = 0; fits && i < pieces; i++) {
        fits = fits(cuts.get(i), cuts.get(i + 1));
      }
      if (fits) {
        return cuts;
      }
    }
    throw new BadInput(
        new Problem(
            place,
            "making.printer",
            size(),
            "is too small: not even a piece of grip "
                + grip.grip().label()
                + " of "
                + Numbers.brief(length / most, 0)
                + " mm fits on its bed",
            "print it on a larger one, or make the grip in another way"));
  }

  private String size() {
    return Numbers.brief(printer.width(), 1)
        + " x "
        + Numbers.brief(printer.depth(), 1)
        + " x "
        + Numbers.brief(printer.height(), 1)
        + " mm";
  }

  /** The nearest place at which no hole and no pocket lies near the joint. */
  private double clear(double even) {
    for (double off = 0; off < SHORTEST / 2; off++) {
      for (double s : new double[] {even + off, even - off}) {
        boolean free =
            grip.holes().stream()
                .noneMatch(
                    hole ->
                        Math.abs(grip.run().foot(hole.centre()).s() - s)
                            < CLEAR + hole.length() / 2 + reach(hole.label()));
        if (free) {
          return s;
        }
      }
    }
    return even;
  }

  private double reach(String hole) {
    return pockets.stream()
        .filter(p -> p.hole().equals(hole))
        .mapToDouble(Pocket::reach)
        .max()
        .orElse(0);
  }

  /** Whether a piece lies on the bed somehow, turned as it likes. */
  private boolean fits(double from, double to) {
    List<Point> round = new ArrayList<>();
    double highest = 0;
    int steps = (int) Math.ceil((to - from) / 2);
    for (int i = 0; i <= steps; i++) {
      double s = from + (to - from) * i / steps;
      GripSection section = grip.section(s);
      round.add(grip.run().at(s, -section.past()));
      round.add(grip.run().at(s, section.over()));
      highest = Math.max(highest, Math.max(section.front(), section.back()) + section.lip());
    }
    double width = printer.width() - 2 * BRIM;
    double depth = printer.depth() - 2 * BRIM;
    if (highest > printer.height()) {
      return false;
    }
    for (int turn = 0; turn < 180; turn++) {
      Point u = Point.polar(1, Math.toRadians(turn));
      if (breadth(round, u) <= width && breadth(round, u.left()) <= depth - TONGUE) {
        return true;
      }
    }
    return false;
  }

  private static double breadth(List<Point> points, Point direction) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point p : points) {
      double at = p.dot(direction);
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    return high - low;
  }

  /** A third of the grip's breadth wide, at most half as high as the grip there. */
  private Optional<GripLoft.Tongue> tongue(double s, Face face) {
    GripSection section = grip.section(s);
    double middle = (Math.max(0, -section.past()) + section.over()) / 2;
    double half = section.breadth() / 6;
    double play = printer.clearance();
    // The lowest surface over the socket is its roof.
    double roof = section.height(face);
    for (double on = 0; on <= TONGUE + play; on += (TONGUE + play) / 16) {
      for (double across : new double[] {middle - half - play, middle, middle + half + play}) {
        roof = Math.min(roof, grip.section(s + on).top(face, across));
      }
    }
    double height = Math.min(TALLEST_TONGUE, roof / 2);
    boolean thin = roof - height - play < printer.thinnestWall();
    if (thin || half < 2 * printer.thinnestWall() || height < 2 * printer.thinnestWall()) {
      return Optional.empty();
    }
    Point in = grip.run().inward(s);
    Point along = in.left().left().left();
    Point low = grip.run().at(s, middle - half);
    Point high = grip.run().at(s, middle + half);
    List<Point> corners = List.of(low, low.plus(along, TONGUE), high.plus(along, TONGUE), high);
    Point out = low.plus(in, -play);
    Point inner = high.plus(in, play);
    List<Point> room =
        List.of(out, out.plus(along, TONGUE + play), inner.plus(along, TONGUE + play), inner);
    return Optional.of(new GripLoft.Tongue(corners, room, height, play));
  }
}
