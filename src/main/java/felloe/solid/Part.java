package felloe.solid;

/**
 * A body with a name, as it is to be printed or shown.
 *
 * @param name such as {@code grip left}
 * @param body where it stands
 */
public record Part(String name, Solid body) {}
