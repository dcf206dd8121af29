package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertThrows;

import felloe.plate.BadInput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;

/** Outlines brought in by tests. */
final class Brought {

  static final Asked ASKED =
      new Asked(
          "--width",
          "--scale",
          "--gap",
          "--thickness",
          "--camera-height",
          "felloe template --photo-frame");

  static final BringIn.Wish USUAL = sized(Sizing.OWN);

  private Brought() {}

  static BringIn.Wish sized(Sizing sizing) {
    return new BringIn.Wish(
        sizing,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        ASKED);
  }

  static BringIn.Wish gap(double gap) {
    return new BringIn.Wish(
        Sizing.OWN,
        OptionalDouble.of(gap),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        ASKED);
  }

  static PlateOutline in(String name, String text) {
    return in(name, text, USUAL);
  }

  static PlateOutline in(String name, String text, BringIn.Wish wish) {
    return BringIn.of(text.getBytes(StandardCharsets.UTF_8), name, wish);
  }

  /** What is told of one that cannot be read. */
  static List<String> refused(String name, String text) {
    return assertThrows(BadInput.class, () -> in(name, text)).lines();
  }

  /** A drawing in millimetres about the middle of a sheet of 400 by 400. */
  static String svg(String body) {
    return "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='400mm'"
        + " viewBox='-200 -200 400 400'>"
        + body
        + "</svg>";
  }
}
