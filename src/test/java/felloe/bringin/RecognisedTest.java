package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Fillet;
import felloe.geometry.FilletException;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chords, doubles, gaps and loose lines become the contours that they stand for. */
class RecognisedTest {

  private static String points(List<Point> points) {
    StringBuilder text = new StringBuilder("<polygon points='");
    for (Point p : points) {
      text.append(String.format(Locale.ROOT, "%.6f,%.6f ", p.x(), -p.y()));
    }
    return text.append("'/>").toString();
  }

  private static PlateOutline svg(String body) {
    return Brought.in("a.svg", Brought.svg(body));
  }

  /** Chords of a contour, none longer than that nor farther off than 0.03 mm; lines whole. */
  private static List<Point> chords(Contour contour, double longest) {
    List<Point> points = new ArrayList<>();
    for (Segment segment : contour.segments()) {
      int parts = 1;
      if (segment instanceof Arc arc) {
        double turn = 2 * Math.acos(1 - Math.min(1, 0.03 / arc.radius()));
        double most = Math.max(Math.abs(arc.sweep()) / turn, arc.length() / longest);
        parts = (int) Math.max(5, Math.ceil(most));
      }
      for (int i = 0; i < parts; i++) {
        points.add(segment.at(i / (double) parts));
      }
    }
    return points;
  }

  private static Contour rounded(List<Point> corners, double... radii) {
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      chain.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return Fillet.chain(chain, radii);
  }

  @Test
  void fourHundredChordsBecomeEightLinesAndArcs() {
    Contour wheel =
        rounded(
            List.of(
                new Point(-150, -90), new Point(150, -90), new Point(130, 95), new Point(-130, 95)),
            60,
            60,
            45,
            45);
    List<Point> chords = chords(wheel, 0.845);
    assertTrue(chords.size() >= 390 && chords.size() <= 410, "chords " + chords.size());
    PlateOutline plate = svg(points(chords));
    assertEquals(8, plate.outline().segments().size());
    assertTrue(plate.off() < 0.003, "off " + plate.off());
    Form form = Form.of(plate.outline(), BringIn.WITHIN);
    Form.Corners corners = (Form.Corners) form;
    assertTrue(corners.half());
    assertEquals(List.of(45.0, 60.0), corners.radii());
  }

  @Test
  void aCircleOfChordsIsACircleAndAPolygonStaysOne() {
    List<Point> round =
        IntStream.range(0, 96).mapToObj(i -> Point.polar(90, i * Math.PI / 48)).toList();
    // The chords' middles lie 0.048 mm inside.
    assertEquals(90, svg(points(round)).outline().asCircle().orElseThrow().radius(), 1e-6);
    List<Point> twelve =
        IntStream.range(0, 12).mapToObj(i -> Point.polar(90, i * Math.PI / 6)).toList();
    assertEquals(12, svg(points(twelve)).outline().segments().size());
  }

  @Test
  void linesInARowAreOne() {
    List<Point> all =
        List.of(
            new Point(0, 0),
            new Point(40, 0),
            new Point(60, 0),
            new Point(100, 0),
            new Point(100, 50),
            new Point(0, 50),
            new Point(0, 20));
    assertEquals(4, svg(points(all)).outline().segments().size());
  }

  static IntStream seeds() {
    return IntStream.range(0, 200);
  }

  /** With radii halved until all have room. */
  private static Contour fitting(List<Point> corners, double[] radii) {
    double[] smaller = radii.clone();
    while (true) {
      try {
        return rounded(corners, smaller);
      } catch (FilletException crowded) {
        for (int i = 0; i < smaller.length; i++) {
          smaller[i] /= 2;
        }
      }
    }
  }

