package felloe.report;

import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Rows;
import felloe.plate.Figure;
import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import felloe.plate.Verdict;
import java.util.List;

/** What several reports tell, said in one way. */
final class Words {

  private Words() {}

  /** A plate with its revision. */
  static String title(Plate plate) {
    return Phrase.of("{}, revision {}", plate.title(), plate.revision());
  }

  /** The same with what is told of it. */
  static String title(Plate plate, String what) {
    return title(plate) + ": " + what;
  }

  static String plies(int count) {
    return Phrase.count(count, "ply", "plies");
  }

  static Cell verdict(Verdict verdict) {
    return switch (verdict) {
      case PASS -> new Cell.Verdict(Tone.WELL, "pass");
      case CAUTION -> new Cell.Verdict(Tone.CAUTION, "caution");
      case FAIL -> new Cell.Verdict(Tone.FAIL, "FAIL");
    };
  }

  /**
   * A figure that an answer rests on.
   *
   * @param name what it is
   * @param value how much, in words
   * @param basis where it comes from
   */
  record Source(String name, String value, String basis) {

    static Source of(SourcedFigure figure) {
      String value = Quantity.rounded(figure.value(), figure.unit()).text();
      return new Source(figure.name(), value, figure.basis());
    }
  }

  /** Where figures come from. */
  static Rows<Source> sources(List<Source> sources) {
    return Rows.of(sources)
        .wrapped("figure", Source::name)
        .figures("value", Source::value)
        .wrapped("where it comes from", Source::basis);
  }

  /** A figure without zeros at its end. */
  static Quantity brief(double value, String unit) {
    return Quantity.brief(value, decimals(unit), unit);
  }

  /** A figure with as many places as its unit asks for. */
  static Quantity fixed(double value, String unit) {
    return Quantity.fixed(value, decimals(unit), unit);
  }

  /** A figure of a finding. */
  static Quantity brief(Figure figure) {
    return brief(figure.value(), figure.unit());
  }

  private static int decimals(String unit) {
    return switch (unit) {
      case "g", "mm2" -> 1;
      case "mm4" -> 0;
      case "N m" -> 3;
      default -> 2;
    };
  }
}
