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
        View.of(
            SearchOutcome.class,
            (one, to) ->
                to.addAll(one.plate())
                    .add("varied", one.spans())
                    .add("tried", one.designs().size())
                    .add("known_before", one.again())
                    .add("lightest", one.lightest().map(d -> new Told(d, one)))
                    .add("front", told(one.front(), one))
                    .add("designs", told(one.designs(), one))
                    .add("cautions", SearchReport.cautions())),
        View.of(
            Told.class,
            (t, to) ->
                to.addAll(t.design())
                    .add("does", t.design().does())
                    .add("front", t.outcome().front().contains(t.design()))));
  }

  private static List<Told> told(List<TriedDesign> designs, SearchOutcome outcome) {
    return designs.stream().map(one -> new Told(one, outcome)).toList();
  }

  /** A design beside the search that it belongs to. */
  private record Told(TriedDesign design, SearchOutcome outcome) {}
}
