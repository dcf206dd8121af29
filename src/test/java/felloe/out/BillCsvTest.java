package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.job.Bill;
import felloe.service.Jobs;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The bill as a table: a line an item, its masses those of the bill, its texts safe. */
class BillCsvTest {

  private static List<String[]> rows(Bill bill) {
    String text = new String(BillCsv.write(bill), StandardCharsets.UTF_8);
    assertTrue(text.endsWith("\r\n"));
    return text.lines().map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)).toList();
  }

  @Test
  void everyItemHasItsLineAndMassesAddUp() {
    Bill bill = Jobs.of("heron").job().bill();
    List<String[]> rows = rows(bill);
    assertEquals(bill.items().size() + 1, rows.size());
    double mass = 0;
    for (String[] row : rows.subList(1, rows.size())) {
      assertEquals(rows.get(0).length, row.length, String.join("|", row));
      mass += row[7].isEmpty() ? 0 : Double.parseDouble(row[7]);
      assertTrue(!row[10].isEmpty(), String.join("|", row));
    }
    assertEquals(bill.mass(), mass, 0.005 * bill.items().size());
    assertEquals("stock", rows.get(1)[0]);
    assertEquals("\"carbon twill 2/2, 200 g/m2, roll 1000 mm wide\"", rows.get(1)[1]);
    assertEquals("3.6", rows.get(1)[2]);
    assertEquals("m", rows.get(1)[3]);
    assertEquals("cut-cloth", rows.get(1)[5]);
  }
}
