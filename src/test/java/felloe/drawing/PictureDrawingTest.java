package felloe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.DemoPlates;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Limit;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Sketch;
import felloe.plate.Verdict;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a picture shows, and that its lettering can be read. */
class PictureDrawingTest {

  @Test
  void theOutlineStandsAtItsTrueCoordinates() {
    for (Plate plate : DemoPlates.all()) {
      Picture picture = PictureDrawing.of(plate, List.of());
      assertEquals(
          List.of(Mark.Stroke.of(plate.outline(), LineType.EDGE)), layer(picture, "outline"));
      assertEquals(plate.windows().size(), layer(picture, "windows").size());
      assertEquals(plate.holes().size(), layer(picture, "holes").size());
    }
  }

  @Test
  void noLabelLeavesThePageOrTouchesAnother() {
    for (Plate plate : DemoPlates.all()) {
      assertReadable(PictureDrawing.of(plate, List.of()), plate.name());
      assertReadable(PictureDrawing.of(plate, findings(plate)), plate.name() + " with findings");
    }
  }

  /** Every hole has its label, and every window: in it, or with a leader that ends on its edge. */
  private static void assertLabelled(Plate plate, Picture picture, String what) {
    List<Mark.Label> labels = labels(picture);
    List<String> names = new ArrayList<>(plate.holes().stream().map(Hole::label).toList());
    plate.windows().forEach(window -> names.add(window.label()));
    for (String name : names) {
      assertEquals(
          1, labels.stream().filter(l -> l.text().equals(name)).count(), what + ": label " + name);
    }
    for (Window window : plate.windows()) {
      Mark.Label label =
          labels.stream().filter(l -> l.text().equals(window.label())).findFirst().orElseThrow();
      Box box = box(label);
      boolean inside =
          window.contour().contains(new Point(box.minX(), box.minY()))
              && window.contour().contains(new Point(box.maxX(), box.maxY()));
      boolean led =
          layer(picture, "callouts").stream()
              .filter(Mark.Stroke.class::isInstance)
              .flatMap(mark -> ((Mark.Stroke) mark).segments().stream())
              .anyMatch(
                  line ->
                      window.contour().distance(line.to()) < 1e-6
                          && box.grown(2).contains(line.from()));
      assertTrue(inside || led, what + ": window " + window.label());
    }
  }

  @Test
  void everyHoleAndWindowOfTheDemoShapesHasItsLabel() {
    for (String name : List.of("heron", "bittern", "dunlin", "avocet")) {
      for (String set : List.of("", "outline.round.diameter=350")) {
        boolean wide = !set.isEmpty();
        if (!wide || name.equals("heron") || name.equals("dunlin")) {
          ShapeSource shape =
              ShapeSource.file(Path.of("shapes", name + ".yaml"), wide ? Sets.of(set) : Sets.of());
          Study study = new Studies(Path.of(""), Optional.empty()).one(shape);
          Picture picture = PictureDrawing.of(study.plate(), study.findings());
          assertReadable(picture, name + " " + set);
          assertLabelled(study.plate(), picture, name + " " + set);
        }
      }
    }
  }

  @Test
  void labelsWithoutRoomBesideTheirHoleStandFartherAwayWithALeader() {
    Plate sieve = PaperPlates.sieve(60);
    Picture picture = PictureDrawing.of(sieve, List.of());
    assertReadable(picture, "sieve");
    assertLabelled(sieve, picture, "sieve");
  }

