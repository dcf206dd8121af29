package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.files.CannotWrite;
import felloe.out.Json;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.render.HtmlRenderer;
import felloe.report.MeasureReport;
import felloe.service.HubSurvey;
import felloe.service.MeasuredHub;
import felloe.yaml.TextEdit;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A hub that is measured with a calliper on a page: the command line's survey, reading by reading.
 */
final class Calliper {

  private static final List<String> ON = List.of("holes", "screws", "threads");

  /** Readings begin behind the head of a measured file. */
  private static final int HEAD = 3;

  private static final int MOST = 200;
  private static final String NAME = "readings";

  private final Bench bench;

  Calliper(Bench bench) {
    this.bench = bench;
  }

  /** Which call leads where; empty where there is nothing. */
  Optional<Answer> answer(Call call) throws CannotWrite {
    if (call.way().size() == 1) {
      return Optional.of(Answer.html(page(call)));
    }
    if (call.way().size() != 2 || !call.changes()) {
      return Optional.empty();
    }
    return switch (call.step(1)) {
      case "look" -> Optional.of(Answer.json(200, look(call)));
      case "save" -> Optional.of(save(call));
      default -> Optional.empty();
    };
  }

  /**
   * Readings as a page sends them, and the measured file that they make.
   *
   * @param text the file
   * @param rows of the page, in the order of its lines
   */
  private record Typed(String text, List<Integer> rows) {

    static Typed of(Call call) {
      StringBuilder text = new StringBuilder();
      List<Integer> rows = new ArrayList<>();
      text.append("holes: ").append(plain(call.word("holes"))).append("\non: ");
      text.append(plain(call.word("on"))).append('\n');
      String[] lines = call.word("readings").split("\n", MOST + 1);
      StringBuilder all = new StringBuilder();
      for (int i = 0; i < Math.min(MOST, lines.length); i++) {
        String[] parts = lines[i].strip().split(";", -1);
        if (parts.length == 4 && !parts[3].isBlank()) {
          all.append(reading(parts));
          rows.add(i);
        }
      }
      text.append("readings:").append(rows.isEmpty() ? " []" : "").append('\n').append(all);
      return new Typed(text.toString(), rows);
    }

    private static String reading(String[] parts) {
      boolean one = parts[2].equals("diameter");
      return " - {"
          + (one ? "hole: " : "from: ")
          + plain(parts[0])
          + (one ? "" : ", to: " + plain(parts[1]))
          + ", over: "
          + plain(parts[2])
          + ", reads: "
          + plain(parts[3])
          + "}\n";
    }

    /** A word that cannot break the file that it is put into. */
    private static String plain(String word) {
      String stripped = word.strip();
      return stripped.matches("-?[A-Za-z0-9.]{1,20}( in| mm| cm)?")
          ? stripped
          : TextEdit.quoted(stripped.replaceAll("\\p{Cntrl}", " "));
    }

    /** The row of a line of the file; empty where it is none of a reading. */
    Optional<Integer> row(int line) {
      int index = line - HEAD - 1;
      return index >= 0 && index < rows.size() ? Optional.of(rows.get(index)) : Optional.empty();
    }

    MeasuredHub survey(Path folder) {
      return HubSurvey.soFar(NAME, text, folder);
    }
  }

  private record Fault(int row, String words) {
    Json.Members reply() {
      return Json.object().with("row", row).with("words", words);
    }
  }

  private Json.Members look(Call call) {
    Typed typed = Typed.of(call);
    MeasuredHub hub;
    try {
      hub = typed.survey(bench.folder());
    } catch (BadInput bad) {
      return Json.object().with("faults", Json.array(faults(typed, bad), Fault::reply));
    }
    List<Fault> slips = new ArrayList<>();
    for (MeasureReport.Slip slip : MeasureReport.slips(hub)) {
      typed.row(slip.line()).ifPresent(row -> slips.add(new Fault(row, slip.words())));
    }
    boolean begun = !typed.rows().isEmpty();
    return Json.object()
        .with("faults", Json.array(slips, Fault::reply))
        .with("sketch", HubSketch.of(hub))
        .with("words", MeasureReport.soFar(hub).orElse(""))
        .with("told", hub.told())
        .with("article", begun ? HtmlRenderer.article(report(hub)) : "")
        .with(
            "next",
            Json.array(
                hub.next(),
                one ->
                    Json.object()
                        .with("from", one.from())
                        .with("to", one.to())
                        .with("over", one.over())
                        .with("words", one.words())));
  }

  private static felloe.document.Report report(MeasuredHub hub) {
    return hub.told() ? MeasureReport.of(hub) : MeasureReport.refused(hub);
  }

  /** What is wrong, beside its row; row -1 where it is of no single reading. */
  private static List<Fault> faults(Typed typed, BadInput bad) {
    return bad.problems().stream()
        .map(p -> new Fault(typed.row(p.place().line()).orElse(-1), words(p)))
        .toList();
  }

  private static String words(Problem problem) {
    return (problem.value().isEmpty() ? "" : "'" + problem.value() + "' ")
        + problem.wanted()
        + (problem.cure().isEmpty() ? "" : "; " + problem.cure());
  }

  /** Writes the hub file, never over another. */
  private Answer save(Call call) throws CannotWrite {
    MeasuredHub hub = Typed.of(call).survey(bench.folder());
    hub.refuseUntold();
    String name = call.word("name").strip();
    Path file = bench.free(name);
    String thread = call.word("thread").strip();
    Place asked = Place.ofFile("thread");
    MeasuredHub.Written written =
        hub.written(
            thread.isEmpty() ? Optional.empty() : Optional.of(new Requested<>(thread, asked)),
            asked);
    bench.kit().writeNew(file, written.text(), "choose another name");
    return Answer.json(
        200,
        Json.object()
            .with("saved", name)
            .with("words", "Wrote " + name + ": " + written.title() + ".")
            .with(
                "ask", "/start/questions?hub=" + URLEncoder.encode(name, StandardCharsets.UTF_8)));
  }

  private String page(Call call) {
    String holes = call.word("holes").strip();
    String on = ON.contains(call.word("on")) ? call.word("on") : ON.get(0);
    String wrong = "";
    if (!holes.isEmpty()) {
      try {
        Typed.of(call).survey(bench.folder());
        return Parts.text("calliper.html")
            .replace("{{holes}}", escaped(holes))
            .replace("{{on}}", escaped(on))
            .replace("{{numbers}}", numbers(Integer.parseInt(holes)));
      } catch (BadInput bad) {
        wrong = words(bad.problems().get(0));
      } catch (NumberFormatException none) {
        wrong = "'" + holes + "' is no whole number; write how many there are";
      }
    }
    StringBuilder choices = new StringBuilder();
    for (String one : ON) {
      choices.append("<label class=\"radio\"><input type=\"radio\" name=\"on\" value=\"");
      choices.append(one).append(one.equals(on) ? "\" checked> " : "\"> ").append(one);
      choices.append("</label>\n");
    }
    return Parts.text("holes.html")
        .replace("{{holes}}", escaped(holes))
        .replace("{{wrong}}", escaped(wrong))
        .replace("{{invalid}}", wrong.isEmpty() ? "" : " aria-invalid=\"true\"")
        .replace("{{on}}", choices);
  }

  private static String numbers(int count) {
    StringBuilder all = new StringBuilder();
    for (int i = 1; i <= count; i++) {
      all.append("<option>").append(i).append("</option>");
    }
    return all.toString();
  }
}
