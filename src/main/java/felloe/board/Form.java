package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.board.Schema.Kind;
import felloe.geometry.Numbers;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * The values of a shape file as a form, made from what its schema says: every key that may stand
 * there can be changed, added and taken out.
 */
final class Form {

  /** A slider over more than this is of no use. */
  private static final double WIDEST = 720;

  /** Lists of so few figures stand on one line. */
  private static final int ROW = 3;

  /** A figure without a unit. */
  private static final Pattern PLAIN = Pattern.compile("-?\\d+(\\.\\d+)?");

  private static final List<String> AXES = List.of("x", "y", "z");

  /** A form of more fields than this would hold the page up. */
  private static final int MOST = 4_000;

  /** Groups that are open at first. */
  private static final List<String> OPEN = List.of("outline", "windows", "stock");

  private final StringBuilder html = new StringBuilder(1 << 15);

  private Form() {}

  /**
   * What is written in a shape file.
   *
   * @param byPath the text of each value, by the way to it
   * @param key two files of the same key have the same form, but for what its fields hold
   */
  record Values(Map<String, String> byPath, int key) {}

  /** All values of a shape file. */
  static Values values(YamlValue root) {
    Map<String, String> values = new LinkedHashMap<>();
    StringBuilder ways = new StringBuilder(1 << 12);
    collect("", root, values, ways);
    return new Values(values, ways.toString().hashCode());
  }

  private static void collect(
      String path, YamlValue value, Map<String, String> values, StringBuilder ways) {
    ways.append(path).append('\n');
    if (value instanceof Mapping group) {
      group
          .entries()
          .forEach((key, one) -> collect(Steps.key(path, key), one.value(), values, ways));
    } else if (value instanceof Sequence list) {
      for (int i = 0; i < list.items().size(); i++) {
        collect(path + "[" + i + "]", list.items().get(i), values, ways);
      }
    } else if (value instanceof Scalar one) {
      values.put(path, text(one));
    }
  }

  private static String text(Scalar value) {
    return value.isNull() ? "" : value.text();
  }

  /** The form of a shape file: its fields. */
  static String of(Schema schema, YamlValue root) {
    Form form = new Form();
    if (count(root) > MOST) {
      form.html.append("<p class=\"help\">Too many values for a form: change the text.</p>\n");
    } else if (root instanceof Mapping top) {
      form.keys("", schema, top);
    }
    return form.html.toString();
  }

  private static int count(YamlValue value) {
    if (value instanceof Mapping group) {
      return group.entries().values().stream().mapToInt(one -> count(one.value())).sum();
    }
    return value instanceof Sequence list ? list.items().stream().mapToInt(Form::count).sum() : 1;
  }

  private void keys(String path, Schema schema, Mapping group) {
    for (Map.Entry<String, Keyed> one : group.entries().entrySet()) {
      String key = one.getKey();
      Optional<Schema> known = schema.key(key);
      if (known.isEmpty()) {
        unknown(Steps.key(path, key), key);
        continue;
      }
      if (known.get().kind() == Kind.FIXED && schema.required().contains(key)) {
        // It cannot be anything else.
        continue;
      }
      boolean free =
          !schema.required().contains(key)
              && schema.oneOf().stream().noneMatch(set -> set.contains(key));
      value(Steps.key(path, key), words(key), known.get(), one.getValue().value(), free);
    }
    adding(path, schema, group);
  }

  private void value(String path, String name, Schema place, YamlValue value, boolean free) {
    Schema schema = place.as(value);
    if (value instanceof Mapping group && schema.kind() == Kind.GROUP) {
      open(path, name, hint(group), free);
      help(place);
      keys(path, schema, group);
      html.append("</details>\n");
    } else if (value instanceof Sequence list && schema.kind() == Kind.LIST) {
      list(path, name, place, schema, list, free);
    } else if (value instanceof Scalar one) {
      field(path, name, place, one, free);
    } else {
      unknown(path, name);
    }
  }

  private void open(String path, String name, String hint, boolean free) {
    html.append("<details class=\"group\" data-path=\"").append(escaped(path)).append('"');
    html.append(OPEN.contains(path) ? " open>" : ">");
    html.append("<summary><span class=\"name\">").append(escaped(name)).append("</span>");
    if (!hint.isEmpty()) {
      html.append(" <span class=\"hint\">").append(escaped(hint)).append("</span>");
    }
    html.append("</summary>\n");
    fault(path);
    if (free) {
      button("remove", path, "take out " + name, "take out");
    }
  }

