package felloe.jig;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.hub.HubFitResult;
import felloe.plate.BadInput;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Printer;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.SourcedFigure;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Plans what is printed to make a plate by. */
public final class JigMaker {

  /** Two pins nearer than this hold no jig square, mm; common practice. */
  private static final double LEAST_SPAN = 15;

  private final Plate plate;
  private final Optional<HubFitResult> fit;
  private final JigWish wish;
  private final JigPractice practice = JigPractice.standard();
  private final Printer printer;
  private final Problems problems = new Problems();
  private final double height;

  private JigMaker(Plate plate, Optional<HubFitResult> fit, JigWish wish) {
    this.plate = plate;
    this.fit = fit;
    this.wish = wish;
    this.printer = Requested.or(plate.making().printer(), Printer.USUAL);
    this.height = Requested.or(wish.height(), JigWish.HEIGHT);
  }

  /**
   * The plan.
   *
   * @param fit of the plate to its hub, for what the hub allows
   * @throws BadInput with everything that cannot be
   */
  public static JigPlan of(Plate plate, Optional<HubFitResult> fit, JigWish wish) {
    return new JigMaker(plate, fit, wish).plan();
  }

  private JigPlan plan() {
    double thick = Requested.or(wish.templateHeight(), JigWish.TEMPLATE);
    refuseHigh("template", wish.templateHeight(), thick);
    refuseHigh("jig", wish.height(), height);
    wish.gauge().ifPresent(this::refuseSlip);
    Optional<Locator> locator = locator();
    List<Hole> drilled = drilled(locator);
    problems.throwIfAny();
    List<Guide> bores = drilled.stream().map(this::bore).toList();
    problems.throwIfAny();
    Region body = new JigBody(plate, wish, printer, locator.get()).of(bores);

    double gap = printer.clearance();
    List<Contour> spigot =
        locator.get().spigot()
            ? List.of(Contour.circle(locator.get().middle(), locator.get().size() / 2))
            : List.of();
    BedCuts.Result jig = cut(body, "the drill jig", gap, spigot);
    BedCuts.Result flat = cut(plate.region(), "the template", gap, List.of());
    problems.throwIfAny();
    PieceMaker maker = new PieceMaker(plate, printer, scale(true), scale(false));
    List<JigPiece> template = maker.flat(flat, thick);
    List<JigPiece> drill = maker.jig(jig, height, locator.get());
    List<Guide> guides = bores.stream().map(guide -> with(guide, locator.get(), jig)).toList();
    return new JigPlan(
        printer,
        template,
        drill,
        maker.gauge(gaugeLength()),
        locator.get(),
        guides,
        candidates().stream().filter(hole -> !drilled.contains(hole)).toList(),
        scale(true),
        scale(false),
        wish.gauge().isPresent(),
        fit.flatMap(JigMaker::allowed),
        figures(locator.get()));
  }

  private Place printerPlace() {
    return plate.making().printer().map(Requested::place).orElse(plate.stock().place());
  }

  private void refuseHigh(String what, Optional<Requested<Double>> asked, double high) {
    if (high > printer.height()) {
      problems.add(
          new Problem(
              asked.map(Requested::place).orElse(printerPlace()),
              "height of the " + what,
              Numbers.brief(high, 3),
              "must be at most " + mm(printer.height()) + ", the height that the printer prints",
              "lower it, or raise making.printer.bed.height"));
    }
  }

  private void refuseSlip(Requested<GaugeReading> read) {
    double length = gaugeLength();
    double most = GaugeReading.MOST_OFF * length;
    GaugeReading gauge = read.value();
    if (Math.abs(gauge.across() - length) > most || Math.abs(gauge.along() - length) > most) {
      problems.add(
          new Problem(
              read.place(),
              "",
              Numbers.brief(gauge.across(), 3) + "x" + Numbers.brief(gauge.along(), 3),
              "must be from "
                  + mm(length - most)
                  + " to "
                  + mm(length + most)
                  + " each: the gauge is drawn "
                  + mm(length)
                  + " long on this bed",
              "measure over the whole arm"));
    }
  }

  static String mm(double value) {
    return Numbers.brief(value, 2) + " mm";
  }

  /** Holes that could be guided: those of the hub, or all that are drilled. */
  private List<Hole> candidates() {
    return plate.holes().stream()
        .filter(hole -> hole.role() != HoleRole.BORE)
        .filter(hole -> wish.all() || hole.role() == HoleRole.BOLT)
        .toList();
  }

  private List<Hole> drilled(Optional<Locator> locator) {
    List<Hole> drilled =
        candidates().stream()
            .filter(hole -> !hole.isSlotted() && hole.diameter() <= practice.largestDrill())
            .filter(hole -> locator.isEmpty() || !locator.get().holes().contains(hole))
            .toList();
    if (drilled.isEmpty()) {
      problems.add(
          new Problem(
              Place.ofFile(plate.stock().place().file()),
              "jig",
              "",
              "has no hole to guide a drill to: no round "
                  + (wish.all() ? "hole" : "hub hole")
                  + " up to "
                  + mm(practice.largestDrill())
                  + " is left",
              wish.all() ? "" : "ask for all holes, or add a bolt circle"));
    }
    return drilled;
  }

