package felloe.kit;

import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.nio.file.Path;
import java.util.List;

/** Sets of files by the name of the shape file that they were made from, as it is written. */
final class KitNames {

  private KitNames() {}

  static FileSet set(String set, Plate plate, List<OutFile> files) {
    return set(set, plate.stock().place(), plate.revision(), files);
  }

  static FileSet set(String set, Place place, String revision, List<OutFile> files) {
    Path name = Path.of(place.file()).getFileName();
    return new FileSet(set, name == null ? "" : name.toString(), revision, files);
  }
}
