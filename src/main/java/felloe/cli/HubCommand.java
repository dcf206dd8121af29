package felloe.cli;

import felloe.document.Block.Depth;
import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.plate.Place;
import felloe.plate.Requested;
import felloe.render.TextRenderer;
import felloe.report.HubReport;
import felloe.report.MeasureReport;
import felloe.service.HubSurvey;
import felloe.service.KnownHub;
import felloe.service.KnownHubs;
import felloe.service.MeasuredHub;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Hubs that the program knows. */
final class HubCommand implements Command {

  private static final Opt<String> HUB =
      Opt.argument(
          "HUB",
          "1",
          Read::text,
          "A name from 'felloe hub list', or a hub file such as my-hub.yaml.");
  private static final Opt<Path> FILE =
      Opt.argument(
          "FILE",
          "0..1",
          Read::path,
          "The measured file (YAML, or a CSV table). Without it, on a terminal, the readings"
              + " are asked for one by one.");
  private static final Opt<Path> OUT =
      Opt.one(
          "--out",
          "FILE",
          Read::path,
          "Write the hub that was found into this hub file, with the bounds of the readings as its"
              + " tolerance.");
  private static final Opt<String> THREAD =
      Opt.one(
          "--thread",
          "THREAD",
          Read::text,
          "With --out: the thread of its screws, such as M5, where the size does not tell it.");

  private static final String CURE =
      "name another file, or replace this one with " + NewCommand.FORCE.name();

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
    Answers.options(spec);
    return spec;
  }

  private static CommandSpec show() {
    CommandSpec spec =
        Options.command(
            "show",
            "Shows every figure of a hub with where it comes from, and what a calliper reads on"
                + " it.");
    Options.add(spec, HUB);
    Answers.options(spec);
    Options.examples(spec, "  felloe hub show 6x70-m5", "  felloe hub show my-hub.yaml");
    return spec;
  }

  private static CommandSpec measure() {
    CommandSpec spec =
        Options.command(
            "measure",
            "Finds the pattern of a hub, and the known hubs that come near it, from calliper"
                + " readings between its holes.");
    Options.add(spec, FILE);
    Answers.options(spec);
    Options.add(spec, OUT, THREAD, NewCommand.FORCE);
    Options.examples(
        spec,
        "  felloe hub measure readings.yaml",
        "  felloe hub measure readings.yaml --out my-hub.yaml --thread M5",
        "  felloe hub measure readings.csv --format json",
        "  felloe hub measure");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    if (!call.hasSubcommand()) {
      throw Read.wrong("hub", "must be followed by list, show or measure", "write felloe hub list");
    }
    ParseResult sub = call.subcommand();
    switch (sub.commandSpec().name()) {
      case "list" -> {
        KnownHubs hubs = KnownHubs.all(kit.folder());
        Answers.show(sub, screen, hubs, () -> HubReport.list(hubs));
        return Exit.WELL;
      }
      case "measure" -> {
        return measure(sub, screen, kit);
      }
      default -> {
        String name = HUB.in(sub).orElseThrow();
        KnownHub hub = KnownHub.of(new Requested<>(name, Place.ofFile("hub show")), kit.folder());
        Answers.show(sub, screen, hub, () -> HubReport.of(hub));
        return Exit.WELL;
      }
    }
  }

  private static int measure(ParseResult sub, Screen screen, Kit kit) throws CannotWrite {
    Optional<Path> file = FILE.in(sub);
    for (Opt<?> option : List.of(THREAD, NewCommand.FORCE)) {
      if (option.given(sub) && !OUT.given(sub)) {
        throw Read.wrong(option.name(), "needs " + OUT.name() + " FILE", "name the file to write");
      }
    }
    if (OUT.given(sub) && !NewCommand.FORCE.given(sub)) {
      // Told before readings are typed in.
      kit.refuseExisting(OUT.in(sub).get(), CURE);
    }
    if (file.isEmpty()) {
      if (!screen.terminal()) {
        throw Read.wrong(
            "hub measure",
            "must be followed by a measured file where nobody sits at a terminal",
            "write felloe hub measure FILE");
      }
      Charset charset = Charset.defaultCharset();
      return talk(new BufferedReader(new InputStreamReader(System.in, charset)), sub, screen, kit);
    }
    MeasuredHub hub = HubSurvey.of(file.get(), kit.folder());
    show(hub, sub, screen, kit);
    return Exit.WELL;
  }

  private static void show(MeasuredHub hub, ParseResult sub, Screen screen, Kit kit)
      throws CannotWrite {
    Optional<Path> out = OUT.in(sub);
    Optional<MeasuredHub.Written> found =
        out.map(path -> hub.written(THREAD.requested(sub), THREAD.place()));
    Answers.show(sub, screen, hub, () -> MeasureReport.of(hub));
    if (out.isPresent()) {
      String text = found.orElseThrow().text();
      if (NewCommand.FORCE.given(sub)) {
        kit.replace(out.get(), text);
      } else {
        kit.writeNew(out.get(), text, CURE);
      }
      screen.say("Wrote " + out.get() + ": " + found.get().title() + ".");
    }
  }

  /** Asks for the readings, and shows what they tell and how to keep them. */
  static int talk(BufferedReader in, ParseResult sub, Screen screen, Kit kit) throws CannotWrite {
    MeasureTalk talk = new MeasureTalk(in, screen, kit.folder());
    Optional<MeasuredHub> hub = talk.talk();
    screen.say("");
    if (hub.isEmpty()) {
      screen.say("These readings are too few to find the holes.");
      return Exit.WRONG;
    }
    if (!hub.get().told()) {
      TextRenderer.lines(MeasureReport.refused(hub.get()), screen.width(), Set.of(Depth.SCREEN))
          .forEach(screen::say);
      keep(talk, screen);
      return Exit.WRONG;
    }
    try {
      show(hub.get(), sub, screen, kit);
    } finally {
      // What was typed in is not lost when the hub file cannot be written.
      keep(talk, screen);
    }
    return Exit.WELL;
  }

  private static void keep(MeasureTalk talk, Screen screen) {
    screen.say("");
    screen.say("To keep the readings, save these lines as readings.yaml:");
    screen.say("");
    talk.text().lines().forEach(screen::say);
  }
}
