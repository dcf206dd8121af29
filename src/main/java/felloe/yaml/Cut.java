package felloe.yaml;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Characters of a text, and what is written in their place.
 *
 * @param from the first of them
 * @param to the end of the last; as {@code from} where something is only added
 */
record Cut(int from, int to, String with) {

  static Cut add(int at, String with) {
    return new Cut(at, at, with);
  }

  /**
   * The text with its cuts made. A comment behind them stays in its column where it stood in one:
   * two spaces or more behind what it tells about, or in the column of the comment above or below.
   */
  static String apply(Layout layout, List<Cut> cuts) {
    String text = layout.lines().text();
    StringBuilder fresh = new StringBuilder(text.length() + 64);
    int done = 0;
    for (Cut cut :
        Stream.concat(cuts.stream(), gaps(layout, cuts))
            .sorted(Comparator.comparingInt(Cut::from).thenComparingInt(Cut::to))
            .toList()) {
      fresh.append(text, done, cut.from()).append(cut.with());
      done = cut.to();
    }
    return fresh.append(text, done, text.length()).toString();
  }

  private static Stream<Cut> gaps(Layout layout, List<Cut> cuts) {
    Map<Integer, Integer> wider = new TreeMap<>();
    for (Cut cut : cuts) {
      Optional<Integer> comment = layout.commentBehind(cut.to());
      if (comment.isPresent()
          && cuts.stream().noneMatch(c -> c.from() <= comment.get() && comment.get() < c.to())
          && layout.lines().isOneLine(cut.from(), cut.to())
          && cut.with().indexOf('\n') < 0
          && cut.with().indexOf('\r') < 0) {
        int width = cut.with().codePointCount(0, cut.with().length());
        int more = width - layout.lines().width(cut.from(), cut.to());
        wider.merge(comment.get(), more, Integer::sum);
      }
    }
    return wider.entrySet().stream()
        .flatMap(entry -> gap(layout, entry.getKey(), entry.getValue()).stream());
  }

  private static Optional<Cut> gap(Layout layout, int comment, int wider) {
    Lines lines = layout.lines();
    int from = lines.wordEnd(comment);
    String gap = lines.text().substring(from, comment);
    boolean inColumn = gap.length() > 1 || layout.isInColumn(comment);
    int width = Math.max(1, gap.length() - wider);
    return inColumn && wider != 0 && gap.chars().allMatch(c -> c == ' ')
        ? Optional.of(new Cut(from, comment, " ".repeat(width)))
        : Optional.empty();
  }
}
