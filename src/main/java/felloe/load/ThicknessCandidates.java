package felloe.load;

import felloe.geometry.Numbers;
import felloe.laminate.Laminate;
import felloe.laminate.Stack;
import felloe.laminate.StripCalibration;
import felloe.laminate.TestedStrips;
import felloe.layup.LaidUp;
import felloe.layup.MaterialBook;
import felloe.layup.PlannedStack;
import felloe.layup.SheetStock;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.plate.Prices;
import felloe.plate.Problem;
import felloe.plate.SourcedFigure;
import felloe.plate.Weights;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The thicknesses that a plate might be made in, each with its stiffness and strength: of a sheet
 * by its modulus and thickness, of a lay-up by its plies.
 */
public final class ThicknessCandidates {

  /** How many thicknesses are tried without being asked for. */
  private static final int TRIED = 9;

  /** Thicknesses of acrylic sheet, mm: common practice, as shops have them. */
  private static final List<Double> PLASTIC = List.of(3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0);

  private final Plate plate;
  private final Bonding bonding;
  private final MaterialBook book;
  private final LayupWish wish;
  private final double area;
  private final Optional<SheetStock> sheet;
  private final Optional<StockBook.Known> known;
  private final Optional<StripCalibration> calibration;
  private final List<SourcedFigure> figures = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final SourcedFigure hotWet;

  /** Strips within so much of the plate's thickness are of its own panel. */
  private static final double SAME_PANEL = 0.15;

  // How far strips may be from the tables, times: common practice.
  private static final double LEAST_STIFFNESS = 0.35;
  private static final double MOST_STIFFNESS = 1.8;
  private static final double MOST_STRENGTH = 2.5;

  private ThicknessCandidates(
      Plate plate, LayupWish wish, MaterialBook book, Optional<TestedStrips> tested) {
    this.plate = plate;
    this.bonding = Bonding.of(plate);
    this.book = book;
    this.wish = wish;
    this.area = plate.region().properties().area();
    String material = plate.stock().material().name();
    sheet = book.sheets().values().stream().filter(s -> s.material().equals(material)).findFirst();
    known = laidUp() ? Optional.empty() : StockBook.builtIn().find(material);
    boolean cracks = known.filter(k -> k.strength() instanceof StockStrength.Cracks).isPresent();
    if (!laidUp() && (known.isEmpty() || sheet.isEmpty() && !cracks)) {
      throw refused(
          "is a material whose stiffness and strength are not known here",
          "take one of another kind, or give its modulus in a file of materials");
    }
    hotWet = hotWet(plate);
    calibration = tested.map(t -> calibration(t));
    tell();
  }

  /**
   * The range of a plate.
   *
   * @param wish what the call asks of a lay-up, over what the shape file does
   * @param tested broken strips of the laminate, cut along the plate's x
   * @throws BadInput when the material's figures are not known, or strips do not suit it
   */
  public static ThicknessCandidates of(
      Plate plate, LayupWish wish, MaterialBook book, Optional<TestedStrips> tested) {
    return new ThicknessCandidates(plate, wish, book, tested);
  }

  /** Whether the plate is laid up of plies, and not cut from bought sheet. */
  public boolean laidUp() {
    return LaidUp.is(plate.stock());
  }

  /** What the figures rest on. */
  public List<SourcedFigure> figures() {
    return List.copyOf(figures);
  }

  /** What the maker should know of them. */
  public List<String> notes() {
    return List.copyOf(notes);
  }

  /** Whether strength comes from strips that were broken. */
  public boolean tested() {
    return calibration.filter(c -> c.strength().isPresent()).isPresent();
  }

  private BadInput refused(String wanted, String cure) {
    return new BadInput(
        new Problem(
            plate.stock().place(),
            "stock.material",
            plate.stock().material().name(),
            wanted,
            cure));
  }

  private StripCalibration calibration(TestedStrips tested) {
    boolean cloth = known.filter(k -> k.strength() instanceof StockStrength.Cloth).isPresent();
    if (!laidUp() && !cloth) {
      throw refused("is no laminate, and strips tell of laminates", "leave the file of strips out");
    }
    notes.addAll(tested.worth());
    StripCalibration found = StripCalibration.of(panel(tested.thickness()), tested, 0);
    refuseImpossible(found);
    return found;
  }

  /**
   * The stack of the panel that the strips were cut from, by the tables: not the plate's own where
   * that is thicker or thinner, since outer plies count for more in a thin stack.
   */
  private Stack panel(double thickness) {
    double t = plate.stock().thickness();
    if (!laidUp()) {
      return cloth(thickness);
    }
    PlannedStack own = planned(t);
    double each = own.plan().thickness() / own.plan().plies().size();
    int plies = Math.max(1, (int) Math.round(thickness / each));
    if (Math.abs(thickness / own.plan().thickness() - 1) <= SAME_PANEL
        || plies == own.plan().plies().size()) {
      return own.stack();
    }
    notes.add(
        "the strips are "
            + Numbers.brief(thickness, 2)
            + " mm thick and the plate is "
            + Numbers.brief(own.plan().thickness(), 2)
            + " mm: they are taken for a panel of "
            + plies
            + " plies of the same cloth, laid as usual");
    PlannedStack panel = PlannedStack.ofPlies(plate.stock(), wish, book, plies);
    refuseUnknown(panel);
    return panel.stack();
  }

