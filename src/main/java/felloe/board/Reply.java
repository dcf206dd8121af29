package felloe.board;

import felloe.out.Json;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Verdict;
import felloe.report.BesideDrawing;
import felloe.report.BesideDrawing.Open;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Sequence;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The state of a desk as a page takes it. */
final class Reply {

  private Reply() {}

  /**
   * The state.
   *
   * @param form key of the form that the page has: the same is not sent again
   * @param other what is laid over the plate
   */
  static Json.Members of(
      Desk.State state, Schema schema, String name, int form, Optional<Plate> other) {
    Seen seen = state.seen();
    Seen shown = state.good();
    List<Handle> handles = handles(schema, seen, shown);
    Map<Place, String> ways = shown.tree().map(tree -> ways(tree.root())).orElse(Map.of());
    List<Open> open = shown.study().map(BesideDrawing::open).orElse(List.of());
    Json.Members reply =
        Json.object()
            .with("revision", state.revision())
            .with("name", name)
            .with("text", seen.text())
            .with("saved", state.saved())
            .with("disk", state.disk())
            .with("kept", state.kept())
            .with("undo", state.at() > 0)
            .with("redo", state.at() < state.steps().size() - 1)
            .with("at", state.at())
            .with("steps", Json.array(state.steps(), step -> Json.text(step.did())))
            .with("plate", seen.study().isPresent())
            .with("stale", seen != shown)
            .with("title", title(shown))
            .with("drawing", drawing(shown, open, handles, ways, other))
            .with("problems", Json.array(seen.problems(), one -> problem(one, seen)))
            .with("verdict", verdict(seen, shown))
            .with("tone", seen.study().map(s -> tone(s.verdict())).orElse("fail"))
            .with("findings", Json.array(open, one -> finding(one, ways)))
            .with("figures", Json.array(figures(shown), Reply::figure));
    Optional<YamlTree> tree = seen.tree();
    if (tree.isPresent()) {
      Form.Values values = Form.values(tree.get().root());
      reply = reply.with("form_key", values.key()).with("values", values(values.byPath()));
      if (values.key() != form) {
        reply = reply.with("form", Form.of(schema, tree.get().root()));
      }
    }
    return reply;
  }

  /** What is told of the last plate that could be drawn is never told of what is none. */
  private static String verdict(Seen seen, Seen shown) {
    if (seen.study().isPresent()) {
      return BesideDrawing.verdict(seen.study().get());
    }
    return BesideDrawing.NONE
        + (seen == shown
            ? ""
            : shown.study().map(s -> BesideDrawing.LAST + BesideDrawing.verdict(s)).orElse(""));
  }

  private static String title(Seen shown) {
    return shown
        .study()
        .map(s -> s.plate().title())
        .or(() -> shown.sketch().map(s -> s.title()))
        .orElse("");
  }

  private static String drawing(
      Seen shown,
      List<Open> open,
      List<Handle> handles,
      Map<Place, String> ways,
      Optional<Plate> other) {
    return shown
        .study()
        .map(s -> Face.of(s.plate(), open, handles, ways, other))
        .or(() -> shown.sketch().map(s -> Face.of(s, handles, ways)))
        .orElse("");
  }

  /** What can be taken hold of: on the text as it is, where it can be read at all. */
  static List<Handle> handles(Schema schema, Seen seen, Seen shown) {
    if (seen.tree().isEmpty()) {
      return List.of();
    }
    YamlValue root = seen.tree().get().root();
    return shown
        .study()
        .map(s -> s.plate().outline())
        .or(() -> shown.sketch().map(s -> s.outline()))
        .map(outline -> Handles.of(schema, root, outline))
        .orElse(List.of());
  }

  private static List<BesideDrawing.Line> figures(Seen shown) {
    return shown.study().map(BesideDrawing::figures).orElse(List.of());
  }

  private static Json figure(BesideDrawing.Line line) {
    return Json.object().with("name", line.name()).with("words", line.words());
  }

  /** A problem with the way to what it is about: the one it names, else what is written there. */
  private static Json problem(Problem problem, Seen seen) {
    String value = problem.value().isEmpty() ? "" : "'" + problem.value() + "' ";
    String cure = problem.cure().isEmpty() ? "" : "; " + problem.cure();
    Optional<YamlValue> root = seen.tree().map(YamlTree::root);
    boolean way = root.flatMap(r -> Editing.find(r, problem.who())).isPresent();
    String written = root.map(r -> ways(r).getOrDefault(problem.place(), "")).orElse("");
    String subject = way || problem.who().isEmpty() || written.isEmpty() ? "" : problem.who() + " ";
    return Json.object()
        .with("path", way || written.isEmpty() ? problem.who() : written)
        .with("words", subject + value + problem.wanted() + cure)
        .with("line", problem.place().line())
        .with("column", problem.place().column());
  }

  private static Json finding(Open open, Map<Place, String> ways) {
    Finding finding = open.finding();
    return Json.object()
        .with("head", open.head())
        .with("is", open.is())
        .with("advice", open.advice())
        .with("tone", tone(finding.verdict()))
        .with("placed", finding.at().isPresent())
        .with("path", ways.getOrDefault(finding.place(), ""))
        .with("line", finding.place().line());
  }

  private static String tone(Verdict verdict) {
    return switch (verdict) {
      case PASS -> "well";
      case CAUTION -> "caution";
      case FAIL -> "fail";
    };
  }

  private static Json values(Map<String, String> values) {
    Map<String, Json> members = new LinkedHashMap<>();
    values.forEach((path, text) -> members.put(path, Json.text(text)));
    return new Json.Members(members);
  }

  /** From where a value is written to the way to it: of what starts there, the outermost. */
  private static Map<Place, String> ways(YamlValue root) {
    Map<Place, String> ways = new HashMap<>();
    walk(root, ways);
    return ways;
  }

  private static void walk(YamlValue value, Map<Place, String> ways) {
    if (!value.path().isEmpty()) {
      ways.putIfAbsent(value.place(), value.path());
    }
    if (value instanceof Mapping group) {
      group
          .entries()
          .forEach(
              (key, one) -> {
                ways.putIfAbsent(one.keyPlace(), one.value().path());
                walk(one.value(), ways);
              });
    } else if (value instanceof Sequence list) {
      list.items().forEach(item -> walk(item, ways));
    }
  }
}
