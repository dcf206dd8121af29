package felloe.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Picture;
import felloe.drawing.Stamp;
import felloe.out.About;
import felloe.out.CutDrawing;
import felloe.out.CutSvgWriter;
import felloe.out.DxfWriter;
import felloe.out.Ezdxf;
import felloe.out.SvgWriter;
import felloe.plate.BoltCircle;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.template.MarkOut;
import felloe.template.TemplateDrawing;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the program draws comes back as the same plate: figures, labels, uses and roles. */
class OwnDrawingsTest {

  private static final Path FOLDER = Path.of("");

  @TempDir Path folder;

  /** The program's own drawings of a plate's edges. */
  enum Way {
    TEMPLATE("a.svg"),
    LINES("a.svg"),
    DXF("a.dxf");

    private final String file;

    Way(String file) {
      this.file = file;
    }

    private byte[] drawn(Plate plate) {
      About about = new About("Made up, finish line", plate.revision(), "Wear a mask.");
      CutDrawing finish = CutDrawing.finish(plate);
      return switch (this) {
        case TEMPLATE ->
            SvgWriter.write(
                new Picture(
                    TemplateDrawing.of(plate, MarkOut.STUCK_ON, Face.FRONT, Stamp.NONE),
                    plate.box().grown(50),
                    1),
                about);
        case LINES -> CutSvgWriter.write(finish, finish.box().grown(5), about);
        case DXF -> DxfWriter.write(finish, about);
      };
    }
  }

  private static Plate plate(String text) {
    return Studies.plate(ShapeSource.text("made-up.yaml", text), FOLDER);
  }

  private static BroughtIn in(byte[] bytes, String file) {
    OptionalDouble none = OptionalDouble.empty();
    // ezdxf leaves the unit out of a file of R12, whose standard has none.
    OptionalDouble scale = file.endsWith(".dxf") ? OptionalDouble.of(1) : none;
    return BroughtIn.of(
        new BroughtIn.Sent(bytes, file, none, scale, none, none, none), "back.yaml", FOLDER);
  }

  /** All that is drawn of it is alike to a millionth of a millimetre. */
  private static void assertSame(Plate was, BroughtIn back) {
    Plate is = back.plate();
    assertTrue(was.outline().apart(is.outline()) < 1e-6, back.text());
    assertEquals(
        was.windows().stream().map(Window::label).sorted().toList(),
        is.windows().stream().map(Window::label).sorted().toList(),
        back.text());
    for (Window window : was.windows()) {
      Window other =
          is.windows().stream().filter(w -> w.label().equals(window.label())).findFirst().get();
      assertEquals(window.use(), other.use(), back.text());
      double apart = window.contour().apart(other.contour());
      assertTrue(apart < 1e-6, window.label() + " " + apart + " " + back.text());
    }
    assertEquals(
        was.holes().stream().map(Hole::label).sorted().toList(),
        is.holes().stream().map(Hole::label).sorted().toList(),
        back.text());
    for (Hole hole : was.holes()) {
      Hole other =
          is.holes().stream().filter(h -> h.label().equals(hole.label())).findFirst().get();
      String what = hole + "\n" + other + "\n" + back.text();
      assertEquals(hole.role(), other.role(), what);
      assertTrue(hole.centre().near(other.centre(), 1e-6), what);
      assertEquals(hole.diameter(), other.diameter(), 1e-6, what);
      assertEquals(hole.length(), other.length(), 1e-6, what);
      assertTrue(hole.contour().apart(other.contour()) < 1e-6, what);
    }
    assertEquals(was.boltCircles().size(), is.boltCircles().size(), back.text());
    for (int i = 0; i < is.boltCircles().size(); i++) {
      BoltCircle old = was.boltCircles().get(i);
      BoltCircle now = is.boltCircles().get(i);
      assertEquals(old.count(), now.count());
      assertEquals(old.pitchDiameter(), now.pitchDiameter(), 1e-6);
      assertEquals(old.holeDiameter(), now.holeDiameter(), 1e-6);
      // Written as one turn or another, it is the same direction.
      double turn = old.firstAngle() - now.firstAngle();
      assertEquals(0, Math.sin(turn / 2) * old.pitchDiameter(), 1e-6);
    }
  }

