package felloe.load;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How thick a plate might be made.
 *
 * @param thickness mm
 * @param plies how many, of a lay-up
 * @param section the plate through its thickness
 * @param mass of the finished plate, g
 * @param cost of the material, where prices are known
 */
public record Gauge(
    double thickness, OptionalInt plies, PlateSection section, double mass, OptionalDouble cost) {}
