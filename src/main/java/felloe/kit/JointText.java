package felloe.kit;

import felloe.document.Block;
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
              row.torque().words(),
              row.stack()));
    }
    List<Block.Column> columns =
        List.of(
            new Block.Column("joint", "", Block.Fill.WORDS),
            new Block.Column("screws", "", Block.Fill.WORDS),
            new Block.Column("class", "", Block.Fill.WORDS),
            new Block.Column("clamps", "", Block.Fill.FIGURES),
            new Block.Column("in thread", "", Block.Fill.FIGURES),
            new Block.Column("N m", "", Block.Fill.WORDS),
            new Block.Column("from the head on", "", Block.Fill.WRAPPED));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading("Screws, with torques to start from"));
    blocks.add(Block.Table.ofWords(columns, rows));
    answer.notes().forEach(note -> blocks.add(new Block.Paragraph(Sentence.begin(note))));
    blocks.add(Block.Callout.cautions(answer.cautions()));
    return blocks;
  }
}
