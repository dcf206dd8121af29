package felloe.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.hub.HubCatalogue;
import felloe.joints.JointPlan;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What sits in openings, each figure against its closed form. */
class BodyRuleTest {

  private static final String TOP =
      """
      felloe: 1
      outline: {round: {diameter: 300}}
      stock: {material: aluminium-6082-t6, thickness: 5}
      """;

  private static final String BUTTON =
      "bezel: {diameter: 18}, height: 4, behind: {depth: 25, diameter: 11.8}";

  @TempDir private Path folder;

  private static Plate plate(String text) {
    return ShapeFile.parse("whimbrel.yaml", TOP + text, Sets.of(), HubCatalogue.here());
  }

  private static List<Finding> found(String rule, String text) {
    Plate plate = plate(text);
    return Review.of(rule, plate, JointPlan.of(plate));
  }

  private static Finding only(String rule, String text) {
    List<Finding> found = found(rule, text);
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  private static void room(double wanted, Verdict verdict, Finding finding) {
    assertEquals(wanted, finding.figure().value(), 1e-3, finding.toString());
    assertEquals(verdict, finding.verdict(), finding.toString());
  }

  private static String windows(String... bodies) {
    StringBuilder text = new StringBuilder("windows:\n");
    for (String body : bodies) {
      text.append("  - {circle: {diameter: 12}, use: switch, ").append(body).append("}\n");
    }
    return text.toString();
  }

  private static String two(double apart, String body) {
    return windows(
        "at: [0, 90], label: A, body: {" + body + "}",
        "at: [" + apart + ", 90], label: C, body: {" + body + "}");
  }

  @Test
  void twoBezelsAreAsFarApartAsTheirMiddlesLessTheirDiameter() {
    room(2.5, Verdict.PASS, only("body-room", two(20.5, BUTTON)));
    room(1, Verdict.PASS, only("body-room", two(19, BUTTON)));
    room(0.6, Verdict.CAUTION, only("body-room", two(18.6, BUTTON)));
    Finding meet = only("body-room", two(17, BUTTON));
    room(-1, Verdict.FAIL, meet);
    assertEquals("bezel of body C to bezel of body A", meet.subject());
    assertEquals("room on the front", meet.figure().name());
    assertTrue(
        meet.advice()
            .startsWith("on the front one reaches 1 mm into the other; 1 mm are missing, 2 mm"),
        meet.advice());
  }

  @Test
  void whatMeetsOnTheBackIsToldOfTheBack() {
    Finding meet = only("body-room", two(20, BUTTON + ", washer: {diameter: 21, thickness: 1}"));
    room(-1, Verdict.FAIL, meet);
    assertEquals("room on the back", meet.figure().name());
    assertEquals("washer of body C to washer of body A", meet.subject());
  }

  /** A nut turns in the circle of its corners: 2 s / sqrt 3. */
  @Test
  void nutsTakeTheRoomOfTheirCorners() {
    String nut = BUTTON + ", nut: {across_flats: 18, thickness: 3}";
    room(24 - 36 / Math.sqrt(3), Verdict.PASS, only("body-room", two(24, nut)));
  }

  @Test
  void bodiesOnEitherFaceDoNotMeetThroughThePlate() {
    String text =
        windows(
            "at: [0, 90], body: {bezel: {diameter: 24}, height: 4, behind: {depth: 5}}",
            "at: [20, 90], body: {face: back, bezel: {diameter: 24}, height: 4, behind: {depth:"
                + " 5}}");
    assertTrue(found("body-room", text).isEmpty());
  }

  @Test
  void screwHeadsAndNutsNeedTheirRoomOnTheirFace() {
    String holes =
        "holes: [{at: [0, 90], diameter: 5.5, role: grip, label: G}]\n"
            + "joints: [{holes: grip, screw: {thread: M5, head: socket}, washer: none, into:"
            + " {nut: plain, washer: none}}]\n";
    // ISO 4762: a knurled head of M5 is up to 8.72 mm wide.
    Finding near = only("body-room", holes + windows("at: [15, 90], body: {" + BUTTON + "}"));
    room(15 - 9 - 4.36, Verdict.PASS, near);
    assertEquals("bezel of body W1 to screw head G", near.subject());
    Finding nut =
        only(
            "body-room",
            holes
                + windows(
                    "at: [15, 90], body: {bezel: {diameter: 13}, height: 2, behind: {depth: 9},"
                        + " washer: {diameter: 24, thickness: 1}}"));
    assertEquals("washer of body W1 to nut G", nut.subject());
    assertEquals(Verdict.FAIL, nut.verdict());
    String flush =
        "holes: [{at: [0, 90], diameter: 5.5, role: grip, label: G}]\n"
            + "joints: [{holes: grip, screw: {thread: M5, head: countersunk}, into: {tapped:"
            + " steel}}]\n";
    assertTrue(
        found("body-room", flush + windows("at: [15, 90], body: {" + BUTTON + "}")).isEmpty(),
        "a flush head is in nobody's way");
  }

  @Test
  void theHubIsAsWideAsToldAndElseNeverFailsAPlate() {
    String hub = "bolt_circles: [{count: 6, pcd: 70, diameter: 5.5}]\n";
    String button = windows("at: [60, 0], body: {" + BUTTON + "}");
    // Bezels in front are not in its way; the shank of 11.8 mm behind is.
    Finding told = only("body-room", hub + "load: {face_diameter: 84}\n" + button);
    room(60 - 5.9 - 42, Verdict.PASS, told);
    assertEquals("rear of body W1 to the hub", told.subject());
    room(
        60 - 5.9 - 55,
        Verdict.FAIL,
        only("body-room", hub + "load: {face_diameter: 110}\n" + button));
    Finding taken =
        only("body-room", hub + windows("at: [45, 3], body: {" + BUTTON + "}")).withoutFolders();
    assertEquals(Verdict.CAUTION, taken.verdict());
    assertTrue(
        taken.advice().contains("the hub's face is taken to be 81 mm across"), taken.advice());
    String spacers =
        hub
            + "load: {spacer_diameter: 10}\njoints: [{holes: hub, back: [30]}]\n"
            + windows(
                "at: [39, 22.5], body: {bezel: {diameter: 14}, height: 2, behind: {depth: 25}}");
    assertTrue(
        found("body-room", spacers).stream()
            .anyMatch(f -> f.subject().equals("rear of body W1 to spacer H6")),
        found("body-room", spacers).toString());
  }

  private static String gripped(String more) {
    return "grips: [{along: {from: 1, to: 5}, over: 30, material: petg, round: 5" + more + "}]\n";
  }

  @Test
  void gripsAreMetWhereTheyLieWithTheirWrap() {
    String button = windows("at: [105, 0], body: {" + BUTTON + "}");
    room(120 - 105 - 9, Verdict.PASS, only("body-room", gripped("") + button));
    room(120 - 105 - 9, Verdict.PASS, only("body-room", gripped(", wrap: 1") + button));
    Finding met = only("body-room", gripped("") + windows("at: [113, 0], body: {" + BUTTON + "}"));
    room(120 - 113 - 9, Verdict.FAIL, met);
    assertEquals("bezel of body W1 to grip GR1", met.subject());
    Finding behind =
        only(
            "body-room",
            gripped(", faces: back") + windows("at: [113, 0], body: {" + BUTTON + "}"));
    room(120 - 113 - 5.9, Verdict.PASS, behind);
    assertEquals("rear of body W1 to grip GR1", behind.subject());
  }

  private static final String HAND =
      "windows:\n"
          + "  - {rectangle: {width: 50, height: 100, radius: 15}, use: grip, at: [95, 0], label:"
          + " L}\n";

  private static String hand(String body) {
    return HAND + windows(body).substring("windows:\n".length());
  }

  @Test
  void fingersHaveTheirRoomBesideAndBeyondTheWindow() {
    // Toward the hub a finger's middle stays half a finger inside the window's edge at x = 70.
    room(70 - 54 - 9, Verdict.PASS, only("body-room", hand("at: [54, 0], body: {" + BUTTON + "}")));
    Finding near = only("body-room", hand("at: [58, 0], body: {" + BUTTON + "}"));
    room(3, Verdict.CAUTION, near);
    assertEquals("bezel of body W1 to fingers through L", near.subject());
    Finding rim =
        only(
            "body-room",
            hand("at: [133, 0], body: {bezel: {diameter: 13}, height: 1, behind: {depth: 3}}"));
    assertEquals(Verdict.FAIL, rim.verdict(), "it lies on the rim that is held");
    assertTrue(
        found("body-room", hand("at: [20, 120], body: {" + BUTTON + "}")).isEmpty(),
        "no hand is there");
  }

  /** Beside the window's end the outermost finger is at its corner; its ray goes on outward. */
  @Test
  void besideTheEndOfAWindowAFingerEndsOnTheRayThroughItsOutermostPlace() {
    // The outermost place is on the arc of radius 2.5 about (80, 35) of the window drawn in.
    Point centre = new Point(85 - 0, 35);
    double radius = 15 - 12.5;
    double off = Math.asin(radius / centre.norm());
    double ray = centre.angle() + off;
    Point at = new Point(101, 82);
    double gap = at.dot(Point.polar(1, ray).left()) - 12.5 - 6.5;
    Finding found =
        only(
            "body-room",
            hand("at: [101, 82], body: {bezel: {diameter: 13}, height: 1, behind: {depth: 3}}"));
    assertEquals(gap, found.figure().value(), 1e-3, found.toString());
  }

  /** Hands are where the grips are: a button on a bare stretch of the rim is in nobody's way. */
  @Test
  void whereGripsLieOnlyTheirStretchIsHeld() {
    String button = "at: [0, 133], body: {bezel: {diameter: 13}, height: 1, behind: {depth: 3}}";
    String wide =
        "windows:\n"
            + "  - {derived: {rim_width: 34, hub_disc: 100, spokes: [{clock: 6, hub_width: 40,"
            + " rim_width: 40}], radius: 12}}\n"
            + windows(button).substring("windows:\n".length());
    assertEquals(Verdict.FAIL, only("body-room", wide).verdict());
    String grips = "grips: [{along: {from: 2, to: 4}, over: 30, mirror: true, material: petg}]\n";
    assertTrue(
        found("body-room", grips + wide).isEmpty(), found("body-room", grips + wide).toString());
  }

  @Test
  void anArmHighAboveTheFingersIsClearOfThem() {
    String arm =
        "body: {face: back, bezel: {diameter: 16}, height: 6, behind: {depth: 6}, arm: {width: 60,"
            + " height: 20, at: [30, 0], off: %s, thickness: 3}}";
    // Ten on a bare plate: fingers are 25 mm thick.
    Finding above = only("body-room", hand("at: [54, 0], " + String.format(arm, "33")));
    room(8, Verdict.PASS, above);
    Finding within = only("body-room", hand("at: [54, 0], " + String.format(arm, "20")));
    assertEquals(Verdict.FAIL, within.verdict());
    room(-5, Verdict.FAIL, within);
  }

  @Test
  void aCableNeedsItsRoomToItsSide() {
    String hub = "bolt_circles: [{count: 6, pcd: 70, diameter: 5.5}]\nload: {face_diameter: 84}\n";
    String cable =
        "at: [70, 0], body: {" + BUTTON + ", cable: {clock: 9, free: %s, thickness: 0.001}}";
    room(
        70 - 5.9 - 20 - 42,
        Verdict.PASS,
        only("body-room", hub + windows(String.format(cable, "20"))));
    room(
        70 - 5.9 - 25 - 42,
        Verdict.FAIL,
        only("body-room", hub + windows(String.format(cable, "25"))));
  }

  @Test
  void aBezelCoversItsOpeningAndLiesOnThePlate() {
    room(3, Verdict.PASS, only("body-seat", windows("at: [0, 90], body: {" + BUTTON + "}")));
    String shifted =
        "at: [0, 90], body: {bezel: {diameter: 18, at: [%s, 0]}, height: 4, behind: {depth: 9}}";
    room(0.5, Verdict.CAUTION, only("body-seat", windows(String.format(shifted, "2.5"))));
    room(-1, Verdict.FAIL, only("body-seat", windows(String.format(shifted, "4"))));
    Finding edge = only("body-seat", windows("at: [0, 142], body: {" + BUTTON + "}"));
    room(-1, Verdict.FAIL, edge);
    assertEquals("bezel of body W1 to outline", edge.subject());
    assertTrue(edge.advice().startsWith("on the front it reaches 1 mm past it; "), edge.advice());
    Finding hole =
        only(
            "body-seat",
            "holes: [{at: [10.5, 90], diameter: 4, label: Z}]\n"
                + windows("at: [0, 90], body: {" + BUTTON + "}"));
    room(10.5 - 9 - 2, Verdict.FAIL, hole);
    assertEquals("bezel of body W1 to Z", hole.subject());
  }

  @Test
  void aNutCoversWhatItsFlatsDo() {
    String nut = "at: [0, 90], body: {" + BUTTON + ", nut: {across_flats: %s, thickness: 2}}";
    room(1, Verdict.PASS, only("body-seat", windows(String.format(nut, "14"))));
    room(-0.5, Verdict.FAIL, only("body-seat", windows(String.format(nut, "11"))));
  }

  @Test
  void aShankThatIsWiderThanItsOpeningDoesNotGoIn() {
    room(0.1, Verdict.PASS, only("body-passes", windows("at: [0, 90], body: {" + BUTTON + "}")));
    String wide = BUTTON.replace("11.8", "12.4");
    room(-0.2, Verdict.FAIL, only("body-passes", windows("at: [0, 90], body: {" + wide + "}")));
    String box = BUTTON.replace("diameter: 11.8", "width: 10, height: 10");
    // Corners reach 5 sqrt 2 from the middle, past the opening's 6.
    room(
        6 - Math.hypot(5, 5),
        Verdict.FAIL,
        only("body-passes", windows("at: [0, 90], body: {" + box + "}")));
    assertTrue(
        found(
                "body-passes",
                windows(
                    "at: [0, 90], body: {bezel: {diameter: 18}, height: 4, behind: {depth: 9}}"))
            .isEmpty());
  }

  @Test
  void aNutIsFilledByWhatPlateAndWasherLeave() {
    String nut =
        "at: [0, 90], body: {bezel: {diameter: 18}, height: 4, behind: {depth: %s}, washer:"
            + " {diameter: 16, thickness: 1}, nut: {across_flats: 14, thickness: 3}}";
    room(0, Verdict.PASS, only("body-thread", windows(String.format(nut, "9"))));
    room(-0.5, Verdict.FAIL, only("body-thread", windows(String.format(nut, "8.5"))));
  }

  @Test
  void aPlateWithoutBodiesIsAskedNothing() {
    assertTrue(found("body-room", HAND).isEmpty());
    assertTrue(found("body-seat", HAND).isEmpty());
  }

  @Test
  void aLimitOfTheMakersHoldsForAllRows() {
    Finding own = only("body-room", "limits: {body-room: 4}\n" + two(20.5, BUTTON));
    assertEquals(Verdict.CAUTION, own.verdict());
    assertTrue(own.limit().orElseThrow().overridden());
  }

  /** A mirrored body is told the same on the other side, the side of its cable with it. */
  @Test
  void mirroredBodiesAreTheirImages() {
    Plate plate =
        plate(
            "windows:\n"
                + "  - {rectangle: {width: 20, height: 12}, at: [60, 90], turn: 20, mirror: true,"
                + " body: {bezel: {width: 30, height: 18, at: [3, 1]}, turn: 5, height: 3, behind:"
                + " {depth: 20}, cable: {clock: 2, free: 9}}}\n"
                + "holes:\n"
                + "  - {at: [60, -90], diameter: 8, mirror: true, body: {bezel: {width: 30, height:"
                + " 18, at: [3, 1]}, height: 3, behind: {depth: 20}}}\n");
    assertEquals(4, plate.bodies().size());
    for (int i = 0; i < 4; i += 2) {
      Contour image = plate.bodies().get(i).bezel().moved(RigidTransform.MIRROR);
      Contour other = plate.bodies().get(i + 1).bezel();
      assertTrue(image.gap(other).distance() < 1e-9);
      assertEquals(0, -Prism.inside(image, other), 1e-9);
    }
    double side = plate.bodies().get(0).cable().orElseThrow().side().orElseThrow();
    double image = plate.bodies().get(1).cable().orElseThrow().side().orElseThrow();
    assertEquals(Math.cos(side), -Math.cos(image), 1e-12);
    assertEquals(Math.sin(side), Math.sin(image), 1e-12);
    // The bezel's middle is shifted by (3, 1), turned by 5 and 20 degrees, from that of its window.
    Point shifted =
        RigidTransform.turn(Math.toRadians(25)).of(new Point(3, 1)).plus(new Point(60, 90));
    // The offset is turned with the body.
    assertTrue(
        plate.bodies().get(0).centre().near(shifted, 1e-9),
        plate.bodies().get(0).centre().toString());
  }

  private static Contour random(Random random) {
    Contour at =
        random.nextBoolean()
            ? Contour.circle(Point.ORIGIN, 4 + 10 * random.nextDouble())
            : RandomShapes.roundedRectangle(
                10 + 30 * random.nextDouble(), 10 + 15 * random.nextDouble(), 3);
    return at.moved(
        RigidTransform.turn(7 * random.nextDouble())
            .then(RigidTransform.shift(45 * random.nextDouble(), 45 * random.nextDouble())));
  }

  /** Room is the same either way, and after any motion; bodies farther apart have more. */
  @Test
  void roomDoesNotDependOnWhoAsksNorWhere() {
    for (long seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      Contour a = random(random);
      Contour b = random(random);
      double room = Prism.between(Region.of(a), Region.of(b));
      String told = "seed " + seed;
      assertEquals(room, Prism.between(Region.of(b), Region.of(a)), 1e-9, told);
      RigidTransform motion = new RigidTransform(true, 7 * random.nextDouble(), new Point(30, -8));
      assertEquals(
          room, Prism.between(Region.of(a.moved(motion)), Region.of(b.moved(motion))), 1e-4, told);
      double grown =
          Prism.of("a", Face.FRONT, a, 0, 3)
              .room(new Prism("b", Face.FRONT, List.of(Region.of(b)), 2, 0, 3));
      assertEquals(room - 2, grown, 1e-9, told);
    }
  }

  /** The same by shapely, on chords of 0.002 mm. */
  @Test
  void roomAgreesWithAnotherLibrary() throws Exception {
    Optional<String> python = python();
    if (python.isEmpty() && "true".equals(System.getenv("CI"))) {
      fail("shapely is not installed (Debian: python3-shapely)");
    }
    assumeTrue(python.isPresent(), "skipped: shapely is not installed (Debian: python3-shapely)");
    List<Double> ours = new ArrayList<>();
    StringBuilder asked = new StringBuilder();
    for (long seed = 1; seed <= 120; seed++) {
      Random random = new Random(seed);
      Contour a = random(random);
      Contour b = random(random);
      ours.add(Prism.between(Region.of(a), Region.of(b)));
      for (Contour one : List.of(a, b)) {
        for (Point p : one.chords(0.002)) {
          asked.append(String.format(Locale.ROOT, "%.7f,%.7f ", p.x(), p.y()));
        }
        asked.append('\n');
      }
    }
    Path script =
        Files.writeString(
            folder.resolve("room.py"),
            """
            import sys
            from shapely.geometry import Point, Polygon
            shapes = [Polygon([tuple(map(float, p.split(','))) for p in line.split()]) for line in open(sys.argv[1])]
            for a, b in zip(shapes[::2], shapes[1::2]):
                both = a.intersection(b)
                if both.is_empty:
                    print(a.distance(b))
                else:
                    # How deep the edge of each goes into the other.
                    def deep(x, y):
                        edge = x.exterior
                        some = [edge.interpolate(i * 0.1) for i in range(int(edge.length * 10))]
                        inside = [q for q in some + [Point(c) for c in edge.coords] if y.covers(q)]
                        return max([y.exterior.distance(q) for q in inside], default=0)
                    print(-max(deep(a, b), deep(b, a)))
            """);
    Path points = Files.writeString(folder.resolve("points.txt"), asked.toString());
    Path told = folder.resolve("told.txt");
    int exit =
        new ProcessBuilder(python.get(), script.toString(), points.toString())
            .redirectErrorStream(true)
            .redirectOutput(told.toFile())
            .start()
            .waitFor();
    List<String> lines = Files.readAllLines(told);
    assertEquals(0, exit, () -> String.join("\n", lines));
    int apart = 0;
    for (int i = 0; i < ours.size(); i++) {
      double other = Double.parseDouble(lines.get(i));
      assertEquals(other, ours.get(i), other > 0 ? 5e-3 : 0.06, "seed " + (i + 1));
      apart += other > 0 ? 1 : 0;
    }
    assertTrue(apart > 20 && apart < 100, apart + " of 120 apart");
  }

  private static Optional<String> python() throws InterruptedException {
    for (String name : List.of("python3", "/usr/bin/python3")) {
      try {
        if (new ProcessBuilder(name, "-c", "import shapely").start().waitFor() == 0) {
          return Optional.of(name);
        }
      } catch (IOException absent) {
        continue;
      }
    }
    return Optional.empty();
  }
}
