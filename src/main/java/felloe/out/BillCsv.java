package felloe.out;

import felloe.geometry.Numbers;
import felloe.job.Bill;
import felloe.layup.Supply;
import felloe.yaml.Entry;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;

/**
 * A bill of materials as CSV after RFC 4180: a header line, one line an item, lines ended by CR LF,
 * UTF-8. Texts are made safe as in {@link HoleCsv}; a figure that there is none of is left blank.
 */
public final class BillCsv {

  private static final String HEADER =
      "group,item,amount,unit,each,for,spent,on_the_wheel_g,cost,currency,basis\r\n";

  private BillCsv() {}

  /** The file's bytes. */
  public static byte[] write(Bill bill) {
    StringBuilder table = new StringBuilder(HEADER);
    for (Bill.Item item : bill.items()) {
      Supply supply = item.supply();
      table
          .append(Entry.nameOf(item.group()))
          .append(',')
          .append(HoleCsv.field(supply.what()))
          .append(',')
          .append(Numbers.brief(supply.amount(), 3))
          .append(',')
          .append(HoleCsv.field(supply.unit()))
          .append(',')
          .append(HoleCsv.field(supply.each()))
          .append(',')
          .append(Entry.nameOf(item.act()))
          .append(',')
          .append(supply.spent() ? "yes" : "no")
          .append(',')
          .append(figure(item.mass(), 2))
          .append(',')
          .append(figure(item.cost(), 2))
          .append(',')
          .append(item.cost().isPresent() ? HoleCsv.field(bill.currency().orElse("")) : "")
          .append(',')
          .append(HoleCsv.field(item.basis()))
          .append("\r\n");
    }
    return table.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String figure(OptionalDouble value, int decimals) {
    return value.isPresent() ? Numbers.fixed(value.getAsDouble(), decimals) : "";
  }
}