  private Optional<Locator> locator() {
    if (wish.pins().isPresent()) {
      return pins(wish.pins().get());
    }
    Optional<Hole> bore =
        plate.holes(HoleRole.BORE).stream().filter(hole -> !hole.isSlotted()).findFirst();
    if (bore.isEmpty()) {
      double gap = printer.clearance() + practice.edge();
      Locator rim = Locator.round(plate, gap, gap + practice.edge());
      if (rim.nest().orElseThrow().holds()) {
        return Optional.of(rim);
      }
      List<String> round =
          plate.holes().stream().filter(h -> !h.isSlotted()).map(Hole::label).limit(2).toList();
      problems.add(
          new Problem(
              Place.ofFile(plate.stock().place().file()),
              "jig",
              "",
              "needs a bore for its spigot, or two holes for pins: a rim round this outline would"
                  + " let it turn",
              "add bore to the shape file, or name two holes that are drilled already"
                  + (round.size() == 2 ? ", such as " + String.join(",", round) : "")));
      return Optional.empty();
    }
    double size = bore.get().diameter() - 2 * printer.clearance();
    if (size < 5 * printer.thinnestWall()) {
      problems.add(
          new Problem(
              bore.get().place(),
              "bore",
              Numbers.brief(bore.get().diameter(), 3),
              "is too small for a printed spigot, which would be " + mm(size) + " thick",
              "name two holes for pins"));
      return Optional.empty();
    }
    return Optional.of(Locator.in(List.of(bore.get()), size, printer.clearance()));
  }

  private Optional<Locator> pins(Requested<List<String>> asked) {
    List<Hole> holes = new ArrayList<>();
    for (String label : asked.value()) {
      plate.holes().stream()
          .filter(hole -> hole.label().equalsIgnoreCase(label) && !hole.isSlotted())
          .findFirst()
          .ifPresent(holes::add);
    }
    String known =
        plate.holes().stream()
            .filter(hole -> !hole.isSlotted())
            .map(Hole::label)
            .reduce((a, b) -> a + ", " + b)
            .orElse("none");
    boolean alike = holes.size() == 2 && holes.get(0).diameter() == holes.get(1).diameter();
    boolean apart =
        holes.size() == 2 && holes.get(0).centre().distance(holes.get(1).centre()) >= LEAST_SPAN;
    if (asked.value().size() != 2 || !alike || !apart) {
      problems.add(
          new Problem(
              asked.place(),
              "",
              String.join(",", asked.value()),
              "must be two different round holes of one size, "
                  + mm(LEAST_SPAN)
                  + " apart at least",
              "the round holes are " + known));
      return Optional.empty();
    }
    double size = holes.get(0).diameter();
    return Optional.of(Locator.in(holes, size, practice.guidePlay() / 2));
  }

  private Guide bore(Hole hole) {
    if (!wish.bushes()) {
      return new Guide(hole, hole.diameter(), Optional.empty(), List.of());
    }
    Optional<DrillBush> bush = practice.bush(hole.diameter(), height);
    if (bush.isEmpty()) {
      problems.addOnce(
          new Problem(
              wish.height().map(Requested::place).orElse(plate.stock().place()),
              "height of the jig",
              Numbers.brief(height, 3),
              "is less than the shortest bush for a drill of " + mm(hole.diameter()),
              "raise it"));
    }
    double outside = bush.map(DrillBush::outside).orElse(hole.diameter());
    return new Guide(hole, outside + practice.bushPlay(), bush, List.of());
  }

  private BedCuts.Result cut(Region region, String what, double gap, List<Contour> whole) {
    double width = (printer.width() - 2 * BedCuts.RIM) / Math.max(1, scale(true));
    double depth = (printer.depth() - 2 * BedCuts.RIM) / Math.max(1, scale(false));
    double wall = Math.max(1.5, printer.thinnestWall());
    Optional<BedCuts.Result> cuts = BedCuts.of(region, width, depth, gap, wall, whole);
    if (cuts.isEmpty()) {
      Box box = region.outer().box();
      problems.add(
          new Problem(
              printerPlace(),
              "making.printer.bed",
              Numbers.brief(printer.width(), 2) + " x " + Numbers.brief(printer.depth(), 2),
              "is too small for "
                  + what
                  + " of "
                  + mm(box.width())
                  + " x "
                  + mm(box.height())
                  + ": it cannot be cut into pieces that fit and hold together with dovetails",
              "print on a larger bed"));
    }
    return cuts.orElse(null);
  }

