package felloe.hub;

import felloe.geometry.Numbers;
import felloe.plate.Basis;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A hub spec as the text of a hub file (YAML). Read again it is the same spec, to the last bit of
 * every figure; only its place is that of the new file.
 */
public final class HubFile {

  private static final int MOST_DECIMALS = 30;
  private static final int NEIGHBOURS = 4;

  private final StringBuilder text = new StringBuilder();

  private HubFile() {}

  /** The text, with a line's end after each line. */
  public static String text(HubSpec hub) {
    HubFile file = new HubFile();
    file.line("felloe-hub", "1");
    file.line("name", hub.name());
    file.line("title", quoted(hub.title()));
    file.ring("", hub.ring());
    hub.pilot().ifPresent(d -> file.line("pilot", plain(d)));
    hub.bore().ifPresent(d -> file.line("bore", plain(d)));
    file.line("position-tolerance", plain(hub.positionTolerance()));
    if (hub.second().isPresent()) {
      file.text.append("second:\n");
      file.line("  use", hub.use().name().toLowerCase(Locale.ROOT));
      file.ring("  ", hub.second().get());
    }
    file.text.append("basis:\n");
    for (Map.Entry<String, Basis> basis : hub.bases().entrySet()) {
      file.line("  " + basis.getKey(), quoted(basis.getValue().words()));
    }
    return file.text.toString();
  }

  private void ring(String indent, HubRing ring) {
    line(indent + "count", Numbers.brief(ring.count(), 0));
    line(indent + "pcd", plain(ring.pitchDiameter()));
    line(indent + "thread", ring.thread().name());
    line(
        indent + "first",
        decimal(Math.toDegrees(ring.firstAngle()), ring.firstAngle(), Math::toRadians));
    line(indent + "plate-hole", plain(ring.plateHole()));
  }

  private void line(String key, String value) {
    text.append(key).append(": ").append(value).append('\n');
  }

  private static String plain(double length) {
    return decimal(length, length, DoubleUnaryOperator.identity());
  }

  /**
   * The shortest decimal that is read as the figure. What is shown of an angle may be a last digit
   * off what it was read from, so its neighbours are tried too.
   */
  private static String decimal(double shown, double meant, DoubleUnaryOperator read) {
    for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
      for (int off = 0; off <= 2 * NEIGHBOURS; off++) {
        int steps = off % 2 == 0 ? off / 2 : -(off + 1) / 2;
        String text = Numbers.brief(shown + steps * Math.ulp(shown), decimals);
        if (read.applyAsDouble(Double.parseDouble(text)) == meant) {
          return text;
        }
      }
    }
    return Numbers.brief(shown, MOST_DECIMALS);
  }

  /** A text in quotation marks, whatever is in it. */
  private static String quoted(String words) {
    StringBuilder quoted = new StringBuilder("\"");
    for (char c : words.toCharArray()) {
      if (c == '"' || c == '\\') {
        quoted.append('\\').append(c);
      } else if (c == '\n') {
        quoted.append("\\n");
      } else if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || c == '\ufeff') {
        String hex = Integer.toHexString(c);
        quoted.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
      } else {
        quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }
}
