package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import felloe.geometry.Contour;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.SVGGraphics2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** Shape files to start from, of a family or of an outline that exists. */
class NewCommandTest {

  @TempDir Path folder;

  private static Plate plate(Path file) {
    return Studies.plate(ShapeSource.file(file, Sets.of()), Path.of(""));
  }

  private Plate broughtIn(Path source, String... more) {
    Path file = folder.resolve("copy.yaml");
    List<String> call =
        new ArrayList<>(List.of("new", "--from", source.toString(), file.toString()));
    call.addAll(List.of(more));
    Run run = Run.of(call.toArray(String[]::new));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.err().contains("No line of the source is farther"), run.err());
    return plate(file);
  }

  private static double apart(Contour a, Contour b) {
    return Math.max(
        a.segments().stream().mapToDouble(s -> b.distance(s.at(0.5))).max().orElse(0),
        b.segments().stream().mapToDouble(s -> a.distance(s.at(0.5))).max().orElse(0));
  }

  /** What the program draws comes back as the same plate. */
  @ParameterizedTest
  @CsvSource({
    "heron, svg",
    "heron, dxf",
    "bittern, svg",
    "bittern, dxf",
    "dunlin, svg",
    "dunlin, dxf",
    "avocet, svg",
    "avocet, dxf"
  })
  void theProgramsOwnDrawingsComeBackAsTheSamePlate(String name, String kind) {
    Path shape = Path.of("shapes", name + ".yaml");
    Run.of("make", shape.toString(), "--out", folder.toString());
    Plate was = plate(shape);
    Plate is = broughtIn(folder.resolve(name).resolve(name + "." + kind));
    assertTrue(apart(was.outline(), is.outline()) < 1e-6, "outline");
    List<Contour> windows = sorted(was.windows().stream().map(w -> w.contour()).toList());
    List<Contour> back = sorted(is.windows().stream().map(w -> w.contour()).toList());
    assertEquals(windows.size(), back.size());
    for (int i = 0; i < back.size(); i++) {
      assertTrue(apart(windows.get(i), back.get(i)) < 1e-6, "window " + i);
    }
    assertEquals(was.holes().size(), is.holes().size());
    for (Hole hole : was.holes()) {
      assertTrue(
          is.holes().stream()
              .anyMatch(
                  h ->
                      h.label().equals(hole.label())
                          && h.role() == hole.role()
                          && h.centre().near(hole.centre(), 1e-6)
                          && Math.abs(h.diameter() - hole.diameter()) < 1e-6),
          hole.label());
    }
    assertEquals(
        was.windows().stream().map(w -> w.label() + " " + w.use()).toList(),
        is.windows().stream().map(w -> w.label() + " " + w.use()).toList());
  }

  private static List<Contour> sorted(List<Contour> contours) {
    return contours.stream()
        .sorted(
            Comparator.comparingDouble((Contour c) -> Math.rint(c.box().centre().x() * 100))
                .thenComparing(c -> Math.rint(c.box().centre().y() * 100)))
        .toList();
  }

  /** Files that the library ezdxf wrote, of R12 and 2010, with splines, bulges and blocks. */
  @ParameterizedTest
  @ValueSource(strings = {"R12", "R2000", "R2010"})
  void drawingsThatAnotherLibraryWroteAreRead(String version)
      throws IOException, InterruptedException {
    Path script = folder.resolve("write_dxf.py");
    try (InputStream in = NewCommandTest.class.getResourceAsStream("write_dxf.py")) {
      Files.write(script, in.readAllBytes());
    }
    Path dxf = folder.resolve("wheel.dxf");
    Path log = folder.resolve("log.txt");
    boolean written = false;
    for (String python : List.of("python3", "/usr/bin/python3")) {
      written = written || python(log, python, script.toString(), version, dxf.toString());
    }
    if (!written && "true".equals(System.getenv("CI"))) {
      fail("ezdxf is not installed (Debian: python3-ezdxf)");
    }
    assumeTrue(written, "skipped: ezdxf is not installed (Debian: python3-ezdxf)");
    Plate plate = broughtIn(dxf, "--scale", "1");
    // As the script draws it: 300 by 200 with corners of 40, a ring of 6 on 70, two ellipses.
    assertEquals(300, plate.box().width(), 1e-6);
    assertEquals(200, plate.box().height(), 1e-6);
    assertEquals(300 * 200 - (4 - Math.PI) * 1600, plate.outline().area(), 1e-3);
    assertEquals(6 + 1 + 2, plate.holes().size());
    double half = Math.PI * 30 * 45;
    List<Double> areas = plate.windows().stream().map(w -> w.contour().area()).sorted().toList();
    assertEquals(2, areas.size());
    areas.forEach(area -> assertEquals(half, area, 2));
    assertEquals(
        35,
        plate.holes().stream()
            .filter(h -> h.diameter() == 5.5)
            .findFirst()
            .orElseThrow()
            .centre()
            .norm(),
        1e-6);
  }

  private static boolean python(Path log, String... command) throws InterruptedException {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(log.toFile())
              .start()
              .waitFor()
          == 0;
    } catch (IOException missing) {
      return false;
    }
  }

  /**
   * Drawn by Java's own shapes, written by Batik's generator: cubics, and letters it passes over.
   */
  @Test
  void anSvgThatAnotherLibraryWroteIsRead() throws IOException {
    Document document =
        SVGDOMImplementation.getDOMImplementation()
            .createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
    SVGGraphics2D svg = new SVGGraphics2D(document);
    AffineTransform turned = AffineTransform.getRotateInstance(0.3, 200, 150);
    Area wheel = new Area(new RoundRectangle2D.Double(40, 60, 300, 200, 80, 80));
    wheel.subtract(new Area(new Ellipse2D.Double(190 - 19, 160 - 19, 38, 38)));
    svg.draw(wheel.createTransformedArea(turned));
    svg.drawString("Wheel", 10, 10);
    StringWriter text = new StringWriter();
    svg.stream(text, true);
    Path file = Files.writeString(folder.resolve("wheel.svg"), text.toString());
    // Its units are pixels of no size, so that the scale is asked for.
    Run refused = Run.of("new", "--from", file.toString(), folder.resolve("x.yaml").toString());
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("--scale"), refused.err());
    assertFalse(Files.exists(folder.resolve("x.yaml")));
    Plate plate = broughtIn(file, "--scale", "1");
    assertEquals(300 * 200 - (4 - Math.PI) * 1600, plate.outline().area(), 12);
    assertEquals(38, plate.holes().get(0).diameter(), 0.05);
  }

  /** Only what stands for chords or curves is rounded. */
  @Test
  void anExactHoleKeepsItsSizeBesideACurvedOutline() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("oval.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' viewBox='-150 -150 300 300'>"
                + "<ellipse rx='140' ry='100'/><circle cx='60.013' r='2.633'/>"
                + "<rect x='-80.03' y='-20' width='40.04' height='41' rx='7.04'/></svg>");
    Plate plate = broughtIn(file);
    assertEquals(5.266, plate.holes().get(0).diameter(), 1e-3);
    assertEquals(
        40.04 * 41 - (4 - Math.PI) * 7.04 * 7.04, plate.windows().get(0).contour().area(), 0.02);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "new",
        "new --from",
        "new --from none.svg",
        "new round --from none.svg x.yaml",
        "new --from none.svg --width 280 --scale 1",
        "new --from none.svg --gap 0",
        "new --from none.svg --within 9",
        "new --from shapes",
        "new --from /",
        "new --from ..",
        "new --from README.md"
      })
  void aCallThatCannotBeDoneWritesNothing(String call) throws IOException {
    Run run = Run.of(call.split(" "));
    assertEquals(2, run.code(), run.out());
    assertFalse(run.err().contains("fault in Felloe"), run.err());
    assertFalse(Files.exists(Path.of("none.yaml")));
  }

  /** Bytes of any kind end in words, never in a fault of the program. */
  @ParameterizedTest
  @ValueSource(strings = {"svg", "dxf", "csv"})
  void spoiltFilesAreTold(String kind) throws IOException {
    Run.of("make", "shapes/heron.yaml", "--out", folder.toString());
    byte[] good =
        kind.equals("csv")
            ? "radius,angle\n140,0\n140,90\n140,180\n140,270\n".getBytes(StandardCharsets.UTF_8)
            : Files.readAllBytes(folder.resolve("heron/heron." + kind));
    Random random = new Random(7);
    for (int i = 0; i < 40; i++) {
      byte[] bad = good.clone();
      int from = random.nextInt(bad.length);
      for (int k = 0; k < 1 + random.nextInt(6); k++) {
        bad[Math.min(bad.length - 1, from + random.nextInt(40))] = (byte) random.nextInt(256);
      }
      int length = i % 4 == 0 ? from : bad.length;
      Path file = folder.resolve("spoilt." + kind);
      Files.write(file, Arrays.copyOf(bad, length));
      Run run =
          Run.of(
              "new",
              "--from",
              file.toString(),
              folder.resolve("s.yaml").toString(),
              "--force",
              "--scale",
              "1");
      assertTrue(run.code() == 0 || run.code() == 2, run.err());
    }
  }

  @Test
  void thicknessCountsForAPhotoAlone() throws IOException {
    Path svg =
        Files.writeString(folder.resolve("a.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>");
    Run drawing = Run.of("new", "--from", svg.toString(), "--thickness", "9");
    assertEquals(2, drawing.code());
    assertTrue(drawing.err().contains("leave out --thickness"), drawing.err());
    Run family = Run.of("new", "round", "--thickness", "9");
    assertEquals(2, family.code());
    assertTrue(family.err().contains("only counts for --from"), family.err());
  }

  @Test
  void aPictureWithoutMarksWritesNothing() throws IOException {
    BufferedImage image = new BufferedImage(900, 800, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D paper = image.createGraphics();
    paper.setColor(Color.LIGHT_GRAY);
    paper.fillRect(0, 0, image.getWidth(), image.getHeight());
    paper.dispose();
    Path photo = folder.resolve("wheel.png");
    ImageIO.write(image, "png", photo.toFile());
    Path file = folder.resolve("wheel.yaml");
    Run run = Run.of("new", "--from", photo.toString(), file.toString(), "--thickness", "9");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("felloe template --photo-frame"), run.err());
    assertFalse(Files.exists(file));
    assertFalse(Files.exists(folder.resolve("wheel-photo.png")));
  }

  @Test
  void theSheetsForAPhotoAreWrittenWithoutAShape() {
    Run run = Run.of("template", "--photo-frame", "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    assertTrue(Files.exists(folder.resolve("photo-frame-A4.pdf")));
    Run small = Run.of("template", "--photo-frame", "--paper", "A5", "--out", folder.toString());
    assertEquals(2, small.code());
    assertTrue(small.err().contains("too small"), small.err());
  }
}
