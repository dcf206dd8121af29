package felloe.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.solid.Part;
import felloe.solid.Relief;
import felloe.solid.Solid;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Files of bodies, read back by our eyes and by readers that are not ours. */
class SolidFilesTest {

  private static final Solid PLATE =
      Relief.slab(
          new Region(
              Contour.rectangle(new Box(-40, -20, 40, 20)),
              List.of(
                  Contour.circle(new Point(-25, 3.3), 4.1),
                  Contour.circle(new Point(21.7, -4), 8.25))),
          0,
          6,
          0.01);

  private static final Part PART = new Part("gauge <piece> & \"all\"", PLATE);
  private static final About ABOUT = new About("Heron, jig", "A", "Wear eye protection.");

  @TempDir Path folder;

  @Test
  void stlHoldsEachTriangleWithItsNormalOutward() {
    ByteBuffer file = ByteBuffer.wrap(StlWriter.write(PART)).order(ByteOrder.LITTLE_ENDIAN);
    assertEquals(84 + 50 * PLATE.triangles().size(), file.capacity());
    byte[] header = new byte[80];
    file.get(header);
    assertEquals(
        "Felloe, mm: gauge <piece> & \"all\"",
        new String(header, StandardCharsets.US_ASCII).strip().replace("\0", ""));
    assertEquals(PLATE.triangles().size(), file.getInt());
    double volume = 0;
    for (int i = 0; i < PLATE.triangles().size(); i++) {
      double[] f = new double[12];
      for (int k = 0; k < 12; k++) {
        f[k] = file.getFloat();
      }
      assertEquals(0, file.getShort());
      assertEquals(1, f[0] * f[0] + f[1] * f[1] + f[2] * f[2], 1e-6);
      double[] u = {f[6] - f[3], f[7] - f[4], f[8] - f[5]};
      double[] v = {f[9] - f[3], f[10] - f[4], f[11] - f[5]};
      double[] n = {
        u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]
      };
      assertTrue(n[0] * f[0] + n[1] * f[1] + n[2] * f[2] > 0);
      volume += (n[0] * f[3] + n[1] * f[4] + n[2] * f[5]) / 6;
    }
    assertEquals(PLATE.volume(), volume, 1e-2);
  }

  @Test
  void threeMfKeepsTheRulesOfItsSchema() throws Exception {
    byte[] file = ThreeMfWriter.write(List.of(PART, new Part("second", PLATE)), ABOUT);
    Map<String, byte[]> entries = new HashMap<>();
    List<String> order = new ArrayList<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        order.add(entry.getName());
        entries.put(entry.getName(), zip.readAllBytes());
      }
    }
    assertEquals(List.of("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"), order);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Document model =
        factory
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(entries.get("3D/3dmodel.model")));
    Element root = model.getDocumentElement();
    assertEquals("millimeter", root.getAttribute("unit"));
    assertEquals(
        "http://schemas.microsoft.com/3dmanufacturing/core/2015/02", root.getNamespaceURI());
    NodeList objects = root.getElementsByTagName("object");
    assertEquals(2, objects.getLength());
    Pattern number = Pattern.compile("[-+]?([0-9]+(\\.[0-9]+)?|\\.[0-9]+)");
    for (int i = 0; i < 2; i++) {
      Element object = (Element) objects.item(i);
      assertEquals(i == 0 ? PART.name() : "second", object.getAttribute("name"));
      NodeList vertices = object.getElementsByTagName("vertex");
      assertEquals(PLATE.vertices().size(), vertices.getLength());
      for (int k = 0; k < vertices.getLength(); k++) {
        String x = ((Element) vertices.item(k)).getAttribute("x");
        assertTrue(number.matcher(x).matches(), x);
        assertEquals(PLATE.vertices().get(k).x(), Double.parseDouble(x), 1e-6);
      }
      NodeList triangles = object.getElementsByTagName("triangle");
      assertEquals(PLATE.triangles().size(), triangles.getLength());
    }
    NodeList items = root.getElementsByTagName("item");
    assertEquals("1 0 0 0 1 0 0 0 1 40 20 0", ((Element) items.item(0)).getAttribute("transform"));
    assertEquals("1 0 0 0 1 0 0 0 1 125 20 0", ((Element) items.item(1)).getAttribute("transform"));
  }

  @Test
  void filesAreTheSameInEveryTimeZone() {
    TimeZone before = TimeZone.getDefault();
    byte[] here = ThreeMfWriter.write(List.of(PART), ABOUT);
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertArrayEquals(here, ThreeMfWriter.write(List.of(PART), ABOUT));
    } finally {
      TimeZone.setDefault(before);
    }
  }

  @Test
  void admeshFindsNothingToMendInTheStl() throws Exception {
    Solid turned = PLATE.moved(RigidTransform.turn(0.4), 3);
    String told =
        BodyReaders.run(folder, "admesh", ".stl", StlWriter.write(new Part("turned", turned)));
    BodyReaders.nothingMended(told);
    Matcher volume = Pattern.compile("Volume\\s*:\\s*([\\d.]+)").matcher(told);
    assertTrue(volume.find(), told);
    assertEquals(turned.volume(), Double.parseDouble(volume.group(1)), 0.1);
  }

  @Test
  void assimpReadsTheThreeMfAndTheStl() throws Exception {
    Solid other = PLATE.moved(RigidTransform.turn(0.4), 3);
    byte[] file = ThreeMfWriter.write(List.of(PART, new Part("second", other)), ABOUT);
    int faces = PLATE.triangles().size();
    String both = figures(BodyReaders.run(folder, "assimp", ".3mf", file, "info"));
    assertTrue(both.contains("Faces: " + 2 * faces), both);
    String one = figures(BodyReaders.run(folder, "assimp", ".stl", StlWriter.write(PART), "info"));
    assertTrue(one.contains("Faces: " + faces), one);
  }

  private static String figures(String told) {
    return told.replaceAll("[ \\t]+", " ");
  }
}
