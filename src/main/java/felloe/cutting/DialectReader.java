package felloe.cutting;

import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Reads a dialect. */
final class DialectReader {

  private static final String WORD = "must be a word such as M3 or G64";

  private DialectReader() {}

  /**
   * Reads one.
   *
   * @throws felloe.plate.BadInput with every problem of the file
   */
  static Dialect read(YamlTree tree) {
    Problems problems = new Problems();
    Fields f = tree.fields(problems);
    f.integer("felloe-dialect").between(1, 1).required();
    String name = f.text("name").required();
    if (!name.isEmpty() && !name.matches("[a-z0-9][a-z0-9.-]*")) {
      f.problem("name", "must be small letters, digits, dots and hyphens", "");
    }
    String title = f.text("title").or(name);
    int decimals =
        f.integer("decimals")
            .atLeast(4, "with fewer, arcs one after another miss 0.002 mm", "write 4")
            .atMost(6)
            .or(4);
    List<String> start = start(f.entry("start"));
    boolean whole = f.bool("whole-circles").or(true);
    boolean quadrants = f.bool("split-at-quadrants").or(false);
    boolean cycles = f.oneOf("drilling", "cycles", "moves").or("cycles").equals("cycles");
    Dialect.Lines lines = lines(f.group("lines"));
    Fields spindle = f.group("spindle");
    String on = word(spindle.entry("on")).orElse("M3");
    String off = word(spindle.entry("off")).orElse("M5");
    double seconds = spindle.number("seconds").between(0, 60).or(3);
    spindle.done();
    Optional<String> coolantOn = Optional.empty();
    Optional<String> coolantOff = Optional.empty();
    if (f.has("coolant")) {
      Fields coolant = f.group("coolant");
      coolantOn = word(coolant.entry("on"));
      coolantOff = word(coolant.entry("off"));
      if (coolantOn.isEmpty() || coolantOff.isEmpty()) {
        coolant.problem("must have on and off", "write {on: M8, off: M9}");
      }
      coolant.done();
    }
    boolean milliseconds = f.oneOf("dwell", "seconds", "milliseconds").or("seconds").length() > 7;
    String pause = f.oneOf("pause", "M0", "M1").or("M0");
    String end = f.oneOf("end", "M2", "M30").or("M2");
    f.text("basis").required();
    f.done();
    problems.throwIfAny();
    return new Dialect(
        name,
        title,
        decimals,
        start,
        whole,
        quadrants,
        cycles,
        lines,
        new Dialect.Words(on, off, coolantOn, coolantOff, pause, end),
        milliseconds,
        seconds);
  }

  private static Dialect.Lines lines(Fields f) {
    int step = f.integer("number-step").between(0, 100).or(0);
    Dialect.Comments comments =
        f.oneOf("comments", Dialect.Comments.class).or(Dialect.Comments.PARENTHESES);
    boolean percent = f.bool("percent-signs").or(false);
    boolean crLf = f.oneOf("ending", "lf", "cr-lf").or("lf").equals("cr-lf");
    f.done();
    return new Dialect.Lines(step, comments, percent, crLf);
  }

  private static List<String> start(Entry entry) {
    List<String> words = new ArrayList<>();
    for (Entry item : entry.list().atLeast(1).entries()) {
      String word = item.text().required();
      if (words.contains(word)) {
        item.problem("stands twice", "take one out");
      } else if (!Dialect.REQUIRED.contains(word) && !Dialect.ALLOWED.contains(word)) {
        item.problem("has no place in the safe start", "allowed: " + allowed());
      } else if (word.equals("G61") && words.contains("G64")
          || word.equals("G64") && words.contains("G61")) {
        item.problem("cannot stand beside the other of G61 and G64", "keep one");
      } else {
        words.add(word);
      }
    }
    TreeSet<String> missing = new TreeSet<>(Dialect.REQUIRED);
    missing.removeAll(words);
    if (!missing.isEmpty() && !words.isEmpty()) {
      entry.problem("must have " + String.join(", ", missing), "add what is missing");
    }
    return words;
  }

  private static String allowed() {
    TreeSet<String> all = new TreeSet<>(Dialect.REQUIRED);
    all.addAll(Dialect.ALLOWED);
    return String.join(", ", all);
  }

  private static Optional<String> word(Entry entry) {
    Optional<String> word = entry.text().optional();
    if (word.isPresent() && !word.get().matches("[GM][0-9]{1,3}([.][0-9])?")) {
      entry.problem(WORD, "");
      return Optional.empty();
    }
    return word;
  }
}
