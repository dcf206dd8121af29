package felloe.measure;

/**
 * A reading that looks like a slip.
 *
 * @param reading the reading
 * @param off how far it is off: what was read less what the others say, mm
 * @param w its standardised residual
 * @param alone whether it alone can be the slip; if not, it is one of several that the others
 *     cannot tell apart
 * @param ifEven whether it is a slip only if the holes stand evenly
 * @param hint what it looks like, such as {@code reads like an inside reading}; may be empty
 */
public record Suspect(
    Reading reading, double off, double w, boolean alone, boolean ifEven, String hint) {}
