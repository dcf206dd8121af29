package felloe.bringin;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.List;

/** What a photo must be for anything to be measured on it; limits by feel where nothing is said. */
final class PhotoChecks {

  /** Fewest marks in all, and of each sheet that shows one: a lens is not told by fewer. */
  private static final int FEWEST = 8;

  private static final int OF_SHEET = 3;

  /** Farther from straight down walls hide too much, degrees. */
  private static final double OBLIQUE = 32;

  /** More blur than this, standard deviation in pixels, takes small things away. */
  private static final double BLURRED = 2.2;

  /** Fewer pixels a millimetre do not hold the accuracy that is told. */
  private static final double PER_MM = 1.8;

  /** What is left over at the marks, pixels, when sheets lie flat and still. */
  private static final double RESIDUAL = 0.35;

  /** Light of white paper: brighter is cut off, and darker is lost in noise. */
  private static final double BRIGHTEST = 0.97;

  private static final double DARKEST = 0.03;

  /** Black marks that are so light, share of the paper's, are veiled by shine or fog. */
  private static final double VEILED = 0.5;

  private final String file;
  private final Asked asked;

  PhotoChecks(String file, Asked asked) {
    this.file = file;
    this.asked = asked;
  }

  private BadInput bad(String value, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(file), "", value, wanted, cure));
  }

  void marks(List<MarksFound.Seen> seen) {
    if (seen.isEmpty()) {
      throw bad(
          "",
          "shows no mark of the photo frame",
          "print the frame with '"
              + asked.frame()
              + "', lay its sheets round the part and take the photo anew, sharp, with all sheets"
              + " in it");
    }
    int[] count = new int[FrameMarks.SHEETS];
    seen.forEach(one -> count[one.mark().sheet()]++);
    int round = 0;
    int thin = 0;
    for (int sheet = 0; sheet < FrameMarks.ROUND; sheet++) {
      round += count[sheet] > 0 ? 1 : 0;
      thin += count[sheet] > 0 && count[sheet] < OF_SHEET ? 1 : 0;
    }
    if (count[FrameMarks.TARGET] > 0 && round > 0) {
      throw bad(
          "",
          "shows both kinds of sheet",
          "use either the sheet on which the part lies or those that lie round it");
    }
    if (round == 1) {
      throw bad(
          "",
          "shows one sheet of the frame alone",
          "lay two sheets or four round the part, all of them in the photo");
    }
    if (seen.size() < FEWEST || thin > 0) {
      throw bad(
          seen.size() + " marks",
          "are too few: at least "
              + FEWEST
              + " in all, and "
              + OF_SHEET
              + " of each sheet, must be seen whole",
          "let nothing lie over the marks, and take the photo so that the sheets are in it whole");
    }
  }

  /** Whether paper and marks are neither cut off nor lost. */
  void light(Light light, List<MarksFound.Seen> seen) {
    double white = 0;
    double black = 0;
    for (MarksFound.Seen one : seen) {
      Point middle = Point.ORIGIN;
      for (Point p : one.corners()) {
        middle = middle.plus(p, 0.25);
      }
      for (Point p : one.corners()) {
        // Across a corner: half a module out lies paper, half a module in the black border.
        Point out = p.plus(p.minus(middle), 1.0 / FrameMarks.MODULES);
        Point in = p.plus(middle.minus(p), 1.0 / FrameMarks.MODULES);
        white += light.at(out.x(), out.y()) / (4 * seen.size());
        black += light.at(in.x(), in.y()) / (4 * seen.size());
      }
    }
    if (white > BRIGHTEST) {
      throw bad(
          "",
          "is over-exposed: white paper is cut off, and with it where edges are",
          "take it darker: touch the paper on the camera's screen, or correct the exposure by -1");
    }
    if (white < DARKEST) {
      throw bad("", "is under-exposed", "take it in daylight or with more light, without a flash");
    }
    if (black > VEILED * white) {
      throw bad(
          "",
          "has marks with no black in them: shine, fog or a dirty lens",
          "wipe the lens, turn the lamp away, and take it anew");
    }
  }

  void fit(FrameFit fit, List<MarksFound.Seen> seen) {
    double oblique = Math.toDegrees(fit.camera().oblique());
    if (!(oblique <= OBLIQUE)) {
      throw bad(
          Numbers.brief(oblique, 0) + " degrees",
          "is too oblique: at most " + Numbers.brief(OBLIQUE, 0) + " from straight down",
          "hold the camera above the part's middle, looking down");
    }
    if (!(fit.blur() <= BLURRED)) {
      throw bad(
          "",
          "is blurred: edges are spread over " + Numbers.brief(4 * fit.blur(), 0) + " pixels",
          "wipe the lens, let it focus on the part, use a stand or more light");
    }
    if (!(fit.noise() <= RESIDUAL)) {
      throw bad(
          Numbers.brief(fit.noise(), 2) + " pixels",
          "are left over at the marks: at most "
              + Numbers.brief(RESIDUAL, 2)
              + " where the sheets lie flat on one plane, and camera and sheets stand still",
          "lay the sheets flat on one plane, tape them down, and take one photo, no panorama");
    }
    if (fit.fewest(seen) < MarkSides.FEWEST) {
      throw bad(
          "",
          "shows a sheet whose marks do not lie where those of the others put them",
          "lay all sheets flat on one plane, as they were printed, and let nothing lie over them");
    }
  }

  void scale(double perMm) {
    if (perMm < PER_MM) {
      throw bad(
          Numbers.brief(perMm, 1) + " pixels a millimetre",
          "are too few: at least " + Numbers.brief(PER_MM, 1),
          "go nearer, as long as all sheets are in the photo, and take it as large as the camera"
              + " makes it");
    }
  }

  void part(PartSeen.Found found) {
    switch (found.trouble()) {
      case NONE -> {
        // Something to measure.
      }
      case NOTHING ->
          throw bad(
              "",
              "shows no part among the sheets",
              "lay it in the middle, off the sheets, on an even ground that is plainly lighter or"
                  + " darker than the part");
      case REACHES_OUT ->
          throw bad(
              "",
              "shows something like the part that reaches the marks or the edge of the photo",
              "keep the part "
                  + Numbers.brief(PartSeen.BESIDE_MARKS, 0)
                  + " mm away from all marks, all of it between the sheets and within the photo,"
                  + " and clear other things away");
    }
  }
}
