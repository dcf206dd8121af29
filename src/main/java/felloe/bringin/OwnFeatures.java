package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.FeatureTag;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The features that a drawing of the program's own names: what each is, and its label.
 *
 * @param windows in the order of their labels
 * @param bolts likewise
 * @param bore with its label
 * @param holes grip holes and others
 * @param others what no tag speaks of, or a tag that its line belies
 * @param twice labels that were there a second time; the later feature has none
 */
record OwnFeatures(
    List<PlateOutline.Opening> windows,
    List<PlateOutline.Drilled> bolts,
    Optional<PlateOutline.Drilled> bore,
    List<PlateOutline.Drilled> holes,
    List<PlatePart> others,
    int twice) {

  /** The program's own figures are written to so many mm. */
  static final double DIGITS = 5e-7;

  private static final int MOST_IN_A_RING = 60;

  private static final Pattern NUMBERED = Pattern.compile("(.*?)([1-9][0-9]{0,3})");

  /**
   * Sorts.
   *
   * @param parts in the order of the drawing
   */
  static OwnFeatures of(List<PlatePart> parts) {
    List<PlateOutline.Opening> windows = new ArrayList<>();
    List<PlateOutline.Drilled> holes = new ArrayList<>();
    List<PlatePart> others = new ArrayList<>();
    Set<String> labels = new HashSet<>();
    int twice = 0;
    for (PlatePart part : parts) {
      Optional<PlateOutline.Drilled> hole =
          part.tag().flatMap(tag -> tag.role().flatMap(role -> hole(part.contour(), role)));
      Optional<WindowUse> use = part.tag().flatMap(FeatureTag::use);
      if (hole.isEmpty() && use.isEmpty()) {
        others.add(part);
        continue;
      }
      String label = part.tag().orElseThrow().label();
      boolean fresh = labels.add(label);
      twice += fresh ? 0 : 1;
      String own = fresh ? label : "";
      hole.ifPresentOrElse(
          h -> holes.add(h.named(own)),
          () -> windows.add(new PlateOutline.Opening(part.contour(), use.orElseThrow(), own)));
    }
    List<PlateOutline.Drilled> bolts = role(holes, HoleRole.BOLT);
    List<PlateOutline.Drilled> bores = role(holes, HoleRole.BORE);
    List<PlateOutline.Drilled> drilled = new ArrayList<>(role(holes, HoleRole.GRIP));
    drilled.addAll(role(holes, HoleRole.OTHER));
    // There is one bore; a second is any hole.
    bores.stream().skip(1).forEach(b -> drilled.add(b.as(HoleRole.OTHER)));
    return new OwnFeatures(
        sorted(windows, PlateOutline.Opening::label),
        sorted(bolts, PlateOutline.Drilled::label),
        bores.stream().findFirst(),
        sorted(drilled, PlateOutline.Drilled::label),
        others,
        twice);
  }

  private static List<PlateOutline.Drilled> role(List<PlateOutline.Drilled> holes, HoleRole role) {
    return holes.stream().filter(h -> h.role() == role).toList();
  }

  /** Whether the drawing is one of the program's own. */
  boolean any() {
    return !windows.isEmpty() || !bolts.isEmpty() || bore.isPresent() || !holes.isEmpty();
  }

  /** A round hole, or a slotted one, to the digits that are written. */
  private static Optional<PlateOutline.Drilled> hole(Contour contour, HoleRole role) {
    Optional<Arc> circle = contour.asCircle();
    if (circle.isPresent()) {
      Arc c = circle.get();
      return Optional.of(PlateOutline.Drilled.round(c.centre(), 2 * c.radius(), role));
    }
    return Form.of(contour, DIGITS) instanceof Form.Slot slot
        ? Optional.of(
            new PlateOutline.Drilled(
                slot.centre(),
                slot.width(),
                Optional.of(new Hole.Slot(slot.length() - slot.width(), slot.turn())),
                role,
                ""))
        : Optional.empty();
  }

  /** A label as what it begins with and the number that it ends in; 0 where it ends in none. */
  record Numbered(String stem, int number) {
    static Numbered of(String label) {
      Matcher m = NUMBERED.matcher(label);
      return m.matches()
          ? new Numbered(m.group(1), Integer.parseInt(m.group(2)))
          : new Numbered(label, 0);
    }
  }

  /** Those whose labels begin alike stand together, by their numbers. */
  private static <T> List<T> sorted(List<T> all, Function<T, String> label) {
    Map<String, Integer> seen = new HashMap<>();
    all.forEach(t -> seen.putIfAbsent(Numbered.of(label.apply(t)).stem(), seen.size()));
    Comparator<T> order =
        Comparator.comparingInt((T t) -> seen.get(Numbered.of(label.apply(t)).stem()))
            .thenComparingInt(t -> Numbered.of(label.apply(t)).number());
    return all.stream().sorted(order).toList();
  }

  /** The axis by what is named: the middle of the bolts' ring, or of the bore, or the origin. */
  Point axis() {
    List<PlateOutline.Ring> here = new ArrayList<>();
    rings(Point.ORIGIN, here);
    if (!here.isEmpty()) {
      return Point.ORIGIN;
    }
    List<Arc> circles =
        bolts.stream()
            .filter(b -> b.slot().isEmpty())
            .map(b -> Arc.of(b.centre(), b.diameter() / 2, 0, 2 * Math.PI))
            .toList();
    return HoleRings.all(circles, PlateOutline.WIDEST_HOLE, PlateOutline.SAME, 0).stream()
        .map(HoleRings.Found::centre)
        .findFirst()
        .or(() -> bore.map(PlateOutline.Drilled::centre))
        .orElse(Point.ORIGIN);
  }

  /**
   * The rings that the bolts make about an axis, in the order of their labels.
   *
   * @param rings is given them
   * @return the bolts that stand on none
   */
  List<PlateOutline.Drilled> rings(Point axis, List<PlateOutline.Ring> rings) {
    List<PlateOutline.Drilled> single = new ArrayList<>();
    int i = 0;
    while (i < bolts.size()) {
      Optional<PlateOutline.Ring> ring = Optional.empty();
      int most = Math.min(bolts.size() - i, MOST_IN_A_RING);
      for (int n = most; n >= 2 && ring.isEmpty(); n--) {
        ring = OwnRing.of(bolts.subList(i, i + n), axis);
      }
      if (ring.isPresent()) {
        rings.add(ring.get());
        i += ring.get().count();
      } else {
        single.add(bolts.get(i));
        i++;
      }
    }
    return single;
  }
}
