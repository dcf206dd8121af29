package felloe.out;

import felloe.bringin.Form;
import felloe.bringin.PlateOutline;
import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.HoleRole;
import felloe.plate.HubPattern;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Writes a shape file for an outline that was brought in, to be edited like any other. */
public final class ShapeText {

  private static final int DECIMALS = 6;

  /** The same of the program's own drawings, so that their figures come back. */
  private static final int OWN_DECIMALS = 8;

  /** Path data is broken into lines of about this length. */
  private static final int LINE = 96;

  /** Figures nearer than this are the same as a hub's, mm; directions, radians. */
  private static final double SAME = 0.02;

  /** The same where circles are found from their chords, mm: so well that a hole keeps its size. */
  private static final double FOUND = 2e-3;

  /** Lines that stand for a flat arc are this near to it, as a share of what is allowed. */
  private static final double FLAT_SHARE = 0.1;

  private static final double SAME_DIRECTION = Math.toRadians(0.05);

  private final StringBuilder text = new StringBuilder();
  private final PlateOutline plate;
  private final List<HubPattern> hubs;
  private final double within;
  private final double circles;
  private final double off;

  /** Whether the drawing is the program's own, which names its features. */
  private final boolean named;

  private final int decimals;

  private ShapeText(PlateOutline plate, List<HubPattern> hubs, double within, double off) {
    this.plate = plate;
    this.hubs = hubs;
    this.within = within;
    boolean found = plate.fitted().stream().anyMatch(c -> c.asCircle().isPresent());
    this.circles = plate.unsure() > 0 ? plate.unsure() : found ? FOUND : plate.digits();
    this.off = off;
    this.named = plate.named();
    this.decimals = named ? OWN_DECIMALS : DECIMALS;
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
    shape.features();
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
    return plate.fitted().contains(contour) ? within : plate.digits();
  }

  private void line(String words) {
    text.append(words).append('\n');
  }

  private String n(double value) {
    String brief = Numbers.brief(value, decimals);
    return brief.replace('\u2212', '-');
  }