  @Test
  void labelsThatFindNoRoomAtAllAreCounted() {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 1500; i++) {
      Point at = new Point(-117 + 6 * (i % 40), -87 + 4.6 * (i / 40));
      holes.add(new Hole("P" + (i + 1), HoleRole.OTHER, at, 3, Place.BUILT_IN));
    }
    Plate sieve = PaperPlates.of(PaperPlates.rounded(0, 0, 300, 200, 20), holes);
    Picture picture = PictureDrawing.of(sieve, List.of());
    List<String> texts = texts(picture);
    long there = holes.stream().filter(hole -> texts.contains(hole.label())).count();
    String said = String.join(" ", texts);
    assertTrue(there < 1500 && said.contains(1500 - there + " labels have no room here"), said);
    assertReadable(picture, "sieve");
  }

  @Test
  void picturesOfRandomPlatesCanBeRead() {
    for (long seed = 0; seed < 60; seed++) {
      Plate plate = random(seed);
      assertLabelled(plate, PictureDrawing.of(plate, List.of()), "seed " + seed);
      assertLabelled(plate, PictureDrawing.of(plate, findings(plate)), "seed " + seed);
      assertReadable(PictureDrawing.of(plate, findings(plate)), "seed " + seed);
    }
  }

  /** Without its material there is nothing to take for a plate; the clashes are numbered. */
  @Test
  void whatCannotBeAPlateIsShownWithItsClashesAndNoMaterial() {
    Plate heron = DemoPlates.heron();
    Point at = new Point(20, 30);
    Problem problem = new Problem(Place.BUILT_IN, "hole X", "", "reaches 3 mm into hole Y", "move");
    Sketch sketch =
        new Sketch(
            "heron",
            "Heron",
            "0",
            Place.ofFile("heron.yaml"),
            heron.outline(),
            heron.windows(),
            heron.holes(),
            List.of(new Sketch.Clash(problem, at)));
    Picture picture = PictureDrawing.of(sketch);
    assertEquals(List.of(), layer(picture, "material"));
    assertEquals(heron.windows().size(), layer(picture, "windows").size());
    assertTrue(texts(picture).contains("hole X"), texts(picture).toString());
    assertTrue(texts(picture).contains("reaches 3 mm into hole Y"));
    assertTrue(texts(picture).contains("DO NOT CUT"));
    assertTrue(texts(picture).contains("1"));
    assertReadable(picture, "sketch");
  }

  @Test
  void mainDimensionsAreWritten() {
    List<String> heron = texts(PictureDrawing.of(DemoPlates.heron(), List.of()));
    assertTrue(heron.contains("280"), "overall width");
    assertTrue(heron.contains("245"), "overall height");
    assertTrue(heron.contains("rim 30"), "rim");
    assertTrue(heron.contains("6 \u00d7 \u00d85 hub bolt"));
    assertTrue(heron.contains("on \u00d870 PCD, first at 90\u00b0"));
    assertTrue(heron.contains("hub 6x70-m5"));
    assertTrue(heron.contains("\u00d850 bore"));
    assertTrue(heron.contains("6 \u00d7 \u00d84.2 grip screw"));
    List<String> dunlin = texts(PictureDrawing.of(DemoPlates.dunlin(), List.of()));
    assertTrue(dunlin.contains("86 \u00d7 34"), "display");
    assertTrue(dunlin.contains("6 \u00d7 \u00d812 switch opening"));
    assertTrue(dunlin.contains("rim 32"));
  }

  @Test
  void aSlotIsCalledASlotBesideRoundHolesOfItsWidth() {
    Optional<Hole.Slot> across = Optional.of(new Hole.Slot(3.8, 0));
    List<Hole> holes =
        List.of(
            new Hole("D1", HoleRole.OTHER, new Point(0, 30), 3.2, across, Place.BUILT_IN),
            new Hole("D2", HoleRole.OTHER, new Point(0, -30), 3.2, Place.BUILT_IN),
            new Hole("G1", HoleRole.GRIP, new Point(80, 30), 3.2, across, Place.BUILT_IN));
    Plate plate = PaperPlates.of(PaperPlates.rounded(0, 0, 220, 100, 20), holes);
    List<String> texts = texts(PictureDrawing.of(plate, List.of()));
    assertTrue(texts.contains("slot 3.2 \u00d7 7"), texts.toString());
    assertTrue(texts.contains("\u00d83.2 hole"), texts.toString());
    assertTrue(texts.contains("slot 3.2 \u00d7 7 grip screw"), texts.toString());
  }

  @Test
  void aRimIsOnlyShownWhereItIsMaterialThroughout() {
    for (long seed = 0; seed < 60; seed++) {
      Plate plate = random(seed);
      for (String text : texts(PictureDrawing.of(plate, List.of()))) {
        if (text.startsWith("rim ")) {
          double rim = Double.parseDouble(text.substring(4));
          assertTrue(rim <= 160 / 3.0, "seed " + seed + ": " + text);
        }
      }
    }
  }

  @Test
  void kindsBeyondTheEighthAreCounted() {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 11; i++) {
      Point at = new Point(-75 + 15 * i, 20);
      holes.add(new Hole("H" + i, HoleRole.OTHER, at, 2 + 0.5 * i, Place.BUILT_IN));
    }
    Picture picture = PictureDrawing.of(DemoPlates.named("Knot", List.of(), holes), List.of());
    assertTrue(texts(picture).contains("and 3 more kinds"));
    assertReadable(picture, "eleven kinds");
  }

  @Test
  void theScaleBarIsAsLongAsItSays() {
    for (Plate plate : DemoPlates.all()) {
      Picture picture = PictureDrawing.of(plate, List.of());
      String last = texts(picture).stream().filter(t -> t.matches("[0-9.]+ mm")).findFirst().get();
      double stated = Double.parseDouble(last.replace(" mm", ""));
      double drawn =
          layer(picture, "notes").stream()
              .filter(Mark.Fill.class::isInstance)
              .map(mark -> ((Mark.Fill) mark).contours().get(0).box())
              .mapToDouble(Box::width)
              .sum();
      assertEquals(stated, drawn, 1e-9 * stated, plate.name());
    }
  }

  @Test
  void passesAreNotMarkedAndCautionsAndFailsDifferByShape() {
    Plate plate = DemoPlates.heron();
    Picture clean = PictureDrawing.of(plate, List.of(finding(Verdict.PASS, "mass", null)));
    assertEquals(List.of(), layer(clean, "findings"));
    Point at = plate.holes().get(0).centre();
    for (Verdict verdict : List.of(Verdict.CAUTION, Verdict.FAIL)) {
      Picture marked = PictureDrawing.of(plate, List.of(finding(verdict, "H1", at)));
      List<Integer> corners =
          layer(marked, "findings").stream()
              .filter(Mark.Stroke.class::isInstance)
              .map(Mark.Stroke.class::cast)
              .filter(Mark.Stroke::closed)
              .map(stroke -> stroke.segments().size())
              .toList();
      int wanted = verdict == Verdict.FAIL ? 4 : 3;
      // Once on the plate, once in the list.
      assertEquals(List.of(wanted, wanted), corners);
      assertTrue(texts(marked).contains(verdict == Verdict.FAIL ? "Fail: H1" : "Caution: H1"));
      assertTrue(texts(marked).contains("edge-distance: e/D 1.85, at least 2"));
    }
  }

  @Test
  void failsComeFirstAndTooManyAreCounted() {
    Plate plate = DemoPlates.heron();
    List<Finding> many = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      many.add(finding(i == 29 ? Verdict.FAIL : Verdict.CAUTION, "S" + i, Point.ORIGIN));
    }
    Picture picture = PictureDrawing.of(plate, many);
    List<String> texts = texts(picture);
    assertTrue(texts.contains("Fail: S29"));
    assertTrue(texts.contains("Caution: S14"));
    assertFalse(texts.contains("Caution: S15"));
    assertTrue(texts.contains("and 14 more in the report"));
  }

  @Test
  void aPictureGrowsWithThePlate() {
    Contour outline = RandomShapes.roundedRectangle(40, 24, 8);
    Picture small = PictureDrawing.of(plate(outline), List.of());
    Picture large =
        PictureDrawing.of(plate(RandomShapes.roundedRectangle(4000, 2400, 800)), List.of());
    assertEquals(100 * small.pen(), large.pen(), 1e-9);
    assertEquals(100 * small.page().width(), large.page().width(), 100);
  }

  @Test
  void longAndHostileTitlesStayOnThePage() {
    for (String title :
        List.of("very long ".repeat(60), "x".repeat(500), "", "\u0000\u202e", "\n\n")) {
      Picture picture = PictureDrawing.of(DemoPlates.named(title, List.of(), List.of()), List.of());
      assertReadable(picture, title);
    }
  }

  @Test
  void slimAndOffsetPlatesAreDrawnToo() {
    Contour tall =
        RandomShapes.roundedRectangle(30, 2400, 10).moved(RigidTransform.shift(500, 300));
    assertReadable(PictureDrawing.of(plate(tall), List.of()), "tall");
    Contour wide = RandomShapes.roundedRectangle(300, 12, 4);
    assertReadable(PictureDrawing.of(plate(wide), List.of()), "wide");
  }

  @Test
  void wrappedLinesFitTheirRoomAndLoseNothing() {
    Random random = new Random(3);
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder();
      int words = 1 + random.nextInt(30);
      for (int w = 0; w < words; w++) {
        text.append("abcdefghijklmnop".substring(random.nextInt(15))).append(' ');
      }
      double width = 10 + 60 * random.nextDouble();
      List<String> lines = TextWrap.lines(text.toString(), 3.5, width, 1000);
      for (String line : lines) {
        assertTrue(TextWidth.of(line, 3.5) <= width || line.length() == 1, line);
      }
      assertEquals(
          text.toString().replace(" ", ""), String.join("", lines).replace(" ", ""), "seed 3");
      List<String> few = TextWrap.lines(text.toString(), 3.5, width, 2);
      assertTrue(few.size() <= 2);
      assertEquals(lines.size() > 2, few.get(few.size() - 1).endsWith("\u2026"));
    }
    assertEquals(List.of(), TextWrap.lines("  ", 3.5, 10, 3));
  }

  private static Plate plate(Contour outline) {
    Plate heron = DemoPlates.heron();
    return new Plate(
        "knot",
        "Knot",
        "00000000",
        outline,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        heron.stock(),
        heron.making(),
        List.of(),
        List.of());
  }

  /** A plate with a few windows and rows of holes on a coarse grid. */
  private static Plate random(long seed) {
    Random random = new Random(seed);
    List<Window> windows = new ArrayList<>();
    List<Hole> holes = new ArrayList<>();
    for (int i = -3; i <= 3; i++) {
      for (int j = -2; j <= 2; j++) {
        Point at = new Point(25 * i, 25 * j);
        double size = 3 + 17 * random.nextDouble();
        int kind = random.nextInt(4);
        if (kind == 0) {
          holes.add(
              new Hole(
                  "H" + (holes.size() + 1),
                  HoleRole.values()[random.nextInt(4)],
                  at,
                  Math.rint(size),
                  Place.BUILT_IN));
        } else if (kind == 1) {
          windows.add(
              new Window(
                  "W" + (windows.size() + 1),
                  WindowUse.values()[random.nextInt(4)],
                  RandomShapes.contour(seed * 100 + 10 * i + j, size)
                      .moved(RigidTransform.shift(at.x(), at.y())),
                  Place.BUILT_IN));
        }
      }
    }
    return DemoPlates.named("Knot " + seed, windows, holes);
  }

  private static List<Finding> findings(Plate plate) {
    List<Finding> findings = new ArrayList<>();
    findings.add(finding(Verdict.CAUTION, "the whole plate", null));
    for (Hole hole : plate.holes()) {
      Verdict verdict = Verdict.values()[findings.size() % 3];
      findings.add(finding(verdict, hole.label() + " to outline", hole.centre()));
    }
    return findings;
  }

  private static Finding finding(Verdict verdict, String subject, Point at) {
    return new Finding(
        "edge-distance",
        "a hole near an edge tears out",
        verdict,
        subject,
        new Figure("e/D", 1.85, ""),
        Optional.of(new Limit(Limit.Sense.AT_LEAST, 2, "common practice", false)),
        Optional.ofNullable(at),
        Place.BUILT_IN,
        "move it inward, or drill a smaller hole and use a smaller screw there");
  }

  private static List<Mark> layer(Picture picture, String name) {
    return picture.drawing().layers().stream()
        .filter(layer -> layer.name().equals(name))
        .findFirst()
        .orElseThrow()
        .marks();
  }

  private static List<Mark.Label> labels(Picture picture) {
    return picture.drawing().layers().stream()
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .toList();
  }

  private static List<String> texts(Picture picture) {
    return labels(picture).stream().map(Mark.Label::text).toList();
  }

  /** Every label lies on the page, and the capitals of no two upright ones overlap. */
  private static void assertReadable(Picture picture, String what) {
    List<Mark.Label> labels = labels(picture);
    List<Box> boxes = new ArrayList<>();
    for (Mark.Label label : labels) {
      Box box = box(label);
      Box page = picture.page();
      assertTrue(
          page.contains(new Point(box.minX(), box.minY()))
              && page.contains(new Point(box.maxX(), box.maxY())),
          what + ": " + label.text() + " leaves the page");
      boxes.add(box);
    }
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        boolean upright = labels.get(i).turn() == 0 && labels.get(j).turn() == 0;
        assertFalse(
            upright && boxes.get(i).touches(boxes.get(j)),
            what + ": " + labels.get(i).text() + " overlaps " + labels.get(j).text());
      }
    }
  }

  private static Box box(Mark.Label label) {
    double width = TextWidth.of(label.text(), label.height());
    double before =
        switch (label.anchor()) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    Point along = Point.polar(1, label.turn());
    Point start = label.at().plus(along, -before);
    Point end = start.plus(along, width);
    Point up = along.left().times(label.height());
    return Box.of(start, end).union(Box.of(start.plus(up), end.plus(up)));
  }
}
