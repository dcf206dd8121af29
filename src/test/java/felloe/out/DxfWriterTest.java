package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cutting.CutPlan;
import felloe.cutting.CutProcess;
import felloe.cutting.CutSetup;
import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.plate.DemoPlates;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** DXF files read back by an own reader and by ezdxf, and held against the exact geometry. */
class DxfWriterTest {

  @Test
  void everyEntityReadsBackWithinAMillionthOfAMillimetreInOrder() {
    for (Map.Entry<String, CutDrawing> shape : CutDrawings.all().entrySet()) {
      DxfReader reader = read(shape.getValue());
      List<List<Segment>> wanted = wanted(shape.getValue());
      assertEquals(wanted.size(), reader.entities.size(), shape.getKey());
      for (int i = 0; i < wanted.size(); i++) {
        assertSame(wanted.get(i), reader.entities.get(i).edges(), shape.getKey());
      }
    }
  }

  @Test
  void everyContourIsOneClosedEntityWithTheFewestVertices() {
    for (CutDrawing drawing : CutDrawings.all().values()) {
      DxfReader reader = read(drawing);
      for (CutLayer layer : drawing.layers()) {
        List<DxfReader.Entity> closed =
            reader.entities.stream()
                .filter(e -> e.layer().equals(layer.role().name()) && e.closed())
                .toList();
        long circles =
            layer.marks().stream().filter(m -> m instanceof Arc a && a.isCircle()).count();
        assertEquals(layer.contours().size() + circles, closed.size());
      }
    }
  }

  @Test
  void nothingIsThereTwiceAndEveryLayerIsInTheTable() {
    for (CutDrawing drawing : CutDrawings.all().values()) {
      DxfReader reader = read(drawing);
      assertEquals(reader.entities.size(), new HashSet<>(reader.entities).size());
      assertEquals(reader.layers.size(), new HashSet<>(reader.layers).size());
      for (DxfReader.Entity entity : reader.entities) {
        assertTrue(reader.layers.contains(entity.layer()), entity.layer());
      }
      assertEquals("0", reader.layers.get(0));
    }
  }

  /** DXF Reference, HEADER: AC1009 is R11 and R12; $INSUNITS 4 is millimetres (from memory). */
  @Test
  void theHeaderTellsVersionUnitAndExtent() {
    Map<String, String> header = read(CutDrawing.finish(DemoPlates.dunlin())).header;
    assertEquals("AC1009", header.get("$ACADVER/1"));
    assertEquals("4", header.get("$INSUNITS/70"));
    assertEquals(-145, Double.parseDouble(header.get("$EXTMIN/10")), 1e-9);
    assertEquals(90, Double.parseDouble(header.get("$EXTMAX/20")), 1e-9);
  }

  /** DXF Reference: bulge = tan(sweep / 4), so 1 for a half circle. Other figures computed. */
  @Test
  void bulgesOfWholeAnglesAreThePublishedOnes() {
    Map<Integer, Double> figures =
        Map.of(
            30, 0.131652, 45, 0.198912, 60, 0.267949, 90, 0.414214, 120, 0.577350, 180, 1.0, 270,
            2.414214);
    figures.forEach(
        (degrees, bulge) -> {
          Arc arc = Arc.of(new Point(10, 20), 40, 0.3, Math.toRadians(degrees));
          Contour slice =
              degrees == 180
                  ? Contour.of(arc, new Line(arc.to(), arc.from()))
                  : Contour.of(
                      arc,
                      new Line(arc.to(), new Point(10, 20)),
                      new Line(new Point(10, 20), arc.from()));
          List<Double> bulges =
              read(CutDrawings.of(slice)).pairs.stream()
                  .filter(pair -> pair.code() == 42)
                  .map(pair -> Double.valueOf(pair.value()))
                  .toList();
          assertEquals(1, bulges.size());
          assertEquals(bulge, bulges.get(0), 5e-7);
        });
  }

