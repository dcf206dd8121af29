package felloe.plate;

import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Invented wheels of a village workshop, built without the shape file's reader. */
public final class DemoPlates {

  private static final Material CARBON =
      new Material(
          "carbon-laminate",
          "carbon laminate",
          MaterialKind.LAMINATE,
          1.55,
          "common practice, from memory");
  private static final Material ALUMINIUM =
      new Material(
          "aluminium-6082",
          "aluminium 6082",
          MaterialKind.METAL,
          2.70,
          "common practice, from memory");

  private DemoPlates() {}

  /** All of them. */
  public static List<Plate> all() {
    return List.of(heron(), bittern(), dunlin(), sanderling());
  }

  /** A flat-bottomed wheel with two grip windows, bolt circle, bore and grip screws. */
  public static Plate heron() {
    Region round = Region.of(Contour.circle(Point.ORIGIN, 140));
    Region below = Region.of(box(-200, -300, 200, -105));
    Contour outline = rounded(Combine.difference(List.of(round), List.of(below)), 30).get(0);
    List<Region> inset = Offset.of(outline, -30);
    List<Region> spokes =
        List.of(
            Region.of(Contour.circle(Point.ORIGIN, 52)),
            Region.of(box(-200, -22, 200, 22)),
            Region.of(box(-30, -200, 30, 0)));
    List<Contour> openings = rounded(Combine.difference(inset, Combine.union(spokes)), 9);
    List<Window> windows = new ArrayList<>();
    for (int i = 0; i < openings.size(); i++) {
      windows.add(
          new Window("W" + (i + 1), WindowUse.GRIP, openings.get(i), at("heron.yaml", 20 + i)));
    }
    BoltCircle ring = ring(6, 70, 5, 90, Optional.of("6x70-m5"));
    List<Hole> holes = bolts(ring);
    holes.add(new Hole("B1", HoleRole.BORE, Point.ORIGIN, 50, at("heron.yaml", 31)));
    int number = 1;
    for (double degrees : new double[] {-25, 0, 25, 155, 180, 205}) {
      Point centre = Point.polar(125, Math.toRadians(degrees));
      holes.add(
          new Hole("G" + number++, HoleRole.GRIP, centre, 4.2, at("heron.yaml", 40 + number)));
    }
    return plate("heron", "Heron", outline, windows, holes, List.of(ring), CARBON, 5);
  }

  /** A round three-spoke wheel in aluminium. */
  public static Plate bittern() {
    Contour outline = Contour.circle(Point.ORIGIN, 135);
    List<Region> parts = new ArrayList<>();
    parts.add(Region.of(Contour.circle(Point.ORIGIN, 48)));
    for (double degrees : new double[] {90, 210, 330}) {
      parts.add(
          Region.of(box(0, -17, 200, 17).moved(RigidTransform.turn(Math.toRadians(degrees)))));
    }
    List<Region> inset = Offset.of(outline, -24);
    List<Contour> openings = rounded(Combine.difference(inset, Combine.union(parts)), 8);
    List<Window> windows = new ArrayList<>();
    for (int i = 0; i < openings.size(); i++) {
      windows.add(
          new Window("W" + (i + 1), WindowUse.OPEN, openings.get(i), at("bittern.yaml", 12)));
    }
    BoltCircle ring = ring(3, 58, 6.6, 30, Optional.of("3x58-m6"));
    List<Hole> holes = bolts(ring);
    holes.add(new Hole("B1", HoleRole.BORE, Point.ORIGIN, 28, at("bittern.yaml", 18)));
    return plate("bittern", "Bittern", outline, windows, holes, List.of(ring), ALUMINIUM, 6);
  }

  /** A wide plate with grip windows, a display and six switches. */
  public static Plate dunlin() {
    Contour outline = RandomShapes.roundedRectangle(290, 180, 42);
    List<Window> windows = new ArrayList<>();
    Contour grip = RandomShapes.roundedRectangle(30, 96, 14);
    windows.add(window("W1", WindowUse.GRIP, grip, -98, 0));
    windows.add(window("W2", WindowUse.GRIP, grip, 98, 0));
    windows.add(window("D1", WindowUse.DISPLAY, RandomShapes.roundedRectangle(86, 34, 3), 0, 60));
    int number = 1;
    for (double x : new double[] {-62, 62}) {
      for (double y : new double[] {-28, 0, 28}) {
        Contour round = Contour.circle(Point.ORIGIN, 6);
        windows.add(window("S" + number++, WindowUse.SWITCH, round, x, y));
      }
    }
    BoltCircle ring = ring(6, 70, 5, 0, Optional.of("6x70-m5"));
    List<Hole> holes = bolts(ring);
    return plate("dunlin", "Dunlin (display)", outline, windows, holes, List.of(ring), CARBON, 6);
  }

  /** The smallest odd plate: a knob of 40 mm with one hole off its centre. */
  public static Plate sanderling() {
    List<Hole> holes = new ArrayList<>();
    holes.add(new Hole("H1", HoleRole.OTHER, new Point(4.25, -3.5), 6, at("sanderling.yaml", 9)));
    return plate(
        "sanderling",
        "Sanderling",
        RandomShapes.roundedRectangle(40, 24, 8),
        List.of(),
        holes,
        List.of(),
        ALUMINIUM,
        3);
  }

  /** A plate with other labels and title, for hostile text. */
  public static Plate named(String title, List<Window> windows, List<Hole> holes) {
    return plate(
        "knot",
        title,
        RandomShapes.roundedRectangle(200, 160, 30),
        windows,
        holes,
        List.of(),
        CARBON,
        4);
  }

  private static Plate plate(
      String name,
      String title,
      Contour outline,
      List<Window> windows,
      List<Hole> holes,
      List<BoltCircle> rings,
      Material material,
      double thickness) {
    return new Plate(
        name,
        title,
        "1f4e90ab",
        outline,
        windows,
        holes,
        rings,
        rings.stream().findFirst().flatMap(BoltCircle::hub),
        new Stock(material, thickness, Optional.empty(), Face.FRONT, at(name + ".yaml", 4)),
        new Making(6, 2, 0),
        List.of(),
        List.of());
  }

  private static BoltCircle ring(
      int count, double pitch, double hole, double degrees, Optional<String> hub) {
    return new BoltCircle(
        "bolt circle", count, pitch, hole, Math.toRadians(degrees), hub, Place.BUILT_IN);
  }

  private static List<Hole> bolts(BoltCircle ring) {
    List<Hole> holes = new ArrayList<>();
    for (Point centre : ring.centres()) {
      String label = "H" + (holes.size() + 1);
      holes.add(new Hole(label, HoleRole.BOLT, centre, ring.holeDiameter(), ring.place()));
    }
    return holes;
  }

  private static Window window(String label, WindowUse use, Contour contour, double x, double y) {
    return new Window(label, use, contour.moved(RigidTransform.shift(x, y)), at("dunlin.yaml", 7));
  }

  private static List<Contour> rounded(List<Region> regions, double radius) {
    List<Contour> contours = new ArrayList<>();
    for (Region region : regions) {
      Offset.opened(region, radius).forEach(open -> contours.add(open.outer()));
    }
    return contours;
  }

  private static Contour box(double minX, double minY, double maxX, double maxY) {
    return Contour.polygon(
        List.of(
            new Point(minX, minY),
            new Point(maxX, minY),
            new Point(maxX, maxY),
            new Point(minX, maxY)));
  }

  private static Place at(String file, int line) {
    return Place.of(file, line, 3);
  }
}
