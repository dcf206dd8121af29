package felloe.shape;

import felloe.yaml.Fields;

/** Reads a feature's label. */
final class LabelText {

  private LabelText() {}

  /** The label, empty when none is given. */
  static String read(Fields f) {
    String label = f.text("label").or("");
    if (label.length() > Labels.LONGEST || label.endsWith("#")) {
      f.problem(
          "label",
          "must be at most " + Labels.LONGEST + " characters long and not end in #",
          "shorten it; it is printed beside the feature");
      return "";
    }
    return label;
  }
}
