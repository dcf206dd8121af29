package felloe.board;

import felloe.geometry.Numbers;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A written figure that is made a little more or less, its unit and its form kept. */
final class Nudge {

  private static final Pattern TIME = Pattern.compile("\\s*(\\d{1,2}):(\\d{2})\\s*");
  private static final Pattern FIGURE =
      Pattern.compile("\\s*([-+]?(?:\\d+(?:\\.\\d*)?|\\.\\d+))(\\s*)(\\D*)");

  /** Figures are never written with more places than this. */
  private static final int PLACES = 4;

  private static final int HALF_DAY = 720;

  /** A share of a step that is rounding of double arithmetic. */
  private static final double SAME = 1e-6;

  private Nudge() {}

  /**
   * The figure, changed.
   *
   * @param by how many steps
   * @param fine whether the steps are small ones
   * @return empty where it is no figure that can be stepped, such as a fraction
   */
  static Optional<String> of(String text, int by, boolean fine, Schema schema) {
    Matcher time = TIME.matcher(text);
    if (time.matches()) {
      return Optional.of(time(minutes(time) + by * (fine ? 1 : 5)));
    }
    Matcher figure = FIGURE.matcher(text);
    if (!figure.matches() || figure.group(3).contains("/")) {
      return Optional.empty();
    }
    double now = Double.parseDouble(figure.group(1));
    double step = step(now, figure.group(3).strip(), fine, schema);
    double to = Math.rint(now / step + by) * step;
    boolean off = Math.abs(now / step - Math.rint(now / step)) > SAME;
    if (off) {
      // First onto the nearest whole step that way.
      to = (by > 0 ? Math.ceil(now / step) + by - 1 : Math.floor(now / step) + by + 1) * step;
    }
    to = Math.max(to, schema.lowest().orElse(to));
    to = Math.min(to, schema.highest().orElse(to));
    return Optional.of(Numbers.brief(to, PLACES) + figure.group(2) + figure.group(3));
  }

  private static double step(double now, String unit, boolean fine, Schema schema) {
    if (schema.whole()) {
      return 1;
    }
    if (schema.is("clock")) {
      return fine ? 0.1 : 0.5;
    }
    double plain =
        switch (unit) {
          case "in" -> 0.0625;
          case "cm", "m", "kN" -> 0.1;
          default ->
              Math.abs(now) < 10
                      && !schema.is("angle")
                      && !schema.is("length")
                      && !schema.is("point")
                  ? 0.5
                  : 1;
        };
    return fine ? plain / 10 : plain;
  }

  private static int minutes(Matcher time) {
    return Integer.parseInt(time.group(1)) * 60 + Integer.parseInt(time.group(2));
  }

  /** A clock position as hours and minutes. */
  static String time(int minutes) {
    int within = Math.floorMod(minutes, HALF_DAY);
    int hours = within / 60 == 0 ? 12 : within / 60;
    int rest = within % 60;
    return hours + ":" + (rest < 10 ? "0" : "") + rest;
  }
}
