package felloe.drawing;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.BoltCircle;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Stock;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Plates for tests, made of lines and arcs by hand, without a shape file. */
public final class PaperPlates {

  private PaperPlates() {}

  /** A rounded rectangle with grip windows, bore, six bolt holes and six grip screws. */
  public static Plate bittern() {
    return bittern(300, 210, MaterialKind.LAMINATE);
  }

  /** The same of another size; the pieces keep their share of it. */
  public static Plate bittern(double width, double height, MaterialKind kind) {
    double s = width / 300;
    double t = height / 210;
    List<Window> windows =
        List.of(
            window("W1", WindowUse.GRIP, rounded(-120 * s, 0, 34 * s, 110 * t, 14 * s)),
            window("W2", WindowUse.GRIP, rounded(120 * s, 0, 34 * s, 110 * t, 14 * s)),
            window("W3", WindowUse.DISPLAY, rounded(0, 66 * t, 90 * s, 34 * t, 5 * s)));
    List<Hole> holes = new ArrayList<>();
    BoltCircle ring = ring(6, 70 * s, 5 * Math.min(1, 2 * s), 0);
    addRing(holes, ring);
    holes.add(hole("B", HoleRole.BORE, Point.ORIGIN, 40 * s));
    int number = 1;
    for (double y : new double[] {75, 0, -75}) {
      for (double x : new double[] {-142, 142}) {
        double in = y == 0 ? 0 : 6;
        holes.add(
            hole(
                "G" + number++,
                HoleRole.GRIP,
                new Point((x - Math.signum(x) * in) * s, y * t),
                4.2 * Math.min(1, 2 * s)));
      }
    }
    return plate(
        "bittern",
        "Bittern, hill-climb cart",
        rounded(0, 0, width, height, 45 * Math.min(s, t)),
        windows,
        holes,
        List.of(ring),
        kind);
  }

