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
import felloe.cutting.SheetLayout;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.Steps;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
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
import java.util.stream.IntStream;

/** How plates are cut, told. */
public final class CutReport {

  /** As many left-overs stand in the first table. */
  private static final int LISTED = 20;

  private final CutOutcome outcome;
  private final Telling told = new Telling();

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
      report.told.cautions(List.copyOf(cautions));
    }
    List<String> plates = outcome.studies().stream().map(one -> Words.title(one.plate())).toList();
    String process = outcome.request().wish().process().word();
    return report.told.under(Phrase.of("{}: {}", String.join("; ", plates), process));
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
    told.verdict(
        Tone.FAIL,
        "FAILS: nothing is written before {} {} the review.",
        Phrase.list(names),
        names.size() == 1 ? "passes" : "pass");
    for (Study one : failing) {
      told.head(one.plate().title());
      told.add(CheckReport.open(one.review().with(Verdict.FAIL)));
    }
  }

  private void verdict(CutJob job) {
    String name = job.name();
    if (job.machine().isPresent()) {
      MachineJob machine = job.machine().get();
      int left = machine.leftOvers().size();
      told.verdict(
          Tone.WELL,
          "{}: checked as written, at {} decimals: gouges by {} at most, leaves {} at most{}.",
          name,
          machine.decimals(),
          Quantity.fixed(machine.proof().worstGouge(), 4, "mm"),
          Quantity.fixed(machine.proof().worstRemaining(), 4, "mm"),
          left == 0 ? "" : ", but for " + CutMap.places(left) + " left for the file");
    } else if (job.saw().isPresent()) {
      String holes = Phrase.count(job.saw().get().holes().size(), "hole");
      told.verdict(Tone.WELL, "{}: rough lines to saw by hand, {} to make first.", name, holes);
    } else {
      told.verdict(Tone.CAUTION, "{}: finish lines, not paths; nothing was checked.", name);
    }
  }

  private void job(CutJob job) {
    head(job, "What to do");
    told.add(Steps.of(steps(job)));
    job.machine().ifPresent(machine -> order(job, machine));
    job.layout().ifPresent(layout -> sheet(job, layout));
    left(job);
    job.saw().ifPresent(plan -> waste(job, plan));
    for (Note note : job.work().notes()) {
      String where = CheckReport.name(note.place());
      told.say("Note, {}: {}", where, note.text());
    }
    figures(job);
    CutMap.of(job).ifPresent(view -> told.add(new Figure(CutPicture.of(view))));
  }

  /** A heading; it names its job where there are several. */
  private void head(CutJob job, String words) {
    told.head(
        outcome.jobs().size() == 1 ? words : job.name() + ": " + words.toLowerCase(Locale.ROOT));
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
        Phrase.of(
            "Clamp {}, {}{}.",
            plate.stock().material().title(),
            CutMap.thick(plate.stock(), thick),
            bed));
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
    List<CutMap.Line> lines = new ArrayList<>(CutMap.lines(job, machine));
    lines.add(CutMap.total(job, machine));
    head(job, "Order of work");
    told.add(
        Rows.of(lines)
            .wrapped("step", CutMap.Line::title)
            .words("tool", CutMap.Line::tool)
            .figures(
                "speed",
                "1/min",
                line -> line.speed() > 0 ? Quantity.fixed(line.speed(), 0, "1/min") : "")
            .fixed("cut", "mm", 0, CutMap.Line::cut)
            .figures("time", "min", line -> line.minutes().map(t -> Quantity.fixed(t, 1, "min"))));
  }

  private void sheet(CutJob job, SheetLayout layout) {
    head(job, "Parts on the sheet");
    told.add(
        Rows.of(layout.parts())
            .words("part", SheetLayout.Lying::name)
            .fixed("x", "mm", 2, part -> part.at().x())
            .fixed("y", "mm", 2, part -> part.at().y())
            .figures("turned", "deg", part -> Quantity.brief(part.turn(), 2, "deg")));
    String boxes =
        layout.boxesUsed().isPresent()
            ? Phrase.of(
                "Laid out by their boxes the parts would take {}, {}.",
                CutMap.mm(layout.boxesUsed().get()),
                Quantity.percent(layout.boxesYield().orElseThrow(), 1))
            : "Laid out by their boxes the parts would have no room on it.";
    told.say(
        "Sheet {} x {}; the parts take its lower {}, and {} of that become parts. {}",
        Quantity.brief(layout.room().sheet().width(), 2, ""),
        CutMap.mm(layout.room().sheet().height()),
        CutMap.mm(layout.used()),
        Quantity.percent(layout.yield(), 1),
        boxes);
  }

  private void left(CutJob job) {
    List<LeftOver> all = job.leftOvers();
    if (all.isEmpty()) {
      return;
    }
    head(job, "Left for the file");
    int listed = Math.min(LISTED, all.size());
    told.add(left(all, 0, listed));
    told.fold(Depth.ALL, left(all, listed, all.size()).table());
  }

  /** Some of the places, by the numbers that they have among all. */
  private static Rows<Integer> left(List<LeftOver> all, int from, int to) {
    return Rows.of(IntStream.range(from, to).boxed().toList())
        .figures("", i -> i + 1)
        .words("of", i -> all.get(i).feature().label())
        .fixed("stands out", "mm", 2, i -> all.get(i).reach())
        .words("at", i -> Phrase.at(all.get(i).at()))
        .words("written in", i -> CheckReport.name(all.get(i).feature().place()));
  }

  private void waste(CutJob job, JigsawPlan plan) {
    head(job, "Holes to make in the waste first");
    told.add(
        Rows.of(plan.holes())
            .words("edge", hole -> hole.feature().label())
            .words("for", CutReport::why)
            .fixed("x", "mm", 2, hole -> hole.at().x())
            .fixed("y", "mm", 2, hole -> hole.at().y())
            .fixed("diameter", "mm", 2, hole -> hole.diameter()));
  }

  private static String why(JigsawPlan.WasteHole hole) {
    return switch (hole.why()) {
      case START -> "starting";
      case TURN -> "turning the blade";
      case START_AND_TURN -> "starting and turning";
      case DRILL -> "all of it, by drill";
      case HOLE_SAW -> "all of it, by hole saw or bit";
    };
  }

  private void figures(CutJob job) {
    if (job.figures().isEmpty()) {
      return;
    }
    head(job, "To start from; listen, look and adjust");
    Rows<SourcedFigure> rows = Rows.of(job.figures());
    told.add(
        rows.words("", SourcedFigure::name)
            .figures("", f -> Quantity.rounded(f.value(), f.unit()))
            .table()
            .sideBySide());
    told.fold(
        Depth.SOURCES,
        rows.words("figure", SourcedFigure::name)
            .wrapped("where it comes from", SourcedFigure::basis)
            .table());
  }
}
