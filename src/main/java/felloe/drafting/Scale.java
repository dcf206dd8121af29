package felloe.drafting;

import java.util.List;

/**
 * A scale of ISO 5455: full size, or 2, 5 and 10 times a power of ten larger or smaller; from
 * memory.
 *
 * @param drawn length on the drawing, whole millimetres
 * @param real length of the part that it stands for, whole millimetres
 */
public record Scale(int drawn, int real) {

  /** From the largest; plates of ten metres fit a small sheet at the last. */
  static final List<Scale> SERIES =
      List.of(
          new Scale(10, 1),
          new Scale(5, 1),
          new Scale(2, 1),
          new Scale(1, 1),
          new Scale(1, 2),
          new Scale(1, 5),
          new Scale(1, 10),
          new Scale(1, 20),
          new Scale(1, 50),
          new Scale(1, 100),
          new Scale(1, 200),
          new Scale(1, 500),
          new Scale(1, 1000));

  /** Length on the drawing to length of the part. */
  public double factor() {
    return (double) drawn / real;
  }

  /** As it stands in a title block, such as {@code 1:2}. */
  public String text() {
    return drawn + ":" + real;
  }
}
