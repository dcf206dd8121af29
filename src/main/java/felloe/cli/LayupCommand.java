package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.kit.LayupAnswer;
import felloe.kit.LayupRequest;
import felloe.kit.StackAnswer;
import felloe.report.StripsReport;
import felloe.service.ShapeSource;
import felloe.service.StripsOutcome;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** The plan of a lay-up; stacks of plies on their own, and what broken test strips tell. */
final class LayupCommand implements Command {

  private static final String STACK = "--stack";
  private static final String TESTED = "--tested";
  private static final String SOURCES = "--sources";
  private static final List<String> WISHES =
      List.of(
          "--cloth",
          "--process",
          "--resin",
          "--plies",
          "--fraction",
          "--panel",
          "--temperature",
          "--roll-width",
          "--margin",
          "--pieces",
          "--strips",
          "--scale",
          "--materials",
          "--paper");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "layup",
            "Plans the stock of a plate: plies, cloth, resin in pots, mould, test strips, time and"
                + " cost, beside sheet that can be bought. Tells as well how stiff a stack of plies"
                + " is, and what broken test strips tell of a laminate.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("SHAPE")
            .description("The shape file.")
            .index("0")
            .arity("0..1")
            .type(String.class)
            .build());
    spec.addOption(Options.sets("stock.thickness=6, stack[0].angle=45 or load.N=[10,0,0]"));
    spec.addOption(
        Options.out("Folder for pages and pictures, which are made only when it is given."));
    Answers.options(spec);
    Options.group(spec, "Laying up", 1, wishes());
    Options.group(spec, "Resin and shop", 2, shop());
    Options.group(spec, "Without a shape", 3, alone());
    Options.examples(
        spec,
        "  felloe layup heron.yaml",
        "  felloe layup heron.yaml --cloth carbon-twill-245 --process vacuum-bag --out plans",
        "  felloe layup heron.yaml --panel 5.4x20 --materials my-materials.yaml",
        "  felloe layup --stack my-stack.yaml --format json",
        "  felloe layup --tested my-strips.yaml");
    return spec;
  }

  private static OptionSpec[] wishes() {
    return new OptionSpec[] {
      Options.text("--cloth", "NAME", "The cloth, such as carbon-twill-200 or glass-twill-300."),
      Options.text(
          "--process",
          "NAME",
          "brush-and-roller (usual: between weighted plates), vacuum-bag, infusion, press, or one"
              + " of your own."),
      Options.text(
          "--plies",
          "COUNT",
          "How many plies, or the direction of each from the mould up, such as 0,45,45,0. Usually"
              + " from the thickness."),
      Options.text("--fraction", "SHARE", "Share of fibre in the volume, 0.2 to 0.7."),
      Options.text(
          "--panel", "MMxPLIES", "A panel that you made and measured, such as 5.4x20: sets that."),
      Options.text("--roll-width", "MM", "Width of the roll. Usually the cloth's."),
      Options.text("--margin", "MM", "What the blank is wider on each side. Usually 15."),
      Options.text("--pieces", "HOW", "rectangle (usual) or outline: how plies are cut."),
      Options.text("--strips", "COUNT", "Test strips on the blank. Usually 5."),
      Options.text("--paper", "PAPER", "Paper of the pages. Usually A4.")
    };
  }

  private static OptionSpec[] shop() {
    return new OptionSpec[] {
      Options.text("--resin", "NAME", "epoxy-slow (usual), epoxy-medium, epoxy-fast, or your own."),
      Options.text("--temperature", "DEGC", "Of the workshop, degrees Celsius. Usually 20."),
      Options.text("--scale", "G", "Smallest step of the scale. Usually 1."),
      Options.text(
          "--materials", "FILE", "Your own materials and prices, beside those that are known.")
    };
  }

  private static OptionSpec[] alone() {
    return new OptionSpec[] {
      Options.text(STACK, "FILE", "A stack on its own, such as my-stack.yaml; no shape is needed."),
      Options.text(
          TESTED, "FILE", "What was measured on broken test strips, such as my-strips.yaml.")
    };
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    List<String> sets = Options.chosenSets(call);
    Optional<Path> stack = Options.value(call, STACK).map(Options::path);
    Optional<Path> tested = Options.value(call, TESTED).map(Options::path);
    Optional<String> shape = Optional.ofNullable(call.matchedPositionalValue(0, (String) null));
    long asked =
        List.of(stack.isPresent(), tested.isPresent(), shape.isPresent()).stream()
            .filter(present -> present)
            .count();
    if (asked != 1) {
      throw Calls.wrong(
          "layup",
          "must have one of SHAPE, " + STACK + " and " + TESTED,
          "write felloe layup heron.yaml, say");
    }
    if (shape.isPresent()) {
      ShapeSource source = ShapeSource.file(Options.path(shape.get()), sets);
      Optional<Path> out = Options.chosenOut(call);
      LayupAnswer answer = kit.layup(source, request(call), out);
      if (out.isEmpty()) {
        // Only now, so that what is wrong with the values comes out first and in one run.
        Options.refuse(
            call, List.of("--paper"), "only counts with --out", "take it out, or name a folder");
      }
      return show(screen, format(call), answer, Options.has(call, SOURCES));
    }
    refuseWishes(call);
    if (tested.isPresent()) {
      StripsOutcome outcome = StripsOutcome.of(tested.get(), sets);
      Answers.show(call, screen, outcome, () -> StripsReport.of(outcome));
      return Exit.WELL;
    }
    show(screen, format(call), kit.stack(stack.get(), sets));
    return Exit.WELL;
  }

  /** Plans and stacks are not told as a web page yet. */
  private static String format(ParseResult call) {
    return switch (Answers.format(call)) {
      case TEXT -> "text";
      case JSON -> "json";
      case HTML, CSV ->
          throw Calls.wrong("--format", "has html only with " + TESTED, "take text or json");
    };
  }

  private static LayupRequest request(ParseResult call) {
    Map<String, String> options = new LinkedHashMap<>();
    for (String option : WISHES) {
      Options.value(call, option).ifPresent(value -> options.put(option, value));
    }
    return new LayupRequest(options);
  }

  /** What counts for a plan only is not passed over in silence. */
  private static void refuseWishes(ParseResult call) {
    String wanted = "only counts with a SHAPE";
    String cure = "take it out, or name the shape";
    Options.refuse(call, WISHES, wanted, cure);
    Options.refuse(call, List.of(SOURCES, "--out"), wanted, cure);
  }

  private static int show(Screen screen, String format, LayupAnswer answer, boolean sources) {
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      LayupText.show(screen, answer, sources);
    }
    answer.files().forEach(file -> screen.say("Written: " + file));
    return answer.possible() ? Exit.WELL : Exit.FAILS;
  }

  private static void show(Screen screen, String format, StackAnswer answer) {
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      StackText.show(screen, answer);
    }
  }
}