  /** Strips that are far from what the tables have for this fibre were measured wrong. */
  private void refuseImpossible(StripCalibration found) {
    double strength = found.strength().orElse(1);
    boolean stiff = found.stiffness() < LEAST_STIFFNESS || found.stiffness() > MOST_STIFFNESS;
    if (stiff || strength > MOST_STRENGTH) {
      throw refused(
          "has strips that are "
              + Numbers.brief(stiff ? found.stiffness() : strength, 2)
              + " times as "
              + (stiff ? "stiff" : "strong")
              + " as the tables have for this fibre, and no laminate of it can be",
          "look at the units: kilograms for newtons are a factor of 9.8; and measure the thickness"
              + " again, which counts three times");
    }
  }

  private Stack cloth(double t) {
    return ((StockStrength.Cloth) known.orElseThrow().strength()).stack(modulus(t), t);
  }

  private PlannedStack planned(double t) {
    PlannedStack planned = PlannedStack.of(plate.stock(), wish, book, t);
    refuseUnknown(planned);
    return planned;
  }

  private void refuseUnknown(PlannedStack planned) {
    if (planned.choice().cloth().strength().isEmpty()) {
      throw refused(
          "is laid up of " + planned.choice().cloth().name() + ", whose strength is not known",
          "give the cloth a 'strength' in your file of materials");
    }
  }

  /** Modulus of the sheet along x, MPa. */
  private double modulus(double t) {
    SheetStock stock = sheet.orElseThrow();
    return 1000 * TableInterpolation.at(stock.thicknesses(), stock.moduli(), t);
  }

  private void tell() {
    double t = plate.stock().thickness();
    if (plate.stock().material().kind() == MaterialKind.LAMINATE) {
      figures.add(hotWet);
    }
    if (laidUp()) {
      tellPlies(planned(t));
    } else {
      boolean grain = known.orElseThrow().strength() instanceof StockStrength.Grain;
      boolean cloth = known.orElseThrow().strength() instanceof StockStrength.Cloth;
      sheet.ifPresent(
          s ->
              figures.add(
                  new SourcedFigure(
                      grain ? "modulus along the grain" : "modulus",
                      modulus(t),
                      "MPa",
                      s.bases().of("E"))));
      figures.addAll(known.orElseThrow().figures(t));
      if (grain) {
        notes.add(
            "the face grain is taken to lie along x, left to right: a plate cut the other way"
                + " bends otherwise");
        notes.add("in its plane the plywood is taken to be as stiff and as strong as in bending");
      }
      if (cloth) {
        notes.add("the sheet's fibres are taken to lie along x and y");
      }
      if (plate.stock().material().kind() == MaterialKind.PLASTIC) {
        notes.add(
            "acrylic cracks without warning from any notch, scratch or sharp corner: never for a"
                + " wheel that is driven with");
      }
    }
    calibration.ifPresent(
        c -> {
          figures.add(
              new SourcedFigure(
                  "modulus of the strips over that of the tables",
                  c.stiffness(),
                  "",
                  "measured on your strips, taken to lie along x"));
          c.strength()
              .ifPresent(
                  s ->
                      figures.add(
                          new SourcedFigure(
                              "design strength of the strips over that of the tables",
                              s,
                              "",
                              "measured on your strips, lower bound")));
          if (c.strength().isEmpty()) {
            notes.add(
                "your strips carry no design strength (too few broke, or they scatter too much):"
                    + " strength is still that of the tables");
          }
        });
  }

  private void tellPlies(PlannedStack planned) {
    var cloth = planned.choice().cloth();
    var at = cloth.stiffness().at(planned.plan().fraction());
    var strength = planned.stack().plies().get(0).material().strength().orElseThrow();
    String stiffness = cloth.bases().of("stiffness");
    String strong = cloth.bases().of("strength");
    figures.add(
        new SourcedFigure(
            "fibre volume fraction",
            planned.plan().fraction(),
            "",
            planned.choice().fraction().basis()));
    figures.add(new SourcedFigure("ply: modulus along the warp", at.e1() * 1000, "MPa", stiffness));
    figures.add(new SourcedFigure("ply: modulus along the weft", at.e2() * 1000, "MPa", stiffness));
    figures.add(new SourcedFigure("ply: shear modulus", at.g12() * 1000, "MPa", stiffness));
    figures.add(new SourcedFigure("ply: pulled along the warp", strength.xt(), "MPa", strong));
    figures.add(new SourcedFigure("ply: pressed along the warp", strength.xc(), "MPa", strong));
    figures.add(new SourcedFigure("ply: shear", strength.s(), "MPa", strong));
    notes.add("shear between plies is taken to be as stiff as in the ply: both are the resin's");
    double planned2 = planned.plan().thickness();
    if (Math.abs(planned2 - plate.stock().thickness()) > 0.05) {
      notes.add(
          "the stack comes to "
              + Numbers.fixed(planned2, 2)
              + " mm, and that is what bends, not the stock's "
              + Numbers.brief(plate.stock().thickness(), 2)
              + " mm");
    }
  }

