package felloe.hub;

import felloe.yaml.YamlTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Reads what lies in the jar. */
final class Resources {

  private Resources() {}

  static YamlTree tree(String resource) {
    return find(resource)
        .orElseThrow(() -> new IllegalStateException("resource " + resource + " is missing"));
  }

  static Optional<YamlTree> find(String resource) {
    try (InputStream in = Resources.class.getResourceAsStream(resource)) {
      if (in == null) {
        return Optional.empty();
      }
      String name = "built-in " + resource.substring(resource.lastIndexOf('/') + 1);
      return Optional.of(YamlTree.read(name, in));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static List<String> lines(String resource) {
    try (InputStream in = Resources.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("resource " + resource + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
