package felloe.cli;

import felloe.plate.Problem;
import felloe.yaml.Nearest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** A call that could not be understood, in our own words. */
final class CallMistake {

  private CallMistake() {}

  /** Lines that say what is wrong and where to look. */
  static List<String> lines(ParameterException mistake) {
    String command = mistake.getCommandLine().getCommandSpec().qualifiedName();
    List<String> lines = new ArrayList<>();
    lines.add(command + ": " + words(mistake));
    String help =
        command.equals("felloe") ? "felloe help" : command.replaceFirst("felloe", "felloe help");
    lines.add("See '" + help + "'.");
    return lines;
  }

  private static String words(ParameterException mistake) {
    if (mistake instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched);
    }
    if (mistake instanceof OverwrittenOptionException twice) {
      ArgSpec option = twice.getOverwritten();
      return Opt.name(option) + " is given twice; give it once";
    }
    if (mistake instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      ArgSpec arg = missing.getMissing().get(0);
      return arg.isOption()
          ? Opt.name(arg) + " needs a value: " + Opt.name(arg) + " " + arg.paramLabel()
          : arg.paramLabel() + " is missing";
    }
    if (mistake instanceof MaxValuesExceededException) {
      return "too many values: " + mistake.getMessage();
    }
    return mistake.getMessage();
  }

  private static String unmatched(UnmatchedArgumentException mistake) {
    String given = mistake.getUnmatched().get(0);
    CommandLine at = mistake.getCommandLine();
    boolean option = given.startsWith("-") && given.length() > 1;
    int value = option ? given.indexOf('=') : -1;
    String word = value < 0 ? given : given.substring(0, value);
    String shown = "'" + Problem.shown(word) + "'";
    if (!option && at.getSubcommands().isEmpty()) {
      return "does not expect " + shown + " here";
    }
    Collection<String> known =
        option ? at.getCommandSpec().optionsMap().keySet() : at.getSubcommands().keySet();
    String near =
        Nearest.to(word, List.copyOf(known))
            .map(nearest -> "; did you mean '" + nearest + "'?")
            .orElse("");
    return "unknown " + (option ? "option " : "command ") + shown + near;
  }
}
