package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.LargestCircle;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a cutter leaves along an edge. Wherever its path has a corner, the cutter stands still in
 * plan and turns from one touch of the finish line to the next; between the two it touches nothing.
 * The left-over lies between that stretch of the finish line and the round of the cutter. Where the
 * cutter cannot pass a neck, several such rounds bound one left-over.
 */
final class UncutMaterial {

  private static final double SMOOTH = 1e-9;
  private static final int SAMPLES = 16;

  /** Touches nearer to each other than this are one, mm. */
  private static final double HAIR = 1e-5;

  private final CutFeature feature;
  private final Contour finish;
  private final List<CutLine> paths;
  private final double half;
  private final ArcLengthIndex along;
  private final boolean outline;

  UncutMaterial(CutFeature feature, Contour finish, List<CutLine> paths, double half) {
    this.feature = feature;
    this.finish = finish;
    this.paths = paths;
    this.half = half;
    this.along = new ArcLengthIndex(finish);
    this.outline = feature.kind() == CutFeature.Kind.OUTLINE;
  }

  /**
   * A corner of the path.
   *
   * @param at where the middle of the cutter stands
   * @param leaves where the cutter stops touching the finish line
   * @param meets where it touches it again
   */
  record Corner(Point at, ArcLengthIndex.Spot leaves, ArcLengthIndex.Spot meets) {}

