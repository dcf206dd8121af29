package felloe.measure;

import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Nearest;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The names of the holes of a measured file: 1, 2, 3 ..., or labels such as H1, H2, H3 .... */
record HoleNames(List<String> labels) {

  private static final int LONGEST = 20;

  HoleNames {
    labels = List.copyOf(labels);
  }

  int count() {
    return labels.size();
  }

  /** From the key {@code holes}: a count, or a list of labels. */
  static HoleNames read(Fields f) {
    Entry entry = f.entry("holes");
    if (entry.kind() == Entry.Kind.LIST) {
      List<String> labels = new ArrayList<>();
      for (Entry item : entry.list().atLeast(2).atMost(Measured.MOST_HOLES).entries()) {
        String label = item.text().required();
        if (label.length() > LONGEST) {
          item.problem("must be a short label", "write H1, say");
        } else if (labels.contains(label)) {
          item.problem("is there twice", "name each hole once");
        } else if (!label.isEmpty()) {
          labels.add(label);
        }
      }
      return new HoleNames(labels);
    }
    int count = entry.integer().between(2, Measured.MOST_HOLES).required();
    return numbered(count);
  }

  private static HoleNames numbered(int count) {
    List<String> labels = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      labels.add("" + i);
    }
    return new HoleNames(labels);
  }

  /** From the readings of a table: the greatest number, or all labels in the order of counting. */
  static HoleNames ofReadings(Entry readings) {
    TreeSet<String> found =
        new TreeSet<>(
            (a, b) ->
                a.length() == b.length()
                    ? a.compareTo(b)
                    : Integer.compare(a.length(), b.length()));
    if (readings.value().orElse(null) instanceof Sequence list) {
      for (YamlValue item : list.items()) {
        if (item instanceof Mapping row) {
          for (String key : List.of("from", "to")) {
            YamlValue.Keyed cell = row.entries().get(key);
            if (cell != null && cell.value() instanceof Scalar s && !s.isNull()) {
              found.add(s.text().strip());
            }
          }
        }
      }
    }
    for (ReferenceEdge edge : ReferenceEdge.values()) {
      found.remove(edge.words());
    }
    boolean numbers = found.stream().allMatch(label -> label.matches("[1-9][0-9]{0,2}"));
    if (numbers && !found.isEmpty()) {
      return numbered(Math.min(Measured.MOST_HOLES, Integer.parseInt(found.last())));
    }
    return new HoleNames(
        List.copyOf(found).subList(0, Math.min(found.size(), Measured.MOST_HOLES)));
  }

  /**
   * The position of a hole in the list, from 0; below 0, and reported, when there is none of that
   * name. {@code 3} and {@code H3} mean the same hole.
   */
  int index(String label, Entry entry) {
    if (label.isEmpty()) {
      return -1;
    }
    int exact = labels.indexOf(label);
    if (exact < 0 && label.matches("[Hh][0-9]+")) {
      exact = labels.indexOf(label.substring(1));
    }
    if (exact < 0 && label.matches("[0-9]+")) {
      exact = labels.indexOf("H" + label);
    }
    if (exact < 0 && !labels.isEmpty()) {
      String all = labels.get(0) + " to " + labels.get(labels.size() - 1);
      entry.problem(
          "is not one of the holes " + all,
          label.matches(".*edge.*")
              ? "edges are left edge, right edge, bottom edge, top edge"
              : Nearest.to(label, labels)
                  .map(n -> "did you mean " + n + "?")
                  .orElse("check the number, or the count of holes"));
    }
    return exact;
  }
}
