package felloe.kit;

import felloe.document.BenchText;
import felloe.document.BenchText.Block;
import felloe.document.BenchText.Column;
import felloe.document.BenchText.Fill;
import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;

/** What a drilling sheet says of the screws that go into the holes. */
final class JointText {

  private JointText() {}

  /** The blocks for a plan; none when nothing is planned. */
  static List<Block> of(JointAnswer answer) {
    if (answer.joints().isEmpty()) {
      return List.of();
    }
    List<List<String>> rows = new ArrayList<>();
    for (JointAnswer.Row row : answer.joints()) {
      rows.add(
          List.of(
              row.name(),
              row.holes().size() + " " + row.screw() + " " + row.head(),
              row.strength(),
              Numbers.brief(row.clamped(), 2),
              Numbers.brief(row.engagement(), 1),
              row.torque().range(),
              row.stack()));
    }
    List<Column> columns =
        List.of(
            new Column("joint", Fill.WORDS),
            new Column("screws", Fill.WORDS),
            new Column("class", Fill.WORDS),
            new Column("clamps", Fill.FIGURES),
            new Column("in thread", Fill.FIGURES),
            new Column("N m", Fill.WORDS),
            new Column("from the head on", Fill.WRAPPED));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new BenchText.Heading("Screws, with torques to start from"));
    blocks.add(BenchText.Rows.of(columns, rows));
    answer.notes().forEach(note -> blocks.add(new BenchText.Words(Sentence.begin(note))));
    blocks.add(new BenchText.Framed(answer.cautions()));
    return blocks;
  }
}
