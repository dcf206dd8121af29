package felloe.shape;

import felloe.geometry.Numbers;
import felloe.plate.EdgeFinish;
import felloe.plate.HolePosition;
import felloe.plate.Making;
import felloe.plate.Printer;
import felloe.plate.Requested;
import felloe.plate.SawBlade;
import felloe.plate.Stock;
import felloe.yaml.Fields;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads how the maker means to work. */
final class MakingReader {

  /** Diameter of the cutter or burr that finishes inside corners when the file names none, mm. */
  private static final double CUTTER = 4;

  /** Allowance of the rough line when the file names none, mm: common practice for a jigsaw. */
  private static final double ROUGH = 2;

  /** Sides of a printer's bed that are no slip, mm. */
  private static final double LEAST_BED = 50;

  private static final double MOST_BED = 2000;

  private MakingReader() {}

  /**
   * Reads the group {@code making}.
   *
   * @param stock tells how thick an edge is, when it was read well
   */
  static Optional<Making> read(Fields top, Optional<Stock> stock) {
    Fields f = top.group("making");
    double cutter = f.length("cutter").notNegative().atMost(50).or(CUTTER);
    double rough = f.length("rough").notNegative().atMost(50).or(ROUGH);
    double scale = f.length("grip_scale").notNegative().atMost(100).or(0);
    Optional<HolePosition> position = f.oneOf("position", HolePosition.class).optional();
    double edgeBreak = f.length("edge_break").notNegative().atMost(10).or(0);
    double chamfer = f.length("chamfer").notNegative().atMost(20).or(0);
    if (f.good() && edgeBreak > 0 && chamfer > 0) {
      f.problem("edge_break", "cannot stand beside chamfer", "keep one of them");
    }
    for (String key : new String[] {"edge_break", "chamfer"}) {
      double size = key.equals("chamfer") ? chamfer : edgeBreak;
      if (f.good() && stock.isPresent() && 2 * size >= stock.get().thickness()) {
        f.problem(
            key,
            "must be less than "
                + Numbers.brief(stock.get().thickness() / 2, 3)
                + " mm here (half the thickness), since it is on both faces",
            "lower it");
      }
    }
    OptionalDouble blade = f.length("blade").atLeast(0.5).atMost(50).optional();
    OptionalDouble turn = f.length("blade_turn").atLeast(0.5).atMost(1000).optional();
    if (f.good() && turn.isPresent() && blade.isEmpty()) {
      f.problem("blade_turn", "needs blade beside it", "add the width of the blade");
    }
    Optional<Optional<Requested<Printer>>> printer = printer(f);
    return f.build(
        () ->
            new Making(
                cutter,
                rough,
                scale,
                position,
                new EdgeFinish(edgeBreak, chamfer),
                blade.isPresent()
                    ? Optional.of(new SawBlade(blade.getAsDouble(), turn))
                    : Optional.empty(),
                printer.orElseThrow()));
  }

  /** Outer empty: wrong; inner empty: nothing is said of it. */
  private static Optional<Optional<Requested<Printer>>> printer(Fields f) {
    if (!f.has("printer")) {
      return Optional.of(Optional.empty());
    }
    Fields g = f.group("printer");
    Fields bed = g.group("bed");
    double width = bed.length("width").between(LEAST_BED, MOST_BED).or(Printer.USUAL.width());
    double depth = bed.length("depth").between(LEAST_BED, MOST_BED).or(Printer.USUAL.depth());
    double height = bed.length("height").between(10, MOST_BED).or(Printer.USUAL.height());
    double nozzle = g.length("nozzle").between(0.1, 2).or(Printer.USUAL.nozzle());
    double clearance = g.length("clearance").between(0, 1).or(Printer.USUAL.clearance());
    return g.build(
        () ->
            Optional.of(
                new Requested<>(
                    new Printer(width, depth, height, nozzle, clearance), f.place("printer"))));
  }
}
