package felloe.template;

import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.HolePosition;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The sentences that template pages carry. */
final class TemplateWords {

  /** How the line of the title block begins that only pages at scale have. */
  static final String SCALE = "Scale 1:1, mm";

  /** Lines of the title block on name, stock and face; how it was printed follows. */
  private static final int OWN_FACTS = 3;

  private TemplateWords() {}

  static StripText strip(
      LaidShape shape, double turn, Optional<BarReading> bars, Stamp stamp, List<String> cautions) {
    Plate plate = shape.plate();
    List<String> facts = new ArrayList<>();
    facts.add(plate.name() + "  rev " + plate.revision());
    // The thickness first: what is cut off is the material's name.
    facts.add(plate.stock().thicknessWords() + " " + plate.stock().material().title());
    facts.add(
        shape.face() == Face.FRONT ? "FRONT face, driver's side" : "BACK face, hub side: MIRRORED");
    facts.add(
        SCALE + (turn == 0 ? "" : ", turned " + Numbers.brief(Math.toDegrees(turn), 1) + "\u00b0"));
    bars.ifPresent(reading -> facts.add("corrected for bars " + reading.text()));
    return new StripText(
        plate.title(),
        facts,
        (stamp.isNone() ? toDo(shape) : stamp.sentence()) + " " + String.join(" ", cautions));
  }

  /**
   * What a page says at the least where its neighbours on the same sheet say the rest.
   *
   * @param page name of the page on which all cautions stand
   */
  static StripText brief(StripText whole, LaidShape shape, Stamp stamp, String page) {
    List<String> facts = new ArrayList<>();
    facts.add(shape.face() == Face.FRONT ? "FRONT face" : "BACK face: MIRRORED");
    facts.addAll(whole.facts().subList(OWN_FACTS, whole.facts().size()));
    return new StripText(
        whole.facts().get(0),
        facts,
        (stamp.isNone() ? toDo(shape) : stamp.sentence())
            + " Before you start, read the cautions on page "
            + page
            + ".");
  }

  private static String toDo(LaidShape shape) {
    return instruction(shape) + waste(shape) + bezels(shape) + engraving(shape);
  }

  /** Of a plate whose holes a machine makes no centre is marked by the paper. */
  private static String instruction(LaidShape shape) {
    return shape.plate().making().places(HolePosition.MACHINE)
            && shape.markOut().method() == MarkOut.Method.CENTRES
        ? "A machine makes these holes: lay the sheet on to compare, neither mark nor drill by it."
        : shape.markOut().instruction();
  }

  private static boolean isPattern(LaidShape shape) {
    return shape.markOut().method() == MarkOut.Method.PATTERN;
  }

  /** What the marks of holes in the waste mean. */
  private static String waste(LaidShape shape) {
    return shape.waste().isEmpty()
        ? ""
        : " Dashed circle with an \u00d7: a hole to drill in the waste before you saw, no hole of"
            + " the plate.";
  }

  private static String bezels(LaidShape shape) {
    return shape.bezels().isEmpty() || isPattern(shape)
        ? ""
        : " Dashed line round an opening: what will sit there covers so much; never cut it.";
  }

  private static String engraving(LaidShape shape) {
    List<Engraving> engravings = shape.engravings();
    if (engravings.isEmpty() || isPattern(shape)) {
      return "";
    }
    double deepest = engravings.stream().mapToDouble(Engraving::depth).max().orElseThrow();
    return " Thin letters and marks: cut shallow, at most "
        + Numbers.brief(deepest, 2)
        + " mm deep, never through.";
  }

  /** Numbered steps of printing, joining and checking. */
  static List<String> steps(
      LaidShape shape, Grid grid, String paper, double bar, BarWords bars, Stamp stamp) {
    Plate plate = shape.plate();
    MarkOut markOut = shape.markOut();
    List<String> steps = new ArrayList<>();
    if (!stamp.isNone()) {
      steps.add(stamp.sentence() + " Mend the shape file and print again.");
    }
    boolean plotted = paper.equals(PageSet.FULL_SIZE);
    steps.add(
        (plotted ? "Plot or print" : "Print on " + paper)
            + " at 100 % (actual size), never \u201cfit to page\u201d.");
    steps.add(plotted ? bars.plotted(bar) : "On every page: " + bars.printed(bar));
    if (grid.count() > 1) {
      steps.add(
          "Where a page has a line \u201ctrim here\u201d on its left or upper side, cut along it.");
      steps.add(
          "Lay each trimmed edge on the neighbour's dashed glue line so that the halves of each"
              + " numbered mark make one circle and cross. Join rows first, then row to row; tape"
              + " over the seams.");
    }
    Box box = plate.box();
    steps.add(
        "Check the finished sheet: "
            + (markOut.method() == MarkOut.Method.CENTRES ? "outline " : "finish line ")
            + Numbers.brief(box.width(), 2)
            + " mm wide and "
            + Numbers.brief(box.height(), 2)
            + " mm high at the most.");
    if (stamp.isNone() && isPattern(shape)) {
      steps.add(
          "Try the paper round the grip first: folds must meet with no gap and no lap. Leather"
              + " gives; cut it a little tight rather than loose.");
    } else if (stamp.isNone()) {
      steps.add(
          plate.making().places(HolePosition.MACHINE)
              ? "A machine makes the holes: mark none by this sheet. Try the pattern on the hub in"
                  + " card or scrap first."
              : "Mark out and prick all hole centres before anything is cut"
                  + (plate.holes(HoleRole.BOLT).isEmpty()
                      ? "."
                      : "; try the pattern on the hub in card or scrap first."));
      if (!shape.waste().isEmpty()) {
        steps.add(
            "Then drill the dashed circles marked \u201cwaste\u201d: the saw starts and turns"
                + " there. Stay off the thick line.");
      }
    }
    return steps;
  }
}
