package felloe.template;

import felloe.drawing.Paper;
import felloe.plate.Place;
import java.util.Optional;

/** Options of templates as the command line gives them when nothing is asked for. */
public final class UsualPrint {

  /** Where the command line asks. */
  static final AskedAt ASKED = new AskedAt(Place.ofOption("--paper"), Place.ofOption("--bars"));

  private UsualPrint() {}

  /** Stuck on, 10 mm margin and overlap, not turned, not corrected. */
  public static TemplateOptions on(Paper paper) {
    return new TemplateOptions(
        paper,
        TemplateOptions.MARGIN,
        TemplateOptions.OVERLAP,
        MarkOut.STUCK_ON,
        Optional.empty(),
        false,
        Optional.empty(),
        ASKED);
  }
}