  /** Any rounded polygon comes back from its chords within the tolerance that is told. */
  @ParameterizedTest
  @MethodSource("seeds")
  void roundedPolygonsComeBackFromTheirChords(int seed) {
    Random random = new Random(seed);
    int n = 3 + random.nextInt(8);
    List<Point> corners = new ArrayList<>();
    double[] radii = new double[n];
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / n;
      corners.add(Point.polar(70 + 80 * random.nextDouble(), angle));
      radii[i] = 3 + 20 * random.nextDouble();
    }
    Contour wheel = fitting(corners, radii);
    PlateOutline plate = svg(points(chords(wheel, 0.4 + 2 * random.nextDouble())));
    Contour back =
        plate.outline().moved(RigidTransform.shift(-plate.moved().x(), -plate.moved().y()));
    double apart = back.apart(wheel);
    assertTrue(apart <= 2 * BringIn.WITHIN, "apart " + apart);
    assertTrue(plate.off() <= BringIn.WITHIN + 1e-9, "off " + plate.off());
    assertTrue(
        back.segments().size() <= wheel.segments().size() + n,
        back.segments().size() + " of " + wheel.segments().size());
  }

  @Test
  void doublesAreDroppedAndSmallGapsClosed() {
    String body =
        "<path d='M-100 -50H100V50'/><path d='M100 50.03H-100V-50'/><path d='M-100 -50H100V50'/>"
            + "<circle r='10'/><circle r='10'/>";
    PlateOutline plate = svg(body);
    assertEquals(200, plate.outline().box().width(), 0.05);
    String notes = String.join(" ", plate.notes());
    assertTrue(notes.contains("3 lines were there twice"), notes);
    assertTrue(notes.contains("Gaps of up to 0.03 mm were closed"), notes);
    assertEquals(2, plate.drawn().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.06", "0.4", "3"})
  void aWiderGapIsToldWithItsPlaceAndWidth(String gap) {
    double y = 50 - Double.parseDouble(gap);
    String told =
        Brought.refused(
                "a.svg", Brought.svg("<path d='M-100 -50H100V50H-100V" + (-50 + 50 - y) + "'/>"))
            .get(0);
    assertTrue(told.contains("(-100, 50)"), told);
    assertTrue(told.contains("--gap"), told);
  }

  /** A corner of radius 40 in 1,500 loose chords of 0.042 mm, shorter than the gap allowed. */
  @Test
  void chordsShorterThanTheGapDoNotVanishInIt() {
    StringBuilder body = new StringBuilder();
    Contour wheel =
        rounded(
            List.of(new Point(-90, -60), new Point(90, -60), new Point(90, 60), new Point(-90, 60)),
            40,
            40,
            40,
            40);
    List<Point> points = chords(wheel, 0.042);
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      body.append(
          String.format(
              Locale.ROOT, "<path d='M%.5f %.5fL%.5f %.5f'/>", a.x(), -a.y(), b.x(), -b.y()));
    }
    PlateOutline plate = svg(body.toString());
    assertEquals(wheel.area(), plate.outline().area(), 1);
    assertTrue(plate.off() < 0.01, "off " + plate.off());
    assertEquals(List.of(), plate.notes());
  }

  /** The told distance holds what closing a gap moves. */
  @Test
  void whatIsMovedToCloseAGapIsTold() {
    PlateOutline plate = svg("<path d='M-100 -50H100V50H-100V-49.96'/>");
    assertTrue(plate.off() >= 0.02, "off " + plate.off());
  }

  @Test
  void smallHolesOutliveAWideGap() {
    PlateOutline plate =
        Brought.in(
            "a.svg",
            Brought.svg(
                "<path d='M-100 -50H100V50H-100V-48'/><circle cx='50' r='1'/>"
                    + "<circle cx='-50' r='2.6'/>"),
            Brought.gap(3));
    assertEquals(2, plate.holes().size());
  }

  /** A gap of 5 mm closes ends; edges of a slot 4 mm apart and holes in a hole's place stay. */
  @Test
  void aWideGapMakesNoNeighboursOne() {
    PlateOutline plate =
        Brought.in(
            "a.svg",
            Brought.svg(
                "<path d='M-100 -50H100V50H-100V-48'/>"
                    + "<path d='M0 0H20'/><path d='M20 4H0'/><path d='M20 0V4'/><path d='M0 4V0'/>"
                    + "<circle cx='-50' r='2'/><circle cx='-50' cy='4.5' r='2'/>"),
            Brought.gap(5));
    assertEquals(80, plate.windows().get(0).contour().area(), 1e-9);
    assertEquals(2, plate.holes().size());
    assertTrue(plate.notes().stream().noneMatch(note -> note.contains("twice")));
  }

  /** 40 by 40.4: on a circle, and not evenly. */
  @Test
  void fourHolesThatAreNoSquareAreNoRing() {
    String holes = "";
    for (double[] at : new double[][] {{20, 20.2}, {-20, 20.2}, {-20, -20.2}, {20, -20.2}}) {
      holes += "<circle cx='" + at[0] + "' cy='" + at[1] + "' r='3'/>";
    }
    PlateOutline plate = svg("<circle r='140'/>" + holes);
    assertEquals(List.of(), plate.rings());
    assertEquals(4, plate.holes().size());
  }

  /** What no plate has is not taken for one. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<rect x='-190' y='-190' width='380' height='380'/><circle r='100'/><circle r='9'/>",
        "<circle r='100'/><circle r='99.7'/><circle cx='20' r='3'/>",
        "<circle r='100'/><circle cx='100' r='20'/>",
        "<circle r='9'/><path d='M-100 -50H100V50H-100'/>"
      })
  void framesTwiceDrawnCrossingAndOpenLinesAreRefused(String body) {
    assertEquals(1, Brought.refused("a.svg", Brought.svg(body)).size());
  }

  /** Two half circles make a slot only where both bulge out. */
  @Test
  void aWindowWithAHollowEndIsNoSlot() {
    PlateOutline plate =
        svg("<circle r='140'/><path d='M-25 -10H25A10 10 0 0 0 25 10H-25A10 10 0 0 1 -25 -10Z'/>");
    assertTrue(Form.of(plate.windows().get(0).contour(), 0.05) instanceof Form.Free);
  }

  @Test
  void linesThatHangLooseArePassedOver() {
    PlateOutline plate =
        svg(
            "<rect x='-100' y='-50' width='200' height='100'/><path d='M-120 0H120M0 -70V70'/>"
                + "<path d='M100 -50L140 -80'/>");
    assertEquals(200, plate.outline().box().width(), 1e-9);
    assertTrue(String.join(" ", plate.notes()).contains("3 open lines were passed over"));
  }

  @Test
  void aPlaceWhereThreeLinesMeetIsTold() {
    String told =
        Brought.refused(
                "a.svg",
                Brought.svg(
                    "<path d='M0 0H50'/><path d='M50 0H100'/><path d='M100 0V50'/>"
                        + "<path d='M100 50H50'/><path d='M50 50H0'/><path d='M0 50V0'/>"
                        + "<path d='M50 0V50'/>"))
            .get(0);
    assertTrue(told.contains("where 3 lines meet"), told);
  }

  @Test
  void aLineThatAllButTouchesItselfIsRefused() {
    List<String> told =
        Brought.refused("a.svg", Brought.svg("<path d='M0 0L80 0L80 40L40 -10L0 40z'/>"));
    assertTrue(told.get(0).contains("crosses or touches itself"), told.toString());
  }

  /**
   * Two arcs that meet in two points, and two of 5 km radius: no one arc stands for either pair.
   */
  @Test
  void anOpeningLikeALensKeepsBothOfItsArcs() {
    PlateOutline plate =
        svg(
            "<circle r='140'/><path d='M-40 0A50 50 0 0 1 40 0A50 50 0 0 1 -40 0Z'/>"
                + "<path d='M-40 60A5000000 5000000 0 0 1 0 60A9000000 9000000 0 0 1 40 60"
                + "L0 90Z'/>");
    assertEquals(2, plate.windows().size());
    // Each half is a segment of a circle: r^2 (a - sin a) / 2 with a = 2 asin (40 / 50).
    double a = 2 * Math.asin(0.8);
    double lens = 2 * 2500 * (a - Math.sin(a)) / 2;
    assertTrue(
        plate.windows().stream().anyMatch(w -> Math.abs(w.contour().area() - lens) < 1e-6),
        plate.windows().toString());
  }
}
