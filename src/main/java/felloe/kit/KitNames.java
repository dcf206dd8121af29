package felloe.kit;

import java.util.Set;

/** What the files of a kit are called. */
final class KitNames {

  private static final String TEMPLATE = "-template-";
  private static final Set<String> ENDINGS =
      Set.of(".svg", ".dxf", ".nc", ".png", "-plot.pdf", "-holes.csv", "-report.json");

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

  String drill(String paper) {
    return name + "-drill-" + paper + ".pdf";
  }

  String drillSteps() {
    return name + "-drill.csv";
  }

  String measured() {
    return name + "-measured.yaml";
  }

  static String printCheck(String paper) {
    return "print-check-" + paper + ".pdf";
  }

  /** Whether a kit of this plate has, or once had, a file of that name. */
  boolean owns(String file) {
    if (!file.startsWith(name)) {
      return false;
    }
    String ending = file.substring(name.length());
    boolean template =
        ending.startsWith(TEMPLATE)
            && ending.endsWith(".pdf")
            && ending.length() > TEMPLATE.length() + 4;
    return template || ENDINGS.contains(ending);
  }
}
