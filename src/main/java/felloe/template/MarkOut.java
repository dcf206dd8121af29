package felloe.template;

import felloe.geometry.Numbers;

/**
 * How the shape gets from the paper onto the stock, and what that asks of the drawn line.
 *
 * <p>Traced with a pen, the middle of the ink follows the printed line, so that the ink reaches
 * half the pen's width to either side. The line is therefore moved by half the pen's width, square
 * to itself, so that one edge of the ink is the finish line: away from the material (an outline
 * grows, a window shrinks) when that edge is the one on the plate's side, toward the material when
 * it is the one on the waste side. Holes are never moved: their centres are pricked.
 *
 * @param method how
 * @param penWidth width of the pen's ink, mm; 0 unless traced
 * @param finish which edge of the ink is the finish line; counts only when traced
 */
public record MarkOut(Method method, double penWidth, InkEdge finish) {

  /** The widest pen that is taken, mm; anything wider is a brush. */
  public static final double WIDEST_PEN = 3;

  /** Stuck on the stock and cut through, paper and all. */
  public static final MarkOut STUCK_ON = new MarkOut(Method.STUCK_ON, 0, InkEdge.PLATE_SIDE);

  /** Held on the stock while hole centres are pricked through it. */
  public static final MarkOut PRICKED = new MarkOut(Method.PRICKED, 0, InkEdge.PLATE_SIDE);

  /** Held on the stock while hole centres are pricked through it; nothing is cut by it. */
  public static final MarkOut CENTRES = new MarkOut(Method.CENTRES, 0, InkEdge.PLATE_SIDE);

  /** Cut out as a pattern for leather or cloth; thin lines are folds and stitches. */
  public static final MarkOut PATTERN = new MarkOut(Method.PATTERN, 0, InkEdge.PLATE_SIDE);

  /** The ways of marking out. */
  public enum Method {
    /** Stuck on and cut through. */
    STUCK_ON,
    /** Traced with a pen. */
    TRACED,
    /** Pricked through at hole centres. */
    PRICKED,
    /** Centre marks alone: a drilling sheet. */
    CENTRES,
    /** A pattern for leather or cloth. */
    PATTERN
  }

  /** An edge of a line of ink. */
  public enum InkEdge {
    /** The edge toward the plate: all ink is taken off. */
    PLATE_SIDE,
    /** The edge toward the waste: the ink stays on the plate. */
    WASTE_SIDE
  }

  /**
   * Refuses a pen that is none.
   *
   * @throws IllegalArgumentException naming the field
   */
  public MarkOut {
    Numbers.finite("penWidth", penWidth);
    if (method == Method.TRACED ? !(penWidth > 0 && penWidth <= WIDEST_PEN) : penWidth != 0) {
      throw new IllegalArgumentException(
          "penWidth must be above 0 and at most " + Numbers.brief(WIDEST_PEN, 1) + " mm");
    }
  }

  /**
   * Traced with a pen.
   *
   * @param penWidth width of its ink, mm
   * @param finish which edge of the ink is to be the finish line
   * @throws IllegalArgumentException when the width is not above 0 and at most {@link #WIDEST_PEN}
   */
  public static MarkOut traced(double penWidth, InkEdge finish) {
    return new MarkOut(Method.TRACED, penWidth, finish);
  }

  /** How far the drawn line lies from the finish line, mm, positive away from the material. */
  public double lineOffset() {
    return finish == InkEdge.PLATE_SIDE ? penWidth / 2 : -penWidth / 2;
  }

  /** What the page says of it: how to mark out, and where the finish line is. */
  public String instruction() {
    String pen = Numbers.brief(penWidth, 2);
    String half = Numbers.brief(penWidth / 2, 3);
    return switch (method) {
      case STUCK_ON -> "Stick on and cut through. The middle of the thick line is the finish line.";
      case PRICKED ->
          "Lay on and prick through at the hole crosses. The middle of the thick line is the finish"
              + " line.";
      case CENTRES -> "Centre marks: prick through every cross. Do not cut by the thin outline.";
      case PATTERN ->
          "Cut the pattern out along the thick line. Thin lines: turn the edge under there. Ticks:"
              + " a stitch each, opposite ones belong together.";
      case TRACED ->
          finish == InkEdge.PLATE_SIDE
              ? "Trace the thick line with a "
                  + pen
                  + " mm pen. It is moved "
                  + half
                  + " mm off the plate: the INSIDE of the ink (plate side) is the finish line;"
                  + " take all ink off."
              : "Trace the thick line with a "
                  + pen
                  + " mm pen. It is moved "
                  + half
                  + " mm into the plate: the OUTSIDE of the ink (waste side) is the finish line;"
                  + " leave the ink on.";
    };
  }
}
