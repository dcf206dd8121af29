package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the families of closed shapes: one key names the family, the group behind it has its
 * parameters. What cannot be made is reported at the parameter that is to blame.
 */
final class FamilyReader {

  /** Families that an outline may be. */
  static final List<String> OUTLINES = List.of("round", "four_sided", "points", "path");

  /** Families that a window may be, beside derived ones. */
  static final List<String> WINDOWS =
      List.of("round", "four_sided", "points", "path", "slot", "circle", "rectangle");

  private final GeometryProblems reports;
  private final double tolerance;

  FamilyReader(GeometryProblems reports, double tolerance) {
    this.reports = reports;
    this.tolerance = tolerance;
  }

  /** The contours of the family behind a key, about the feature's own origin; none when wrong. */
  List<Contour> read(Fields feature, String family) {
    if (family.equals("path")) {
      return path(feature);
    }
    Fields f = feature.group(family);
    Optional<Family> shape =
        switch (family) {
          case "round" -> round(f);
          case "four_sided" -> fourSided(f);
          case "points" -> points(f);
          case "slot" -> slot(f);
          case "circle" -> circle(f);
          case "rectangle" -> rectangle(f);
          default -> throw new IllegalArgumentException("no family " + family);
        };
    return shape.flatMap(s -> reports.guard(f.path(), s::contour)).stream().toList();
  }

  private static Optional<Family> round(Fields f) {
    double diameter = f.length("diameter").positive().required();
    Optional<Optional<Round.Flat>> top = flat(f, "top");
    Optional<Optional<Round.Flat>> bottom = flat(f, "bottom");
    return f.build(() -> new Round(diameter, top.orElseThrow(), bottom.orElseThrow()));
  }

  /** Outer empty: wrong; inner empty: there is none. */
  private static Optional<Optional<Round.Flat>> flat(Fields f, String key) {
    if (!f.has(key)) {
      return Optional.of(Optional.empty());
    }
    Fields g = f.group(key);
    double distance = g.length("distance").positive().required();
    double radius = g.length("radius").notNegative().or(0);
    return g.build(() -> Optional.of(new Round.Flat(distance, radius)));
  }

  private static Optional<Family> fourSided(Fields f) {
    double width = f.length("width").positive().required();
    double height = f.length("height").positive().required();
    double radiusTop;
    double radiusBottom;
    if (f.entry("radius").kind() == Entry.Kind.MAPPING) {
      Fields radius = f.group("radius");
      radiusTop = radius.length("top").notNegative().or(0);
      radiusBottom = radius.length("bottom").notNegative().or(0);
    } else {
      radiusTop = f.length("radius").notNegative().or(0);
      radiusBottom = radiusTop;
    }
    Fields rise = f.group("rise");
    double top = rise.length("top").or(0);
    double bottom = rise.length("bottom").or(0);
    double left = rise.length("left").or(0);
    double right = rise.length("right").or(0);
    Point centre = f.point("centre").or(Point.ORIGIN);
    return f.build(
        () ->
            new FourSided(
                width,
                height,
                radiusTop,
                radiusBottom,
                new FourSided.Rise(top, bottom, left, right),
                centre));
  }

  private static Optional<Family> points(Fields f) {
    List<Points.Corner> corners = new ArrayList<>();
    for (Entry entry : f.list("corners").atLeast(2).atMost(Points.MOST).entries()) {
      corner(entry).ifPresent(corners::add);
    }
    boolean half = f.bool("half").or(false);
    double startRise = f.length("start_rise").or(0);
    return f.build(() -> new Points(corners, half, startRise));
  }

  /** A corner is a bare point {@code [x, y]}, or a group with its radius and rise. */
  private static Optional<Points.Corner> corner(Entry entry) {
    if (entry.kind() == Entry.Kind.LIST) {
      return entry.point().optional().map(at -> new Points.Corner(at, 0, 0));
    }
    if (entry.kind() == Entry.Kind.SCALAR) {
      entry.problem("must be a corner: [x, y], or a group such as {at: [x, y], radius: 10}", "");
      return Optional.empty();
    }
    Fields f = entry.mapping().required();
    Point at = f.point("at").required();
    double radius = f.length("radius").notNegative().or(0);
    double rise = f.length("rise").or(0);
    return f.build(() -> new Points.Corner(at, radius, rise));
  }

  private static Optional<Family> slot(Fields f) {
    double length = f.length("length").positive().required();
    double width = f.length("width").positive().required();
    return f.build(() -> new Slot(length, width, 0));
  }

  private static Optional<Family> circle(Fields f) {
    double diameter = f.length("diameter").positive().required();
    return f.build(() -> Round.circle(diameter));
  }

  private static Optional<Family> rectangle(Fields f) {
    double width = f.length("width").positive().required();
    double height = f.length("height").positive().required();
    double radius = f.length("radius").notNegative().or(0);
    return f.build(() -> FourSided.rectangle(width, height, radius));
  }

  private List<Contour> path(Fields feature) {
    Optional<String> data = feature.longText("path").optional();
    Optional<PathData> path =
        data.flatMap(
            text ->
                reports.guard(feature.entry("path").path(), () -> PathData.read(text, tolerance)));
    return path.map(PathData::contours).orElse(List.of());
  }
}
