package felloe.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** All commands, in the groups that the help shows them in. */
final class Commands {

  /** The groups that the help shows, with a few words on each command. */
  static final List<Group> GROUPS =
      List.of(
          new Group(
              "Start",
              List.of(
                  new Entry("new", "start a shape file, or bring in an outline"),
                  new Entry("board", "see the plate in the browser while you change it"),
                  new Entry("hub", "hubs: list, show; measure one"))),
          new Group(
              "Look",
              List.of(
                  new Entry("check", "review the plate and its hub fit"),
                  new Entry("show", "key figures, exact geometry, picture"),
                  new Entry("drill", "order of work at the drill, screws, hole schedule"),
                  new Entry("layup", "plies, cloth, resin, cost; stacks; broken test strips"),
                  new Entry("load", "how it bends under the hands, and what thickness would do"),
                  new Entry("grips", "how grips feel and weigh; files to print or saw them"),
                  new Entry("cockpit", "whether the wheel is clear of knees, dash, levers"))),
          new Group(
              "Make",
              List.of(
                  new Entry("make", "the whole kit"),
                  new Entry("card", "the job card: drawing, bill, order of work, readings"),
                  new Entry("template", "true-scale paper templates"),
                  new Entry("jig", "a template and a drill jig to print"),
                  new Entry("cut", "files for router, laser, waterjet; rough lines for a jigsaw"))),
          new Group(
              "Help",
              List.of(
                  new Entry("help", "help on a command"),
                  new Entry("completion", "script for bash and zsh"))));

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
   */
  record Entry(String name, String line) {}

  /** The command of a name; only that one is made, and without lambdas, which cost each start. */
  static Optional<Command> find(String name) {
    Command command =
        switch (name) {
          case "new" -> new NewCommand();
          case "board" -> new BoardCommand();
          case "hub" -> new HubCommand();
          case "check" -> new CheckCommand();
          case "show" -> new ShowCommand();
          case "drill" -> new DrillCommand();
          case "layup" -> new LayupCommand();
          case "load" -> new LoadCommand();
          case "grips" -> new GripsCommand();
          case "make" -> new MakeCommand();
          case "card" -> new CardCommand();
          case "template" -> new TemplateCommand();
          case "cockpit" -> new CockpitCommand();
          case "jig" -> new JigCommand();
          case "cut" -> new CutCommand();
          case "help" -> new HelpCommand();
          case "completion" -> new CompletionCommand();
          default -> null;
        };
    return Optional.ofNullable(command);
  }

  /** The program without its commands. */
  static CommandSpec top() {
    CommandSpec spec =
        Options.command(
            "felloe",
            "Plans flat-plate steering wheels from one shape file: true-scale templates, hub fit,"
                + " review, cut files.");
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
        spec.addSubcommand(entry.name(), find(entry.name()).orElseThrow().spec());
      }
    }
    return spec;
  }
}
