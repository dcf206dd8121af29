package felloe.bringin;

import boofcv.abst.fiducial.FiducialDetector;
import boofcv.factory.fiducial.ConfigFiducialHammingDetector;
import boofcv.factory.fiducial.ConfigHammingMarker;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.factory.fiducial.HammingDictionary;
import boofcv.struct.image.GrayU8;
import felloe.geometry.Point;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The frame's marks as a photo shows them. BoofCV finds them; all of it is used here alone. */
final class MarksFound {

  /** Of our corners, counter-clockwise from the lower left, which one it is of BoofCV's. */
  private static final int[] OURS = {1, 0, 3, 2};

  /**
   * Marks differ in size by the distance from the camera: none is this small, of the middle one.
   */
  private static final double SPECK = 0.35;

  private MarksFound() {}

  /**
   * A mark that was found.
   *
   * @param corners in pixels, in the order of {@link FrameMarks.Mark#corners}
   */
  record Seen(FrameMarks.Mark mark, List<Point> corners) {

    /** Its first side in pixels. */
    private double side() {
      return corners.get(0).distance(corners.get(1));
    }
  }

  /** Whether a module of a mark is black, rows from the top, the border left out. */
  static boolean black(int id, int row, int column) {
    ConfigHammingMarker dictionary = dictionary();
    return dictionary.encoding.get(id).pattern.get(row * dictionary.gridWidth + column) == 0;
  }

  private static ConfigHammingMarker dictionary() {
    return ConfigHammingMarker.loadDictionary(HammingDictionary.ARUCO_MIP_36h12);
  }

  /** Finds them, each once, in a photo of 8 bits. */
  static List<Seen> in(byte[] grey, int width, int height) {
    GrayU8 image = new GrayU8(width, height);
    image.data = grey;
    FiducialDetector<GrayU8> detector =
        FactoryFiducial.squareHamming(
            dictionary(), new ConfigFiducialHammingDetector(), GrayU8.class);
    detector.detect(image);
    List<FrameMarks.Mark> marks = FrameMarks.all();
    Map<Integer, Seen> seen = new TreeMap<>();
    for (int i = 0; i < detector.totalFound(); i++) {
      long id = detector.getId(i);
      if (id < 0 || id >= marks.size()) {
        continue;
      }
      Polygon2D_F64 bounds = detector.getBounds(i, null);
      List<Point> corners = new ArrayList<>();
      for (int k : OURS) {
        // BoofCV counts a pixel from its corner.
        corners.add(new Point(bounds.get(k).x - 0.5, bounds.get(k).y - 0.5));
      }
      Seen one = new Seen(marks.get((int) id), corners);
      seen.merge((int) id, one, (a, b) -> a.side() >= b.side() ? a : b);
    }
    return withoutSpecks(List.copyOf(seen.values()));
  }

  /** Letters and grain are now and then taken for a mark, many times smaller than the true ones. */
  private static List<Seen> withoutSpecks(List<Seen> seen) {
    double[] sides = seen.stream().mapToDouble(Seen::side).sorted().toArray();
    return seen.stream().filter(s -> s.side() > SPECK * sides[sides.length / 2]).toList();
  }
}
