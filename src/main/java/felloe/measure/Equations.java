package felloe.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * What each reading should be for given centres, sizes and edges, and how it changes with them. The
 * common size, when one was told, is a reading too.
 *
 * @param unknowns their order
 * @param readings all readings
 */
record Equations(Unknowns unknowns, List<Reading> readings) {

  static Equations of(Measured measured) {
    Unknowns unknowns = Unknowns.of(measured);
    List<Reading> readings = new ArrayList<>();
    if (measured.size().isPresent() && sharesCommonSize(measured)) {
      readings.add(common(measured, measured.size().get()));
    }
    readings.addAll(measured.readings());
    return new Equations(unknowns, List.copyOf(readings));
  }

  private static boolean sharesCommonSize(Measured measured) {
    return firstWithoutOwnSize(measured) >= 0;
  }

  private static int firstWithoutOwnSize(Measured measured) {
    for (int i = 0; i < measured.count(); i++) {
      int hole = i;
      if (measured.readings().stream()
          .noneMatch(r -> r.over() == ReadingKind.DIAMETER && r.from() == hole)) {
        return i;
      }
    }
    return -1;
  }

  private static Reading common(Measured measured, Reading size) {
    int hole = firstWithoutOwnSize(measured);
    return new Reading(
        hole, hole, size.edge(), size.over(), size.reads(), size.plusMinus(), size.place());
  }

  /** The same without some of its readings; the unknowns stay. */
  Equations without(List<Reading> left) {
    return new Equations(
        unknowns, readings.stream().filter(r -> left.stream().noneMatch(l -> l == r)).toList());
  }

  /** The same with another reading in the place of one. */
  Equations with(Reading old, Reading other) {
    return new Equations(unknowns, readings.stream().map(r -> r == old ? other : r).toList());
  }

  /** How the distance of two centres changes with each unknown. */
  double[] pair(int i, int j, double[] z) {
    return gradient(
        new Reading(
            i,
            j,
            java.util.Optional.empty(),
            ReadingKind.CENTRES,
            1,
            1,
            felloe.plate.Place.BUILT_IN),
        z);
  }

  int count() {
    return readings.size();
  }

  /** What reading k should be. */
  double value(int k, double[] z) {
    return value(readings.get(k), z);
  }

  private double value(Reading r, double[] z) {
    if (r.over() == ReadingKind.DIAMETER) {
      return z[unknowns.size(r.from())];
    }
    if (r.edge().isPresent()) {
      ReferenceEdge edge = r.edge().get();
      return edge.inward().x() * z[unknowns.x(r.from())]
          + edge.inward().y() * z[unknowns.y(r.from())]
          + z[unknowns.offset(edge)]
          + r.over().halves() * z[unknowns.size(r.from())] / 2;
    }
    double halves = (z[unknowns.size(r.from())] + z[unknowns.size(r.to())]) / 2;
    return distance(r.from(), r.to(), z) + r.over().halves() * halves;
  }

  private double distance(int i, int j, double[] z) {
    return Math.hypot(z[unknowns.x(i)] - z[unknowns.x(j)], z[unknowns.y(i)] - z[unknowns.y(j)]);
  }

  /** How reading k changes with each unknown. */
  double[] gradient(int k, double[] z) {
    return gradient(readings.get(k), z);
  }

  double[] gradient(Reading r, double[] z) {
    double[] row = new double[unknowns.all()];
    if (r.over() == ReadingKind.DIAMETER) {
      row[unknowns.size(r.from())] = 1;
      return row;
    }
    if (r.edge().isPresent()) {
      ReferenceEdge edge = r.edge().get();
      row[unknowns.x(r.from())] = edge.inward().x();
      row[unknowns.y(r.from())] = edge.inward().y();
      row[unknowns.offset(edge)] = 1;
      row[unknowns.size(r.from())] += r.over().halves() / 2.0;
      return row;
    }
    double length = distance(r.from(), r.to(), z);
    // Two holes on one spot have no direction; any will part them.
    double dx = length == 0 ? 1 : (z[unknowns.x(r.to())] - z[unknowns.x(r.from())]) / length;
    double dy = length == 0 ? 0 : (z[unknowns.y(r.to())] - z[unknowns.y(r.from())]) / length;
    row[unknowns.x(r.from())] = -dx;
    row[unknowns.y(r.from())] = -dy;
    row[unknowns.x(r.to())] = dx;
    row[unknowns.y(r.to())] = dy;
    row[unknowns.size(r.from())] += r.over().halves() / 2.0;
    row[unknowns.size(r.to())] += r.over().halves() / 2.0;
    return row;
  }
}
