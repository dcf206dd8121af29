package felloe.drawing;

import felloe.plate.MaterialKind;
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

  private Cautions() {}

  /** Cutting and drilling a plate of a material, in sentences. */
  public static List<String> cutting(MaterialKind kind) {
    String tools =
        "Clamp the work, keep hands clear of blade and drill, guards on, eye protection on.";
    String dust =
        switch (kind) {
          case LAMINATE ->
              "Fibre dust harms lungs, eyes and skin and shorts out electrics: mask P100 or FFP3,"
                  + " extraction or wet sanding, gloves, long sleeves.";
          case METAL ->
              "Swarf and fresh edges cut: brush them off, never by hand or air; no gloves at the"
                  + " drill; break all edges.";
          case WOOD -> "Wood dust harms the lungs: mask FFP2 or better, extraction.";
          case PLASTIC ->
              "Plastic dust and fumes harm the lungs: mask, extraction, sharp tools that do not"
                  + " melt it.";
        };
    return List.of(tools, dust);
  }

  /** Everything in one line of running text. */
  public static String all(MaterialKind kind) {
    return USE + " " + String.join(" ", cutting(kind));
  }
}
