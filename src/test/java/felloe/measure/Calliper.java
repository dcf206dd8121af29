package felloe.measure;

import felloe.geometry.Point;
import felloe.plate.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Takes readings on holes whose places are known, with errors of a calliper or without. */
final class Calliper {

  private final List<Point> centres;
  private final double size;
  private final double plusMinus;
  private final Random random;
  private final List<Reading> readings = new ArrayList<>();

  /**
   * @param random where errors come from; null for none
   */
  Calliper(List<Point> centres, double size, double plusMinus, Random random) {
    this.centres = centres;
    this.size = size;
    this.plusMinus = plusMinus;
    this.random = random;
  }

  static List<Point> ring(int count, double pcd) {
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ring.add(Point.polar(pcd / 2, Math.PI / 2 + 2 * Math.PI * i / count));
    }
    return ring;
  }

  private double error() {
    return random == null ? 0 : plusMinus / Reading.COVERAGE * random.nextGaussian();
  }

  /** Holes counted from 0. */
  Calliper over(ReadingKind over, int from, int to) {
    double true1 = centres.get(from).distance(centres.get(to)) + over.halves() * size;
    return add(from, to, Optional.empty(), over, true1);
  }

  Calliper diameter(int hole) {
    return add(hole, hole, Optional.empty(), ReadingKind.DIAMETER, size);
  }

  Calliper edge(int hole, ReferenceEdge edge, ReadingKind over, double offset) {
    double along = edge.inward().dot(centres.get(hole)) + offset;
    return add(hole, hole, Optional.of(edge), over, along + over.halves() * size / 2);
  }

  Calliper allPairs() {
    for (int i = 0; i < centres.size(); i++) {
      for (int j = i + 1; j < centres.size(); j++) {
        over(ReadingKind.OUTSIDE, i, j);
      }
    }
    return this;
  }

  /** Neighbours, every second, and across: the pairs of a drilling form. */
  Calliper formPairs() {
    int n = centres.size();
    for (int i = 0; i < n; i++) {
      over(ReadingKind.OUTSIDE, i, (i + 1) % n).over(ReadingKind.OUTSIDE, i, (i + 2) % n);
    }
    for (int i = 0; i < n / 2 && n % 2 == 0; i++) {
      over(ReadingKind.OUTSIDE, i, i + n / 2);
    }
    return this;
  }

  /** Says of all readings that they are as good as this, whatever they are. */
  Calliper claim(double better) {
    readings.replaceAll(
        r -> new Reading(r.from(), r.to(), r.edge(), r.over(), r.reads(), better, r.place()));
    return this;
  }

  List<Point> centres() {
    return centres;
  }

  private Calliper add(
      int from, int to, Optional<ReferenceEdge> edge, ReadingKind over, double truth) {
    Place place = Place.of("hub.yaml", readings.size() + 4, 5);
    readings.add(new Reading(from, to, edge, over, truth + error(), plusMinus, place));
    return this;
  }

  /** Makes a slip in a reading. */
  Calliper slip(int which, double by) {
    Reading r = readings.get(which);
    readings.set(
        which,
        new Reading(
            r.from(), r.to(), r.edge(), r.over(), r.reads() + by, r.plusMinus(), r.place()));
    return this;
  }

  List<Reading> readings() {
    return readings;
  }

  Measured measured() {
    return measured(ContactFeature.HOLES);
  }

  Measured measured(ContactFeature on) {
    List<String> labels = new ArrayList<>();
    for (int i = 1; i <= centres.size(); i++) {
      labels.add("" + i);
    }
    return new Measured(
        "hub.yaml",
        labels,
        on,
        Optional.empty(),
        readings,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Place.of("hub.yaml", 1, 1));
  }
}
