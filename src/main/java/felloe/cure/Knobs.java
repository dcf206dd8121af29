package felloe.cure;

import felloe.joints.JointPlan;
import felloe.plate.Finding;
import felloe.plate.Grip;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Which figures of a shape file may mend a finding, the likeliest first. */
final class Knobs {

  /** Rules whose findings a figure of the shape's geometry may mend. */
  private static final Set<String> ROOM =
      Set.of(
          "clear-openings",
          "narrowest-web",
          "edge-distance",
          "hole-pitch",
          "head-clearance",
          "head-spacing");

  private static final double SHEET_GRAIN = 5;

  private final Finding finding;
  private final JointPlan joints;
  private final ShapeFigures figures;
  private final Gathered found;

  private Knobs(Finding finding, Plate plate, JointPlan joints, ShapeFigures figures) {
    this.finding = finding;
    this.joints = joints;
    this.figures = figures;
    this.found = new Gathered(finding, plate, figures);
  }

  /** Whether one figure may mend a finding. */
  static boolean suit(Finding finding) {
    return ROOM.contains(finding.rule())
        || switch (finding.rule()) {
          case "inside-corner",
              "outer-corner",
              "finger-depth",
              "finger-length",
              "grip-girth-least",
              "grip-girth-most",
              "sheet-fit" ->
              true;
          default -> JointKnobs.suit(finding);
        };
  }

  /** The figures that may mend a finding. */
  static List<Knob> of(Finding finding, Plate plate, JointPlan joints, ShapeFigures figures) {
    Knobs knobs = new Knobs(finding, plate, joints, figures);
    knobs.fill();
    return knobs.found.knobs();
  }

  private void fill() {
    switch (finding.rule()) {
      case "sheet-fit" -> sheet();
      case "inside-corner", "outer-corner" -> CornerKnobs.into(found);
      case "finger-depth", "finger-length" -> fingers();
      case "grip-girth-least", "grip-girth-most" -> girth();
      default -> {
        if (JointKnobs.suit(finding)) {
          JointKnobs.of(finding, joints, figures).forEach(found::add);
        }
        if (ROOM.contains(finding.rule())) {
          RoomKnobs.into(found);
        }
      }
    }
  }

  private void fingers() {
    boolean depth = finding.rule().equals("finger-depth");
    for (Gathered.Feature one : found.named()) {
      boolean beside = Math.abs(one.middle().x()) >= Math.abs(one.middle().y());
      boolean first = depth == beside;
      found.below(one, first ? "width" : "height", 1);
      found.below(one, first ? "height" : "width", 1);
      found.below(one, "diameter", 1);
      found.below(one, "length", 1);
      for (String key : depth ? List.of("hub_disc", "rim_width") : List.of("rim_width")) {
        figures.figure(one.path() + ".derived." + key).ifPresent(now -> derived(one, key));
      }
      if (!figures.below(one.path(), "hub_disc").isEmpty()) {
        found.outline(1);
      }
    }
  }

  private void derived(Gathered.Feature one, String key) {
    found.add(
        one.path() + ".derived." + key, key.equals("hub_disc") ? -2 : -1, Gathered.LENGTH_GRAIN);
  }

  private void girth() {
    found.plate().grips().stream().map(Grip::path).distinct().forEach(this::grip);
    if (!found.plate().grips().isEmpty()) {
      return;
    }
    // Once round gains twice what the rim gains, and twice what the two scales gain together.
    double scale = found.plate().making().gripScale();
    found.add(
        new Knob(
            "making.grip_scale",
            scale,
            OptionalDouble.of(0.25),
            Gathered.LENGTH_GRAIN,
            to ->
                to < 0
                    ? Optional.empty()
                    : Optional.of(figures.change("making.grip_scale", scale, to))));
    for (Gathered.Feature one : found.named()) {
      figures
          .figure(one.path() + ".derived.rim_width")
          .ifPresent(
              now -> found.add(one.path() + ".derived.rim_width", 0.5, Gathered.LENGTH_GRAIN));
      found.size(one, -1);
      found.below(one, "radius", 1);
    }
  }

  /** Once round gains twice what a grip gains in height. */
  private void grip(String path) {
    for (String key : List.of("front", "back", "past_edge")) {
      figures
          .figure(path + "." + key)
          .ifPresent(now -> found.add(path + "." + key, 0.5, Gathered.LENGTH_GRAIN));
    }
  }

  private void sheet() {
    List<String> both = List.of("stock.sheet.width", "stock.sheet.height");
    if (both.stream().allMatch(p -> figures.figure(p).isPresent())) {
      found.add(
          new Knob(
              String.join(" and ", both),
              0,
              OptionalDouble.of(2),
              SHEET_GRAIN,
              by -> Optional.of(figures.changes(both, by))));
    }
  }
}