  private static final String EVERYTHING =
      """
      felloe: 1
      outline:
        round: {diameter: 281.37, bottom: {distance: 96.5, radius: 17.3}}
      windows:
        - {label: L, use: grip, rectangle: {width: 40, height: 70, radius: 12}, at: [-92.013, 7], mirror: true}
        - {use: display, rectangle: {width: 40.25, height: 22, radius: 2}, at: [0, 70]}
        - {use: switch, circle: {diameter: 12.345}, places: [[50, -60], [-50, -60], [30, -63]], label: "M5"}
        - {slot: {length: 40, width: 9}, at: [0, -72.5], turn: 17.3}
        - {circle: {diameter: 4}, at: [60, 55], label: "yes"}
      bolt_circles:
        - {hub: 6x70-m5, label: M6}
        - {count: 3, pcd: 50.8, diameter: 5.2, first: 30}
        - count: 3
          pcd: 95
          diameter: 6.4
          first: 31.7
          slots: [{length: 8.4, along: circle, holes: [2]}, {length: 9, toward: 12, holes: [3]}]
      bore: {diameter: 25.4, label: "Mitte"}
      holes:
        - {edge: {inset: 9.3, from: 2, to: 4, count: 5}, diameter: 4.3, role: grip, mirror: true}
        - {line: {from: [-30, 95], to: [30, 95], count: 3}, diameter: 3}
        - {arc: {radius: 120, from: 80, to: 100, count: 4}, diameter: 2.5, label: "Öl \\"x\\\\"}
        - {at: [0, 123], diameter: 5, label: Z, slot: {length: 8, toward: 90}}
        - {at: [72, 62], diameter: 4.2, role: bolt}
      stock: {material: birch-plywood, thickness: 9}
      """;

  @ParameterizedTest
  @EnumSource(Way.class)
  void everyKindOfFeatureKeepsItsNameAndUse(Way way) {
    Plate plate = plate(EVERYTHING);
    assertSame(plate, in(way.drawn(plate), way.file));
  }

  /** The library ezdxf reads the DXF and saves it anew: labels and uses are still beside lines. */
  @ParameterizedTest
  @ValueSource(strings = {"R12", "R2000", "R2010", "R2018"})
  void whatAnotherLibrarySavedKeepsTheNames(String version) throws Exception {
    Plate plate = plate(EVERYTHING);
    assertSame(plate, in(Ezdxf.savedAnew(Way.DXF.drawn(plate), version, folder), "a.dxf"));
  }

  private static List<Long> seeds() {
    return new Random(20261130).longs(40).boxed().toList();
  }

  /** Made-up plates with figures that are round in nothing. */
  @ParameterizedTest
  @MethodSource("seeds")
  void plateOfAnyFiguresComesBack(long seed) {
    Random random = new Random(seed);
    Plate plate = plate(text(random));
    Way way = Way.values()[random.nextInt(Way.values().length)];
    assertSame(plate, in(way.drawn(plate), way.file));
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder("felloe: 1\noutline:\n  points:\n    half: true\n");
    text.append("    corners:\n");
    double[] angles = {70, 30, -5, -40, -72};
    for (double angle : angles) {
      double a = Math.toRadians(angle + 8 * random.nextDouble());
      double r = 140 + 20 * random.nextDouble();
      text.append(
          String.format(
              Locale.ROOT,
              "      - {at: [%s, %s], radius: %s}%n",
              r * Math.cos(a),
              r * Math.sin(a),
              8 + 15 * random.nextDouble()));
    }
    text.append("windows:\n");
    String use = List.of("grip", "open", "display").get(random.nextInt(3));
    String label = random.nextBoolean() ? "label: A" + random.nextInt(3) + ", " : "";
    text.append(
        String.format(
            Locale.ROOT,
            "  - {%suse: %s, rectangle: {width: %s, height: %s, radius: %s}, at: [%s, %s],"
                + " turn: %s%s}%n",
            label,
            use,
            20 + 10 * random.nextDouble(),
            40 + 20 * random.nextDouble(),
            3 + 5 * random.nextDouble(),
            (random.nextBoolean() ? -1 : 1) * (85 + 5 * random.nextDouble()),
            20 * random.nextDouble() - 10,
            20 * random.nextDouble(),
            random.nextBoolean() ? ", mirror: true" : ""));
    if (random.nextInt(4) > 0) {
      text.append("bolt_circles:\n");
      text.append(
          String.format(
              Locale.ROOT,
              "  - {count: %d, pcd: %s, diameter: %s, first: %s%s}%n",
              2 + random.nextInt(5),
              45 + 20 * random.nextDouble(),
              4 + 3 * random.nextDouble(),
              360 * random.nextDouble(),
              random.nextBoolean() ? ", label: Q" : ""));
    }
    if (random.nextBoolean()) {
      text.append("bore: ").append(10 + 10 * random.nextDouble()).append('\n');
    }
    text.append(
        String.format(
            Locale.ROOT,
            "holes:%n  - {arc: {radius: %s, from: %s, to: %s, count: 4}, diameter: %s%s%s}%n",
            50 + 5 * random.nextDouble(),
            45 + 20 * random.nextDouble(),
            110 + 20 * random.nextDouble(),
            2 + random.nextDouble(),
            random.nextBoolean() ? ", role: grip" : "",
            random.nextBoolean() ? ", label: W" : ""));
    return text.append("stock: {material: birch-plywood, thickness: 9}\n").toString();
  }

