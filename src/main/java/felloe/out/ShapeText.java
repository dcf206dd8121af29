package felloe.out;

import felloe.bringin.Form;
import felloe.bringin.PlateOutline;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.HubPattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes a shape file for an outline that was brought in, to be edited like any other. */
public final class ShapeText {

  private static final int DECIMALS = 6;

  /** Path data is broken into lines of about this length. */
  private static final int LINE = 96;

  /** Figures nearer than this are the same as a hub's, mm; directions, radians. */
  private static final double SAME = 0.02;

  /** What the digits of an exact drawing leave open, mm: no more of it is rounded. */
  private static final double DIGITS = 2e-4;

  /** The same where circles are found from their chords, mm: so well that a hole keeps its size. */
  private static final double FOUND = 2e-3;

  private static final double SAME_DIRECTION = Math.toRadians(0.05);

  private final StringBuilder text = new StringBuilder();
  private final PlateOutline plate;
  private final List<HubPattern> hubs;
  private final double within;
  private final double circles;
  private final double off;

  private ShapeText(PlateOutline plate, List<HubPattern> hubs, double within, double off) {
    this.plate = plate;
    this.hubs = hubs;
    this.within = within;
    boolean found = plate.fitted().stream().anyMatch(c -> c.asCircle().isPresent());
    this.circles = plate.unsure() > 0 ? plate.unsure() : found ? FOUND : DIGITS;
    this.off = off;
  }

  /**
   * What is said of the file.
   *
   * @param title on every page
   * @param source the file that it was read from
   * @param within how far figures may be moved to be round ones, mm
   * @param thickness of the part, mm, when it is known
   */
  public record Wish(String title, String source, double within, OptionalDouble thickness) {}

  /**
   * The text.
   *
   * @param hubs patterns that rings of holes are compared with
   * @param off how far the lines are from those of the source, mm
   */
  public static String of(PlateOutline plate, Wish wish, List<HubPattern> hubs, double off) {
    ShapeText shape = new ShapeText(plate, hubs, wish.within(), off);
    shape.head(wish.title(), wish.source());
    shape.outline();
    shape.windows();
    shape.rings();
    shape.holes();
    shape.stock(wish.thickness());
    return shape.text.toString();
  }

  private void head(String title, String source) {
    line("# Brought in from " + plain(source) + ".");
    line("# x runs to the driver's right, y up, from the hub axis, as the driver sees the wheel:");
    line("# the axis is " + plate.centre() + ".");
    plate.notes().forEach(note -> line("# " + plain(note)));
    line("# Lines and arcs here lie within " + Numbers.brief(off, 3) + " mm of the source.");
    line("# Measure what you cut by: docs/measuring.md.");
    line("felloe: 1");
    line("title: \"" + plain(title).replace("\\", "\\\\").replace("\"", "\\\"") + "\"");
  }

  /** Without what would break a line of the file. */
  private static String plain(String words) {
    return words.replaceAll("\\p{Cntrl}", " ");
  }

  /** How far figures of a line may be moved to be round ones, mm. */
  private double near(Contour contour) {
    return plate.fitted().contains(contour) ? within : DIGITS;
  }

  private void line(String words) {
    text.append(words).append('\n');
  }

  private static String n(double value) {
    String brief = Numbers.brief(value, DECIMALS);
    return brief.replace('\u2212', '-');
  }

  private static String point(Point p) {
    return "[" + n(p.x()) + ", " + n(p.y()) + "]";
  }

  private void outline() {
    line("");
    line("outline:");
    Form form = Form.of(plate.outline(), near(plate.outline()));
    if (form instanceof Form.Round round && round.centre().norm() <= circles) {
      line("  round: {diameter: " + n(round.diameter()) + "}");
    } else if (form instanceof Form.Flats flats) {
      line("  round:");
      line("    diameter: " + n(flats.diameter()));
      flats.top().ifPresent(flat -> flat("top", flat));
      flats.bottom().ifPresent(flat -> flat("bottom", flat));
    } else if (form instanceof Form.Rectangle r) {
      line("  four_sided: " + fourSided(r));
    } else if (form instanceof Form.Corners corners) {
      corners("  ", corners);
    } else {
      path("  ", plate.outline());
    }
  }

