package felloe.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The texts that the program brings along: its tables, its hubs, its starting shapes. */
public final class BuiltIn {

  // What the program brings along never changes: each table and list is read once.
  private static final Map<String, YamlTree> TREES = new ConcurrentHashMap<>();
  private static final Map<String, List<String>> LINES = new ConcurrentHashMap<>();

  private BuiltIn() {}

  /**
   * A table. Messages call it {@code built-in limits.yaml}.
   *
   * @param path within the program, {@code /felloe/limits.yaml}
   * @throws felloe.plate.BadInput when it is damaged
   */
  public static YamlTree tree(String path) {
    return TREES.computeIfAbsent(path, BuiltIn::read);
  }

  private static YamlTree read(String path) {
    return YamlTree.parse("built-in " + path.substring(path.lastIndexOf('/') + 1), text(path));
  }

  /** The lines of a text. */
  public static List<String> lines(String path) {
    return LINES.computeIfAbsent(path, name -> List.of(text(name).split("\\R")));
  }

  /**
   * A text, read to 8 MiB.
   *
   * @throws IllegalStateException when there is none of that name
   * @throws felloe.plate.BadInput when it is larger, or no UTF-8
   */
  public static String text(String path) {
    try (InputStream in = BuiltIn.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("resource " + path + " is missing");
      }
      return SourceText.decode(path, in.readNBytes(SourceText.LARGEST + 1));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
