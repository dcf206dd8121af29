package felloe.job;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.job.Bill.Group;
import felloe.job.Bill.Item;
import felloe.layup.Supply;
import felloe.plate.Body;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What sits in windows and holes, alike things in one line. */
final class BodyItems {

  private BodyItems() {}

  /** What makes two of them alike. */
  private record Kind(String what, Optional<Double> mass) {}

  static List<Item> of(Plate plate) {
    Map<Kind, Integer> alike = new LinkedHashMap<>();
    for (Body body : plate.bodies()) {
      alike.merge(new Kind(described(body), body.mass()), 1, Integer::sum);
    }
    List<Item> items = new ArrayList<>();
    alike.forEach(
        (kind, count) ->
            items.add(
                new Item(
                    Group.FITTINGS,
                    Supply.spent(kind.what, count, ""),
                    Act.FIT_BODIES,
                    kind.mass.stream().mapToDouble(grams -> grams * count).findFirst(),
                    OptionalDouble.empty(),
                    kind.mass.isPresent()
                        ? "the shape file"
                        : "the shape file, which does not tell its mass")));
    return items;
  }

  private static String described(Body body) {
    Box box = body.bezel().box();
    String size =
        body.bezel()
            .asCircle()
            .map(c -> "\u00d8" + Numbers.brief(2 * c.radius(), 2))
            .orElseGet(
                () -> Numbers.brief(box.width(), 1) + " x " + Numbers.brief(box.height(), 1));
    return body.name() + ", bezel " + size + " mm" + (body.nut().isPresent() ? ", with nut" : "");
  }
}
