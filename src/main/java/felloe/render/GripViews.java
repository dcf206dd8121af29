package felloe.render;

import felloe.grips.PlacedGrip;
import felloe.plate.Grip;
import felloe.report.GripsReport;
import felloe.service.GripsOutcome;
import felloe.yaml.Entry;
import java.util.List;

/** Grips as JSON: mm, g, g mm². */
final class GripViews {

  private GripViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(
            GripsOutcome.class,
            (one, to) ->
                to.addAll(one.study().plate())
                    .add("grips", one.grips())
                    .add("mass", one.mass())
                    .add("wheel", one.wheel())
                    .add("cautions", GripsReport.cautions(one))),
        View.of(
            GripsOutcome.Described.class,
            (one, to) ->
                to.addAll(one.placed())
                    .add("pockets", one.pockets())
                    .add("weight", one.weight())
                    .add("stations", one.stations())
                    .add("wraps", one.wraps())),
        View.of(
            PlacedGrip.class,
            (placed, to) -> {
              Grip grip = placed.grip();
              to.add("label", grip.label())
                  .add("place", grip.place())
                  .add("form", Entry.nameOf(grip.form()))
                  .add("faces", Entry.nameOf(grip.faces()))
                  .add("profile", grip.profile())
                  .add("swell", grip.swell())
                  .add("thumb_rest", grip.thumbRest())
                  .add("taper", grip.taper())
                  .add("wrap", grip.wrap())
                  .add("material", grip.material())
                  .add("bonded", grip.bonded())
                  .add("length", placed.run().length())
                  .add("lip", placed.lip())
                  .add("holes", placed.holes().stream().map(h -> h.label()).toList())
                  .add("footprint", placed.footprint());
            }));
  }
}
