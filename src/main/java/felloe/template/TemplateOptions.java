package felloe.template;

import felloe.drawing.Paper;
import felloe.geometry.Numbers;
import felloe.plate.Face;
import java.util.Optional;

/**
 * How a template is to be printed and used.
 *
 * @param paper what it is printed on
 * @param margin edge of the paper that the printer cannot print, mm
 * @param overlap what neighbouring pages share, mm
 * @param markOut how the shape gets onto the stock
 * @param face the face it goes on, where that differs from the plate's own
 * @param turning whether the plate may be turned to save pages
 * @param bars what was measured on the check bars of an earlier print
 * @param asked where paper and reading are asked for
 */
public record TemplateOptions(
    Paper paper,
    double margin,
    double overlap,
    MarkOut markOut,
    Optional<Face> face,
    boolean turning,
    Optional<BarReading> bars,
    AskedAt asked) {

  /** Usual margin: what desktop printers surely print within (common practice), mm. */
  public static final double MARGIN = 10;

  /** Greatest margin that is taken, mm. */
  public static final double LARGEST_MARGIN = 25;

  /** Usual overlap, mm. */
  public static final double OVERLAP = 10;

  /** Least overlap: below it the registration marks have no room, mm. */
  public static final double LEAST_OVERLAP = 10;

  /** Greatest overlap that is taken, mm. */
  public static final double LARGEST_OVERLAP = 30;

  /**
   * Refuses a margin or overlap out of bounds.
   *
   * @throws IllegalArgumentException naming the field and what is allowed
   */
  public TemplateOptions {
    within("margin", margin, 0, LARGEST_MARGIN);
    within("overlap", overlap, LEAST_OVERLAP, LARGEST_OVERLAP);
  }

  private static void within(String name, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          name
              + " must be from "
              + Numbers.brief(least, 1)
              + " to "
              + Numbers.brief(most, 1)
              + " mm, not "
              + Numbers.brief(Numbers.finite(name, value), 3));
    }
  }

  /** The same on another paper. */
  public TemplateOptions withPaper(Paper other) {
    return new TemplateOptions(other, margin, overlap, markOut, face, turning, bars, asked);
  }

  /** The same marked out in another way, on the face that the stock says. */
  public TemplateOptions marked(MarkOut other) {
    return new TemplateOptions(
        paper, margin, overlap, other, Optional.empty(), turning, bars, asked);
  }

  /** The same for a printer that was not measured. */
  public TemplateOptions withoutBars() {
    return new TemplateOptions(
        paper, margin, overlap, markOut, face, turning, Optional.empty(), asked);
  }

  /** The same with another margin, mm. */
  public TemplateOptions withMargin(double other) {
    return new TemplateOptions(paper, other, overlap, markOut, face, turning, bars, asked);
  }

  /** The same with another overlap, mm. */
  public TemplateOptions withOverlap(double other) {
    return new TemplateOptions(paper, margin, other, markOut, face, turning, bars, asked);
  }

  /** The same with another way of marking out. */
  public TemplateOptions withMarkOut(MarkOut other) {
    return new TemplateOptions(paper, margin, overlap, other, face, turning, bars, asked);
  }

  /** The same for a face. */
  public TemplateOptions withFace(Face other) {
    return new TemplateOptions(
        paper, margin, overlap, markOut, Optional.of(other), turning, bars, asked);
  }

  /** The same with the plate turned where that saves pages. */
  public TemplateOptions withTurning(boolean other) {
    return new TemplateOptions(paper, margin, overlap, markOut, face, other, bars, asked);
  }

  /** The same, corrected for a reading of the check bars. */
  public TemplateOptions withBars(BarReading reading) {
    return new TemplateOptions(
        paper, margin, overlap, markOut, face, turning, Optional.of(reading), asked);
  }
}
