package felloe.kit;

import felloe.cutting.NestedPart;
import felloe.cutting.Nesting;
import felloe.cutting.SheetRoom;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.kit.CutOrder.SheetOrder;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Sheet;
import felloe.plate.Window;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plates and test strips where they lie on one sheet.
 *
 * @param plates in the frame of the sheet, smaller outlines first: what lies in another's window
 *     must be cut before the window's waste comes loose
 * @param size of the sheet
 * @param layout how parts lie, for showing
 */
record CutSheet(List<Plate> plates, Sheet size, CutJob.Layout layout) {

  /** Orders that are tried; the demo shapes gain nothing beyond. */
  private static final int TRIES = 12;

  /**
   * Lays plates on a sheet.
   *
   * @param width what must lie between two parts apart from {@code order.spacing()}, mm: the kerf,
   *     or two cutters, since a tab needs a wall between the slots to hold on to
   * @throws felloe.plate.BadInput with everything that speaks against it
   */
  static CutSheet of(List<Plate> plates, SheetOrder order, double width) {
    Problems problems = new Problems();
    sameStock(plates, problems);
    Optional<Sheet> size = size(plates, order, problems);
    size.ifPresent(sheet -> check(sheet, order, problems));
    problems.throwIfAny();
    Sheet sheet = size.orElseThrow();
    List<Plate> all = new ArrayList<>(plates);
    strips(all, order);
    List<Double> turns = order.held() ? NestedPart.HELD : NestedPart.FREE;
    List<NestedPart> parts =
        all.stream().map(plate -> new NestedPart(plate.name(), plate.region(), turns)).toList();
    SheetRoom room = new SheetRoom(sheet, order.margin(), order.keepOut());
    double spacing = Math.max(0, width) + order.spacing();
    Nesting.Layout laid = Nesting.place(parts, room, spacing, TRIES);
    if (!laid.left().isEmpty()) {
      noRoom(laid, plates, order, sheet, problems);
      throw problems.asBadInput();
    }
    List<Plate> moved = new ArrayList<>();
    List<CutJob.Lying> lying = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      RigidTransform motion = laid.placed().get(i).motion();
      moved.add(moved(all.get(i), motion, all.size() > 1));
      double turn = Math.toDegrees(motion.turn());
      lying.add(new CutJob.Lying(all.get(i).name(), motion.of(Point.ORIGIN), turn));
    }
    moved.sort((a, b) -> Double.compare(a.outline().area(), b.outline().area()));
    Nesting.Layout boxes =
        Nesting.place(
            parts.stream().map(CutSheet::boxed).toList(), room, spacing, Math.min(TRIES, 4));
    Optional<Double> boxesUsed =
        boxes.left().isEmpty() ? Optional.of(boxes.used()) : Optional.empty();
    return new CutSheet(
        moved,
        sheet,
        new CutJob.Layout(
            sheet.width(),
            sheet.height(),
            lying,
            order.keepOut(),
            laid.used(),
            laid.yield(),
            boxesUsed,
            boxesUsed.map(used -> laid.yield() * laid.used() / used)));
  }

  private static NestedPart boxed(NestedPart part) {
    return new NestedPart(
        part.name(), Region.of(Contour.rectangle(part.region().outer().box())), part.turns());
  }

  private static void sameStock(List<Plate> plates, Problems problems) {
    Plate first = plates.get(0);
    for (Plate plate : plates) {
      boolean same =
          plate.stock().material().name().equals(first.stock().material().name())
              && plate.stock().thickness() == first.stock().thickness();
      if (!same) {
        problems.add(
            new Problem(
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

  private static Optional<Sheet> size(List<Plate> plates, SheetOrder order, Problems problems) {
    if (order.size().isPresent()) {
      return order.size();
    }
    Set<Sheet> sizes = new LinkedHashSet<>();
    plates.forEach(plate -> plate.stock().sheet().ifPresent(sizes::add));
    if (sizes.size() == 1) {
      return sizes.stream().findFirst();
    }
    problems.add(
        new Problem(
            Place.ofOption("--sheet", ""),
            "",
            "",
            sizes.isEmpty()
                ? "must be given: no shape file names its sheet"
                : "must be given: the shape files name different sheets",
            "write --sheet 600x400"));
    return Optional.empty();
  }

  private static void check(Sheet sheet, SheetOrder order, Problems problems) {
    Box all = new Box(0, 0, sheet.width(), sheet.height());
    for (Box box : order.keepOut()) {
      if (!box.touches(all)) {
        problems.add(
            new Problem(
                Place.ofOption("--keep-out", ""),
                "",
                Numbers.brief(box.minX(), 2) + "," + Numbers.brief(box.minY(), 2),
                "must touch the sheet (" + words(sheet) + ")",
                "measure from the sheet's lower left corner"));
      }
    }
    if (2 * order.margin() >= Math.min(sheet.width(), sheet.height())) {
      problems.add(
          new Problem(
              Place.ofOption("--sheet-margin", ""),
              "",
              Numbers.brief(order.margin(), 2) + " mm",
              "leaves nothing of the sheet (" + words(sheet) + ")",
              "lower it"));
    }
  }

  private static void noRoom(
      Nesting.Layout laid, List<Plate> plates, SheetOrder order, Sheet sheet, Problems problems) {
    Place place =
        order.size().isPresent()
            ? Place.ofOption("--sheet", "")
            : plates.stream()
                .filter(plate -> plate.stock().sheet().isPresent())
                .findFirst()
                .map(plate -> plate.stock().place())
                .orElse(Place.ofOption("--sheet", ""));
    problems.add(
        new Problem(
            place,
            place.isOption() ? "" : "stock.sheet",
            words(sheet),
            "has no room for "
                + String.join(", ", laid.left().stream().map(NestedPart::name).toList()),
            "take a larger sheet or fewer parts"
                + (order.held() ? ", let them turn with --grain free" : "")
                + ", or lower --spacing or --sheet-margin"));
  }

  private static String words(Sheet sheet) {
    return Numbers.brief(sheet.width(), 2) + " x " + Numbers.brief(sheet.height(), 2) + " mm";
  }

  private static void strips(List<Plate> all, SheetOrder order) {
    Plate first = all.get(0);
    int number = 0;
    for (CutWords.Strips strips : order.strips()) {
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
                first.making(),
                List.of(),
                List.of()));
      }
    }
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
        plate.notes());
  }

  Box box() {
    return new Box(0, 0, size.width(), size.height());
  }
}