  private String point(Point p) {
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
      corners("  ", corners).forEach(this::line);
    } else {
      path("  ", plate.outline()).forEach(this::line);
    }
  }

  private void flat(String name, Form.Flat flat) {
    line("    " + name + ": {distance: " + n(flat.distance()) + radius(flat.radius()) + "}");
  }

  private String radius(double radius) {
    return radius > 0 ? ", radius: " + n(radius) : "";
  }

  private String fourSided(Form.Rectangle r) {
    String centre =
        r.centre().norm() <= (named ? plate.digits() : SAME)
            ? ""
            : ", centre: " + point(r.centre());
    return "{width: "
        + n(r.width())
        + ", height: "
        + n(r.height())
        + radius(r.radius())
        + centre
        + "}";
  }

  private List<String> corners(String indent, Form.Corners corners) {
    List<String> lines = new ArrayList<>(List.of(indent + "points:"));
    if (corners.half()) {
      lines.add(indent + "  half: true");
    }
    lines.add(indent + "  corners:");
    for (int i = 0; i < corners.corners().size(); i++) {
      String at = point(corners.corners().get(i));
      double radius = corners.radii().get(i);
      lines.add(indent + "    - " + (radius > 0 ? "{at: " + at + radius(radius) + "}" : at));
    }
    return lines;
  }

  /** Path data, y downward, folded into lines. */
  private List<String> path(String indent, Contour contour) {
    List<String> lines = new ArrayList<>(List.of(indent + "path: >-"));
    List<Segment> written =
        contour.segments().stream().flatMap(segment -> written(segment).stream()).toList();
    String data = SvgPath.of(written, true, decimals);
    StringBuilder row = new StringBuilder();
    for (String step : data.split("(?=[MLAZ])")) {
      if (row.length() > 0 && row.length() + step.length() > LINE) {
        lines.add(indent + "  " + row.toString().strip());
        row.setLength(0);
      }
      row.append(step).append(' ');
    }
    lines.add(indent + "  " + row.toString().strip());
    return lines;
  }

  /** An arc so flat that a shape file has no radius for it is written as lines near it. */
  private List<Segment> written(Segment segment) {
    if (!(segment instanceof Arc arc) || arc.radius() <= Tolerances.LARGEST) {
      return List.of(segment);
    }
    double rise = arc.length() * arc.length() / (8 * arc.radius());
    int lines = Math.max(1, (int) Math.ceil(Math.sqrt(rise / (FLAT_SHARE * within))));
    List<Segment> all = new ArrayList<>();
    Point from = arc.from();
    for (int i = 1; i <= lines; i++) {
      Point to = i == lines ? arc.to() : arc.at((double) i / lines);
      all.add(new Line(from, to));
      from = to;
    }
    return all;
  }

  /** Windows, rings, the bore and holes, so that each gets the label that the drawing gives it. */
  private void features() {
    List<LabelledEntry> entries = new ArrayList<>(windows());
    plate.rings().forEach(ring -> entries.add(ring(ring)));
    plate.bore().ifPresent(bore -> entries.add(bore(bore)));
    entries.addAll(holes());
    List<LabelledEntry> all = LabelledEntry.settled(entries);
    boolean own = plate.windows().stream().anyMatch(window -> !window.label().isEmpty());
    String use =
        own ? "" : "# Say what each opening is for with use: grip, display, switch or open.";
    part(all, LabelledEntry.Part.WINDOWS, "windows:", use);
    if (!part(
        all,
        LabelledEntry.Part.RINGS,
        "bolt_circles:",
        "# Measure your hub before you drill: screws that do not meet their holes cost a plate.")) {
      line("");
      line("# It has no ring of hub holes; this one is a place to start: name your hub");
      line("# ('felloe hub list'), or measure its pattern ('felloe hub measure').");
      line("# bolt_circles:");
      line("#   - {hub: 6x70-m5}");
    }
    part(all, LabelledEntry.Part.BORE, "", "");
    boolean told =
        plate.holes().stream().anyMatch(h -> h.role() != HoleRole.OTHER || !h.label().isEmpty());
    String role = told ? "" : "# Say which are for grips with role: grip.";
    part(all, LabelledEntry.Part.HOLES, "holes:", role);
  }

  /**
   * Writes a part of the file.
   *
   * @param remark before it; nothing when empty
   * @return whether there is any
   */
  private boolean part(
      List<LabelledEntry> all, LabelledEntry.Part part, String key, String remark) {
    List<LabelledEntry> own = all.stream().filter(entry -> entry.part() == part).toList();
    if (!own.isEmpty()) {
      line("");
      Stream.of(remark, key).filter(words -> !words.isEmpty()).forEach(this::line);
      own.forEach(entry -> entry.written().forEach(this::line));
    }
    return !own.isEmpty();
  }

  private List<LabelledEntry> windows() {
    List<LabelledEntry> entries = new ArrayList<>();
    List<PlateOutline.Opening> left = new ArrayList<>(plate.windows());
    while (!left.isEmpty()) {
      PlateOutline.Opening window = left.remove(0);
      Optional<PlateOutline.Opening> image = image(window, left);
      image.ifPresent(left::remove);
      // Labels tell which of a pair came first; without any, the right one is written.
      boolean other =
          window.label().isEmpty()
              && image.filter(i -> i.contour().box().centre().x() > 0).isPresent();
      entries.add(other ? window(image.get(), image) : window(window, image));
    }
    return entries;
  }

  private LabelledEntry window(PlateOutline.Opening window, Optional<PlateOutline.Opening> image) {
    if (image.isEmpty()) {
      return LabelledEntry.single(
          LabelledEntry.Part.WINDOWS,
          Optional.empty(),
          window.label(),
          label -> lines(window, label, false));
    }
    return LabelledEntry.of(
        LabelledEntry.Part.WINDOWS,
        Optional.empty(),
        List.of(window.label(), image.get().label()),
        label -> lines(window, label, true),
        () -> List.of(window(window, Optional.empty()), window(image.get(), Optional.empty())));
  }

  private Optional<PlateOutline.Opening> image(
      PlateOutline.Opening window, List<PlateOutline.Opening> others) {
    double near = near(window.contour());
    Contour mirrored = window.contour().moved(RigidTransform.MIRROR);
    boolean named = !window.label().isEmpty();
    return others.stream()
        .filter(other -> other.use() == window.use() && !other.label().isEmpty() == named)
        .filter(other -> other.contour().box().centre().near(mirrored.box().centre(), near))
        .filter(
            other ->
                Math.abs(other.contour().area() - mirrored.area())
                    <= near * other.contour().length())
        .filter(other -> other.contour().apart(mirrored) <= near)
        .findFirst();
  }

  private List<String> lines(PlateOutline.Opening opening, String label, boolean mirrored) {
    Contour window = opening.contour();
    Form form = Form.of(window, near(window));
    List<String> words = new ArrayList<>();
    if (!label.isEmpty()) {
      words.add(label);
    }
    if (opening.use() != WindowUse.OPEN) {
      words.add("use: " + opening.use().name().toLowerCase(Locale.ROOT));
    }
    Optional<String> flow = flow(form);
    if (flow.isPresent()) {
      words.add(flow.get());
      words.addAll(mirrored ? List.of("mirror: true") : List.of());
      return List.of("  - {" + String.join(", ", words) + "}");
    }
    List<String> lines = new ArrayList<>(List.of("  -"));
    words.forEach(word -> lines.add("    " + word));
    lines.addAll(
        form instanceof Form.Corners corners ? corners("    ", corners) : path("    ", window));
    lines.addAll(mirrored ? List.of("    mirror: true") : List.of());
    return lines;
  }

  /** What fits on one line. */
  private Optional<String> flow(Form form) {
    if (form instanceof Form.Round round) {
      return Optional.of(
          "circle: {diameter: " + n(round.diameter()) + "}, at: " + point(round.centre()));
    } else if (form instanceof Form.Slot slot) {
      return Optional.of(
          "slot: {length: "
              + n(slot.length())
              + ", width: "
              + n(slot.width())
              + "}, at: "
              + point(slot.centre())
              + ", turn: "
              + n(Math.toDegrees(slot.turn())));
    } else if (form instanceof Form.Rectangle r) {
      return Optional.of(
          "rectangle: {width: "
              + n(r.width())
              + ", height: "
              + n(r.height())
              + radius(r.radius())
              + "}, at: "
              + point(r.centre()));
    }
    return Optional.empty();
  }

  private LabelledEntry bore(PlateOutline.Drilled bore) {
    return LabelledEntry.single(
        LabelledEntry.Part.BORE,
        Optional.of(HoleRole.BORE),
        bore.label(),
        label -> {
          String diameter = n(rounded(bore.diameter()));
          List<String> more = new ArrayList<>();
          if (bore.centre().norm() > circles) {
            more.add("at: " + point(Form.eased(bore.centre(), circles)));
          }
          if (!label.isEmpty()) {
            more.add(label);
          }
          return List.of(
              more.isEmpty()
                  ? "bore: " + diameter
                  : "bore: {diameter: " + diameter + ", " + String.join(", ", more) + "}");
        });
  }

  private double rounded(double value) {
    double tenth = Math.rint(value * 10) / 10;
    return Math.abs(tenth - value) <= circles ? tenth : value;
  }

  private LabelledEntry ring(PlateOutline.Ring ring) {
    List<String> labels =
        ring.labels().isEmpty() ? Collections.nCopies(ring.count(), "") : ring.labels();
    return LabelledEntry.of(
        LabelledEntry.Part.RINGS,
        Optional.of(HoleRole.BOLT),
        labels,
        label -> lines(ring, label),
        () -> HoleEntries.of(ring).stream().map(hole -> entry(List.of(hole), false)).toList());
  }

  private List<String> lines(PlateOutline.Ring ring, String label) {
    double first = Math.toDegrees(ring.first());
    double whole = Math.rint(first);
    double reach = ring.pitchDiameter() / 2;
    double angle = Math.toRadians(Math.abs(first - whole)) * reach <= circles ? whole : first;
    double diameter = rounded(ring.diameter());
    double pcd = rounded(ring.pitchDiameter());
    List<String> words = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    ToDoubleFunction<HubPattern> off = h -> Math.abs(h.pitchDiameter() - ring.pitchDiameter());
    List<HubPattern> alike =
        hubs.stream()
            .filter(h -> h.count() == ring.count() && off.applyAsDouble(h) <= SAME + circles)
            .sorted(Comparator.comparingDouble(off))
            .toList();
    Optional<HubPattern> hub = alike.stream().findFirst();
    boolean turned = true;
    if (hub.isPresent()) {
      double step = 2 * Math.PI / ring.count();
      double turn = (hub.get().firstAngle() - ring.first()) / step;
      double aside = Math.abs(turn - (named ? 0 : Math.rint(turn))) * step;
      turned = aside > (named ? circles / reach : SAME_DIRECTION);
      lines.add(
          alike.size() == 1
              ? "  # its count and circle are those of the hub "
                  + hub.get().name()
                  + ": is it yours?"
              : "  # its count and circle are those of the hubs "
                  + String.join(", ", alike.stream().map(HubPattern::name).toList())
                  + ": which one is yours?");
      words.add("hub: " + hub.get().name());
      if (Math.abs(hub.get().pitchDiameter() - pcd) > (named ? circles : SAME + circles)) {
        words.add("pcd: " + n(pcd));
      }
      if (Math.abs(hub.get().holeDiameter() - diameter) > (named ? circles : SAME)) {
        words.add("diameter: " + n(diameter));
      }
    } else {
      words.add("count: " + ring.count());
      words.add("pcd: " + n(pcd));
      words.add("diameter: " + n(diameter));
    }
    if (turned) {
      words.add("first: " + n(angle < 0 ? angle + 360 : angle));
    }
    if (!label.isEmpty()) {
      words.add(label);
    }
    if (!ring.slots().isEmpty()) {
      words.add(
          "slots: [" + String.join(", ", ring.slots().stream().map(this::slot).toList()) + "]");
    }
    lines.add("  - {" + String.join(", ", words) + "}");
    return lines;
  }

  private String slot(PlateOutline.Slotted slot) {
    return "{length: "
        + n(slot.length())
        + (slot.oneWay() ? ", toward: " : ", turn: ")
        + n(Math.toDegrees(slot.direction()))
        + ", holes: ["
        + slot.number()
        + "]}";
  }

  private List<LabelledEntry> holes() {
    HoleEntries rows = new HoleEntries(this::rounded, circles);
    return rows.of(plate.holes()).stream().map(row -> entry(row.holes(), row.mirrored())).toList();
  }

  /**
   * An entry of equal holes.
   *
   * @param holes those that are written, and their images behind them
   * @param mirrored whether the second half are images of the first
   */
  private LabelledEntry entry(List<PlateOutline.Drilled> holes, boolean mirrored) {
    PlateOutline.Drilled first = holes.get(0);
    List<PlateOutline.Drilled> written = mirrored ? holes.subList(0, holes.size() / 2) : holes;
    List<String> labels = holes.stream().map(PlateOutline.Drilled::label).toList();
    return LabelledEntry.of(
        LabelledEntry.Part.HOLES,
        Optional.of(first.role()),
        labels,
        label -> List.of(line(written, label, mirrored)),
        () ->
            holes.size() == 1
                ? List.of()
                : holes.stream().map(hole -> entry(List.of(hole), false)).toList());
  }

  private String line(List<PlateOutline.Drilled> written, String label, boolean mirrored) {
    PlateOutline.Drilled first = written.get(0);
    List<String> words = new ArrayList<>(List.of("diameter: " + n(rounded(first.diameter()))));
    if (first.role() != HoleRole.OTHER) {
      words.add("role: " + first.role().name().toLowerCase(Locale.ROOT));
    }
    if (!label.isEmpty()) {
      words.add(label);
    }
    List<String> points =
        written.stream().map(hole -> point(Form.eased(hole.centre(), circles))).toList();
    words.add(
        points.size() == 1
            ? "at: " + points.get(0)
            : "places: [" + String.join(", ", points) + "]");
    first
        .slot()
        .ifPresent(
            slot ->
                words.add(
                    "slot: {length: "
                        + n(rounded(first.diameter() + slot.travel()))
                        + ", turn: "
                        + n(Math.toDegrees(slot.direction()))
                        + "}"));
    words.addAll(mirrored ? List.of("mirror: true") : List.of());
    return "  - {" + String.join(", ", words) + "}";
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
