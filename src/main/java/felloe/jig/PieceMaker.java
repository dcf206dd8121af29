package felloe.jig;

import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.plate.Plate;
import felloe.plate.Printer;
import felloe.shape.Letters;
import felloe.solid.Plan;
import felloe.solid.PlanLine;
import felloe.solid.Relief;
import felloe.solid.Solid;
import felloe.solid.Storey;
import felloe.solid.Vertex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bodies of pieces, labelled, as they lie on the bed. */
final class PieceMaker {

  /** Greatest distance of a chord from its arc, mm: less than a printer's smallest step. */
  private static final double CHORD = 0.02;

  /** A spigot this much shorter than the plate is thick does not stand on the bench, mm. */
  private static final double SHORT = 0.5;

  private static final double LONGEST_SPIGOT = 8;

  /** Arms of the gauge, mm: wide enough for a calliper's jaws and stiff. */
  private static final double ARM = 12;

  private static final double GAUGE_HEIGHT = 6;

  private final Plate plate;
  private final Printer printer;
  private final double across;
  private final double along;
  private final Letters letters = Letters.standard();

  PieceMaker(Plate plate, Printer printer, double across, double along) {
    this.plate = plate;
    this.printer = printer;
    this.across = across;
    this.along = along;
  }

  /** The pieces of the template, their faces with the letters up: the driver's side. */
  List<JigPiece> flat(BedCuts.Result cuts, double height) {
    List<JigPiece> pieces = new ArrayList<>();
    for (int i = 0; i < cuts.cuts().size(); i++) {
      BedCuts.Cut cut = cuts.cuts().get(i);
      String text = cut.name().isEmpty() ? "FRONT" : cut.name();
      Grooves grooves = Grooves.in(cut.region(), text, letters, printer.nozzle());
      Solid body = body(cut.region(), height, 0, Optional.empty(), grooves);
      int joints = cuts.joined().get(i).size();
      pieces.add(new JigPiece(name("template", cut), grooves.text(), joints, scaled(body)));
    }
    return pieces;
  }

  /** The pieces of the jig; with a spigot or a rim it is printed upside down, that up. */
  List<JigPiece> jig(BedCuts.Result cuts, double height, Locator locator) {
    Optional<PlanLine> reach = reach(locator);
    double deep = Math.max(1, Math.min(LONGEST_SPIGOT, plate.stock().asMade() - SHORT));
    List<JigPiece> pieces = new ArrayList<>();
    for (int i = 0; i < cuts.cuts().size(); i++) {
      BedCuts.Cut cut = cuts.cuts().get(i);
      String text = (cut.name() + " FRONT").strip();
      Grooves grooves = Grooves.in(cut.region(), text, letters, printer.nozzle());
      Solid body = body(cut.region(), height, locator.rim() ? -deep : deep, reach, grooves);
      Solid lying = reach.isPresent() ? upsideDown(body, height) : body;
      int joints = cuts.joined().get(i).size();
      pieces.add(new JigPiece(name("drill", cut), grooves.text(), joints, scaled(lying)));
    }
    return pieces;
  }

  /** The line inside which a spigot reaches down, or outside which a rim does. */
  private Optional<PlanLine> reach(Locator locator) {
    if (locator.rim()) {
      Contour inner = Offset.of(plate.outline(), locator.size()).get(0).outer();
      return Optional.of(PlanLine.of(inner, CHORD));
    }
    return locator.spigot()
        ? Optional.of(PlanLine.circle(locator.middle(), locator.size() / 2, CHORD))
        : Optional.empty();
  }

  /** Turned over about the middle line of the plate, the upper face on the bed: x changes sign. */
  private static Solid upsideDown(Solid body, double height) {
    Vertex twice = body.extent().least().plus(body.extent().most(), 1);
    return body.turnedOver().moved(RigidTransform.shift(-twice.x(), 0), height - twice.z());
  }

  private Solid scaled(Solid body) {
    return across == 1 && along == 1 ? body : body.scaled(across, along, 1);
  }

  private static String name(String what, BedCuts.Cut cut) {
    return cut.name().isEmpty() ? what : what + "-" + cut.name();
  }

  /** An angle of two arms whose outer lengths are measured; never corrected. */
  JigPiece gauge(double length) {
    Region angle =
        Region.of(
            Contour.polygon(
                List.of(
                    new Point(0, 0),
                    new Point(length, 0),
                    new Point(length, ARM),
                    new Point(ARM, ARM),
                    new Point(ARM, length),
                    new Point(0, length))));
    Region arm =
        Region.of(
            Contour.polygon(
                List.of(
                    new Point(ARM, 0),
                    new Point(length, 0),
                    new Point(length, ARM),
                    new Point(ARM, ARM))));
    Grooves grooves = Grooves.in(arm, "X", letters, printer.nozzle());
    Solid body = body(angle, GAUGE_HEIGHT, 0, Optional.empty(), grooves);
    return new JigPiece("gauge", grooves.text(), 0, body);
  }

  /**
   * @param deep how far it reaches down inside a line; below zero: outside of it
   */
  private static Solid body(
      Region region, double height, double deep, Optional<PlanLine> reach, Grooves grooves) {
    List<PlanLine> edges =
        region.contours().stream().map(contour -> PlanLine.of(contour, CHORD)).toList();
    List<PlanLine> lines = new ArrayList<>(edges);
    lines.addAll(grooves.lines());
    boolean stands =
        reach.isPresent()
            && (deep < 0 || reach.get().points().stream().anyMatch(edges.get(0)::surrounds));
    if (stands) {
      lines.add(reach.get());
    }
    PlanLine outer = edges.get(0);
    List<PlanLine> holes = edges.subList(1, edges.size());
    Plan plan =
        p -> {
          if (!outer.surrounds(p) || holes.stream().anyMatch(hole -> hole.surrounds(p))) {
            return Optional.empty();
          }
          double top = grooves.at(p) ? height - Grooves.DEPTH : height;
          boolean below = stands && reach.get().surrounds(p) == deep > 0;
          return Optional.of(Storey.level(below ? -Math.abs(deep) : 0, top));
        };
    return Relief.of(lines, plan).uncrossed();
  }
}
