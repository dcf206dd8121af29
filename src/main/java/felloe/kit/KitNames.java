package felloe.kit;

import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.plate.Plate;
import java.nio.file.Path;
import java.util.List;

/** What the files of a kit are called. */
final class KitNames {

  private static final String TEMPLATE = "-template-";

  private final String name;

  /**
   * Names for a plate.
   *
   * @param name the plate's short name
   */
  KitNames(String name) {
    this.name = name;
  }

  String svg() {
    return name + ".svg";
  }

  String dxf() {
    return name + ".dxf";
  }

  String program() {
    return name + ".nc";
  }

  String picture() {
    return name + ".png";
  }

  String template(String paper) {
    return name + TEMPLATE + paper + ".pdf";
  }

  String plot() {
    return name + "-plot.pdf";
  }

  String holes() {
    return name + "-holes.csv";
  }

  String report() {
    return name + "-report.json";
  }

  /** A set of files that were made from a plate, by the name of the shape file as it is written. */
  static FileSet set(String set, Plate plate, List<OutFile> files) {
    Path name = Path.of(plate.stock().place().file()).getFileName();
    return new FileSet(set, name == null ? "" : name.toString(), files);
  }

  static String printCheck(String paper) {
    return "print-check-" + paper + ".pdf";
  }
}
