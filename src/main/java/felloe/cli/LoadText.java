package felloe.cli;

import felloe.geometry.Numbers;
import felloe.kit.LoadAnswer;
import felloe.kit.LoadAnswer.Row;
import felloe.kit.LoadAnswer.ScrewRow;
import felloe.kit.LoadAnswer.Tried;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Loads on a plate as text. */
final class LoadText {

  private static final int WIDTH = 110;

  /** A margin beyond which more is of no use to tell. */
  private static final double MOST = 99;

  private final Screen screen;

  LoadText(Screen screen) {
    this.screen = screen;
  }

  void show(LoadAnswer answer) {
    screen.line(
        answer.plate().title()
            + ": "
            + answer.plate().stock().material().title()
            + ", "
            + answer.plyCount().map(n -> n + (n == 1 ? " ply, " : " plies, ")).orElse("")
            + Figures.of(answer.thickness(), "mm"));
    wrapped("It is " + answer.held() + ".");
    answer.assumptions().forEach(a -> wrapped("Taken: " + a + "."));
    screen.line("");
    cases(answer);
    answer.leftOut().forEach(left -> wrapped("Left out: " + left + "."));
    screws(answer);
    tried(answer);
    settled(answer);
    sources(answer);
    screen.line("");
    answer.cautions().forEach(caution -> wrapped("! " + caution));
  }

  private void wrapped(String text) {
    Table.wrapped(text, 0, WIDTH).forEach(screen::line);
  }

  private void cases(LoadAnswer answer) {
    Table table = new Table("llrrrrlrrl");
    table.row("case", "", "hands mm", "most mm", "N/mm", "MPa", "at", "strain %", "margin", "");
    for (Row row : answer.rows()) {
      table.row(
          row.name(),
          row.title(),
          Numbers.fixed(row.atLoad(), 2),
          Numbers.fixed(row.peak(), 2),
          row.stiffness().isPresent() ? Numbers.fixed(row.stiffness().getAsDouble(), 0) : "",
          Numbers.fixed(row.stress(), 0),
          Figures.at(row.at()) + " " + row.face(),
          Numbers.fixed(100 * row.strain(), 3),
          margin(row.margin()),
          row.fall() ? "told only" : row.met() ? "" : "NOT AS WANTED");
    }
    table.lines().forEach(screen::line);
    screen.line("");
    for (Row row : answer.rows()) {
      wrapped(
          row.name()
              + ": "
              + row.forces()
              + ", times "
              + Numbers.brief(row.factor(), 2)
              + " for the margin");
    }
    Set<String> measures = new LinkedHashSet<>();
    answer.rows().forEach(row -> measures.add(row.measure()));
    wrapped(
        "Forces: x to the right, y up, z toward the driver. MPa: "
            + String.join("; ", measures)
            + ", at the place of the least margin. Margin: how much more the load times its factor"
            + " may grow, so that 0 is the edge and 1 is twice; wanted: "
            + Numbers.brief(answer.wantedMargin(), 2)
            + answer
                .wantedDeflection()
                .map(d -> ", and no more than " + Figures.of(d, "mm") + " at the hands")
                .orElse("")
            + ".");
    warnings(answer.rows());
  }

  /** Each warning once, with the cases that it is about. */
  private void warnings(List<Row> rows) {
    Map<String, List<String>> byWords = new LinkedHashMap<>();
    for (Row row : rows) {
      for (String warning : row.warnings()) {
        byWords.computeIfAbsent(warning, w -> new ArrayList<>()).add(row.name());
      }
    }
    byWords.forEach(
        (words, names) -> wrapped("Note on " + String.join(", ", names) + ": " + words + "."));
  }

  private static String margin(double margin) {
    return margin > MOST ? "over 99" : Numbers.fixed(margin, 2);
  }

  private void screws(LoadAnswer answer) {
    if (answer.screwRows().isEmpty()) {
      return;
    }
    screen.line("");
    Table table = new Table("lrlrlrr");
    table.row("screw", "tension N", "in", "shear N", "in", "clamp over tension", "bearing MPa");
    for (ScrewRow s : answer.screwRows()) {
      table.row(
          s.label(),
          Numbers.fixed(s.tension(), 0),
          s.tensionCase(),
          Numbers.fixed(s.shear(), 0),
          s.shearCase(),
          s.clampRatio().map(r -> margin(r)).orElse("-"),
          s.bearing().map(b -> Numbers.fixed(b, 0)).orElse("-"));
    }
    table.lines().forEach(screen::line);
    double limit = answer.screwRows().get(0).bearingLimit();
    wrapped(
        (answer.clamped()
                ? "Shared out by the elastic bolt group, without prying."
                : "With what the plate's prying on the hub's face adds.")
            + " Clamp over tension should stay well above 1, or the joint opens; the plate stands"
            + " some "
            + Numbers.fixed(limit, 0)
            + " MPa of bearing. 'felloe check' judges the screws by the loads of the joints.");
  }

  private void tried(LoadAnswer answer) {
    if (answer.tried().size() < 2) {
      return;
    }
    screen.line("");
    boolean plies = answer.plies();
    boolean cost = answer.tried().stream().anyMatch(t -> t.cost().isPresent());
    Table table = new Table("rrrrrlrll");
    table.row(
        plies ? "plies" : "",
        "mm",
        "mass g",
        cost ? "cost " + answer.currency() : "",
        "margin",
        "in",
        "hands mm",
        "in",
        "");
    for (Tried t : answer.tried()) {
      table.row(
          t.plies().map(n -> "" + n).orElse(""),
          Numbers.fixed(t.thickness(), 2),
          Numbers.fixed(t.mass(), 0),
          t.cost().isPresent() ? Numbers.fixed(t.cost().getAsDouble(), 2) : "",
          margin(t.margin()),
          t.marginCase(),
          Numbers.fixed(t.deflection(), 2),
          t.deflectionCase(),
          (t.met() ? "does" : "does not") + (t.own() ? ", as in the shape file" : ""));
    }
    table.lines().forEach(screen::line);
    answer
        .least()
        .ifPresentOrElse(
            t ->
                wrapped(
                    "The least of these that does: "
                        + t.plies().map(n -> n + " plies, ").orElse("")
                        + Figures.of(t.thickness(), "mm")
                        + "."),
            () -> wrapped("None of these does."));
  }

  private void settled(LoadAnswer answer) {
    screen.line("");
    wrapped(
        answer.triangles()
            + " triangles, "
            + answer.unknowns()
            + " unknowns, smallest angle "
            + Numbers.fixed(answer.leastAngle(), 0)
            + " degrees. From the coarser mesh before, deflections changed by at most "
            + Numbers.fixed(100 * answer.deflectionChange(), 1)
            + " % and highest stresses by "
            + Numbers.fixed(100 * answer.useChange(), 1)
            + " %"
            + (answer.settled()
                ? ": the figures have settled."
                : ": the figures have NOT settled; give inside corners a radius, and trust"
                    + " deflections more than stresses."));
    screen.say("Reckoned in " + Numbers.fixed(answer.seconds(), 1) + " s.");
  }

  private void sources(LoadAnswer answer) {
    screen.line("");
    Table table = new Table("lrl");
    answer.figures().forEach(f -> table.row(f.get(0), f.get(1), f.get(2)));
    table.lines().forEach(screen::line);
    answer.notes().forEach(note -> wrapped("Note: " + note + "."));
  }
}
