package felloe.layup;

import felloe.plate.Sheet;
import java.util.List;

/**
 * Sheet that can be bought.
 *
 * @param name as prices name it
 * @param title in words
 * @param material as shape files name it
 * @param thicknesses that it comes in, mm, thinnest first
 * @param sizes that it comes in, smallest area first
 * @param moduli in bending for each thickness, GPa
 * @param bases where the figures come from
 */
public record SheetStock(
    String name,
    String title,
    String material,
    List<Double> thicknesses,
    List<Sheet> sizes,
    List<Double> moduli,
    Bases bases) {

  public SheetStock {
    thicknesses = List.copyOf(thicknesses);
    sizes = List.copyOf(sizes);
    moduli = List.copyOf(moduli);
  }
}
