package felloe.cli;

import felloe.kit.DrillAnswer;
import felloe.kit.Kit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The hole schedule. */
final class DrillCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "drill",
            "Shows the hole schedule: where each hole is, from the hub axis, and how large.");
    Options.shapes(spec, false);
    spec.addOption(Options.format("text, csv or json"));
    Options.examples(
        spec, "  felloe drill heron.yaml", "  felloe drill heron.yaml --format csv > holes.csv");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    String format = Options.chosenFormat(call, "text", "csv", "json");
    DrillAnswer answer = kit.drill(Options.shape(call));
    switch (format) {
      case "csv" -> screen.data(answer.csv());
      case "json" -> screen.data(answer.json());
      default -> text(screen, answer);
    }
    return Exit.WELL;
  }

  private static void text(Screen screen, DrillAnswer answer) {
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
    for (String caution : answer.cautions()) {
      Table.wrapped("! " + caution, 0, 100).forEach(screen::line);
    }
  }
}
