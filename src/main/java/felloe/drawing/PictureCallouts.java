package felloe.drawing;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.BoltCircle;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What holes and windows are, said beside the plate: one leader (ISO 128-22) for each kind, with an
 * arrow on the edge of one of the kind. Windows with room for it carry their size inside.
 */
final class PictureCallouts {

  /** More kinds than this would bury the plate in leaders; the rest are counted. */
  private static final int MOST = 8;

  private static final double AWAY = 16;
  private static final double LANDING = 4;
  private static final double APART = 4;
  private static final double OFF_AXIS = 9;
  private static final double SLOPE = 0.14;
  private static final int GRID = 24;

  private final PictureInk ink;
  private final double unit;
  private final List<Window> small = new ArrayList<>();
  private final Map<Window, Box> wide = new LinkedHashMap<>();

  PictureCallouts(PictureInk ink) {
    this.ink = ink;
    this.unit = ink.unit();
  }

  /** One kind: what is said, and the circle or contour that the leader points to. */
  private record Callout(List<String> lines, Contour target) {
    Point centre() {
      return target.box().centre();
    }

    double height() {
      return lines.size() * PictureInk.LEADING * PictureInk.TEXT;
    }
  }

  /** Leaders to the right of the plate, and the wide windows' own labels. */
  void draw(Plate plate) {
    List<Callout> callouts = new ArrayList<>(holes(plate));
    callouts.addAll(smallWindows(plate));
    List<Callout> shown = new ArrayList<>(callouts.subList(0, Math.min(MOST, callouts.size())));
    double x = plate.box().maxX() + AWAY * unit;
    shown.sort(
        Comparator.comparingDouble((Callout callout) -> -wanted(callout, x))
            .thenComparingDouble(callout -> callout.centre().x()));
    List<Double> heights = spread(shown, plate.box(), x);
    for (int i = 0; i < shown.size(); i++) {
      draw(shown.get(i), new Point(x, heights.get(i)));
    }
    if (callouts.size() > shown.size()) {
      int last = shown.size() - 1;
      double y = heights.get(last) - (shown.get(last).height() + APART) * unit;
      String more = "and " + (callouts.size() - shown.size()) + " more kinds";
      ink.text(more, new Point(x, y), PictureInk.TEXT, 0, Anchor.START);
    }
    labelWide();
  }

  private void draw(Callout callout, Point text) {
    double middle = text.y() + 0.5 * PictureInk.TEXT * unit;
    Point knee = new Point(text.x() - LANDING * unit, middle);
    Point toward = knee.minus(callout.centre());
    Point tip = callout.target().nearest(callout.centre().plus(toward, 0.5));
    if (callout.target().asCircle().isPresent()) {
      Arc circle = callout.target().asCircle().orElseThrow();
      tip = circle.centre().plus(toward.unit(), circle.radius());
    }
    ink.line(new Point(text.x() - unit, middle), knee, LineType.THIN);
    ink.line(knee, tip, LineType.THIN);
    ink.arrow(tip, knee.minus(tip).angle());
    ink.lines(callout.lines(), text, PictureInk.TEXT, Anchor.START);
  }

  /** Where a callout would best stand: its leader fans out, away from the horizontal axis. */
  private double wanted(Callout callout, double x) {
    Point centre = callout.centre();
    boolean below = centre.y() < -unit || centre.norm() < unit;
    double rise = Math.max(OFF_AXIS * unit, SLOPE * (x - centre.x()));
    return centre.y() + (below ? -rise : rise);
  }

  /** Base lines of the first lines, from the top, far enough apart. */
  private List<Double> spread(List<Callout> callouts, Box box, double x) {
    List<Double> bases = new ArrayList<>();
    double ceiling = box.maxY() - 2 * PictureInk.TEXT * unit;
    for (Callout callout : callouts) {
      double base = Math.min(ceiling, wanted(callout, x));
      bases.add(base);
      ceiling = base - (callout.height() + APART) * unit;
    }
    // Too low: push the last ones up again.
    double floor = box.minY();
    for (int i = callouts.size() - 1; i >= 0; i--) {
      double room = (callouts.get(i).height() - PictureInk.TEXT) * unit;
      double base = Math.max(bases.get(i), floor + room);
      bases.set(i, base);
      floor = base + (PictureInk.TEXT + APART) * unit;
    }
    return bases;
  }

