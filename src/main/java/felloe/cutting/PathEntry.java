package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where the cutter enters a path: in the middle of one of its longest segments, by a lead as large
 * as it may be. A beam that has no room for the whole arc pierces where it is farthest from the
 * finish line, on a smaller arc or straight across: in a small hole that is its centre.
 *
 * @param line the path
 * @param loop the path in the direction of travel, from its start
 * @param lead the way onto it, if any has room
 */
record PathEntry(CutLine line, Loop loop, Optional<Segment> lead) {

  /** How many of the longest segments are tried. */
  private static final int TRIED = 64;

  /** A start this share of the lead's radius off the path is as far off as it need be. */
  private static final double WELL_OFF = 0.75;

  /** Chooses. */
  static PathEntry of(CutLine line, CutSetup setup, Leads leads) {
    boolean climb = setup.direction() == CutDirection.CLIMB;
    List<Segment> chain = Loop.directed(line, climb);
    List<Integer> longest =
        IntStream.range(0, chain.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -chain.get(i).length()))
            .limit(TRIED)
            .toList();
    boolean beam = setup.process() != CutProcess.ROUTER;
    Optional<PathEntry> best = Optional.empty();
    for (double r = setup.entry().lead(); r >= Leads.LEAST; r /= 2) {
      for (int i : longest) {
        Segment segment = chain.get(i);
        double middle = isCircle(segment) ? 0 : 0.5;
        Point at = segment.at(middle);
        Point travel = segment.tangent(middle);
        Optional<Segment> lead = leads.onto(at, travel, r);
        boolean whole = r == setup.entry().lead();
        if (lead.isPresent() && (!beam || whole && wide(lead, r, setup, leads))) {
          return new PathEntry(line, Loop.startedAt(chain, i), lead);
        }
        if (beam) {
          best = farther(best, line, chain, i, leads.across(at, travel, r), leads);
          best = farther(best, line, chain, i, lead, leads);
        }
      }
    }
    if (beam && chain.size() == 1 && chain.get(0) instanceof Arc round) {
      best = farther(best, line, chain, 0, fromTheCentre(line, round, setup, leads), leads);
    }
    return best.orElseGet(
        () -> new PathEntry(line, Loop.startedAt(chain, longest.get(0)), Optional.empty()));
  }

  /** The way from the centre of a round hole, where it is no longer than the lead may be. */
  private static Optional<Segment> fromTheCentre(
      CutLine line, Arc round, CutSetup setup, Leads leads) {
    boolean fits = round.radius() >= Leads.LEAST && round.radius() <= setup.entry().lead();
    return fits && line.inside()
        ? leads.across(round.from(), round.tangent(0), round.radius())
        : Optional.empty();
  }

  private static Optional<PathEntry> farther(
      Optional<PathEntry> best,
      CutLine line,
      List<Segment> chain,
      int number,
      Optional<Segment> lead,
      Leads leads) {
    boolean better =
        lead.isPresent()
            && (best.isEmpty()
                || leads.room(lead.get().from()) > leads.room(best.get().start()) + 1e-6);
    return better ? Optional.of(new PathEntry(line, Loop.startedAt(chain, number), lead)) : best;
  }

  /**
   * Whether the start lies well off every edge: in a small hole an arc begins beside its far side.
   */
  private static boolean wide(Optional<Segment> lead, double r, CutSetup setup, Leads leads) {
    return leads.room(lead.orElseThrow().from()) >= setup.half() + WELL_OFF * r;
  }

  private static boolean isCircle(Segment segment) {
    return segment instanceof Arc arc && arc.isCircle();
  }

  /** Where the cutter goes down. */
  Point start() {
    return lead.map(Segment::from).orElseGet(() -> loop.at(0));
  }

  /** Length of the lead, mm; 0 without one. */
  double leadLength() {
    return lead.map(Segment::length).orElse(0.0);
  }
}
