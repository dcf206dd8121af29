package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.service.NewShape;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.yaml.BuiltIn;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The first page: the shapes of the folder, families to start from, examples. */
final class Beginning {

  /** Examples that come with the program; each says in its first lines that it is invented. */
  private static final List<String> EXAMPLES = List.of("heron", "bittern", "dunlin", "avocet");

  private final Bench bench;

  Beginning(Bench bench) {
    this.bench = bench;
  }

  /** The page. */
  String page() {
    StringBuilder here = new StringBuilder();
    for (String name : bench.names()) {
      here.append("<li><a href=\"/shape/").append(escaped(name)).append("\">");
      here.append(escaped(name)).append("</a></li>\n");
    }
    String none = "<li>No shape file yet.</li>";
    StringBuilder families = new StringBuilder();
    for (String family : NewShape.families()) {
      families.append(card("family", family, family.replace('-', ' '), NewShape.text(family)));
    }
    StringBuilder examples = new StringBuilder();
    for (String name : EXAMPLES) {
      examples.append(card("example", name, "", example(name)));
    }
    return Parts.text("start.html")
        .replace("{{here}}", here.isEmpty() ? none : here)
        .replace("{{families}}", families)
        .replace("{{examples}}", examples);
  }

  private static String example(String name) {
    return BuiltIn.text("/felloe/board/shapes/" + name + ".yaml");
  }

  private static String card(String kind, String name, String title, String text) {
    Study study = studied(name, text);
    String drawing = drawing(study);
    String head = title.isEmpty() ? study.plate().title() : title;
    return "<li>"
        + drawing
        + "<form method=\"post\" action=\"/start\"><input type=\"hidden\" name=\""
        + kind
        + "\" value=\""
        + escaped(name)
        + "\"><p><strong>"
        + escaped(head)
        + "</strong></p><p><label>File name <input type=\"text\" name=\"name\" value=\""
        + escaped("my-" + name)
        + ".yaml\"></label></p><p><button type=\"submit\">Start with"
        + " this</button></p></form></li>\n";
  }

  /** A text as a picture. */
  static String drawing(String name, String text) {
    return drawing(studied(name, text));
  }

  private static String drawing(Study study) {
    return Face.of(study.plate(), List.of(), List.of(), Map.of(), Optional.empty());
  }

  private static Study studied(String name, String text) {
    return new Studies(java.nio.file.Path.of(""), Optional.empty())
        .one(ShapeSource.text(name + ".yaml", text));
  }

  /**
   * Begins a shape and leads to it.
   *
   * @throws BadInput when it cannot be begun
   */
  Answer begin(Call call) {
    String name = call.word("name").strip();
    String text;
    if (!call.word("family").isEmpty()) {
      text = NewShape.text(call.word("family"));
    } else if (EXAMPLES.contains(call.word("example"))) {
      text = example(call.word("example"));
    } else {
      throw new BadInput(
          new Problem(Place.ofFile("start"), "", "", "is not said with what", "choose one"));
    }
    bench.begin(name, text);
    return Answer.moved("/shape/" + name);
  }
}
