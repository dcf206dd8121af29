package felloe.laminate;

/**
 * Moduli of one homogeneous sheet as thick as the laminate that would stretch, or bend, as it does.
 *
 * @param inPlane from stretching
 * @param bending from bending; differs from {@code inPlane} as the outer plies count for more
 */
public record LaminateModuli(SheetModuli inPlane, SheetModuli bending) {

  static LaminateModuli of(double h, double[][] stretch, double[][] bend) {
    return new LaminateModuli(
        SheetModuli.of(stretch, 1 / h), SheetModuli.of(bend, 12 / (h * h * h)));
  }
}
