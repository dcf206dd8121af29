package felloe.layup;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.NoFit;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Region;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Requested;
import java.util.ArrayList;
import java.util.List;

/**
 * The blank that the plate and the test strips are cut from, in the plate's frame.
 *
 * @param contour its edge; every ply has this outline
 * @param area mm²
 * @param margin between the plate's box and the blank's edge, at the least, mm
 * @param strips test strips on it
 * @param notes what the maker should know about it
 */
public record BlankPlan(
    Contour contour, double area, double margin, TestStrips strips, List<String> notes) {

  /** Blanks are cut to whole steps of this, mm. */
  private static final double STEP = 5;

  /** Longer strips than this are not cut from the blank, mm. */
  private static final double LONGEST = 400;

  public BlankPlan {
    notes = List.copyOf(notes);
  }

  /** The box round it. */
  public Box box() {
    return contour.box();
  }

  /**
   * The blank for a plate.
   *
   * @param thickness of the laminate, mm
   * @throws BadInput when the outline cannot be grown by the margin
   */
  static BlankPlan of(Plate plate, LayupChoice choice, double thickness) {
    TestStrips sized = TestStrips.sized(choice.cloth().stripClass(), thickness, choice.strips());
    boolean turned = choice.cloth().weave().woven();
    if (sized.asked() > 0 && sized.length() > LONGEST) {
      return withoutStrips(plate, choice, sized);
    }
    return choice.pieces() == LayupWish.Pieces.OUTLINE
        ? outline(plate, choice, sized, turned)
        : rectangle(plate, choice.margin(), sized, turned);
  }

  /**
   * A thick plate's strips would be longer than the plate: they are better made of a thin panel.
   */
  private static BlankPlan withoutStrips(Plate plate, LayupChoice choice, TestStrips sized) {
    TestStrips none = TestStrips.sized(sized.stripClass(), sized.thickness(), 0);
    boolean outline = choice.pieces() == LayupWish.Pieces.OUTLINE;
    BlankPlan bare =
        outline
            ? outline(plate, choice, none, false)
            : rectangle(plate, choice.margin(), none, false);
    TestStrips thin = TestStrips.sized(sized.stripClass(), 2, sized.asked());
    String note =
        "test strips for this thickness would be "
            + Numbers.brief(sized.length(), 0)
            + " mm long; lay up a panel of 2 mm of the same cloth in the same pots beside it, and"
            + " cut them "
            + Numbers.brief(thin.length(), 0)
            + " x "
            + Numbers.brief(thin.width(), 0)
            + " mm from that";
    return new BlankPlan(bare.contour(), bare.area(), bare.margin(), sized, List.of(note));
  }

  private static BlankPlan outline(
      Plate plate, LayupChoice choice, TestStrips sized, boolean turned) {
    Contour edge;
    try {
      List<Region> grown = Offset.of(Region.of(plate.outline()), choice.margin());
      edge = grown.get(0).outer();
    } catch (GeometryException odd) {
      throw new BadInput(
          new Problem(
              choice.wish().margin().map(Requested::place).orElse(Place.BUILT_IN),
              "margin",
              "",
              "cannot be put round this outline (" + odd.getMessage() + ")",
              "take another margin, or cut the plies as rectangles"));
    }
    TestStrips.Placer placer = placer(plate, sized, turned);
    TestStrips best = sized;
    for (Contour opening : openings(plate)) {
      TestStrips placed = placer.in(opening.box());
      List<TestStrips.Strip> inside =
          placed.placed().stream()
              .filter(strip -> opening.contains(strip.contour().box().centre()))
              .toList();
      if (inside.size() > best.placed().size()) {
        best = sized.with(inside);
      }
    }
    List<String> notes = new ArrayList<>();
    if (best.placed().size() < best.asked()) {
      notes.add(
          best.placed().size()
              + " of "
              + best.asked()
              + " test strips find room in the windows; cut the plies as rectangles, or lay up a"
              + " panel for strips beside it, of the same plies in the same pots");
    }
    return new BlankPlan(edge, edge.area(), choice.margin(), best, notes);
  }

  private static List<Contour> openings(Plate plate) {
    return plate.region().holes();
  }

  private static TestStrips.Placer placer(Plate plate, TestStrips strips, boolean turned) {
    double smallest = strips.width() + 2 * TestStrips.GAP;
    NoFit.Shape shape = NoFit.Shape.of(plate.region(), TestStrips.GAP, smallest);
    return new TestStrips.Placer(strips, shape, turned);
  }

  /** The smallest of a few rectangles that all strips find room on. */
  private static BlankPlan rectangle(Plate plate, double margin, TestStrips sized, boolean turned) {
    Box least = rounded(plate.box().grown(margin));
    TestStrips.Placer placer = placer(plate, sized, turned);
    double pitch = sized.width() + TestStrips.GAP + 2 * NoFit.COARSE;
    double room = sized.length() + 2 * TestStrips.TRIM + 1;
    List<Box> sizes = new ArrayList<>();
    for (int rows = 0; rows <= sized.asked(); rows++) {
      double wide = Math.max(least.width(), rows == 0 ? 0 : room);
      sizes.add(grown(least, wide, least.height() + rows * pitch));
      if (turned && rows > 0) {
        sizes.add(grown(least, least.width() + rows * pitch, Math.max(least.height(), room)));
      }
    }
    sizes.sort((a, b) -> Double.compare(a.width() * a.height(), b.width() * b.height()));
    for (Box box : sizes) {
      TestStrips placed = placer.in(box.grown(-TestStrips.TRIM));
      if (placed.placed().size() == placed.asked()) {
        return of(box, margin, placed, least);
      }
    }
    return of(least, margin, sized, least);
  }

  private static BlankPlan of(Box box, double margin, TestStrips strips, Box least) {
    List<String> notes = new ArrayList<>();
    if (strips.placed().size() < strips.asked()) {
      notes.add("the test strips find no room; lay up a panel for them beside the blank");
    }
    double more = box.width() * box.height() - least.width() * least.height();
    if (more > 1) {
      notes.add(
          "the blank is larger than the plate with its margin, so that the test strips find room;"
              + " without strips it is "
              + Numbers.brief(least.width(), 0)
              + " x "
              + Numbers.brief(least.height(), 0)
              + " mm");
    }
    return new BlankPlan(Contour.rectangle(box), box.width() * box.height(), margin, strips, notes);
  }

  /** Wider evenly on both sides, higher at the lower side. */
  private static Box grown(Box least, double width, double height) {
    double wide = up(width);
    double side = (wide - least.width()) / 2;
    return new Box(
        least.minX() - side, least.maxY() - up(height), least.minX() - side + wide, least.maxY());
  }

  private static Box rounded(Box box) {
    double width = up(box.width());
    double height = up(box.height());
    double x = box.centre().x() - width / 2;
    double y = box.centre().y() - height / 2;
    return new Box(x, y, x + width, y + height);
  }

  private static double up(double length) {
    return STEP * Tolerances.up(length / STEP);
  }
}
