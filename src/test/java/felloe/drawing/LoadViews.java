package felloe.drawing;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/** Rings under made-up loads. */
public final class LoadViews {

  private static final int ROUND = 96;
  private static final int ACROSS = 12;

  private LoadViews() {}

  /** A field over a ring of radii 45 and 150 mm. */
  public static NodalField ring(DoubleBinaryOperator value) {
    int nodes = ROUND * (ACROSS + 1);
    double[] x = new double[nodes];
    double[] y = new double[nodes];
    double[] values = new double[nodes];
    int[] corners = new int[6 * ROUND * ACROSS];
    for (int i = 0; i < nodes; i++) {
      double radius = 45 + 105.0 * (i / ROUND) / ACROSS;
      Point p = Point.polar(radius, 2 * Math.PI * (i % ROUND) / ROUND);
      x[i] = p.x();
      y[i] = p.y();
      values[i] = value.applyAsDouble(x[i], y[i]);
    }
    for (int i = 0; i < ROUND * ACROSS; i++) {
      int next = i % ROUND == ROUND - 1 ? i + 1 - ROUND : i + 1;
      int[] two = {i, next + ROUND, next, i, i + ROUND, next + ROUND};
      System.arraycopy(two, 0, corners, 6 * i, 6);
    }
    return new NodalField(x, y, corners, values);
  }

  /** A ring with a use and a deflection. */
  public static LoadView view(DoubleBinaryOperator use, DoubleBinaryOperator deflection) {
    Region ring =
        new Region(Contour.circle(Point.ORIGIN, 150), List.of(Contour.circle(Point.ORIGIN, 45)));
    return new LoadView(
        "Ring, revision 1",
        "one hand pulls",
        List.of("Held under the hub's face.", "An estimate. " + Cautions.USE),
        ring,
        List.of(Contour.circle(Point.ORIGIN, 60)),
        List.of(Contour.circle(new Point(52, 0), 5)),
        List.of(
            new LoadView.Hand(new Point(135, 0), 0, 0, 249, "249 N"),
            new LoadView.Hand(new Point(-135, 0), 0, -116, -222, "250 N"),
            new LoadView.Hand(new Point(0, 135), 400, 0, 0, "400 N")),
        List.of(
            map("Use of the material", "%", use, OptionalDouble.of(100)),
            map("Deflection toward the driver", "mm", deflection, OptionalDouble.empty())));
  }

  private static LoadView.Map map(
      String title, String unit, DoubleBinaryOperator value, OptionalDouble fails) {
    return new LoadView.Map(title, unit, ring(value), new Point(150, 0), "peak here", fails);
  }

  /** What a hand at the right might do. */
  public static LoadView pulled() {
    return view((x, y) -> 130 * Math.exp(-Math.hypot(x - 70, y) / 60), (x, y) -> x * x * x / 1e6);
  }

  /** Nine thicknesses. */
  public static ThicknessView thicknesses() {
    List<ThicknessView.Trial> trials = new ArrayList<>();
    for (double t : new double[] {2, 2.5, 3, 4, 5, 6, 8, 10, 12}) {
      trials.add(
          new ThicknessView.Trial(
              t, 300 / (t * t * t), t * t / 16 - 1, List.of(t + " mm", "61 g"), t > 4, t == 5));
    }
    return new ThicknessView("Thicknesses of Ring", trials, OptionalDouble.of(3), 0);
  }
}