  /** What a folded group is, in a word or two. */
  private static String hint(Mapping group) {
    List<String> words = new ArrayList<>();
    for (Map.Entry<String, Keyed> one : group.entries().entrySet()) {
      YamlValue value = one.getValue().value();
      if (value instanceof Scalar s && s.text().length() <= 24 && words.size() < 3) {
        words.add(words(one.getKey()) + " " + s.text());
      } else if (words.size() < 3) {
        words.add(words(one.getKey()));
      }
    }
    return String.join(", ", words);
  }

  private void list(
      String path, String name, Schema place, Schema schema, Sequence list, boolean free) {
    Schema item = schema.item().orElse(place);
    boolean row =
        list.items().size() <= ROW
            && schema.most() <= ROW
            && list.items().stream().allMatch(v -> v instanceof Scalar);
    if (row) {
      html.append("<fieldset class=\"row\" data-path=\"")
          .append(escaped(path))
          .append("\"><legend>");
      html.append(escaped(name)).append("</legend>\n");
      help(place);
      fault(path);
      for (int i = 0; i < list.items().size(); i++) {
        bare(
            path + "[" + i + "]",
            AXES.get(i),
            name + " " + AXES.get(i),
            item,
            (Scalar) list.items().get(i));
      }
      if (free) {
        button("remove", path, "take out " + name, "take out");
      }
      html.append("</fieldset>\n");
      return;
    }
    open(path, name, Integer.toString(list.items().size()), free);
    help(place);
    for (int i = 0; i < list.items().size(); i++) {
      YamlValue one = list.items().get(i);
      boolean more = list.items().size() > schema.least();
      value(path + "[" + i + "]", Integer.toString(i + 1), item, one, more);
    }
    if (list.items().size() < schema.most()) {
      button("append", path, "add one to " + name, "add one");
    }
    html.append("</details>\n");
  }

  private void field(String path, String name, Schema place, Scalar value, boolean free) {
    html.append("<div class=\"field\" data-path=\"").append(escaped(path)).append("\">");
    html.append("<label for=\"").append(id(path)).append("\">").append(escaped(name));
    html.append("</label>");
    input(path, name, place, value);
    if (free) {
      button("remove", path, "take out " + name, "\u00d7");
    }
    help(place, id(path));
    fault(path);
    html.append("</div>\n");
  }

  /** A figure of a row. */
  private void bare(String path, String name, String whole, Schema place, Scalar value) {
    html.append("<span class=\"figure\" data-path=\"").append(escaped(path)).append("\">");
    html.append("<label for=\"").append(id(path)).append("\">").append(escaped(name));
    html.append("</label>");
    input(path, whole, place, value);
    fault(path);
    html.append("</span>\n");
  }

  private void input(String path, String name, Schema place, Scalar value) {
    String text = text(value);
    String common =
        "id=\""
            + id(path)
            + "\" data-path=\""
            + escaped(path)
            + "\" aria-describedby=\""
            + id(path)
            + "-help\"";
    switch (place.kind()) {
      case CHOICE -> choice(common, place.choices(), text);
      case TRUTH ->
          html.append("<input type=\"checkbox\" ")
              .append(common)
              .append(text.equals("true") ? " checked>" : ">");
      case FIXED ->
          html.append("<input type=\"text\" readonly ")
              .append(common)
              .append(" value=\"")
              .append(escaped(text))
              .append("\">");
      case FIGURE -> figure(path, name, place, common, text);
      default -> {
        List<String> known = place.choices();
        String list = known.isEmpty() ? "" : " list=\"" + id(path) + "-known\"";
        html.append("<input type=\"text\" ").append(common).append(list).append(" value=\"");
        html.append(escaped(text)).append("\">");
        if (!known.isEmpty()) {
          html.append("<datalist id=\"").append(id(path)).append("-known\">");
          known.forEach(w -> html.append("<option value=\"").append(escaped(w)).append("\">"));
          html.append("</datalist>");
        }
      }
    }
  }

  private void choice(String common, List<String> choices, String text) {
    html.append("<select ").append(common).append('>');
    List<String> all = new ArrayList<>(choices);
    if (!all.contains(text)) {
      all.add(0, text);
    }
    for (String one : all) {
      html.append("<option").append(one.equals(text) ? " selected>" : ">");
      html.append(escaped(one)).append("</option>");
    }
    html.append("</select>");
  }

