package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.LimitOverride;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.Stock;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A plate put together piece by piece for a test; 300 x 200 carbon laminate of 4 mm to start. */
final class Wheel {

  private Contour outline = RandomShapes.roundedRectangle(300, 200, 20);
  private final List<Window> windows = new ArrayList<>();
  private final List<Hole> holes = new ArrayList<>();
  private final List<LimitOverride> limits = new ArrayList<>();
  private MaterialKind kind = MaterialKind.LAMINATE;
  private double density = 1.5;
  private double thickness = 4;
  private Optional<Sheet> sheet = Optional.empty();
  private Making making = new Making(6, 2, 0);

  static Place line(int line) {
    return Place.of("redshank.yaml", line, 5);
  }

  Wheel outline(Contour contour) {
    outline = contour;
    return this;
  }

  Wheel material(MaterialKind of, double gramsPerCubicCentimetre) {
    kind = of;
    density = gramsPerCubicCentimetre;
    return this;
  }

  Wheel kind(MaterialKind of) {
    return material(of, density);
  }

  Wheel thickness(double mm) {
    thickness = mm;
    return this;
  }

  Wheel sheet(double width, double height) {
    sheet = Optional.of(new Sheet(width, height));
    return this;
  }

  Wheel making(double cutter, double rough, double gripScale) {
    making = new Making(cutter, rough, gripScale);
    return this;
  }

  Wheel limit(String rule, double value) {
    limits.add(new LimitOverride(rule, value, line(90 + limits.size())));
    return this;
  }

  Wheel hole(HoleRole role, double x, double y, double diameter) {
    int number = holes.size() + 1;
    holes.add(new Hole("H" + number, role, new Point(x, y), diameter, line(20 + number)));
    return this;
  }

  Wheel window(WindowUse use, Contour contour) {
    int number = windows.size() + 1;
    windows.add(new Window("W" + number, use, contour, line(10 + number)));
    return this;
  }

  /** A grip window with its middle at x, y. */
  Wheel grip(double x, double y, double width, double height, double radius) {
    return window(
        WindowUse.GRIP,
        RandomShapes.roundedRectangle(width, height, radius).moved(RigidTransform.shift(x, y)));
  }

  Plate plate() {
    Material material = new Material("test", "test stock", kind, density, "invented");
    return new Plate(
        "redshank",
        "Redshank",
        "00000000",
        outline,
        windows,
        holes,
        List.of(),
        Optional.empty(),
        new Stock(material, thickness, sheet, Face.FRONT, line(4)),
        making,
        limits,
        List.of());
  }

  ReviewReport review() {
    return Review.of(plate());
  }

  List<Finding> findings(String rule) {
    return review().of(rule);
  }

  /** The first finding of a rule. */
  Finding first(String rule) {
    return findings(rule).get(0);
  }
}
