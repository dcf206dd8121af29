package felloe.shape;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The published schema of the shape file, asked as an editor asks it. */
final class ShapeSchema {

  private static final Path FILE = Path.of("docs", "shape-file.schema.json");
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final JsonNode json;
  private final Schema schema;

  ShapeSchema() {
    try {
      json = new ObjectMapper().readTree(Files.readString(FILE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(json);
  }

  JsonNode json() {
    return json;
  }

  /** What the schema has against a text; empty when nothing. */
  List<String> complaints(String text) {
    return complaints(YamlTree.parse("shape.yaml", text).root());
  }

  List<String> complaints(YamlValue value) {
    return schema.validate(toJson(value)).stream().map(Object::toString).toList();
  }

  /** The part that a reference leads to; the same part when it is none. */
  JsonNode resolved(JsonNode part) {
    return part.has("$ref") ? json.at(part.get("$ref").asText().substring(1)) : part;
  }

  /** The tree as JSON, scalars read by the core schema of YAML 1.2.2 (section 10.3.2). */
  static JsonNode toJson(YamlValue value) {
    if (value instanceof YamlValue.Mapping mapping) {
      ObjectNode object = NODES.objectNode();
      mapping.entries().forEach((key, keyed) -> object.set(key, toJson(keyed.value())));
      return object;
    }
    if (value instanceof YamlValue.Sequence sequence) {
      ArrayNode array = NODES.arrayNode();
      sequence.items().forEach(item -> array.add(toJson(item)));
      return array;
    }
    return scalar((YamlValue.Scalar) value);
  }

  private static JsonNode scalar(YamlValue.Scalar scalar) {
    String text = scalar.text();
    if (scalar.quoted()) {
      return NODES.textNode(text);
    }
    if (scalar.isNull()) {
      return NODES.nullNode();
    }
    if (text.matches("true|True|TRUE|false|False|FALSE")) {
      return NODES.booleanNode(text.equalsIgnoreCase("true"));
    }
    if (text.matches("0o[0-7]+")) {
      return NODES.numberNode(Long.parseLong(text.substring(2), 8));
    }
    if (text.matches("0x[0-9a-fA-F]+")) {
      return NODES.numberNode(Long.parseLong(text.substring(2), 16));
    }
    if (text.matches("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]{1,8})?")) {
      return NODES.numberNode(new BigDecimal(text));
    }
    // JSON has no number for .inf and .nan either.
    return NODES.textNode(text);
  }
}
