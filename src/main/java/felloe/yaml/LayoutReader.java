package felloe.yaml;

import felloe.yaml.Layout.Branch;
import felloe.yaml.Layout.Leaf;
import felloe.yaml.Layout.Node;
import felloe.yaml.Layout.Part;
import felloe.yaml.Layout.Style;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.DocumentEndEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** Finds out where the values of a text stand. The text is one that {@link TreeBuilder} reads. */
final class LayoutReader {

  private final String text;
  private final Lines lines;
  private final Iterator<Event> events;
  private final IntStream.Builder comments = IntStream.builder();

  /** Where each code point starts; null where each is one character. */
  private final int[] starts;

  /** All comments before it are known. */
  private int done;

  LayoutReader(String text) {
    this.text = text;
    this.lines = new Lines(text);
    this.events = TreeBuilder.events("", text);
    this.starts =
        text.chars().noneMatch(c -> Character.isSurrogate((char) c))
            ? null
            : IntStream.range(0, text.length() + 1)
                .filter(
                    i ->
                        i == 0
                            || i == text.length()
                            || !Character.isSurrogatePair(text.charAt(i - 1), text.charAt(i)))
                .toArray();
  }

  Layout read() {
    events.next();
    Event start = events.next();
    Node root = new Leaf(text.length(), text.length(), text.length());
    int end = text.length();
    if (start.getEventId() != Event.ID.StreamEnd) {
      root = node(events.next());
      DocumentEndEvent last = (DocumentEndEvent) events.next();
      end = last.isExplicit() ? from(last) : end;
    }
    pass(text.length());
    return new Layout(lines, root, end, comments.build().toArray());
  }

  private Node node(Event event) {
    if (event instanceof ScalarEvent scalar) {
      return leaf(scalar);
    }
    if (event instanceof SequenceStartEvent list) {
      return list(list);
    }
    return group((MappingStartEvent) event);
  }

  private Leaf leaf(ScalarEvent scalar) {
    int from = from(scalar);
    int to = to(scalar);
    if (from == to) {
      return new Leaf(from, to, to);
    }
    pass(from);
    done = to;
    ScalarStyle style = scalar.getScalarStyle();
    if (style != ScalarStyle.LITERAL && style != ScalarStyle.FOLDED) {
      return new Leaf(from, to, to);
    }
    int head = from + 1;
    while (head < to && "+-0123456789".indexOf(text.charAt(head)) >= 0) {
      head++;
    }
    int comment = lines.word(head);
    if (lines.has(comment, '#')) {
      comments.add(comment);
    }
    int end = blockEnd(from, to, scalar.getValue());
    return new Leaf(from, Math.max(end, head), head);
  }

  /** The end of the last line of a text block; the library's is behind all empty lines after it. */
  private int blockEnd(int from, int to, String value) {
    int first = lines.next(from);
    int end = lines.start(to) == to || lines.isFirst(to) ? lines.start(to) : to;
    if (end <= first) {
      return from;
    }
    if (end < text.length() || lines.start(end) == end) {
      end = lines.endBefore(end);
    }
    String body = value.endsWith("\n") ? value.substring(0, value.length() - 1) : value;
    if (body.isEmpty() || Character.isWhitespace(body.charAt(body.length() - 1))) {
      return end;
    }
    while (end > first && lines.isFirst(end)) {
      end = lines.endBefore(lines.start(end));
    }
    return end;
  }

  private Branch list(SequenceStartEvent start) {
    int from = from(start);
    List<Part> parts = new ArrayList<>();
    int cursor = from;
    Event e = events.next();
    for (; e.getEventId() != Event.ID.SequenceEnd; e = events.next()) {
      if (start.isFlow()) {
        Node node = node(e);
        parts.add(new Part(node.from(), "", node.from(), -1, node));
        continue;
      }
      int hyphen = lines.content(cursor);
      Node node = node(e);
      if (node instanceof Leaf leaf && leaf.isEmpty()) {
        node = new Leaf(hyphen + 1, hyphen + 1, hyphen + 1);
      }
      parts.add(new Part(hyphen, "", hyphen, hyphen + 1, node));
      cursor = node.to();
    }
    int to = start.isFlow() ? to(e) : parts.get(parts.size() - 1).to();
    return new Branch(from, to, start.isFlow() ? Style.FLOW : Style.BLOCK, true, parts);
  }

  private Branch group(MappingStartEvent start) {
    int from = from(start);
    List<Part> parts = new ArrayList<>();
    Event e = events.next();
    for (; e.getEventId() != Event.ID.MappingEnd; e = events.next()) {
      parts.add(part((ScalarEvent) e));
    }
    boolean bare = start.isFlow() && text.charAt(from) != '{';
    boolean flow = start.isFlow() && !bare;
    int to = flow ? to(e) : parts.get(parts.size() - 1).to();
    return new Branch(
        from, to, bare ? Style.BARE : flow ? Style.FLOW : Style.BLOCK, false, List.copyOf(parts));
  }

  private Part part(ScalarEvent key) {
    int from = question(from(key));
    Leaf name = leaf(key);
    int colon = lines.content(name.to());
    int anchor = lines.has(colon, ':') ? colon + 1 : -1;
    Node node = node(events.next());
    if (node instanceof Leaf leaf && leaf.isEmpty()) {
      int at = anchor < 0 ? name.to() : anchor;
      node = new Leaf(at, at, at);
    }
    return new Part(from, key.getValue(), name.to(), anchor, node);
  }

  /** The question mark before a key; where there is none, the key. */
  private int question(int key) {
    int at = lines.content(done);
    while (at < key && text.charAt(at) != '?') {
      at = lines.content(at + 1);
    }
    return Math.min(at, key);
  }

  /** Takes down the comments between the last single value and here. */
  private void pass(int to) {
    for (int at = text.indexOf('#', done); at >= 0 && at < to; at = text.indexOf('#', at)) {
      comments.add(at);
      at = lines.end(at);
    }
    done = Math.max(done, to);
  }

  private int from(Event event) {
    return at(event.getStartMark());
  }

  private int to(Event event) {
    return at(event.getEndMark());
  }

  private int at(Optional<Mark> mark) {
    int index = mark.orElseThrow().getIndex();
    return starts == null ? index : starts[index];
  }
}
