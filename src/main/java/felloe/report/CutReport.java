package felloe.report;

import felloe.cutting.CutFault;
import felloe.cutting.CutFigure;
import felloe.cutting.CutJob;
import felloe.cutting.CutProcess;
import felloe.cutting.CutRefused;
import felloe.cutting.CutterTool;
import felloe.cutting.JigsawPlan;
import felloe.cutting.LeftOver;
import felloe.cutting.MachineJob;
import felloe.cutting.OperationFigures;
import felloe.cutting.SheetLayout;
import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Column;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.Folded;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Steps;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.drawing.CutPicture;
import felloe.plate.Note;
import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import felloe.plate.Verdict;
import felloe.service.CutOutcome;
import felloe.service.Study;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** How plates are cut, told. */
public final class CutReport {

  /** As many left-overs stand in the first table. */
  private static final int LISTED = 20;

  private final CutOutcome outcome;
  private final List<Block> blocks = new ArrayList<>();

  private CutReport(CutOutcome outcome) {
    this.outcome = outcome;
  }

  /** The answer, told. */
  public static Report of(CutOutcome outcome) {
    CutReport report = new CutReport(outcome);
    if (outcome.held()) {
      report.held();
    } else {
      outcome.jobs().forEach(report::verdict);
      outcome.jobs().forEach(report::job);
      Set<String> cautions = new LinkedHashSet<>();
      outcome.jobs().forEach(job -> cautions.addAll(job.work().cautions()));
      report.blocks.add(Callout.cautions(List.copyOf(cautions)));
    }
    List<String> plates =
        outcome.studies().stream()
            .map(one -> one.plate().title() + ", revision " + one.plate().revision())
            .toList();
    String process = outcome.request().wish().process().word();
    return new Report(Phrase.of("{}: {}", String.join("; ", plates), process), report.blocks);
  }

  /** Why a kit has no router's program, as a sentence's rest. */
  public static String lacks(RuntimeException refused) {
    if (refused instanceof CutRefused unsuited) {
      CutFault fault = unsuited.faults().get(0);
      return Phrase.of(
          "the usual figures do not suit this plate ({}: {}); cut it by router with your own",
          fault.figure().map(CutFigure::words).orElseGet(() -> CheckReport.name(fault.place())),
          fault.wanted());
    }
    return refused instanceof MachineJob.Unproved
        ? refused.getMessage() + "; this is a fault in Felloe, please report it"
        : "no path could be worked out: " + refused.getMessage();
  }

  private void held() {
    List<Study> failing = outcome.studies().stream().filter(Study::fails).toList();
    List<String> names = failing.stream().map(one -> one.plate().name()).toList();
    blocks.add(
        Callout.verdict(
            Tone.FAIL,
            Phrase.of(
                "FAILS: nothing is written before {} {} the review.",
                Phrase.list(names),
                names.size() == 1 ? "passes" : "pass")));
    for (Study one : failing) {
      blocks.add(new Heading(one.plate().title()));
      blocks.addAll(CheckReport.open(one.review().with(Verdict.FAIL)));
    }
  }

  private void verdict(CutJob job) {
    String name = job.name();
    if (job.machine().isPresent()) {
      MachineJob machine = job.machine().get();
      int left = machine.leftOvers().size();
      well(
          Phrase.of(
              "{}: checked as written, at {} decimals: gouges by {} at most, leaves {} at"
                  + " most{}.",
              name,
              machine.decimals(),
              Quantity.fixed(machine.proof().worstGouge(), 4, "mm"),
              Quantity.fixed(machine.proof().worstRemaining(), 4, "mm"),
              left == 0 ? "" : ", but for " + CutMap.places(left) + " left for the file"));
    } else if (job.saw().isPresent()) {
      String holes = Phrase.count(job.saw().get().holes().size(), "hole");
      well(Phrase.of("{}: rough lines to saw by hand, {} to make first.", name, holes));
    } else {
      blocks.add(
          Callout.verdict(
              Tone.CAUTION, Phrase.of("{}: finish lines, not paths; nothing was checked.", name)));
    }
  }

  private void well(String words) {
    blocks.add(Callout.verdict(Tone.WELL, words));
  }

