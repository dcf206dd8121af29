package felloe.review;

import felloe.plate.Engraving;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Depth of engraved lines over the thickness of the plate. The deepest is told, and every other one
 * beyond the limit.
 */
record EngravingDepth() implements Rule {

  @Override
  public String id() {
    return "engraving-depth";
  }

  @Override
  public String why() {
    return "A groove is a notch, and the plate bends where it is thin.";
  }

  @Override
  public String unit() {
    return "t";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    LimitPair bounds = limits.of(this, "any", Sense.AT_MOST, 1);
    double deepest = plate.engravings().stream().mapToDouble(Engraving::depth).max().orElse(0);
    List<Finding> findings = new ArrayList<>();
    for (Engraving one : plate.engravings()) {
      double part = one.depth() / plate.stock().asMade();
      boolean told = findings.isEmpty() && one.depth() == deepest;
      if (told || bounds.judge(part) != Verdict.PASS) {
        findings.add(
            bounds.finding(
                this,
                one.label(),
                "depth of the lines",
                part,
                Optional.of(one.strokes().get(0).get(0).from()),
                one.place(),
                "the loads reckon the plate without them: keep them shallow, and off spokes and"
                    + " rim"));
      }
    }
    return findings;
  }
}
