package felloe.cutting;

import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** The moves of a beam along one closed path: pierced in the waste, once round, off by an arc. */
final class BeamPath {

  private BeamPath() {}

  static List<Move> moves(PathEntry entry, CutSetup setup, Leads leads) {
    double feed = setup.rates().feed();
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.Travel(entry.start()));
    entry.lead().ifPresent(way -> moves.add(new Move.Cut(way, 0, 0, feed)));
    Loop loop = entry.loop();
    loop.walk(
        0,
        loop.length(),
        new double[0],
        0,
        (piece, from, to) -> moves.add(new Move.Cut(piece, 0, 0, feed)));
    double reach = entry.lead().map(Segment::length).orElse(0.0) / 2;
    leads
        .off(loop.at(0), loop.tangent(0), reach)
        .ifPresent(arc -> moves.add(new Move.Cut(arc, 0, 0, feed)));
    return moves;
  }
}
