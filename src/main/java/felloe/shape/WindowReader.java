package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.plate.Body;
import felloe.plate.Note;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the windows, those given by a family and those derived from the rim. */
final class WindowReader {

  private static final int MOST_ITEMS = 500;
  private static final int MOST_DERIVED = 4;
  private static final int MOST_WINDOWS = 1_000;
  private static final int MOST_SEGMENTS = 20_000;
  private static final String DERIVED = "derived";
  private static final List<String> PLACED = List.of("at", "places", "turn", "mirror");

  private final GeometryProblems reports;
  private final FamilyReader families;
  private final Labels labels;
  private final Optional<Contour> outline;
  private final BodyReader bodies;
  private final List<Window> windows = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private int derived;
  private int segments;

  WindowReader(
      GeometryProblems reports, FamilyReader families, Labels labels, Optional<Contour> outline) {
    this.reports = reports;
    this.families = families;
    this.labels = labels;
    this.outline = outline;
    this.bodies = new BodyReader(reports);
  }

  /** What the maker should know, such as leftovers that were dropped. */
  List<Note> notes() {
    return List.copyOf(notes);
  }

  /** What sits in the windows, which have their labels now. */
  List<Body> bodies(List<Window> labelled) {
    return bodies.bodies(i -> labelled.get(i).label());
  }

  /** Reads the list of windows; they still wish for their labels. */
  List<Window> read(Fields top) {
    for (Fields f : top.list("windows").atMost(MOST_ITEMS).mappings()) {
      window(f);
    }
    return List.copyOf(windows);
  }

  private void window(Fields f) {
    List<String> kinds = new ArrayList<>(FamilyReader.WINDOWS);
    kinds.add(DERIVED);
    Optional<String> kind = f.exactlyOneOf(kinds.toArray(String[]::new));
    boolean fromRim = kind.filter(DERIVED::equals).isPresent();
    WindowUse use = f.oneOf("use", WindowUse.class).or(fromRim ? WindowUse.GRIP : WindowUse.OPEN);
    String label = Labels.read(f);
    Where where = where(f);
    Optional<Body> body = bodies.read(f);
    if (use == WindowUse.GRIP && f.has(BodyReader.KEY)) {
      f.problem(
          BodyReader.KEY,
          "sits where fingers go through",
          "give the window another use, or take the body out");
    }
    List<Laid> laid = List.of();
    if (fromRim) {
      PLACED.stream().filter(f::has).forEach(key -> refuseBesideDerived(f, key));
      laid = derived(f).stream().map(c -> new Laid(c, RigidTransform.NONE)).toList();
    } else if (kind.isPresent() && segments < MOST_SEGMENTS) {
      laid = placed(f, families.read(f, kind.get()), where);
    }
    f.done();
    String wish = labels.wish(f, label, laid.size());
    for (Laid one : laid) {
      body.ifPresent(b -> bodies.seat(f, b, windows.size(), one.toMiddle));
      windows.add(new Window(wish, use, one.contour, f.place()));
    }
  }

  /**
   * A window where it belongs.
   *
   * @param toMiddle the motion that brings there what is drawn about its own middle
   */
  private record Laid(Contour contour, RigidTransform toMiddle) {

    Laid mirrored() {
      return new Laid(contour.moved(RigidTransform.MIRROR), toMiddle.then(RigidTransform.MIRROR));
    }
  }

  private static void refuseBesideDerived(Fields f, String key) {
    f.problem(
        key,
        "cannot stand beside derived: those windows lie where rim and spokes leave room",
        "take '" + key + "' out");
  }

  /** Where an entry puts its window. */
  private record Where(List<Point> places, double turn, boolean mirror) {}

  private static Where where(Fields f) {
    f.atMostOneOf("at", "places");
    List<Point> places =
        f.has("places")
            ? f.list("places").atLeast(1).atMost(MOST_ITEMS).points()
            : List.of(f.point("at").or(Point.ORIGIN));
    return new Where(places, f.angle("turn").or(0), f.bool("mirror").or(false));
  }

  /** The family's contours at each of its places, with their mirror images. */
  private List<Laid> placed(Fields f, List<Contour> shapes, Where where) {
    if (!f.good() || !roomFor(f, shapes, where)) {
      return List.of();
    }
    List<Laid> all = new ArrayList<>();
    for (Point at : where.places) {
      for (Contour shape : shapes) {
        Placing placing = Placing.degrees(at, where.turn);
        RigidTransform toMiddle = BodyReader.toMiddle(shape, placing.motion());
        reports.guard(f.path(), () -> new Laid(placing.of(shape), toMiddle)).ifPresent(all::add);
      }
    }
    return where.mirror ? withImages(f, all) : all;
  }

  /** Whether so many windows can still be read, so that no file takes hours. */
  private boolean roomFor(Fields f, List<Contour> shapes, Where where) {
    int times = where.places.size() * (where.mirror ? 2 : 1);
    int edges = times * shapes.stream().mapToInt(shape -> shape.segments().size()).sum();
    int all = windows.size() + times * shapes.size();
    if (all > MOST_WINDOWS) {
      f.problem("makes more than " + MOST_WINDOWS + " windows in all", "take some out");
      return false;
    }
    if (segments + edges > MOST_SEGMENTS) {
      segments = MOST_SEGMENTS;
      f.problem(
          "makes windows of more than " + MOST_SEGMENTS + " lines and arcs in all",
          "simplify the windows or take some out; those below were not read");
      return false;
    }
    segments += edges;
    return true;
  }

  private static List<Laid> withImages(Fields f, List<Laid> windows) {
    if (windows.stream()
        .anyMatch(w -> Math.abs(w.contour.box().centre().x()) <= Tolerances.SAME_POINT)) {
      f.problem("mirror", "makes the window meet its own image", "leave 'mirror' out");
      return windows;
    }
    List<Laid> all = new ArrayList<>();
    for (Laid window : windows) {
      all.add(window);
      all.add(window.mirrored());
    }
    return all;
  }

  private List<Contour> derived(Fields f) {
    Fields g = f.group(DERIVED);
    double rim = g.length("rim_width").atLeast(0.1).required();
    double disc = g.length("hub_disc").positive().required();
    double radius = g.length("radius").notNegative().or(0);
    double smallest = g.number("smallest").notNegative().or(DerivedWindows.SMALLEST);
    List<DerivedWindows.Spoke> spokes =
        g.list("spokes").atLeast(1).atMost(DerivedWindows.MOST_SPOKES).each(WindowReader::spoke);
    if (++derived > MOST_DERIVED) {
      f.problem(
          "must not follow " + MOST_DERIVED + " other entries of derived windows", "join them");
    }
    if (!g.done() || !f.good() || outline.isEmpty()) {
      return List.of();
    }
    DerivedWindows wanted = new DerivedWindows(rim, disc, spokes, radius, smallest);
    Optional<DerivedWindows.Result> result =
        reports.guard(g.path(), () -> wanted.in(outline.get()));
    result.ifPresent(r -> r.notes().forEach(text -> notes.add(new Note(f.place(), text))));
    return result.map(DerivedWindows.Result::windows).orElse(List.of());
  }

  private static Optional<DerivedWindows.Spoke> spoke(Fields f) {
    double direction = f.clock("clock").required();
    double atHub = f.length("hub_width").positive().required();
    double atRim = f.length("rim_width").positive().required();
    return f.build(() -> new DerivedWindows.Spoke(Math.toRadians(direction), atHub, atRim));
  }
}
