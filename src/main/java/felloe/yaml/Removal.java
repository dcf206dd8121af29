package felloe.yaml;

import felloe.yaml.Layout.Branch;
import felloe.yaml.Layout.Part;
import felloe.yaml.Layout.Seat;
import java.util.List;

/** Ways of taking a key or an item out of a text, as {@link Writing} has them. */
final class Removal {

  private final Layout layout;
  private final Lines lines;

  Removal(Layout layout) {
    this.layout = layout;
    this.lines = layout.lines();
  }

  /**
   * @param path one that is there
   */
  List<List<Cut>> ways(ValuePath path) {
    List<Seat> seats = layout.seats(path);
    int last = seats.size() - 1;
    while (last > 0 && seats.get(last).branch().parts().size() == 1) {
      last--;
    }
    Seat seat = seats.get(last);
    return seat.branch().isBlock() ? fromLines(seat) : List.of(fromBrackets(seat));
  }

  private List<List<Cut>> fromLines(Seat seat) {
    Part part = seat.part();
    List<Part> parts = seat.branch().parts();
    int end = layout.tail(part.to(), lines.column(part.from()));
    if (lines.isFirst(part.from())) {
      int start = lines.start(part.from());
      int below = lines.next(end);
      while (below < lines.text().length() && lines.isEndAt(lines.word(below))) {
        below = lines.next(below);
      }
      Cut line = new Cut(start, lines.next(end), "");
      if (parts.size() == 1) {
        return List.of(
            List.of(line),
            List.of(new Cut(part.from(), part.to(), seat.branch().list() ? "[]" : "{}")));
      }
      return start > 0 && end == lines.text().length()
          ? List.of(List.of(new Cut(lines.endBefore(start), end, "")), List.of(line))
          : List.of(List.of(line), List.of(new Cut(start, below, "")));
    }
    int next = parts.get(1).from();
    return List.of(
        List.of(
            lines.next(end) == lines.start(next)
                ? new Cut(part.from(), next, "")
                : new Cut(lines.wordEnd(part.from()), end, "")));
  }

  private List<Cut> fromBrackets(Seat seat) {
    Branch branch = seat.branch();
    Part part = seat.part();
    List<Part> parts = branch.parts();
    boolean last = seat.index() == parts.size() - 1;
    int comma = lines.content(part.to());
    boolean has = lines.has(comma, ',');
    int word = lines.word(has ? comma + 1 : part.to());
    boolean alone = lines.isFirst(part.from()) && (lines.isEndAt(word) || lines.has(word, '#'));
    if (parts.size() == 1) {
      return List.of(
          alone && layout.isCommented(branch.from(), part.from())
              ? new Cut(lines.start(part.from()), lines.next(word), "")
              : new Cut(branch.from() + 1, branch.to() - 1, ""));
    }
    if (!last) {
      return List.of(
          alone
              ? new Cut(lines.start(part.from()), lines.next(word), "")
              : new Cut(part.from(), parts.get(seat.index() + 1).from(), ""));
    }
    Part before = parts.get(seat.index() - 1);
    int between = lines.content(before.to());
    if (alone) {
      Cut line = new Cut(lines.start(part.from()), lines.next(word), "");
      return has ? List.of(line) : List.of(new Cut(between, between + 1, ""), line);
    }
    return layout.isCommented(before.to(), part.from())
        ? List.of(
            new Cut(between, between + 1, ""), new Cut(lines.wordEnd(part.from()), part.to(), ""))
        : List.of(new Cut(before.to(), part.to(), ""));
  }
}
