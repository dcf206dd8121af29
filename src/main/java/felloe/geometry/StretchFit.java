package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fits arc pairs to a stretch of curve. How many pairs a short piece asks for follows from its
 * length and its change of curvature; joints are spread such that each pair gets an equal share,
 * and their number grows from the estimate until every pair holds the limits. What then still fails
 * is halved.
 */
final class StretchFit {

  /** Keeps sums growing where nothing bends, so that each share has its place. */
  private static final double GROWS = 1e-300;

  /** A stretch, the segments that stand for it, and how far they are off. */
  record Piece(CurvePiece stretch, List<Segment> segments, double distance, double turn) {}

  /** An arc pair along a spiral is off by (change of bend) times length squared over this. */
  private static final double PAIR_ERROR = 324;

  /** An arc pair along a spiral is off in direction by (change of bend) times length over this. */
  private static final double PAIR_TURN = 32;

  /** What does not depend on the bend keeps joints apart where the bend is steady. */
  private static final double EVEN = 0.25;

  /** The quick look between samples leaves this margin. */
  private static final double QUICK = 0.97;

  private static final int SAMPLES = 64;
  private static final int ROUNDS = 14;
  private static final int HALVINGS = 24;

  private final FreeCurve curve;
  private final double tolerance;
  private final double angle;
  private final int most;

  StretchFit(FreeCurve curve, double tolerance, double angle, int most) {
    this.curve = curve;
    this.tolerance = tolerance;
    this.angle = angle;
    this.most = most;
  }

  /** The better of two ways to cut: at the landmarks of the curve, or evenly. */
  List<Piece> fit(CurvePiece stretch) {
    List<Piece> even = fitAll(List.of(stretch));
    List<Double> landmarks = stretch.landmarks(curve);
    if (landmarks.isEmpty() || even.size() == 1) {
      return proven(even);
    }
    List<CurvePiece> parts = new ArrayList<>();
    CurvePiece rest = stretch;
    for (double t : landmarks) {
      parts.add(cut(rest, rest.start(), t));
      rest = cut(rest, t, rest.end());
    }
    parts.add(rest);
    List<Piece> marked = fitAll(parts);
    return proven(count(marked) <= count(even) ? marked : even);
  }

  /** The pieces, each measured; one that is off after all is halved. */
  private List<Piece> proven(List<Piece> pieces) {
    List<Piece> proven = new ArrayList<>(pieces.size());
    pieces.forEach(piece -> prove(piece, HALVINGS, proven));
    return proven;
  }

  private void prove(Piece piece, int left, List<Piece> proven) {
    CurvePiece s = piece.stretch;
    Deviation deviation = new Deviation(piece.segments, curve, s.start(), s.end());
    double distance = deviation.greatest();
    double turn = s.isSpot(curve) ? 0 : deviation.greatestTurn();
    if (distance <= tolerance && turn <= angle) {
      proven.add(new Piece(s, piece.segments, distance, turn));
      return;
    }
    refuseEndless(left, proven, s);
    double middle = (s.start() + s.end()) / 2;
    List<Piece> halves = new ArrayList<>();
    halve(cut(s, s.start(), middle), left - 1, halves);
    halve(cut(s, middle, s.end()), left - 1, halves);
    halves.forEach(half -> prove(half, left - 1, proven));
  }

  private void refuseEndless(int left, List<Piece> pieces, CurvePiece stretch) {
    if (left <= 0 || pieces.size() >= most) {
      throw new GeometryException(
          "the curve turns too tightly to be made of arcs", stretch.ends().from());
    }
  }

  private static int count(List<Piece> pieces) {
    return pieces.stream().mapToInt(p -> p.segments.size()).sum();
  }

  /** A part of a stretch that keeps the stretch's own ends. */
  private CurvePiece cut(CurvePiece whole, double from, double to) {
    boolean first = from == whole.start();
    boolean last = to == whole.end();
    Biarc.Ends ends = whole.ends();
    return new CurvePiece(
        from,
        to,
        new Biarc.Ends(
            first ? ends.from() : curve.at(from),
            first ? ends.leaving() : curve.tangent(from, true),
            last ? ends.to() : curve.at(to),
            last ? ends.arriving() : curve.tangent(to, false)));
  }

  private List<Piece> fitAll(List<CurvePiece> stretches) {
    List<Piece> pieces = new ArrayList<>();
    stretches.forEach(stretch -> spread(stretch, pieces));
    return pieces;
  }

