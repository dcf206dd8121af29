package felloe.report;

import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.hub.CalliperFigures;
import felloe.hub.CalliperReading;
import felloe.hub.HubFitResult;
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
    calliper(laid(hub.rings()), told);
    return told.under(Phrase.of("{}: {}", hub.name(), hub.title()));
  }

  /**
   * A calliper laid on screws or holes.
   *
   * @param on what it is laid on
   * @param reads what it reads there
   */
  public record Laid(String on, CalliperFigures reads) {}

  /** What a calliper reads on the screws of a hub. */
  public static List<Laid> laid(List<HubRing> rings) {
    return rings.stream()
        .map(ring -> new Laid(ring.thread().name() + " screws in the hub", ring.calliper()))
        .toList();
  }

  /** The same with the holes of a plate that is to meet it. */
  public static List<Laid> laid(HubFitResult fit) {
    List<Laid> all = new ArrayList<>(laid(fit.rings()));
    fit.plateCalliper().ifPresent(c -> all.add(new Laid("holes in the plate", c)));
    return all;
  }

  static void calliper(List<Laid> laid, Telling told) {
    for (Laid one : laid) {
      CalliperFigures figures = one.reads();
      told.add(
          Rows.of(figures.readings())
              .words("pair", CalliperReading::name)
              .fixed("centres", "mm", 2, CalliperReading::centres)
              .fixed("outside", "mm", 2, CalliperReading::outside)
              .fixed("inside", "mm", 2, CalliperReading::inside)
              .table()
              .under(
                  Phrase.of(
                      "Calliper on {} {}, circle of {}",
                      figures.count(),
                      one.on(),
                      Quantity.mm(figures.pitchDiameter()))));
      if (!figures.warning().isEmpty()) {
        told.say(figures.warning());
      }
    }
  }
}
