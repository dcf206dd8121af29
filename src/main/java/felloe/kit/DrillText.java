package felloe.kit;

import felloe.document.BenchText;
import felloe.document.BenchText.Block;
import felloe.document.BenchText.Column;
import felloe.document.BenchText.Fill;
import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;

/** What the pages of a drilling sheet say. */
final class DrillText {

  private final DrillAnswer answer;
  private final DrillOrder order;
  private final List<Block> blocks = new ArrayList<>();

  private DrillText(DrillAnswer answer) {
    this.answer = answer;
    this.order = answer.order();
  }

  /** The text for an answer. */
  static BenchText of(DrillAnswer answer) {
    DrillText text = new DrillText(answer);
    text.before();
    text.groups();
    text.checks();
    text.blocks.addAll(JointText.of(answer.joints()));
    text.sources();
    return new BenchText("drilling sheet", text.blocks);
  }

  private void before() {
    blocks.add(new BenchText.Heading("Drilling sheet: " + answer.plate().title()));
    answer.stop().ifPresent(words -> blocks.add(new BenchText.Framed(List.of(words))));
    blocks.add(
        new BenchText.Words(
            "Stock: "
                + answer.plate().stock().material().title()
                + ", "
                + Numbers.brief(answer.plate().stock().thickness(), 2)
                + " mm. Drills and speeds for "
                + order.material()
                + "."
                + order.hub().map(hub -> " Hub: " + hub + ".").orElse("")
                + (order.throughHub() ? " The hub holes are drilled THROUGH THE HUB." : "")));
    blocks.add(new BenchText.Framed(answer.cautions()));
    blocks.add(new BenchText.Heading("Before the first hole"));
    blocks.add(new BenchText.Steps(order.before()));
  }

  private void groups() {
    List<Column> columns =
        List.of(
            new Column("", Fill.FIGURES),
            new Column("step", Fill.WORDS),
            new Column("\u00d8", Fill.FIGURES),
            new Column("1/min", Fill.FIGURES),
            new Column("sec", Fill.FIGURES),
            new Column("tool, what to do", Fill.WRAPPED));
    if (!order.groups().isEmpty()) {
      blocks.add(
          new BenchText.Words(
              "Each step on all holes of a group before the next. 1/min is the step of a drill"
                  + " press at or below the reckoned speed; sec is how many seconds the drill takes"
                  + " through the stock at an even feed."));
    }
    for (DrillOrder.Group group : order.groups()) {
      blocks.add(new BenchText.Heading(group.heading()));
      blocks.add(new BenchText.Words(group.wanted()));
      group.notes().forEach(note -> blocks.add(new BenchText.Words(note)));
      List<List<String>> rows = new ArrayList<>();
      for (DrillOrder.Step step : group.steps()) {
        rows.add(
            List.of(
                Integer.toString(rows.size() + 1),
                step.stage(),
                step.diameter().map(d -> Numbers.brief(d, 2)).orElse(""),
                step.setting().map(n -> Numbers.fixed(n, 0)).orElse(""),
                step.seconds().map(s -> Numbers.fixed(Math.max(1, s), 0)).orElse(""),
                step.how()));
      }
      blocks.add(BenchText.Rows.of(columns, rows));
    }
    order.leftOutWords().ifPresent(words -> blocks.add(new BenchText.Words(words)));
  }

  private void checks() {
    if (!order.afterPilot().isEmpty()) {
      blocks.add(
          new BenchText.Heading(
              "Look after the pilot drill (\u00d8"
                  + Numbers.brief(order.pilotDiameter().orElseThrow(), 2)
                  + ")"));
      blocks.add(
          new BenchText.Words(
              "Over the outside edges of the pilot holes, mm. A reading outside of the limits"
                  + " proves a hole out of place"
                  + (order.throughHub()
                      ? ", or the hub not as its data says: measure the hub before you go on."
                      : ": draw it over with a round file now, or start again.")));
      blocks.add(distances(order.afterPilot(), List.of(), false));
    }
    if (!order.readings().isEmpty()) {
      blocks.add(new BenchText.Heading("Readings of the finished hub pattern"));
      blocks.add(
          new BenchText.Words(
              "Measure before the edges are broken. Write each reading here and type it into "
                  + answer.measuredName()
                  + " behind the same number. Diameters first: the mean of two, crosswise. Then"
                  + " over the outside edges. A reading outside of its limits proves a fault; that"
                  + " all lie inside does not prove there is none: let 'felloe check --measured'"
                  + " judge."));
      order.notMeasuredWords().ifPresent(words -> blocks.add(new BenchText.Words(words)));
      List<List<String>> rows = new ArrayList<>();
      for (DrillOrder.Size size : order.sizes()) {
        rows.add(
            List.of(
                Integer.toString(size.number()),
                size.hole(),
                "",
                "diameter",
                Numbers.fixed(size.least(), 2),
                Numbers.fixed(size.least(), 2),
                Numbers.fixed(size.most(), 2),
                ""));
      }
      blocks.add(distances(order.readings(), rows, true));
    }
    if (!order.others().isEmpty()) {
      blocks.add(new BenchText.Heading("Bore and grips"));
      blocks.add(
          new BenchText.Words(
              "Inside: what is left between the edges. Outside: over the outer edges. These are not"
                  + " typed in."));
      blocks.add(distances(order.others(), List.of(), false));
    }
  }

  /** Rows to write in; only those that are typed in have a number. */
  private static Block distances(
      List<DrillOrder.Check> checks, List<List<String>> first, boolean numbered) {
    List<Column> columns =
        List.of(
            new Column("", Fill.FIGURES),
            new Column("from", Fill.WORDS),
            new Column("to", Fill.WORDS),
            new Column("over", Fill.WORDS),
            new Column("true", Fill.FIGURES),
            new Column("least", Fill.FIGURES),
            new Column("most", Fill.FIGURES),
            new Column("reads", Fill.BLANK));
    List<List<String>> rows = new ArrayList<>(first);
    for (DrillOrder.Check check : checks) {
      rows.add(
          List.of(
              numbered ? Integer.toString(check.number()) : "",
              check.from(),
              check.to(),
              check.over(),
              Numbers.fixed(check.nominal(), 2),
              Numbers.fixed(check.least(), 2),
              Numbers.fixed(check.most(), 2),
              ""));
    }
    return BenchText.Rows.of(columns, rows).sideBySide();
  }

  private void sources() {
    blocks.add(new BenchText.Heading("Where the figures come from"));
    String text = String.join("; ", order.sources());
    blocks.add(new BenchText.Words(Sentence.begin(text) + "."));
  }
}
