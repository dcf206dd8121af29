package felloe.document;

import felloe.document.Block.Tone;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;

/** What stands in a table's cell. */
public sealed interface Cell permits Cell.Words, Cell.Tick, Cell.Blank, Cell.Verdict, Quantity {

  /** What is not known, the same wherever it is shown. */
  Cell UNKNOWN = new Words("?");

  /** Nothing belongs here. */
  Cell NONE = new Words("");

  /**
   * What it says in a column that tells a unit.
   *
   * @param unit that the column's head tells; may be empty
   */
  String text(String unit);

  /**
   * Words.
   *
   * @param words what they say
   */
  record Words(String words) implements Cell {

    @Override
    public String text(String unit) {
      return words;
    }
  }

  /** A box to tick; on a terminal nothing. */
  record Tick() implements Cell {

    @Override
    public String text(String unit) {
      return "[ ]";
    }
  }

  /** Room to write in. */
  record Blank() implements Cell {

    @Override
    public String text(String unit) {
      return "";
    }
  }

  /**
   * A verdict.
   *
   * @param tone how it is meant
   * @param words what it says
   */
  record Verdict(Tone tone, String words) implements Cell {

    @Override
    public String text(String unit) {
      return words;
    }
  }

  /**
   * A row of cells.
   *
   * @param parts cells, texts, whole numbers, or optional ones of these, which leave the cell empty
   * @throws IllegalArgumentException for anything else
   */
  static List<Cell> row(Object... parts) {
    return Arrays.stream(parts).map(Cell::cell).toList();
  }

  private static Cell cell(Object part) {
    if (part instanceof String || part instanceof Integer) {
      return new Words(part.toString());
    }
    if (part instanceof Cell cell) {
      return cell;
    }
    if (part instanceof Optional<?> optional) {
      return optional.isPresent() ? cell(optional.get()) : NONE;
    }
    if (part instanceof OptionalInt optional) {
      return optional.isPresent() ? cell(optional.getAsInt()) : NONE;
    }
    throw new IllegalArgumentException("no cell: " + part.getClass());
  }

  /** A quantity where there is a figure, else nothing. */
  static Cell of(OptionalDouble figure, DoubleFunction<Quantity> quantity) {
    return figure.isPresent() ? quantity.apply(figure.getAsDouble()) : NONE;
  }

  /** A figure with so many places where there is one, else nothing. */
  static Cell fixed(OptionalDouble figure, int decimals, String unit) {
    return of(figure, value -> Quantity.fixed(value, decimals, unit));
  }

  /** A quantity, or the sign for what is not known. */
  static Cell orUnknown(Optional<Quantity> quantity) {
    return quantity.<Cell>map(q -> q).orElse(UNKNOWN);
  }
}
