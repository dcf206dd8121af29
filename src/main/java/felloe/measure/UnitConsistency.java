package felloe.measure;

import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.Entry;
import felloe.yaml.Problems;
import felloe.yaml.YamlValue.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sees to it that all lengths of a file are in one unit: who writes one reading in inches and
 * another without a unit has most likely forgotten it.
 */
final class UnitConsistency {

  private static final Pattern LENGTH =
      Pattern.compile("[-+0-9./ ]*?(?:[0-9.][eE][-+]?[0-9]+)?[ ]*(mm|cm|m|in|)");

  private record Written(Place place, String path, String text, String unit) {}

  private final Problems problems;
  private final List<Written> all = new ArrayList<>();

  UnitConsistency(Problems problems) {
    this.problems = problems;
  }

  /** Notes the unit of a length. */
  void note(Entry entry) {
    if (entry.value().orElse(null) instanceof Scalar scalar && !scalar.isNull()) {
      String text = scalar.text().strip();
      Matcher form = LENGTH.matcher(text);
      if (!form.matches()) {
        return; // told by whoever reads it
      }
      String unit = form.group(1).isEmpty() ? "mm" : form.group(1);
      all.add(new Written(entry.place(), entry.path(), text, unit));
    }
  }

  /** Reports each length whose unit is another than that of most. */
  void check() {
    String usual = "";
    long most = 0;
    for (Written one : all) {
      long count = all.stream().filter(other -> other.unit().equals(one.unit())).count();
      if (count > most) {
        most = count;
        usual = one.unit();
      }
    }
    for (Written one : all) {
      if (!one.unit().equals(usual)) {
        String bare = one.text().matches(".*\\p{L}.*") ? "" : " (no unit means mm)";
        problems.add(
            new Problem(
                one.place(),
                one.path(),
                one.text(),
                "has the unit "
                    + one.unit()
                    + bare
                    + ", but other lengths in this file have the unit "
                    + usual,
                "write all lengths in one unit, each with the unit if it is not mm"));
      }
    }
  }
}
