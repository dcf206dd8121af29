package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** A command: its options and help, and what it does. */
interface Command {

  /** Its options and its help. */
  CommandSpec spec();

  /**
   * Does it.
   *
   * @param call what was given
   * @param screen where to show the answer
   * @param kit what carries it out
   * @return the exit code
   * @throws felloe.plate.BadInput when input or call are wrong
   * @throws CannotWrite when a file could not be written
   */
  int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite;
}
