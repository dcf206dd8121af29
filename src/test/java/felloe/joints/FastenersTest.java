package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Numbers;
import felloe.hub.ScrewThread;
import felloe.hub.ScrewThreads;
import felloe.plate.Joint.Head;
import felloe.plate.Joint.Nut;
import felloe.plate.Joint.Surface;
import felloe.plate.Joint.Tapped;
import felloe.plate.Joint.Washer;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of fasteners against published tables. */
class FastenersTest {

  private static final Fasteners FASTENERS = Fasteners.standard();
  private static final List<String> M4_TO_M8 = List.of("M4", "M5", "M6", "M8");

  private static ScrewThread thread(String name) {
    return ScrewThreads.find(name).orElseThrow();
  }

  private static StrengthClass strength(String name) {
    return FASTENERS.strength(name).orElseThrow();
  }

  @Test
  void stressAreasAreThoseOfIso898() {
    // ISO 898-1, table of stress areas, reprint (verified): 8.78, 14.2, 20.1, 36.6 mm2.
    double[] published = {8.78, 14.2, 20.1, 36.6};
    for (int i = 0; i < 4; i++) {
      double area = StrengthClass.stressArea(thread(M4_TO_M8.get(i)));
      assertEquals(published[i], area, published[i] * 0.004, M4_TO_M8.get(i));
    }
    // The formula of clause 9, computed: 8.779, 14.183, 20.123, 36.608; M3 5.031.
    assertEquals(14.183, StrengthClass.stressArea(thread("M5")), 5e-4);
    assertEquals(5.031, StrengthClass.stressArea(thread("M3")), 5e-4);
    // ASME B1.1 (from memory): 1/4-20 0.0318 in2, 10-32 0.0200 in2, 1/4-28 0.0364 in2.
    assertEquals(0.0318 * 645.16, StrengthClass.stressArea(thread("1/4-20")), 0.05);
    assertEquals(0.0200 * 645.16, StrengthClass.stressArea(thread("10-32")), 0.05);
    assertEquals(0.0364 * 645.16, StrengthClass.stressArea(thread("1/4-28")), 0.05);
  }

  @Test
  void proofLoadsAreThoseOfIso898() {
    // ISO 898-1, proof loads of the coarse series, reprint (verified), N.
    double[][] published = {
      {5100, 8230, 11600, 21200}, {7290, 11800, 16700, 30400}, {8520, 13800, 19500, 35500}
    };
    List<String> classes = List.of("8.8", "10.9", "12.9");
    for (int c = 0; c < 3; c++) {
      for (int i = 0; i < 4; i++) {
        double load = strength(classes.get(c)).proofLoad(thread(M4_TO_M8.get(i)));
        assertEquals(published[c][i], load, published[c][i] * 0.008, classes.get(c));
      }
    }
    // Least ultimate loads (two reprints, verified), and the class number rule for the strength.
    assertEquals(11_350, 800 * StrengthClass.stressArea(thread("M5")), 11_350 * 0.002);
    assertEquals(14_800, 1040 * StrengthClass.stressArea(thread("M5")), 14_800 * 0.005);
    for (String name : classes) {
      int first = Integer.parseInt(name.substring(0, name.indexOf('.')));
      assertTrue(strength(name).tensile() >= 100 * first, name);
      assertTrue(strength(name).proof() < strength(name).tensile(), name);
    }
  }

  @Test
  void headsAreThoseOfTheStandards() {
    // ISO 4762, reprints (verified): dk max knurled, k max, dw min of M4, M5, M6, M8.
    double[] socket = {7.22, 8.72, 10.22, 13.27};
    double[] high = {4, 5, 6, 8};
    double[] bearing = {6.53, 8.03, 9.38, 12.33};
    // Countersunk: table after BS 4168-3 (verified), sharp diameter and depth.
    double[] sharp = {8.96, 11.2, 13.44, 17.92};
    double[] deep = {2.48, 3.1, 3.72, 4.96};
    // ISO 7380-1 (from memory): dk max, k max.
    double[] button = {7.6, 9.5, 10.5, 14};
    double[] low = {2.2, 2.75, 3.3, 4.4};
    for (int i = 0; i < 4; i++) {
      String name = M4_TO_M8.get(i);
      HeadSize head = FASTENERS.head(Head.SOCKET, name).orElseThrow();
      assertEquals(socket[i], head.diameter(), name);
      assertEquals(high[i], head.height(), name);
      assertEquals(bearing[i], head.bearing(), name);
      HeadSize cone = FASTENERS.head(Head.COUNTERSUNK, name).orElseThrow();
      assertEquals(sharp[i], cone.diameter(), name);
      assertEquals(deep[i], cone.height(), name);
      HeadSize round = FASTENERS.head(Head.BUTTON, name).orElseThrow();
      assertEquals(button[i], round.diameter(), name);
      assertEquals(low[i], round.height(), name);
    }
  }

