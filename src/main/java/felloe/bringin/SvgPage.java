package felloe.bringin;

import java.util.List;
import java.util.OptionalDouble;

/** How large an SVG drawing is: width, height, view box and what the maker says of them. */
final class SvgPage {

  private SvgPage() {}

  /** Millimetres, y up, about the drawing's own origin. */
  static Affine frame(SvgElement svg, Sizing sizing, Reading reading) {
    List<Double> box = svg.text("viewBox").isEmpty() ? List.of() : svg.numbers("viewBox");
    if (!box.isEmpty() && (box.size() != 4 || box.get(2) <= 0 || box.get(3) <= 0)) {
      throw reading.refused(
          svg.line(),
          "viewBox",
          svg.text("viewBox"),
          "must be four numbers, width and height above 0",
          "");
    }
    if (sizing.scale().isPresent()) {
      double scale = sizing.scale().getAsDouble();
      return Affine.scale(scale, -scale);
    }
    OptionalDouble width = svg.size("width");
    OptionalDouble height = svg.size("height");
    boolean bare =
        SvgElement.plain(svg.text("width")).isPresent()
                != SvgElement.plain(svg.text("height")).isPresent()
            && !svg.text("width").isEmpty()
            && !svg.text("height").isEmpty();
    if (bare || (width.isEmpty() && height.isEmpty())) {
      throw reading.refused(
          svg.line(),
          "width",
          svg.text("width"),
          "has no unit, so the drawing has no size",
          reading.asked().size());
    }
    if (box.isEmpty()) {
      // Without a view box a unit of the drawing is a pixel.
      double px = SvgElement.PIXEL;
      return Affine.scale(px, -px);
    }
    double across = width.orElse(Double.POSITIVE_INFINITY) / box.get(2);
    double up = height.orElse(Double.POSITIVE_INFINITY) / box.get(3);
    boolean stretched =
        svg.text("preserveAspectRatio").startsWith("none")
            && width.isPresent()
            && height.isPresent();
    boolean slice =
        svg.text("preserveAspectRatio").contains("slice")
            && width.isPresent()
            && height.isPresent();
    double even = slice ? Math.max(across, up) : Math.min(across, up);
    return stretched ? Affine.scale(across, -up) : Affine.scale(even, -even);
  }
}