  /** A plate that is open at the top, with a notch for a display and six switch openings. */
  public static Plate heron() {
    List<Point> c =
        List.of(
            new Point(-150, 80),
            new Point(-150, -70),
            new Point(-110, -110),
            new Point(110, -110),
            new Point(150, -70),
            new Point(150, 80),
            new Point(105, 80),
            new Point(80, 30),
            new Point(-80, 30),
            new Point(-105, 80));
    List<Window> windows = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double x = (i % 3 - 1) * 24 + (i % 3 - 1) * 20;
      double y = i < 3 ? -62 : -86;
      windows.add(window("S" + (i + 1), WindowUse.SWITCH, Contour.circle(new Point(x, y), 8)));
    }
    List<Hole> holes = new ArrayList<>();
    BoltCircle ring = ring(6, 50.8, 5.3, Math.PI / 6);
    addRing(holes, ring);
    return plate(
        "heron",
        "Heron, open top",
        Contour.polygon(c),
        windows,
        holes,
        List.of(ring),
        MaterialKind.WOOD);
  }

  /** A round plate of aluminium, three bolts. */
  public static Plate rail(double diameter) {
    List<Hole> holes = new ArrayList<>();
    BoltCircle ring = ring(3, 50.8, 6.4, Math.PI / 2);
    addRing(holes, ring);
    return plate(
        "rail",
        "Rail, racing skiff",
        Contour.circle(Point.ORIGIN, diameter / 2),
        List.of(),
        holes,
        List.of(ring),
        MaterialKind.METAL);
  }

  /** A knob plate of 60 mm. */
  public static Plate dunlin() {
    List<Hole> holes = new ArrayList<>();
    BoltCircle ring = ring(3, 24, 3.2, Math.PI / 2);
    addRing(holes, ring);
    return plate(
        "dunlin",
        "Dunlin, tiller knob",
        rounded(0, 0, 60, 50, 12),
        List.of(),
        holes,
        List.of(ring),
        MaterialKind.PLASTIC);
  }

  /** A plate of one outline and some holes. */
  public static Plate of(Contour outline, List<Hole> holes) {
    return plate("snipe", "Snipe", outline, List.of(), holes, List.of(), MaterialKind.METAL);
  }

  /** A plate with one slot of some width. */
  public static Plate slotted(double width) {
    Window slot = window("W1", WindowUse.OPEN, rounded(0, 0, 40, width, 0.4 * width));
    return plate(
        "stint",
        "Stint",
        rounded(0, 0, 120, 80, 10),
        List.of(slot),
        List.of(),
        List.of(),
        MaterialKind.METAL);
  }

  /** A plate with many holes in rows. */
  public static Plate sieve(int count) {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point at = new Point(-133 + 14 * (i % 20), -60 + 16 * (i / 20));
      holes.add(hole("P" + (i + 1), HoleRole.OTHER, at, 4));
    }
    return of(rounded(0, 0, 300, 180, 20), holes);
  }

  /** A rounded rectangle with up to twenty holes at random places. */
  public static Plate withHoles(double width, double height, Random random) {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      double diameter = 3 + random.nextInt(12);
      Point at =
          new Point(
              (random.nextDouble() - 0.5) * (width - 80),
              (random.nextDouble() - 0.5) * (height - 80));
      boolean free =
          holes.stream().allMatch(h -> h.centre().distance(at) > (h.diameter() + diameter) / 2 + 1);
      if (free) {
        holes.add(hole("H" + (holes.size() + 1), HoleRole.OTHER, at, diameter));
      }
    }
    return of(rounded(0, 0, width, height, 30), holes);
  }

  private static void addRing(List<Hole> holes, BoltCircle ring) {
    int number = 1;
    for (Point p : ring.centres()) {
      holes.add(hole("H" + number++, HoleRole.BOLT, p, ring.holeDiameter()));
    }
  }

  private static BoltCircle ring(int count, double pitch, double hole, double first) {
    return new BoltCircle(
        "bolt circle", count, pitch, hole, first, Optional.empty(), Place.BUILT_IN);
  }

  private static Hole hole(String label, HoleRole role, Point at, double diameter) {
    return new Hole(label, role, at, diameter, Place.BUILT_IN);
  }

  private static Window window(String label, WindowUse use, Contour contour) {
    return new Window(label, use, contour, Place.BUILT_IN);
  }

  private static Plate plate(
      String name,
      String title,
      Contour outline,
      List<Window> windows,
      List<Hole> holes,
      List<BoltCircle> rings,
      MaterialKind kind) {
    Material material =
        switch (kind) {
          case LAMINATE -> new Material("carbon-laminate", "carbon laminate", kind, 1.55, "test");
          case METAL -> new Material("aluminium", "aluminium", kind, 2.70, "test");
          case WOOD -> new Material("birch-plywood", "birch plywood", kind, 0.68, "test");
          case PLASTIC -> new Material("acetal", "acetal", kind, 1.41, "test");
        };
    return new Plate(
        name,
        title,
        "1f2e3d4c",
        outline,
        windows,
        holes,
        rings,
        Optional.empty(),
        new Stock(material, 5, Optional.empty(), Face.FRONT, Place.BUILT_IN),
        new Making(6, 2, 0),
        List.of(),
        List.of());
  }

  /** A rounded rectangle about a middle. */
  public static Contour rounded(double cx, double cy, double width, double height, double r) {
    double x = width / 2 - r;
    double y = height / 2 - r;
    Point[] middles = {
      new Point(cx + x, cy + y),
      new Point(cx - x, cy + y),
      new Point(cx - x, cy - y),
      new Point(cx + x, cy - y)
    };
    List<Segment> chain = new ArrayList<>();
    List<Point> ends = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      ends.add(middles[i].plus(quarter(i), r));
      ends.add(middles[i].plus(quarter(i + 1), r));
    }
    for (int i = 0; i < 4; i++) {
      chain.add(Arc.about(middles[i], ends.get(2 * i), ends.get(2 * i + 1), true));
      chain.add(new Line(ends.get(2 * i + 1), ends.get((2 * i + 2) % 8)));
    }
    return new Contour(chain);
  }

  private static Point quarter(int i) {
    return switch (Math.floorMod(i, 4)) {
      case 0 -> new Point(1, 0);
      case 1 -> new Point(0, 1);
      case 2 -> new Point(-1, 0);
      default -> new Point(0, -1);
    };
  }

  /** The same plate with another title and other engravings. */
  public static Plate with(Plate p, String title, List<Engraving> engravings) {
    return new Plate(
        p.name(),
        title,
        p.revision(),
        p.outline(),
        p.windows(),
        p.holes(),
        p.boltCircles(),
        p.hub(),
        p.stock(),
        p.making(),
        p.limits(),
        p.notes(),
        p.joints(),
        p.load(),
        engravings,
        p.grips(),
        p.bodies(),
        p.cockpit());
  }
}
