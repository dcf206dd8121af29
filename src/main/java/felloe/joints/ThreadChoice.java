package felloe.joints;

import felloe.hub.ClearanceSeries;
import felloe.hub.HubSpec;
import felloe.hub.ScrewThread;
import felloe.hub.ScrewThreads;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which thread goes through a hole when the maker does not say. */
final class ThreadChoice {

  private final Optional<HubSpec> hub;
  private final List<ScrewThread> metric = new ArrayList<>();

  ThreadChoice(Optional<HubSpec> hub) {
    this.hub = hub;
  }

  /** The hub's thread for a hub hole; else the largest metric one that has room in the hole. */
  Optional<ScrewThread> of(Hole hole) {
    if (hole.role() == HoleRole.BOLT && hub.isPresent()) {
      return Optional.of(hub.get().ringAt(hole.centre()).thread());
    }
    Optional<ScrewThread> found = Optional.empty();
    for (ScrewThread thread : metric()) {
      ClearanceSeries series = ClearanceSeries.of(thread, hole.diameter());
      if (series != ClearanceSeries.TOO_SMALL && series != ClearanceSeries.ABOVE_COARSE) {
        found = Optional.of(thread);
      }
    }
    return found;
  }

  private List<ScrewThread> metric() {
    if (metric.isEmpty()) {
      for (String name : ScrewThreads.names()) {
        if (name.startsWith("M")) {
          metric.add(ScrewThreads.find(name).orElseThrow());
        }
      }
    }
    return metric;
  }
}
