package felloe.cli;

import felloe.kit.DrillAnswer;
import felloe.kit.DrillOrder;
import java.util.ArrayList;
import java.util.List;

/** Hole schedule and order of work as text. */
final class DrillWords {

  private static final int WIDTH = 100;

  private final Screen screen;

  DrillWords(Screen screen) {
    this.screen = screen;
  }

  void show(DrillAnswer answer) {
    schedule(answer);
    order(answer.order());
    new JointWords(screen).show(answer.joints());
    answer.stop().ifPresent(words -> paragraph("! " + words, 0));
    for (String caution : answer.cautions()) {
      paragraph("! " + caution, 0);
    }
  }

  private void schedule(DrillAnswer answer) {
    Table table = new Table("llrrrrr");
    table.row("hole", "role", "x", "y", "radius", "angle", "diameter");
    for (DrillAnswer.Row row : answer.holes()) {
      table.row(
          row.label(),
          row.role(),
          Figures.column(row.at().x(), "mm"),
          Figures.column(row.at().y(), "mm"),
          Figures.column(row.radius(), "mm"),
          Figures.column(row.angle(), "deg"),
          Figures.column(row.diameter(), "mm"));
    }
    screen.line(answer.plate().title() + " (revision " + answer.plate().revision() + ")");
    screen.line("");
    table.lines().forEach(screen::line);
    screen.line("");
    screen.line("Millimetres and degrees from the hub axis, as the driver sees the wheel.");
  }

  private void order(DrillOrder order) {
    if (order.groups().isEmpty()) {
      return;
    }
    screen.line("");
    screen.line("Order of work, for " + order.material());
    for (String words : order.before()) {
      bullet(words);
    }
    for (DrillOrder.Group group : order.groups()) {
      group(group);
    }
    order.leftOutWords().ifPresent(words -> paragraph(words, 0));
    checks("Look after the pilot drill, mm", order.afterPilot(), List.of(), false);
    checks("Readings of the finished hub pattern, mm", order.readings(), order.sizes(), true);
    order.notMeasuredWords().ifPresent(words -> paragraph(words, 3));
    checks("Bore and grips, mm", order.others(), List.of(), false);
    screen.line("");
  }

  private void group(DrillOrder.Group group) {
    screen.line("");
    paragraph(group.heading(), 0);
    paragraph(group.wanted(), 3);
    group.notes().forEach(note -> paragraph(note, 3));
    Table table = new Table("lrrr");
    table.row("step", "\u00d8 mm", "1/min", "s");
    List<DrillOrder.Step> steps = group.steps();
    for (DrillOrder.Step step : steps) {
      table.row(
          step.stage(),
          step.diameter().map(d -> Figures.column(d, "mm")).orElse(""),
          step.setting().map(n -> Figures.of(n, "")).orElse(""),
          step.seconds().map(s -> Figures.of(Math.max(1, Math.rint(s)), "")).orElse(""));
    }
    List<String> lines = table.lines();
    int width = lines.stream().mapToInt(String::length).max().orElse(0) + 5;
    line(lines.get(0), "tool, what to do", width);
    for (int i = 0; i < steps.size(); i++) {
      line(lines.get(i + 1), steps.get(i).how(), width);
    }
  }

  /** A row of figures with words beside it, on as many lines as these take. */
  private void line(String figures, String words, int width) {
    List<String> beside = Table.wrapped(words, width, WIDTH);
    String first = "   " + figures;
    screen.line((first + beside.get(0).substring(Math.min(first.length(), width))).stripTrailing());
    beside.subList(1, beside.size()).forEach(screen::line);
  }

  private void checks(
      String title, List<DrillOrder.Check> checks, List<DrillOrder.Size> sizes, boolean numbered) {
    if (checks.isEmpty()) {
      return;
    }
    screen.line("");
    screen.line(title);
    Table table = new Table("rllrrr");
    table.row("", "holes", "over", "true", "least", "most");
    for (DrillOrder.Size size : sizes) {
      table.row(
          Integer.toString(size.number()),
          size.hole(),
          "diameter",
          Figures.column(size.least(), "mm"),
          Figures.column(size.least(), "mm"),
          Figures.column(size.most(), "mm"));
    }
    for (DrillOrder.Check check : checks) {
      table.row(
          numbered ? Integer.toString(check.number()) : "",
          check.from() + " to " + check.to(),
          check.over(),
          Figures.column(check.nominal(), "mm"),
          Figures.column(check.least(), "mm"),
          Figures.column(check.most(), "mm"));
    }
    table.lines().forEach(row -> screen.line("   " + row));
  }

  private void bullet(String text) {
    List<String> lines = new ArrayList<>(Table.wrapped(text, 2, WIDTH));
    lines.set(0, "- " + lines.get(0).strip());
    lines.forEach(screen::line);
  }

  private void paragraph(String text, int indent) {
    Table.wrapped(text, indent, WIDTH).forEach(screen::line);
  }
}
