package felloe.cutting;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.BuiltIn;
import felloe.yaml.Nearest;
import felloe.yaml.YamlTree;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/**
 * The dialects that the program knows, and those in files that the user names. A name that ends in
 * {@code .yaml} or {@code .yml}, or has a slash in it, is a file.
 */
public final class DialectCatalogue {

  private static final String FOLDER = "/felloe/dialects/";
  private static final List<String> NAMES =
      List.of("plain-rs274", "numbered-lines", "no-drill-cycles");

  private DialectCatalogue() {}

  /** Names of the dialects that the program knows; the first is for machines that nobody named. */
  public static List<String> names() {
    return NAMES;
  }

  /** The dialect for a machine that nobody named. */
  public static Dialect standard() {
    return builtIn(NAMES.get(0));
  }

  /**
   * The dialect with a name or from a file.
   *
   * @param folder where file names that are not absolute start from
   * @param asked where the name was given, for the message
   * @throws BadInput when there is none, offering the nearest name; or when the file cannot be read
   *     or is wrong, with every problem in it
   */
  public static Dialect named(String name, Path folder, Place asked) {
    if (name.matches(".*([.]ya?ml|[/\\\\].*)")) {
      return DialectReader.read(YamlTree.read(path(name, folder, asked)));
    }
    if (NAMES.contains(name)) {
      return builtIn(name);
    }
    String near = Nearest.to(name, NAMES).map(n -> "did you mean '" + n + "'? ").orElse("");
    String known = "known: " + String.join(", ", NAMES) + "; or name a file such as my-router.yaml";
    throw new BadInput(new Problem(asked, "dialect", name, "is not a known dialect", near + known));
  }

  private static Path path(String name, Path folder, Place asked) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException odd) {
      String cure = "check the name";
      throw new BadInput(new Problem(asked, "dialect", name, "is no name of a file", cure));
    }
  }

  private static Dialect builtIn(String name) {
    return DialectReader.read(BuiltIn.tree(FOLDER + name + ".yaml"));
  }
}
