package felloe.review;

import felloe.joints.JointPlan;
import felloe.plate.Dust;
import felloe.plate.Finding;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reviews a plate by all rules. */
public final class Review {

  private static final List<Rule> RULES = rulesInOrder();

  private Review() {}

  private static List<Rule> rulesInOrder() {
    List<Rule> rules =
        new ArrayList<>(
            List.of(
                PlausibleSize.WIDTH,
                PlausibleSize.THICKNESS,
                new ClearOpenings(),
                new NarrowWebs(),
                new EdgeDistance(),
                new HolePitch(),
                new CornerRadii.Inside(),
                new CornerRadii.Outer(),
                new FingerRoom(FingerRoom.Measure.DEPTH),
                new FingerRoom(FingerRoom.Measure.LENGTH),
                new GripGirth(true),
                new GripGirth(false),
                new EngravingDepth(),
                new ChamferLand(),
                BodyRule.ROOM,
                BodyRule.SEAT,
                BodyRule.PASSES,
                BodyRule.THREAD,
                new SheetFit(),
                Weight.MASS,
                Weight.CENTROID_OFFSET,
                Weight.HANG_TORQUE));
    rules.addAll(Arrays.asList(JointRule.values()));
    return List.copyOf(rules);
  }

  /** All rules, in the order in which their findings are told. */
  public static List<Rule> rules() {
    return RULES;
  }

  /**
   * Reviews a plate against the program's limits and those that its shape file sets.
   *
   * @return the findings in the order of {@link #rules()}
   * @throws felloe.plate.BadInput when the shape file sets a limit for a rule that does not exist,
   *     or one below zero; all of them, each at its place
   */
  public static ReviewReport of(Plate plate) {
    return of(plate, List.of());
  }

  /**
   * The same with findings that other checks made of the plate.
   *
   * @param others such as those of the hub fit; told last, in their own order
   */
  public static ReviewReport of(Plate plate, List<Finding> others) {
    return of(plate, JointPlan.of(plate), others);
  }

  /**
   * The same with a plan of the plate's joints, made for the hub that it goes on.
   *
   * @param others as above
   */
  public static ReviewReport of(Plate plate, JointPlan joints, List<Finding> others) {
    Limits limits = Limits.with(plate.limits());
    Reviewed of = Reviewed.of(plate, joints);
    // Rules know nothing of each other: two cores halve the wait of whoever changes a shape.
    List<List<Finding>> each = RULES.parallelStream().map(rule -> rule.check(of, limits)).toList();
    List<Finding> findings = new ArrayList<>();
    each.forEach(findings::addAll);
    findings.addAll(LoosenedLimits.of(of, limits, findings));
    findings.addAll(others);
    return new ReviewReport(findings, cautions(plate.stock().material()));
  }

  /** What one rule finds in a plate; none for an id that is no rule's. */
  public static List<Finding> of(String rule, Plate plate, JointPlan joints) {
    Reviewed of = Reviewed.of(plate, joints);
    Limits limits = Limits.with(plate.limits());
    return RULES.stream()
        .filter(r -> r.id().equals(rule))
        .flatMap(r -> r.check(of, limits).stream())
        .toList();
  }

  /** What every report says beside its findings. */
  private static List<String> cautions(Material material) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "For closed-course use, at the builder's own judgement; not for public roads.",
                "Event rules, local codes and a qualified person have the last word.",
                "This review measures the shape. It proves neither strength nor stiffness, and it"
                    + " does not know how well the plate is made: test before use.",
                Dust.of(material)));
    if (material.kind() == MaterialKind.WOOD) {
      all.add("A plywood wheel is a mock-up unless its strength is proved.");
    } else if (material.kind() == MaterialKind.PLASTIC) {
      all.add(
          "Sheet plastic breaks from notches without warning: use it for patterns and mock-ups, not"
              + " for a wheel that is driven.");
    }
    return all;
  }
}
