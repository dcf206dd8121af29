package felloe.kit;

import felloe.plate.Plate;
import java.util.List;

/**
 * A kit in memory.
 *
 * @param plate of which plate
 * @param files all of its files
 * @param pages the tiled template
 * @param check what the review says of the plate
 */
record Prepared(Plate plate, List<KitFile> files, Pages pages, CheckAnswer check) {}
