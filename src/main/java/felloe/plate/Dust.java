package felloe.plate;

/** What dust and swarf of a material do, and what to wear. Common practice. */
public final class Dust {

  private static final String WEAR =
      ": eye protection, respirator P100 or FFP3, extraction at the tool or wet work, long sleeves,"
          + " gloves but at a turning spindle.";

  private Dust() {}

  /** One sentence that is true of the material. */
  public static String of(Material material) {
    return switch (material.kind()) {
      case LAMINATE -> of(material.fibre().orElse(FibreKind.OTHER));
      case METAL ->
          "Swarf and fresh edges cut, thrown chips blind: eye protection; brush swarf off when the"
              + " tool stands still, never by hand or air; no gloves at a turning spindle; break"
              + " all edges.";
      case WOOD ->
          "Wood dust harms the lungs and burns: eye protection, mask FFP2 or better, extraction.";
      case PLASTIC ->
          "Plastic dust and fumes harm the lungs: eye protection, mask, extraction, sharp tools"
              + " that do not melt it.";
    };
  }

  /** The same for a laminate of a fibre. */
  public static String of(FibreKind fibre) {
    return switch (fibre) {
          case CARBON -> "Carbon dust harms lungs, eyes and skin and shorts out electrics";
          case GLASS -> "Glass fibre dust irritates lungs, eyes and skin";
          case OTHER -> "Fibre dust harms lungs, eyes and skin and may short out electrics";
        }
        + WEAR;
  }
}
