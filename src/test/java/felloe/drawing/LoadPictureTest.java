package felloe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class LoadPictureTest {

  private static final List<DoubleBinaryOperator> FIELDS =
      List.of(
          (x, y) -> 130 * Math.exp(-Math.hypot(x - 70, y) / 60),
          (x, y) -> x * x * x / 1e6,
          (x, y) -> -x * x / 1e4,
          (x, y) -> 0,
          (x, y) -> 100,
          (x, y) -> 1e-7 * x,
          (x, y) -> 1e7 * y,
          (x, y) -> 1 + 1e-14 * x);

  private static void assertInside(List<Mark> marks, Box page, String told) {
    for (Mark mark : marks) {
      Box box = mark.box();
      boolean inside =
          page.contains(new Point(box.minX(), box.minY()))
              && page.contains(new Point(box.maxX(), box.maxY()));
      assertTrue(inside, () -> told + ": " + mark + " leaves " + page);
    }
  }

  private static List<Mark.Label> labels(Drawing drawing) {
    return drawing.marks().stream()
        .filter(m -> m instanceof Mark.Label)
        .map(m -> (Mark.Label) m)
        .toList();
  }

  @Test
  void everythingStandsInsideThePicture() {
    for (DoubleBinaryOperator field : FIELDS) {
      Picture picture = LoadPicture.of(LoadViews.view(field, field));
      assertInside(picture.drawing().marks(), picture.page(), "picture");
    }
  }

  @Test
  void everythingStandsInsideItsPage() {
    List<LoadView> views = new ArrayList<>(List.of(LoadViews.pulled()));
    FIELDS.forEach(field -> views.add(LoadViews.view(field, field)));
    for (LoadView view : views) {
      Picture picture = LoadPicture.stacked(view);
      assertInside(picture.drawing().marks(), picture.page(), view.title());
    }
  }

  /** The bar of the legend is higher than such a plate. */
  @Test
  void aLowPlateHasRoomForItsLegend() {
    Box rail = new Box(-200, -15, 200, 15);
    double[] x = {-200, 200, 200, -200};
    double[] y = {-15, -15, 15, 15};
    NodalField field =
        new NodalField(x, y, new int[] {0, 1, 2, 0, 2, 3}, new double[] {0, 99, 100, 1});
    LoadView.Map map =
        new LoadView.Map("Use", "%", field, new Point(200, 15), "100 %", OptionalDouble.empty());
    LoadView view =
        new LoadView(
            "Rail",
            "pulled",
            List.of("An estimate."),
            felloe.geometry.Region.of(Contour.rectangle(rail)),
            List.of(),
            List.of(),
            List.of(),
            List.of(map, map));
    Picture picture = LoadPicture.of(view);
    assertInside(picture.drawing().marks(), picture.page(), "rail");
    List<Mark.Label> labels = labels(picture.drawing());
    for (int i = 0; i < labels.size(); i++) {
      for (int j = i + 1; j < labels.size(); j++) {
        assertFalse(labels.get(i).box().touches(labels.get(j).box()), labels.get(i).text());
      }
    }
    Picture page = LoadPicture.stacked(view);
    assertInside(page.drawing().marks(), page.page(), "page");
  }

  @Test
  void noLabelsOverlap() {
    for (DoubleBinaryOperator field : FIELDS) {
      List<Mark.Label> labels = labels(LoadPicture.of(LoadViews.view(field, field)).drawing());
      for (int i = 0; i < labels.size(); i++) {
        for (int j = i + 1; j < labels.size(); j++) {
          Mark.Label a = labels.get(i);
          Mark.Label b = labels.get(j);
          assertFalse(a.box().touches(b.box()), a + " and " + b);
        }
      }
    }
  }

  @Test
  void bandsAreToldByFiguresAndNotByColourAlone() {
    Picture picture = LoadMap.of(LoadViews.pulled(), LoadViews.pulled().maps().get(0), 1);
    RoundLimits limits = RoundLimits.of(0, 100, 12);
    assertEquals(10, limits.limits().size() + 1);
    List<String> texts = labels(picture.drawing()).stream().map(Mark.Label::text).toList();
    List<Mark.Tone> tones =
        picture.drawing().marks().stream()
            .filter(m -> m instanceof Mark.Tone)
            .map(m -> (Mark.Tone) m)
            .toList();
    NodalField field = LoadViews.pulled().maps().get(0).field();
    List<Double> parted = RoundLimits.of(field.least(), field.most(), 12).limits();
    // The plate, an area above each limit, and a box of the legend for each band.
    assertEquals(2 * parted.size() + 2, tones.size());
    for (double limit : parted) {
      String text = RoundLimits.of(field.least(), field.most(), 12).text(limit);
      assertTrue(texts.contains(text), text);
    }
    assertTrue(texts.contains("%") && texts.contains("peak here") && texts.contains("249 N"));
  }

  @Test
  void tonesRiseWithTheAmountWhicheverWayThePlateIsMoved() {
    for (double way : new double[] {1, -1}) {
      LoadView view = LoadViews.view((x, y) -> 0, (x, y) -> way * (x + 160));
      Picture picture = LoadMap.of(view, view.maps().get(1), 1);
      List<Double> tones =
          picture.drawing().layers().get(0).marks().stream()
              .map(m -> ((Mark.Tone) m).tone())
              .toList();
      assertEquals(way > 0 ? 0.0 : 1.0, tones.get(0));
      assertEquals(way > 0 ? 1.0 : 0.0, tones.get(tones.size() - 1));
    }
  }

  @Test
  void whatHardlyMovesHasNoLineThroughIt() {
    LoadView view = LoadViews.view((x, y) -> 0, (x, y) -> x / 100);
    List<String> texts =
        labels(LoadMap.of(view, view.maps().get(1), 1).drawing()).stream()
            .map(Mark.Label::text)
            .toList();
    assertFalse(texts.contains("0.0") || texts.contains("0"));
    assertTrue(texts.contains("\u22120.50"), texts.toString());
  }

  @Test
  void lettersKeepTheirHeightOnPaper() {
    LoadView view = LoadViews.pulled();
    Box field = new Box(0, 0, 180, 120);
    Picture picture = LoadMap.fitted(view, field, 2.2).get(0);
    Drawing reduced = ScaledPicture.in(picture, field);
    Mark.Label title =
        labels(reduced).stream().filter(l -> l.text().startsWith("Use")).findFirst().orElseThrow();
    assertEquals(1.1 * 2.2, title.height(), 0.1);
  }

  @Test
  void theSameViewGivesTheSamePicture() {
    assertEquals(LoadPicture.of(LoadViews.pulled()), LoadPicture.of(LoadViews.pulled()));
  }

  @Test
  void plotsOfOneThicknessAndOfOddFiguresAreDrawn() {
    ThicknessView.Trial one =
        new ThicknessView.Trial(5, 0, 1e6, List.of("5 mm", "300 g"), true, true);
    for (OptionalDouble wanted : List.of(OptionalDouble.empty(), OptionalDouble.of(2))) {
      Picture plot = ThicknessPlot.of(new ThicknessView("One", List.of(one), wanted, 0));
      assertInside(plot.drawing().marks(), plot.page(), "plot");
    }
    Picture usual = ThicknessPlot.of(LoadViews.thicknesses());
    assertInside(usual.drawing().marks(), usual.page(), "plot");
    assertThrows(
        IllegalArgumentException.class,
        () -> new ThicknessView.Trial(5, Double.NaN, 0, List.of(), true, true));
  }

  @Test
  void tonesBeyondTheScaleAndViewsWithoutMapsAreRefused() {
    Mark.Tone tone = Mark.Tone.of(List.of(Contour.rectangle(new Box(0, 0, 1, 1))), 0.5);
    for (double bad : new double[] {-0.1, 1.1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> new Mark.Tone(tone.rings(), bad));
    }
    assertThrows(IllegalArgumentException.class, () -> new Mark.Tone(List.of(), 0.5));
    LoadView view = LoadViews.pulled();
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new LoadView(
                view.title(),
                view.load(),
                view.words(),
                view.region(),
                List.of(),
                List.of(),
                List.of(),
                List.of()));
  }
}
