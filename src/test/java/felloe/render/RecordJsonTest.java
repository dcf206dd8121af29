package felloe.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.out.JsonWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RecordJsonTest {

  private enum Way {
    STUCK_ON
  }

  private record Inner(double pitchDiameter, Optional<String> note) {}

  private record Outer(
      String name, int count, Way wayOfMarking, Point at, List<Inner> rings, OptionalDouble cost) {}

  private static final Outer OUTER =
      new Outer(
          "heron",
          2,
          Way.STUCK_ON,
          new Point(1.5, -2),
          List.of(new Inner(70, Optional.empty())),
          OptionalDouble.empty());

  private static String text(Object value, View<?>... views) {
    return JsonWriter.text(new RecordJson(List.of(views)).of(value))
        .replaceAll("\\s+", " ")
        .strip();
  }

  @Test
  void membersAreTheComponentsInSmallLettersWithUnderscores() {
    assertEquals(
        "{ \"name\": \"heron\", \"count\": 2, \"way_of_marking\": \"stuck-on\", \"at\": [1.5, -2],"
            + " \"rings\": [{\"pitch_diameter\": 70, \"note\": null}], \"cost\": null }",
        text(OUTER));
  }

  @Test
  void aViewLeavesOutAddsAndTakesUp() {
    View<Outer> view =
        View.record(
            Outer.class,
            (outer, to) ->
                to.add("first", outer.rings().get(0).pitchDiameter()).addAll(outer.rings().get(0)),
            "name",
            "count",
            "wayOfMarking",
            "at",
            "rings",
            "cost");
    assertEquals("{\"first\": 70, \"pitch_diameter\": 70, \"note\": null}", text(OUTER, view));
  }

  @Test
  void figuresKeepTenDigitsThatCountAndNoRoundingDust() {
    assertEquals("0.3333333333", text(1 / 3.0));
    assertEquals("0.000001234567891", text(1.2345678912e-6));
    assertEquals("1234567.891", text(1234567.8911));
    assertEquals("0", text(1.2e-16));
  }

  @Test
  void aTypeThatNobodyDescribedIsAFault() {
    assertThrows(IllegalArgumentException.class, () -> text(new StringBuilder("x")));
  }

  @Test
  void aMemberStandsForTheComponentOfItsName() {
    View<Inner> view = View.record(Inner.class, (inner, to) -> to.add("note", "other"));
    String told = text(new Inner(1, Optional.of("own")), view);
    assertTrue(told.contains("other") && !told.contains("own"), told);
  }

  @Test
  void aMemberGivenTwiceIsAFault() {
    View<Inner> view = View.of(Inner.class, (i, to) -> to.add("note", "one").add("note", "again"));
    assertThrows(IllegalArgumentException.class, () -> text(new Inner(1, Optional.empty()), view));
  }
}
