package felloe.report;

import felloe.document.Block;
import felloe.document.Phrase;
import felloe.document.Report;
import felloe.document.Rows;
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
    return new Report(
        "Hubs that are known",
        List.of(
            Rows.of(known.hubs())
                .words("hub", HubSpec::name)
                .wrapped("what it is", HubSpec::title)
                .table()));
  }

  /** Every figure of a hub with where it comes from, and what a calliper reads on it. */
  public static Report of(KnownHub known) {
    HubSpec hub = known.hub();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Rows.of(List.copyOf(hub.figures().entrySet()))
            .words(
                "figure",
                f ->
                    (f.getKey().startsWith("second.") ? "second ring: " : "") + f.getValue().name())
            .figures("is", f -> Units.brief(f.getValue().value(), f.getValue().unit()))
            .wrapped("basis", f -> f.getValue().basis())
            .table());
    for (HubRing ring : hub.rings()) {
      blocks.addAll(
          HubFitReport.calliper(ring.thread().name() + " screws in the hub", ring.calliper()));
    }
    return new Report(Phrase.of("{}: {}", hub.name(), hub.title()), blocks);
  }
}
