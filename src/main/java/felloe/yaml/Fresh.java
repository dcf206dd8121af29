package felloe.yaml;

import felloe.yaml.Layout.Branch;
import felloe.yaml.Layout.Part;
import java.util.List;

/**
 * How new lists and groups are written in a file.
 *
 * @param ending the end of a line
 * @param step how much farther to the right a group in a group starts
 * @param listStep how much farther to the right the hyphens of a list in a group start
 */
record Fresh(String ending, int step, int listStep) {

  private static final int USUAL = 2;

  /** As the file does it where it first does so. */
  static Fresh like(Layout layout) {
    int list = step(layout, layout.root(), true);
    int group = step(layout, layout.root(), false);
    return new Fresh(layout.lines().ending(), group > 0 ? group : USUAL, list >= 0 ? list : USUAL);
  }

  private static int step(Layout layout, Layout.Node node, boolean list) {
    if (!(node instanceof Branch outer && outer.isBlock())) {
      return -1;
    }
    for (Part part : outer.parts()) {
      if (!outer.list()
          && part.node() instanceof Branch inner
          && inner.isBlock()
          && inner.list() == list) {
        return layout.lines().column(inner.from()) - layout.lines().column(outer.from());
      }
      int within = step(layout, part.node(), list);
      if (within >= 0) {
        return within;
      }
    }
    return -1;
  }

  String newLine(int column) {
    return ending + " ".repeat(column);
  }

  /** An item of a list in lines; a hyphen alone where nothing is written. */
  static String item(String space, String block) {
    return block.isEmpty() ? "-" : "-" + space + block;
  }

  /**
   * A value with the groups and lists round it, in lines.
   *
   * @param steps the way to the value, from the outside
   * @param column where the first line starts
   */
  String block(List<ValuePath> steps, String value, int column) {
    if (steps.isEmpty()) {
      return value;
    }
    List<ValuePath> within = steps.subList(1, steps.size());
    if (steps.get(0).isItem()) {
      return item(" ", block(within, value, column + 2));
    }
    String key = FlowText.key(steps.get(0).key()) + ":";
    if (within.isEmpty()) {
      return value.isEmpty() ? key : key + " " + value;
    }
    int deeper = column + (within.get(0).isItem() ? listStep : step);
    return key + newLine(deeper) + block(within, value, deeper);
  }

  /** The same on one line, in brackets and braces. */
  static String flow(List<ValuePath> steps, String value) {
    if (steps.isEmpty()) {
      return value;
    }
    String inner = flow(steps.subList(1, steps.size()), value);
    return steps.get(0).isItem()
        ? "[" + inner + "]"
        : "{" + FlowText.key(steps.get(0).key()) + ": " + inner + "}";
  }
}
