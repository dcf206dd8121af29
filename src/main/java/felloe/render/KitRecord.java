package felloe.render;

import felloe.service.KitOutcome;

/**
 * A kit as its own folder keeps it for programs: it tells nothing of the maker's other folders.
 *
 * @param version of the program that made it
 * @param kit what was made
 */
public record KitRecord(String version, KitOutcome kit) {}
