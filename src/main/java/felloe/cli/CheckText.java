package felloe.cli;

import felloe.cli.FindingRows.Row;
import felloe.kit.CheckAnswer;
import felloe.kit.HubAnswer;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Note;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The answer of a check as text. */
final class CheckText {

  private static final int WIDTH = 100;
  private static final int INDENT = 9;

  private final Screen screen;
  private final boolean all;
  private final boolean sources;

  /**
   * An answer's text.
   *
   * @param all whether each finding that passed has a line of its own
   * @param sources whether each limit's source is told
   */
  CheckText(Screen screen, boolean all, boolean sources) {
    this.screen = screen;
    this.all = all;
    this.sources = sources;
  }

  void show(CheckAnswer answer) {
    screen.line(heading(answer));
    screen.line("");
    findings(answer.findings());
    answer.hub().ifPresent(this::hub);
    notes(answer.plate().notes());
    screen.line("");
    screen.line(summary(answer));
    if (answer.hub().isEmpty()) {
      paragraph("The shape file names no hub: compare it with one by --hub.", 0);
    }
    for (String caution : answer.cautions()) {
      paragraph("! " + caution, 0);
    }
  }

  private static String heading(CheckAnswer answer) {
    return answer.plate().title() + " (revision " + answer.plate().revision() + ")";
  }

  private void findings(List<Finding> findings) {
    List<Row> rows = FindingRows.of(findings, all);
    Table table = new Table("llllll");
    for (Row row : rows) {
      Finding f = row.finding();
      table.row(
          f.rule(),
          f.subject() + (row.alike() > 1 ? ", nearest of " + row.alike() : ""),
          Figures.of(f.figure()),
          f.limit().map(CheckText::limit).orElse(""),
          f.at().map(Figures::at).orElse(""),
          f.place().toString());
    }
    List<String> lines = table.lines();
    for (int i = 0; i < lines.size(); i++) {
      Finding f = rows.get(i).finding();
      screen.line(verdict(f.verdict()) + lines.get(i));
      if (f.verdict() != Verdict.PASS) {
        paragraph((sentence(f.why()) + " " + sentence(f.advice())).strip(), INDENT);
      }
      if (sources) {
        f.limit().ifPresent(limit -> paragraph("Limit: " + limit.source(), INDENT));
      }
    }
  }

  /** A text that begins with a capital and ends with a stop. */
  private static String sentence(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.offsetByCodePoints(0, 1);
    String begun = text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
    return ".!?".indexOf(begun.charAt(begun.length() - 1)) >= 0 ? begun : begun + ".";
  }

  private static String limit(Limit limit) {
    return (limit.sense() == Sense.AT_LEAST ? "at least " : "at most ")
        + Figures.of(limit.value(), "")
        + (limit.overridden() ? " (yours)" : "");
  }

  /** The word at the head of a line; colour only stresses it. */
  private String verdict(Verdict verdict) {
    String word =
        switch (verdict) {
          case PASS -> "pass";
          case CAUTION -> "caution";
          case FAIL -> "FAIL";
        };
    String padded = word + " ".repeat(INDENT - word.length());
    if (!screen.colour() || verdict == Verdict.PASS) {
      return padded;
    }
    return (verdict == Verdict.FAIL ? "\u001b[1;31m" : "\u001b[33m") + padded + "\u001b[0m";
  }

  private void hub(HubAnswer fit) {
    screen.line("");
    screen.line("Hub " + fit.hub().name() + ": " + fit.hub().title());
    fit.turn().ifPresent(turn -> paragraph(placement(fit, turn), 0));
    Table screws = new Table("llrrrrl");
    screws.row("screw", "hole", "diameter", "room", "at worst", "off by", "");
    for (HubAnswer.Screw s : fit.screws()) {
      screws.row(
          s.screw() + " " + s.thread(),
          s.hole(),
          Figures.column(s.diameter(), "mm"),
          Figures.column(s.clearance(), "mm"),
          Figures.column(s.worst(), "mm"),
          Figures.column(s.distance(), "mm"),
          s.series());
    }
    if (!fit.screws().isEmpty()) {
      screen.line("");
      screws.lines().forEach(screen::line);
      paragraph(
          "Room is all round, in mm, as drawn and at the worst of the tolerances (holes made: "
              + fit.drilling()
              + ").",
          0);
    }
    if (!fit.spare().isEmpty()) {
      paragraph("Holes without a screw: " + String.join(", ", fit.spare()), 0);
    }
    HubText.calliper(screen, fit.calliper());
    for (HubAnswer.Difference off : fit.mismatches()) {
      paragraph(
          "Off: "
              + off.figure()
              + " of "
              + off.subject()
              + " is "
              + Figures.of(off.plate(), off.unit())
              + "; the hub's is "
              + Figures.of(off.hub(), off.unit())
              + ".",
          0);
    }
    for (HubAnswer.Remedy cure : fit.cures()) {
      paragraph((cure.works() ? "Cure: " : "No cure: ") + cure.words(), 0);
    }
    if (!fit.complete()) {
      paragraph("There were too many holes to try every pairing; a better one may exist.", 0);
    }
  }

  private static String placement(HubAnswer fit, double turn) {
    boolean upright = Math.abs(turn) < 0.005;
    String plate =
        upright
            ? "with the plate upright"
            : "with the plate turned " + Figures.of(turn, "deg") + " counter-clockwise";
    String turned =
        fit.enters() ? "All enter " + plate : "Not all enter; they come nearest " + plate;
    String again = fit.step() < 359.9 ? ", and again every " + Figures.of(fit.step(), "deg") : "";
    return turned + again + ".";
  }

  private void notes(List<Note> notes) {
    if (!notes.isEmpty()) {
      screen.line("");
    }
    for (Note note : notes) {
      paragraph("Note, " + note.place() + ": " + note.text(), 0);
    }
  }

  static String summary(CheckAnswer answer) {
    List<String> parts = new ArrayList<>();
    parts.add(counted(answer.count(Verdict.FAIL), "fail"));
    parts.add(counted(answer.count(Verdict.CAUTION), "caution"));
    parts.add(answer.count(Verdict.PASS) + " passed");
    return String.join(", ", parts) + ".";
  }

  static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }

  private void paragraph(String text, int indent) {
    Table.wrapped(text, indent, WIDTH).forEach(screen::line);
  }
}
