package felloe.yaml;

import felloe.yaml.Layout.Branch;
import felloe.yaml.Layout.Leaf;
import felloe.yaml.Layout.Node;
import felloe.yaml.Layout.Part;
import felloe.yaml.Layout.Seat;
import felloe.yaml.Layout.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ways of writing a value into a text, each as cuts, the one that looks best first. Whether a way
 * says what is meant is for the caller to see.
 */
final class Writing {

  private final Layout layout;
  private final Lines lines;
  private final String text;
  private final Fresh fresh;

  Writing(Layout layout) {
    this.layout = layout;
    this.lines = layout.lines();
    this.text = lines.text();
    this.fresh = Fresh.like(layout);
  }

  /**
   * A value set at a path.
   *
   * @param value its text, on one line
   */
  List<List<Cut>> set(ValuePath path, String value) {
    List<Seat> seats = layout.seats(path);
    List<ValuePath> steps = path.steps();
    List<ValuePath> rest = steps.subList(seats.size(), steps.size());
    if (rest.isEmpty()) {
      return List.of(replace(last(seats), value));
    }
    Node node = seats.isEmpty() ? layout.root() : last(seats).part().node();
    if (node instanceof Branch branch) {
      return add(branch, seats, rest, value);
    }
    if (seats.isEmpty()) {
      String block = fresh.block(rest, value, 0);
      return List.of(atEnd(block), List.of(Cut.add(node.from(), block + fresh.ending())));
    }
    return fill(last(seats), rest, value);
  }

  /** A value put before the item of a list that is there. */
  List<Cut> insert(ValuePath path, String value) {
    List<Seat> seats = layout.seats(path);
    Branch list = last(seats).branch();
    Part next = last(seats).part();
    if (!list.isBlock()) {
      String gap = lines.isFirst(next.from()) ? fresh.ending() + indent(next.from()) : " ";
      return List.of(Cut.add(next.from(), value + "," + gap));
    }
    int column = lines.column(list.from());
    String item = Fresh.item(space(list), value);
    if (last(seats).index() > 0) {
      Part before = list.parts().get(last(seats).index() - 1);
      return List.of(line(layout.tail(before.to(), column), column, item));
    }
    if (!lines.isFirst(next.from())) {
      return List.of(Cut.add(next.from(), item + fresh.newLine(column)));
    }
    int above = seats.size() == 1 ? -1 : seats.get(seats.size() - 2).part().anchor();
    boolean deeper = above >= 0 && layout.tail(above, column) > lines.end(above);
    int at = above < 0 || deeper ? lines.start(next.from()) : lines.next(above);
    return List.of(Cut.add(at, " ".repeat(column) + item + fresh.ending()));
  }

  /** A value in place of one that is there. */
  List<Cut> replace(Seat seat, String value) {
    Part part = seat.part();
    Node node = part.node();
    String spaced = value.isEmpty() ? "" : " " + value;
    if (node instanceof Branch branch && branch.isBlock()) {
      int end = layout.tail(part.to(), lines.column(part.from()));
      return lines.isOneLine(part.anchor(), node.from())
          ? List.of(new Cut(part.anchor(), end, spaced))
          : List.of(Cut.add(part.anchor(), spaced), new Cut(lines.end(part.anchor()), end, ""));
    }
    if (node.from() == node.to() && part.anchor() < 0) {
      return List.of(
          seat.branch().isBlock()
              ? line(lines.end(part.keyTo()), lines.column(part.from()), ": " + value)
              : Cut.add(part.keyTo(), ": " + value));
    }
    String behind =
        node instanceof Leaf leaf && leaf.isBlock()
            ? text.substring(leaf.head(), lines.end(leaf.head()))
            : "";
    return List.of(
        part.anchor() >= 0 && (value.isEmpty() || node.from() == node.to())
            ? new Cut(part.anchor(), node.to(), spaced + behind)
            : new Cut(node.from(), node.to(), value + behind));
  }

