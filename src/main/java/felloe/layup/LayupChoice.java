package felloe.layup;

import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.FibreKind;
import felloe.plate.LayupWish;
import felloe.plate.Place;
import felloe.plate.Prices;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.Stock;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a plan is made with: the maker's wishes, and the usual thing where there is none.
 *
 * @param cloth the cloth
 * @param process the way of wetting out and pressing
 * @param resin the resin system
 * @param fraction how much fibre to expect
 * @param temperature of the workshop, degrees Celsius
 * @param rollWidth mm
 * @param margin of the blank round the plate, mm
 * @param pieces how plies are cut
 * @param strips number of test strips
 * @param scale smallest step of the scale, g
 * @param wish the wish itself
 * @param prices what things cost
 */
public record LayupChoice(
    Cloth cloth,
    Process process,
    ResinSystem resin,
    FractionChoice fraction,
    double temperature,
    double rollWidth,
    double margin,
    LayupWish.Pieces pieces,
    int strips,
    double scale,
    LayupWish wish,
    Prices prices) {

  /** What the blank is wider than the plate, mm: common practice for a saw and a ragged edge. */
  static final double MARGIN = 15;

  /** Test strips: the least number of specimens of ISO 14125. */
  static final int STRIPS = 5;

  private static final double TEMPERATURE = 20;
  private static final double SCALE = 1;

  /** How far a fraction that was once reached comes out next time: common practice. */
  private static final double REPEAT = 0.02;

  /**
   * A fibre volume fraction with its range.
   *
   * @param low the least to expect
   * @param usual what to expect
   * @param high the most to expect
   * @param own whether it is the maker's own and not the process's
   * @param basis where it comes from
   */
  public record FractionChoice(double low, double usual, double high, boolean own, String basis) {}

  /**
   * Settles what a plan is made with.
   *
   * @param wish the wishes of the call over those of the shape file
   * @throws BadInput with everything in the wish that cannot be
   */
  public static LayupChoice of(Stock stock, LayupWish wish, MaterialBook book) {
    Problems problems = new Problems();
    Cloth cloth =
        find(
            problems,
            () -> MaterialBook.find(book.cloths(), name(wish.cloth(), usualCloth(stock)), "cloth"));
    Process process =
        find(
            problems,
            () ->
                MaterialBook.find(
                    book.processes(), name(wish.process(), "brush-and-roller"), "process"));
    ResinSystem resin =
        find(
            problems,
            () -> MaterialBook.find(book.resins(), name(wish.resin(), "epoxy-slow"), "resin"));
    check(wish, problems);
    FractionChoice fraction =
        cloth == null || process == null ? null : fraction(wish, cloth, process, problems);
    problems.throwIfAny();
    return new LayupChoice(
        cloth,
        process,
        resin,
        fraction,
        Requested.or(wish.temperature(), TEMPERATURE),
        Requested.or(wish.rollWidth(), cloth.rollWidth()),
        Requested.or(wish.margin(), MARGIN),
        Requested.or(wish.pieces(), LayupWish.Pieces.RECTANGLE),
        Requested.or(wish.strips(), STRIPS),
        Requested.or(wish.scale(), SCALE),
        wish,
        wish.prices().over(book.prices()));
  }

  private static <T> T find(Problems problems, Supplier<T> find) {
    try {
      return find.get();
    } catch (BadInput bad) {
      problems.add(bad);
      return null;
    }
  }

  private static Requested<String> name(Optional<Requested<String>> wished, String usual) {
    return wished.orElse(new Requested<>(usual, Place.BUILT_IN));
  }

  private static String usualCloth(Stock stock) {
    boolean glass = stock.material().fibre().filter(FibreKind.GLASS::equals).isPresent();
    return glass ? "glass-twill-300" : "carbon-twill-200";
  }

  private static void check(LayupWish wish, Problems problems) {
    wish.plies()
        .filter(plies -> plies.value() < 1 || plies.value() > LayupWish.MOST_PLIES)
        .ifPresent(
            plies ->
                problems.add(
                    new Problem(
                        plies.place(),
                        "plies",
                        Integer.toString(plies.value()),
                        "must be from 1 to " + LayupWish.MOST_PLIES,
                        "leave it out, and it follows from the thickness")));
    wish.angles()
        .filter(angles -> angles.value().isEmpty())
        .ifPresent(
            angles ->
                problems.add(
                    new Problem(
                        angles.place(),
                        "plies",
                        "",
                        "must have at least one ply",
                        "leave it out, and it follows from the thickness")));
    wish.fraction()
        .filter(fraction -> !believed(fraction.value()))
        .ifPresent(
            fraction ->
                problems.add(
                    new Problem(
                        fraction.place(),
                        "fraction",
                        Numbers.brief(fraction.value(), 3),
                        "must be from 0.2 to 0.7: hand lay-up reaches 0.35 to 0.45, a press 0.6",
                        fraction.value() > 1 ? "write it as a share, such as 0.4" : "")));
    if (wish.fraction().isPresent() && wish.panel().isPresent()) {
      problems.add(
          new Problem(
              wish.panel().get().place(),
              "panel",
              "",
              "cannot stand beside a fraction: it says what the fraction is",
              "keep one of them"));
    }
  }

  private static boolean believed(double fraction) {
    return fraction >= LayupWish.LEAST_FRACTION && fraction <= LayupWish.MOST_FRACTION;
  }

  private static FractionChoice fraction(
      LayupWish wish, Cloth cloth, Process process, Problems problems) {
    if (wish.fraction().isPresent()) {
      return own(wish.fraction().get().value(), "measured or wished, as given");
    }
    if (wish.panel().isPresent()) {
      Requested<LayupWish.Panel> panel = wish.panel().get();
      int plies = panel.value().plies();
      double thickness = panel.value().thickness();
      double reached = plies < 1 ? 0 : cloth.fraction(plies, thickness);
      String words =
          plies
              + (plies == 1 ? " ply of " : " plies of ")
              + cloth.name()
              + ", "
              + Numbers.brief(thickness, 3)
              + " mm thick";
      if (!believed(reached)) {
        problems.add(
            new Problem(
                panel.place(),
                "panel",
                words,
                "comes to a fibre volume fraction of "
                    + Numbers.brief(reached, 3)
                    + ", which must be from 0.2 to 0.7",
                "check the plies, the thickness and the cloth's weight"));
        return null;
      }
      return own(reached, "measured, a panel of " + words);
    }
    Process.Fraction usual = process.fraction();
    return new FractionChoice(
        usual.low(), usual.usual(), usual.high(), false, process.bases().of("fraction"));
  }

  private static FractionChoice own(double fraction, String basis) {
    return new FractionChoice(
        Math.max(LayupWish.LEAST_FRACTION, fraction - REPEAT),
        fraction,
        Math.min(LayupWish.MOST_FRACTION, fraction + REPEAT),
        true,
        basis);
  }

  /** The directions that were asked for, if they were. */
  Optional<List<Double>> angles() {
    return wish.angles().map(Requested::value);
  }
}