  private void job(CutJob job) {
    head(job, "What to do");
    blocks.add(Steps.of(steps(job)));
    job.machine().ifPresent(machine -> order(job, machine));
    job.layout().ifPresent(layout -> sheet(job, layout));
    left(job);
    job.saw().ifPresent(plan -> waste(job, plan));
    for (Note note : job.work().notes()) {
      String where = CheckReport.name(note.place());
      blocks.add(new Paragraph(Phrase.of("Note, {}: {}", where, note.text())));
    }
    figures(job);
    CutMap.of(job).ifPresent(view -> blocks.add(new Figure(CutPicture.of(view))));
  }

  private void table(CutJob job, String words, List<List<Cell>> rows, Column... columns) {
    head(job, words);
    blocks.add(Table.of(List.of(columns), rows));
  }

  /** A heading; it names its job where there are several. */
  private void head(CutJob job, String words) {
    blocks.add(
        new Heading(
            outcome.jobs().size() == 1
                ? words
                : job.name() + ": " + words.toLowerCase(Locale.ROOT)));
  }

  private static List<String> steps(CutJob job) {
    Plate plate = job.shapes().get(0);
    if (job.saw().isPresent()) {
      Quantity rest = CutMap.mm(plate.making().roughAllowance());
      boolean bare = job.saw().get().holes().isEmpty();
      return List.of(
          (bare ? "Saw" : "Make the holes below, then saw") + " outside the rough line.",
          Phrase.of("File {} off, to the finish line.", rest));
    }
    double thick =
        job.machine()
            .map(m -> m.first().setup().depths().stock())
            .orElse(plate.stock().thickness());
    Optional<MachineJob> router =
        job.machine().filter(m -> job.wish().process() == CutProcess.ROUTER);
    Optional<String> bed =
        router
            .map(m -> Quantity.mm(-m.proof().deepest() - thick))
            .map(deep -> Phrase.of(", on spoil board: cuts go {} into it", deep));
    List<String> steps = new ArrayList<>();
    steps.add(
        Phrase.of("Clamp {}, {}{}.", plate.stock().material().title(), CutMap.mm(thick), bed));
    steps.add(Phrase.of("Set work zero: {}.", CutMap.zero(job)));
    router.ifPresent(machine -> router(machine, steps));
    if (!job.leftOvers().isEmpty()) {
      steps.add("File off what is left, below; the picture numbers it.");
    }
    return steps;
  }

  private static void router(MachineJob machine, List<String> steps) {
    List<String> tools =
        machine.steps().stream().map(step -> step.operation().tool().name()).distinct().toList();
    if (tools.size() > 1) {
      steps.add(
          Phrase.of(
              "Take up {}, in this order, at the pauses; set each tip to the same zero.",
              Phrase.list(tools)));
    }
    if (machine.steps().stream()
        .anyMatch(s -> s.operation().tool().kind() == CutterTool.Kind.V_TOOL)) {
      steps.add(
          "Lines and edges are as true as the V tool's zero and the stock's flatness: set it on the"
              + " face with care, and try it on scrap.");
    }
    int tabs = machine.tabs().size();
    steps.add(
        tabs == 0
            ? "There are no tabs: tape or screws must hold the part before it comes loose."
            : Phrase.of("Cut {} by hand when all is done.", Phrase.count(tabs, "tab")));
  }

  private void order(CutJob job, MachineJob machine) {
    List<List<Cell>> rows = new ArrayList<>();
    for (MachineJob.Step step : machine.steps()) {
      double speed = step.operation().speed();
      rows.add(
          List.of(
              Cell.of(step.operation().title()),
              Cell.of(step.operation().tool().name()),
              speed > 0 ? Quantity.fixed(speed, 0, "1/min") : Cell.NONE,
              Quantity.fixed(step.figures().cut(), 0, "mm"),
              minutes(job, step.figures())));
    }
    rows.add(
        List.of(
            Cell.of("total"),
            Cell.NONE,
            Cell.NONE,
            Quantity.fixed(machine.total().cut(), 0, "mm"),
            minutes(job, machine.total())));
    table(
        job,
        "Order of work",
        rows,
        Column.wrapped("step"),
        Column.words("tool"),
        Column.figures("speed", "1/min"),
        Column.figures("cut", "mm"),
        Column.figures("time", "min"));
  }

