package felloe.drawing;

import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * What is printed across pages that must not be acted on: that a plate fails its review, in what,
 * and what not to do. Letters are read at arm's length: 10 mm high (ISO 3098).
 *
 * @param act what must not be done
 * @param fails how many checks fail
 * @param faults what fails, the worst first, in a word or two each; none where nothing fails
 */
public record Stamp(Act act, int fails, List<String> faults) {

  /** Height of the letters, mm: a height of ISO 3098, read from an arm's length and more. */
  public static final double LETTER = 10;

  /** Distance of its lines, mm: the least of ISO 3098 is 1.4 times the height. */
  public static final double PITCH = 14;

  /** What a page is for. */
  public enum Act {
    /** Cutting, and drilling with it. */
    CUT("DO NOT CUT"),
    /** Drilling. */
    DRILL("DO NOT DRILL");

    private final String order;

    Act(String order) {
      this.order = order;
    }
  }

  /** No stamp: the plate passes. */
  public static final Stamp NONE = new Stamp(Act.CUT, 0, List.of());

  public Stamp {
    faults = List.copyOf(faults);
  }

  /** The stamp that findings ask for; {@link #NONE} when none of them fails. */
  public static Stamp of(Act act, List<Finding> findings) {
    List<Finding> fails = findings.stream().filter(f -> f.verdict() == Verdict.FAIL).toList();
    LinkedHashSet<String> rules = new LinkedHashSet<>();
    fails.forEach(finding -> rules.add(finding.rule()));
    return new Stamp(act, fails.size(), List.copyOf(rules));
  }

  /** Whether there is nothing to print. */
  public boolean isNone() {
    return fails == 0 && faults.isEmpty();
  }

  /** The order alone, such as {@code DO NOT CUT}. */
  public String order() {
    return act.order;
  }

  /** Order and reasons in one sentence, for small print. */
  public String sentence() {
    return order() + ": this plate " + because() + ". The review tells more.";
  }

  private String count() {
    return fails == 0 ? ":" : ": fails " + fails + (fails == 1 ? " check:" : " checks:");
  }

  private String because() {
    String list = String.join(", ", faults);
    if (fails == 0) {
      return list;
    }
    return "fails " + fails + (fails == 1 ? " check" : " checks") + " of its review: " + list;
  }

  /**
   * Its lines in large letters: the order, how many checks fail, and as many of the faults as have
   * room.
   *
   * @param width of the room, mm; a word that is wider alone makes a wider line
   * @param most lines for the faults, at least one
   */
  public List<String> lines(double width, int most) {
    List<String> lines = new ArrayList<>(wrap(order(), width));
    if (fails > 0) {
      lines.addAll(wrap(count().substring(2), width));
    }
    lines.addAll(faults(width, most));
    return List.copyOf(lines);
  }

  /**
   * Its lines for the head of a page of words: all in as few lines as it takes.
   *
   * @param width of the room, mm
   */
  public List<String> head(double width) {
    List<String> lines = new ArrayList<>(wrap(order() + count(), width));
    lines.addAll(faults(width, 1));
    return List.copyOf(lines);
  }

  /** A word breaks only behind its hyphens; one that is wider all the same makes a wider line. */
  private static List<String> wrap(String text, double width) {
    List<String> words = new ArrayList<>();
    for (String word : text.split(" ")) {
      words.add(TextWidth.of(word, LETTER) > width ? word.replace("-", "- ") : word);
    }
    String parted = String.join(" ", words);
    double room = Math.max(width, TextWidth.widest(List.of(parted.split(" ")), LETTER));
    return Paragraph.wrap(parted, LETTER, room).stream().map(l -> l.replace("- ", "-")).toList();
  }

  /** The faults that fit on some lines, and how many do not. */
  private List<String> faults(double width, int most) {
    for (int told = faults.size(); told > 1; told--) {
      String rest = told == faults.size() ? "" : " and " + (faults.size() - told) + " more";
      List<String> lines = wrap(String.join(", ", faults.subList(0, told)) + rest, width);
      if (lines.size() <= most) {
        return lines;
      }
    }
    String rest = faults.size() > 1 ? " and " + (faults.size() - 1) + " more" : "";
    return faults.isEmpty() ? List.of() : wrap(faults.get(0) + rest, width);
  }

  /** Height of some lines, mm. */
  public static double height(List<String> lines) {
    return LETTER + (lines.size() - 1) * PITCH;
  }

  /**
   * Lines as labels, each about a middle.
   *
   * @param top middle of the upper edge of the first line's capitals
   * @param scale of the letters
   * @param hollow whether lines below are to be seen through the letters
   */
  public static List<Mark> labels(List<String> lines, Point top, double scale, boolean hollow) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Point at = new Point(top.x(), top.y() - scale * (LETTER + i * PITCH));
      marks.add(new Mark.Label(lines.get(i), at, scale * LETTER, 0, Anchor.MIDDLE, hollow));
    }
    return marks;
  }
}