  @Test
  void theDepthOfASharpConeFollowsFromItsAngle() {
    for (ScrewThread thread : ScrewThreads.all()) {
      HeadSize cone = FASTENERS.head(Head.COUNTERSUNK, thread.name()).orElseThrow();
      assertEquals(cone.height(), cone.coneDepth(thread.diameter()), 0.006, thread.name());
      assertEquals(0, cone.coneDepth(cone.diameter() + 1));
    }
    // 90 degrees: as deep as half of what the diameters differ by.
    HeadSize m5 = FASTENERS.head(Head.COUNTERSUNK, "M5").orElseThrow();
    assertEquals((11.2 - 5.5) / 2, m5.coneDepth(5.5), 1e-12);
  }

  @Test
  void nutsAndWashersAreThoseOfTheStandards() {
    // BS EN ISO 4032:2001 table 1, reprint (verified): m max, e min.
    double[] high = {3.2, 4.7, 5.2, 6.8};
    double[] corners = {7.66, 8.79, 11.05, 14.38};
    // ISO 7089 (from memory): hole, diameter, thickness; ISO 7093-1 (from memory): diameter.
    double[][] plain = {{4.3, 9, 0.8}, {5.3, 10, 1}, {6.4, 12, 1.6}, {8.4, 16, 1.6}};
    double[] large = {12, 15, 18, 24};
    for (int i = 0; i < 4; i++) {
      String name = M4_TO_M8.get(i);
      NutSize nut = FASTENERS.nut(Nut.PLAIN, name).orElseThrow();
      assertEquals(high[i], nut.height(), name);
      assertEquals(corners[i], nut.corners(), name);
      WasherSize washer = FASTENERS.washer(Washer.PLAIN, name).orElseThrow();
      assertEquals(plain[i][0], washer.hole(), name);
      assertEquals(plain[i][1], washer.diameter(), name);
      assertEquals(plain[i][2], washer.thickness(), name);
      assertEquals(large[i], FASTENERS.washer(Washer.LARGE, name).orElseThrow().diameter(), name);
    }
  }

  @Test
  void figuresOfPracticeAreThoseOfTheTexts() {
    // Common practice: three quarters of proof; K 0.17 to 0.22 zinc or dry, 0.12 to 0.16 oiled;
    // engagement steel 1 d, aluminium 1.5 d, plastics and laminate 2 d.
    assertEquals(0.75, FASTENERS.preload().value());
    assertEquals(0.17, FASTENERS.factor(Surface.DRY).low());
    assertEquals(0.22, FASTENERS.factor(Surface.DRY).high());
    assertEquals(0.12, FASTENERS.factor(Surface.OILED).low());
    assertEquals(0.16, FASTENERS.factor(Surface.OILED).high());
    assertEquals(1, FASTENERS.engagement(Tapped.STEEL).value());
    assertEquals(1.5, FASTENERS.engagement(Tapped.ALUMINIUM).value());
    assertEquals(2, FASTENERS.engagement(Tapped.PLASTIC).value());
    assertEquals(2, FASTENERS.engagement(Tapped.LAMINATE).value());
    // 14 CFR 23.397: 50 D in lb, 1.25 times the couple's 50 lbf on one hand, 100 lbf on one grip.
    double pound = 4.4482216;
    assertEquals(50 * pound, FASTENERS.couple().value(), 0.05);
    assertEquals(1.25 * 50 * pound, FASTENERS.pull().value(), 0.05);
    assertEquals(100 * pound, FASTENERS.push().value(), 0.05);
    // 14 CFR 25.303 and 25.625.
    assertEquals(1.5, Judging.standard().ultimate().value());
    assertEquals(1.15, Judging.standard().fitting().value());
    // Wet lay-up carbon cloth (verified): least bearing 279 MPa, in-plane shear 49 MPa hot and wet.
    Allowables carbon = FASTENERS.allowables(material("carbon-laminate"));
    assertEquals(279, carbon.bearing().value());
    assertEquals(49, carbon.shear().value());
    // The lower of filled-hole tension and open-hole compression, hot and wet: 147 MPa.
    assertEquals(147, carbon.tension().value());
    // Aluminium (verified): 6061-T6 shear 207 MPa; 7075-T6 yield, least of sheet, 462 MPa from
    // memory (483 is typical).
    assertEquals(207, FASTENERS.allowables(material("aluminium-6061-t6")).shear().value());
    assertEquals(462, FASTENERS.allowables(material("aluminium-7075-t6")).tension().value());
  }