  /** The corners of the paths, in order. */
  List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    // The finish line lies to the right in a window, to the left round an outline and in a hollow.
    double right = outline ? -half : half;
    for (CutLine line : paths) {
      List<Segment> chain =
          outline && line.inside() ? line.path().clockwise() : line.path().segments();
      for (int i = 0; i < chain.size(); i++) {
        Point in = chain.get(i).tangent(1);
        Point out = chain.get((i + 1) % chain.size()).tangent(0);
        if (Math.abs(in.cross(out)) > SMOOTH || in.dot(out) < 0) {
          Point at = chain.get(i).to();
          corners.add(
              new Corner(
                  at,
                  along.nearest(at.plus(in.right(), right)),
                  along.nearest(at.plus(out.right(), right))));
        }
      }
    }
    return corners;
  }

  /** The left-overs, in order along the finish line. */
  List<LeftOver> all() {
    // Gone before they are put in order: a fine outline has one at each of its chords.
    List<Corner> corners = corners().stream().filter(corner -> !shallow(corner)).toList();
    if (corners.isEmpty()) {
      return List.of();
    }
    try {
      return between(corners);
    } catch (GeometryException touching) {
      // Where the finish line and the round all but touch, areas tell better than single edges.
      return byArea();
    }
  }

  /** Whether all that lies between the two touches of a corner is too little to state. */
  private boolean shallow(Corner corner) {
    if (corner.leaves().point().near(corner.meets().point(), HAIR)) {
      return true;
    }
    double limit = half + Compensation.IGNORED;
    return along.every(corner.leaves(), corner.meets(), p -> p.distance(corner.at()) <= limit);
  }

  /** A stop on the way along the finish line. */
  private record Stop(ArcLengthIndex.Spot spot, int corner, boolean leaves) {}

  private List<LeftOver> between(List<Corner> corners) {
    List<Stop> stops = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      stops.add(new Stop(corners.get(i).meets(), i, false));
      stops.add(new Stop(corners.get(i).leaves(), i, true));
    }
    // Round a sharp corner the cutter meets and leaves at one place.
    stops.sort(
        Comparator.comparingDouble((Stop stop) -> stop.spot().position())
            .thenComparing(Stop::leaves));
    int[] next = new int[corners.size()];
    for (int k = 0; k < stops.size(); k++) {
      Stop stop = stops.get(k);
      Stop after = stops.get((k + 1) % stops.size());
      if (stop.leaves() == after.leaves()) {
        throw new GeometryException(
            "the path touches the finish line out of order", finish.segments().get(0).from());
      }
      if (stop.leaves()) {
        next[stop.corner()] = after.corner();
      }
    }
    List<LeftOver> found = new ArrayList<>();
    boolean[] seen = new boolean[corners.size()];
    for (Stop stop : stops) {
      if (stop.leaves() && !seen[stop.corner()]) {
        List<Corner> loop = new ArrayList<>();
        for (int c = stop.corner(); !seen[c]; c = next[c]) {
          seen[c] = true;
          loop.add(corners.get(c));
        }
        leftOver(loop).ifPresent(found::add);
      }
    }
    return found;
  }

  private Optional<LeftOver> leftOver(List<Corner> loop) {
    List<Segment> chain = new ArrayList<>();
    List<Arc> rounds = new ArrayList<>();
    double depth = 0;
    Point deepest = null;
    for (int i = 0; i < loop.size(); i++) {
      Corner corner = loop.get(i);
      Corner next = loop.get((i + 1) % loop.size());
      List<Segment> stretch = along.stretch(corner.leaves(), next.meets());
      for (Segment segment : stretch) {
        for (Point p : List.of(segment.at(0.5), segment.to())) {
          if (p.distance(corner.at()) - half > depth) {
            depth = p.distance(corner.at()) - half;
            deepest = p;
          }
        }
      }
      chain.addAll(stretch);
      Arc round = Arc.about(next.at(), next.meets().point(), next.leaves().point(), outline);
      rounds.add(round);
      chain.add(round);
    }
    boolean single = loop.size() == 1;
    double reach = rounds.stream().mapToDouble(this::reach).max().orElseThrow();
    Contour edge = new Contour(chain);
    Point at = loop.get(0).at();
    at = at.plus(deepest.minus(at).unit(), half + depth / 2);
    if (!single || !edge.contains(at)) {
      LargestCircle room = LargestCircle.inside(edge);
      at = room.centre();
      reach = Math.max(reach, along.byPlace().distance(at));
    }
    return reach <= Compensation.IGNORED
        ? Optional.empty()
        : Optional.of(new LeftOver(feature, Region.of(edge), at, reach));
  }

  /** How far an arc goes from the finish line at most. */
  private double reach(Arc round) {
    double best = 0;
    int at = 0;
    for (int i = 1; i < SAMPLES; i++) {
      double d = along.byPlace().distance(round.at(i / (double) SAMPLES));
      if (d > best) {
        best = d;
        at = i;
      }
    }
    double low = Math.max(0, at - 1) / (double) SAMPLES;
    double high = (at + 1) / (double) SAMPLES;
    for (int step = 0; step < 40; step++) {
      double a = low + (high - low) * 0.382;
      double b = low + (high - low) * 0.618;
      double atA = along.byPlace().distance(round.at(a));
      double atB = along.byPlace().distance(round.at(b));
      best = Math.max(best, Math.max(atA, atB));
      if (atA > atB) {
        high = b;
      } else {
        low = a;
      }
    }
    return best;
  }

  private List<LeftOver> byArea() {
    List<Region> swept = new ArrayList<>();
    List<Region> left;
    if (outline) {
      for (Region grown : Offset.of(finish, half)) {
        swept.addAll(Offset.of(grown, -half));
      }
      left = Combine.difference(swept, List.of(Region.of(finish)));
    } else {
      for (CutLine line : paths) {
        swept.addAll(Offset.of(line.path(), half));
      }
      left = Combine.difference(List.of(Region.of(finish)), swept);
    }
    List<LeftOver> found = new ArrayList<>();
    for (Region region : left) {
      double reach = 0;
      for (Segment segment : region.outer().segments()) {
        for (int i = 0; i < SAMPLES; i++) {
          Point p = segment.at(i / (double) SAMPLES);
          reach = Math.max(reach, along.byPlace().distance(p));
        }
      }
      Point at = LargestCircle.inside(region.outer()).centre();
      reach = Math.max(reach, along.byPlace().distance(at));
      if (reach > Compensation.IGNORED) {
        found.add(new LeftOver(feature, region, at, reach));
      }
    }
    return found;
  }
}
