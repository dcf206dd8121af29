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

  /** A sheet that lies so much higher than another makes scale wrong, mm; and told so surely. */
  private static final double LIFTED = 1.5;

  private static final double SURELY = 6;

  /** Light of white paper: brighter is cut off, and darker is lost in noise. */
  private static final double BRIGHTEST = 0.97;

  private static final double DARKEST = 0.03;

  /** Black marks that are so light, share of the paper's, are veiled by shine or fog. */
  private static final double VEILED = 0.5;

  /**
   * Of a photo without any white in it so much is dark, and of one that is cut off so much white.
   */
  private static final double NEARLY_ALL = 0.99;

  private static final double MUCH_OF_IT = 0.4;

  /** Pixels that are looked at for that: one in so many, a prime. */
  private static final int EVERY = 97;

  private final String file;
  private final Asked asked;

  PhotoChecks(String file, Asked asked) {
    this.file = file;
    this.asked = asked;
  }

  private BadInput bad(String value, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(file), "", value, wanted, cure));
  }

  void marks(Light light, List<MarksFound.Seen> seen) {
    if (seen.isEmpty()) {
      // Why none is seen: the frame cannot be at fault in a photo that is all dark or all white.
      if (share(light, DARKEST) > NEARLY_ALL) {
        throw dark();
      }
      if (share(light, BRIGHTEST) < 1 - MUCH_OF_IT) {
        throw bright();
      }
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
    int thin = -1;
    for (int sheet = 0; sheet < FrameMarks.ROUND; sheet++) {
      round += count[sheet] > 0 ? 1 : 0;
      thin = count[sheet] > 0 && count[sheet] < OF_SHEET ? sheet : thin;
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
    if (thin >= 0) {
      throw bad(
          count[thin] + (count[thin] == 1 ? " mark" : " marks"),
          "of sheet "
              + (thin + 1)
              + " alone can be read: at least "
              + OF_SHEET
              + " of each sheet must be seen whole",
          "let nothing lie over the marks, and take the photo so that the sheet is in it whole; or"
              + " take it away");
    }
    if (seen.size() < FEWEST) {
      throw bad(
          seen.size() + " marks",
          "are too few: at least " + FEWEST + " must be seen whole",
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
      throw bright();
    }
    if (white < DARKEST) {
      throw dark();
    }
    if (black > VEILED * white) {
      throw bad(
          "",
          "has marks with no black in them: shine, fog or a dirty lens",
          "wipe the lens, turn the lamp away, and take it anew");
    }
  }

  private BadInput bright() {
    return bad(
        "",
        "is over-exposed: white paper is cut off, and with it where edges are",
        "take it darker: touch the paper on the camera's screen, or correct the exposure by -1");
  }

  private BadInput dark() {
    return bad("", "is under-exposed", "take it in daylight or with more light, without a flash");
  }

  /** Share of a photo that is darker than so much light, by a pixel in every few. */
  private static double share(Light light, double level) {
    int darker = 0;
    int all = 0;
    for (int k = 0; k < light.values().length; k += EVERY) {
      darker += light.values()[k] < level ? 1 : 0;
      all++;
    }
    return darker / (double) all;
  }

  void fit(FrameFit fit, List<MarksFound.Seen> seen) {
    double blur = Math.max(fit.softness(seen), fit.blur());
    if (!(blur <= BLURRED)) {
      throw bad(
          "",
          "is blurred: edges are spread over "
              + (Double.isFinite(blur)
                  ? Numbers.brief(4 * blur, 0) + " pixels"
                  : "so many pixels that none is found"),
          "wipe the lens, let it focus on the part, use a stand or more light");
    }
    double oblique = Math.toDegrees(Math.max(fit.camera().oblique(), fit.aside()));
    if (!(oblique <= OBLIQUE)) {
      throw bad(
          Numbers.brief(oblique, 0) + " degrees",
          "is too oblique: at most " + Numbers.brief(OBLIQUE, 0) + " from straight down",
          "hold the camera above the part's middle, looking down");
    }
    lifts(fit);
    if (!(fit.leftOver() <= RESIDUAL)) {
      throw bad(
          Numbers.brief(fit.leftOver(), 2) + " pixels",
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

  /** Whether the camera may have stood where the maker's tape says. */
  void height(FrameFit fit, double tape) {
    if (!fit.holds(tape)) {
      double high = fit.camera().stands()[2];
      double bound = PhotoAccuracy.TWO_SIDED * fit.heightSpread();
      throw bad(
          Numbers.brief(tape, 0) + " mm",
          "is not how high the camera stood: the marks tell "
              + Numbers.brief(high - bound, 0)
              + " to "
              + Numbers.brief(high + bound, 0)
              + " mm",
          "measure from the paper to the lens, or leave out " + asked.cameraHeight());
    }
  }

  private void lifts(FrameFit fit) {
    for (FrameFit.Lift lift : fit.lifts()) {
      double surely = Math.max(LIFTED, SURELY * lift.spread());
      if (Math.abs(lift.height()) > surely) {
        throw bad(
            "sheet " + (lift.sheet() + 1),
            "lies some "
                + Numbers.brief(Math.abs(lift.height()), 0)
                + " mm "
                + (lift.height() > 0 ? "higher" : "lower")
                + " than sheet "
                + (fit.first() + 1),
            "lay all sheets flat on one plane, and tape them down");
      }
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