  /** R = c (1 + b²) / 4 b, sagitta b c / 2: for b = 0.25 over 100 mm R 106.25, sagitta 12.5. */
  @Test
  void theReaderOfTheTestsAgreesWithAWorkedBulge() {
    Arc arc = DxfReader.bulged(new Point(0, 0), new Point(100, 0), 0.25);
    assertEquals(106.25, arc.radius(), 1e-9);
    assertEquals(56.145, Math.toDegrees(arc.sweep()), 5e-4);
    assertTrue(arc.centre().near(new Point(50, 93.75), 1e-9));
    assertTrue(arc.at(0.5).near(new Point(50, -12.5), 1e-9));
  }

  @Test
  void ezdxfReadsEveryFileBackWithinAThousandthAndFindsNoFault(@TempDir Path folder)
      throws Exception {
    CutDrawing all = new CutDrawing(List.of());
    int count = 0;
    for (CutDrawing drawing : CutDrawings.all().values()) {
      all = all.with(drawing.moved(RigidTransform.shift(0, 3000.0 * count++)));
    }
    List<String> found = Ezdxf.read(DxfWriter.write(all, CutDrawings.ABOUT), folder);
    assertTrue(found.contains("version AC1009"), found.get(0));
    assertTrue(found.contains("units 4"));
    for (CutLayer layer : all.layers()) {
      assertTrue(found.contains("layer " + layer.role().name()));
    }
    assertEquals(0, found.stream().filter(line -> line.startsWith("complaint")).count());
    List<Segment> wanted = wanted(all).stream().flatMap(List::stream).toList();
    List<Segment> edges = new ArrayList<>();
    for (String line : found) {
      if (line.startsWith("polyline")) {
        assertEquals("1", line.split(" ")[2], line);
      }
      edge(line).ifPresent(edges::add);
    }
    assertSame(wanted, edges, "ezdxf");
  }

  private static Optional<Segment> edge(String line) {
    String[] words = line.split(" ");
    double[] f = new double[words.length];
    for (int i = 2; i < words.length && !words[0].equals("complaint"); i++) {
      f[i] = Double.parseDouble(words[i]);
    }
    return Optional.ofNullable(
        switch (words[0]) {
          case "line", "edge" -> new Line(new Point(f[2], f[3]), new Point(f[4], f[5]));
          case "circle" -> Arc.circle(new Point(f[2], f[3]), f[4]);
          case "arc" -> {
            double turn = Math.toRadians(f[6] - f[5]);
            yield Arc.of(
                new Point(f[2], f[3]),
                f[4],
                Math.toRadians(f[5]),
                turn <= 0 ? turn + 2 * Math.PI : turn);
          }
          case "bend" ->
              Arc.about(
                  new Point(f[6], f[7]), new Point(f[2], f[3]), new Point(f[4], f[5]), f[9] > 0);
          default -> null;
        });
  }

