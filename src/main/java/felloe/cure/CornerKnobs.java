package felloe.cure;

import felloe.cure.ShapeChange.Setting;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which figures round a corner. */
final class CornerKnobs {

  /** A corner of the outline or of a window is the one that lies no farther from a finding, mm. */
  private static final double NEAR = 30;

  private final Gathered found;

  private CornerKnobs(Gathered found) {
    this.found = found;
  }

  /** Adds them. */
  static void into(Gathered found) {
    new CornerKnobs(found).fill();
  }

  private void fill() {
    String wanted = ShapeFigures.brief(found.finding().limit().orElseThrow().value());
    List<String> tops =
        new ArrayList<>(found.named().stream().map(Gathered.Feature::path).toList());
    if (found.besideOutline() || found.isNamed("outline")) {
      tops.add("outline");
    }
    for (String top : tops) {
      if (found.finding().rule().equals("inside-corner") || top.equals("outline")) {
        for (String path : found.figures().below(top, "radius")) {
          if (!path.contains(".corners[")) {
            found.add(path, 1, Gathered.FINE_GRAIN);
          }
        }
      }
      corner(top, wanted);
    }
    if (found.finding().rule().equals("inside-corner") && found.finding().figure().value() > 0) {
      // The limit goes with the cutter.
      double now = found.plate().making().cutterDiameter();
      double share =
          found.finding().figure().value() / found.finding().limit().orElseThrow().value();
      double to = Math.floor(share * now / Gathered.LENGTH_GRAIN) * Gathered.LENGTH_GRAIN;
      if (to >= 1 && to < now) {
        found.add(Knob.choice(found.figures().change("making.cutter", now, to)));
      }
    }
  }

  /** The corner of a chain of points that lies where the finding is. */
  private void corner(String top, String wanted) {
    String list = top + ".points.corners";
    Point here = found.finding().at().orElse(Point.ORIGIN);
    record Found(String path, Point at, boolean bare) {}
    List<Found> corners = new ArrayList<>();
    for (int i = 0; i < found.figures().count(list); i++) {
      String path = list + "[" + i + "]";
      boolean bare = found.figures().figure(path + "[0]").isPresent();
      String at = bare ? path : path + ".at";
      Optional<Double> x = found.figures().figure(at + "[0]");
      Optional<Double> y = found.figures().figure(at + "[1]");
      if (x.isPresent() && y.isPresent()) {
        corners.add(new Found(path, new Point(x.get(), y.get()), bare));
      }
    }
    corners.stream()
        .filter(f -> away(f.at(), here) <= NEAR)
        .min(Comparator.comparingDouble(f -> away(f.at(), here)))
        .ifPresent(
            f -> {
              if (!f.bare() && found.figures().figure(f.path() + ".radius").isPresent()) {
                found.add(f.path() + ".radius", 1, Gathered.FINE_GRAIN);
              } else {
                String at = Gathered.pair(f.at().x(), f.at().y());
                String to = "{at: " + at + ", radius: " + wanted + "}";
                found.add(
                    Knob.choice(
                        new ShapeChange(List.of(new Setting(f.path(), f.bare() ? at : "", to)))));
              }
            });
  }

  /** From a point that stands for its mirror image too. */
  private static double away(Point p, Point here) {
    return Math.min(p.distance(here), new Point(-p.x(), p.y()).distance(here));
  }
}