  /** The plate as its shape file has it. */
  public Gauge now() {
    double t = plate.stock().thickness();
    return laidUp() ? gauge(planned(t)) : sheetGauge(t);
  }

  /** The plate in another thickness; of a lay-up, with the plies that come nearest. */
  public Gauge of(double thickness) {
    if (!laidUp()) {
      return sheetGauge(thickness);
    }
    PlannedStack now = planned(plate.stock().thickness());
    double each = now.choice().cloth().plyThickness(now.choice().fraction().usual());
    return ofPlies(Math.max(1, (int) Math.round(thickness / each)));
  }

  private Gauge ofPlies(int plies) {
    PlannedStack planned = PlannedStack.ofPlies(plate.stock(), wish, book, plies);
    refuseUnknown(planned);
    return gauge(planned);
  }

  /**
   * Thicknesses to compare, thinnest first: those that the sheet is sold in, or usual numbers of
   * plies; about the plate's own, which is among them.
   */
  public List<Gauge> usual() {
    Gauge now = now();
    return within(now.thickness() / 2.2, now.thickness() * 2.6, TRIED);
  }

  /**
   * Such thicknesses in a range, and the plate's own.
   *
   * @param thinnest mm
   * @param thickest mm
   * @param most how many at most; beyond that, the thickest are left out
   */
  public List<Gauge> within(double thinnest, double thickest, int most) {
    Gauge now = now();
    List<Gauge> all = new ArrayList<>();
    if (laidUp()) {
      PlannedStack planned = planned(plate.stock().thickness());
      double each = planned.choice().cloth().plyThickness(planned.choice().fraction().usual());
      int step = planned.step();
      int first = step * Math.max(1, (int) Math.ceil(thinnest / each / step - 1e-9));
      for (int n = first; n * each <= thickest && n <= LayupWish.MOST_PLIES; n += step) {
        if (n != now.plies().getAsInt() && all.size() < most - 1) {
          all.add(ofPlies(n));
        }
      }
    } else {
      for (double other : sheet.map(SheetStock::thicknesses).orElse(PLASTIC)) {
        boolean asked = other >= thinnest && other <= thickest;
        if (asked && Math.abs(other - now.thickness()) > 1e-9 && all.size() < most - 1) {
          all.add(sheetGauge(other));
        }
      }
    }
    all.add(now);
    all.sort((a, b) -> Double.compare(a.thickness(), b.thickness()));
    return all;
  }

  /** The stack as strong as it is in a hot, damp car. */
  private Stack hotWet(Stack stack) {
    return new StripCalibration(1, OptionalDouble.of(hotWet.value())).apply(stack);
  }

  private static SourcedFigure hotWet(Plate plate) {
    SourcedFigure usual = CaseBook.builtIn().hotWet();
    return plate
        .load()
        .hotWet()
        .map(own -> new SourcedFigure(usual.name(), own.value(), "", "set in the shape file"))
        .orElse(usual);
  }

  private Gauge gauge(PlannedStack planned) {
    Stack stack = hotWet(calibration.map(c -> c.apply(planned.stack())).orElse(planned.stack()));
    PlateSection section =
        PlateSection.of(Laminate.of(stack), stack.plies().get(0).material().g12()).with(bonding);
    return new Gauge(
        planned.plan().thickness(),
        OptionalInt.of(planned.plan().plies().size()),
        section,
        Weights.sheet(area, planned.plan().thickness(), planned.density()),
        planned.cost(area));
  }

  private Gauge sheetGauge(double t) {
    return new Gauge(
        t,
        OptionalInt.empty(),
        section(t).with(bonding),
        Weights.sheet(area, t, plate.stock().material().density()),
        cost(t));
  }

  private PlateSection section(double t) {
    StockStrength strength = known.orElseThrow().strength();
    if (strength instanceof StockStrength.Yields yields) {
      return yields.section(modulus(t), t);
    }
    if (strength instanceof StockStrength.Cracks cracks) {
      return cracks.section(t);
    }
    if (strength instanceof StockStrength.Grain grain) {
      return grain.section(modulus(t), t);
    }
    Stack stack = hotWet(calibration.map(c -> c.apply(cloth(t))).orElseGet(() -> cloth(t)));
    return PlateSection.of(Laminate.of(stack), ((StockStrength.Cloth) strength).between());
  }

  /** By area of the plate's box; the price is taken to grow with the thickness. */
  private OptionalDouble cost(double t) {
    Prices prices = wish.prices().over(plate.stock().layup().prices()).over(book.prices());
    Optional<Prices.Price> price = sheet.flatMap(s -> prices.find(s.name()));
    if (price.isEmpty()) {
      return OptionalDouble.empty();
    }
    boolean whole = price.get().per().equals(Optional.of(Prices.Per.SHEET));
    double amount = whole ? 1 : plate.box().width() * plate.box().height() / 1e6;
    return OptionalDouble.of(price.get().price() * amount * t / plate.stock().thickness());
  }
}
