package felloe.cli;

import felloe.files.CannotWrite;
import felloe.files.Transaction;
import felloe.files.Written;
import felloe.kit.Kit;
import felloe.kit.KitFiles;
import felloe.report.KitReport;
import felloe.service.KitOutcome;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The whole kit. */
final class MakeCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder("Folder for the kits, each in a folder of its own. Usually templates-out.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "make",
            "Reads shape files, checks the plates, and writes a kit for each: templates at true"
                + " scale, job card with its bill of materials, hole table, picture, files for"
                + " machines, report. A kit is written whole or not at all.");
    Options.shapes(spec, true);
    Options.add(spec, Options.HUB, OUT);
    Answers.format(spec);
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
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    TemplateOptions options = studies.with(() -> Printing.of(call));
    List<ShapeSource> shapes = Options.someShapes(call);
    List<KitFiles.Made> kits = new ArrayList<>();
    try (KitFiles files = new KitFiles()) {
      List<Study> all = studies.all(shapes);
      studies.each(
          all,
          one -> {
            screen.progress(one.plate().name(), kits.size(), all.size());
            kits.add(files.of(one, CardTalk.of(one, call), options));
          });
    } finally {
      screen.progressEnds();
    }
    Path out = OUT.in(call).orElse(Options.USUAL_OUT);
    Transaction files = kit.into(out);
    for (KitFiles.Made one : kits) {
      files = one.into(files);
    }
    Written written = files.commit();
    List<KitOutcome> outcomes = kits.stream().map(KitFiles.Made::outcome).toList();
    Answers.show(
        call,
        screen,
        Map.of("kits", kits.stream().map(one -> one.json(out)).toList()),
        () -> KitReport.of(outcomes));
    Answers.say(screen, written);
    return outcomes.stream().anyMatch(KitOutcome::held) ? Exit.FAILS : Exit.WELL;
  }
}
