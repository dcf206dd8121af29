package felloe.layup;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.NoFit;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Test strips for bending after ISO 14125, by the thickness of the plate.
 *
 * <p>The standard's specimens (table 3, from memory) are class I 80 x 10 x 4 and class II 80 x 15 x
 * 4 at a span of 64, class III 60 x 15 x 2 at 40, class IV 100 x 15 x 2 at 80 mm. For another
 * thickness, length and span keep their ratio to it.
 *
 * @param stripClass 1 to 4
 * @param length mm
 * @param width mm
 * @param thickness mm
 * @param span mm
 * @param asked how many are wanted
 * @param placed where those lie that found room, in the plate's frame
 */
public record TestStrips(
    int stripClass,
    double length,
    double width,
    double thickness,
    double span,
    int asked,
    List<Strip> placed) {

  /** What a saw takes and a file needs between two parts, mm: common practice. */
  static final double GAP = 3;

  /** The ragged edge of a blank that no strip may reach into, mm: common practice. */
  static final double TRIM = 5;

  private static final String[] CLASSES = {"I", "II", "III", "IV"};

  public TestStrips {
    placed = List.copyOf(placed);
  }

  /**
   * A strip where it lies.
   *
   * @param label such as {@code T1}
   * @param contour its edge
   * @param upright whether its length runs along y
   */
  public record Strip(String label, Contour contour, boolean upright) {}

  /** The sizes for a class and a thickness, none placed. */
  static TestStrips sized(int stripClass, double thickness, int asked) {
    double spans = new double[] {16, 16, 20, 40}[stripClass - 1];
    double lengths = new double[] {20, 20, 30, 50}[stripClass - 1];
    double width = stripClass == 1 ? 10 : 15;
    return new TestStrips(
        stripClass, lengths * thickness, width, thickness, spans * thickness, asked, List.of());
  }

  /** The class as the standard writes it: I to IV. */
  public String className() {
    return CLASSES[stripClass - 1];
  }

  /** Places strips beside a plate and in its windows; what the plate forbids is worked out once. */
  static final class Placer {
    private final TestStrips sized;
    private final boolean turned;
    private final NoFit.Shape along;
    private final NoFit.Shape upright;
    private final NoFit.Forbidden plateAlong;
    private final NoFit.Forbidden plateUpright;

    /**
     * A placer.
     *
     * @param plate what strips must not touch
     * @param turned whether they may lie along y as well: the cloth must be alike both ways
     */
    Placer(TestStrips sized, NoFit.Shape plate, boolean turned) {
      this.sized = sized;
      this.turned = turned;
      this.along = shape(sized.length(), sized.width());
      this.upright = shape(sized.width(), sized.length());
      this.plateAlong = NoFit.between(plate, along);
      this.plateUpright = NoFit.between(plate, upright);
    }

    /** As many strips as are asked for and find room in a box. */
    TestStrips in(Box room) {
      List<NoFit.Forbidden> takenAlong = new ArrayList<>(List.of(plateAlong));
      List<NoFit.Forbidden> takenUpright = new ArrayList<>(List.of(plateUpright));
      List<Strip> strips = new ArrayList<>();
      while (strips.size() < sized.asked()) {
        Optional<Point> at = NoFit.lowest(room, along, takenAlong);
        boolean up = at.isEmpty() && turned;
        if (up) {
          at = NoFit.lowest(room, upright, takenUpright);
        }
        if (at.isEmpty()) {
          break;
        }
        double width = up ? sized.width() : sized.length();
        double height = up ? sized.length() : sized.width();
        Contour contour =
            rectangle(width, height).moved(RigidTransform.shift(at.get().x(), at.get().y()));
        strips.add(new Strip("T" + (strips.size() + 1), contour, up));
        NoFit.Shape stands = NoFit.Shape.of(Region.of(contour), GAP, 0);
        takenAlong.add(NoFit.between(stands, along));
        takenUpright.add(NoFit.between(stands, upright));
      }
      return sized.with(strips);
    }
  }

  /** These strips, placed. */
  TestStrips with(List<Strip> strips) {
    return new TestStrips(stripClass, length, width, thickness, span, asked, strips);
  }

  private static NoFit.Shape shape(double width, double height) {
    return NoFit.Shape.of(Region.of(rectangle(width, height)), 0, 0);
  }

  private static Contour rectangle(double width, double height) {
    return Contour.rectangle(new Box(0, 0, width, height));
  }
}
