package felloe.cli;

import felloe.document.Block.Depth;
import felloe.document.Report;
import felloe.files.Written;
import felloe.render.HtmlRenderer;
import felloe.render.ResultJson;
import felloe.render.TextRenderer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** How every command shows its answer: text, JSON or HTML, folded or whole. */
final class Answers {

  private static final Opt<Format> FORMAT =
      format("json or html", Format.TEXT, Format.JSON, Format.HTML);
  private static final Opt<Format> WITH_TABLE =
      format("json, html or csv (the table alone)", Format.values());
  private static final Opt<Boolean> ALL =
      Opt.flag("--all", "Show all, not just what matters most.");

  /** Opens what tells where figures come from. */
  static final Opt<Boolean> SOURCES = Opt.flag("--sources", "Tell where each figure comes from.");

  /** What an option opens; see {@link #opener}. */
  private static final List<Depth> FOLDS = List.of(Depth.ALL, Depth.SOURCES);

  private static final Pattern STRESSED =
      Pattern.compile("^(caution|FAILS?|NOT AS WANTED|CANNOT BE DONE|DO NOT DRILL)\\b");

  /** How to answer. */
  enum Format {
    TEXT,
    JSON,
    HTML,
    /** A table for a spreadsheet, of commands that have one. */
    CSV
  }

  private Answers() {}

  private static Opt<Format> format(String others, Format... allowed) {
    String help = "How to answer: text (usual, for people to read), " + others + ".";
    return Opt.one("--format", "FORMAT", Read.choice(allowed), help);
  }

  /** The option of a command whose answer has no folds. */
  static void format(CommandSpec spec) {
    Options.add(spec, FORMAT);
  }

  /** The options by which answers are shown. */
  static void options(CommandSpec spec) {
    Options.add(spec, ALL, SOURCES, FORMAT);
  }

  /** The same for a command whose answer is a table as well. */
  static void optionsWithTable(CommandSpec spec) {
    Options.add(spec, ALL, SOURCES, WITH_TABLE);
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
    show(call, screen, report, () -> ResultJson.text(result));
  }

  /**
   * Shows an answer for which files were written.
   *
   * @param files what came of it
   */
  static void show(
      ParseResult call, Screen screen, Object result, Written files, Supplier<Report> report) {
    show(call, screen, report, () -> ResultJson.text(result, Map.of("files", files.files())));
    say(screen, files);
  }

  /** Says what was written, and what beside it was not. */
  static void say(Screen screen, Written files) {
    files.files().forEach(file -> screen.say("Written: " + file));
    for (Path file : files.kept()) {
      screen.say(
          file
              + " is there already and was left as it is, since readings may be in it; move it for"
              + " a new form.");
    }
    if (!files.older().isEmpty()) {
      screen.say(
          "OLDER, made before the shape was changed: "
              + files.older().stream().map(Path::toString).collect(Collectors.joining(", "))
              + ". Make them anew or delete them; do not work by them.");
    }
  }

  private static void show(
      ParseResult call, Screen screen, Supplier<Report> report, Supplier<String> json) {
    switch (format(call)) {
      case JSON -> screen.data(json.get());
      case HTML -> screen.data(HtmlRenderer.page(report.get()));
      case CSV -> throw new IllegalStateException("a table is written by its own command");
      case TEXT -> text(call, screen, report.get());
    }
  }

  /** A verdict at a line's beginning in colour; it says the same without. */
  private static String stressed(String line) {
    return STRESSED
        .matcher(line)
        .replaceFirst(
            word ->
                (word.group().startsWith("c") ? "\u001b[33m" : "\u001b[1;31m")
                    + word.group()
                    + "\u001b[0m");
  }

  private static Opt<Boolean> opener(Depth depth) {
    return depth == Depth.ALL ? ALL : SOURCES;
  }

  private static void text(ParseResult call, Screen screen, Report report) {
    Set<Depth> open = EnumSet.of(Depth.SCREEN);
    for (Depth depth : FOLDS) {
      if (opener(depth).given(call)) {
        open.add(depth);
      }
    }
    for (String line : TextRenderer.lines(report, screen.width(), open)) {
      screen.line(screen.colour() ? stressed(line) : line);
    }
    List<String> more = new ArrayList<>();
    for (Depth depth : FOLDS) {
      if (TextRenderer.hides(report, depth, open)) {
        more.add(opener(depth).name());
      }
    }
    if (!more.isEmpty()) {
      screen.line("More: " + String.join(", ", more) + ".");
    }
  }
}
