package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Random texts in random layouts, each changed at random. */
class TextEditRandomTest {

  private static final long SEED = Long.getLong("felloe.edit.seed", 20_261_129L);
  private static final int ROUNDS = Integer.getInteger("felloe.edit.rounds", 800);
  private static final int EDITS = 8;

  private static final String[] VALUES = {
    "60 mm",
    "1",
    "'quoted # text'",
    "\"a\\tb\"",
    "[1, 2]",
    "{a: 1, b: [x, 'y']}",
    "",
    "~",
    "a, b",
    "[]",
    "{}",
    "x:y",
    "|\n  two\n  lines\n",
    "5 # said",
    "[1,\n 2]",
    "größe 😀"
  };

  /**
   * A text to change, and what it says.
   *
   * @param laidOut whether it has no layout so odd that more than the edit may change
   */
  private record Case(String text, TextEdit edit, YamlValue root, boolean laidOut) {

    static Optional<Case> of(String text, boolean laidOut) {
      try {
        return Optional.of(
            new Case(
                text, TextEdit.of("r.yaml", text), YamlTree.parse("r.yaml", text).root(), laidOut));
      } catch (BadInput odd) {
        return Optional.empty();
      }
    }

    boolean has(ValuePath path) {
      return TreeChange.find(root, path).isPresent();
    }
  }

  @Test
  void aRandomEditSaysWhatTheOverrideSaysAndTouchesNothingElse() {
    int texts = 0;
    for (int round = 0; round < ROUNDS; round++) {
      SplittableRandom random = new SplittableRandom(SEED + round);
      texts += changeAll(RandomText.of(random), random, round, true) ? 1 : 0;
    }
    assertTrue(texts > ROUNDS * 0.95, "texts that can be read: " + texts);
  }

  /** Whatever was read, odd as it is, can be changed, and then says what is meant. */
  @Test
  void anEditOfADamagedFileSaysWhatIsMeant() {
    int texts = 0;
    for (int round = 0; round < 3 * ROUNDS; round++) {
      SplittableRandom random = new SplittableRandom(SEED + round);
      byte[] bytes = YamlFuzzTest.VALID.getBytes(StandardCharsets.UTF_8);
      String text = new String(YamlFuzzTest.mutate(bytes, random), StandardCharsets.UTF_8);
      texts += changeAll(text, random, round, false) ? 1 : 0;
    }
    assertTrue(texts > ROUNDS / 2, "texts that can be read: " + texts);
  }

  /** Whether the text could be read. */
  private static boolean changeAll(
      String text, SplittableRandom random, int round, boolean laidOut) {
    Optional<Case> made = Case.of(text, laidOut);
    if (made.isEmpty()) {
      return false;
    }
    List<ValuePath> paths = new ArrayList<>();
    collect(made.get().root, ValuePath.TOP, paths);
    for (int i = 0; i < EDITS; i++) {
      ValuePath path = pathOf(paths, random);
      String value = VALUES[random.nextInt(VALUES.length)];
      int kind = random.nextInt(4);
      try {
        change(kind, made.get(), path, value);
      } catch (RuntimeException | AssertionError failed) {
        String what = List.of("set", "set", "insert", "remove").get(kind) + " " + path;
        throw new AssertionError(
            "seed " + (SEED + round) + ": " + what + " " + value + "\n" + text + "\n---\n" + failed,
            failed);
      }
    }
    return true;
  }

  private static void change(int kind, Case c, ValuePath path, String value) {
    switch (kind) {
      case 0, 1 -> set(c, path, value);
      case 2 -> insert(c, path, value);
      default -> remove(c, path);
    }
  }

  /** One that is there, just past the end of a list, or new. */
  private static ValuePath pathOf(List<ValuePath> paths, SplittableRandom random) {
    ValuePath path = paths.get(random.nextInt(paths.size()));
    while (path.isTop() || random.nextInt(6) == 0) {
      path =
          random.nextInt(4) == 0
              ? path.item(random.nextInt(3))
              : path.key("new" + random.nextInt(3));
    }
    return path;
  }

  private static void collect(YamlValue value, ValuePath path, List<ValuePath> paths) {
    paths.add(path);
    if (value instanceof Sequence list) {
      for (int i = 0; i < list.items().size(); i++) {
        collect(list.items().get(i), path.item(i), paths);
      }
      paths.add(path.item(list.items().size()));
    } else if (value instanceof Mapping group) {
      group.entries().forEach((key, keyed) -> collect(keyed.value(), path.key(key), paths));
    }
  }

  private static void set(Case c, ValuePath path, String value) {
    YamlTree wanted;
    try {
      wanted = YamlTree.parse("r.yaml", c.text).with(Sets.of(written(path) + "=" + value));
    } catch (BadInput bad) {
      assertThrows(BadInput.class, () -> c.edit.set(written(path), value));
      return;
    }
    TextEdit next = c.edit.set(written(path), value);
    says(plain(wanted.root()), next);
    assertEquals(next.text(), next.set(written(path), value).text());
    if (c.has(path)) {
      nothingElse(c, path, next);
    } else {
      nothingLost(c, path, next);
    }
  }

