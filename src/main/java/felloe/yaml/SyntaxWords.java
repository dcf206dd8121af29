package felloe.yaml;

import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Says in plain words what is wrong with a text that is not well-formed YAML. */
final class SyntaxWords {

  private static final String GENERAL_CURE =
      "check the indentation, quotes and brackets of this line and the one above";

  private final String text;
  private final Function<Mark, Place> placeOf;

  SyntaxWords(String text, Function<Mark, Place> placeOf) {
    this.text = text;
    this.placeOf = placeOf;
  }

  /**
   * @param failure what the library threw
   * @param last the last mark that was read, used when the failure has none; may be null
   */
  Problem problem(RuntimeException failure, Mark last) {
    if (!(failure instanceof MarkedYamlEngineException marked)) {
      return lineAt(last).startsWith("%")
          ? directive(last)
          : problem(last, "is not well-formed YAML from here on", GENERAL_CURE);
    }
    String found = marked.getProblem() == null ? "" : marked.getProblem();
    String context = marked.getContext() == null ? "" : marked.getContext();
    Mark at = marked.getProblemMark().orElse(last);
    Optional<Mark> opening = marked.getContextMark();
    if (isTabInIndentation(at) || found.contains("TAB")) {
      return problem(at, "has a tab before its first word", "indent with spaces");
    }
    if (context.contains("quoted scalar") && found.contains("unexpected")) {
      return problem(
          opening.orElse(at),
          "has a quotation mark that is never closed",
          "add the closing mark, or take the opening one out");
    }
    if (context.contains("double-quoted scalar")) {
      return problem(
          at,
          "has a backslash that means nothing",
          "use single quotes around the text, or write two backslashes");
    }
    if (context.contains("flow sequence") || context.contains("flow mapping")) {
      return unclosed(at, opening, context.contains("flow sequence"));
    }
    if (found.contains("mapping values are not allowed")) {
      return problem(
          at,
          "has a colon where no 'key: value' can start",
          "check the indentation; put a text that has a colon in quotes");
    }
    if (found.contains("expected ':'")) {
      return problem(
          opening.orElse(at),
          "is neither 'key: value' nor part of the line above",
          characterAt(opening.orElse(at)).equals("-")
              ? "put a space after the '-'"
              : "add a colon and a space after the key");
    }
    if (found.contains("sequence entries are not allowed")) {
      return problem(
          at,
          "has a '-' where no list can start",
          "start the list on a line of its own below its key");
    }
    if (found.contains("cannot start any token")) {
      return problem(
          at,
          "has a value that starts with a sign that YAML keeps for itself",
          "put the value in quotes");
    }
    if (context.contains("block collection") || context.contains("block mapping")) {
      return astray(at);
    }
    if (context.contains("block scalar")) {
      return problem(
          at, "has a text block (| or >) that is not well formed", "indent its lines evenly");
    }
    if (context.contains("directive") || lineAt(at).startsWith("%")) {
      return directive(at);
    }
    if (found.contains("document start")) {
      return text.startsWith("%") ? directive(at) : astray(at);
    }
    if (found.contains("node content") || found.contains("mapping keys are not allowed")) {
      return problem(
          at,
          "has a '" + characterAt(at) + "' where a value should be",
          "write the value; put a text that starts with this sign in quotes");
    }
    if (context.contains("anchor") || context.contains("alias") || context.contains("tag")) {
      return problem(
          at, "has a value that starts with &, * or !", "put the value in quotes if it is a text");
    }
    return problem(at, "is not well-formed YAML here", GENERAL_CURE);
  }

  private Problem directive(Mark at) {
    String what =
        lineAt(at).startsWith("%") ? "starts with %" : "follows a line that starts with %";
    return problem(at, what + ", which is not read here", "take that line out");
  }

  private Problem leftOver(Mark at) {
    return problem(
        at,
        "has something left over from column " + (at == null ? 1 : at.getColumn() + 1) + " on",
        "take it out, or put the whole value in quotes");
  }

  private Problem astray(Mark at) {
    if (characterAt(at).equals(":")) {
      return problem(at, "has a colon without a key before it", "write the key");
    }
    boolean firstInLine = at != null && lineAt(at).substring(0, column(at)).isBlank();
    return firstInLine
        ? problem(
            at,
            "does not line up with the lines above",
            "start all keys of a group, and all '-' of a list, in the same column")
        : leftOver(at);
  }

  private Problem unclosed(Mark at, Optional<Mark> opening, boolean list) {
    String bracket = list ? "[" : "{";
    if (opening.isPresent() && atEnd(at)) {
      return problem(
          opening.get(),
          "has a '" + bracket + "' that is never closed",
          "close it with '" + (list ? "]" : "}") + "'");
    }
    String from = opening.map(m -> " opened on line " + (m.getLine() + 1)).orElse("");
    return problem(
        at,
        "breaks off what '" + bracket + "'" + from + " began",
        "close it with '" + (list ? "]" : "}") + "', and put commas between the values");
  }

  private boolean isTabInIndentation(Mark at) {
    if (at == null) {
      return false;
    }
    String line = lineAt(at);
    String indentation = line.substring(0, line.length() - line.stripLeading().length());
    return indentation.contains("\t") && at.getColumn() <= indentation.length();
  }

  private Problem problem(Mark at, String wanted, String cure) {
    return new Problem(placeOf.apply(at), "", lineAt(at).strip(), wanted, cure);
  }

  private String lineAt(Mark at) {
    return at == null ? "" : SourceText.line(text, at.getLine());
  }

  private int column(Mark at) {
    String line = lineAt(at);
    int characters = Math.min(at.getColumn(), line.codePointCount(0, line.length()));
    return line.offsetByCodePoints(0, characters);
  }

  private boolean atEnd(Mark at) {
    return at == null || at.getIndex() >= text.codePointCount(0, text.length());
  }

  private String characterAt(Mark at) {
    if (at == null) {
      return "";
    }
    String line = lineAt(at);
    int column = column(at);
    return column < line.length() ? Character.toString(line.codePointAt(column)) : "";
  }
}
