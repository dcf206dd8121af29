package felloe.shape;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import java.util.ArrayList;
import java.util.List;

/**
 * A file with one key misspelt, written as JSON, which is YAML too.
 *
 * @param text the file's text
 */
record Misspelt(String text) {

  /** The path of every key of a file. */
  static List<String> paths(YamlValue value) {
    List<String> paths = new ArrayList<>();
    if (value instanceof YamlValue.Mapping mapping) {
      mapping
          .entries()
          .forEach(
              (key, keyed) -> {
                paths.add(mapping.path().isEmpty() ? key : mapping.path() + "." + key);
                paths.addAll(paths(keyed.value()));
              });
    } else if (value instanceof YamlValue.Sequence sequence) {
      sequence.items().forEach(item -> paths.addAll(paths(item)));
    }
    return paths;
  }

  /** The file with the key at a path misspelt. */
  static Misspelt at(YamlValue file, String path) {
    JsonNode json = ShapeSchema.toJson(file);
    String pointer = "/" + path.replaceAll("\\[(\\d+)\\]", "/$1").replace('.', '/');
    int last = pointer.lastIndexOf('/');
    ObjectNode group = (ObjectNode) json.at(pointer.substring(0, last));
    String key = pointer.substring(last + 1);
    JsonNode value = group.remove(key);
    group.set(key + "q", value);
    return new Misspelt(json.toString());
  }

  YamlValue tree() {
    return YamlTree.parse("shape.yaml", text).root();
  }
}
