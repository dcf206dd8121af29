package felloe.kit;

import felloe.files.OutFile;
import felloe.plate.Plate;
import felloe.service.Study;
import java.util.List;
import java.util.Optional;

/**
 * A kit in memory.
 *
 * @param plate of which plate
 * @param files all of its files
 * @param pages the tiled template
 * @param check what the review says of the plate
 * @param lacks why there is no file for machines, or not every one; empty when all are there
 */
record Prepared(
    Plate plate, List<OutFile> files, Pages pages, Study check, Optional<String> lacks) {}
