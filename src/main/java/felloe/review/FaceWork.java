package felloe.review;

import felloe.geometry.Point;
import felloe.plate.Engraving;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is cut shallow into the faces: grooves and chamfers, which no other rule knows. */
enum FaceWork implements Rule {
  /** Depth of an engraved line over the thickness of the plate. */
  ENGRAVING("engraving-depth", "A groove is a notch, and the plate bends where it is thin."),
  /** What two chamfers leave of an edge, over the thickness of the plate. */
  CHAMFER("chamfer-land", "Chamfers that all but meet leave a knife edge.");

  private final String id;
  private final String why;

  FaceWork(String id, String why) {
    this.id = id;
    this.why = why;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String why() {
    return why;
  }

  @Override
  public String unit() {
    return "t";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    return this == ENGRAVING ? engraved(of.plate(), limits) : chamfered(of.plate(), limits);
  }

  /** The deepest, and every other one beyond the limit. */
  private List<Finding> engraved(Plate plate, Limits limits) {
    LimitPair bounds = limits.of(this, "any", Sense.AT_MOST, 1);
    double deepest = plate.engravings().stream().mapToDouble(Engraving::depth).max().orElse(0);
    List<Finding> findings = new ArrayList<>();
    for (Engraving one : plate.engravings()) {
      double part = one.depth() / plate.stock().asMade();
      boolean told = findings.isEmpty() && one.depth() == deepest;
      if (told || bounds.judge(part) != Verdict.PASS) {
        Point at = one.strokes().get(0).get(0).from();
        findings.add(
            bounds.finding(
                this,
                one.label(),
                "depth of the lines",
                part,
                Optional.of(at),
                one.place(),
                "the loads reckon the plate without them: keep them shallow, and off spokes and"
                    + " rim"));
      }
    }
    return findings;
  }

  private List<Finding> chamfered(Plate plate, Limits limits) {
    double chamfer = plate.making().edges().chamfer();
    if (chamfer == 0) {
      return List.of();
    }
    double thickness = plate.stock().asMade();
    return List.of(
        limits
            .of(this, "any", Sense.AT_LEAST, 1)
            .finding(
                this,
                "edges",
                "left between the chamfers",
                (thickness - 2 * chamfer) / thickness,
                Optional.empty(),
                plate.stock().place(),
                "a smaller making.chamfer leaves more"));
  }
}
