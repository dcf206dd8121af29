package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.DrillAnswer;
import felloe.kit.DrillSheetAnswer;
import felloe.kit.Kit;
import felloe.service.ShapeSource;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The hole schedule, the order of work, and the drilling sheet. */
final class DrillCommand implements Command {

  private static final List<String> SHEET =
      List.of("--paper", "--margin", "--overlap", "--turn", "--bars", "--face");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "drill",
            "Shows the hole schedule and the order of work: drills, speeds, what to measure; with"
                + " --out, writes the drilling sheet (SHAPE-drill-PAPER.pdf), its steps"
                + " (SHAPE-drill.csv) and a form for readings (SHAPE-measured.yaml).");
    Options.shapes(spec, false);
    spec.addOption(Options.out("Folder for the drilling sheet; else none is made."));
    spec.addOption(Options.format("text, csv (the hole schedule alone) or json"));
    Options.paper(spec);
    Options.group(spec, "Centre marks", 2, Options.face());
    Options.examples(
        spec,
        "  felloe drill heron.yaml",
        "  felloe drill heron.yaml --out prints --paper A3",
        "  felloe drill heron.yaml --format csv > holes.csv");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String format = Options.chosenFormat(call, "text", "csv", "json");
    ShapeSource shape = Options.shape(call);
    Optional<Path> out = Options.chosenOut(call);
    if (out.isEmpty()) {
      Options.refuse(call, SHEET, "only counts with --out", "take it out, or name a folder");
      answer(screen, kit.drill(shape), format);
      return Exit.WELL;
    }
    DrillSheetAnswer sheet = kit.drillSheet(shape, Options.request(call), out.get());
    answer(screen, sheet.answer(), format);
    sheet.files().forEach(file -> screen.say("Written: " + file));
    sheet
        .kept()
        .ifPresent(
            file ->
                screen.say(
                    file
                        + " is there already and was left as it is, since readings may be in it;"
                        + " move it for a new form."));
    return Calls.verdicts(screen, List.of(sheet.check()), "Its drilling sheet");
  }

  private static void answer(Screen screen, DrillAnswer answer, String format) {
    switch (format) {
      case "csv" -> screen.data(answer.csv());
      case "json" -> screen.data(answer.json());
      default -> new DrillWords(screen).show(answer);
    }
  }
}
