package felloe.hub;

/**
 * One distance of a ring, as a calliper shows it.
 *
 * @param step how many holes on: 1 to the neighbour, 2 skipping one
 * @param name {@code neighbour}, {@code skip one}, {@code across}, {@code widest} or {@code skip 2}
 * @param centres centre to centre, mm
 * @param outside over the outside edges, mm: centres and one diameter
 * @param inside between the inside edges, mm: centres less one diameter
 */
public record CalliperReading(
    int step, String name, double centres, double outside, double inside) {}
