package felloe.service;

import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.grips.GripWrap;
import felloe.grips.PlacedGrip;
import felloe.plate.BadInput;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.LoadWish;
import felloe.plate.Making;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.Stock;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Flat parts of a grip as plates of their own, for templates and machines. */
public final class GripParts {

  /** What wraps are cut of; its density is not used. */
  private static final Material WRAP =
      new Material("wrap", "leather or cloth", MaterialKind.PLASTIC, 0.9, "common practice");

  /** Half the length of a mark for a stitch, and width of the lines, mm. */
  private static final double TICK = 1.5;

  private static final double THIN = 0.25;

  private GripParts() {}

  /**
   * The flat scales of a plate, each form once: the image of a scale, and the same on the other
   * face, is the scale turned over.
   */
  public static List<Plate> scales(GripsOutcome outcome) {
    return alike(outcome).values().stream()
        .map(all -> scale(outcome.study().plate(), all.get(0), all.size()))
        .toList();
  }

  private static Map<List<Object>, List<Placed>> alike(GripsOutcome outcome) {
    Map<List<Object>, List<Placed>> alike = new LinkedHashMap<>();
    for (GripsOutcome.Described one : outcome.grips()) {
      Grip grip = one.placed().grip();
      if (grip.form() == Grip.Form.SCALE) {
        for (Face face : grip.on()) {
          double thick = one.placed().height(face, 0);
          alike
              .computeIfAbsent(List.of(grip.path(), thick), key -> new ArrayList<>())
              .add(new Placed(one.placed(), face));
        }
      }
    }
    return alike;
  }

  /**
   * The flat scales that a grip is made of: one, or two of unlike thickness. The image of another
   * grip has that one's.
   *
   * @param label of the grip
   * @throws BadInput when there is no such grip, or it is no flat scale
   */
  static List<Plate> scales(GripsOutcome outcome, Requested<String> label) {
    List<Plate> scales =
        alike(outcome).values().stream()
            .filter(
                all ->
                    all.stream()
                        .anyMatch(one -> one.grip().grip().label().equalsIgnoreCase(label.value())))
            .map(all -> scale(outcome.study().plate(), all.get(0), all.size()))
            .toList();
    if (scales.isEmpty()) {
      List<Grip> grips = outcome.grips().stream().map(one -> one.placed().grip()).toList();
      List<String> flat =
          grips.stream().filter(g -> g.form() == Grip.Form.SCALE).map(Grip::label).toList();
      boolean known = grips.stream().anyMatch(g -> g.label().equalsIgnoreCase(label.value()));
      throw new BadInput(
          new Problem(
              label.place(),
              "",
              label.value(),
              known
                  ? "is a shell of " + outcome.study().plate().name() + ", which no router cuts"
                  : "is no grip of " + outcome.study().plate().name(),
              flat.isEmpty()
                  ? "it has no flat scales: felloe grips has what is printed"
                  : "its flat scales are " + String.join(", ", flat)));
    }
    return scales;
  }

  private record Placed(PlacedGrip grip, Face face) {}

  private static Plate scale(Plate plate, Placed first, int count) {
    PlacedGrip placed = first.grip();
    Face face = first.face();
    Grip grip = placed.grip();
    boolean faces =
        grip.faces() == Grip.Faces.BOTH && grip.profile().front() != grip.profile().back();
    Region region = placed.footprint().get(0);
    List<Window> windows =
        region.holes().stream()
            .map(hole -> new Window("W", WindowUse.OPEN, hole, grip.place()))
            .toList();
    List<Hole> holes =
        placed.holes().stream()
            .map(h -> new Hole(h.label(), HoleRole.OTHER, h.centre(), h.diameter(), h.place()))
            .toList();
    String side = !faces ? "" : face == Face.FRONT ? "-front" : "-back";
    Stock stock =
        new Stock(
            grip.material().sheet(), placed.height(face, 0), Optional.empty(), face, grip.place());
    return part(
        plate,
        "-grip-" + fileName(grip.label()) + side,
        ", grip scale "
            + grip.label()
            + (count == 1 ? "" : ", " + count + " of it, " + count / 2 + " turned over"),
        region.outer(),
        windows,
        holes,
        stock,
        List.of());
  }

  /** The wraps of a plate's grips, unrolled. */
  public static List<Plate> wraps(GripsOutcome outcome) {
    List<Plate> all = new ArrayList<>();
    for (GripsOutcome.Described one : outcome.grips()) {
      Grip grip = one.placed().grip();
      for (GripWrap wrap : one.wraps()) {
        String number = one.wraps().size() == 1 ? "" : "-" + wrap.number();
        all.add(wrap(outcome.study().plate(), grip, wrap, number));
      }
    }
    return all;
  }

  private static Plate wrap(Plate plate, Grip grip, GripWrap wrap, String number) {
    return part(
        plate,
        "-wrap-" + fileName(grip.label()) + number,
        ", wrap of grip " + grip.label(),
        wrap.cut(),
        List.of(),
        List.of(),
        new Stock(WRAP, grip.wrap(), Optional.empty(), Face.FRONT, grip.place()),
        stitches(grip, wrap));
  }

  /** Both fold lines, and a tick across each where a stitch goes. */
  private static List<Engraving> stitches(Grip grip, GripWrap wrap) {
    List<List<Segment>> strokes = new ArrayList<>();
    List<Segment> upper = new ArrayList<>();
    List<Segment> lower = new ArrayList<>();
    List<Point> places = wrap.stitches();
    for (int i = 0; i + 3 < places.size(); i += 2) {
      upper.add(new Line(places.get(i), places.get(i + 2)));
      lower.add(new Line(places.get(i + 1), places.get(i + 3)));
    }
    strokes.add(upper);
    strokes.add(lower);
    for (Point at : places) {
      Point half = new Point(0, TICK);
      strokes.add(List.of(new Line(at.minus(half), at.plus(half))));
    }
    return List.of(
        new Engraving("stitches", "stitches", Face.FRONT, strokes, THIN, THIN, grip.place()));
  }

  private static Plate part(
      Plate plate,
      String name,
      String title,
      Contour outline,
      List<Window> windows,
      List<Hole> holes,
      Stock stock,
      List<Engraving> marks) {
    Making making = plate.making();
    // Leather is cut to the line.
    double rough = stock.material().equals(WRAP) ? 0 : making.roughAllowance();
    return new Plate(
        plate.name() + name,
        plate.title() + title,
        plate.revision(),
        outline,
        windows,
        holes,
        List.of(),
        Optional.empty(),
        stock,
        new Making(making.cutterDiameter(), rough, 0),
        List.of(),
        List.of(),
        List.of(),
        LoadWish.NONE,
        marks,
        List.of(),
        List.of(),
        Optional.empty());
  }

  /** A label as it stands in names of files: small letters and figures. */
  public static String fileName(String label) {
    String plain = label.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String bare = plain.replaceAll("^-|-$", "");
    return bare.isEmpty() ? "grip" : bare;
  }
}
