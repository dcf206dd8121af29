package felloe.report;

import felloe.document.Block.Column;
import felloe.document.Block.Figure;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Table;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Report;
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
    List<List<Cell>> rows =
        outcome.figures().stream()
            .map(f -> List.<Cell>of(Cell.of(f.name()), Units.fixed(f.value(), f.unit())))
            .toList();
    return new Report(
        Phrase.of("{}, revision {}", plate.title(), plate.revision()),
        List.of(
            new Paragraph(
                Phrase.of(
                    "{}; {}, {}{}.",
                    Phrase.begin(plate.stock().material().title()),
                    Phrase.count(plate.windows().size(), "window"),
                    Phrase.count(plate.holes().size(), "hole"),
                    plate.hub().map(hub -> "; for hub " + hub))),
            Table.of(List.of(Column.words(""), Column.figures("", "")), rows),
            new Figure(PictureDrawing.of(plate, outcome.findings()))));
  }
}
