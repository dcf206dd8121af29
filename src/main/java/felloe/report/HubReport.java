package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Column;
import felloe.document.Block.Table;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Report;
import felloe.hub.HubRing;
import felloe.hub.HubSpec;
import felloe.service.KnownHub;
import felloe.service.KnownHubs;
import java.util.ArrayList;
import java.util.List;

/** Hubs, told. */
public final class HubReport {

  private HubReport() {}

  /** All hubs, a line each. */
  public static Report list(KnownHubs known) {
    List<List<String>> rows = known.hubs().stream().map(h -> List.of(h.name(), h.title())).toList();
    return new Report(
        "Hubs that are known",
        List.of(Table.ofWords(List.of(Column.words("hub"), Column.wrapped("what it is")), rows)));
  }

  /** Every figure of a hub with where it comes from, and what a calliper reads on it. */
  public static Report of(KnownHub known) {
    HubSpec hub = known.hub();
    List<List<Cell>> rows = new ArrayList<>();
    hub.figures()
        .forEach(
            (key, figure) ->
                rows.add(
                    List.of(
                        Cell.of(
                            key.startsWith("second.")
                                ? "second ring: " + figure.name()
                                : figure.name()),
                        Units.brief(figure.value(), figure.unit()),
                        Cell.of(figure.basis()))));
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Table.of(
            List.of(Column.words("figure"), Column.figures("is", ""), Column.wrapped("basis")),
            rows));
    for (HubRing ring : hub.rings()) {
      blocks.addAll(
          HubFitReport.calliper(ring.thread().name() + " screws in the hub", ring.calliper()));
    }
    return new Report(Phrase.of("{}: {}", hub.name(), hub.title()), blocks);
  }
}
