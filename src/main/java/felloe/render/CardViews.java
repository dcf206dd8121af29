package felloe.render;

import felloe.drilling.HoleGroup;
import felloe.job.Bill;
import felloe.out.FindingsJson;
import felloe.plate.Finding;
import felloe.report.CardOrder;
import felloe.report.CardSheet;
import felloe.service.CardOutcome;
import felloe.service.LoadOutcome;
import java.util.List;
import java.util.Optional;

/** Job cards as JSON. */
final class CardViews {

  private CardViews() {}

  /** What loads come to, in short. */
  private record Loads(boolean met, double margin, String marginCase, double deflection) {

    static Loads of(LoadOutcome load) {
      return new Loads(
          load.met(),
          load.worst().margin(),
          load.worst().field().load().name(),
          load.plan().deflection());
    }
  }

  static List<View<?>> all() {
    return List.of(
        View.of(
            CardSheet.class,
            (sheet, to) -> {
              CardOutcome one = sheet.outcome();
              to.addAll(one.plate())
                  .add("verdict", one.study().verdict())
                  .add("well", one.well())
                  .add("stops", one.stops())
                  .add("mass", one.job().parts().mass())
                  .add("loads", one.load().map(Loads::of))
                  .add("refused", one.refused())
                  .add("bill", one.job().bill())
                  .add("order", sheet.order())
                  .add("work_hours", one.job().order().work())
                  .add("waiting_hours", one.job().order().waiting())
                  .add("readings", one.job().readings())
                  .add("open", open(one))
                  .add("calls", sheet.calls());
            }),
        View.record(
            Bill.class,
            (bill, to) ->
                to.add("plate_mass", bill.plateMass())
                    .add("mass", bill.mass())
                    .add("cost", bill.cost())),
        View.of(
            Bill.Item.class,
            (item, to) ->
                to.add("group", item.group())
                    .addAll(item.supply())
                    .add("act", item.act())
                    .add("mass", item.mass())
                    .add("cost", item.cost())
                    .add("basis", item.basis())),
        View.of(
            CardOrder.Line.class,
            (line, to) ->
                to.add("number", line.number())
                    .add("act", line.task().act())
                    .add("holes", line.task().holes().map(HoleGroup::labels).orElse(List.of()))
                    .add("begins_hours", line.begins())
                    .add("work_hours", line.task().work())
                    .add("waiting_hours", line.task().waiting())
                    .add("words", line.words())
                    .add("caution", Optional.of(line.caution()).filter(c -> !c.isEmpty()))
                    .add("more", line.page())));
  }

  private static Object open(CardOutcome one) {
    List<Finding> open = one.study().findings().stream().filter(Finding::isOpen).toList();
    return FindingsJson.of(open).members().get("findings");
  }
}