  /** Joints from what locates the jig to one of its pieces; a rim is on all of them. */
  private static int joints(Locator locator, BedCuts.Result jig, int piece) {
    return locator.rim()
        ? IntStream.range(0, jig.cuts().size()).map(i -> jig.between(i, piece)).max().orElse(0)
        : jig.between(jig.holding(home(locator, jig)), piece);
  }

  /** A point of the piece that the locator is on. */
  private static Point home(Locator locator, BedCuts.Result jig) {
    return locator.spigot()
        ? locator.middle()
        : jig.cuts().get(0).region().contains(locator.middle())
            ? locator.middle()
            : locator.holes().get(0).centre().plus(new Point(locator.size(), 0));
  }

  private double scale(boolean across) {
    return wish.gauge()
        .map(Requested::value)
        .map(g -> gaugeLength() / (across ? g.across() : g.along()))
        .orElse(1.0);
  }

  /** Length of the gauge's arms, mm: 100, or what a small bed takes, in tens. */
  private double gaugeLength() {
    double room = Math.min(printer.width(), printer.depth()) - 2 * BedCuts.RIM;
    return Math.min(100, 10 * Math.floor(room / 10));
  }

  /** The guide with what may put its hole off. */
  private Guide with(Guide guide, Locator locator, BedCuts.Result jig) {
    Hole hole = guide.hole();
    double far = hole.centre().distance(locator.middle());
    double part =
        wish.gauge().isPresent() ? practice.reading() / gaugeLength() : practice.shrinkage();
    Point beside = hole.centre().plus(new Point(guide.bore() / 2 + printer.nozzle(), 0));
    int joints = joints(locator, jig, jig.holding(beside));
    double play = guide.bush().map(DrillBush::play).orElse(practice.guidePlay());
    double length = guide.bush().map(DrillBush::length).orElse(height);
    List<Guide.Share> shares = new ArrayList<>();
    shares.add(new Guide.Share(Guide.Cause.PLACE, practice.place()));
    shares.add(new Guide.Share(Guide.Cause.SCALE, part * far));
    shares.add(new Guide.Share(Guide.Cause.LOCATING, locator.off(hole.centre())));
    shares.add(new Guide.Share(Guide.Cause.JOINTS, joints * printer.clearance()));
    shares.add(
        new Guide.Share(Guide.Cause.BUSH, guide.bush().isPresent() ? practice.bushPlay() / 2 : 0));
    shares.add(new Guide.Share(Guide.Cause.PLAY, play / 2));
    shares.add(new Guide.Share(Guide.Cause.LEAN, play * plate.stock().asMade() / length));
    return new Guide(
        hole, guide.bore(), guide.bush(), shares.stream().filter(share -> share.mm() > 0).toList());
  }

  /** What is left of the tightest screw's room when the hub's own holes are at their worst. */
  private static Optional<Double> allowed(HubFitResult fit) {
    return fit.clearance()
        .filter(room -> fit.enters())
        .map(room -> Math.max(0, room - fit.hub().positionTolerance() / 2));
  }

  private List<SourcedFigure> figures(Locator locator) {
    List<SourcedFigure> figures = new ArrayList<>();
    String basis = practice.basis();
    String own = plate.making().printer().isPresent() ? "set in the shape file" : "common practice";
    figures.add(new SourcedFigure("width of the nozzle", printer.nozzle(), "mm", own));
    figures.add(
        new SourcedFigure("gap on each side of what slides", printer.clearance(), "mm", own));
    figures.add(new SourcedFigure("place of a printed hole", practice.place(), "mm", basis));
    if (wish.gauge().isPresent()) {
      figures.add(
          new SourcedFigure("calliper on the gauge, both ends", practice.reading(), "mm", basis));
    } else {
      figures.add(
          new SourcedFigure("shrinkage, not measured", 100 * practice.shrinkage(), "%", basis));
    }
    if (locator.rim()) {
      figures.add(new SourcedFigure("finished edge off its line", practice.edge(), "mm", basis));
    }
    if (wish.bushes()) {
      figures.add(
          new SourcedFigure("bush in its printed hole, glued", practice.bushPlay(), "mm", basis));
      figures.add(
          new SourcedFigure(
              "outside diameter of the largest bush",
              practice.bushes().stream()
                  .filter(b -> b.bore() >= largest())
                  .findFirst()
                  .orElseThrow()
                  .outside(),
              "mm",
              practice.bushesBasis()));
      figures.add(
          new SourcedFigure(
              "drill in that bush, greatest play",
              practice.bush(largest(), height).orElseThrow().play(),
              "mm",
              practice.runningBasis()));
    } else {
      figures.add(new SourcedFigure("drill in a printed guide", practice.guidePlay(), "mm", basis));
    }
    return figures;
  }

  private double largest() {
    return drilled(Optional.empty()).stream().mapToDouble(Hole::diameter).max().orElseThrow();
  }
}
