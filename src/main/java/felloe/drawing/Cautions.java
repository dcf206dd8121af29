package felloe.drawing;

import felloe.plate.Dust;
import felloe.plate.Material;
import java.util.List;

/**
 * The cautions that go with paper that is acted on in the workshop. They are reminders of common
 * practice; the maker's own rules, local codes and the makers of tools and materials come first.
 */
public final class Cautions {

  /** What the plate is for and who has the last word. */
  public static final String USE =
      "For closed-course use at the builder's own judgement. Not for public roads. Event rules,"
          + " local codes and a qualified person have the last word.";

  /** For leather and cloth. */
  public static final String KNIFE =
      "A knife slips: cut on a mat, along a steel rule, away from the hand that holds.";

  private Cautions() {}

  /** Cutting and drilling a plate of a material, in sentences. */
  public static List<String> cutting(Material material) {
    return List.of(
        "Clamp the work, keep hands clear of blade and drill, guards on.", Dust.of(material));
  }

  /** Everything in one line of running text. */
  public static String all(Material material) {
    return USE + " " + String.join(" ", cutting(material));
  }
}
