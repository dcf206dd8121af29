package felloe.bringin;

import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.util.List;

/** A photo laid flat: as the plane of the part's upper face is seen from straight above. */
public final class PhotoPicture {

  private final Light light;
  private final Camera camera;
  private final double thickness;
  private final RigidTransform toPaper;
  private final List<Doubt> doubts;

  /**
   * What may be a hole and could not be measured.
   *
   * @param middle in the plate's own millimetres
   * @param radius about, mm
   */
  public record Doubt(Point middle, double radius) {}

  /**
   * A picture.
   *
   * @param toPaper from the plate to the paper
   * @param doubts what is to be marked on it
   */
  PhotoPicture(
      Light light, Camera camera, double thickness, RigidTransform toPaper, List<Doubt> doubts) {
    this.doubts = List.copyOf(doubts);
    this.light = light;
    this.camera = camera;
    this.thickness = thickness;
    this.toPaper = toPaper;
  }

  /** What may be holes and is not on the plate. */
  public List<Doubt> doubts() {
    return doubts;
  }

  /** The grey of a place of the plate, 0 to 255; white beyond the photo's edge. */
  private int grey(double x, double y, double[] pixel) {
    Point p = toPaper.of(new Point(x, y));
    camera.project(p.x(), p.y(), thickness, pixel);
    if (!light.holds(pixel[0], pixel[1], 1)) {
      return 255;
    }
    return (int) Math.rint(255 * Light.encoded(light.at(pixel[0], pixel[1])));
  }

  /**
   * Greys from 0 to 255, row by row from the upper left.
   *
   * @param box what is shown, in the plate's own millimetres
   * @param perMm dots to a millimetre
   */
  public int[][] greys(Box box, double perMm) {
    int rows = (int) Math.ceil(box.height() * perMm);
    int columns = (int) Math.ceil(box.width() * perMm);
    int[][] all = new int[rows][columns];
    double[] pixel = new double[2];
    for (int j = 0; j < rows; j++) {
      for (int i = 0; i < columns; i++) {
        all[j][i] = grey(box.minX() + (i + 0.5) / perMm, box.maxY() - (j + 0.5) / perMm, pixel);
      }
    }
    return all;
  }
}
