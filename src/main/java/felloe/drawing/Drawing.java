package felloe.drawing;

import felloe.geometry.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Marks in named layers, drawn in order. Millimetres, x to the right, y up.
 *
 * @param layers bottom first
 */
public record Drawing(List<Layer> layers) {

  public Drawing {
    layers = List.copyOf(layers);
  }

  /** A drawing of one layer. */
  public static Drawing of(String layer, List<Mark> marks) {
    return new Drawing(List.of(new Layer(layer, marks)));
  }

  /**
   * Marks of one meaning.
   *
   * @param name its name, such as {@code outline}: lower-case letters and hyphens
   * @param marks in drawing order
   */
  public record Layer(String name, List<Mark> marks) {
    public Layer {
      marks = List.copyOf(marks);
    }
  }

  /** All marks of all layers, in order. */
  public List<Mark> marks() {
    List<Mark> all = new ArrayList<>();
    layers.forEach(layer -> all.addAll(layer.marks()));
    return List.copyOf(all);
  }

  /** The box round all marks, if there are any. */
  public Optional<Box> box() {
    return marks().stream().map(Mark::box).reduce(Box::union);
  }

  /** This drawing without the marks that have no ink in a box. Layers left empty go too. */
  public Drawing within(Box box) {
    return only(mark -> mark.box().touches(box));
  }

  /** This drawing with some of its marks. Layers left empty go. */
  public Drawing only(Predicate<Mark> some) {
    List<Layer> kept = new ArrayList<>();
    for (Layer layer : layers) {
      List<Mark> marks = layer.marks().stream().filter(some).toList();
      if (!marks.isEmpty()) {
        kept.add(new Layer(layer.name(), marks));
      }
    }
    return new Drawing(kept);
  }

  /** This drawing with another's layers on top. */
  public Drawing and(Drawing other) {
    List<Layer> both = new ArrayList<>(layers);
    both.addAll(other.layers);
    return new Drawing(both);
  }
}
