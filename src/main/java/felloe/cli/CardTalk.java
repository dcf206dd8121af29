package felloe.cli;

import felloe.report.CardCalls;
import felloe.service.ShapeSource;
import felloe.service.Study;
import picocli.CommandLine.ParseResult;

/** The calls that a job card tells, each as it is typed where the shape file lies. */
final class CardTalk {

  private final String shape;
  private final String hub;

  private CardTalk(Study study, ParseResult call) {
    StringBuilder words = new StringBuilder();
    String name =
        study.source() instanceof ShapeSource.OfFile file
            ? file.file().getFileName().toString()
            : study.source().name();
    words.append(' ').append(quoted(name));
    for (String set : study.source().overrides().values()) {
      words.append(' ').append(Options.SETS.name()).append(' ').append(quoted(set));
    }
    this.shape = words.toString();
    this.hub = Options.HUB.in(call).map(h -> " " + Options.HUB.name() + " " + quoted(h)).orElse("");
  }

  /** The calls for a plate. */
  static CardCalls of(Study study, ParseResult call) {
    CardTalk talk = new CardTalk(study, call);
    String stem = study.plate().name();
    String out = " " + Options.FOLDER + " " + Options.USUAL_OUT;
    return new CardCalls(
        talk.typed("card", ""),
        talk.typed("template", " " + TemplateCommand.PRINT_CHECK.name()),
        "felloe layup" + talk.shape + out,
        talk.typed("drill", out),
        talk.typed("cut", " " + CutCommand.PROCESS.name() + " jigsaw"),
        talk.typed("load", out),
        talk.typed("load", " " + LoadCommand.PROOF.name() + out),
        talk.typed(
            "check", " " + CheckCommand.MEASURED.name() + " " + quoted(stem + "-measured.yaml")),
        "felloe layup " + LayupCommand.TESTED.name() + " " + quoted(stem + "-strips.yaml"));
  }

  private String typed(String command, String more) {
    return "felloe " + command + shape + hub + more;
  }

  /** A word as a shell takes it. */
  private static String quoted(String word) {
    return word.matches("[\\w./=:-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
