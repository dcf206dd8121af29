package felloe.measure;

import felloe.geometry.Numbers;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What no set of holes can show, whatever the pattern: readings that contradict each other, holes
 * that overlap, triangles that do not close. Every test leaves room for twice the plus and minus of
 * the readings that it uses, so that a poor reading is no error; those are found by the adjustment.
 */
final class ReadingChecks {

  private static final double ROOM = 2;

  private final Measured measured;
  private final List<Problem> problems = new ArrayList<>();
  private final int count;

  private ReadingChecks(Measured measured) {
    this.measured = measured;
    this.count = measured.count();
  }

  static List<Problem> of(Measured measured) {
    ReadingChecks checks = new ReadingChecks(measured);
    checks.twice();
    if (checks.problems.isEmpty()) {
      checks.overlaps();
    }
    if (checks.problems.isEmpty()) {
      checks.triangles();
    }
    return checks.problems;
  }

  /** The same holes twice, with values that cannot both be right. */
  private void twice() {
    List<Reading> readings = measured.readings();
    for (int i = 0; i < readings.size(); i++) {
      for (int j = 0; j < i; j++) {
        Reading a = readings.get(j);
        Reading b = readings.get(i);
        if (!a.sameHoles(b)) {
          continue;
        }
        double room = ROOM * (a.plusMinus() + b.plusMinus());
        if (a.over() == b.over()) {
          if (Math.abs(a.reads() - b.reads()) > room) {
            report(
                b,
                "contradicts " + value(a) + " for the same on " + line(a.place()),
                "measure it again and keep the right one");
          }
        } else if ((b.over().halves() - a.over().halves()) * (b.reads() - a.reads()) < -room) {
          report(
              b,
              "cannot be: over "
                  + b.over().words()
                  + " it reads "
                  + value(b)
                  + ", over "
                  + a.over().words()
                  + " "
                  + value(a)
                  + " ("
                  + line(a.place())
                  + ")",
              "over must be " + outerFirst(a, b) + "; swap the two if they are mixed up");
        }
        if (!problems.isEmpty() && problems.size() > 40) {
          return;
        }
      }
    }
  }

  private static String outerFirst(Reading a, Reading b) {
    Reading larger = a.over().halves() > b.over().halves() ? a : b;
    Reading smaller = larger == a ? b : a;
    return larger.over().words()
        + " for the larger, "
        + smaller.over().words()
        + " for the smaller";
  }

  /** The size of a hole as read, if it was. */
  private OptionalDouble size(int hole) {
    OptionalDouble own =
        measured.readings().stream()
            .filter(r -> r.over() == ReadingKind.DIAMETER && r.from() == hole)
            .mapToDouble(Reading::reads)
            .findFirst();
    return own.isPresent() || measured.size().isEmpty()
        ? own
        : OptionalDouble.of(measured.size().get().reads());
  }

  /** Half the sum of two holes' sizes, if both are known. */
  private OptionalDouble halves(Reading reading) {
    OptionalDouble a = size(reading.from());
    OptionalDouble b = size(reading.to());
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of((a.getAsDouble() + b.getAsDouble()) / 2)
        : OptionalDouble.empty();
  }

  private void overlaps() {
    for (Reading reading : measured.readings()) {
      OptionalDouble halves = halves(reading);
      if (!reading.isPair() || halves.isEmpty()) {
        continue;
      }
      double sizes = halves.getAsDouble();
      double centres = reading.reads() - reading.over().halves() * sizes;
      if (centres < sizes - ROOM * reading.plusMinus()) {
        String cure =
            reading.over() == ReadingKind.OUTSIDE
                ? "was it taken over inside?"
                : "check the reading and the size of the holes";
        report(
            reading,
            "over "
                + reading.over().words()
                + " would make holes of "
                + mm(sizes)
                + " overlap ("
                + mm(centres)
                + " between the centres)",
            cure);
      }
    }
  }

  /** Distances of centres: the largest side of a triangle is at most the sum of the others. */
  private void triangles() {
    Reading[][] taken = new Reading[count][count];
    double[][] centres = new double[count][count];
    for (Reading reading : measured.readings()) {
      OptionalDouble halves = halves(reading);
      boolean known = reading.over() == ReadingKind.CENTRES || halves.isPresent();
      if (reading.isPair() && known) {
        double distance = reading.reads() - reading.over().halves() * halves.orElse(0);
        put(taken, centres, reading, distance);
      }
    }
    List<Reading> told = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < count; j++) {
        for (int k = 0; k < j; k++) {
          Reading side = taken[j][k];
          if (i == j || i == k || side == null || taken[i][j] == null || taken[i][k] == null) {
            continue;
          }
          double excess = centres[j][k] - centres[i][j] - centres[i][k];
          double room =
              ROOM * (side.plusMinus() + taken[i][j].plusMinus() + taken[i][k].plusMinus());
          if (excess > room && !told.contains(side)) {
            told.add(side);
            triangle(side, taken[i][j], taken[i][k], excess);
          }
        }
      }
    }
  }

  private static void put(Reading[][] taken, double[][] centres, Reading r, double distance) {
    taken[r.from()][r.to()] = r;
    taken[r.to()][r.from()] = r;
    centres[r.from()][r.to()] = distance;
    centres[r.to()][r.from()] = distance;
  }

  private void triangle(Reading side, Reading one, Reading two, double excess) {
    report(
        side,
        "makes no triangle with "
            + measured.holes(one)
            + " ("
            + line(one.place())
            + ") and "
            + measured.holes(two)
            + " ("
            + line(two.place())
            + "): it is "
            + mm(excess)
            + " longer than both together",
        "one of the three is wrong, or was taken over something else; measure them again");
  }

  private void report(Reading reading, String wanted, String cure) {
    problems.add(
        new Problem(
            reading.place(),
            measured.holes(reading),
            Numbers.brief(reading.reads(), 3) + " mm",
            wanted,
            cure));
  }

  private static String value(Reading reading) {
    return mm(reading.reads());
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }

  private static String line(Place place) {
    return place.line() > 0 ? "line " + place.line() : place.toString();
  }
}
