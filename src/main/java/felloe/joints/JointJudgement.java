package felloe.joints;

import felloe.plate.SourcedFigure;
import felloe.plate.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every hub and grip screw, judged: the one answer that the review, the drilling sheet and the load
 * study show.
 *
 * @param screws in the order of the plan
 * @param figures what the answer rests on
 */
public record JointJudgement(List<JudgedScrew> screws, List<SourcedFigure> figures) {

  public JointJudgement {
    screws = List.copyOf(screws);
    figures = List.copyOf(figures);
  }

  /** The worst verdict of all screws. */
  public Verdict verdict() {
    return screws.stream()
        .map(JudgedScrew::verdict)
        .max(Comparator.naturalOrder())
        .orElse(Verdict.PASS);
  }

  /** Whether no screw fails. */
  public boolean met() {
    return verdict() != Verdict.FAIL;
  }

  /** Of the screws with the worst verdict the one with the least ratio. */
  public Optional<JudgedScrew> worst() {
    return screws.stream()
        .filter(s -> s.worst().isPresent())
        .min(
            Comparator.comparing(JudgedScrew::verdict)
                .reversed()
                .thenComparingDouble(s -> Math.rint(1e9 * s.worst().orElseThrow().ratio())));
  }

  /** The screw in a hole, if one is judged. */
  public Optional<JudgedScrew> at(String hole) {
    return screws.stream().filter(s -> s.hole().label().equals(hole)).findFirst();
  }
}
