package felloe.jig;

/**
 * A headless steel bush that guides a drill.
 *
 * @param bore diameter of the drill that it takes, mm
 * @param outside diameter, mm
 * @param length mm
 * @param play the greatest play of the drill in it, mm
 */
public record DrillBush(double bore, double outside, double length, double play) {}
