package felloe.cli;

import felloe.document.Report;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.jig.GaugeReading;
import felloe.jig.JigWish;
import felloe.kit.JigFiles;
import felloe.kit.Kit;
import felloe.report.JigReport;
import felloe.service.JigOutcome;
import felloe.service.Studies;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** A template and a drill jig to print, and a gauge for the printer. */
final class JigCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder("Folder for the files, in a folder of the shape's name; else none.");
  private static final Opt<Double> TEMPLATE =
      Opt.one(
          "--template-height",
          "MM",
          Read.length(1, JigWish.MOST_TEMPLATE),
          "Height of the flat template, 1 to 25 mm. Usually 4.");
  private static final Opt<Double> HEIGHT =
      Opt.one(
          "--height",
          "MM",
          Read.length(JigWish.LEAST_HEIGHT, JigWish.MOST_HEIGHT),
          "Height of the jig, and so of its guides, 4 to 60 mm. Usually 12.");
  private static final Opt<Boolean> BUSHES =
      Opt.flag("--bushes", "Drills run in steel bushes (DIN 179, ISO 4247), not in plastic.");
  private static final Opt<Boolean> HOLES =
      Opt.one(
          "--holes",
          "WHICH",
          Read.word(Map.of("hub", false, "all", true)),
          "hub (usual) or all: which holes are guided.");
  private static final Opt<List<String>> PINS =
      Opt.one(
          "--pins",
          "HOLE,HOLE",
          (option, text) -> Arrays.stream(text.split(",", -1)).map(String::strip).toList(),
          "Locate the jig by pins in two holes that are drilled, such as G1,G6, instead of a"
              + " spigot in the bore.");
  private static final Opt<GaugeReading> GAUGE =
      Opt.one(
          "--gauge",
          "ACROSSxALONG",
          Read.lengths(
              "x",
              n ->
                  n.size() == 2 && n.get(0) > 0 && n.get(1) > 0
                      ? Optional.of(new GaugeReading(n.get(0), n.get(1)))
                      : Optional.empty(),
              "must be two lengths in mm with an x between",
              "measure over both arms of the printed gauge, X first, and write 99.6x99.7"),
          "The printed gauge as measured, such as 99.6x99.7: the other pieces then print true.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "jig",
            "Plans what is printed to make a plate by: a flat template, a jig that guides the"
                + " drill, cut into pieces for the printer's bed, and a gauge that tells how much"
                + " the printer shrinks; with --out, writes SHAPE-jig-PIECE.stl, SHAPE-jig.3mf and"
                + " pages.");
    Options.shapes(spec, false);
    Options.add(spec, Options.HUB, OUT, Printing.PAGES);
    Answers.options(spec);
    Options.group(spec, "Jig", 1, HOLES, PINS, HEIGHT, BUSHES, TEMPLATE, GAUGE);
    Options.examples(
        spec,
        "  felloe jig heron.yaml",
        "  felloe jig heron.yaml --bushes --gauge 99.6x99.7 --out prints",
        "  felloe jig heron.yaml --holes all --pins G1,G6");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    if (!OUT.given(call)) {
      Options.refuse(
          call, "only counts with " + OUT.name(), "take it out, or name a folder", Printing.PAGES);
    }
    JigWish wish =
        new JigWish(
            TEMPLATE.requested(call),
            HEIGHT.requested(call),
            BUSHES.given(call),
            HOLES.in(call).orElse(false),
            PINS.requested(call),
            GAUGE.requested(call));
    JigOutcome outcome = JigOutcome.of(studies.one(Options.shape(call)), wish);
    Report report = JigReport.of(outcome);
    Written files =
        Printing.pages(
            call,
            kit,
            OUT.in(call),
            "jig",
            outcome.plate(),
            paper -> JigFiles.of(outcome, report, paper));
    Answers.show(call, screen, outcome, files, () -> report);
    if (!outcome.plan().measured()) {
      screen.say("When the gauge is printed, add " + GAUGE.name() + " and both readings.");
    }
    return outcome.study().fails() ? Exit.FAILS : Exit.WELL;
  }
}
