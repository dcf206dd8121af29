package felloe.out;

import felloe.bringin.PlateOutline;
import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Gathers drilled holes into as few entries of a shape file as hold them.
 *
 * @param size a diameter as it is written, mm
 * @param near places and their images differ by no more than this, mm
 */
record HoleEntries(DoubleUnaryOperator size, double near) {

  /** An entry takes no more places (see docs/shape-file.md). */
  private static final int MOST = 200;

  /** Diameters that differ by no more than this differ in how they were written, mm. */
  private static final double LAST_DIGIT = 1e-6;

  /**
   * Equal holes of one entry.
   *
   * @param holes in the order in which it makes them
   * @param mirrored whether the second half are images of the first
   */
  record Row(List<PlateOutline.Drilled> holes, boolean mirrored) {}

  /** The holes of a ring, each by itself. */
  static List<PlateOutline.Drilled> of(PlateOutline.Ring ring) {
    List<PlateOutline.Drilled> holes = new ArrayList<>();
    for (int i = 0; i < ring.count(); i++) {
      int number = i + 1;
      double angle = ring.first() + 2 * Math.PI * i / ring.count();
      Point at = Point.polar(ring.pitchDiameter() / 2, angle);
      String label = ring.labels().isEmpty() ? "" : ring.labels().get(i);
      Optional<PlateOutline.Slotted> slot =
          ring.slots().stream().filter(s -> s.number() == number).findFirst();
      Optional<Hole.Slot> slotted =
          slot.map(s -> new Hole.Slot(s.length() - ring.diameter(), s.direction()));
      Point middle =
          slot.filter(PlateOutline.Slotted::oneWay)
              .map(s -> at.plus(Point.polar((s.length() - ring.diameter()) / 2, s.direction())))
              .orElse(at);
      holes.add(new PlateOutline.Drilled(middle, ring.diameter(), slotted, HoleRole.BOLT, label));
    }
    return holes;
  }

  /** All of them. */
  List<Row> of(List<PlateOutline.Drilled> holes) {
    List<Row> rows = new ArrayList<>();
    List<PlateOutline.Drilled> left = new ArrayList<>(holes);
    while (!left.isEmpty()) {
      List<PlateOutline.Drilled> row = left.get(0).label().isEmpty() ? equal(left) : labelled(left);
      left.removeAll(row);
      if (row.get(0).label().isEmpty() && row.get(0).slot().isEmpty()) {
        rows.addAll(paired(row));
      } else {
        rows.add(new Row(row, isMirrored(row)));
      }
    }
    return rows;
  }

  private boolean alike(PlateOutline.Drilled a, PlateOutline.Drilled b) {
    boolean equal =
        size.applyAsDouble(a.diameter()) == size.applyAsDouble(b.diameter())
            || Math.abs(a.diameter() - b.diameter()) <= Math.min(near, LAST_DIGIT);
    return equal && a.role() == b.role() && a.slot().isEmpty() && b.slot().isEmpty();
  }

  /** Without a name: all that are as the first one. */
  private List<PlateOutline.Drilled> equal(List<PlateOutline.Drilled> left) {
    PlateOutline.Drilled first = left.get(0);
    return first.slot().isPresent()
        ? List.of(first)
        : left.stream().filter(h -> h.label().isEmpty() && alike(h, first)).toList();
  }

  /** With names: those that follow, as long as their numbers do. */
  private List<PlateOutline.Drilled> labelled(List<PlateOutline.Drilled> left) {
    int n = 1;
    while (n < left.size()
        && n < MOST
        && alike(left.get(0), left.get(n))
        && follows(left.get(n - 1).label(), left.get(n).label())) {
      n++;
    }
    return List.copyOf(left.subList(0, n));
  }

  private static boolean follows(String before, String label) {
    String stem = before.replaceAll("[0-9]+$", "");
    String number = before.substring(stem.length());
    return !number.isEmpty()
        && number.length() < 5
        && label.equals(stem + (Integer.parseInt(number) + 1));
  }

  private boolean isMirrored(List<PlateOutline.Drilled> row) {
    int half = row.size() / 2;
    boolean mirrored = half > 0 && 2 * half == row.size();
    for (int i = 0; mirrored && i < half; i++) {
      Point image = image(row.get(i).centre());
      mirrored =
          image.x() != row.get(i).centre().x() && row.get(half + i).centre().near(image, near);
    }
    return mirrored;
  }

  private static Point image(Point p) {
    return new Point(-p.x(), p.y());
  }

  /** Those that have an image, the right ones written, and those that have none. */
  private List<Row> paired(List<PlateOutline.Drilled> equal) {
    List<PlateOutline.Drilled> alone = new ArrayList<>();
    List<PlateOutline.Drilled> right = new ArrayList<>();
    List<PlateOutline.Drilled> images = new ArrayList<>();
    List<PlateOutline.Drilled> left = new ArrayList<>(equal);
    while (!left.isEmpty()) {
      PlateOutline.Drilled one = left.remove(0);
      Optional<PlateOutline.Drilled> image =
          left.stream()
              .filter(h -> h.centre().near(image(one.centre()), near))
              .filter(h -> Math.abs(h.centre().x()) > near)
              .findFirst();
      if (image.isEmpty()) {
        alone.add(one);
        continue;
      }
      left.remove(image.get());
      boolean other = one.centre().x() < 0;
      right.add(other ? image.get() : one);
      images.add(other ? one : image.get());
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < right.size(); i += MOST) {
      int end = Math.min(right.size(), i + MOST);
      List<PlateOutline.Drilled> both = new ArrayList<>(right.subList(i, end));
      both.addAll(images.subList(i, end));
      rows.add(new Row(both, true));
    }
    for (int i = 0; i < alone.size(); i += MOST) {
      rows.add(new Row(alone.subList(i, Math.min(alone.size(), i + MOST)), false));
    }
    return rows;
  }
}
