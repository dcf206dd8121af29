package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Problem;
import felloe.plate.Sketch;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Cautions and fails on a picture: a numbered balloon at the place of each, a triangle for a
 * caution and a square for a fail, and a list that says what the numbers mean.
 */
final class PictureFindings {

  /** More would not be read; the report has them all. */
  private static final int MOST = 16;

  private static final int WHAT = 3;
  private static final int ADVICE = 6;

  private static final double SIDE = 8.6;
  private static final double SQUARE = 6.6;
  private static final double NUMBER = 2.5;
  private static final double DOT = 0.9;
  private static final double COLUMN = 96;
  private static final double INDENT = 10;
  private static final double HEADING = 4.5;

  private final PictureInk ink;
  private final double unit;
  private final List<Entry> shown;
  private final int left;

  PictureFindings(PictureInk ink, List<Entry> all) {
    this.ink = ink;
    this.unit = ink.unit();
    this.shown = all.subList(0, Math.min(MOST, all.size()));
    this.left = all.size() - shown.size();
  }

  /**
   * What is marked.
   *
   * @param fail whether it fails; else it is a caution
   * @param at where
   * @param head what it is about
   * @param what in a line or two
   * @param advice what to do; may be empty
   */
  record Entry(boolean fail, Optional<Point> at, String head, String what, String advice) {

    /** Findings that fail, then cautions. */
    static List<Entry> of(List<Finding> findings) {
      return findings.stream()
          .filter(finding -> finding.verdict() != Verdict.PASS)
          .sorted(Comparator.comparing(Finding::verdict).reversed())
          .map(Entry::of)
          .toList();
    }

    private static Entry of(Finding finding) {
      boolean fail = finding.verdict() == Verdict.FAIL;
      return new Entry(
          fail,
          finding.at(),
          (fail ? "Fail: " : "Caution: ") + finding.subject(),
          finding.rule() + ": " + figure(finding),
          finding.advice());
    }

    static Entry of(Sketch.Clash clash) {
      Problem problem = clash.problem();
      return new Entry(
          true, Optional.of(clash.at()), problem.who(), problem.wanted(), problem.cure());
    }
  }

  boolean isEmpty() {
    return shown.isEmpty();
  }

  /** A dot at each place, drawn before other lettering looks for room. */
  void dots() {
    for (Entry finding : shown) {
      finding.at().ifPresent(at -> ink.dot(at, DOT));
    }
  }

  /** The balloons, each with a leader from its dot. */
  void balloons() {
    for (int i = 0; i < shown.size(); i++) {
      int number = i + 1;
      Entry finding = shown.get(i);
      finding.at().ifPresent(at -> balloon(finding, number, at));
    }
  }

  private void balloon(Entry finding, int number, Point at) {
    Point best = null;
    double least = Double.MAX_VALUE;
    for (double reach : new double[] {8, 11, 15, 20, 26, 33, 41}) {
      for (int i = 0; i < 16; i++) {
        Point middle = at.plus(Point.polar(reach * unit, 2 * Math.PI * (i + 0.5) / 16));
        Box box = Box.of(middle, middle).grown(SIDE / 2 * unit);
        double cost =
            ink.room().cost(box) + ink.room().cost(at.towards(middle, 0.25), middle) + reach / 4;
        if (cost < least) {
          least = cost;
          best = middle;
        }
      }
    }
    double inset = finding.fail() ? SQUARE / 2 : SIDE * 0.3;
    ink.line(at, best.plus(at.minus(best).unit(), inset * unit), LineType.THIN);
    symbol(finding.fail(), number, best);
  }

  private void symbol(boolean fail, int number, Point middle) {
    Contour shape = fail ? square(middle) : triangle(middle);
    ink.patch(shape, 0);
    ink.contour(shape, LineType.EDGE);
    double drop = fail ? 0.5 : 0.62;
    ink.text(
        Integer.toString(number),
        new Point(middle.x(), middle.y() - drop * NUMBER * unit),
        NUMBER,
        0,
        Anchor.MIDDLE);
  }

  private Contour triangle(Point middle) {
    double half = SIDE / 2 * unit;
    double inner = half / Math.sqrt(3);
    return Contour.polygon(
        List.of(
            new Point(middle.x() - half, middle.y() - inner),
            new Point(middle.x() + half, middle.y() - inner),
            new Point(middle.x(), middle.y() + 2 * inner)));
  }

  private Contour square(Point middle) {
    double half = SQUARE / 2 * unit;
    return Contour.polygon(
        List.of(
            new Point(middle.x() - half, middle.y() - half),
            new Point(middle.x() + half, middle.y() - half),
            new Point(middle.x() + half, middle.y() + half),
            new Point(middle.x() - half, middle.y() + half)));
  }

  /**
   * The list, downward from its upper left corner.
   *
   * @param floor no entry begins below this y; the list goes on in another column
   */
  void list(Point corner, double floor) {
    double x = corner.x();
    double y = corner.y() - HEADING * unit;
    ink.text("Findings", new Point(x, y), HEADING, 0, Anchor.START);
    y -= 2 * PictureInk.TEXT * unit;
    double top = y;
    for (int i = 0; i < shown.size(); i++) {
      if (y < floor) {
        x += (COLUMN + INDENT) * unit;
        y = top;
      }
      y = entry(shown.get(i), i + 1, new Point(x, y)) - 2 * PictureInk.TEXT * unit;
    }
    if (left > 0) {
      ink.text(
          "and " + left + " more in the report",
          new Point(x, y),
          PictureInk.SMALL,
          0,
          Anchor.START);
    }
  }

  private double entry(Entry finding, int number, Point at) {
    double middle = at.y() - 0.5 * PictureInk.TEXT * unit;
    symbol(finding.fail(), number, new Point(at.x() + SIDE / 2 * unit, middle));
    double x = at.x() + INDENT * unit;
    double room = (COLUMN - INDENT) * unit;
    List<String> head = TextWrap.lines(finding.head(), PictureInk.TEXT * unit, room, 2);
    double y = ink.lines(head, new Point(x, at.y()), PictureInk.TEXT, Anchor.START);
    List<String> body = new ArrayList<>();
    body.addAll(wrapped(finding.what(), room, WHAT));
    if (!finding.advice().isBlank()) {
      int first = shown.stream().map(Entry::advice).toList().indexOf(finding.advice()) + 1;
      String advice = first < number ? "What to do: as for " + first + "." : finding.advice();
      body.addAll(wrapped(advice, room, ADVICE));
    }
    Point next = new Point(x, y - PictureInk.LEADING * PictureInk.SMALL * unit);
    return ink.lines(body, next, PictureInk.SMALL, Anchor.START);
  }

  private List<String> wrapped(String text, double room, int most) {
    return TextWrap.lines(text, PictureInk.SMALL * unit, room, most);
  }

  private static String figure(Finding finding) {
    String unit = finding.figure().unit().isEmpty() ? "" : " " + finding.figure().unit();
    String text = finding.figure().name() + " " + Numbers.brief(finding.figure().value(), 2) + unit;
    return finding.limit().map(limit -> text + ", " + limit(limit) + unit).orElse(text);
  }

  private static String limit(Limit limit) {
    String sense = limit.sense() == Limit.Sense.AT_LEAST ? "at least " : "at most ";
    return sense + Numbers.brief(limit.value(), 2);
  }
}
