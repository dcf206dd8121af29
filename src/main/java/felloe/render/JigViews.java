package felloe.render;

import felloe.jig.Guide;
import felloe.jig.JigPiece;
import felloe.jig.JigPlan;
import felloe.jig.Locator;
import felloe.plate.Hole;
import felloe.service.JigOutcome;
import java.util.List;

/** What is printed to make a plate by, as JSON: mm, mm\u00b3. */
final class JigViews {

  private JigViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(
            JigOutcome.class,
            (one, to) ->
                to.addAll(one.plate())
                    .add("fails", one.study().fails())
                    .add("beyond", one.beyond())
                    .addAll(one.plan())
                    .add("cautions", one.cautions())),
        View.record(
            JigPlan.class,
            (plan, to) -> to.add("unguided", plan.unguided().stream().map(Hole::label).toList()),
            "unguided"),
        View.of(
            Locator.class,
            (locator, to) ->
                to.add("holes", locator.holes().stream().map(Hole::label).toList())
                    .add("spigot", locator.spigot())
                    .add("rim", locator.rim())
                    .add("size", locator.size())
                    .add("play", locator.play())),
        View.of(
            Guide.class,
            (guide, to) ->
                to.add("hole", guide.hole().label())
                    .add("at", guide.hole().centre())
                    .add("drill", guide.hole().diameter())
                    .add("bore", guide.bore())
                    .add("bush", guide.bush())
                    .add("worst", guide.worst())
                    .add("likely", guide.likely())
                    .add("shares", guide.shares())),
        View.of(
            JigPiece.class,
            (piece, to) ->
                to.add("name", piece.name())
                    .add("label", piece.label())
                    .add("joints", piece.joints())
                    .add("size", piece.size())
                    .add("volume", piece.body().volume())
                    .add("triangles", piece.body().triangles().size())));
  }
}
