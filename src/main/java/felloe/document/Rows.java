package felloe.document;

import felloe.document.Block.Column;
import felloe.document.Block.Fill;
import felloe.document.Block.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A table put together column by column, a row for each of some items. Cells may be told as texts
 * or whole numbers; see {@link Cell#row}.
 *
 * @param <T> what each row tells of
 */
public final class Rows<T> {

  private final List<T> items;
  private final List<Column> columns;
  private final List<Function<T, Object>> cells;

  private Rows(List<T> items, List<Column> columns, List<Function<T, Object>> cells) {
    this.items = items;
    this.columns = columns;
    this.cells = cells;
  }

  /** A table without columns yet. */
  public static <T> Rows<T> of(List<T> items) {
    return new Rows<>(List.copyOf(items), List.of(), List.of());
  }

  private Rows<T> with(Column column, Function<T, Object> cell) {
    List<Column> heads = new ArrayList<>(columns);
    List<Function<T, Object>> more = new ArrayList<>(cells);
    heads.add(column);
    more.add(cell);
    return new Rows<>(items, heads, more);
  }

  /** One more column of words. */
  public Rows<T> words(String head, Function<T, Object> cell) {
    return with(Column.words(head), cell);
  }

  /** One more column of words that give way first. */
  public Rows<T> wrapped(String head, Function<T, Object> cell) {
    return with(Column.wrapped(head), cell);
  }

  /** The same, so many times as wide as the others of its kind on pages. */
  public Rows<T> wrapped(String head, int share, Function<T, Object> cell) {
    return with(new Column(head, "", Fill.WRAPPED, share), cell);
  }

  /** One more column of figures that tell their own unit, or have none. */
  public Rows<T> figures(String head, Function<T, Object> cell) {
    return figures(head, "", cell);
  }

  /** One more column of figures of one unit. */
  public Rows<T> figures(String head, String unit, Function<T, Object> cell) {
    return with(Column.figures(head, unit), cell);
  }

  /** One more column of figures of one unit, all with so many places. */
  public Rows<T> fixed(String head, String unit, int decimals, ToDoubleFunction<T> figure) {
    return figures(head, unit, item -> Quantity.fixed(figure.applyAsDouble(item), decimals, unit));
  }

  /** One more column of boxes to tick. */
  public Rows<T> tick(String head) {
    return with(new Column(head, "", Fill.TICK), item -> new Cell.Tick());
  }

  /** One more column to write in by hand. */
  public Rows<T> blank(String head) {
    return blank(head, 1);
  }

  /** The same, so many times as wide as usual. */
  public Rows<T> blank(String head, int share) {
    return with(new Column(head, "", Fill.BLANK, share), item -> new Cell.Blank());
  }

  /** The table, without columns in which nothing stands. */
  public Table table() {
    List<List<Cell>> rows = new ArrayList<>();
    for (T item : items) {
      rows.add(Cell.row(cells.stream().map(cell -> cell.apply(item)).toArray()));
    }
    int[] told =
        IntStream.range(0, columns.size())
            .filter(i -> rows.isEmpty() || rows.stream().anyMatch(r -> !r.get(i).equals(Cell.NONE)))
            .toArray();
    return Table.of(only(columns, told), rows.stream().map(row -> only(row, told)).toList());
  }

  private static <E> List<E> only(List<E> all, int[] some) {
    return IntStream.of(some).mapToObj(all::get).toList();
  }
}
