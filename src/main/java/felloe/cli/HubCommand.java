package felloe.cli;

import felloe.kit.HubCard;
import felloe.kit.Kit;
import felloe.kit.MeasureAnswer;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Hubs that the program knows. */
final class HubCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "hub",
            "Hubs: which ones are known, every figure of one, and which one a calliper shows.");
    spec.addSubcommand("list", list());
    spec.addSubcommand("show", show());
    spec.addSubcommand("measure", measure());
    spec.usageMessage().commandListHeading("%nCommands%n");
    Options.examples(
        spec,
        "  felloe hub list",
        "  felloe hub show 6x70-m5",
        "  felloe hub measure readings.yaml");
    return spec;
  }

  private static CommandSpec list() {
    CommandSpec spec = Options.command("list", "Lists the hubs that the program knows.");
    spec.addOption(Options.format("text or json"));
    return spec;
  }

  private static CommandSpec show() {
    CommandSpec spec =
        Options.command(
            "show",
            "Shows every figure of a hub with where it comes from, and what a calliper reads on"
                + " it.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("HUB")
            .index("0")
            .arity("1")
            .required(true)
            .type(String.class)
            .description("A name from 'felloe hub list', or a hub file such as my-hub.yaml.")
            .build());
    spec.addOption(Options.format("text or json"));
    Options.examples(spec, "  felloe hub show 6x70-m5", "  felloe hub show my-hub.yaml");
    return spec;
  }

  private static CommandSpec measure() {
    CommandSpec spec =
        Options.command(
            "measure",
            "Finds the pattern of a hub, and the known hubs that come near it, from calliper"
                + " readings between its holes.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("FILE")
            .index("0")
            .arity("0..1")
            .type(String.class)
            .description(
                "The measured file (YAML, or a CSV table). Without it, on a terminal, the readings"
                    + " are asked for one by one.")
            .build());
    spec.addOption(Options.format("text or json"));
    Options.examples(
        spec,
        "  felloe hub measure readings.yaml",
        "  felloe hub measure readings.csv --format json",
        "  felloe hub measure");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    if (!call.hasSubcommand()) {
      throw Calls.wrong(
          "hub", "must be followed by list, show or measure", "write felloe hub list");
    }
    ParseResult sub = call.subcommand();
    String format = Options.chosenFormat(sub, "text", "json");
    if (sub.commandSpec().name().equals("list")) {
      List<HubCard> hubs = kit.hubs();
      if (format.equals("json")) {
        screen.data(Kit.json(hubs));
      } else {
        HubText.list(screen, hubs);
      }
      return Exit.WELL;
    }
    if (sub.commandSpec().name().equals("measure")) {
      return measure(sub, format, screen, kit);
    }
    HubCard hub = kit.hub(sub.matchedPositionalValue(0, ""), Place.ofFile("hub show"));
    if (format.equals("json")) {
      screen.data(Kit.json(hub));
    } else {
      HubText.card(screen, hub);
    }
    return Exit.WELL;
  }

  private static int measure(ParseResult sub, String format, Screen screen, Kit kit) {
    String file = sub.matchedPositionalValue(0, "");
    if (file.isEmpty()) {
      if (!screen.terminal()) {
        throw Calls.wrong(
            "hub measure",
            "must be followed by a measured file where nobody sits at a terminal",
            "write felloe hub measure FILE");
      }
      Charset charset = Charset.defaultCharset();
      return talk(
          new BufferedReader(new InputStreamReader(System.in, charset)), format, screen, kit);
    }
    show(kit.measure(Options.path(file)), format, screen);
    return Exit.WELL;
  }

  private static void show(MeasureAnswer answer, String format, Screen screen) {
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      new MeasureText(screen).show(answer);
    }
  }

  /** Asks for the readings, and shows what they tell and how to keep them. */
  static int talk(BufferedReader in, String format, Screen screen, Kit kit) {
    MeasureTalk talk = new MeasureTalk(in, screen, kit);
    Optional<MeasureAnswer> answer = talk.talk();
    screen.say("");
    if (answer.isEmpty()) {
      screen.say("These readings are too few to find the holes.");
      return Exit.WRONG;
    }
    if (!answer.get().refusals().isEmpty()) {
      for (Problem problem : answer.get().refusals()) {
        screen.say("These readings " + problem.wanted() + ".");
        screen.say("Next: " + problem.cure() + ".");
      }
      keep(talk, screen);
      return Exit.WRONG;
    }
    show(answer.get(), format, screen);
    keep(talk, screen);
    return Exit.WELL;
  }

  private static void keep(MeasureTalk talk, Screen screen) {
    screen.say("");
    screen.say("To keep the readings, save these lines as readings.yaml:");
    screen.say("");
    talk.text().lines().forEach(screen::say);
  }
}
