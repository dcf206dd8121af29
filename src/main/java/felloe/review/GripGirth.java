package felloe.review;

import felloe.geometry.Gap;
import felloe.geometry.Numbers;
import felloe.grips.GripStation;
import felloe.grips.PlacedGrip;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Girth of the rim beside each grip window: once round its section where it is narrowest among the
 * places that a hand closes about, plate and grip scales together, edges rounded as far as the
 * section allows. Grips that are described have a girth of their own, at every 5 mm; there the
 * thinnest and the thickest place count that fingers go round, their tapered ends left out.
 *
 * @param least whether the rule asks for enough; otherwise for not too much
 */
record GripGirth(boolean least) implements Rule {

  @Override
  public String id() {
    return least ? "grip-girth-least" : "grip-girth-most";
  }

  @Override
  public String why() {
    return least
        ? "A thin rim tires the hand and cuts into it."
        : "A hand does not close round a thick rim.";
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    LimitPair bounds = limits.of(this, "any", least ? Sense.AT_LEAST : Sense.AT_MOST, 1);
    double height = plate.stock().thickness() + 2 * plate.making().gripScale();
    List<Finding> findings = new ArrayList<>();
    Map<PlacedGrip, List<GripStation>> held = new LinkedHashMap<>();
    for (Reviewed.Held one : of.grips()) {
      held.put(one.grip(), one.stations().stream().filter(GripStation::held).toList());
    }
    // Where a window has grips beside it, hands hold those and not the bare rest of its rim.
    Set<String> gripped =
        held.values().stream()
            .flatMap(List::stream)
            .flatMap(station -> station.window().stream())
            .collect(Collectors.toSet());
    for (Window window : plate.windows()) {
      if (window.use() == WindowUse.GRIP && !gripped.contains(window.label())) {
        HandRim.narrowest(plate.outline(), window.contour(), limits.figure("finger"))
            .map(rim -> finding(window, rim, height, limits, bounds))
            .ifPresent(findings::add);
      }
    }
    held.forEach(
        (grip, stations) ->
            stations.stream()
                .filter(station -> !grip.tapered(station))
                .min(order())
                .map(station -> finding(grip, station, bounds))
                .ifPresent(findings::add));
    return findings;
  }

  private Comparator<GripStation> order() {
    Comparator<GripStation> thinnest = Comparator.comparingDouble(s -> s.girth().orElseThrow());
    return least ? thinnest : thinnest.reversed();
  }

  private Finding finding(PlacedGrip grip, GripStation station, LimitPair bounds) {
    return bounds.finding(
        this,
        "grip " + grip.grip().label() + (least ? ", where it is thinnest" : ", at its thickest"),
        "grip girth",
        station.girth().orElseThrow(),
        Optional.of(station.at()),
        grip.grip().place(),
        "once round grip, plate and wrap, "
            + Numbers.brief(station.s(), 0)
            + " mm from where it starts; it is "
            + off(station.girth().orElseThrow(), bounds));
  }

  private Finding finding(Window window, Gap rim, double height, Limits limits, LimitPair bounds) {
    double girth = girth(rim.distance(), height, limits.figure("grip-edge-radius"));
    return bounds.finding(
        this,
        "rim beside " + window.label(),
        "grip girth",
        girth,
        Optional.of(rim.from().middle(rim.to())),
        window.place(),
        advice(rim.distance(), girth, bounds));
  }

  private String advice(double width, double girth, LimitPair bounds) {
    return "the rim is "
        + Numbers.brief(width, 1)
        + " mm wide here; the girth is "
        + off(girth, bounds);
  }

  private String off(double girth, LimitPair bounds) {
    double by = Math.abs(bounds.good().map(Limit::value).orElse(girth) - girth);
    return Numbers.brief(by, 1) + (least ? " mm too small" : " mm too large");
  }

  /** Once round a rectangle with rounded corners, mm. */
  static double girth(double width, double height, double radius) {
    double round = Math.min(radius, Math.min(width, height) / 2);
    return 2 * (width + height) - (8 - 2 * Math.PI) * round;
  }
}
