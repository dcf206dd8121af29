package felloe.cli;

import felloe.kit.DrilledAnswer;
import felloe.kit.DrilledAnswer.HoleRow;
import felloe.kit.DrilledAnswer.OpeningRow;
import felloe.kit.DrilledAnswer.Way;
import felloe.kit.HubAnswer;
import felloe.plate.Finding;
import felloe.plate.Verdict;
import felloe.service.Study;
import java.util.ArrayList;
import java.util.List;

/** The proof of a drilled plate as text. */
final class DrilledText {

  private static final int WIDTH = 100;

  private final Screen screen;
  private final boolean all;
  private final boolean sources;

  DrilledText(Screen screen, boolean all, boolean sources) {
    this.screen = screen;
    this.all = all;
    this.sources = sources;
  }

  void show(DrilledAnswer answer) {
    HubAnswer fit = answer.fit();
    screen.line("As drilled, by " + answer.file());
    paragraph(sentence(answer, fit));
    for (Finding finding : answer.findings()) {
      if (!finding.advice().isEmpty()) {
        String word = finding.verdict() == Verdict.FAIL ? "FAIL     " : "caution  ";
        paragraph(word + finding.rule() + ", " + finding.subject() + ": " + finding.advice());
      }
    }
    screen.line("");
    holes(answer);
    paragraph(tolerance(answer));
    screws(fit);
    MeasureText.suspects(screen, answer.suspects());
    cures(answer);
    answer.notes().forEach(note -> paragraph("Note: " + note));
    screen.line("");
    screen.line("As drawn");
    Study check = answer.check();
    felloe.render.TextRenderer.lines(
            felloe.report.CheckReport.of(check),
            screen.width(),
            java.util.EnumSet.of(felloe.document.Block.Depth.SCREEN))
        .forEach(screen::line);
  }

  private static String sentence(DrilledAnswer answer, HubAnswer fit) {
    String room =
        fit.clearance().isPresent()
            ? ": the tightest screw has "
                + mm(fit.clearance().get())
                + " mm all round as measured, "
                + mm(fit.worst().orElse(0.0))
                + " mm at the worst of hub and readings"
            : "";
    String word =
        switch (answer.verdict()) {
          case PASS -> "pass     It goes on the hub " + fit.hub().name();
          case CAUTION -> "caution  It goes on the hub " + fit.hub().name() + ", but see below";
          case FAIL ->
              fit.enters()
                  ? "FAIL     Its screws enter the hub " + fit.hub().name() + ", but see below"
                  : "FAIL     It does not go on the hub " + fit.hub().name();
        };
    return word + room + ".";
  }

  private void holes(DrilledAnswer answer) {
    Table table = new Table("lrrrrrrl");
    table.row("hole", "x", "y", "diameter", "position", "+-", "may be", "");
    for (HoleRow hole : answer.holes()) {
      table.row(
          hole.label(),
          mm(hole.at().x()),
          mm(hole.at().y()),
          mm(hole.diameter()),
          mm(hole.position()),
          mm(2 * hole.unsure()),
          hole.tolerance().map(t -> t < 0 ? "none" : mm(t)).orElse(""),
          hole.misses() ? "misses its zone" : "");
    }
    table.lines().forEach(screen::line);
  }

  private static String tolerance(DrilledAnswer answer) {
    String left =
        answer.fixed() < 0
            ? "nothing is left for drilling (" + mm(answer.fixed()) + " mm)"
            : "drilling may have a zone of " + mm(answer.fixed()) + " mm";
    return "Position is the diameter of the zone that the centre just keeps. By the formula for"
        + " fixed fasteners "
        + left
        + (answer.withBonus() ? ", more by what a hole is larger than drawn" : "")
        + "; with clear holes in the hub it would be "
        + mm(answer.floating())
        + " mm. A hole that misses its zone may still do: the screws decide.";
  }

  private void screws(HubAnswer fit) {
    if (fit.screws().isEmpty()) {
      return;
    }
    screen.line("");
    Table table = new Table("llrrrr");
    table.row("screw", "hole", "diameter", "off by", "room", "at worst");
    for (HubAnswer.Screw s : fit.screws()) {
      table.row(
          s.screw() + " " + s.thread(),
          s.hole(),
          mm(s.diameter()),
          mm(s.distance()),
          mm(s.clearance()),
          mm(s.worst()));
    }
    table.lines().forEach(screen::line);
  }

  private void cures(DrilledAnswer answer) {
    answer
        .cures()
        .forEach(cure -> paragraph((cure.works() ? "Cure: " : "No cure: ") + cure.words()));
    for (Way way : answer.openings()) {
      List<String> holes = new ArrayList<>();
      for (OpeningRow o : way.holes()) {
        holes.add(
            o.hole() + " from " + mm(o.from()) + " to " + mm(o.to()) + " mm (" + o.series() + ")");
      }
      paragraph(
          "Cure: Open "
              + String.join(", ", holes)
              + ": the tightest screw then has "
              + mm(way.clearance())
              + " mm all round as measured, "
              + mm(way.worst())
              + " mm at the worst.");
    }
    if (answer.verdict() == Verdict.FAIL) {
      paragraph("Do not force screws in, and do not file threads: mend the plate, or scrap it.");
    }
  }

  private static String mm(double value) {
    return Figures.column(value, "mm");
  }

  private void paragraph(String text) {
    Table.wrapped(text, 0, WIDTH).forEach(screen::line);
  }
}
