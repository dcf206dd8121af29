package felloe.report;

import felloe.cockpit.CockpitPlan;
import felloe.cockpit.Seated;
import felloe.cockpit.WheelAxes;
import felloe.document.Quantity;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Seat;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Driver;
import java.util.ArrayList;
import java.util.List;

/** Where wheel and driver are, told from the floor and from the seat. */
final class DriverTelling {

  private record Told(String name, Spot spot) {}

  private DriverTelling() {}

  /** Nothing where no seat is written. */
  static Telling places(CockpitPlan plan) {
    Telling told = new Telling();
    Cockpit cockpit = plan.cockpit();
    if (cockpit.seat().isEmpty()) {
      return told;
    }
    Seat seat = cockpit.seat().get();
    List<Told> places = new ArrayList<>();
    places.add(new Told("end of the column", new Spot(0, cockpit.hub(), 0)));
    places.add(
        new Told("middle of the wheel", WheelAxes.of(cockpit).toCar(new Spot(0, 0, plan.front()))));
    plan.seated()
        .ifPresent(
            driver -> {
              places.add(new Told("between the eyes", driver.eye()));
              places.add(new Told("right shoulder", driver.shoulder(1)));
              places.add(new Told("right elbow", driver.elbow(1)));
            });
    told.head("Wheel and seat");
    told.add(
        Rows.of(places)
            .words("place", Told::name)
            .fixed("floor", "mm", 0, one -> one.spot().y())
            .fixed("seat, up", "mm", 0, one -> one.spot().y() - seat.height())
            .fixed("ahead", "mm", 0, one -> seat.behind() - one.spot().z())
            .fixed("right", "mm", 0, one -> one.spot().x() - seat.aside()));
    told.say(
        "From the floor, and from where cushion and back of the seat meet in the middle, pressed"
            + " down: up, ahead toward the wheel, and to the right.");
    cockpit
        .driver()
        .ifPresent(
            driver ->
                told.say(
                    "The driver is the {}th percentile of {}{}, on a seat that leans {}: a plain"
                        + " model, head level, arms beside the trunk. Sit in it before you trust"
                        + " it.",
                    driver.percentile(),
                    driver.people() == Driver.People.MEN ? "men" : "women",
                    driver.own().isEmpty() ? "" : ", with measures of their own",
                    Quantity.brief(Math.toDegrees(seat.back()), 1, "") + "\u00b0"));
    return told;
  }

  /** Measures of the driver with their sources. */
  static List<Words.Source> sources(CockpitPlan plan) {
    return plan.seated().map(Seated::figures).orElse(List.of()).stream()
        .map(Words.Source::of)
        .toList();
  }
}