  private static Cell minutes(CutJob job, OperationFigures figures) {
    return Cell.orNone(job.minutes(figures).map(minutes -> Quantity.fixed(minutes, 1, "min")));
  }

  private void sheet(CutJob job, SheetLayout layout) {
    List<List<Cell>> rows = new ArrayList<>();
    for (SheetLayout.Lying part : layout.parts()) {
      rows.add(
          List.of(
              Cell.of(part.name()),
              Quantity.fixed(part.at().x(), 2, "mm"),
              Quantity.fixed(part.at().y(), 2, "mm"),
              Quantity.brief(part.turn(), 2, "deg")));
    }
    table(
        job,
        "Parts on the sheet",
        rows,
        Column.words("part"),
        Column.figures("x", "mm"),
        Column.figures("y", "mm"),
        Column.figures("turned", "deg"));
    String boxes =
        layout.boxesUsed().isPresent()
            ? Phrase.of(
                "Laid out by their boxes the parts would take {}, {}.",
                CutMap.mm(layout.boxesUsed().get()),
                Quantity.percent(layout.boxesYield().orElseThrow(), 1))
            : "Laid out by their boxes the parts would have no room on it.";
    blocks.add(
        new Paragraph(
            Phrase.of(
                "Sheet {} x {}; the parts take its lower {}, and {} of that become parts. {}",
                Quantity.brief(layout.room().sheet().width(), 2, ""),
                CutMap.mm(layout.room().sheet().height()),
                CutMap.mm(layout.used()),
                Quantity.percent(layout.yield(), 1),
                boxes)));
  }

  private void left(CutJob job) {
    List<List<Cell>> rows = new ArrayList<>();
    for (LeftOver left : job.leftOvers()) {
      rows.add(
          List.of(
              Cell.of(rows.size() + 1),
              Cell.of(left.feature().label()),
              Quantity.fixed(left.reach(), 2, "mm"),
              Cell.of(Phrase.at(left.at())),
              Cell.of(CheckReport.name(left.feature().place()))));
    }
    if (rows.isEmpty()) {
      return;
    }
    head(job, "Left for the file");
    List<Column> columns =
        List.of(
            Column.figures("", ""),
            Column.words("of"),
            Column.figures("stands out", "mm"),
            Column.words("at"),
            Column.words("written in"));
    int listed = Math.min(LISTED, rows.size());
    blocks.add(Table.of(columns, rows.subList(0, listed)));
    blocks.add(Folded.of(Depth.ALL, Table.of(columns, rows.subList(listed, rows.size()))));
  }

  private void waste(CutJob job, JigsawPlan plan) {
    List<List<Cell>> rows = new ArrayList<>();
    for (JigsawPlan.WasteHole hole : plan.holes()) {
      String why =
          switch (hole.why()) {
            case START -> "starting";
            case TURN -> "turning the blade";
            case START_AND_TURN -> "starting and turning";
            case DRILL -> "all of it, by drill";
            case HOLE_SAW -> "all of it, by hole saw or bit";
          };
      rows.add(
          List.of(
              Cell.of(hole.feature().label()),
              Cell.of(why),
              Quantity.fixed(hole.at().x(), 2, "mm"),
              Quantity.fixed(hole.at().y(), 2, "mm"),
              Quantity.fixed(hole.diameter(), 2, "mm")));
    }
    table(
        job,
        "Holes to make in the waste first",
        rows,
        Column.words("edge"),
        Column.words("for"),
        Column.figures("x", "mm"),
        Column.figures("y", "mm"),
        Column.figures("diameter", "mm"));
  }

  private void figures(CutJob job) {
    if (job.figures().isEmpty()) {
      return;
    }
    head(job, "To start from; listen, look and adjust");
    List<List<Cell>> values = new ArrayList<>();
    List<List<String>> sources = new ArrayList<>();
    for (SourcedFigure figure : job.figures()) {
      values.add(List.of(Cell.of(figure.name()), Quantity.rounded(figure.value(), figure.unit())));
      sources.add(List.of(figure.name(), figure.basis()));
    }
    blocks.add(Table.of(List.of(Column.words(""), Column.figures("", "")), values).sideBySide());
    blocks.add(
        Folded.of(
            Depth.SOURCES,
            Table.ofWords(
                List.of(Column.words("figure"), Column.wrapped("where it comes from")), sources)));
  }
}
