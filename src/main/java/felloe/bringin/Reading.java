package felloe.bringin;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is gathered while a file is read: chains, what is passed over, and what is wrong. */
final class Reading {

  private final String file;
  private final Asked asked;
  private final Problems problems = new Problems();
  private final List<Chain> chains = new ArrayList<>();
  private final Map<String, Integer> passedOver = new TreeMap<>();
  private final List<String> notes = new ArrayList<>();
  private int strokes;

  Reading(String file, Asked asked) {
    this.file = file;
    this.asked = asked;
  }

  /** What the maker calls what may be said of a drawing. */
  Asked asked() {
    return asked;
  }

  Place at(int line) {
    return line > 0 ? Place.of(file, line, 1) : Place.ofFile(file);
  }

  void wrong(int line, String who, String value, String wanted, String cure) {
    problems.add(new Problem(at(line), who, value, wanted, cure));
  }

  /** What ends the reading at once. */
  BadInput refused(int line, String who, String value, String wanted, String cure) {
    wrong(line, who, value, wanted, cure);
    return problems.asBadInput();
  }

  /** One more thing that is no outline. */
  void passOver(String what) {
    passedOver.merge(what, 1, Integer::sum);
  }

  /** Something that the maker should know. */
  void note(String sentence) {
    if (!notes.contains(sentence)) {
      notes.add(sentence);
    }
  }

  /** Strokes that were drawn together; none where they have no length. */
  void chain(int line, List<Stroke> drawn, DrawnAs as) {
    if (drawn.isEmpty()) {
      return;
    }
    strokes += drawn.size();
    if (strokes > Limits.STROKES) {
      throw refused(
          line,
          "",
          "",
          "is one line too many: a drawing may have " + Limits.STROKES,
          "leave out what is not the part");
    }
    for (Stroke stroke : drawn) {
      double far =
          Math.max(
              Math.max(Math.abs(stroke.from().x()), Math.abs(stroke.from().y())),
              Math.max(Math.abs(stroke.to().x()), Math.abs(stroke.to().y())));
      if (far > Tolerances.LARGEST) {
        throw refused(
            line,
            "",
            Numbers.brief(far, 0) + " mm",
            "lies beyond " + Numbers.brief(Tolerances.LARGEST, 0) + " mm",
            "look at the drawing's units, or give its size with " + asked.width());
      }
    }
    chains.add(new Chain(drawn, as));
  }

  /** All of it. */
  Drawn drawn() {
    problems.throwIfAny();
    return new Drawn(
        chains,
        passedOver.entrySet().stream().map(e -> e.getKey() + " (" + e.getValue() + ")").toList(),
        notes,
        Unsure.NOT);
  }
}
