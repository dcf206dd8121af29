package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.DesignFile;
import felloe.kit.Kit;
import felloe.plate.BadInput;
import felloe.yaml.Problems;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The command {@code felloe}. */
public final class Main {

  private static final int FRAMES = 8;

  private final Screen screen;
  private final Kit kit;

  /**
   * A command line.
   *
   * @param screen where answers and talk go
   * @param kit what carries requests out
   */
  public Main(Screen screen, Kit kit) {
    this.screen = screen;
    this.kit = kit;
  }

  /** Runs the command and ends the program with its exit code. */
  public static void main(String[] args) {
    Screen screen = Screen.system();
    int code = new Main(screen, new Kit(Path.of(""))).run(args);
    System.exit(code);
  }

  /**
   * Runs the command.
   *
   * @return 0 all well; 1 the plate fails a check; 2 the input or the call is wrong; 3 a file could
   *     not be written, or the program has a fault
   */
  public int run(String... args) {
    int code;
    try {
      code = answer(args);
    } catch (ParameterException mistake) {
      CallMistake.lines(mistake).forEach(screen::say);
      code = Exit.WRONG;
    } catch (BadInput bad) {
      bad.lines().forEach(screen::say);
      code = Exit.WRONG;
    } catch (CannotWrite refused) {
      code = cannot(refused);
    } catch (DesignFile.CannotKeep kept) {
      code = cannot(kept.refused());
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
      fault(fault);
      code = Exit.TROUBLE;
    }
    if (screen.out().checkError() && code != Exit.TROUBLE) {
      screen.say("standard output: cannot be written");
      code = Exit.TROUBLE;
    }
    screen.err().flush();
    return code;
  }

  private int cannot(CannotWrite refused) {
    String named = refused.elsewhere() ? " with " + Options.FOLDER : "";
    screen.say(refused.getMessage() + named);
    return Exit.TROUBLE;
  }

  private int answer(String[] args) throws CannotWrite {
    String name = args.length == 0 ? "" : args[0];
    if (args.length == 1 && (name.equals("--version") || name.equals("-V"))) {
      return version();
    }
    Optional<Command> command = Commands.find(name);
    CommandSpec top = command.isPresent() ? Commands.top() : Commands.all();
    if (command.isPresent()) {
      top.addSubcommand(name, command.get().spec());
    }
    ParseResult call = parser(top).parseArgs(args);
    ParseResult last = call;
    while (last.hasSubcommand() && !last.isUsageHelpRequested()) {
      last = last.subcommand();
    }
    refuseValues(call, last);
    refuseTwice(last);
    if (last.isUsageHelpRequested()) {
      screen.data(Help.of(last.commandSpec().commandLine()));
      return Exit.WELL;
    }
    if (call.isVersionHelpRequested()) {
      return version();
    }
    if (command.isEmpty()) {
      screen.err().print(Help.of(top.commandLine()));
      return Exit.WRONG;
    }
    return command.get().run(call.subcommand(), screen, kit);
  }

  /**
   * Values that options do not allow, all of them, and with them what is wrong with the shapes: so
   * that one run tells everything.
   */
  private void refuseValues(ParseResult call, ParseResult last) {
    Problems problems = new Problems();
    for (ParseResult at = call; at != null; at = at.hasSubcommand() ? at.subcommand() : null) {
      Opt.faults(at, problems);
    }
    if (!problems.none()
        && last.commandSpec().positionalParameters().stream()
            .anyMatch(p -> p.paramLabel().equals("SHAPE"))) {
      Options.readable(last, kit.folder(), problems);
    }
    problems.throwIfAny();
  }

  /** The parser itself sees it only where an option stands under no heading of its own. */
  private static void refuseTwice(ParseResult call) {
    for (OptionSpec option : call.matchedOptionsSet()) {
      if (!option.isMultiValue() && Collections.frequency(call.matchedOptions(), option) > 1) {
        throw new OverwrittenOptionException(
            call.commandSpec().commandLine(), option, option.longestName() + " is given twice");
      }
    }
  }

  private int version() {
    screen.line("felloe " + Kit.version());
    return Exit.WELL;
  }

  private static CommandLine parser(CommandSpec top) {
    return new CommandLine(top)
        .setExpandAtFiles(false)
        .setInterpolateVariables(false)
        .setAllowOptionsAsOptionParameters(false)
        .setPosixClusteredShortOptionsAllowed(false);
  }

  /** What to send us, and just as much of the trace as tells where. */
  private void fault(Throwable fault) {
    screen.say(
        "This is a fault in Felloe, not in your file. Nothing was written. Please report it with"
            + " the command, the shape file and these lines:");
    screen.say(
        "  felloe "
            + Kit.version()
            + ", Java "
            + System.getProperty("java.version")
            + ", "
            + System.getProperty("os.name")
            + " "
            + System.getProperty("os.arch"));
    screen.say("  " + fault);
    StackTraceElement[] trace = fault.getStackTrace();
    for (int i = 0; i < Math.min(FRAMES, trace.length); i++) {
      screen.say("    at " + trace[i]);
    }
  }
}