  private static Material material(String name) {
    return new Material(name, name, MaterialKind.LAMINATE, 1.5, "invented");
  }

  @Test
  void everyThreadHasHeadsAPlainWasherAndAPlainNutThatFitIt() {
    for (ScrewThread thread : ScrewThreads.all()) {
      for (Head head : Head.values()) {
        HeadSize size = FASTENERS.head(head, thread.name()).orElseThrow();
        assertTrue(size.bearing() > thread.diameter(), thread.name());
        assertTrue(size.diameter() >= size.bearing(), thread.name());
      }
      WasherSize washer = FASTENERS.washer(Washer.PLAIN, thread.name()).orElseThrow();
      assertTrue(washer.hole() > thread.diameter(), thread.name());
      FASTENERS
          .washer(Washer.LARGE, thread.name())
          .ifPresent(large -> assertTrue(large.diameter() > washer.diameter(), thread.name()));
      NutSize nut = FASTENERS.nut(Nut.PLAIN, thread.name()).orElseThrow();
      assertTrue(nut.corners() > nut.bearing() && nut.bearing() > thread.diameter());
      FASTENERS
          .nut(Nut.LOCK, thread.name())
          .ifPresent(lock -> assertTrue(lock.height() > nut.height(), thread.name()));
    }
  }

  @Test
  void everyMaterialOfAShapeFileHasStrengths() throws IOException {
    String materials = Files.readString(Path.of("src/main/resources/felloe/materials.yaml"));
    Matcher name = Pattern.compile("(?m)^  ([a-z0-9-]+):$").matcher(materials);
    List<String> names = name.results().map(m -> m.group(1)).toList();
    assertEquals(names, FASTENERS.materials());
  }

  @Test
  void everyFileOfFastenersSaysWhereItsFiguresComeFrom() throws IOException {
    Pattern kinds = Pattern.compile("verified|computed|from memory|common practice|read|published");
    try (Stream<Path> files = Files.list(Path.of("src/main/resources/felloe/fasteners"))) {
      for (Path file : files.toList()) {
        String text = Files.readString(file);
        assertTrue(text.contains("basis"), file.toString());
        for (String line : text.lines().filter(l -> l.contains("basis: ")).toList()) {
          assertTrue(kinds.matcher(line).find(), line);
        }
      }
    }
  }

  @Test
  void lengthsGrowAndAreThoseOfTheSeries() {
    for (boolean inch : new boolean[] {false, true}) {
      List<Double> lengths = FASTENERS.lengths(inch);
      assertEquals(lengths.stream().sorted().distinct().toList(), lengths);
      assertFalse(FASTENERS.lengthBasis(inch).isEmpty());
    }
    // ISO 888 (from memory).
    assertTrue(
        FASTENERS
            .lengths(false)
            .containsAll(List.of(5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 30.0, 70.0, 80.0)));
    FASTENERS.lengths(true).forEach(l -> assertEquals(0, l / 25.4 * 16 % 1, 1e-9));
  }

  @Test
  void thePageOnFastenersTellsTheFiguresOfTheTables() throws IOException {
    String page = Files.readString(Path.of("docs/fasteners.md"));
    for (StrengthClass c : FASTENERS.classes()) {
      assertTrue(
          page.contains("| " + c.name() + " | " + brief(c.proof()) + " | " + brief(c.tensile())),
          c.name());
    }
    for (String name : FASTENERS.materials()) {
      Allowables a = FASTENERS.allowables(material(name));
      String row =
          Stream.of(a.bearing(), a.shear(), a.tension(), a.face())
              .map(v -> brief(v.value()))
              .reduce("| `" + name + "`", (x, y) -> x + " | " + y);
      assertTrue(page.contains(row), row);
    }
    assertTrue(page.contains("| `torque` | " + brief(FASTENERS.couple().value()) + " N m a metre"));
    assertTrue(page.contains("| `pull` | " + brief(FASTENERS.pull().value()) + " N"));
    assertTrue(page.contains("| `push` | " + brief(FASTENERS.push().value()) + " N"));
  }

  private static String brief(double value) {
    return Numbers.brief(value, 2);
  }
}
