package felloe.shape;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import felloe.yaml.YamlValue;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/** Which keys the schema knows, where, and which of them a file uses. */
final class SchemaKeys {

  /** Takes the ids of the review's rules, which the reader of shape files does not know. */
  private static final String FREE = "limits";

  private final ShapeSchema schema;

  SchemaKeys(ShapeSchema schema) {
    this.schema = schema;
  }

  /** Calls with every part of the schema that is an object, and where it stands. */
  void eachPart(BiConsumer<String, JsonNode> visitor) {
    visit("#", schema.json(), visitor);
  }

  private static void visit(String where, JsonNode part, BiConsumer<String, JsonNode> visitor) {
    if (part.isObject()) {
      visitor.accept(where, part);
      part.properties().forEach(f -> visit(where + "/" + f.getKey(), f.getValue(), visitor));
    } else if (part.isArray()) {
      for (int i = 0; i < part.size(); i++) {
        visit(where + "/" + i, part.get(i), visitor);
      }
    }
  }

  /** Calls with every part that says which keys a group may have. */
  void eachGroup(BiConsumer<String, JsonNode> visitor) {
    eachPart(
        (where, part) -> {
          if (part.has("properties") && part.path("type").asText().equals("object")) {
            visitor.accept(where, part);
          }
        });
  }

  /** Every key of the schema, as the place of its group and its name. */
  Set<String> all() {
    Set<String> all = new TreeSet<>();
    eachGroup((where, part) -> names(part).forEach(key -> all.add(where + " " + key)));
    return all;
  }

  /** The keys that a group may have. */
  static Set<String> names(JsonNode group) {
    Set<String> names = new TreeSet<>();
    group.get("properties").fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** The keys of the schema that a file uses, named as in {@link #all}. */
  Set<String> used(YamlValue file) {
    Map<JsonNode, String> places = new java.util.IdentityHashMap<>();
    eachGroup((where, part) -> places.put(part, where));
    Set<String> used = new TreeSet<>();
    walk(
        file,
        schema.json(),
        (mapping, group) ->
            mapping.entries().keySet().forEach(key -> used.add(places.get(group) + " " + key)));
    return used;
  }

  /** The groups of a file by their path, each with the part of the schema that is about it. */
  Map<String, JsonNode> groups(YamlValue file) {
    Map<String, JsonNode> groups = new LinkedHashMap<>();
    walk(
        file,
        schema.json(),
        (mapping, group) -> {
          if (!mapping.path().equals(FREE)) {
            groups.put(mapping.path(), group);
          }
        });
    return groups;
  }

  private void walk(
      YamlValue value, JsonNode part, BiConsumer<YamlValue.Mapping, JsonNode> visitor) {
    JsonNode here = schema.resolved(part);
    for (JsonNode choice : here.path("anyOf")) {
      walk(value, choice, visitor);
    }
    if (value instanceof YamlValue.Mapping mapping && here.has("properties")) {
      visitor.accept(mapping, here);
      mapping
          .entries()
          .forEach(
              (key, keyed) -> {
                if (here.get("properties").has(key)) {
                  walk(keyed.value(), here.get("properties").get(key), visitor);
                }
              });
    } else if (value instanceof YamlValue.Sequence sequence && here.has("items")) {
      sequence.items().forEach(item -> walk(item, here.get("items"), visitor));
    }
  }

  /** Whether a part of the schema accepts a value. */
  boolean accepts(JsonNode part, JsonNode value) {
    ObjectNode alone = new ObjectMapper().createObjectNode();
    alone.set("$defs", schema.json().get("$defs"));
    alone.setAll((ObjectNode) part);
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(alone)
        .validate(value)
        .isEmpty();
  }
}
