package felloe.report;

import felloe.document.Phrase;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.hub.HubSpec;
import felloe.service.KnownHub;
import felloe.service.KnownHubs;
import java.util.List;

/** Hubs, told. */
public final class HubReport {

  private HubReport() {}

  /** All hubs, a line each. */
  public static Report list(KnownHubs known) {
    return new Telling()
        .add(
            Rows.of(known.hubs()).words("hub", HubSpec::name).wrapped("what it is", HubSpec::title))
        .under("Hubs that are known");
  }

  /** Every figure of a hub with where it comes from, and what a calliper reads on it. */
  public static Report of(KnownHub known) {
    HubSpec hub = known.hub();
    Telling told = new Telling();
    told.add(
        Rows.of(List.copyOf(hub.figures().entrySet()))
            .words(
                "figure",
                f ->
                    (f.getKey().startsWith("second.") ? "second ring: " : "") + f.getValue().name())
            .figures("is", f -> Words.brief(f.getValue().value(), f.getValue().unit()))
            .wrapped("basis", f -> f.getValue().basis()));
    HubFitReport.calliper(hub.rings(), told);
    return told.under(Phrase.of("{}: {}", hub.name(), hub.title()));
  }
}