  private void figure(String path, String name, Schema place, String common, String text) {
    html.append("<span class=\"pick\">");
    step(path, -1, name + ": less", "\u2212");
    html.append("<input type=\"text\" inputmode=\"decimal\" ").append(common);
    html.append(" value=\"").append(escaped(text)).append("\">");
    step(path, 1, name + ": more", "+");
    html.append("</span>");
    slider(path, name, place, text);
  }

  private void slider(String path, String name, Schema place, String text) {
    OptionalDouble low = place.lowest();
    OptionalDouble high = place.highest();
    boolean plain = PLAIN.matcher(text).matches();
    if (low.isPresent()
        && high.isPresent()
        && plain
        && high.getAsDouble() - low.getAsDouble() <= WIDEST) {
      boolean fine = !place.whole() && high.getAsDouble() - low.getAsDouble() <= 24;
      html.append("<input type=\"range\" class=\"slide\" data-slide=\"").append(escaped(path));
      html.append("\" aria-label=\"").append(escaped(name)).append("\" min=\"");
      html.append(Numbers.brief(low.getAsDouble(), 3)).append("\" max=\"");
      html.append(Numbers.brief(high.getAsDouble(), 3));
      html.append("\" step=\"").append(fine ? "0.1" : "1");
      html.append("\" value=\"").append(text).append("\">");
    }
  }

  private void step(String path, int by, String label, String sign) {
    html.append("<button type=\"button\" class=\"step\" data-act=\"step\" data-by=\"");
    html.append(Integer.toString(by)).append("\" data-path=\"").append(escaped(path));
    html.append("\" aria-label=\"").append(escaped(label)).append("\">").append(sign);
    html.append("</button>");
  }

  private void button(String act, String path, String label, String text) {
    html.append("<button type=\"button\" class=\"")
        .append(act)
        .append("\" data-act=\"")
        .append(act);
    html.append("\" data-path=\"").append(escaped(path)).append("\" aria-label=\"");
    html.append(escaped(label)).append("\">").append(escaped(text)).append("</button>\n");
  }

  /** Keys that are not there and may be. */
  private void adding(String path, Schema schema, Mapping group) {
    List<String> there =
        group.entries().keySet().stream().map(key -> key.replace('-', '_')).toList();
    List<String> absent = schema.keys().stream().filter(key -> !there.contains(key)).toList();
    if (absent.isEmpty()) {
      return;
    }
    String label = "add to " + (path.isEmpty() ? "the shape" : path);
    html.append("<select class=\"add\" data-add=\"").append(escaped(path));
    html.append("\" aria-label=\"").append(escaped(label)).append("\">");
    html.append("<option value=\"\">add\u2026</option>");
    for (String key : absent) {
      boolean instead =
          schema.oneOf().stream().anyMatch(set -> set.contains(key))
              && schema.oneOf().stream().anyMatch(there::containsAll);
      html.append("<option value=\"").append(escaped(key)).append("\">");
      html.append(instead ? "instead: " : "").append(escaped(words(key)));
      html.append("</option>");
    }
    html.append("</select>\n");
  }

  private void unknown(String path, String name) {
    html.append("<div class=\"field unknown\" data-path=\"").append(escaped(path)).append("\">");
    html.append("<span class=\"name\">").append(escaped(name)).append("</span> ");
    button("remove", path, "take out " + name, "take out");
    fault(path);
    html.append("</div>\n");
  }

  private void help(Schema place) {
    if (!place.help().isEmpty()) {
      html.append("<p class=\"help\">").append(escaped(place.help())).append("</p>\n");
    }
  }

  private void help(Schema place, String id) {
    html.append("<p class=\"help\" id=\"").append(id).append("-help\">");
    html.append(escaped(place.help()));
    place.usual().ifPresent(u -> html.append(" Usually ").append(escaped(u)).append('.'));
    html.append("</p>");
  }

  private void fault(String path) {
    html.append("<p class=\"fault\" data-fault=\"").append(escaped(path)).append("\" hidden></p>");
  }

  /** Written out, as a form asks a thousand times. */
  private static String id(String path) {
    StringBuilder id = new StringBuilder(path.length() + 2).append("v-");
    for (int i = 0; i < path.length(); i++) {
      char c = path.charAt(i);
      boolean plain = c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
      id.append(plain || c == '_' ? c : '-');
    }
    return id.toString();
  }

  private static String words(String key) {
    return key.replace('_', ' ').replace('-', ' ');
  }
}
