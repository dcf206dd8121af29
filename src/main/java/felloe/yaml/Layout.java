package felloe.yaml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where the values of a text stand, and its comments, in characters (UTF-16).
 *
 * @param lines the text
 * @param root the value at the top
 * @param end where the document ends: the end of the text, or the three points before it
 * @param comments where each comment starts, in order
 */
record Layout(Lines lines, Node root, int end, int[] comments) {

  /** How many lines apart comments in one column may be. */
  private static final int NEAR = 3;

  /** A value: from its first character up to the end of its last. */
  sealed interface Node {
    int from();

    int to();
  }

  /**
   * A single value; nothing was written where it ends as it starts.
   *
   * @param head of a text block the end of its {@code |} or {@code >} with what belongs to it; else
   *     as {@code to}
   */
  record Leaf(int from, int to, int head) implements Node {
    boolean isEmpty() {
      return from == to;
    }

    boolean isBlock() {
      return head < to;
    }
  }

  /**
   * A list or a group of keys.
   *
   * @param style how it is written
   * @param list true for a list, false for a group
   */
  record Branch(int from, int to, Style style, boolean list, List<Part> parts) implements Node {
    boolean isBlock() {
      return style == Style.BLOCK;
    }
  }

  /** How a list or a group is written. */
  enum Style {
    /** On lines of their own. */
    BLOCK,
    /** In brackets or braces. */
    FLOW,
    /** A single key in a list in brackets, without braces of its own. */
    BARE
  }

  /**
   * An item of a list or a key with its value.
   *
   * @param from where it starts: the hyphen of an item in lines, a question mark before a key
   * @param key the key; empty for an item
   * @param keyTo the end of the key; of an item as {@code from}
   * @param anchor behind the hyphen or the colon; -1 where there is none
   */
  record Part(int from, String key, int keyTo, int anchor, Node node) {
    int to() {
      return node.to();
    }
  }

  /** A part with the list or group that it is in. */
  record Seat(Branch branch, int index) {
    Part part() {
      return branch.parts().get(index);
    }
  }

  static Layout of(String text) {
    return new LayoutReader(text).read();
  }

  /** The parts on the way to a path, from the top down, as far as they are there. */
  List<Seat> seats(ValuePath path) {
    List<Seat> seats = new ArrayList<>();
    Node node = root;
    for (ValuePath step : path.steps()) {
      int index = node instanceof Branch branch ? index(branch, step) : -1;
      if (index < 0) {
        break;
      }
      seats.add(new Seat((Branch) node, index));
      node = ((Branch) node).parts().get(index).node();
    }
    return seats;
  }

  private static int index(Branch branch, ValuePath step) {
    if (step.isItem()) {
      return branch.list() && step.index() < branch.parts().size() ? step.index() : -1;
    }
    if (branch.list()) {
      return -1;
    }
    List<String> keys = branch.parts().stream().map(Part::key).toList();
    int index = keys.indexOf(step.key());
    return index >= 0 ? index : keys.indexOf(KeySpelling.other(step.key()));
  }

  /** A comment behind a character, in the same line. */
  Optional<Integer> commentBehind(int at) {
    int index = firstComment(at);
    return index < comments.length && lines.isOneLine(at, comments[index])
        ? Optional.of(comments[index])
        : Optional.empty();
  }

  /** Whether there is a comment between two characters. */
  boolean isCommented(int from, int to) {
    int index = firstComment(from);
    return index < comments.length && comments[index] < to;
  }

  /** Whether the comment before or after one, a few lines away, starts in the same column. */
  boolean isInColumn(int comment) {
    int index = firstComment(comment);
    return index > 0 && isInColumn(comments[index - 1], comment)
        || index + 1 < comments.length && isInColumn(comment, comments[index + 1]);
  }

  private boolean isInColumn(int above, int below) {
    int line = above;
    for (int i = 0; i < NEAR && line < below; i++) {
      line = lines.next(line);
    }
    return line >= lines.start(below) && lines.column(above) == lines.column(below);
  }

  private int firstComment(int at) {
    int found = Arrays.binarySearch(comments, at);
    return found < 0 ? -found - 1 : found;
  }

  /**
   * The end of the last line of what ends here: of its own line with the comment behind it, and of
   * lines below that hold only a comment in a column beyond a given one.
   */
  int tail(int to, int column) {
    int end = lines.end(to);
    int probe = lines.next(to);
    while (probe < lines.text().length()) {
      int word = lines.word(probe);
      if (lines.has(word, '#') && lines.column(word) > column) {
        end = lines.end(word);
      } else if (!lines.isEndAt(word)) {
        break;
      }
      probe = lines.next(word);
    }
    return end;
  }
}
