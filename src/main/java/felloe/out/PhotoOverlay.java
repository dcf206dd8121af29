package felloe.out;

import felloe.bringin.PhotoPicture;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Plate;
import java.awt.image.BufferedImage;

/**
 * A plate's lines on the photo that it was measured on, to see whether they are the part's; and
 * rings round what may be a hole and is not on the plate.
 */
public final class PhotoOverlay {

  /** Dots to a millimetre; fewer where the picture would be large. */
  private static final double PER_MM = 4;

  private static final double LONGEST = 1_600;

  /** Round the part, mm. */
  private static final double ROUND = 12;

  /** How far from the middle of a line it is drawn, dots. */
  private static final double HALF_LINE = 0.9;

  private static final int RED = 0xffe00000;

  private static final int BLUE = 0xff0040ff;

  /** A ring lies so far outside of what it marks, mm. */
  private static final double AROUND = 2;

  private PhotoOverlay() {}

  /** The picture as a PNG file. */
  public static byte[] of(PhotoPicture picture, Plate plate) {
    Box box = plate.box().grown(ROUND);
    double perMm = Math.min(PER_MM, LONGEST / Math.max(box.width(), box.height()));
    int[][] greys = picture.greys(box, perMm);
    BufferedImage image =
        new BufferedImage(greys[0].length, greys.length, BufferedImage.TYPE_INT_ARGB);
    for (int j = 0; j < greys.length; j++) {
      for (int i = 0; i < greys[j].length; i++) {
        image.setRGB(i, j, 0xff000000 | 0x010101 * greys[j][i]);
      }
    }
    for (Contour contour : plate.region().contours()) {
      draw(image, box, perMm, contour, RED);
    }
    for (PhotoPicture.Doubt doubt : picture.doubts()) {
      draw(image, box, perMm, Contour.circle(doubt.middle(), doubt.radius() + AROUND), BLUE);
    }
    return PngFile.coloured(image, (int) Math.round(1000 * perMm));
  }

  private static void draw(
      BufferedImage image, Box box, double perMm, Contour contour, int colour) {
    contour
        .segments()
        .forEach(
            segment -> {
              int steps = (int) Math.ceil(segment.length() * perMm * 2) + 1;
              for (int k = 0; k < steps; k++) {
                dot(image, box, perMm, segment.at(k / (double) steps), colour);
              }
            });
  }

  private static void dot(BufferedImage image, Box box, double perMm, Point p, int colour) {
    double x = (p.x() - box.minX()) * perMm - 0.5;
    double y = (box.maxY() - p.y()) * perMm - 0.5;
    for (int j = (int) Math.ceil(y - HALF_LINE); j <= y + HALF_LINE; j++) {
      for (int i = (int) Math.ceil(x - HALF_LINE); i <= x + HALF_LINE; i++) {
        if (i >= 0 && j >= 0 && i < image.getWidth() && j < image.getHeight()) {
          image.setRGB(i, j, colour);
        }
      }
    }
  }
}
