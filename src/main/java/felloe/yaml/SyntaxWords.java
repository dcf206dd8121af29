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
      return problem(last, "is not well-formed YAML from here on", GENERAL_CURE);
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
          "add a colon and a space after the key");
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
      return problem(
          at,
          "does not line up with the lines above",
          "start all keys of a group, and all '-' of a list, in the same column");
    }
    if (context.contains("block scalar")) {
      return problem(
          at, "has a text block (| or >) that is not well formed", "indent its lines evenly");
    }
    if (context.contains("directive") || found.contains("directive")) {
      return problem(at, "starts with %, which is not read here", "take the line out");
    }
    if (context.contains("anchor") || context.contains("alias") || context.contains("tag")) {
      return problem(
          at, "has a value that starts with &, * or !", "put the value in quotes if it is a text");
    }
    return problem(at, "is not well-formed YAML here", GENERAL_CURE);
  }

  private Problem unclosed(Mark at, Optional<Mark> opening, boolean list) {
    String bracket = list ? "[" : "{";
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
    String line = SourceText.line(text, at.getLine());
    String indentation = line.substring(0, line.length() - line.stripLeading().length());
    return indentation.contains("\t") && at.getColumn() <= indentation.length();
  }

  private Problem problem(Mark at, String wanted, String cure) {
    String line = at == null ? "" : SourceText.line(text, at.getLine()).strip();
    return new Problem(placeOf.apply(at), "", line, wanted, cure);
  }
}