  /** The maker deleted one, and drew one twice: what is left keeps its name. */
  @Test
  void aDrawingThatWasEditedKeepsTheOtherNames() {
    Plate plate =
        plate(
            """
            felloe: 1
            outline:
              round: {diameter: 280}
            holes:
              - {line: {from: [-60, 95], to: [60, 95], count: 4}, diameter: 3, label: K}
            stock: {material: birch-plywood, thickness: 9}
            """);
    String svg = new String(Way.LINES.drawn(plate), StandardCharsets.UTF_8);
    List<String> lines = svg.lines().toList();
    String edited =
        String.join(
            "\n",
            lines.stream()
                .filter(line -> !line.contains("<title>K2<"))
                .flatMap(
                    line ->
                        line.contains("<title>K3<")
                            ? Stream.of(
                                line,
                                line.replaceFirst("<path ", "<path transform='translate(0,40)' "))
                            : Stream.of(line))
                .toList());
    BroughtIn back = in(edited.getBytes(StandardCharsets.UTF_8), "a.svg");
    List<String> labels = back.plate().holes().stream().map(Hole::label).sorted().toList();
    assertEquals(4, labels.size());
    assertTrue(labels.containsAll(List.of("K1", "K3", "K4")), labels.toString());
    assertTrue(
        back.drawn().notes().stream().anyMatch(note -> note.startsWith("1 label was there twice")),
        back.drawn().notes().toString());
    Hole k3 = back.plate().holes().stream().filter(h -> h.label().equals("K3")).findFirst().get();
    assertEquals(95, k3.centre().y(), 1e-6);
  }

  /** An edge of 20 m radius, flatter than a shape file has words for: lines within a hair of it. */
  @Test
  void anEdgeThatIsAllButStraightIsWrittenAsLines() {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm'"
            + " viewBox='-200 -200 400 400'><path d='M-140 -60A20000 20000 0 0 1 140 -60"
            + "L100 60A15 15 0 0 1 85 75H-90Z'/></svg>";
    BroughtIn back = in(svg.getBytes(StandardCharsets.UTF_8), "a.svg");
    assertTrue(back.apart() <= 0.006, "apart " + back.apart());
    // Its middle stands a chord's square over eight radii above its ends.
    assertEquals(60 + 280.0 * 280 / 8 / 20_000, top(back), 0.006);
  }

  private static double top(BroughtIn back) {
    return back.plate().outline().box().maxY() - back.drawn().moved().y();
  }

  /** Titles of other programs are no labels. */
  @Test
  void aTitleThatIsNotOursNamesNothing() {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm'"
            + " viewBox='-200 -200 400 400'><circle r='140'/>"
            + "<circle cx='100' r='5' class='fat'><title>path 17</title></circle>"
            + "<circle cx='-100' r='5' class='hole'><title>"
            + "x".repeat(300)
            + "</title></circle></svg>";
    BroughtIn back = in(svg.getBytes(StandardCharsets.UTF_8), "a.svg");
    assertEquals(
        List.of("D1", "D2"), back.plate().holes().stream().map(Hole::label).sorted().toList());
    assertTrue(back.drawn().holes().stream().allMatch(h -> h.label().isEmpty()));
  }

  @Test
  void aDrawingThatWasMovedFindsItsAxisByItsRing() {
    Plate plate = plate(EVERYTHING);
    String svg = new String(Way.LINES.drawn(plate), StandardCharsets.UTF_8);
    String moved =
        svg.replaceFirst("<g id=", "<g transform='translate(13.5,-4.25)'><g id=")
            .replace("</svg>", "</g></svg>");
    assertSame(plate, in(moved.getBytes(StandardCharsets.UTF_8), "a.svg"));
  }
}
