package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** However few readings there are, and whatever they say, there is an answer or a clear error. */
class FewReadingsTest {

  private static final long SEED = 8_112_024L;

  private static Measured measured(int holes, List<Reading> readings) {
    List<String> labels = new ArrayList<>();
    for (int i = 1; i <= holes; i++) {
      labels.add("" + i);
    }
    return new Measured(
        "hub.yaml",
        labels,
        ContactFeature.HOLES,
        Optional.empty(),
        readings,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Place.of("hub.yaml", 1, 1));
  }

  private static Reading reading(Random random, int holes, int line) {
    ReadingKind[] kinds = {
      ReadingKind.OUTSIDE, ReadingKind.INSIDE, ReadingKind.CENTRES, ReadingKind.DIAMETER
    };
    ReadingKind kind = kinds[random.nextInt(kinds.length)];
    int from = random.nextInt(holes);
    int to = kind == ReadingKind.DIAMETER ? from : (from + 1 + random.nextInt(holes - 1)) % holes;
    double reads =
        kind == ReadingKind.DIAMETER
            ? 3 + 9 * random.nextDouble()
            : Math.pow(10, 1 + 1.5 * random.nextDouble());
    return new Reading(from, to, Optional.empty(), kind, reads, 0.1, Place.of("hub.yaml", line, 5));
  }

  @Test
  void anyFewReadingsHaveAnAnswerOrAClearError() {
    Random random = new Random(SEED);
    int refused = 0;
    for (int run = 0; run < 1200; run++) {
      int holes = 2 + random.nextInt(11);
      List<Reading> readings = new ArrayList<>();
      int count = 1 + random.nextInt(run % 2 == 0 ? 2 : 6);
      for (int k = 0; k < count; k++) {
        readings.add(reading(random, holes, k + 3));
      }
      SurveyResult result = Survey.of(measured(holes, readings));
      String which = "seed " + SEED + ", run " + run;
      if (result.noCircle().isEmpty()) {
        assertTrue(result.pattern().orElseThrow().pcd() > 0, which);
        for (FoundHole hole : result.holes()) {
          assertTrue(hole.size().orElse(1.0) > 0, which + ": " + hole);
        }
      } else {
        refused++;
        for (Problem problem : result.noCircle()) {
          assertFalse(problem.cure().isBlank(), which);
        }
      }
    }
    assertTrue(refused > 100 && refused < 1200, "" + refused);
  }

  /** The search for eigenvalues found no end on such readings: their matrix has the rank one. */
  @Test
  void oneReadingOnManyHolesSaysWhatToMeasureNext() {
    for (int holes = 2; holes <= 48; holes++) {
      for (int to = 1; to < holes; to += 1 + holes / 8) {
        Measured one =
            measured(
                holes,
                List.of(
                    new Reading(
                        0,
                        to,
                        Optional.empty(),
                        ReadingKind.OUTSIDE,
                        43.585,
                        0.1,
                        Place.of("hub.yaml", 3, 5))));
        SurveyResult result = Survey.of(one);
        assertEquals(1, result.refusals().size(), holes + " holes, 1 to " + (to + 1));
        assertTrue(result.refusals().get(0).cure().startsWith("measure the diameter of 1"));
      }
    }
  }

  private static Calliper ring() {
    return new Calliper(Calliper.ring(6, 70), 5.5, 0.1, null);
  }

  /** With the size not told, one reading over inside for outside made it -1.7 mm. */
  @Test
  void aReadingOverInsideForOutsideIsNamedAndNoOther() {
    Calliper calliper =
        ring()
            .over(ReadingKind.OUTSIDE, 0, 1)
            .over(ReadingKind.OUTSIDE, 0, 3)
            .over(ReadingKind.OUTSIDE, 1, 4)
            .over(ReadingKind.OUTSIDE, 2, 5)
            .over(ReadingKind.OUTSIDE, 2, 4);
    Measured measured = calliper.measured();
    List<Reading> readings = new ArrayList<>(measured.readings());
    readings.set(0, readings.get(0).over(ReadingKind.INSIDE));
    SurveyResult result = Survey.of(measured(6, readings));
    assertEquals(1, result.suspects().size(), result.suspects().toString());
    assertEquals(readings.get(0), result.suspects().get(0).reading());
    assertEquals("reads like over outside", result.suspects().get(0).hint());
    assertEquals(70, result.pattern().orElseThrow().pcd(), 0.01);
    assertEquals(5.5, result.pattern().orElseThrow().size().orElseThrow(), 0.01);
  }

  @Test
  void holesOfNoSizeAreRefusedWithTheCure() {
    List<Reading> readings = new ArrayList<>();
    for (Reading reading : ring().allPairs().readings()) {
      readings.add(reading.over(ReadingKind.INSIDE));
    }
    SurveyResult result = Survey.of(measured(6, readings));
    assertFalse(result.told());
    String text = result.refusals().toString();
    assertTrue(text.contains("-5.5 mm wide, which cannot be"), text);
    assertTrue(text.contains("the other way round"), text);
    assertTrue(text.contains("measure the diameter of 1"), text);
  }

  @Test
  void holesOnOneLineTellNoCircle() {
    List<Point> line = List.of(new Point(0, 0), new Point(20, 0), new Point(40, 0));
    SurveyResult result =
        Survey.of(new Calliper(line, 5, 0.1, null).diameter(0).allPairs().measured());
    assertTrue(result.told());
    assertTrue(result.pattern().isEmpty());
    String text = result.noCircle().toString();
    assertTrue(text.contains("tell no circle"), text);
  }
}
