package felloe.report;

import felloe.document.Block.Figure;
import felloe.document.Block.Paragraph;
import felloe.document.Phrase;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.drawing.PictureDrawing;
import felloe.plate.Plate;
import felloe.service.ShowOutcome;
import java.util.List;

/** A plate's key figures, told. */
public final class ShowReport {

  private ShowReport() {}

  /** The figures, told. */
  public static Report of(ShowOutcome outcome) {
    Plate plate = outcome.plate();
    return new Report(
        Phrase.of("{}, revision {}", plate.title(), plate.revision()),
        List.of(
            Paragraph.of(
                "{}; {}, {}{}.",
                Phrase.begin(plate.stock().material().title()),
                Phrase.count(plate.windows().size(), "window"),
                Phrase.count(plate.holes().size(), "hole"),
                plate.hub().map(hub -> "; for hub " + hub)),
            Rows.of(outcome.figures())
                .words("", f -> f.name())
                .figures("", f -> Units.fixed(f.value(), f.unit()))
                .table(),
            new Figure(PictureDrawing.of(plate, outcome.findings()))));
  }
}
