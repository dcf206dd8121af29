package felloe.plate;

/**
 * Something the maker should know about how the plate came about, such as a leftover that was
 * dropped.
 *
 * @param place what it is about, in the shape file
 * @param text one sentence
 */
public record Note(Place place, String text) {}
