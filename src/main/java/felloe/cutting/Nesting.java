package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.NoFit;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Places parts on a sheet, bottom-left: each in turn at the lowest free position, the leftmost of
 * those, at the turn that keeps the used strip lowest. Small parts find room in the windows of
 * large ones that stand already. The order is by size first and then some seeded shuffles; the
 * layout with the lowest used strip wins, so that the same parts give the same layout.
 *
 * <p>Positions come from no-fit polygons ({@link NoFit}), which err to the safe side by at most
 * half a millimetre a pair, and not between straight edges, so parts never lie nearer than the
 * spacing, and what fits a sheet exactly finds its place.
 */
public final class Nesting {

  private static final long SEED = 20;

  /** What adding up lengths may lose of an exact fit, mm. */
  private static final double EXACT = 1e-3;

  /** So far below the lowest that a part may lie is still looked at, mm: beyond all rounding. */
  private static final double BELOW = 1;

  /** Turns that differ by less than this count as one turn, radians. */
  private static final double STEP = 2 * Math.PI / 3_600_000;

  private final SheetRoom room;
  private final double spacing;
  private final List<Ready> ready;

  /** For each part the first one of the same region and turns: what is alike is worked out once. */
  private final List<Integer> alike;

  private final Map<Key, NoFit.Forbidden> forbidden = new HashMap<>();

  /**
   * A part where it lies.
   *
   * @param part the part
   * @param motion from its own frame to the sheet
   */
  public record Placed(NestedPart part, RigidTransform motion) {
    /** The part's region on the sheet. */
    public Region region() {
      return part.region().moved(motion);
    }
  }

  /**
   * A layout.
   *
   * @param placed where each part lies, in the order of the request
   * @param left parts that found no room
   * @param used height of the strip that the parts take from the sheet's lower edge, mm
   * @param yield share of that strip, across the sheet's whole width, that becomes parts (windows
   *     not counted as part)
   */
  public record Layout(List<Placed> placed, List<NestedPart> left, double used, double yield) {
    /** Copies the lists. */
    public Layout {
      placed = List.copyOf(placed);
      left = List.copyOf(left);
      Numbers.finite("used", used);
      Numbers.finite("yield", yield);
    }
  }

  private record Key(int standing, int moving, long relativeTurn) {}

  /**
   * A part at each of its turns: with its windows filled, and with them open for others.
   *
   * @param differing the turns that are worth a try: a rectangle upside down is the same again
   */
  private record Ready(
      NestedPart part, List<NoFit.Shape> whole, List<NoFit.Shape> open, List<Integer> differing) {
    Ready of(NestedPart other) {
      return new Ready(other, whole, open, differing);
    }

    /** Whether something of a size may fit in one of its windows. */
    boolean takesIn(Box other) {
      double least = Math.min(other.width(), other.height());
      double most = Math.max(other.width(), other.height());
      return part.region().holes().stream()
          .map(Contour::box)
          .anyMatch(
              hole ->
                  Math.min(hole.width(), hole.height()) > least
                      && Math.hypot(hole.width(), hole.height()) > most);
    }
  }

  private record Spot(int part, int turn, Point at) {}

  /** One of the parts that are alike, at one of its turns. */
  private record Pose(int alike, int turn) {}

  private Nesting(SheetRoom room, double spacing, List<NestedPart> parts) {
    this.room = room;
    this.spacing = spacing;
    this.ready = new ArrayList<>();
    this.alike = new ArrayList<>();
    for (NestedPart part : parts) {
      int first = 0;
      while (first < ready.size() && !sameShape(parts.get(first), part)) {
        first++;
      }
      alike.add(first);
      ready.add(first < ready.size() ? ready.get(first).of(part) : ready(part, spacing));
    }
  }

  private static boolean sameShape(NestedPart a, NestedPart b) {
    return a.turns().equals(b.turns()) && a.region().equals(b.region());
  }

  private static Ready ready(NestedPart part, double spacing) {
    List<NoFit.Shape> whole = new ArrayList<>();
    List<NoFit.Shape> open = new ArrayList<>();
    for (double turn : part.turns()) {
      Region turned = part.region().moved(RigidTransform.turn(turn));
      whole.add(NoFit.Shape.of(Region.of(turned.outer()), spacing / 2, 0));
      open.add(NoFit.Shape.of(turned, spacing / 2, spacing));
    }
    List<Integer> differing =
        IntStream.range(0, whole.size())
            .filter(turn -> whole.subList(0, turn).stream().noneMatch(whole.get(turn)::alike))
            .boxed()
            .toList();
    return new Ready(part, whole, open, differing);
  }

  /**
   * Places parts.
   *
   * @param spacing least distance between parts, mm: the cutter and a margin
   * @param tries how many orders are tried, at least 1
   * @throws felloe.geometry.GeometryException when a part cannot be grown by half the spacing
   */
  public static Layout place(List<NestedPart> parts, SheetRoom room, double spacing, int tries) {
    Numbers.finite("spacing", spacing);
    if (!room.usable()) {
      return new Layout(List.of(), parts, 0, 0);
    }
    Nesting nesting = new Nesting(room, spacing, parts);
    Box sheet = room.inner();
    Layout best = nesting.best(sheet, tries);
    if (best.left().isEmpty()) {
      return best;
    }
    // What fits exactly wants a hair more.
    Layout exact =
        nesting.best(
            new Box(sheet.minX(), sheet.minY(), sheet.maxX() + EXACT, sheet.maxY() + EXACT), tries);
    return better(exact, best) ? exact : best;
  }

