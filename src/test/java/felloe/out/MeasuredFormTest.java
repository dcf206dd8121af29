package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.PaperPlates;
import felloe.drilling.DistanceCheck;
import felloe.drilling.DrillingPlan;
import felloe.drilling.SizeCheck;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.measure.Measured;
import felloe.measure.MeasuredFile;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The blank form for readings, read by the reader of measured files. */
class MeasuredFormTest {

  private static Plate plate(String... labels) {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < labels.length; i++) {
      Point at = Point.polar(Math.max(35, 1.6 * labels.length), 2 * Math.PI * i / labels.length);
      holes.add(new Hole(labels[i], HoleRole.BOLT, at, 5.5, Place.BUILT_IN));
    }
    return PaperPlates.of(Contour.circle(Point.ORIGIN, 100), holes);
  }

  private static DrillingPlan plan(Plate plate) {
    return DrillingPlan.of(plate, Optional.empty());
  }

  private static String form(Plate plate) {
    return new String(MeasuredForm.write(plate, plan(plate)), StandardCharsets.UTF_8);
  }

  private static Measured read(String form) {
    return MeasuredFile.parse("dunlin-measured.yaml", form);
  }

  @Test
  void aBlankFormIsReadAndWaitsForEveryRowInOrder() {
    Plate plate = plate("H1", "H2", "H3", "H4", "H5", "H6");
    DrillingPlan plan = plan(plate);
    Measured measured = read(form(plate));
    assertEquals(6, measured.count());
    assertTrue(measured.readings().isEmpty());
    assertEquals(plate.revision(), measured.revision().orElseThrow());
    assertEquals(plate.name(), measured.plate().orElseThrow());
    List<String> wanted = new ArrayList<>();
    for (SizeCheck size : plan.sizes()) {
      wanted.add(size.hole().substring(1));
    }
    for (DistanceCheck check : plan.readings()) {
      wanted.add(check.from().substring(1) + " to " + check.to().substring(1));
    }
    assertEquals(wanted, measured.waiting().stream().map(measured::holes).toList());
  }

  @Test
  void everyRowHasTheNumberAndTheLimitsOfItsRowOnTheSheet() {
    Plate plate = plate("H1", "H2", "H3");
    String form = form(plate);
    assertTrue(form.contains("  H1:   # 1: 5.50 to 5.68\n"), form);
    // Chord of three on 70 mm: 60.62; zones of 0.5 mm, holes of 5.50 to 5.68 mm.
    assertTrue(
        form.contains("  - {from: H1, to: H2, over: outside, reads: }   # 4: 65.62 to 66.80\n"),
        form);
  }

  @Test
  void labelsOfTheMakersOwnAreListedAndQuotedWhereYamlNeedsIt() {
    Plate plate = plate("upper left", "true", "7", "a: b", "say \"x\"", "c#d");
    Measured measured = read(form(plate));
    assertEquals(List.of("upper left", "true", "7", "a: b", "say \"x\"", "c#d"), measured.labels());
    assertEquals(6 + 15, measured.waiting().size());
  }

  @Test
  void labelsTooLongForTheFormGiveWayToNumbers() {
    Plate plate = plate("a label of more than twenty characters", "H2", "H3");
    String form = form(plate);
    Measured measured = read(form);
    assertEquals(List.of("1", "2", "3"), measured.labels());
    assertTrue(form.contains("\"1\":   # 1 (a label of more than twenty characters):"), form);
  }

  @Test
  void aFormHasAsManyHolesAsAMeasuredFileTakesAndSaysHowManyItLacks() {
    assertEquals(Measured.MOST_HOLES, DrillingPlan.MOST_MEASURED);
    String[] labels = IntStream.rangeClosed(1, 50).mapToObj(i -> "H" + i).toArray(String[]::new);
    String form = form(plate(labels));
    assertEquals(48, read(form).count());
    assertTrue(
        form.contains("# 2 more hub holes are not in this form, since it takes 48 at most.\n"),
        form);
    String whole = form(plate(Arrays.copyOf(labels, 48)));
    assertEquals(48, read(whole).count());
    assertFalse(whole.contains("not in this form"), whole);
  }

  @Test
  void aPlateWithLessThanTwoHubHolesHasNoForm() {
    Plate none = plate();
    Plate one = plate("H1");
    assertFalse(MeasuredForm.has(plan(none)));
    assertFalse(MeasuredForm.has(plan(one)));
    assertTrue(MeasuredForm.has(plan(plate("H1", "H2"))));
    assertThrows(IllegalArgumentException.class, () -> MeasuredForm.write(one, plan(one)));
  }
}