  /** New groups and lists in place of nothing. */
  private List<List<Cut>> fill(Seat seat, List<ValuePath> rest, String value) {
    List<List<Cut>> ways = new ArrayList<>();
    Part part = seat.part();
    if (seat.branch().isBlock() && part.anchor() >= 0) {
      int column = lines.column(seat.branch().from());
      if (!seat.branch().list()) {
        int deeper = column + (rest.get(0).isItem() ? fresh.listStep() : fresh.step());
        String block = fresh.block(rest, value, deeper);
        ways.add(List.of(line(lines.end(part.anchor()), deeper, block)));
      } else if (layout.commentBehind(part.anchor()).isEmpty()) {
        ways.add(List.of(Cut.add(part.anchor(), " " + fresh.block(rest, value, column + 2))));
      }
    }
    ways.add(replace(seat, Fresh.flow(rest, value)));
    return ways;
  }

  private List<List<Cut>> add(Branch branch, List<Seat> seats, List<ValuePath> rest, String value) {
    List<ValuePath> within = rest.subList(1, rest.size());
    if (branch.isBlock()) {
      int column = lines.column(branch.from());
      String space = branch.list() ? space(branch) : "";
      String block =
          branch.list()
              ? Fresh.item(space, fresh.block(within, value, column + 1 + space.length()))
              : fresh.block(rest, value, column);
      int around = seats.isEmpty() ? -1 : lines.column(last(seats).branch().from());
      Cut below = line(layout.tail(branch.to(), Math.max(column - 1, around)), column, block);
      List<List<Cut>> ways = new ArrayList<>();
      if (seats.isEmpty()) {
        ways.add(atEnd(block));
      }
      ways.add(List.of(below));
      stripped(branch).ifPresent(cut -> ways.add(List.of(cut, below)));
      return ways;
    }
    String inner = Fresh.flow(within, value);
    String entry = branch.list() ? inner : FlowText.key(rest.get(0).key()) + ": " + inner;
    if (branch.style() == Style.BARE) {
      String whole = text.substring(branch.from(), branch.to());
      return List.of(
          List.of(new Cut(branch.from(), branch.to(), "{" + whole + ", " + entry + "}")));
    }
    return List.of(append(branch, entry));
  }

  /** One more at the end of a list in brackets or a group in braces. */
  private List<Cut> append(Branch branch, String entry) {
    int inside = branch.from() + 1;
    if (branch.parts().isEmpty()) {
      boolean blank = lines.word(inside) == branch.to() - 1;
      return List.of(new Cut(inside, blank ? branch.to() - 1 : inside, entry));
    }
    Part last = branch.parts().get(branch.parts().size() - 1);
    if (!lines.isFirst(last.from())) {
      return List.of(Cut.add(last.to(), ", " + entry));
    }
    String line = fresh.ending() + indent(last.from()) + entry;
    int comma = lines.content(last.to());
    boolean has = lines.has(comma, ',');
    int word = lines.word(has ? comma + 1 : last.to());
    if (!lines.isEndAt(word) && !lines.has(word, '#')) {
      return List.of(Cut.add(last.to(), "," + line));
    }
    return has
        ? List.of(Cut.add(lines.end(word), line + ","))
        : List.of(Cut.add(last.to(), ","), Cut.add(lines.end(word), line));
  }

  private List<Cut> atEnd(String block) {
    int end = layout.end();
    boolean open = end > 0 && lines.start(end) < end;
    return List.of(Cut.add(end, open ? fresh.ending() + block : block + fresh.ending()));
  }

  private Cut line(int end, int column, String block) {
    return Cut.add(end, fresh.newLine(column) + block);
  }

  /** Lets a text block at the end of a file keep its text without a line end when more follows. */
  private Optional<Cut> stripped(Branch branch) {
    Node last = branch;
    while (last instanceof Branch inner && !inner.parts().isEmpty()) {
      last = inner.parts().get(inner.parts().size() - 1).node();
    }
    if (!(last instanceof Leaf leaf && leaf.isBlock())) {
      return Optional.empty();
    }
    String head = text.substring(leaf.from(), leaf.head());
    return Optional.of(new Cut(leaf.from(), leaf.head(), head.replace("+", "") + "-"));
  }

  /** What stands between the hyphen and the item in a list. */
  private String space(Branch list) {
    Part first = list.parts().get(0);
    String space = text.substring(first.anchor(), Math.max(first.anchor(), first.node().from()));
    return space.matches(" +") ? space : " ";
  }

  private String indent(int at) {
    return text.substring(lines.start(at), at);
  }

  private static Seat last(List<Seat> seats) {
    return seats.get(seats.size() - 1);
  }
}
