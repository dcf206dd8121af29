package felloe.cure;

import felloe.cure.ShapeChange.Setting;
import felloe.geometry.Point;
import felloe.joints.JointPlan;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Which figures of a shape file may mend a finding, the likeliest first. */
final class Knobs {

  /** Rules whose findings a figure of the shape's geometry may mend. */
  private static final Set<String> ROOM =
      Set.of(
          "clear-openings",
          "narrowest-web",
          "edge-distance",
          "hole-pitch",
          "head-clearance",
          "head-spacing");

  private static final double LENGTH_GRAIN = 0.5;
  private static final double FINE_GRAIN = 0.1;
  private static final double SHEET_GRAIN = 5;

  /** A corner of the outline or of a window is the one that lies no farther from a finding, mm. */
  private static final double NEAR = 30;

  /** A window, a hole or a row of holes, and where it is written. */
  private record Feature(String path, Point middle, boolean mirrored, Optional<Hole> hole) {}

  private final Finding finding;
  private final JointPlan joints;
  private final Plate plate;
  private final ShapeFigures figures;
  private final List<Knob> knobs = new ArrayList<>();

  private Knobs(Finding finding, Plate plate, JointPlan joints, ShapeFigures figures) {
    this.finding = finding;
    this.joints = joints;
    this.plate = plate;
    this.figures = figures;
  }

  /** Whether one figure may mend a finding. */
  static boolean suit(Finding finding) {
    return ROOM.contains(finding.rule())
        || switch (finding.rule()) {
          case "inside-corner",
              "outer-corner",
              "finger-depth",
              "finger-length",
              "grip-girth-least",
              "grip-girth-most",
              "sheet-fit" ->
              true;
          default -> JointKnobs.suit(finding);
        };
  }

  /** The figures that may mend a finding. */
  static List<Knob> of(Finding finding, Plate plate, JointPlan joints, ShapeFigures figures) {
    Knobs knobs = new Knobs(finding, plate, joints, figures);
    knobs.fill();
    return List.copyOf(knobs.knobs);
  }

  private void fill() {
    switch (finding.rule()) {
      case "sheet-fit" -> sheet();
      case "inside-corner", "outer-corner" -> corners();
      case "finger-depth", "finger-length" -> fingers();
      case "grip-girth-least", "grip-girth-most" -> girth();
      default -> {
        if (JointKnobs.suit(finding)) {
          knobs.addAll(JointKnobs.of(finding, joints, figures));
        }
        if (ROOM.contains(finding.rule())) {
          room();
        }
      }
    }
  }

