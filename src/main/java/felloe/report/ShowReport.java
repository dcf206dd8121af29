package felloe.report;

import felloe.document.Block.Figure;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.PictureDrawing;
import felloe.plate.Plate;
import felloe.service.ShowOutcome;

/** A plate's key figures, told. */
public final class ShowReport {

  private ShowReport() {}

  /** The figures, told. */
  public static Report of(ShowOutcome outcome) {
    Plate plate = outcome.plate();
    Telling told = new Telling();
    told.say(
            "{}; {}, {}{}.",
            Phrase.begin(plate.stock().material().title()),
            Phrase.count(plate.windows().size(), "window"),
            Phrase.count(plate.holes().size(), "hole"),
            plate.hub().map(hub -> "; for hub " + hub))
        .add(
            Rows.of(outcome.figures())
                .words("", f -> f.name())
                .figures("", f -> Words.fixed(f.value(), f.unit())));
    plate
        .stock()
        .madeOtherwise()
        .ifPresent(
            laid ->
                told.say(
                    "The mass is that of the lay-up, which comes to {}.",
                    Quantity.fixed(laid, 2, "mm")));
    return told.add(
            new Figure(
                PictureDrawing.of(plate, outcome.findings(), BothSides.once(outcome.findings()))))
        .under(Words.title(plate));
  }
}
