package felloe.shape;

import felloe.geometry.Numbers;

/**
 * One parameter of a feature that cannot be as it is. The reader adds the place in the file.
 *
 * @param parameter the parameter's path inside the feature, such as {@code corners[2].radius};
 *     empty when the feature as a whole is meant
 * @param value what it was, as text with its unit; may be empty
 * @param wanted what is allowed, as the rest of a sentence about the value
 * @param cure what to do about it; may be empty
 */
public record ShapeFault(String parameter, String value, String wanted, String cure) {

  /** A fault of a length in millimetres. */
  static ShapeFault length(String parameter, double value, String wanted, String cure) {
    return new ShapeFault(parameter, mm(value), wanted, cure);
  }

  /** A length as text: {@code 31.6 mm}. */
  static String mm(double value) {
    return Numbers.brief(value, 3) + " mm";
  }

  /** The fault as one sentence. */
  public String sentence() {
    String text = parameter.isEmpty() ? "" : parameter + ": ";
    text += value.isEmpty() ? wanted : value + " " + wanted;
    return cure.isEmpty() ? text : text + "; " + cure;
  }
}
