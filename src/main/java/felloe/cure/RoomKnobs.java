package felloe.cure;

import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.WindowUse;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Which figures move or shrink what lies too near something else. */
final class RoomKnobs {

  /** Nearer than this there is no way to move, mm. */
  private static final double NO_WAY = 0.01;

  private final Gathered found;

  private RoomKnobs(Gathered found) {
    this.found = found;
  }

  /** Adds them. */
  static void into(Gathered found) {
    new RoomKnobs(found).fill();
  }

  /** What lies too near something else: what is moved first, what is made smaller then. */
  private void fill() {
    List<Gathered.Feature> features = found.named();
    boolean ratio = found.finding().figure().unit().equals("D");
    double unit = ratio ? diameter(features) : 1;
    for (Gathered.Feature one : features) {
      if (one.hole().filter(h -> h.role() != HoleRole.BORE).isPresent()) {
        found.below(one, "inset", found.besideOutline() ? unit : -unit);
        move(one, unit);
      }
    }
    for (Gathered.Feature one : features) {
      if (one.hole().isEmpty()) {
        if (!takesSwitch(one)) {
          found.size(one, -2 * unit);
        }
        move(one, unit);
        found
            .figures()
            .below(one.path(), found.besideOutline() ? "rim_width" : "hub_disc")
            .forEach(
                p -> found.add(p, (found.besideOutline() ? 1 : 2) * unit, Gathered.LENGTH_GRAIN));
      } else if (one.path().equals("bore")) {
        found.add(
            found.figures().figure("bore").isPresent() ? "bore" : "bore.diameter",
            -2 * unit,
            Gathered.LENGTH_GRAIN);
      } else {
        double now = one.hole().get().diameter();
        double limit = found.finding().limit().orElseThrow().value();
        found.add(one.path() + ".diameter", ratio ? -now / limit : -2, Gathered.FINE_GRAIN);
        fewer(one, ratio);
      }
    }
    if (found.besideOutline()) {
      found.outline(2 * unit);
    }
  }

  /** Whether a window is as large as the switch that is bought for it. */
  private boolean takesSwitch(Gathered.Feature one) {
    return found.plate().windows().stream()
        .filter(window -> window.use() == WindowUse.SWITCH)
        .anyMatch(
            window -> found.figures().item(window.place()).filter(one.path()::equals).isPresent());
  }

  /** The diameter that a ratio is of: of the one screw hole, or of the larger of two. */
  private static double diameter(List<Gathered.Feature> features) {
    return features.stream()
        .flatMap(f -> f.hole().stream())
        .filter(h -> h.role() != HoleRole.BORE)
        .mapToDouble(Hole::diameter)
        .max()
        .orElse(1);
  }

  /** Away from where it is too near. */
  private void move(Gathered.Feature one, double slope) {
    String path = one.path() + ".at";
    Optional<Double> x = found.figures().figure(path + "[0]");
    Optional<Double> y = found.figures().figure(path + "[1]");
    Point near = nearest(one);
    if (x.isEmpty() || y.isEmpty() || near.near(one.middle(), NO_WAY)) {
      return;
    }
    Point drawn = one.middle().minus(near).unit();
    Point away = one.mirrored() ? new Point(-drawn.x(), drawn.y()) : drawn;
    found.add(
        new Knob(
            path,
            0,
            OptionalDouble.of(slope),
            Gathered.LENGTH_GRAIN,
            by ->
                Optional.of(
                    ShapeChange.of(
                        path,
                        Gathered.pair(x.get(), y.get()),
                        Gathered.pair(x.get() + by * away.x(), y.get() + by * away.y())))));
  }

  /** The point that a feature is too near to. */
  private Point nearest(Gathered.Feature one) {
    if (found.besideOutline()) {
      return found.plate().outline().nearest(one.middle());
    }
    return found.plate().windows().stream()
        .filter(w -> found.isNamed(w.label()) && !w.contour().contains(one.middle()))
        .map(w -> w.contour().nearest(one.middle()))
        .findFirst()
        .or(
            () ->
                found.plate().holes().stream()
                    .filter(h -> found.isNamed(h.label()) && !h.centre().equals(one.middle()))
                    .map(Hole::centre)
                    .findFirst())
        .orElse(one.middle());
  }

  /** Fewer holes in a row stand farther apart: the less, the more gaps there are. */
  private void fewer(Gathered.Feature one, boolean ratio) {
    List<Hole> both = found.plate().holes().stream().filter(h -> found.isNamed(h.label())).toList();
    if (both.size() != 2 || !both.stream().allMatch(h -> found.at(h).equals(one.path()))) {
      return;
    }
    double pitch = both.get(0).centre().distance(both.get(1).centre());
    double lacks = found.finding().limit().orElseThrow().value() - found.finding().figure().value();
    double wanted = ratio ? found.finding().limit().orElseThrow().value() : pitch + lacks;
    for (String path : found.figures().below(one.path(), "count")) {
      if (!path.startsWith("bolt_circles")) {
        found.add(path, -(found.figures().figure(path).orElseThrow() - 1) / wanted, 1);
      }
    }
  }
}
