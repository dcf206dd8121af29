package felloe.cli;

import felloe.document.Phrase;
import felloe.geometry.Numbers;
import felloe.kit.MeasureAnswer;
import felloe.kit.MeasureAnswer.CandidateRow;
import felloe.kit.MeasureAnswer.HoleRow;
import felloe.kit.MeasureAnswer.NextRow;
import felloe.kit.MeasureAnswer.ReadingRow;
import felloe.kit.MeasureAnswer.Ring;
import felloe.kit.MeasureAnswer.SuspectRow;
import java.util.List;
import java.util.Optional;

/** What calliper readings tell, as text. */
final class MeasureText {

  private static final int WIDTH = 100;

  private final Screen screen;

  MeasureText(Screen screen) {
    this.screen = screen;
  }

  void show(MeasureAnswer answer) {
    answer.pattern().ifPresentOrElse(ring -> ring(answer, ring), () -> noRing(answer));
    suspects(screen, answer.suspects());
    holes(answer.holes());
    readings(answer.readings());
    candidates(answer);
    next(answer);
    for (String caution : answer.cautions()) {
      paragraph("! " + caution);
    }
  }

  private void noRing(MeasureAnswer answer) {
    if (answer.scatter() > 1) {
      paragraph(
          "The readings contradict each other so much that they tell no circle. Measure again,"
              + " first what is named below.");
      return;
    }
    screen.line("The holes stand on one line, or nearly; the readings tell no circle.");
  }

  private void ring(MeasureAnswer answer, Ring ring) {
    screen.line(
        answer.count()
            + " "
            + answer.on()
            + ", "
            + ring.spacing()
            + ", on a circle of "
            + mm(ring.pcd())
            + " +- "
            + mm((ring.high() - ring.low()) / 2)
            + " mm (95 in 100)"
            + ring.size()
                .map(s -> "; diameter " + mm(s) + " +- " + mm(2 * ring.sizeError()) + " mm")
                .orElse(""));
    if (ring.readsAs().size() > 0) {
      String within = String.join(", ", ring.readsAs());
      boolean several = ring.readsAs().size() > 1;
      paragraph(
          "Usual figures within that: "
              + within
              + (several ? "; the calliper cannot tell" + " them apart here." : "."));
    }
    if (ring.assumed()) {
      paragraph(
          "There are too few readings to find each hole by itself. The figures hold if the holes"
              + " stand evenly in the order of their numbers.");
    } else {
      paragraph("No hole is more than " + mm(ring.unevenness()) + " mm off the nearest even ring.");
    }
    ring.evenPcd()
        .ifPresent(
            e ->
                paragraph(
                    "If they stand evenly, the circle is "
                        + mm(e[0])
                        + " +- "
                        + mm((e[2] - e[1]) / 2)
                        + " mm."));
    if (answer.scatter() > 1) {
      paragraph(
          (answer.scatter() > 3 && ring.assumed()
                  ? "They do not stand evenly, or a reading is wrong, or the count. "
                  : "")
              + "The readings differ "
              + Numbers.fixed(answer.scatter(), 1)
              + " times as much as their plus and minus allows; the bounds are made as wide."
              + " Measure again with care, or the holes are not round.");
    }
    if (answer.clockwise()) {
      paragraph("By the edges the holes are numbered clockwise.");
    }
  }

  static void suspects(Screen screen, List<SuspectRow> suspects) {
    if (suspects.isEmpty()) {
      return;
    }
    screen.line("");
    boolean together = suspects.stream().anyMatch(s -> !s.alone());
    screen.line(
        together ? "One of these looks like a slip; measure them again:" : "Looks like a slip:");
    Table table = new Table("lrrl");
    for (SuspectRow s : suspects) {
      String sign = s.off() > 0 ? "+" : "";
      table.row(
          s.holes() + " over " + s.over(),
          "reads " + mm(s.reads()),
          "off by " + sign + mm(s.off()),
          s.place()
              + (s.hint().isEmpty() ? "" : "; " + s.hint())
              + (s.ifEven() ? "; if the holes stand evenly" : ""));
    }
    table.lines().forEach(line -> screen.line("  " + line));
    if (!together && suspects.stream().noneMatch(SuspectRow::ifEven)) {
      screen.line("  The figures are without it. Measure it again.");
    }
  }

  private void holes(List<HoleRow> holes) {
    screen.line("");
    Table table = new Table("lrrrrrr");
    table.row("hole", "x", "y", "error x", "error y", "diameter", "error");
    for (HoleRow hole : holes) {
      table.row(
          hole.label(),
          mm(hole.at().x()),
          mm(hole.at().y()),
          Numbers.fixed(hole.errorX(), 3),
          Numbers.fixed(hole.errorY(), 3),
          hole.size().map(MeasureText::mm).orElse("?"),
          hole.size().map(s -> Numbers.fixed(hole.sizeError(), 3)).orElse(""));
    }
    table.lines().forEach(screen::line);
  }

  private void readings(List<ReadingRow> readings) {
    screen.line("");
    Table table = new Table("llrrrr");
    table.row("reading", "over", "reads", "off", "checked", "w");
    for (ReadingRow r : readings) {
      table.row(
          r.holes(),
          r.over(),
          mm(r.reads()),
          Numbers.fixed(r.residual(), 3),
          Numbers.fixed(100 * r.redundancy(), 0) + " %",
          Numbers.fixed(r.w(), 1));
    }
    table.lines().forEach(screen::line);
  }

  private void candidates(MeasureAnswer answer) {
    if (answer.pattern().isEmpty()) {
      return;
    }
    screen.line("");
    if (answer.candidates().isEmpty()) {
      screen.line("No known hub has " + answer.count() + " screws.");
      return;
    }
    Table table = new Table("lrrrrl");
    table.row("hub", "circle off", "hole off", "room", "at worst", "");
    for (CandidateRow c : answer.candidates()) {
      String enters = c.clearance().isEmpty() ? "" : c.enters() ? "enters" : "does not enter";
      boolean odd = !c.sizeSuits().orElse(true);
      table.row(
          c.hub(),
          mm(c.pcdOff()),
          mm(c.off()),
          c.clearance().map(MeasureText::mm).orElse("?"),
          c.worst().map(MeasureText::mm).orElse("?"),
          enters + (odd ? (enters.isEmpty() ? "" : "; ") + "size does not suit" : ""));
    }
    table.lines().forEach(screen::line);
    CandidateRow first = answer.candidates().get(0);
    if (!first.like().isEmpty()) {
      paragraph(
          "These readings cannot tell "
              + first.hub()
              + " from "
              + String.join(", ", first.like())
              + ": they lie closer than the readings and a hub's own tolerance allow.");
    }
  }

  private void next(MeasureAnswer answer) {
    screen.line("");
    if (answer.waiting() > 0) {
      paragraph(Phrase.count(answer.waiting(), "reading") + " not taken yet.");
    }
    Optional<NextRow> next = answer.next().stream().findFirst();
    next.ifPresent(
        n ->
            paragraph(
                "To be surer, measure "
                    + String.join(", then ", answer.next().stream().map(NextRow::words).toList())
                    + "."));
  }

  static String mm(double value) {
    return Figures.column(value, "mm");
  }

  private void paragraph(String text) {
    Table.wrapped(text, 0, WIDTH).forEach(screen::line);
  }
}
