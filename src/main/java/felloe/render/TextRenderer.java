package felloe.render;

import felloe.document.Block;
import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Reports as lines of text, fitted to a terminal's width. */
public final class TextRenderer {

  private static final int LEAST = 40;

  private final int width;
  private final Set<Depth> open;
  private final List<String> lines = new ArrayList<>();

  private TextRenderer(int width, Set<Depth> open) {
    this.width = Math.max(LEAST, width);
    this.open = open;
  }

  /**
   * A report as lines.
   *
   * @param width of the terminal, characters; fewer than 40 count as 40
   * @param open which folds are opened; {@link Depth#SCREEN} always is
   */
  public static List<String> lines(Report report, int width, Set<Depth> open) {
    TextRenderer text = new TextRenderer(width, open);
    text.paragraph(report.title(), "");
    text.blocks(report.blocks());
    text.endGap();
    return text.lines;
  }

  /** Whether a report has more to tell than these folds show. */
  public static boolean hides(Report report, Depth depth, Set<Depth> open) {
    return !open.contains(depth) && hides(report.blocks(), depth, open);
  }

  private static boolean hides(List<Block> blocks, Depth depth, Set<Depth> open) {
    return blocks.stream()
        .anyMatch(
            b ->
                b instanceof Block.Folded fold
                    && (fold.depth() == depth
                        || (fold.depth() == Depth.SCREEN || open.contains(fold.depth()))
                            && hides(fold.blocks(), depth, open)));
  }

  private void blocks(List<Block> blocks) {
    for (Block block : blocks) {
      block(block);
    }
  }

  private void block(Block block) {
    if (block instanceof Block.Heading heading) {
      gap();
      paragraph(heading.text(), "");
    } else if (block instanceof Block.Paragraph words) {
      paragraph(words.text(), "");
    } else if (block instanceof Block.Callout callout) {
      String sign = callout.tone() == Tone.CAUTION ? "! " : "";
      callout.texts().forEach(text -> paragraph(text, sign));
    } else if (block instanceof Block.Steps steps) {
      steps(steps.texts());
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.PageBreak) {
      gap();
    } else if (block instanceof Block.Folded fold) {
      if (fold.depth() == Depth.SCREEN || open.contains(fold.depth())) {
        blocks(fold.blocks());
      }
    }
  }

  /** Figures are for eyes that see pictures: nothing stands for them here. */
  private void table(Block.Table table) {
    if (table.rows().isEmpty()) {
      return;
    }
    gap();
    if (!table.caption().isEmpty()) {
      paragraph(table.caption(), "");
    }
    lines.addAll(new TextTable(table, width).lines());
    gap();
  }

  private void steps(List<String> texts) {
    gap();
    int room = Integer.toString(texts.size()).length();
    for (int i = 0; i < texts.size(); i++) {
      String number = Integer.toString(i + 1);
      paragraph(texts.get(i), " ".repeat(room - number.length()) + number + ". ");
    }
    gap();
  }

  /** A text behind a sign, under which its further lines are set in. */
  private void paragraph(String text, String sign) {
    List<String> wrapped = wrapped(TextTable.plain(text), width - sign.length());
    for (int i = 0; i < wrapped.size(); i++) {
      lines.add((i == 0 ? sign : " ".repeat(sign.length())) + wrapped.get(i));
    }
  }

  private void gap() {
    if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
      lines.add("");
    }
  }

  private void endGap() {
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
  }

  /** A text broken at blanks into lines of at most so many characters; longer words are broken. */
  static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String whole : text.split(" ")) {
      String word = whole;
      if (line.length() > 0 && TextTable.length(line + " " + word) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (TextTable.length(word) > width && line.length() == 0) {
        int end = word.offsetByCodePoints(0, Math.max(1, width));
        lines.add(word.substring(0, end));
        word = word.substring(end);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    if (line.length() > 0 || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }
}
