package felloe.cli;

import felloe.document.Phrase;
import felloe.geometry.Numbers;
import felloe.kit.CutAnswer;
import felloe.kit.CutJob;
import felloe.plate.Finding;
import felloe.plate.Note;
import felloe.plate.SourcedFigure;
import felloe.plate.Verdict;
import felloe.service.Study;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The answer about cut files as text. */
final class CutText {

  private static final int WIDTH = 100;

  /** As many left-overs have a line; the picture and the JSON answer have all. */
  private static final int LISTED = 20;

  private final Screen screen;

  CutText(Screen screen) {
    this.screen = screen;
  }

  void show(CutAnswer answer) {
    if (answer.held()) {
      held(answer.checks());
      return;
    }
    for (int i = 0; i < answer.jobs().size(); i++) {
      if (i > 0) {
        screen.line("");
      }
      job(answer, answer.jobs().get(i));
    }
  }

  private void held(List<Study> checks) {
    for (Study check : checks) {
      for (Finding finding : check.findings()) {
        if (finding.verdict() == Verdict.FAIL) {
          screen.say(
              finding.place()
                  + ": "
                  + check.plate().name()
                  + " FAILS "
                  + finding.rule()
                  + ", "
                  + finding.subject()
                  + ": "
                  + finding.figure().name()
                  + " "
                  + Figures.of(finding.figure())
                  + (finding.advice().isEmpty() ? "" : "; " + finding.advice()));
        }
      }
    }
    screen.say("Nothing is written while a plate fails its review. 'felloe check' tells more.");
  }

  private void job(CutAnswer answer, CutJob job) {
    screen.line(job.title() + ", " + answer.process());
    screen.line("Work zero: " + job.zero());
    job.files().forEach(file -> screen.line("  " + file));
    screen.line("");
    job.cautions().forEach(caution -> paragraph("! " + caution));
    steps(job);
    job.layout().ifPresent(this::layout);
    leftOvers(job);
    wasteHoles(job);
    job.proof().ifPresent(this::proof);
    figures(job.figures());
    if (!job.notes().isEmpty()) {
      screen.line("");
    }
    for (Note note : job.notes()) {
      paragraph("Note, " + note.place() + ": " + note.text());
    }
  }

  private void steps(CutJob job) {
    if (job.steps().isEmpty()) {
      return;
    }
    Table table = new Table("llrrr");
    table.row("step", "tool", "1/min", "cut, mm", "min");
    job.steps().forEach(step -> row(table, step));
    job.total().ifPresent(total -> row(table, total));
    screen.line("");
    table.lines().forEach(screen::line);
  }

  private static void row(Table table, CutJob.Step step) {
    table.row(
        step.title(),
        step.tool(),
        step.speed() > 0 ? Numbers.fixed(step.speed(), 0) : "",
        Numbers.fixed(step.cut(), 0),
        step.minutes().map(minutes -> Numbers.fixed(minutes, 1)).orElse(""));
  }

  private void layout(CutJob.Layout layout) {
    Table table = new Table("lrrr");
    table.row("part", "x", "y", "turned");
    for (CutJob.Lying part : layout.parts()) {
      table.row(
          part.name(),
          Figures.column(part.at().x(), "mm"),
          Figures.column(part.at().y(), "mm"),
          Numbers.brief(part.turn(), 2) + " deg");
    }
    screen.line("");
    table.lines().forEach(screen::line);
    String boxes =
        layout.boxesUsed().isPresent()
            ? "Laid out by their boxes the parts would take "
                + Figures.of(layout.boxesUsed().get(), "mm")
                + ", "
                + percent(layout.boxesYield().orElseThrow())
                + "."
            : "Laid out by their boxes the parts would have no room on it.";
    paragraph(
        "Sheet "
            + Numbers.brief(layout.width(), 2)
            + " x "
            + Figures.of(layout.height(), "mm")
            + "; the parts take its lower "
            + Figures.of(layout.used(), "mm")
            + ", and "
            + percent(layout.yield())
            + " of that become parts. "
            + boxes);
  }

  private static String percent(double share) {
    return Numbers.fixed(100 * share, 1) + " %";
  }

  private void leftOvers(CutJob job) {
    if (job.proof().isEmpty()) {
      return;
    }
    screen.line("");
    if (job.leftOvers().isEmpty()) {
      screen.line("The cutter reaches everything.");
      return;
    }
    screen.line("Left for the file, " + Phrase.count(job.leftOvers().size(), "place") + ":");
    Table table = new Table("rlrll");
    for (CutJob.Left left : job.leftOvers().stream().limit(LISTED).toList()) {
      table.row(
          Integer.toString(left.number()),
          left.label(),
          Numbers.fixed(left.reach(), 2) + " mm",
          Figures.at(left.at()),
          left.place().toString());
    }
    table.lines().forEach(line -> screen.line("  " + line));
    if (job.leftOvers().size() > LISTED) {
      screen.line("  and " + (job.leftOvers().size() - LISTED) + " more");
    }
  }

  private void wasteHoles(CutJob job) {
    if (job.wasteHoles().isEmpty()) {
      return;
    }
    screen.line("");
    screen.line("Holes to drill in the waste first:");
    Table table = new Table("llrrr");
    table.row("edge", "for", "x", "y", "diameter");
    for (CutJob.WasteHole hole : job.wasteHoles()) {
      table.row(
          hole.label(),
          switch (hole.why()) {
            case START -> "starting";
            case TURN -> "turning the blade";
            case START_AND_TURN -> "starting and turning";
            case DRILL -> "all of it, by drill";
            case HOLE_SAW -> "all of it, by hole saw";
          },
          Figures.column(hole.at().x(), "mm"),
          Figures.column(hole.at().y(), "mm"),
          Figures.column(hole.diameter(), "mm"));
    }
    table.lines().forEach(line -> screen.line("  " + line));
  }

  private void proof(CutJob.Proof proof) {
    paragraph(
        "Checked as written, "
            + proof.decimals()
            + " decimals: worst gouge "
            + Numbers.fixed(proof.gouge(), 4)
            + " mm, worst left standing apart from the above "
            + Numbers.fixed(proof.remaining(), 4)
            + " mm, radii of arcs within "
            + Numbers.fixed(proof.arcs(), 4)
            + " mm"
            + (proof.deepest() < 0 ? ", deepest " + Figures.of(proof.deepest(), "mm") + "." : "."));
  }

  private void figures(List<SourcedFigure> figures) {
    if (figures.isEmpty()) {
      return;
    }
    screen.line("");
    screen.line("To start from; listen, look and adjust:");
    Map<String, Integer> sources = new LinkedHashMap<>();
    Table table = new Table("lrll");
    for (SourcedFigure figure : figures) {
      boolean brief = figure.basis().length() <= 40;
      String basis =
          brief
              ? figure.basis()
              : "source " + sources.computeIfAbsent(figure.basis(), text -> sources.size() + 1);
      table.row(figure.name(), Numbers.brief(figure.value(), 3), figure.unit(), basis);
    }
    table.lines().forEach(line -> screen.line("  " + line));
    sources.forEach((basis, number) -> paragraph("Source " + number + ": " + basis));
  }

  private void paragraph(String text) {
    Table.wrapped(text, 0, WIDTH).forEach(screen::line);
  }
}