  private void flat(String name, Form.Flat flat) {
    line("    " + name + ": {distance: " + n(flat.distance()) + radius(flat.radius()) + "}");
  }

  private static String radius(double radius) {
    return radius > 0 ? ", radius: " + n(radius) : "";
  }

  private String fourSided(Form.Rectangle r) {
    String centre = r.centre().norm() <= SAME ? "" : ", centre: " + point(r.centre());
    return "{width: "
        + n(r.width())
        + ", height: "
        + n(r.height())
        + radius(r.radius())
        + centre
        + "}";
  }

  private void corners(String indent, Form.Corners corners) {
    line(indent + "points:");
    if (corners.half()) {
      line(indent + "  half: true");
    }
    line(indent + "  corners:");
    for (int i = 0; i < corners.corners().size(); i++) {
      String at = point(corners.corners().get(i));
      double radius = corners.radii().get(i);
      line(indent + "    - " + (radius > 0 ? "{at: " + at + radius(radius) + "}" : at));
    }
  }

  /** Path data, y downward, folded into lines. */
  private void path(String indent, Contour contour) {
    line(indent + "path: >-");
    String data = SvgPath.of(contour.segments(), true);
    StringBuilder row = new StringBuilder();
    for (String step : data.split("(?=[MLAZ])")) {
      if (row.length() > 0 && row.length() + step.length() > LINE) {
        line(indent + "  " + row.toString().strip());
        row.setLength(0);
      }
      row.append(step).append(' ');
    }
    line(indent + "  " + row.toString().strip());
  }

  private void windows() {
    if (plate.windows().isEmpty()) {
      return;
    }
    line("");
    line("# Say what each opening is for with use: grip, display, switch or open.");
    line("windows:");
    List<Contour> left = new ArrayList<>(plate.windows());
    while (!left.isEmpty()) {
      Contour window = left.remove(0);
      Optional<Contour> image = image(window, left);
      image.ifPresent(left::remove);
      Contour right = image.filter(i -> i.box().centre().x() > 0).orElse(window);
      window(right, image.isPresent());
    }
  }

  private Optional<Contour> image(Contour window, List<Contour> others) {
    double near = near(window);
    Contour mirrored = window.moved(RigidTransform.MIRROR);
    return others.stream()
        .filter(other -> other.box().centre().near(mirrored.box().centre(), near))
        .filter(other -> Math.abs(other.area() - mirrored.area()) <= near * other.length())
        .filter(other -> other.apart(mirrored) <= near)
        .findFirst();
  }

  private void window(Contour window, boolean mirrored) {
    Form form = Form.of(window, near(window));
    String end = (mirrored ? ", mirror: true" : "") + "}";
    if (form instanceof Form.Round round) {
      line(
          "  - {circle: {diameter: "
              + n(round.diameter())
              + "}, at: "
              + point(round.centre())
              + end);
    } else if (form instanceof Form.Slot slot) {
      line(
          "  - {slot: {length: "
              + n(slot.length())
              + ", width: "
              + n(slot.width())
              + "}, at: "
              + point(slot.centre())
              + ", turn: "
              + n(Math.toDegrees(slot.turn()))
              + end);
    } else if (form instanceof Form.Rectangle r) {
      line(
          "  - {rectangle: {width: "
              + n(r.width())
              + ", height: "
              + n(r.height())
              + radius(r.radius())
              + "}, at: "
              + point(r.centre())
              + end);
    } else if (form instanceof Form.Corners corners) {
      line("  -");
      corners("    ", corners);
      mirror(mirrored);
    } else {
      line("  -");
      path("    ", window);
      mirror(mirrored);
    }
  }

  private void mirror(boolean mirrored) {
    if (mirrored) {
      line("    mirror: true");
    }
  }

  private void rings() {
    if (plate.rings().isEmpty()) {
      line("");
      line("# It has no ring of hub holes; this one is a place to start: name your hub");
      line("# ('felloe hub list'), or measure its pattern ('felloe hub measure').");
      line("# bolt_circles:");
      line("#   - {hub: 6x70-m5}");
    } else {
      line("");
      line(
          "# Measure your hub before you drill: screws that do not meet their holes cost a plate.");
      line("bolt_circles:");
      for (PlateOutline.Ring ring : plate.rings()) {
        ring(ring);
      }
    }
    plate
        .bore()
        .ifPresent(
            bore -> {
              line("");
              line("bore: " + n(rounded(2 * bore.radius())));
            });
  }