  private static List<Callout> holes(Plate plate) {
    List<Callout> callouts = new ArrayList<>();
    List<Hole> left = new ArrayList<>(plate.holes());
    for (BoltCircle ring : plate.boltCircles()) {
      List<Hole> mine = new ArrayList<>();
      for (Point centre : ring.centres()) {
        left.stream()
            .filter(hole -> hole.centre().near(centre, 0.001))
            .findFirst()
            .ifPresent(mine::add);
      }
      if (!mine.isEmpty()) {
        left.removeAll(mine);
        callouts.add(new Callout(ringText(ring), rightmost(mine).contour()));
      }
    }
    Map<String, List<Hole>> kinds = new LinkedHashMap<>();
    for (Hole hole : left) {
      kinds.computeIfAbsent(kind(hole), k -> new ArrayList<>()).add(hole);
    }
    kinds.forEach(
        (kind, holes) ->
            callouts.add(
                new Callout(List.of(times(holes.size()) + kind), rightmost(holes).contour())));
    return callouts;
  }

  private static String kind(Hole hole) {
    return hole.isSlotted() && hole.role() == HoleRole.OTHER
        ? hole.size()
        : hole.size() + " " + hole.role().words();
  }

  private static List<String> ringText(BoltCircle ring) {
    List<String> lines = new ArrayList<>();
    lines.add(times(ring.count()) + diameter(ring.holeDiameter()) + " " + HoleRole.BOLT.words());
    double first = Math.toDegrees(ring.firstAngle());
    lines.add(
        "on "
            + diameter(ring.pitchDiameter())
            + " PCD, first at "
            + Numbers.brief(first, 2)
            + "\u00b0");
    ring.hub().ifPresent(hub -> lines.add("hub " + hub));
    return lines;
  }

  private static Hole rightmost(List<Hole> holes) {
    return holes.stream()
        .max(Comparator.comparingDouble((Hole hole) -> hole.centre().x() + 0.3 * hole.centre().y()))
        .orElseThrow();
  }

  /** Windows that cannot carry their own size, one callout a kind. */
  private List<Callout> smallWindows(Plate plate) {
    Map<String, List<Window>> kinds = new LinkedHashMap<>();
    for (Window window : plate.windows()) {
      Optional<Box> spot = spot(window);
      if (spot.isPresent()) {
        wide.put(window, spot.orElseThrow());
      } else {
        small.add(window);
        String kind = size(window) + " " + window.use().words();
        kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(window);
      }
    }
    List<Callout> callouts = new ArrayList<>();
    kinds.forEach(
        (kind, windows) -> {
          Window target =
              windows.stream()
                  .max(Comparator.comparingDouble(window -> window.contour().box().maxX()))
                  .orElseThrow();
          callouts.add(new Callout(List.of(times(windows.size()) + kind), target.contour()));
        });
    return callouts;
  }

  /** Label and size inside the windows that have room, clear of the leaders where that can be. */
  private void labelWide() {
    wide.forEach(
        (window, before) -> {
          Box box = spot(window).orElse(before);
          if (ink.room().onCentreLine(box)) {
            ink.wipe(box);
          }
          Point middle = box.centre();
          double first = middle.y() + (PictureInk.LEADING - 1) / 2 * PictureInk.TEXT * unit;
          ink.lines(words(window), new Point(middle.x(), first), PictureInk.TEXT, Anchor.MIDDLE);
        });
  }

  private static List<String> words(Window window) {
    return List.of(window.label(), size(window));
  }

  /** Room for a window's label and size inside it. */
  private Optional<Box> spot(Window window) {
    List<String> lines = words(window);
    double width = TextWidth.widest(lines, PictureInk.TEXT * unit) + 3 * unit;
    double height = (1 + PictureInk.LEADING) * PictureInk.TEXT * unit + 3 * unit;
    Box box = window.contour().box();
    if (width > box.width() || height > box.height()) {
      return Optional.empty();
    }
    Box best = null;
    double most = -Double.MAX_VALUE;
    for (int i = 1; i < GRID; i++) {
      for (int j = 1; j < GRID; j++) {
        Point p =
            new Point(box.minX() + i * box.width() / GRID, box.minY() + j * box.height() / GRID);
        Box text =
            new Box(p.x() - width / 2, p.y() - height / 2, p.x() + width / 2, p.y() + height / 2);
        if (window.contour().contains(p) && ink.room().hardCost(text) == 0) {
          // Clear of the edge, and near the middle where that is much the same.
          double clear = window.contour().distance(p) - 0.3 * p.distance(box.centre());
          if (clear > most) {
            most = clear;
            best = text;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static String size(Window window) {
    if (window.contour().asCircle().isPresent()) {
      return diameter(2 * window.contour().asCircle().orElseThrow().radius());
    }
    Box box = window.contour().box();
    return Numbers.brief(box.width(), 1) + " \u00d7 " + Numbers.brief(box.height(), 1);
  }

  private static String times(int count) {
    return count == 1 ? "" : count + " \u00d7 ";
  }

  private static String diameter(double diameter) {
    return "\u00d8" + PictureDimensions.figure(diameter);
  }

  /** The windows that do not carry their own label. */
  List<Window> small() {
    return List.copyOf(small);
  }
}
