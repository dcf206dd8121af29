package felloe.layup;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.laminate.Laminate;
import felloe.laminate.LaminateModuli;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.Material;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The plan of a blank that is laid up: plies, cloth, resin in pots, mould, strips, and beside it
 * the other ways of getting the stock.
 *
 * @param plate what is cut from it
 * @param choice what it is made with
 * @param stack the plies
 * @param moduli of the laminate
 * @param density of the laminate, g/cm³
 * @param plateMass of the finished plate, g
 * @param blank the blank and the test strips on it
 * @param cloth where the plies are cut from the roll
 * @param resin how much
 * @param pots which pot when
 * @param mould what it is laid up on
 * @param hours of work, without cutting the plate
 * @param ways the ways of getting the stock; the lay-up first
 * @param figures what the plan rests on
 * @param notes what the maker should know
 */
public record LayupPlan(
    Plate plate,
    LayupChoice choice,
    StackPlan stack,
    LaminateModuli moduli,
    double density,
    double plateMass,
    BlankPlan blank,
    ClothPlan cloth,
    ResinPlan resin,
    PotPlan pots,
    MouldPlan mould,
    double hours,
    List<StockOption> ways,
    List<SourcedFigure> figures,
    List<String> notes) {

  /** Minutes to mark and cut a piece of cloth: common practice, from memory. */
  static final double CUTTING = 4;

  /** Beyond this a stack heats itself, mm: common practice. */
  private static final double THICK = 10;

  public LayupPlan {
    ways = List.copyOf(ways);
    figures = List.copyOf(figures);
    notes = List.copyOf(notes);
  }

  /**
   * Plans.
   *
   * @param wish what the call asks for, over what the shape file does
   * @param book the materials
   * @param materials of sheet, by the names that shape files use
   * @throws BadInput with what cannot be
   */
  public static LayupPlan of(
      Plate plate,
      LayupWish wish,
      MaterialBook book,
      Function<String, Optional<Material>> materials) {
    LayupChoice choice = LayupChoice.of(plate.stock(), wish.over(plate.stock().layup()), book);
    StockComparison.check(choice.prices(), book);
    return of(plate, choice, book, materials);
  }

  static LayupPlan of(
      Plate plate,
      LayupChoice choice,
      MaterialBook book,
      Function<String, Optional<Material>> materials) {
    StackPlan stack = StackPlan.of(choice, plate.stock().thickness(), plate.stock().place());
    LaminateModuli moduli = Laminate.of(LayupLaminate.of(stack, choice.cloth())).moduli();
    BlankPlan blank = BlankPlan.of(plate, choice, stack.thickness());
    ClothPlan cloth = ClothPlan.of(stack, blank.contour(), choice);
    ResinPlan.Need need = ResinPlan.need(choice, stack, blank.area());
    PotPlan pots = PotPlan.of(need, stack.plies().size(), blank.area(), choice);
    ResinPlan resin = ResinPlan.of(need, pots, choice, blank.area());
    MouldPlan mould = MouldPlan.of(blank, choice.process());
    double density = LaidUp.density(plate.stock(), choice, stack.fraction());
    double hours =
        choice.process().ready() + cutting(cloth) + pots.closed() / 60 + choice.process().finish();
    StockComparison ways = new StockComparison(plate, choice.prices());
    StockOption layup =
        ways.layup(
            choice,
            stack,
            cloth,
            resin,
            density,
            moduli.bending().ex() / 1000,
            hours,
            LaidUp.is(plate.stock(), choice.wish()));
    List<StockOption> all = new ArrayList<>(List.of(layup));
    book.sheets().values().stream()
        .sorted(Comparator.comparing(sheet -> order(sheet.name())))
        .forEach(sheet -> ways.sheet(sheet, materials, layup).ifPresent(all::add));
    return new LayupPlan(
        plate,
        choice,
        stack,
        moduli,
        density,
        layup.mass(),
        blank,
        cloth,
        resin,
        pots,
        mould,
        hours,
        all,
        LayupFigures.of(choice, book.sheets().values(), materials),
        notes(plate, choice, stack, blank, cloth, pots));
  }

  /** Laminates first, wood last. */
  private static String order(String name) {
    return (name.contains("plywood") ? "2" : name.contains("aluminium") ? "1" : "0") + name;
  }

  private static List<String> notes(
      Plate plate,
      LayupChoice choice,
      StackPlan stack,
      BlankPlan blank,
      ClothPlan cloth,
      PotPlan pots) {
    List<String> notes = new ArrayList<>(blank.notes());
    notes.addAll(cloth.notes());
    if (pots.coarseScale()) {
      notes.add(
          "a scale that reads to "
              + Numbers.brief(choice.scale(), 2)
              + " g is too coarse for these pots: the ratio may be off by "
              + Numbers.brief(100 * pots.ratioError(), 1)
              + " %, and 2 % is the most; use one that reads to 0.1 g, and say so in"
              + " stock.layup.scale");
    }
    plate
        .stock()
        .sheet()
        .filter(sheet -> !inside(blank.box(), sheet))
        .ifPresent(
            sheet ->
                notes.add(
                    "the blank does not lie inside stock.sheet, "
                        + Numbers.brief(sheet.width(), 1)
                        + " x "
                        + Numbers.brief(sheet.height(), 1)
                        + " mm: make the panel as large as the blank, or take fewer strips"));
    if (stack.thickness() > THICK) {
      notes.add(
          "a stack of more than 10 mm heats itself as it sets: lay it up in two goes, the second on"
              + " the first once that is hard and rubbed dull");
    }
    if (stack.fraction() > choice.fraction().usual() + Tolerances.ROUNDING) {
      notes.add(
          "left to itself the stack comes to some "
              + Numbers.fixed(stack.usual(), 2)
              + " mm; press it to stops of "
              + Numbers.fixed(stack.thickness(), 2)
              + " mm between the plates, or take what comes and measure it");
    } else if (stack.fraction() < choice.fraction().usual() - Tolerances.ROUNDING) {
      notes.add(
          "pressed hard the stack comes to some "
              + Numbers.fixed(stack.usual(), 2)
              + " mm; stops of "
              + Numbers.fixed(stack.thickness(), 2)
              + " mm between the plates keep it thicker");
    }
    return notes;
  }

  private static boolean inside(Box blank, Sheet sheet) {
    boolean asDrawn = blank.width() <= sheet.width() && blank.height() <= sheet.height();
    return asDrawn || (blank.height() <= sheet.width() && blank.width() <= sheet.height());
  }

  /** Whether the plate is to be laid up; else the plan is there to compare. */
  public boolean laidUp() {
    return ways.get(0).own();
  }

  /** Hours that it takes to mark and cut the cloth. */
  public double cutting() {
    return cutting(cloth);
  }

  private static double cutting(ClothPlan cloth) {
    return cloth.pieces().size() * CUTTING / 60;
  }

  /** Whether it can be done as planned. */
  public boolean possible() {
    return pots.obstacles().isEmpty();
  }
}