  private Layout best(Box sheet, int tries) {
    List<Integer> order = bySize(ready.stream().map(Ready::part).toList());
    Layout best = inOrder(order, sheet);
    Random random = new Random(SEED);
    for (int i = 1; i < tries; i++) {
      Collections.shuffle(order, random);
      Layout layout = inOrder(order, sheet);
      best = better(layout, best) ? layout : best;
    }
    return best;
  }

  private static List<Integer> bySize(List<NestedPart> parts) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, parts.size()).boxed().toList());
    order.sort(Comparator.comparingDouble(i -> -parts.get(i).region().outer().area()));
    return order;
  }

  private static boolean better(Layout a, Layout b) {
    return a.left().size() != b.left().size()
        ? a.left().size() < b.left().size()
        : a.used() < b.used() - 1e-9;
  }

  private Layout inOrder(List<Integer> order, Box sheet) {
    List<Spot> spots = new ArrayList<>();
    Map<Pose, Double> floors = new HashMap<>();
    for (int part : order) {
      spot(part, sheet, spots, floors).ifPresent(spots::add);
    }
    return layout(spots);
  }

  /**
   * Where a part lies best.
   *
   * @param floors how low the last part in each pose lay at its lowest; with more on the sheet the
   *     next one lies no lower, so there is no need to look
   */
  private Optional<Spot> spot(int part, Box sheet, List<Spot> spots, Map<Pose, Double> floors) {
    Spot best = null;
    for (int turn : ready.get(part).differing()) {
      Pose pose = new Pose(alike.get(part), turn);
      Box above = above(sheet, floors.getOrDefault(pose, sheet.minY()) - BELOW);
      Optional<Point> at = position(part, turn, above, spots);
      double low = ready.get(part).whole().get(turn).box().minY();
      floors.put(pose, at.map(p -> p.y() + low).orElse(sheet.maxY()));
      if (at.isPresent()) {
        Spot spot = new Spot(part, turn, at.get());
        if (best == null || top(spot) < top(best) - 1e-9) {
          best = spot;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static Box above(Box sheet, double floor) {
    return new Box(sheet.minX(), Math.max(sheet.minY(), floor), sheet.maxX(), sheet.maxY());
  }

  private Optional<Point> position(int part, int turn, Box sheet, List<Spot> spots) {
    List<NoFit.Forbidden> taken = new ArrayList<>();
    NoFit.Shape shape = ready.get(part).whole().get(turn);
    for (Spot spot : spots) {
      taken.add(between(spot, part, turn));
    }
    for (Box box : room.keepOut()) {
      taken.add(
          NoFit.between(NoFit.Shape.of(Region.of(Contour.rectangle(box)), spacing / 2, 0), shape));
    }
    return NoFit.lowest(sheet, shape, taken);
  }

  /** Kept in the standing part's own frame, for each turn of the one against the other. */
  private NoFit.Forbidden between(Spot standing, int moving, int turn) {
    double stands = turn(standing.part(), standing.turn());
    double relative = turn(moving, turn) - stands;
    long step = Math.floorMod(Math.round(relative / STEP), Math.round(2 * Math.PI / STEP));
    Key key = new Key(alike.get(standing.part()), alike.get(moving), step);
    NoFit.Forbidden own =
        forbidden.computeIfAbsent(
            key,
            k -> {
              Ready stander = ready.get(standing.part());
              NoFit.Shape shape = ready.get(moving).whole().get(turn);
              boolean inside = stander.takesIn(ready.get(moving).part().region().outer().box());
              List<NoFit.Shape> shapes = inside ? stander.open() : stander.whole();
              NoFit.Forbidden placed = NoFit.between(shapes.get(standing.turn()), shape);
              return placed.moved(RigidTransform.turn(-stands));
            });
    return own.moved(
        RigidTransform.turn(stands)
            .then(RigidTransform.shift(standing.at().x(), standing.at().y())));
  }

  private double turn(int part, int turn) {
    return ready.get(part).part().turns().get(turn);
  }

  private RigidTransform motion(Spot spot) {
    double turn = ready.get(spot.part()).part().turns().get(spot.turn());
    return RigidTransform.turn(turn).then(RigidTransform.shift(spot.at().x(), spot.at().y()));
  }

  private double top(Spot spot) {
    return ready.get(spot.part()).whole().get(spot.turn()).box().maxY() + spot.at().y();
  }

  private Layout layout(List<Spot> spots) {
    List<Placed> placed = new ArrayList<>();
    double area = 0;
    double used = 0;
    for (Spot spot : spots.stream().sorted(Comparator.comparingInt(Spot::part)).toList()) {
      Placed one = new Placed(ready.get(spot.part()).part(), motion(spot));
      placed.add(one);
      area += one.part().region().properties().area();
      used = Math.max(used, one.part().region().outer().moved(one.motion()).box().maxY());
    }
    List<NestedPart> left = new ArrayList<>();
    for (int i = 0; i < ready.size(); i++) {
      int number = i;
      if (spots.stream().noneMatch(spot -> spot.part() == number)) {
        left.add(ready.get(i).part());
      }
    }
    double strip = used * room.sheet().width();
    return new Layout(placed, left, used, strip > 0 ? area / strip : 0);
  }
}
