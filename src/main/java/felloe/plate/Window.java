package felloe.plate;

import felloe.geometry.Contour;

/**
 * An opening cut through the plate.
 *
 * @param label short name, unique on the plate, such as {@code W1}
 * @param use what it is for
 * @param contour its edge
 * @param place where the maker wrote it
 */
public record Window(String label, WindowUse use, Contour contour, Place place) {}
