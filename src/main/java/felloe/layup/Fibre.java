package felloe.layup;

/**
 * A fibre.
 *
 * @param name as cloths name it
 * @param title in words
 * @param density g/cm³
 * @param modulus along the fibre, GPa
 * @param crossModulus across the fibre, GPa
 * @param bases where the figures come from
 */
public record Fibre(
    String name, String title, double density, double modulus, double crossModulus, Bases bases) {}