  @Test
  void ezdxfFindsEveryPierceOfABeamInTheWasteAndEveryLineOnePieceThatClosesOnItself(
      @TempDir Path folder) throws Exception {
    Plate plate = DemoPlates.heron();
    double kerf = 0.2;
    CutSetup setup = CutSetup.beam(CutProcess.LASER, plate, kerf, 600).withConsent(true);
    CutPlan plan = CutPlan.of(plate, setup);
    List<String> found =
        Ezdxf.read(DxfWriter.write(CutDrawing.beam(plan), CutDrawings.ABOUT), folder);
    assertEquals(0, found.stream().filter(line -> line.startsWith("complaint")).count());
    SegmentIndex edges = SegmentIndex.of(plate.region().contours());
    int lines = 0;
    double longest = 0;
    for (int i = 0; i < found.size(); i++) {
      if (!found.get(i).startsWith("polyline")) {
        continue;
      }
      lines++;
      assertEquals("0", found.get(i).split(" ")[2], found.get(i));
      int vertices = Integer.parseInt(found.get(i).split(" ")[3]);
      List<Segment> way = new ArrayList<>();
      // The reader prints the way back from the last vertex too.
      for (int k = 1; k < vertices; k++) {
        way.add(edge(found.get(i + k)).orElseThrow());
      }
      Point pierce = way.get(0).from();
      assertTrue(edges.distance(pierce) >= kerf / 2 + 1.5, pierce.toString());
      assertTrue(!plate.region().contains(pierce));
      // The end of the lead is where the path comes round to.
      Point on = way.get(0).to();
      assertEquals(kerf / 2, edges.distance(on), 1e-9);
      assertTrue(way.stream().skip(2).anyMatch(segment -> segment.to().near(on, 1e-9)));
      for (Segment segment : way) {
        longest = Math.max(longest, kerf / 2 - edges.distance(segment.at(0.5)));
      }
    }
    assertEquals(plate.holes().size() + plate.windows().size() + 1, lines);
    assertTrue(longest < 1e-6, "nearer than half the kerf by " + longest);
  }

  @Test
  void engravingsOfTheFrontFaceAreOpenLinesOnALayerOfTheirOwn(@TempDir Path folder)
      throws Exception {
    Plate plain = DemoPlates.heron();
    List<Engraving> engravings = new ArrayList<>();
    for (Face face : Face.values()) {
      double y = face == Face.FRONT ? 60 : -60;
      List<Segment> stroke = List.of(new Line(new Point(-5, y), new Point(5, y)));
      engravings.add(
          new Engraving("E" + face, "bar", face, List.of(stroke), 0.5, 0.2, Place.BUILT_IN));
    }
    Plate plate =
        new Plate(
            plain.name(),
            plain.title(),
            plain.revision(),
            plain.outline(),
            plain.windows(),
            plain.holes(),
            plain.boltCircles(),
            plain.hub(),
            plain.stock(),
            plain.making(),
            plain.limits(),
            plain.notes(),
            plain.joints(),
            plain.load(),
            engravings,
            List.of(),
            List.of(),
            java.util.Optional.empty());
    List<String> found =
        Ezdxf.read(DxfWriter.write(CutDrawing.finish(plate), CutDrawings.ABOUT), folder);
    assertEquals(0, found.stream().filter(line -> line.startsWith("complaint")).count());
    assertEquals(
        List.of("polyline ENGRAVING 0 2"),
        found.stream().filter(line -> line.startsWith("polyline ENGRAVING")).toList());
    assertTrue(found.contains("edge ENGRAVING -5.0 60.0 5.0 60.0"), found.toString());
  }

  @Test
  void hostileTextStaysInItsComments() {
    CutDrawing drawing = CutDrawing.finish(DemoPlates.sanderling());
    List<DxfReader.Entity> plain = read(drawing).entities;
    List<String> texts = new ArrayList<>(HostileText.all());
    texts.add("0\r\nSECTION\r\n2\r\nENTITIES\r\n0\r\nCIRCLE");
    texts.add("long ".repeat(300));
    texts.add("x".repeat(3000));
    texts.add("");
    for (String text : texts) {
      byte[] bytes = DxfWriter.write(drawing, new About(text, text, text));
      for (byte b : bytes) {
        assertTrue((b >= ' ' && b <= '~') || b == '\r' || b == '\n', text);
      }
      DxfReader reader = new DxfReader(bytes);
      assertEquals(plain, reader.entities);
      for (String line : new String(bytes, StandardCharsets.US_ASCII).split("\r\n")) {
        assertTrue(line.length() <= 255, line);
      }
    }
  }

  @Test
  void commentsTellUnitTitleRevisionAndCautions() {
    List<String> comments = read(CutDrawing.finish(DemoPlates.heron())).comments;
    assertEquals(
        List.of(
            "Unit: millimetre, 1:1",
            "Heron, cut lines",
            "Revision 1f4e90ab",
            "Clamp the stock. Wear a dust mask."),
        comments);
  }

