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
 * as it may be.
 *
 * @param line the path
 * @param loop the path in the direction of travel, from its start
 * @param lead the way onto it, if any has room
 */
record PathEntry(CutLine line, Loop loop, Optional<Arc> lead) {

  /** How many of the longest segments are tried. */
  private static final int TRIED = 64;

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
    for (double r = setup.entry().lead(); r >= Leads.LEAST; r /= 2) {
      for (int i : longest) {
        double middle = isCircle(chain.get(i)) ? 0 : 0.5;
        Segment segment = chain.get(i);
        Optional<Arc> lead = leads.onto(segment.at(middle), segment.tangent(middle), r);
        if (lead.isPresent()) {
          return new PathEntry(line, Loop.startedAt(chain, i), lead);
        }
      }
    }
    return new PathEntry(line, Loop.startedAt(chain, longest.get(0)), Optional.empty());
  }

  private static boolean isCircle(Segment segment) {
    return segment instanceof Arc arc && arc.isCircle();
  }

  /** Where the cutter goes down. */
  Point start() {
    return lead.map(Arc::from).orElseGet(() -> loop.at(0));
  }

  /** Length of the lead, mm; 0 without one. */
  double leadLength() {
    return lead.map(Arc::length).orElse(0.0);
  }
}