  private static void insert(Case c, ValuePath path, String value) {
    if (!path.isItem() || !c.has(path)) {
      return;
    }
    Object wanted = plain(c.root);
    @SuppressWarnings("unchecked")
    List<Object> list = (List<Object>) at(wanted, path.parent());
    list.add(path.index(), plain(YamlTree.parse("v", value).root()));
    TextEdit next = c.edit.insert(written(path), value);
    says(wanted, next);
    nothingLost(c, path, next);
  }

  private static void remove(Case c, ValuePath path) {
    if (!c.has(path)) {
      assertThrows(BadInput.class, () -> c.edit.remove(written(path)));
      return;
    }
    Object wanted = plain(c.root);
    ValuePath last = path;
    while (drop(at(wanted, last.parent()), last) && !last.parent().isTop()) {
      last = last.parent();
    }
    TextEdit next = c.edit.remove(written(path));
    says(wanted, next);
    nothingElse(c, last, next);
  }

  /** True when that leaves nothing. */
  private static boolean drop(Object holder, ValuePath step) {
    if (holder instanceof List<?> list) {
      list.remove(step.index());
      return list.isEmpty();
    }
    ((Map<?, ?>) holder).remove(step.key());
    return ((Map<?, ?>) holder).isEmpty();
  }

  /** The text says it, its keys in this order too. */
  private static void says(Object wanted, TextEdit next) {
    Object written = plain(YamlTree.parse("r.yaml", next.text()).root());
    boolean nothing = List.of("{}", "[]").contains(String.valueOf(wanted)) && written == null;
    if (!nothing) {
      assertEquals(String.valueOf(wanted), String.valueOf(written), next::text);
    }
  }

  /** Only lines of the part, and comments that belong to it, are other than they were. */
  private static void nothingElse(Case c, ValuePath path, TextEdit next) {
    if (!c.laidOut || next.text().equals(c.text)) {
      return;
    }
    int mark = c.text.startsWith("\uFEFF") ? 1 : 0;
    String old = c.text.substring(mark);
    String now = next.text().substring(mark);
    TextEdit.Span span = c.edit.span(written(path)).orElseThrow();
    Lines lines = new Lines(old);
    int from = lines.start(span.from() - mark);
    int comma = old.lastIndexOf(',', from);
    String before = old.substring(0, Math.max(0, lines.endBefore(from)));
    assertTrue(
        now.startsWith(before) || comma >= 0 && now.startsWith(old.substring(0, comma)),
        () -> "before it:\n" + now);
    int to = lines.next(span.to() - mark);
    int column = lines.column(span.from() - mark);
    int word = lines.word(to);
    while (to < old.length()
        && (lines.isEndAt(word) || lines.has(word, '#') && lines.column(word) > column)) {
      to = lines.next(to);
      word = lines.word(to);
    }
    String behind = old.substring(word);
    assertTrue(now.endsWith(behind), () -> "behind it:\n" + now);
  }

  /** Nothing of the old text is missing, and what came in whole lines goes out again. */
  private static void nothingLost(Case c, ValuePath path, TextEdit next) {
    if (!c.laidOut) {
      return;
    }
    ValuePath holder = path.parent();
    while (!c.has(holder)) {
      holder = holder.parent();
    }
    if (TreeChange.find(c.root, holder).orElseThrow() instanceof Scalar) {
      return;
    }
    String now = unstripped(next.text());
    int at = 0;
    for (char one : unstripped(c.text).replace(" ", "").toCharArray()) {
      at = now.indexOf(one, at) + 1;
      assertTrue(at > 0, () -> "lost:\n" + next.text());
    }
    if (now.lines().count() > c.text.lines().count()) {
      assertEquals(
          unstripped(c.text),
          unstripped(next.remove(written(path)).text()),
          () -> "taken out again of\n" + next.text());
    }
  }

  /**
   * Without what a text block at the end of a file is told when lines follow, and without the
   * columns of comments, which a comma may push.
   */
  private static String unstripped(String text) {
    return text.replaceAll("([|>])[-+]", "$1").replaceAll(" +#", " #");
  }

  /** The path as it is read, with nothing in its keys made safe to be shown. */
  private static String written(ValuePath path) {
    StringBuilder text = new StringBuilder();
    for (ValuePath step : path.steps()) {
      if (step.isItem()) {
        text.append('[').append(step.index()).append(']');
      } else {
        String key = step.key().replace("\\", "\\\\").replace("\"", "\\\"");
        text.append(text.length() == 0 ? "" : ".").append('"').append(key).append('"');
      }
    }
    return text.toString();
  }

  private static Object at(Object top, ValuePath path) {
    Object value = top;
    for (ValuePath step : path.steps()) {
      value =
          step.isItem() ? ((List<?>) value).get(step.index()) : ((Map<?, ?>) value).get(step.key());
    }
    return value;
  }

  private static Object plain(YamlValue value) {
    if (value instanceof Scalar scalar) {
      return scalar.isNull() ? null : scalar.text();
    }
    if (value instanceof Sequence list) {
      List<Object> items = new ArrayList<>();
      list.items().forEach(item -> items.add(plain(item)));
      return items;
    }
    Map<String, Object> entries = new LinkedHashMap<>();
    ((Mapping) value).entries().forEach((key, keyed) -> entries.put(key, plain(keyed.value())));
    return entries;
  }
}
