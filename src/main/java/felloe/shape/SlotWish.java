package felloe.shape;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Hole;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How holes of an entry are slotted.
 *
 * @param travel how much longer than wide, mm
 * @param way which way
 * @param angle the direction, radians, where the way is one of those that have it
 * @param numbers which holes of a bolt circle, counted from 1; empty for all
 */
record SlotWish(double travel, Way way, double angle, List<Integer> numbers) {

  /** The longest slot, in widths: what is longer is a window. */
  private static final double LONGEST = 3;

  /** Which way a slot runs from the place that its hole would have. */
  enum Way {
    /** Both ways along the line from the hub axis. */
    RADIUS,
    /** Both ways square to that line. */
    CIRCLE,
    /** Both ways along an angle. */
    TURN,
    /** One way, toward an angle. */
    TOWARD
  }

  private enum Along {
    RADIUS,
    CIRCLE
  }

  /**
   * Reads a slot.
   *
   * @param width diameter of the holes, mm; not a number when it is wrong
   * @param count holes on the bolt circle; 0 for an entry of {@code holes}
   */
  static Optional<SlotWish> read(Fields f, double width, int count) {
    double length = f.length("length").positive().required();
    if (length <= width || length > LONGEST * width) {
      f.problem(
          "length",
          "must be above "
              + Numbers.brief(width, 3)
              + " mm and at most "
              + Numbers.brief(LONGEST * width, 3)
              + " mm here (one to three times the hole's width)",
          "it is the length over all; what is longer is a window");
    }
    Optional<String> key = f.exactlyOneOf("along", "turn", "toward");
    Along along = f.oneOf("along", Along.class).or(Along.CIRCLE);
    double turn = Math.toRadians(f.angle("turn").or(0));
    double toward = Math.toRadians(f.angle("toward").or(0));
    List<Integer> numbers = count == 0 ? List.of() : numbers(f, count);
    return f.build(
        () ->
            switch (key.orElseThrow()) {
              case "turn" -> new SlotWish(length - width, Way.TURN, turn, numbers);
              case "toward" -> new SlotWish(length - width, Way.TOWARD, toward, numbers);
              default ->
                  new SlotWish(
                      length - width, along == Along.RADIUS ? Way.RADIUS : Way.CIRCLE, 0, numbers);
            });
  }

  private static List<Integer> numbers(Fields f, int count) {
    List<Integer> numbers = new ArrayList<>();
    for (Entry item : f.list("holes").atMost(count).entries()) {
      int number = item.integer().between(1, count).required();
      if (numbers.contains(number)) {
        item.problem("is there already", "take it out");
      }
      numbers.add(number);
    }
    return List.copyOf(numbers);
  }

  /**
   * A hole of the entry, slotted if it is one of those.
   *
   * @param number its number in the entry, counted from 1
   */
  Hole applied(Hole hole, int number) {
    if (!numbers.isEmpty() && !numbers.contains(number)) {
      return hole;
    }
    double out = hole.centre().norm() == 0 ? 0 : hole.centre().angle();
    double direction =
        switch (way) {
          case RADIUS -> out;
          case CIRCLE -> out + Math.PI / 2;
          case TURN, TOWARD -> angle;
        };
    Point middle =
        way == Way.TOWARD ? hole.centre().plus(Point.polar(travel / 2, direction)) : hole.centre();
    return new Hole(
        hole.label(),
        hole.role(),
        middle,
        hole.diameter(),
        Optional.of(new Hole.Slot(travel, direction)),
        hole.place());
  }
}
