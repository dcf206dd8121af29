package felloe.service;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.shape.ShapeFile;
import felloe.yaml.BuiltIn;
import felloe.yaml.Nearest;
import java.util.List;
import java.util.Optional;

/** Shape files to start from, one for each outline family. */
public final class NewShape {

  private static final List<String> FAMILIES =
      ShapeFile.outlines().stream().map(key -> key.replace('_', '-')).toList();

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
    // The shape file writes it with an underscore.
    String name = family.replace('_', '-');
    if (!FAMILIES.contains(name)) {
      String known = "known: " + String.join(", ", FAMILIES);
      throw new BadInput(
          new Problem(
              Place.ofFile("new"),
              "",
              family,
              "is not a family of outlines",
              cure(name).map(words -> words + " ").orElse("") + known));
    }
    return BuiltIn.text("/felloe/new/" + name + ".yaml");
  }

  private static Optional<String> cure(String word) {
    if (word.endsWith(".yaml")) {
      return Optional.of("the family comes first, then the file;");
    }
    return OutlineWords.named(word)
        .or(
            () ->
                Nearest.to(OutlineWords.plain(word), FAMILIES)
                    .map(near -> "did you mean '" + near + "'?"))
        .or(() -> OutlineWords.near(word));
  }
}
