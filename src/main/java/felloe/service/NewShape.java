package felloe.service;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.BuiltIn;
import felloe.yaml.Nearest;
import java.util.List;

/** Shape files to start from, one for each outline family. */
public final class NewShape {

  private static final List<String> FAMILIES = List.of("round", "four-sided", "points", "path");

  private NewShape() {}

  /** The families that there is a file for. */
  public static List<String> families() {
    return FAMILIES;
  }

  /**
   * The commented shape file of a family, as it stands a good wheel.
   *
   * @throws BadInput when there is no such family
   */
  public static String text(String family) {
    if (!FAMILIES.contains(family)) {
      String near = Nearest.to(family, FAMILIES).map(n -> "did you mean '" + n + "'? ").orElse("");
      throw new BadInput(
          new Problem(
              Place.ofFile("new"),
              "",
              family,
              "is not a family of outlines",
              near + "known: " + String.join(", ", FAMILIES)));
    }
    return BuiltIn.text("/felloe/new/" + family + ".yaml");
  }
}
