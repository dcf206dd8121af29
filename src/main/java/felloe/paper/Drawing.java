package felloe.paper;

import java.util.List;

/**
 * Marks in named layers, drawn in order. Millimetres, x to the right, y up.
 *
 * @param layers bottom first
 */
public record Drawing(List<Layer> layers) {

  /** Copies the layers. */
  public Drawing {
    layers = List.copyOf(layers);
  }

  /**
   * Marks of one meaning.
   *
   * @param name its name, such as {@code outline}: lower-case letters and hyphens
   * @param marks in drawing order
   */
  public record Layer(String name, List<Mark> marks) {
    /** Copies the marks. */
    public Layer {
      marks = List.copyOf(marks);
    }
  }
}
