package felloe.cli;

import felloe.geometry.Numbers;
import felloe.kit.StripsAnswer;
import felloe.kit.StripsAnswer.Row;
import felloe.kit.StripsAnswer.Scatter;
import java.util.Optional;

/** Tested strips as text. */
final class StripsText {

  private static final int WIDTH = 100;

  private StripsText() {}

  static void show(Screen screen, StripsAnswer answer) {
    screen.line("Strips bent by " + answer.method());
    screen.line("");
    Table table = new Table("lrrrrrrrrr");
    table.row(
        "strip",
        "width",
        "thickness",
        "span",
        "span/t",
        "load N",
        "deflection",
        "strength MPa",
        "modulus GPa",
        "strain %");
    for (Row row : answer.strips()) {
      table.row(
          row.label(),
          Numbers.fixed(row.width(), 2),
          Numbers.fixed(row.thickness(), 2),
          Numbers.fixed(row.span(), 1),
          Numbers.fixed(row.spanRatio(), 1),
          Numbers.fixed(row.load(), 1),
          maybe(row.deflection(), 1, 2),
          row.broke() ? maybe(row.strength(), 1, 0) : "held",
          Numbers.fixed(row.modulus() / 1000, 1),
          maybe(row.strain(), 100, 2));
    }
    table.lines().forEach(screen::line);
    screen.line("");
    Table scatter = new Table("lrrrrlrr");
    scatter.row("", "strips", "mean", "deviation", "lowest", "true mean, 95 %", "k", "lower bound");
    answer.strength().ifPresent(s -> row(scatter, "strength, MPa", s, 1, 0));
    row(scatter, "modulus, GPa", answer.modulus(), 0.001, 1);
    scatter.lines().forEach(screen::line);
    Table.wrapped("Lower bound: " + answer.bound() + ".", 0, WIDTH).forEach(screen::line);
    screen.line("");
    answer
        .designStrength()
        .ifPresent(
            strength ->
                screen.line(
                    "Design by "
                        + Numbers.fixed(strength, 0)
                        + " MPa, which strains the outer face by "
                        + Numbers.fixed(answer.designStrain().orElseThrow() * 100, 2)
                        + " %; for stiffness by "
                        + Numbers.fixed(answer.modulus().mean() / 1000, 1)
                        + " GPa."));
    for (String note : answer.notes()) {
      Table.wrapped(note, 0, WIDTH).forEach(screen::line);
    }
    screen.line("");
    for (String caution : answer.cautions()) {
      Table.wrapped("! " + caution, 0, WIDTH).forEach(screen::line);
    }
  }

  private static void row(Table table, String name, Scatter s, double factor, int decimals) {
    table.row(
        name,
        "" + s.count(),
        Numbers.fixed(s.mean() * factor, decimals),
        s.count() == 1 ? "-" : Numbers.fixed(s.variation() * 100, 1) + " %",
        Numbers.fixed(s.least() * factor, decimals),
        s.from().isEmpty()
            ? "-"
            : maybe(s.from(), factor, decimals) + " to " + maybe(s.to(), factor, decimals),
        maybe(s.factor(), 1, 3),
        maybe(s.lower(), factor, decimals));
  }

  private static String maybe(Optional<Double> value, double factor, int decimals) {
    return value.map(v -> Numbers.fixed(v * factor, decimals)).orElse("-");
  }
}
