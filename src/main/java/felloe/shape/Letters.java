package felloe.shape;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Single-line letters and marks with the proportions of ISO 3098, type B, vertical. Capitals alone:
 * a small letter is drawn as its capital.
 *
 * @param letters each letter by its character
 * @param marks each mark by its word
 * @param lineWidth width of a line for letters of height 1
 * @param letterGap room between two letters of height 1
 * @param wordGap room between two words
 * @param clear room between the side of a line and an edge of the plate, mm
 */
public record Letters(
    Map<String, Form> letters,
    Map<String, Form> marks,
    double lineWidth,
    double letterGap,
    double wordGap,
    double clear) {

  private static final String RESOURCE = "/felloe/letters.yaml";

  /** Capitals are so high in the resource's units. */
  private static final double UNITS = 10;

  /**
   * A letter or mark of height 1 that stands on the x axis and begins at x = 0.
   *
   * @param width how far it reaches
   * @param strokes its lines
   */
  public record Form(double width, List<List<Segment>> strokes) {}

  /** The program's own letters. Read anew at each call; keep them. */
  public static Letters standard() {
    YamlTree tree;
    try (InputStream in = Letters.class.getResourceAsStream(RESOURCE)) {
      tree = YamlTree.read("letters.yaml", in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Problems problems = new Problems();
    Fields top = tree.fields(problems);
    double line = top.number("line").positive().required();
    double letterGap = top.number("between-letters").positive().required();
    double wordGap = top.number("between-words").positive().required();
    double clear = top.length("clear").positive().required();
    top.text("basis").required();
    Map<String, Form> letters = forms(top, "letters");
    Map<String, Form> marks = forms(top, "marks");
    top.done();
    problems.throwIfAny();
    return new Letters(letters, marks, line / UNITS, letterGap / UNITS, wordGap / UNITS, clear);
  }

  private static Map<String, Form> forms(Fields top, String key) {
    Map<String, Form> forms = new LinkedHashMap<>();
    for (Fields f : top.list(key).mappings()) {
      String of = f.text("of").required();
      double width = f.number("width").notNegative().required();
      List<List<Segment>> strokes = new ArrayList<>();
      f.list("lines").atLeast(1).texts().forEach(line -> strokes.add(stroke(line)));
      f.build(() -> new Form(width / UNITS, strokes)).ifPresent(form -> forms.put(of, form));
    }
    return forms;
  }

  private static List<Segment> stroke(String line) {
    List<Segment> stroke = new ArrayList<>();
    Point at = null;
    double rise = 0;
    for (String word : line.split(" ")) {
      if (word.startsWith("(")) {
        rise = Double.parseDouble(word.substring(1, word.length() - 1)) / UNITS;
        continue;
      }
      String[] xy = word.split(",");
      Point to = new Point(Double.parseDouble(xy[0]) / UNITS, Double.parseDouble(xy[1]) / UNITS);
      if (at != null) {
        stroke.add(rise == 0 ? new Line(at, to) : Arc.withRise(at, to, rise));
      }
      at = to;
      rise = 0;
    }
    return List.copyOf(stroke);
  }

  /** The letters of a text that there are none of, each once. */
  List<String> lacking(String text) {
    return characters(text).stream()
        .filter(c -> !c.isBlank() && !letters.containsKey(c))
        .distinct()
        .toList();
  }

  /** All characters that can be engraved, in one text. */
  String known() {
    return String.join(" ", letters.keySet());
  }

  private static List<String> characters(String text) {
    return text.toUpperCase(Locale.ROOT).codePoints().mapToObj(Character::toString).toList();
  }

  /**
   * A text of height 1, begun at x = 0 on the x axis.
   *
   * @return empty when it has no line at all
   */
  public Optional<Form> text(String text) {
    List<List<Segment>> strokes = new ArrayList<>();
    double x = 0;
    double width = 0;
    for (String c : characters(text)) {
      if (c.isBlank()) {
        x = width + wordGap;
        continue;
      }
      Form letter = letters.get(c);
      for (List<Segment> stroke : letter.strokes()) {
        strokes.add(moved(stroke, RigidTransform.shift(x, 0)));
      }
      width = x + letter.width();
      x = width + letterGap;
    }
    return strokes.isEmpty() ? Optional.empty() : Optional.of(new Form(width, strokes));
  }

  /** A stroke after a rigid motion. */
  public static List<Segment> moved(List<Segment> stroke, RigidTransform motion) {
    return stroke.stream().map(segment -> segment.moved(motion)).toList();
  }

  /** A stroke made larger about the origin. */
  public static List<Segment> scaled(List<Segment> stroke, double factor) {
    List<Segment> scaled = new ArrayList<>();
    for (Segment s : stroke) {
      Point from = s.from().times(factor);
      Point to = s.to().times(factor);
      scaled.add(
          s instanceof Arc arc
              ? new Arc(from, to, arc.centre().times(factor), arc.radius() * factor, arc.sweep())
              : new Line(from, to));
    }
    return List.copyOf(scaled);
  }
}
