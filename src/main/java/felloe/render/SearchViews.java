package felloe.render;

import felloe.load.TriedDesign;
import felloe.report.SearchReport;
import felloe.service.SearchOutcome;
import java.util.List;

/** Searches as JSON. */
final class SearchViews {

  private SearchViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(SearchOutcome.class)
            .with(SearchOutcome::plate)
            .with("varied", SearchOutcome::spans)
            .with("tried", one -> one.designs().size())
            .with("known_before", SearchOutcome::again)
            .with("lightest", one -> one.lightest().map(d -> new Told(d, one)))
            .with("front", one -> told(one.front(), one))
            .with("designs", one -> told(one.designs(), one))
            .with("cautions", one -> SearchReport.cautions()),
        View.of(Told.class)
            .with(t -> t.design())
            .with("does", t -> t.design().does())
            .with("front", t -> t.outcome().front().contains(t.design())));
  }

  private static List<Told> told(List<TriedDesign> designs, SearchOutcome outcome) {
    return designs.stream().map(one -> new Told(one, outcome)).toList();
  }

  /** A design beside the search that it belongs to. */
  private record Told(TriedDesign design, SearchOutcome outcome) {}
}
