package felloe.layup;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * The plies of a blank and how thick they come out.
 *
 * @param plies ply 1 lies on the mould: the back face
 * @param wanted thickness that the shape file asks for, mm
 * @param fraction fibre volume fraction that is planned with
 * @param thickness that it gives, mm
 * @param least thickness to expect, mm: at the highest fraction
 * @param usual thickness when pressed as usual, mm
 * @param most thickness to expect, mm: at the lowest fraction
 * @param symmetric whether it reads the same from both faces
 * @param balanced whether it has as many plies at each angle as at the opposite one
 * @param quasiIsotropic whether it is as stiff one way in its plane as any other
 * @param warnings what the maker should know of it
 */
public record StackPlan(
    List<Ply> plies,
    double wanted,
    double fraction,
    double thickness,
    double least,
    double usual,
    double most,
    boolean symmetric,
    boolean balanced,
    boolean quasiIsotropic,
    List<String> warnings) {

  public StackPlan {
    plies = List.copyOf(plies);
    warnings = List.copyOf(warnings);
  }

  /**
   * Directions (degrees) and fractions nearer than this are the same: nobody lays or weighs finer.
   */
  static final double SAME = 1e-6;

  /**
   * One ply.
   *
   * @param number from the mould up, from 1
   * @param angle of its warp from the plate's x axis, degrees counter-clockwise seen from the front
   * @param direction such as {@code 0/90} or {@code +-45}
   */
  public record Ply(int number, double angle, String direction) {}

  /**
   * The stack of a choice.
   *
   * @param wanted thickness, mm
   * @param place where that was written
   * @throws BadInput when it takes more plies than anybody lays
   */
  static StackPlan of(LayupChoice choice, double wanted, Place place) {
    Cloth cloth = choice.cloth();
    LayupChoice.FractionChoice range = choice.fraction();
    List<Double> angles =
        choice
            .angles()
            .orElseGet(
                () ->
                    usual(
                        choice
                            .wish()
                            .plies()
                            .map(p -> p.value())
                            .orElseGet(() -> count(choice, wanted)),
                        cloth.weave()));
    int count = angles.size();
    if (count > LayupWish.MOST_PLIES) {
      throw new BadInput(
          new Problem(
              place,
              "stock.thickness",
              Numbers.brief(wanted, 2) + " mm",
              "takes "
                  + count
                  + " plies of "
                  + cloth.name()
                  + "; at most "
                  + LayupWish.MOST_PLIES
                  + " are planned",
              "take a heavier cloth"));
    }
    double least = count * cloth.plyThickness(range.high());
    double usual = count * cloth.plyThickness(range.usual());
    double most = count * cloth.plyThickness(range.low());
    double meets = cloth.fraction(count, wanted);
    boolean within = meets >= range.low() - SAME && meets <= range.high() + SAME;
    // What was measured is what comes out, and so under a bag; two plates can be pressed to stops.
    boolean stops = !range.own() && choice.process().plates() == 2;
    double fraction = stops && within ? meets : range.usual();
    boolean woven = cloth.weave().woven();
    List<Ply> plies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      plies.add(new Ply(i + 1, angles.get(i), words(angles.get(i), woven)));
    }
    Stacking stacking = new Stacking(angles, woven);
    List<String> warnings = new ArrayList<>(stacking.warnings());
    if (!within) {
      warnings.add(thicknessWarning(wanted, least, most, range.own()));
    }
    return new StackPlan(
        plies,
        wanted,
        fraction,
        count * cloth.plyThickness(fraction),
        least,
        usual,
        most,
        stacking.symmetric(),
        stacking.balanced(),
        stacking.quasiIsotropic(),
        warnings);
  }

  private static String thicknessWarning(double wanted, double least, double most, boolean own) {
    return "the shape file asks for "
        + Numbers.brief(wanted, 2)
        + " mm, and this stack comes to "
        + Numbers.fixed(least, 2)
        + " to "
        + Numbers.fixed(most, 2)
        + " mm"
        + (own ? " at your fraction" : "")
        + "; change plies, cloth or stock.thickness, and measure before you drill";
  }

  /**
   * The number of plies for a thickness: a multiple of four (of eight for fibres all one way),
   * which alone can be both symmetric and quasi-isotropic, when the process can press that to the
   * thickness; else the nearest number.
   */
  static int count(LayupChoice choice, double wanted) {
    LayupChoice.FractionChoice range = choice.fraction();
    double each = choice.cloth().plyThickness(range.usual());
    double exact = wanted / each;
    int step = choice.cloth().weave().woven() ? 4 : 8;
    int low = Math.max(step, step * (int) Math.floor(exact / step));
    int best = 0;
    double away = Double.POSITIVE_INFINITY;
    for (int plies : new int[] {low, low + step}) {
      double meets = choice.cloth().fraction(plies, wanted);
      double far = Math.abs(meets - range.usual());
      if (meets >= range.low() - SAME && meets <= range.high() + SAME && far < away) {
        best = plies;
        away = far;
      }
    }
    return best > 0 ? best : Math.max(1, (int) Math.round(exact));
  }

  /** The usual stack: 0 and 45 by turns for cloth; 0, 45, 90, -45 for fibres all one way. */
  static List<Double> usual(int count, Weave weave) {
    double[] turn = weave.woven() ? new double[] {0, 45} : new double[] {0, 45, 90, -45};
    List<Double> angles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int fromFace = Math.min(i, count - 1 - i);
      angles.add(turn[fromFace % turn.length]);
    }
    return angles;
  }

  static String words(double angle, boolean woven) {
    if (!woven) {
      return Numbers.brief(angle, 1) + "\u00b0";
    }
    double a = Stacking.folded(angle, true);
    if (Math.abs(a) < SAME) {
      return "0/90";
    }
    if (Math.abs(a - 45) < SAME) {
      return "\u00b145";
    }
    return Numbers.brief(a, 1) + "/" + Numbers.brief(a - 90, 1);
  }

  /** Whether it is pressed to stops, since left to itself it would come out another thickness. */
  public boolean stops() {
    return Math.abs(thickness - usual) > Tolerances.ROUNDING;
  }

  /** Thickness of one ply as planned, mm. */
  public double plyThickness() {
    return thickness / plies.size();
  }
}
