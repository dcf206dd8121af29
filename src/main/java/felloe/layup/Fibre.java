package felloe.layup;

import felloe.plate.FibreKind;

/**
 * A fibre.
 *
 * @param name as cloths name it
 * @param title in words
 * @param kind what its dust does
 * @param density g/cm³
 * @param modulus along the fibre, GPa
 * @param crossModulus across the fibre, GPa
 * @param bases where the figures come from
 */
public record Fibre(
    String name,
    String title,
    FibreKind kind,
    double density,
    double modulus,
    double crossModulus,
    Bases bases) {}
