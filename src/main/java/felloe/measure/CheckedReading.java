package felloe.measure;

/**
 * A reading that was used, and how it agrees with the others.
 *
 * @param reading the reading
 * @param residual what was read less what the holes as found would read, mm
 * @param redundancy how far the others check it: 0 not at all, 1 fully
 * @param w standardised residual; 0 where nothing checks it
 */
public record CheckedReading(Reading reading, double residual, double redundancy, double w) {}
