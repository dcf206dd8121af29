package felloe.hub;

import felloe.yaml.YamlTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads what lies in the jar. */
final class Resources {

  private Resources() {}

  static YamlTree tree(String resource) {
    try (InputStream in = Resources.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("resource " + resource + " is missing");
      }
      String name = "built-in " + resource.substring(resource.lastIndexOf('/') + 1);
      return YamlTree.read(name, in);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static List<String> lines(String resource) {
    try (InputStream in = Resources.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("resource " + resource + " is missing");
      }
      return List.of(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\\R"));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
