package felloe.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** All commands, in the groups that the help shows them in. */
final class Commands {

  /** Commands that belong together. */
  static final List<Group> GROUPS =
      List.of(
          new Group(
              "Start",
              List.of(
                  new Entry("new", "start a shape file from a family", NewCommand::new),
                  new Entry("hub", "hubs that are known: list, show", HubCommand::new))),
          new Group(
              "Look",
              List.of(
                  new Entry("check", "review the plate and its hub fit", CheckCommand::new),
                  new Entry("show", "key figures, exact geometry, picture", ShowCommand::new),
                  new Entry("drill", "hole schedule", DrillCommand::new))),
          new Group(
              "Make",
              List.of(
                  new Entry("make", "the whole kit", MakeCommand::new),
                  new Entry("template", "true-scale paper templates", TemplateCommand::new))),
          new Group(
              "Help",
              List.of(
                  new Entry("help", "help on a command", HelpCommand::new),
                  new Entry("completion", "script for bash and zsh", CompletionCommand::new))));

  private Commands() {}

  /**
   * Commands that belong together.
   *
   * @param heading of the group
   * @param entries in order
   */
  record Group(String heading, List<Entry> entries) {}

  /**
   * A command that may be called.
   *
   * @param name by which it is called
   * @param line what it does, in a few words
   * @param maker makes it
   */
  record Entry(String name, String line, Supplier<Command> maker) {}

  /** The command of a name. */
  static Optional<Command> find(String name) {
    for (Group group : GROUPS) {
      for (Entry entry : group.entries()) {
        if (entry.name().equals(name)) {
          return Optional.of(entry.maker().get());
        }
      }
    }
    return Optional.empty();
  }

  /** The program without its commands. */
  static CommandSpec top() {
    CommandSpec spec =
        Options.command(
            "felloe",
            "Plans flat-plate steering wheels from one shape file: true-scale templates, hub fit,"
                + " review.");
    spec.usageMessage().synopsisSubcommandLabel("COMMAND");
    spec.addOption(
        OptionSpec.builder("-V", "--version")
            .versionHelp(true)
            .order(1001)
            .description("Show the version.")
            .build());
    Options.examples(
        spec,
        "  felloe new round curlew.yaml",
        "  felloe check curlew.yaml",
        "  felloe make curlew.yaml --paper A4",
        "  felloe help make",
        "",
        "Exit codes: 0 all well; 1 the plate fails a check; 2 input or call are wrong; 3 a file",
        "could not be written. Figures go to standard output, talk to standard error.",
        "",
        "For closed-course use at the builder's own judgement; not for public roads. Event rules,",
        "local codes and a qualified person have the last word.");
    return spec;
  }

  /** The program with all commands: dear to build, so only for help, completion and mistakes. */
  static CommandSpec all() {
    CommandSpec spec = top();
    for (Group group : GROUPS) {
      for (Entry entry : group.entries()) {
        spec.addSubcommand(entry.name(), entry.maker().get().spec());
      }
    }
    return spec;
  }
}
