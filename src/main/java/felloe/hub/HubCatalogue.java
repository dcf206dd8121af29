package felloe.hub;

import felloe.plate.BadInput;
import felloe.plate.HubPattern;
import felloe.plate.HubPatterns;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.BuiltIn;
import felloe.yaml.Nearest;
import felloe.yaml.YamlTree;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The hub specs that the program knows, and those in files that the user names. Only the spec that
 * is asked for is read.
 *
 * <p>A name that ends in {@code .yaml} or {@code .yml}, or has a slash in it, is a file; any other
 * is one of {@link #names}.
 */
public final class HubCatalogue implements HubPatterns {

  private static final String FOLDER = "/felloe/hubs/";

  private final Path folder;

  /**
   * A catalogue.
   *
   * @param folder where file names that are not absolute start from
   */
  public HubCatalogue(Path folder) {
    this.folder = folder;
  }

  /** A catalogue whose files are found from the folder that the program was started in. */
  public static HubCatalogue here() {
    return new HubCatalogue(Path.of(""));
  }

  @Override
  public List<String> names() {
    return BuiltIn.lines(FOLDER + "index.txt");
  }

  @Override
  public List<Double> clearances(String thread) {
    return ScrewThreads.find(thread)
        .map(found -> List.of(found.fine(), found.medium(), found.coarse()))
        .orElse(List.of());
  }

  /** Whether a name means a file. */
  public static boolean isFile(String name) {
    return name.endsWith(".yaml")
        || name.endsWith(".yml")
        || name.indexOf('/') >= 0
        || name.indexOf('\\') >= 0;
  }

  /**
   * The pattern with a name or from a file, as a shape file asks for it. A shape file may come from
   * anybody, so a file that it names must lie in the catalogue's folder or below it: what is wrong
   * with it is quoted.
   *
   * @return empty for a name that is not known
   * @throws BadInput when the name means a file that lies elsewhere, cannot be read, or is wrong
   */
  @Override
  public Optional<HubPattern> find(String name) {
    if (isFile(name)) {
      refuseElsewhere(name, path(name, Place.BUILT_IN));
    }
    return lookUp(name, Place.BUILT_IN).map(HubSpec::pattern);
  }

  private void refuseElsewhere(String name, Path file) {
    Path home = folder.toAbsolutePath().normalize();
    boolean below = file.toAbsolutePath().normalize().startsWith(home);
    if (below && Files.exists(file)) {
      try {
        // Links lead elsewhere too.
        below = file.toRealPath().startsWith(home.toRealPath());
      } catch (IOException unreadable) {
        below = false;
      }
    }
    if (!below) {
      throw new BadInput(
          new Problem(
              Place.ofFile(name),
              "",
              "",
              "does not lie in the folder of the shape file or below it",
              "copy it there, or name it on the command line"));
    }
  }

  /**
   * The spec with a name or from a file.
   *
   * @param asked where the name was given, for the message
   * @throws BadInput when there is none, offering the nearest name; or when the file cannot be read
   *     or is wrong, with every problem in it
   */
  public HubSpec spec(String name, Place asked) {
    Optional<HubSpec> found = lookUp(name, asked);
    if (found.isPresent()) {
      return found.get();
    }
    List<String> names = names();
    String near = Nearest.to(name, names).map(n -> "did you mean '" + n + "'? ").orElse("");
    String known = "known: " + String.join(", ", names) + "; or name a file such as my-hub.yaml";
    throw new BadInput(new Problem(asked, "hub", name, "is not a known hub", near + known));
  }

  /** Every known spec, in the order of {@link #names}. */
  public List<HubSpec> all() {
    List<HubSpec> all = new ArrayList<>();
    for (String name : names()) {
      all.add(HubReader.read(BuiltIn.tree(FOLDER + name + ".yaml")));
    }
    return List.copyOf(all);
  }

  private Optional<HubSpec> lookUp(String name, Place asked) {
    if (isFile(name)) {
      return Optional.of(HubReader.read(YamlTree.read(path(name, asked))));
    }
    // The index is asked first, so that no odd name reaches out of the folder.
    if (!names().contains(name)) {
      return Optional.empty();
    }
    YamlTree tree = BuiltIn.tree(FOLDER + name + ".yaml");
    return Optional.of(HubReader.read(tree));
  }

  private Path path(String name, Place asked) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException odd) {
      throw new BadInput(new Problem(asked, "hub", name, "is no name of a file", "check the name"));
    }
  }
}