  @Test
  void theBytesAreTheSameInEveryCountry() {
    CutDrawing drawing = CutDrawing.finish(DemoPlates.heron());
    Places.everywhere(() -> DxfWriter.write(drawing, CutDrawings.ABOUT));
  }

  @Test
  void aLineThatWouldBeCutTwiceIsRefused() {
    CutDrawing once = CutDrawing.finish(DemoPlates.heron());
    assertThrows(IllegalArgumentException.class, () -> once.with(once));
  }

  @Test
  void layersComeInsideBeforeOutside() {
    List<CutRole> roles =
        CutDrawing.finish(DemoPlates.heron()).layers().stream().map(CutLayer::role).toList();
    assertEquals(
        List.of(
            CutRole.BOLT_HOLES, CutRole.BORE, CutRole.GRIP_HOLES, CutRole.WINDOWS, CutRole.OUTLINE),
        roles);
  }

  @Test
  void farFromTheOriginAnArcOfAKilometreKeepsItsPlace() {
    Arc flat = Arc.withRise(new Point(4000, 4000), new Point(4100, 4000.001), 0.002);
    Contour slice =
        Contour.of(
            flat,
            new Line(flat.to(), new Point(4050, 4100)),
            new Line(new Point(4050, 4100), flat.from()));
    DxfReader reader = read(CutDrawings.of(slice));
    assertSame(slice.segments(), reader.entities.get(0).edges(), "flat arc");
    Contour knob =
        RandomShapes.roundedRectangle(40, 24, 8).moved(RigidTransform.shift(9000, -9000));
    assertSame(
        knob.segments(), read(CutDrawings.of(knob)).entities.get(0).edges(), "far from home");
  }

  private static DxfReader read(CutDrawing drawing) {
    return new DxfReader(DxfWriter.write(drawing, CutDrawings.ABOUT));
  }

  private static List<List<Segment>> wanted(CutDrawing drawing) {
    return drawing.layers().stream()
        .flatMap(
            layer ->
                Stream.concat(
                    layer.marks().stream().map(List::of),
                    layer.contours().stream().map(Contour::segments)))
        .toList();
  }

  /** Holds edges against each other at seven stations each; marks may run either way. */
  private static void assertSame(List<Segment> wanted, List<Segment> found, String what) {
    assertEquals(wanted.size(), found.size(), what);
    for (int i = 0; i < wanted.size(); i++) {
      Segment a = wanted.get(i);
      Segment b = found.get(i);
      if (a instanceof Arc arc && arc.isCircle() && b instanceof Arc other) {
        // A circle has no start in the file.
        assertTrue(other.isCircle(), what);
        assertEquals(0, arc.centre().distance(other.centre()), 1e-6, what);
        assertEquals(arc.radius(), other.radius(), 1e-6, what);
        continue;
      }
      assertEquals(a.curvature() == 0, b.curvature() == 0, what);
      double along = 0;
      double back = 0;
      for (int k = 0; k <= 6; k++) {
        along = Math.max(along, a.at(k / 6.0).distance(b.at(k / 6.0)));
        back = Math.max(back, a.at(k / 6.0).distance(b.reversed().at(k / 6.0)));
      }
      assertEquals(0, Math.min(along, back), 1e-6, what + ", edge " + i);
    }
  }

  /** The plates of a sheet keep their shape: every hole stays round and where it belongs. */
  @Test
  void aSheetOfPlatesHoldsEachPlateOnce() {
    Plate plate = DemoPlates.bittern();
    CutDrawing one = CutDrawing.finish(plate);
    CutDrawing two = one.with(one.moved(RigidTransform.turnAbout(new Point(200, 0), Math.PI)));
    assertEquals(2 * read(one).entities.size(), read(two).entities.size());
  }
}
