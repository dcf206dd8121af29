package felloe.cli;

import felloe.drawing.Paper;
import felloe.files.CannotWrite;
import felloe.files.OutFile;
import felloe.files.Written;
import felloe.kit.Kit;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.template.AskedAt;
import felloe.template.BarReading;
import felloe.template.MarkOut;
import felloe.template.MarkOut.InkEdge;
import felloe.template.MarkOut.Method;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** How pages at true scale are asked for. */
final class Printing {

  private static final double FINEST_PEN = 0.1;

  private static final Opt<Paper> PAPER =
      Opt.one(
          "--paper",
          "PAPER",
          Read::paper,
          "A4 (usual), A3, A5, Letter, Legal, Tabloid, or A2 to A0.");

  /** Paper of pages that are not at true scale. */
  static final Opt<Paper> PAGES =
      Opt.one("--paper", "PAPER", Read::paper, "Paper of the pages. Usually A4.");

  private static final Opt<Double> MARGIN =
      Opt.one(
          "--margin",
          "MM",
          Read.length(0, TemplateOptions.LARGEST_MARGIN),
          "Edge that the printer cannot print, 0 to 25 mm. Usually 10.");
  private static final Opt<Double> OVERLAP =
      Opt.one(
          "--overlap",
          "MM",
          Read.length(TemplateOptions.LEAST_OVERLAP, TemplateOptions.LARGEST_OVERLAP),
          "What neighbouring pages share, 10 to 30 mm. Usually 10.");
  private static final Opt<Boolean> TURN =
      Opt.flag("--turn", "Turn the plate on the pages where that saves some.");
  private static final Opt<BarReading> BARS =
      Opt.one(
          "--bars",
          "ACROSSxUP",
          Read.lengths(
              "x",
              n ->
                  n.size() == 2
                      ? Optional.of(new BarReading(n.get(0), n.get(1)))
                      : Optional.empty(),
              "must be two lengths in mm with an x between",
              "measure the bar that runs across and the one that runs up, and write 99.6x100.2"),
          "Both check bars as measured on a print, such as 99.6x100.2: the tiled pages then print"
              + " true.");
  private static final Opt<Method> METHOD =
      Opt.one(
          "--method",
          "WAY",
          Read.choice(Method.STUCK_ON, Method.TRACED, Method.PRICKED),
          "stuck-on (usual): stuck on the stock and cut through; traced: drawn round with a pen;"
              + " pricked: hole centres pricked through.");
  private static final Opt<Double> PEN =
      Opt.one(
          "--pen",
          "MM",
          Read.length(FINEST_PEN, MarkOut.WIDEST_PEN),
          "Width of the pen's line, for --method traced.");
  private static final Opt<InkEdge> INK =
      Opt.one(
          "--ink",
          "EDGE",
          Read.choice(InkEdge.values()),
          "Which edge of the pen's line is the finish line: plate-side (usual; take all ink off)"
              + " or waste-side (leave it on).");
  private static final Opt<Face> FACE =
      Opt.one(
          "--face",
          "FACE",
          Read.choice(Face.values()),
          "front or back; usually as the shape file says.");

  private Printing() {}

  /**
   * Files of a plate with pages, written where there is a folder for them; else none.
   *
   * @param set what they are called together
   */
  static Written pages(
      ParseResult call,
      Kit kit,
      Optional<Path> folder,
      String set,
      Plate plate,
      Function<Paper, List<OutFile>> made)
      throws CannotWrite {
    if (folder.isEmpty()) {
      return Written.NONE;
    }
    Paper paper = PAGES.in(call).orElse(Paper.A4);
    return kit.write(folder.get(), set, plate, made.apply(paper));
  }

  /** The options of a command that writes templates. */
  static void templates(CommandSpec spec) {
    Options.group(spec, "Paper", 1, PAPER, MARGIN, OVERLAP, TURN, BARS);
    Options.group(spec, "Marking out", 2, METHOD, PEN, INK, FACE);
  }

  /** The options of a command that writes centre marks alone. */
  static void centres(CommandSpec spec) {
    Options.group(spec, "Paper", 1, PAPER, MARGIN, OVERLAP, TURN, BARS);
    Options.group(spec, "Centre marks", 2, FACE);
  }

  /** The options of a command that writes templates of parts whose face is theirs. */
  static void parts(CommandSpec spec) {
    Options.group(spec, "Paper", 1, PAPER, MARGIN, OVERLAP, TURN, BARS);
    Options.group(spec, "Marking out", 2, METHOD, PEN, INK);
  }

  /** Refuses those where no template is written. */
  static void refuseParts(ParseResult call, String wanted, String cure) {
    Options.refuse(call, wanted, cure, PAPER, MARGIN, OVERLAP, TURN, BARS, METHOD, PEN, INK);
  }

  /** Refuses the options of centre marks where none are printed. */
  static void refuse(ParseResult call, String wanted, String cure) {
    Options.refuse(call, wanted, cure, PAPER, MARGIN, OVERLAP, TURN, BARS, FACE);
  }

  /** How pages are printed where nothing is asked for. */
  static TemplateOptions usual() {
    return new TemplateOptions(
        Paper.A4,
        TemplateOptions.MARGIN,
        TemplateOptions.OVERLAP,
        MarkOut.STUCK_ON,
        Optional.empty(),
        false,
        Optional.empty(),
        new AskedAt(PAPER.place(), BARS.place()));
  }

  /**
   * How the pages of a call are printed.
   *
   * @throws felloe.plate.BadInput when options do not go together
   */
  static TemplateOptions of(ParseResult call) {
    return new TemplateOptions(
        PAPER.in(call).orElse(Paper.A4),
        MARGIN.in(call).orElse(TemplateOptions.MARGIN),
        OVERLAP.in(call).orElse(TemplateOptions.OVERLAP),
        markOut(call),
        FACE.in(call),
        TURN.given(call),
        BARS.in(call),
        new AskedAt(PAPER.place(), BARS.place()));
  }

  private static MarkOut markOut(ParseResult call) {
    Method method = METHOD.in(call).orElse(Method.STUCK_ON);
    if (method == Method.TRACED) {
      double pen =
          PEN.in(call)
              .orElseThrow(
                  () ->
                      Read.wrong(
                          METHOD.name(),
                          "traced",
                          "needs the width of the pen's line",
                          "draw a line, measure it, and give it as " + PEN.name() + " 0.7"));
      return MarkOut.traced(pen, INK.in(call).orElse(InkEdge.PLATE_SIDE));
    }
    String traced = "only counts for " + METHOD.name() + " traced";
    Options.refuse(call, traced, "add that, or take this out", PEN, INK);
    return method == Method.PRICKED ? MarkOut.PRICKED : MarkOut.STUCK_ON;
  }
}
