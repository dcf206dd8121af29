package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.plate.EdgeFinish;
import felloe.plate.Engraving;
import felloe.plate.Making;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plates and test strips where they lie on one sheet. Lengths in mm, from its lower left corner.
 *
 * @param plates in the frame of the sheet, smaller outlines first: what lies in another's window
 *     must be cut before the window's waste comes loose
 * @param room the sheet, its margin and its clamps
 * @param held whether the grain or the 0 degree fibres keep their direction
 * @param parts each part's place, in the order of the request
 * @param used height of the strip that the parts take
 * @param yield share of that strip that becomes parts
 * @param boxesUsed the same height if each part took its bounding box; none when they have no room
 * @param boxesYield the yield of that
 */
public record SheetLayout(
    List<Plate> plates,
    SheetRoom room,
    boolean held,
    List<Lying> parts,
    double used,
    double yield,
    Optional<Double> boxesUsed,
    Optional<Double> boxesYield) {

  /** Copies the lists. */
  public SheetLayout {
    plates = List.copyOf(plates);
    parts = List.copyOf(parts);
  }

  /**
   * A part on the sheet.
   *
   * @param name its name
   * @param at where its own origin lies
   * @param turn degrees counter-clockwise
   */
  public record Lying(String name, Point at, double turn) {}

  /** Orders that are tried; the demo shapes gain nothing beyond. */
  private static final int TRIES = 12;

  /** Thicknesses that differ by no more are one, mm: what a change of unit leaves. */
  private static final double ONE_THICKNESS = 1e-6;

  /**
   * Lays plates on a sheet.
   *
   * @param slot what is cut away round each part, mm: the cutter's width or the kerf
   * @param walls whether a wall must stand between two slots for tabs to hold on to; else slots may
   *     share their room
   * @throws CutRefused with everything that speaks against it
   */
  public static SheetLayout of(List<Plate> plates, SheetRequest order, double slot, boolean walls) {
    List<CutFault> faults = new ArrayList<>();
    sameStock(plates, faults);
    Optional<Sheet> size = size(plates, order, faults);
    size.ifPresent(sheet -> check(sheet, order, slot, faults));
    if (!faults.isEmpty()) {
      throw new CutRefused(faults);
    }
    Sheet sheet = size.orElseThrow();
    List<Plate> all = copies(plates, order.copies());
    strips(all, order);
    List<Double> turns = order.held() ? NestedPart.HELD : NestedPart.FREE;
    List<NestedPart> parts =
        all.stream().map(plate -> new NestedPart(plate.name(), plate.region(), turns)).toList();
    double wide = Math.max(0, slot);
    SheetRoom room = new SheetRoom(sheet, order.margin(), wide, order.keepOut());
    double spacing = (walls ? 2 : 1) * wide + order.spacing();
    Nesting.Layout laid = Nesting.place(parts, room, spacing, TRIES);
    if (!laid.left().isEmpty()) {
      throw new CutRefused(List.of(noRoom(laid, plates, order, sheet)));
    }
    List<Plate> moved = new ArrayList<>();
    List<Lying> lying = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      RigidTransform motion = laid.placed().get(i).motion();
      moved.add(moved(all.get(i), motion, all.size() > 1));
      double turn = Math.toDegrees(motion.turn());
      lying.add(new Lying(all.get(i).name(), motion.of(Point.ORIGIN), turn));
    }
    moved.sort((a, b) -> Double.compare(a.outline().area(), b.outline().area()));
    Nesting.Layout boxes =
        Nesting.place(
            parts.stream().map(SheetLayout::boxed).toList(), room, spacing, Math.min(TRIES, 4));
    Optional<Double> boxesUsed =
        boxes.left().isEmpty() ? Optional.of(boxes.used()) : Optional.empty();
    return new SheetLayout(
        moved,
        room,
        order.held(),
        lying,
        laid.used(),
        laid.yield(),
        boxesUsed,
        boxesUsed.map(used -> laid.yield() * laid.used() / used));
  }

  /** Each plate as often as wanted; what bears one name is numbered. */
  private static List<Plate> copies(List<Plate> plates, int copies) {
    List<Plate> all = new ArrayList<>();
    for (Plate plate : plates) {
      for (int i = 0; i < copies; i++) {
        all.add(plate);
      }
    }
    List<Plate> named = new ArrayList<>();
    Set<String> taken = new LinkedHashSet<>();
    all.forEach(plate -> taken.add(plate.name()));
    for (Plate plate : all) {
      boolean once = all.stream().filter(p -> p.name().equals(plate.name())).count() == 1;
      int number = 1;
      while (!once && !taken.add(plate.name() + "-" + number)) {
        number++;
      }
      named.add(once ? plate : named(plate, plate.name() + "-" + number));
    }
    return named;
  }

  private static Plate named(Plate plate, String name) {
    return new Plate(
        name,
        plate.title(),
        plate.revision(),
        plate.outline(),
        plate.windows(),
        plate.holes(),
        plate.boltCircles(),
        plate.hub(),
        plate.stock(),
        plate.making(),
        plate.limits(),
        plate.notes(),
        plate.joints(),
        plate.load(),
        plate.engravings(),
        plate.grips(),
        plate.bodies(),
        plate.cockpit());
  }

  private static NestedPart boxed(NestedPart part) {
    return new NestedPart(
        part.name(), Region.of(Contour.rectangle(part.region().outer().box())), part.turns());
  }

  private static void sameStock(List<Plate> plates, List<CutFault> faults) {
    Plate first = plates.get(0);
    for (Plate plate : plates) {
      boolean same =
          plate.stock().material().name().equals(first.stock().material().name())
              && Math.abs(plate.stock().thickness() - first.stock().thickness()) <= ONE_THICKNESS;
      if (!same) {
        faults.add(
            CutFault.at(
                plate.stock().place(),
                "stock",
                plate.stock().material().name()
                    + ", "
                    + Numbers.brief(plate.stock().thickness(), 3)
                    + " mm",
                "cannot share a sheet with "
                    + first.name()
                    + " ("
                    + first.stock().material().name()
                    + ", "
                    + Numbers.brief(first.stock().thickness(), 3)
                    + " mm)",
                "cut them one after the other"));
      }
    }
  }

  private static Optional<Sheet> size(
      List<Plate> plates, SheetRequest order, List<CutFault> faults) {
    if (order.size().isPresent()) {
      return order.size();
    }
    Set<Sheet> sizes = new LinkedHashSet<>();
    plates.forEach(plate -> plate.stock().sheet().ifPresent(sizes::add));
    if (sizes.size() == 1) {
      return sizes.stream().findFirst();
    }
    faults.add(
        CutFault.of(
            CutFigure.SHEET,
            "",
            sizes.isEmpty()
                ? "must be given: no shape file names its sheet"
                : "must be given: the shape files name different sheets",
            "write its size, such as 600x400"));
    return Optional.empty();
  }

  private static void check(Sheet sheet, SheetRequest order, double slot, List<CutFault> faults) {
    Box all = new Box(0, 0, sheet.width(), sheet.height());
    for (Box box : order.keepOut()) {
      if (!box.touches(all)) {
        faults.add(
            CutFault.of(
                CutFigure.KEEP_OUT,
                Numbers.brief(box.minX(), 2) + "," + Numbers.brief(box.minY(), 2),
                "must touch the sheet (" + words(sheet) + ")",
                "measure from the sheet's lower left corner"));
      }
    }
    if (2 * (order.margin() + Math.max(0, slot)) >= Math.min(sheet.width(), sheet.height())) {
      faults.add(
          CutFault.of(
              CutFigure.SHEET_MARGIN,
              Numbers.brief(order.margin(), 2) + " mm",
              "leaves nothing of the sheet (" + words(sheet) + ")",
              "lower it"));
    }
  }

  private static CutFault noRoom(
      Nesting.Layout laid, List<Plate> plates, SheetRequest order, Sheet sheet) {
    String left = String.join(", ", laid.left().stream().map(NestedPart::name).toList());
    String wanted =
        "has no room for "
            + left
            + " with the slots round them and the margin of "
            + Numbers.brief(order.margin(), 2)
            + " mm";
    String cure =
        "take a larger sheet or fewer parts"
            + (order.held() ? ", let them turn against the grain" : "")
            + ", or lower the room between parts or the sheet's margin";
    Optional<Plate> own =
        plates.stream().filter(plate -> plate.stock().sheet().isPresent()).findFirst();
    return order.size().isPresent() || own.isEmpty()
        ? CutFault.of(CutFigure.SHEET, words(sheet), wanted, cure)
        : CutFault.at(own.get().stock().place(), "stock.sheet", words(sheet), wanted, cure);
  }

  private static String words(Sheet sheet) {
    return Numbers.brief(sheet.width(), 2) + " x " + Numbers.brief(sheet.height(), 2) + " mm";
  }

  private static void strips(List<Plate> all, SheetRequest order) {
    Plate first = all.get(0);
    int number = 0;
    for (SheetRequest.Strips strips : order.strips()) {
      for (int i = 0; i < strips.count(); i++) {
        number++;
        Box box = new Box(0, 0, strips.length(), strips.width());
        all.add(
            new Plate(
                "strip-" + number,
                "Test strip " + number,
                first.revision(),
                Contour.rectangle(box),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                first.stock(),
                sharp(first.making()),
                List.of(),
                List.of()));
      }
    }
  }

  /** A strip that is to be broken keeps its edges. */
  private static Making sharp(Making making) {
    return new Making(
        making.cutterDiameter(),
        making.roughAllowance(),
        making.gripScale(),
        making.position(),
        EdgeFinish.NONE,
        making.blade(),
        making.printer());
  }

  /** A plate where it lies; its labels begin with its name when it is not alone. */
  private static Plate moved(Plate plate, RigidTransform motion, boolean named) {
    String before = named ? plate.name() + " " : "";
    return new Plate(
        plate.name(),
        plate.title(),
        plate.revision(),
        plate.outline().moved(motion),
        plate.windows().stream()
            .map(w -> new Window(before + w.label(), w.use(), w.contour().moved(motion), w.place()))
            .toList(),
        plate.holes().stream().map(h -> h.moved(motion).named(before + h.label())).toList(),
        // Rings of holes stand about the hub axis, which is the origin no longer.
        List.of(),
        plate.hub(),
        plate.stock(),
        plate.making(),
        plate.limits(),
        plate.notes(),
        plate.joints(),
        plate.load(),
        plate.engravings().stream().map(e -> moved(e, motion, before)).toList(),
        // Grips and what sits in openings are put on when it is cut.
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static Engraving moved(Engraving engraving, RigidTransform motion, String before) {
    return new Engraving(
        before + engraving.label(),
        engraving.what(),
        engraving.face(),
        engraving.strokes().stream()
            .map(stroke -> chained(stroke.stream().map(s -> s.moved(motion)).toList()))
            .toList(),
        engraving.lineWidth(),
        engraving.depth(),
        engraving.place());
  }

  /** The chain with every segment starting where the one before ends, to the last digit. */
  private static List<Segment> chained(List<Segment> stroke) {
    List<Segment> chain = new ArrayList<>();
    for (Segment segment : stroke) {
      Point from = chain.isEmpty() ? segment.from() : chain.get(chain.size() - 1).to();
      chain.add(
          segment.from().equals(from) ? segment : Loop.part(segment, 0, 1, from, segment.to()));
    }
    return chain;
  }
}