  private void spread(CurvePiece stretch, List<Piece> pieces) {
    double[] sums = pairsNeeded(stretch);
    double needed = sums[SAMPLES];
    int n = (int) Math.max(1, Math.min(most, 0.7 * needed));
    for (int round = 0; round < ROUNDS && n <= most; round++) {
      Optional<List<Piece>> fitted = attempt(stretch, sums, n);
      if (fitted.isPresent()) {
        pieces.addAll(fitted.get());
        return;
      }
      n += Math.max(1, n / 6);
    }
    int parts = (int) Math.max(1, Math.min(most, needed));
    for (int i = 0; i < parts; i++) {
      halve(part(stretch, sums, i, parts), HALVINGS, pieces);
    }
  }

  private Optional<List<Piece>> attempt(CurvePiece stretch, double[] sums, int n) {
    List<Piece> pieces = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      Optional<Piece> piece = pair(part(stretch, sums, i, n));
      if (piece.isEmpty()) {
        return Optional.empty();
      }
      pieces.add(piece.get());
    }
    return Optional.of(pieces);
  }

  private CurvePiece part(CurvePiece stretch, double[] sums, int i, int n) {
    double from = i == 0 ? stretch.start() : parameter(stretch, sums, i / (double) n);
    double to = i == n - 1 ? stretch.end() : parameter(stretch, sums, (i + 1) / (double) n);
    return cut(stretch, from, to);
  }

  private void halve(CurvePiece stretch, int left, List<Piece> pieces) {
    Optional<Piece> piece = pair(stretch);
    if (piece.isPresent()) {
      pieces.add(piece.get());
      return;
    }
    refuseEndless(left, pieces, stretch);
    double middle = (stretch.start() + stretch.end()) / 2;
    halve(cut(stretch, stretch.start(), middle), left - 1, pieces);
    halve(cut(stretch, middle, stretch.end()), left - 1, pieces);
  }

  /** Running number of arc pairs that the limits ask for along a stretch; never still. */
  private double[] pairsNeeded(CurvePiece stretch) {
    double step = (stretch.end() - stretch.start()) / SAMPLES;
    double[] bend = new double[SAMPLES + 1];
    double[] run = new double[SAMPLES + 1];
    double length = 0;
    Point before = stretch.ends().from();
    for (int i = 0; i <= SAMPLES; i++) {
      double t = stretch.start() + i * step;
      Point p = curve.at(t);
      run[i] = p.distance(before);
      length += run[i];
      before = p;
      double k = curve.curvature(t);
      bend[i] = Double.isFinite(k) ? k : 1 / CurvePiece.PINCH;
    }
    double[] sums = new double[SAMPLES + 1];
    for (int i = 1; i <= SAMPLES; i++) {
      double change = Math.abs(bend[i] - bend[i - 1]) * run[i];
      double byDistance = Math.cbrt(change * run[i] / (PAIR_ERROR * tolerance));
      double byTurn = Math.sqrt(change / (PAIR_TURN * angle));
      double even = length > 0 ? run[i] / length : 1.0 / SAMPLES;
      sums[i] = sums[i - 1] + Math.max(byDistance, byTurn) + EVEN * even + GROWS;
    }
    return sums;
  }

  private static double parameter(CurvePiece stretch, double[] sums, double share) {
    double wanted = share * sums[SAMPLES];
    int i = 1;
    while (i < SAMPLES && sums[i] < wanted) {
      i++;
    }
    double within = (wanted - sums[i - 1]) / (sums[i] - sums[i - 1]);
    return stretch.start() + (stretch.end() - stretch.start()) * (i - 1 + within) / SAMPLES;
  }

  /** The best arc pair of a stretch, when it keeps both limits. */
  private Optional<Piece> pair(CurvePiece s) {
    Optional<List<Segment>> best = Biarc.balanced(s.ends()).filter(segments -> keeps(segments, s));
    if (best.isEmpty()) {
      best =
          Biarc.jointOn(curve, s.start(), s.end(), s.ends()).filter(segments -> keeps(segments, s));
    }
    if (best.isEmpty() && s.isSpot(curve)) {
      best = spot(s);
    }
    return best.map(segments -> new Piece(s, segments, Double.NaN, Double.NaN));
  }

  private static Optional<List<Segment>> spot(CurvePiece s) {
    Optional<List<Segment>> pair = Biarc.balanced(s.ends());
    boolean apart = !s.ends().from().near(s.ends().to(), Tolerances.SAME_POINT);
    return pair.isPresent() || !apart
        ? pair
        : Optional.of(List.of(new Line(s.ends().from(), s.ends().to())));
  }

  private boolean keeps(List<Segment> segments, CurvePiece s) {
    return new Deviation(segments, curve, s.start(), s.end())
        .within(QUICK * tolerance, QUICK * angle);
  }
}