  private double rounded(double value) {
    double tenth = Math.rint(value * 10) / 10;
    return Math.abs(tenth - value) <= circles ? tenth : value;
  }

  private void ring(PlateOutline.Ring ring) {
    double first = Math.toDegrees(ring.first());
    double whole = Math.rint(first);
    double reach = ring.pitchDiameter() / 2;
    double angle = Math.toRadians(Math.abs(first - whole)) * reach <= circles ? whole : first;
    double diameter = rounded(ring.diameter());
    String from = "first: " + n(angle < 0 ? angle + 360 : angle);
    Optional<HubPattern> hub =
        hubs.stream()
            .filter(
                h ->
                    h.count() == ring.count()
                        && Math.abs(h.pitchDiameter() - ring.pitchDiameter()) <= SAME + circles)
            .findFirst();
    if (hub.isPresent()) {
      boolean own = Math.abs(hub.get().holeDiameter() - diameter) > SAME;
      double step = 2 * Math.PI / ring.count();
      double turn = (hub.get().firstAngle() - ring.first()) / step;
      boolean turned = Math.abs(turn - Math.rint(turn)) * step > SAME_DIRECTION;
      line("  # its count and circle are those of the hub " + hub.get().name() + ": is it yours?");
      line(
          "  - {hub: "
              + hub.get().name()
              + (own ? ", diameter: " + n(diameter) : "")
              + (turned ? ", " + from : "")
              + "}");
    } else {
      line(
          "  - {count: "
              + ring.count()
              + ", pcd: "
              + n(rounded(ring.pitchDiameter()))
              + ", diameter: "
              + n(diameter)
              + ", "
              + from
              + "}");
    }
  }

  private void holes() {
    if (plate.holes().isEmpty()) {
      return;
    }
    line("");
    if (plate.holes().stream().noneMatch(PlateOutline.Drilled::grip)) {
      line("# Say which are for grips with role: grip.");
    }
    line("holes:");
    List<PlateOutline.Drilled> left = new ArrayList<>(plate.holes());
    while (!left.isEmpty()) {
      PlateOutline.Drilled first = left.get(0);
      double diameter = rounded(first.diameter());
      List<PlateOutline.Drilled> equal =
          left.stream()
              .filter(h -> rounded(h.diameter()) == diameter && h.grip() == first.grip())
              .toList();
      left.removeAll(equal);
      places(equal, n(diameter) + (first.grip() ? ", role: grip" : ""));
    }
  }

  private void places(List<PlateOutline.Drilled> equal, String what) {
    List<Point> alone = new ArrayList<>();
    List<Point> paired = new ArrayList<>();
    List<Point> left = new ArrayList<>();
    equal.forEach(hole -> left.add(Form.eased(hole.centre(), circles)));
    while (!left.isEmpty()) {
      Point at = left.remove(0);
      Point other = new Point(-at.x(), at.y());
      Optional<Point> image =
          left.stream()
              .filter(p -> p.near(other, circles) && Math.abs(p.x()) > circles)
              .findFirst();
      image.ifPresent(left::remove);
      (image.isPresent() ? paired : alone).add(image.isPresent() && at.x() < 0 ? image.get() : at);
    }
    entry(paired, what, true);
    entry(alone, what, false);
  }

  private void entry(List<Point> places, String what, boolean mirrored) {
    if (!places.isEmpty()) {
      String all = String.join(", ", places.stream().map(ShapeText::point).toList());
      String where = places.size() == 1 ? "at: " + all : "places: [" + all + "]";
      line("  - {diameter: " + what + ", " + where + (mirrored ? ", mirror: true" : "") + "}");
    }
  }

  private void stock(OptionalDouble thickness) {
    line("");
    line(
        thickness.isPresent()
            ? "# A photo does not tell the stock: plywood stands for it. Write down yours."
            : "# A drawing does not tell the stock: this is plywood for a mock-up. Write down"
                + " yours.");
    line("stock:");
    line("  material: birch-plywood");
    line("  thickness: " + n(thickness.orElse(9)));
  }
}
