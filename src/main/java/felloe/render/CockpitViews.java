package felloe.render;

import felloe.cockpit.Arms;
import felloe.cockpit.Clearance;
import felloe.cockpit.CockpitPlan;
import felloe.cockpit.Seated;
import felloe.cockpit.Sight;
import felloe.plate.Cockpit;
import felloe.review.RimHold;
import felloe.service.CockpitOutcome;
import java.util.List;
import java.util.OptionalDouble;

/** A wheel in its car, as JSON: mm and degrees. */
final class CockpitViews {

  private CockpitViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(
            CockpitOutcome.class,
            (one, to) ->
                to.addAll(one.plate())
                    .add("well", one.well())
                    .addAll(one.plan())
                    .add("hands", one.hands())
                    .add("arms", one.arms())
                    .add("rim", one.rim())
                    .add("reach", one.reach())
                    .add("sight", one.sight())),
        View.of(
            Sight.class,
            (sight, to) ->
                to.add("instrument", sight.instrument().name())
                    .add("eye", sight.eye())
                    .add("hidden", sight.hidden())),
        View.of(
            Sight.Hidden.class,
            (hidden, to) ->
                to.add("turn", Math.toDegrees(hidden.turn())).add("share", hidden.share())),
        View.of(
            Arms.class,
            (arms, to) ->
                to.add("turn", Math.toDegrees(arms.turn()))
                    .add("meet", degrees(arms.meet()))
                    .add("cross", degrees(arms.cross()))
                    .add("stretched", degrees(arms.stretched()))),
        View.of(
            RimHold.class,
            (rim, to) ->
                to.add("from", Math.toDegrees(rim.from()))
                    .add("to", Math.toDegrees(rim.to()))
                    .add("hold", rim.hold())
                    .add("length", rim.length())),
        View.of(
            CockpitPlan.class,
            (plan, to) ->
                to.add("column", Math.toDegrees(plan.cockpit().column()))
                    .add("lock", Math.toDegrees(plan.cockpit().lock()))
                    .add("hub_height", plan.cockpit().hub())
                    .add("seat", plan.cockpit().seat())
                    .add("driver", plan.seated())
                    .add("hand", plan.cockpit().clearance())
                    .add("back", plan.back())
                    .add("front", plan.front())
                    .add("swept_area", plan.swept().properties().area())
                    .add("clearances", plan.clearances())),
        View.of(
            Cockpit.Seat.class,
            (seat, to) ->
                to.add("height", seat.height())
                    .add("behind", seat.behind())
                    .add("aside", seat.aside())
                    .add("back", Math.toDegrees(seat.back()))),
        View.of(
            Seated.class,
            (driver, to) ->
                to.add("eye", driver.eye())
                    .add("shoulders", List.of(driver.shoulder(-1), driver.shoulder(1)))
                    .add("elbows", List.of(driver.elbow(-1), driver.elbow(1)))
                    .add("measures", driver.figures())),
        View.of(
            Clearance.class,
            (one, to) ->
                to.add("thing", one.thing().name())
                    .add("clear", one.distance())
                    .add("meets", one.meets())
                    .add("turn", Math.toDegrees(one.turn()))
                    .add("radius", one.radius())
                    .add("wheel", one.wheel())
                    .add("near", one.near())));
  }

  private static OptionalDouble degrees(OptionalDouble turn) {
    return turn.isPresent() ? OptionalDouble.of(Math.toDegrees(turn.getAsDouble())) : turn;
  }
}
