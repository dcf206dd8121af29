package felloe.kit;

import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.plate.Face;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.List;

/**
 * What sets of files and files are called: sets go by the name of the shape file that they were
 * made from, as it is written.
 */
final class KitNames {

  private KitNames() {}

  /**
   * What names of sheets for a face end in: nothing for the face that the shape file says, else
   * that face, so that they stand beside those of the kit and replace none.
   */
  static String face(Plate plate, TemplateOptions options) {
    Face own = plate.stock().templateFace();
    return options
        .face()
        .filter(face -> face != own)
        .map(face -> face == Face.BACK ? "-back" : "-front")
        .orElse("");
  }

  static FileSet set(String set, Plate plate, List<OutFile> files) {
    return set(set, plate.stock().place(), plate.revision(), files);
  }

  static FileSet set(String set, Place place, String revision, List<OutFile> files) {
    Path name = Path.of(place.file()).getFileName();
    return new FileSet(set, name == null ? "" : name.toString(), revision, files);
  }
}
