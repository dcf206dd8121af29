package felloe.cure;

import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What a finding names, where that is written, and the figures that were found to try. */
final class Gathered {

  static final double LENGTH_GRAIN = 0.5;
  static final double FINE_GRAIN = 0.1;

  /** A window, a hole or a row of holes, and where it is written. */
  record Feature(String path, Point middle, boolean mirrored, Optional<Hole> hole) {}

  private final Finding finding;
  private final Plate plate;
  private final ShapeFigures figures;
  private final List<Knob> knobs = new ArrayList<>();

  private final String padded;
  private final Set<String> words;

  Gathered(Finding finding, Plate plate, ShapeFigures figures) {
    this.finding = finding;
    this.plate = plate;
    this.figures = figures;
    this.padded = " " + finding.subject().replace(",", " ,") + " ";
    this.words = Set.copyOf(Arrays.asList(padded.split(" ")));
  }

  Finding finding() {
    return finding;
  }

  Plate plate() {
    return plate;
  }

  ShapeFigures figures() {
    return figures;
  }

  /** What was found, the likeliest first. */
  List<Knob> knobs() {
    return List.copyOf(knobs);
  }

  void add(Knob knob) {
    knobs.add(knob);
  }

  void add(String path, double slope, double grain) {
    figures
        .figure(path)
        .ifPresent(
            now ->
                knobs.add(
                    new Knob(
                        path,
                        now,
                        OptionalDouble.of(slope),
                        grain,
                        to -> to > 0 ? Optional.of(figures.change(path, to)) : Optional.empty())));
  }

  void below(Feature feature, String key, double slope) {
    figures.below(feature.path(), key).forEach(path -> add(path, slope, LENGTH_GRAIN));
  }

  List<Feature> named() {
    List<Feature> found = new ArrayList<>();
    for (Hole hole : plate.holes()) {
      if (isNamed(hole.label())) {
        List<Hole> row = plate.holes().stream().filter(h -> at(h).equals(at(hole))).toList();
        boolean mirrored = row.size() == 2 && row.indexOf(hole) == 1;
        String path = hole.role() == HoleRole.BORE ? "bore" : at(hole);
        add(found, new Feature(path, hole.centre(), mirrored, Optional.of(hole)));
      }
    }
    for (Window window : plate.windows()) {
      if (isNamed(window.label())) {
        Point middle = window.contour().properties().centroid();
        List<Window> both =
            plate.windows().stream().filter(w -> w.place().equals(window.place())).toList();
        boolean mirrored = both.size() == 2 && both.indexOf(window) == 1;
        figures
            .item(window.place())
            .ifPresent(p -> add(found, new Feature(p, middle, mirrored, Optional.empty())));
      }
    }
    return found;
  }

  private static void add(List<Feature> found, Feature one) {
    if (!one.path().isEmpty() && found.stream().noneMatch(f -> f.path().equals(one.path()))) {
      found.add(one);
    }
  }

  String at(Hole hole) {
    return figures.item(hole.place()).orElse("");
  }

  boolean isNamed(String label) {
    return label.indexOf(' ') < 0 ? words.contains(label) : padded.contains(" " + label + " ");
  }

  boolean besideOutline() {
    return isNamed("outline");
  }

  static String pair(double x, double y) {
    return "[" + hundredth(x) + ", " + hundredth(y) + "]";
  }

  private static String hundredth(double figure) {
    return ShapeFigures.brief(Math.rint(figure * 100) / 100);
  }

  /** The sides of a window, the one first that lies along the way to where it is too near. */
  void size(Feature one, double slope) {
    Point way = finding.at().orElse(one.middle()).minus(one.middle());
    boolean wide = Math.abs(way.x()) >= Math.abs(way.y());
    below(one, wide ? "width" : "height", slope);
    below(one, wide ? "height" : "width", slope);
    below(one, "diameter", slope);
  }

  void outline(double slope) {
    add("outline.round.diameter", slope, LENGTH_GRAIN);
    add("outline.four_sided.width", slope, LENGTH_GRAIN);
    add("outline.four_sided.height", slope, LENGTH_GRAIN);
  }
}
