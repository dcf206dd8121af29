package felloe.cli;

import felloe.document.Block.Depth;
import felloe.document.Report;
import felloe.render.HtmlRenderer;
import felloe.render.ResultJson;
import felloe.render.TextRenderer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** How every command shows its answer: text, JSON or HTML, folded or whole. */
final class Answers {

  private static final Opt<Format> FORMAT =
      Opt.one(
          "--format",
          "FORMAT",
          Read.choice(Format.class),
          "How to answer: text (usual, for people to read), json or html.");
  private static final Opt<Boolean> ALL =
      Opt.flag("--all", "Show all, not just what matters most.");
  private static final Opt<Boolean> SOURCES =
      Opt.flag("--sources", "Tell where each figure comes from.");

  /** How to answer. */
  enum Format {
    TEXT,
    JSON,
    HTML
  }

  private Answers() {}

  /** The options by which answers are shown. */
  static void options(CommandSpec spec) {
    spec.addOption(ALL.spec());
    spec.addOption(SOURCES.spec());
    spec.addOption(FORMAT.spec());
  }

  /** The format that was asked for. */
  static Format format(ParseResult call) {
    return FORMAT.in(call).orElse(Format.TEXT);
  }

  /**
   * Shows an answer.
   *
   * @param result its record, for JSON
   * @param report the same told, made only when it is wanted
   */
  static void show(ParseResult call, Screen screen, Object result, Supplier<Report> report) {
    switch (format(call)) {
      case JSON -> screen.data(ResultJson.text(result));
      case HTML -> screen.data(HtmlRenderer.page(report.get()));
      case TEXT -> text(call, screen, report.get());
    }
  }

  private static void text(ParseResult call, Screen screen, Report report) {
    Set<Depth> open = EnumSet.of(Depth.SCREEN);
    Map<Depth, Opt<Boolean>> folds = new LinkedHashMap<>();
    folds.put(Depth.ALL, ALL);
    folds.put(Depth.SOURCES, SOURCES);
    folds.forEach(
        (depth, option) -> {
          if (option.given(call)) {
            open.add(depth);
          }
        });
    TextRenderer.lines(report, screen.width(), open).forEach(screen::line);
    List<String> more = new ArrayList<>();
    folds.forEach(
        (depth, option) -> {
          if (TextRenderer.hides(report, depth, open)) {
            more.add(option.name());
          }
        });
    if (!more.isEmpty()) {
      screen.line("More: " + String.join(", ", more) + ".");
    }
  }
}
