package felloe.cli;

import felloe.document.Phrase;
import felloe.files.CannotWrite;
import felloe.geometry.Numbers;
import felloe.kit.Kit;
import felloe.kit.KitAnswer;
import felloe.report.CheckReport;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The whole kit. */
final class MakeCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "make",
            "Reads shape files, checks the plates, and writes a kit for each: templates at true"
                + " scale, hole table, picture, files for machines, report. A kit is written"
                + " whole or not at all.");
    Options.shapes(spec, true);
    spec.addOption(
        Options.out("Folder for the kits, each in a folder of its own. Usually templates-out."));
    spec.addOption(Options.format("text or json"));
    Printing.templates(spec);
    Options.examples(
        spec,
        "  felloe make shapes/*.yaml",
        "  felloe make heron.yaml --paper A3 --turn --out prints",
        "  felloe make heron.yaml --bars 99.6x100.2",
        "  felloe make heron.yaml --set outline.round.diameter=280");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String format = Options.chosenFormat(call, "text", "json");
    List<KitAnswer> kits;
    try {
      kits =
          kit.make(
              Calls.someShapes(call), Printing.of(call), Options.outFolder(call), screen::progress);
    } finally {
      screen.progressEnds();
    }
    if (format.equals("json")) {
      screen.data(KitAnswer.json(kits));
    } else {
      show(screen, kits);
    }
    return Calls.verdicts(screen, kits.stream().map(KitAnswer::check).toList(), "Its kit");
  }

  private static void show(Screen screen, List<KitAnswer> kits) {
    for (KitAnswer kit : kits) {
      screen.line(kit.check().plate().title() + ": " + kit.folder());
      Table table = new Table("lr");
      kit.files()
          .forEach(
              file ->
                  table.row("  " + file.name(), Numbers.fixed(file.bytes() / 1000.0, 1) + " kB"));
      table.lines().forEach(screen::line);
      screen.line(
          "  "
              + Phrase.count(kit.pages().pages(), "page")
              + " "
              + kit.pages().paper()
              + "; review: "
              + CheckReport.counts(kit.check()));
      kit.lacks()
          .ifPresent(why -> Table.wrapped(Phrase.begin(why) + ".", 2, 100).forEach(screen::line));
    }
    screen.say(
        "Print at 100 %, and measure the check bars before you trust a page. For closed-course use"
            + " at your own judgement; not for public roads.");
  }
}
