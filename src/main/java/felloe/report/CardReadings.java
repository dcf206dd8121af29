package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.document.Block.Depth;
import felloe.document.Block.Steps;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.job.Act;
import felloe.job.Readings;
import felloe.load.ProofLoad;
import felloe.service.CardOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is measured on the way, told, with blanks in the order of the files that it is typed into.
 */
final class CardReadings {

  /** Where stock is measured, near its edges. */
  private static final List<String> PLACES =
      List.of(
          "upper left", "upper middle", "upper right", "lower right", "lower middle", "lower left");

  private final CardOutcome outcome;
  private final CardCalls calls;
  private final Readings readings;
  private final Telling told = new Telling();

  private CardReadings(CardOutcome outcome, CardCalls calls) {
    this.outcome = outcome;
    this.calls = calls;
    this.readings = outcome.job().readings();
  }

  static Telling of(CardOutcome outcome, CardCalls calls) {
    CardReadings readings = new CardReadings(outcome, calls);
    readings.bench();
    readings.strips();
    readings.holes();
    readings.torques();
    readings.proof();
    return readings.told;
  }

  /** A thing that is read once. */
  private record One(String what, String is, String least, String most) {}

  private void bench() {
    List<One> all = new ArrayList<>();
    readings
        .bars()
        .ifPresent(bars -> Stream.of("across", "up").forEach(way -> bar(bars, way, all)));
    Readings.Thickness thick = readings.thickness();
    for (String place : PLACES.subList(0, thick.places())) {
      all.add(
          new One(
              "thick, " + place,
              fixed(thick.planned(), 2, "").text(),
              Cell.fixed(thick.least(), 2, "").text(""),
              Cell.fixed(thick.most(), 2, "").text("")));
    }
    all.add(new One("bare plate, g", fixed(readings.mass(), 0, "").text(), "", ""));
    told.head("Readings of print, stock and plate, mm and g");
    told.add(
        Rows.of(all)
            .words("", One::what)
            .figures("true", One::is)
            .figures("least", One::least)
            .figures("most", One::most)
            .blank("reads")
            .table()
            .sideBySide());
  }

  private static void bar(Readings.Bars bars, String way, List<One> all) {
    all.add(
        new One(
            "check bar " + way,
            brief(bars.length(), 1, "").text(),
            brief(bars.length() - bars.good(), 1, "").text(),
            brief(bars.length() + bars.good(), 1, "").text()));
  }

  private void holes() {
    if (readings.sizes().isEmpty()) {
      return;
    }
    told.head("Readings of the finished hub pattern");
    told.say(
        "Measure before edges are broken, mm; diameters twice, crosswise, and their mean. The"
            + " numbers are those of the form {}-measured.yaml. Type in what was read and ask: {}",
        outcome.plate().name(),
        calls.measured());
    told.fold(Depth.PAPER, DrillReport.form(readings.sizes(), readings.distances(), false));
  }

  private void strips() {
    if (readings.strips().isEmpty()) {
      return;
    }
    Readings.Strips strips = readings.strips().get();
    told.head("Readings of the broken strips");
    told.say(
        "Three-point bending over a span of {}. In the order of the file {}-strips.yaml: width,"
            + " thickness at three places, the highest load that it bore (N, or kg that hung on"
            + " it), how far it had bent under that. Type them in and ask: {}",
        brief(strips.span(), 1, "mm"),
        outcome.plate().name(),
        calls.tested());
    told.fold(
        Depth.PAPER,
        Rows.of(strips.labels())
            .words("label", label -> label)
            .blank("width")
            .blank("thickness")
            .blank("thickness")
            .blank("thickness")
            .blank("load")
            .blank("deflection"));
  }

  private void torques() {
    if (readings.torques().isEmpty()) {
      return;
    }
    told.head("Torque of the hub screws");
    told.add(
        Rows.of(readings.torques())
            .words("screw", Readings.Torque::hole)
            .words("", Readings.Torque::thread)
            .figures("torque", "N m", t -> JointReport.torque(t.torque()))
            .blank("put in, day")
            .blank("a day later, turned by")
            .blank("locked, day")
            .tick("marked"));
  }

  /** A part of a weight, and where it hangs. */
  private record Part(ProofLoad.Hang hang, ProofLoad.Step step) {}

  private void proof() {
    if (!outcome.job().order().has(Act.PROVE)) {
      return;
    }
    told.head("Proof load");
    if (readings.proof().isEmpty()) {
      told.say(
          outcome.load().isPresent()
              ? "Not to be proved as it is: see the verdict on the first page."
              : Phrase.of(
                  "Not yet reckoned, so that no weight can be told here. Ask: {}", calls.proof()));
      return;
    }
    ProofLoad proof = readings.proof().get();
    told.cautions(ProofReport.CAUTIONS);
    told.say(String.join(" ", ProofReport.setUp(outcome.plate())));
    told.say("Stop, and take the weight off, when " + String.join(" ", ProofReport.stops(proof)));
    told.add(
        new Steps(
            proof.hangs().stream().map(hang -> Phrase.sentence(ProofReport.hung(hang))).toList(),
            true));
    told.say(
        "After the last part wait a minute, read, take all off and read again: no more than {} of"
            + " the deflection may be left. Places are in mm from the hub axis, x to the driver's"
            + " right, y up.",
        Quantity.percent(proof.left().value(), 0));
    List<Part> parts = new ArrayList<>();
    for (ProofLoad.Hang hang : proof.hangs()) {
      ProofReport.steps(proof, hang).forEach(step -> parts.add(new Part(hang, step)));
    }
    told.add(
        Rows.of(parts)
            .words("", part -> part.hang().name())
            .fixed("kg", "", 1, part -> part.step().weight())
            .figures(
                "least",
                part -> part.step().weight() > 0 ? fixed(part.step().least(), 1, "").text("") : "")
            .fixed("most", "", 1, part -> part.step().most())
            .blank("rim reads")
            .blank("hub reads")
            .table()
            .sideBySide()
            .under("kg that hang, mm that the rim sinks"));
  }
}
