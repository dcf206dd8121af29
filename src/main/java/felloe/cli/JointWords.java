package felloe.cli;

import felloe.geometry.Numbers;
import felloe.kit.JointAnswer;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The fasteners of a plate as text. */
final class JointWords {

  private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]{1,6})");

  private static final int WIDTH = 100;

  private final Screen screen;

  JointWords(Screen screen) {
    this.screen = screen;
  }

  void show(JointAnswer answer) {
    if (answer.joints().isEmpty()) {
      return;
    }
    screen.line("");
    screen.line("Screws");
    Table screws = new Table("lllrrl");
    screws.row("joint", "screws", "class", "clamps, mm", "in thread, mm", "start at, N m");
    for (JointAnswer.Row row : answer.joints()) {
      screws.row(
          joint(row),
          row.holes().size() + " " + row.screw() + " " + row.head(),
          row.strength(),
          Numbers.brief(row.clamped(), 2),
          Numbers.brief(row.engagement(), 1)
              + " ("
              + Numbers.brief(row.engagementRatio(), 1)
              + " d)",
          row.torque().words());
    }
    screws.lines().forEach(screen::line);
    for (JointAnswer.Row row : answer.joints()) {
      paragraph(row.name() + ": " + row.stack());
    }
    answer.judgedWords().forEach(this::paragraph);
    answer.notes().forEach(note -> paragraph("Note, " + note));
    answer.cautions().forEach(caution -> paragraph("! " + caution));
  }

  /** A joint that is named after its holes needs no more. */
  private static String joint(JointAnswer.Row row) {
    String holes = holes(row.holes());
    return row.name().equals(String.join(", ", row.holes())) ? holes : row.name() + " " + holes;
  }

  private static String holes(List<String> labels) {
    return labels.size() > 2 && inOneRun(labels)
        ? labels.get(0) + " to " + labels.get(labels.size() - 1)
        : String.join(", ", labels);
  }

  /** Whether the labels count on without a gap, such as G1, G2, G3. */
  private static boolean inOneRun(List<String> labels) {
    Matcher first = NUMBERED.matcher(labels.get(0));
    if (!first.matches()) {
      return false;
    }
    int from = Integer.parseInt(first.group(2));
    for (int i = 0; i < labels.size(); i++) {
      if (!labels.get(i).equals(first.group(1) + (from + i))) {
        return false;
      }
    }
    return true;
  }

  private void paragraph(String text) {
    Table.wrapped(text, 0, WIDTH).forEach(screen::line);
  }
}
