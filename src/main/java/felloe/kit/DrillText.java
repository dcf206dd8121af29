package felloe.kit;

import felloe.document.Block;
import felloe.document.Report;
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
  static Report of(DrillAnswer answer) {
    DrillText text = new DrillText(answer);
    text.before();
    text.groups();
    text.checks();
    text.blocks.addAll(JointText.of(answer.joints()));
    text.sources();
    return new Report("drilling sheet", text.blocks);
  }

  private void before() {
    blocks.add(new Block.Heading("Drilling sheet: " + answer.plate().title()));
    answer.stop().ifPresent(words -> blocks.add(Block.Callout.cautions(List.of(words))));
    blocks.add(
        new Block.Paragraph(
            "Stock: "
                + answer.plate().stock().material().title()
                + ", "
                + Numbers.brief(answer.plate().stock().thickness(), 2)
                + " mm. Drills and speeds for "
                + order.material()
                + "."
                + order.hub().map(hub -> " Hub: " + hub + ".").orElse("")
                + (order.throughHub() ? " The hub holes are drilled THROUGH THE HUB." : "")));
    blocks.add(Block.Callout.cautions(answer.cautions()));
    blocks.add(new Block.Heading("Before the first hole"));
    blocks.add(Block.Steps.of(order.before()));
  }

  private void groups() {
    List<Block.Column> columns =
        List.of(
            new Block.Column("", "", Block.Fill.FIGURES),
            new Block.Column("step", "", Block.Fill.WORDS),
            new Block.Column("\u00d8", "", Block.Fill.FIGURES),
            new Block.Column("1/min", "", Block.Fill.FIGURES),
            new Block.Column("sec", "", Block.Fill.FIGURES),
            new Block.Column("tool, what to do", "", Block.Fill.WRAPPED));
    if (!order.groups().isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "Each step on all holes of a group before the next. 1/min is the step of a drill"
                  + " press at or below the reckoned speed; sec is how many seconds the drill takes"
                  + " through the stock at an even feed."));
    }
    for (DrillOrder.Group group : order.groups()) {
      blocks.add(new Block.Heading(group.heading()));
      blocks.add(new Block.Paragraph(group.wanted()));
      group.notes().forEach(note -> blocks.add(new Block.Paragraph(note)));
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
      blocks.add(Block.Table.ofWords(columns, rows));
    }
    order.leftOutWords().ifPresent(words -> blocks.add(new Block.Paragraph(words)));
  }

  private void checks() {
    if (!order.afterPilot().isEmpty()) {
      blocks.add(
          new Block.Heading(
              "Look after the pilot drill (\u00d8"
                  + Numbers.brief(order.pilotDiameter().orElseThrow(), 2)
                  + ")"));
      blocks.add(
          new Block.Paragraph(
              "Over the outside edges of the pilot holes, mm. A reading outside of the limits"
                  + " proves a hole out of place"
                  + (order.throughHub()
                      ? ", or the hub not as its data says: measure the hub before you go on."
                      : ": draw it over with a round file now, or start again.")));
      blocks.add(distances(order.afterPilot(), List.of(), false));
    }
    if (!order.readings().isEmpty()) {
      blocks.add(new Block.Heading("Readings of the finished hub pattern"));
      blocks.add(
          new Block.Paragraph(
              "Measure before the edges are broken. Write each reading here and type it into "
                  + answer.measuredName()
                  + " behind the same number. Diameters first: the mean of two, crosswise. Then"
                  + " over the outside edges. A reading outside of its limits proves a fault; that"
                  + " all lie inside does not prove there is none: let 'felloe check --measured'"
                  + " judge."));
      order.notMeasuredWords().ifPresent(words -> blocks.add(new Block.Paragraph(words)));
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
      blocks.add(new Block.Heading("Bore and grips"));
      blocks.add(
          new Block.Paragraph(
              "Inside: what is left between the edges. Outside: over the outer edges. These are not"
                  + " typed in."));
      blocks.add(distances(order.others(), List.of(), false));
    }
  }

  /** Rows to write in; only those that are typed in have a number. */
  private static Block distances(
      List<DrillOrder.Check> checks, List<List<String>> first, boolean numbered) {
    List<Block.Column> columns =
        List.of(
            new Block.Column("", "", Block.Fill.FIGURES),
            new Block.Column("from", "", Block.Fill.WORDS),
            new Block.Column("to", "", Block.Fill.WORDS),
            new Block.Column("over", "", Block.Fill.WORDS),
            new Block.Column("true", "", Block.Fill.FIGURES),
            new Block.Column("least", "", Block.Fill.FIGURES),
            new Block.Column("most", "", Block.Fill.FIGURES),
            new Block.Column("reads", "", Block.Fill.BLANK));
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
    return Block.Table.ofWords(columns, rows).sideBySide();
  }

  private void sources() {
    blocks.add(new Block.Heading("Where the figures come from"));
    String text = String.join("; ", order.sources());
    blocks.add(new Block.Paragraph(Sentence.begin(text) + "."));
  }
}