  private void add(String path, double slope, double grain) {
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

  private void below(Feature feature, String key, double slope) {
    figures.below(feature.path(), key).forEach(path -> add(path, slope, LENGTH_GRAIN));
  }

  private List<Feature> named() {
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

  private String at(Hole hole) {
    return figures.item(hole.place()).orElse("");
  }

  private boolean isNamed(String label) {
    return (" " + finding.subject().replace(",", " ,") + " ").contains(" " + label + " ");
  }

  private boolean besideOutline() {
    return isNamed("outline");
  }

  /** What lies too near something else: what is moved first, what is made smaller then. */
  private void room() {
    List<Feature> features = named();
    boolean ratio = finding.figure().unit().equals("D");
    double unit = ratio ? diameter(features) : 1;
    for (Feature one : features) {
      if (one.hole().filter(h -> h.role() != HoleRole.BORE).isPresent()) {
        below(one, "inset", besideOutline() ? unit : -unit);
        move(one, unit);
      }
    }
    for (Feature one : features) {
      if (one.hole().isEmpty()) {
        if (!takesSwitch(one)) {
          size(one, -2 * unit);
        }
        move(one, unit);
        figures
            .below(one.path(), besideOutline() ? "rim_width" : "hub_disc")
            .forEach(p -> add(p, (besideOutline() ? 1 : 2) * unit, LENGTH_GRAIN));
      } else if (one.path().equals("bore")) {
        add(figures.figure("bore").isPresent() ? "bore" : "bore.diameter", -2 * unit, LENGTH_GRAIN);
      } else {
        double now = one.hole().get().diameter();
        double limit = finding.limit().orElseThrow().value();
        add(one.path() + ".diameter", ratio ? -now / limit : -2, FINE_GRAIN);
        fewer(one, ratio);
      }
    }
    if (besideOutline()) {
      outline(2 * unit);
    }
  }

  /** Whether a window is as large as the switch that is bought for it. */
  private boolean takesSwitch(Feature one) {
    return plate.windows().stream()
        .filter(window -> window.use() == WindowUse.SWITCH)
        .anyMatch(window -> figures.item(window.place()).filter(one.path()::equals).isPresent());
  }

  /** The diameter that a ratio is of: of the one screw hole, or of the larger of two. */
  private static double diameter(List<Feature> features) {
    return features.stream()
        .flatMap(f -> f.hole().stream())
        .filter(h -> h.role() != HoleRole.BORE)
        .mapToDouble(Hole::diameter)
        .max()
        .orElse(1);
  }

  /** Away from where it is too near. */
  private void move(Feature one, double slope) {
    String path = one.path() + ".at";
    Optional<Double> x = figures.figure(path + "[0]");
    Optional<Double> y = figures.figure(path + "[1]");
    Point near = nearest(one);
    if (x.isEmpty() || y.isEmpty() || near.near(one.middle(), NO_WAY)) {
      return;
    }
    Point drawn = one.middle().minus(near).unit();
    Point away = one.mirrored() ? new Point(-drawn.x(), drawn.y()) : drawn;
    knobs.add(
        new Knob(
            path,
            0,
            OptionalDouble.of(slope),
            LENGTH_GRAIN,
            by ->
                Optional.of(
                    ShapeChange.of(
                        path,
                        pair(x.get(), y.get()),
                        pair(x.get() + by * away.x(), y.get() + by * away.y())))));
  }

  /** Nearer than this there is no way to move, mm. */
  private static final double NO_WAY = 0.01;

  /** The point that a feature is too near to. */
  private Point nearest(Feature one) {
    if (besideOutline()) {
      return plate.outline().nearest(one.middle());
    }
    return plate.windows().stream()
        .filter(w -> isNamed(w.label()) && !w.contour().contains(one.middle()))
        .map(w -> w.contour().nearest(one.middle()))
        .findFirst()
        .or(
            () ->
                plate.holes().stream()
                    .filter(h -> isNamed(h.label()) && !h.centre().equals(one.middle()))
                    .map(Hole::centre)
                    .findFirst())
        .orElse(one.middle());
  }

  private static String pair(double x, double y) {
    return "[" + hundredth(x) + ", " + hundredth(y) + "]";
  }

  private static String hundredth(double figure) {
    return ShapeFigures.brief(Math.rint(figure * 100) / 100);
  }

  /** The sides of a window, the one first that lies along the way to where it is too near. */
  private void size(Feature one, double slope) {
    Point way = finding.at().orElse(one.middle()).minus(one.middle());
    boolean wide = Math.abs(way.x()) >= Math.abs(way.y());
    below(one, wide ? "width" : "height", slope);
    below(one, wide ? "height" : "width", slope);
    below(one, "diameter", slope);
  }

  /** Fewer holes in a row stand farther apart: the less, the more gaps there are. */
  private void fewer(Feature one, boolean ratio) {
    List<Hole> both = plate.holes().stream().filter(h -> isNamed(h.label())).toList();
    if (both.size() != 2 || !both.stream().allMatch(h -> at(h).equals(one.path()))) {
      return;
    }
    double pitch = both.get(0).centre().distance(both.get(1).centre());
    double lacks = finding.limit().orElseThrow().value() - finding.figure().value();
    double wanted = ratio ? finding.limit().orElseThrow().value() : pitch + lacks;
    for (String path : figures.below(one.path(), "count")) {
      if (!path.startsWith("bolt_circles")) {
        add(path, -(figures.figure(path).orElseThrow() - 1) / wanted, 1);
      }
    }
  }

  private void outline(double slope) {
    add("outline.round.diameter", slope, LENGTH_GRAIN);
    add("outline.four_sided.width", slope, LENGTH_GRAIN);
    add("outline.four_sided.height", slope, LENGTH_GRAIN);
  }

  private void fingers() {
    boolean depth = finding.rule().equals("finger-depth");
    for (Feature one : named()) {
      boolean beside = Math.abs(one.middle().x()) >= Math.abs(one.middle().y());
      boolean first = depth == beside;
      below(one, first ? "width" : "height", 1);
      below(one, first ? "height" : "width", 1);
      below(one, "diameter", 1);
      below(one, "length", 1);
      for (String key : depth ? List.of("hub_disc", "rim_width") : List.of("rim_width")) {
        figures.figure(one.path() + ".derived." + key).ifPresent(now -> derived(one, key));
      }
      if (!figures.below(one.path(), "hub_disc").isEmpty()) {
        outline(1);
      }
    }
  }

  private void derived(Feature one, String key) {
    add(one.path() + ".derived." + key, key.equals("hub_disc") ? -2 : -1, LENGTH_GRAIN);
  }

  private void girth() {
    // Once round gains twice what the rim gains, and twice what the two scales gain together.
    double scale = plate.making().gripScale();
    knobs.add(
        new Knob(
            "making.grip_scale",
            scale,
            OptionalDouble.of(0.25),
            LENGTH_GRAIN,
            to ->
                to < 0
                    ? Optional.empty()
                    : Optional.of(
                        ShapeChange.of(
                            "making.grip_scale",
                            ShapeFigures.brief(scale),
                            ShapeFigures.brief(to)))));
    for (Feature one : named()) {
      figures
          .figure(one.path() + ".derived.rim_width")
          .ifPresent(now -> add(one.path() + ".derived.rim_width", 0.5, LENGTH_GRAIN));
      size(one, -1);
      below(one, "radius", 1);
    }
  }

  private void corners() {
    String wanted = ShapeFigures.brief(finding.limit().orElseThrow().value());
    List<String> tops = new ArrayList<>(named().stream().map(Feature::path).toList());
    if (besideOutline() || isNamed("outline")) {
      tops.add("outline");
    }
    for (String top : tops) {
      if (finding.rule().equals("inside-corner") || top.equals("outline")) {
        for (String path : figures.below(top, "radius")) {
          if (!path.contains(".corners[")) {
            add(path, 1, FINE_GRAIN);
          }
        }
      }
      corner(top, wanted);
    }
    if (finding.rule().equals("inside-corner") && finding.figure().value() > 0) {
      // The limit goes with the cutter.
      double now = plate.making().cutterDiameter();
      double share = finding.figure().value() / finding.limit().orElseThrow().value();
      double to = Math.floor(share * now / LENGTH_GRAIN) * LENGTH_GRAIN;
      if (to >= 1 && to < now) {
        knobs.add(
            Knob.choice(
                ShapeChange.of("making.cutter", ShapeFigures.brief(now), ShapeFigures.brief(to))));
      }
    }
  }

  /** The corner of a chain of points that lies where the finding is. */
  private void corner(String top, String wanted) {
    String list = top + ".points.corners";
    Point here = finding.at().orElse(Point.ORIGIN);
    record Found(String path, Point at, boolean bare) {}
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < figures.count(list); i++) {
      String path = list + "[" + i + "]";
      boolean bare = figures.figure(path + "[0]").isPresent();
      String at = bare ? path : path + ".at";
      Optional<Double> x = figures.figure(at + "[0]");
      Optional<Double> y = figures.figure(at + "[1]");
      if (x.isPresent() && y.isPresent()) {
        found.add(new Found(path, new Point(x.get(), y.get()), bare));
      }
    }
    found.stream()
        .filter(f -> away(f.at(), here) <= NEAR)
        .min(Comparator.comparingDouble(f -> away(f.at(), here)))
        .ifPresent(
            f -> {
              if (!f.bare() && figures.figure(f.path() + ".radius").isPresent()) {
                add(f.path() + ".radius", 1, FINE_GRAIN);
              } else {
                String at = pair(f.at().x(), f.at().y());
                String to = "{at: " + at + ", radius: " + wanted + "}";
                knobs.add(
                    Knob.choice(
                        new ShapeChange(List.of(new Setting(f.path(), f.bare() ? at : "", to)))));
              }
            });
  }

  /** From a point that stands for its mirror image too. */
  private static double away(Point p, Point here) {
    return Math.min(p.distance(here), new Point(-p.x(), p.y()).distance(here));
  }

  private void sheet() {
    List<String> both = List.of("stock.sheet.width", "stock.sheet.height");
    if (both.stream().allMatch(p -> figures.figure(p).isPresent())) {
      knobs.add(
          new Knob(
              String.join(" and ", both),
              0,
              OptionalDouble.of(2),
              SHEET_GRAIN,
              by -> Optional.of(figures.changes(both, by))));
    }
  }
}
