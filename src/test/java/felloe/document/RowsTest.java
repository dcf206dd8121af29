package felloe.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RowsTest {

  private static List<String> heads(Rows<Integer> rows) {
    return rows.table().columns().stream().map(Block.Column::head).toList();
  }

  @Test
  void aColumnInWhichNothingStandsIsLeftOut() {
    Rows<Integer> rows =
        Rows.of(List.of(1, 2))
            .figures("plies", n -> OptionalInt.empty())
            .figures("mass", n -> n)
            .words("note", n -> n == 2 ? "thick" : "");
    assertEquals(List.of("mass", "note"), heads(rows));
    assertEquals(2, rows.table().rows().get(0).size());
  }

  @Test
  void roomToWriteInAndBoxesStay() {
    Rows<Integer> rows = Rows.of(List.of(1)).words("done", n -> "").tick("ok").blank("measured");
    assertEquals(List.of("ok", "measured"), heads(rows));
  }

  @Test
  void aTableWithoutRowsKeepsItsHeads() {
    assertEquals(List.of("mass"), heads(Rows.of(List.<Integer>of()).figures("mass", n -> n)));
  }
}
