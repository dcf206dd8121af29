package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Motion;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.plate.Note;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the windows, those given by a family and those derived from the rim. */
final class WindowReader {

  private static final int MOST = 500;
  private static final String DERIVED = "derived";

  private final Reports reports;
  private final FamilyReader families;
  private final Optional<Contour> outline;
  private final List<Note> notes = new ArrayList<>();

  WindowReader(Reports reports, FamilyReader families, Optional<Contour> outline) {
    this.reports = reports;
    this.families = families;
    this.outline = outline;
  }

  /** What the maker should know, such as leftovers that were dropped. */
  List<Note> notes() {
    return List.copyOf(notes);
  }

  List<Window> read(Fields top) {
    List<Window> windows = new ArrayList<>();
    for (Fields f : top.list("windows").atMost(MOST).mappings()) {
      read(f, windows);
    }
    return windows;
  }

  private void read(Fields f, List<Window> windows) {
    List<String> kinds = new ArrayList<>(FamilyReader.WINDOWS);
    kinds.add(DERIVED);
    Optional<String> kind = f.exactlyOneOf(kinds.toArray(String[]::new));
    boolean derived = kind.filter(DERIVED::equals).isPresent();
    WindowUse use = f.oneOf("use", WindowUse.class).or(derived ? WindowUse.GRIP : WindowUse.OPEN);
    String label = LabelText.read(f);
    List<Contour> contours =
        derived ? derived(f) : kind.map(family -> placed(f, family)).orElse(List.of());
    f.done();
    boolean several = contours.size() > 1 && !label.isEmpty();
    for (Contour contour : contours) {
      windows.add(new Window(several ? label + "#" : label, use, contour, f.place()));
    }
  }

  /** The family's contours at each of its places, with their mirror images. */
  private List<Contour> placed(Fields f, String family) {
    List<Contour> shapes = families.read(f, family);
    double turn = f.angle("turn").or(0);
    List<Point> places = places(f);
    boolean mirror = f.bool("mirror").or(false);
    if (!f.good()) {
      return List.of();
    }
    List<Contour> all = new ArrayList<>();
    for (Point at : places) {
      for (Contour shape : shapes) {
        reports
            .guard(f.path(), () -> Placing.degrees(at, turn).of(shape))
            .ifPresent(contour -> addWithImage(f, contour, mirror, all));
      }
    }
    return all;
  }

  private static List<Point> places(Fields f) {
    f.atMostOneOf("at", "places");
    if (f.has("places")) {
      return f.list("places").atLeast(1).atMost(MOST).points();
    }
    return List.of(f.point("at").or(Point.ORIGIN));
  }

  private void addWithImage(Fields f, Contour contour, boolean mirror, List<Contour> all) {
    all.add(contour);
    if (mirror) {
      if (Math.abs(contour.box().centre().x()) <= Tolerances.SAME_POINT) {
        f.problem("mirror", "makes the window meet its own image", "leave 'mirror' out");
      } else {
        all.add(contour.moved(Motion.MIRROR));
      }
    }
  }

  private List<Contour> derived(Fields f) {
    Fields g = f.group(DERIVED);
    double rim = g.length("rim-width").required();
    double disc = g.length("hub-disc").required();
    double radius = g.length("radius").or(0);
    double smallest = g.number("smallest").notNegative().or(DerivedWindows.SMALLEST);
    List<DerivedWindows.Spoke> spokes =
        g.list("spokes").atMost(DerivedWindows.MOST_SPOKES).each(WindowReader::spoke);
    Optional<DerivedWindows> rule =
        g.build(() -> new DerivedWindows(rim, disc, spokes, radius, smallest));
    if (rule.isEmpty() || outline.isEmpty()) {
      return List.of();
    }
    Optional<DerivedWindows.Result> result =
        reports.guard(g.path(), () -> rule.get().in(outline.get()));
    result.ifPresent(found -> found.notes().forEach(text -> notes.add(new Note(g.place(), text))));
    return result.map(DerivedWindows.Result::windows).orElse(List.of());
  }

  private static Optional<DerivedWindows.Spoke> spoke(Fields f) {
    double direction = Math.toRadians(f.clock("clock").required());
    double atHub = f.length("hub-width").required();
    double atRim = f.length("rim-width").required();
    return f.build(() -> new DerivedWindows.Spoke(direction, atHub, atRim));
  }
}
