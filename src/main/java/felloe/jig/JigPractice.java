package felloe.jig;

import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Optional;

/**
 * Figures of printed jigs that no drawing states, from the resource {@code jig-practice.yaml}; mm.
 *
 * @param place how far a printed hole lies from its place, scale apart
 * @param shrinkage what a print is smaller by, as a part, where the gauge was not read
 * @param reading what the readings on the gauge may be off
 * @param guidePlay play of a drill in a printed guide
 * @param bushPlay play of a steel bush in its printed hole
 * @param edge how far a finished edge lies off its line
 * @param largestDrill the largest drill that is guided
 * @param basis where these come from
 * @param bushes sizes of steel bushes, the smallest first
 * @param bushesBasis where those come from
 * @param running greatest play of drills in bushes
 * @param runningBasis where that comes from
 */
public record JigPractice(
    double place,
    double shrinkage,
    double reading,
    double guidePlay,
    double bushPlay,
    double edge,
    double largestDrill,
    String basis,
    List<BushSize> bushes,
    String bushesBasis,
    List<Running> running,
    String runningBasis) {

  private static final String RESOURCE = "/felloe/jig-practice.yaml";

  /**
   * A size of steel bushes.
   *
   * @param bore the largest bore of this outside diameter, mm
   * @param outside diameter, mm
   * @param lengths that it comes in, the shortest first, mm
   */
  public record BushSize(double bore, double outside, List<Double> lengths) {}

  /**
   * Play of drills up to a diameter in their bushes.
   *
   * @param to the largest diameter, mm
   * @param play the greatest, mm
   */
  public record Running(double to, double play) {}

  public JigPractice {
    bushes = List.copyOf(bushes);
    running = List.copyOf(running);
  }

  /** The program's own figures. Read anew at each call; keep it. */
  public static JigPractice standard() {
    Problems problems = new Problems();
    Fields top = BuiltIn.tree(RESOURCE).fields(problems);
    Fields print = top.group("print");
    double place = print.length("place").positive().required();
    double shrinkage = print.number("shrinkage").positive().required();
    double reading = print.length("reading").positive().required();
    double guidePlay = print.length("guide_play").positive().required();
    double bushPlay = print.length("bush_play").positive().required();
    double edge = print.length("edge").positive().required();
    double largest = print.length("largest_drill").positive().required();
    String basis = print.text("basis").required();
    List<BushSize> bushes = top.list("bushes").atLeast(1).each(JigPractice::bush);
    String bushesBasis = top.text("bushes_basis").required();
    List<Running> running = top.list("running").atLeast(1).each(JigPractice::running);
    String runningBasis = top.text("running_basis").required();
    top.done();
    problems.throwIfAny();
    return new JigPractice(
        place,
        shrinkage,
        reading,
        guidePlay,
        bushPlay,
        edge,
        largest,
        basis,
        bushes,
        bushesBasis,
        running,
        runningBasis);
  }

  private static Optional<BushSize> bush(Fields f) {
    double bore = f.length("bore").positive().required();
    double outside = f.length("outside").positive().required();
    List<Double> lengths = f.list("lengths").lengths();
    return f.build(() -> new BushSize(bore, outside, lengths));
  }

  private static Optional<Running> running(Fields f) {
    double to = f.length("to").positive().required();
    double play = f.length("play").positive().required();
    return f.build(() -> new Running(to, play));
  }

  /**
   * The steel bush for a drill, as long as the jig allows.
   *
   * @param height of the jig, mm
   * @return empty when even the shortest is longer
   */
  Optional<DrillBush> bush(double drill, double height) {
    BushSize size = bushes.stream().filter(b -> drill <= b.bore()).findFirst().orElseThrow();
    double play = running.stream().filter(r -> drill <= r.to()).findFirst().orElseThrow().play();
    return size.lengths().stream()
        .filter(length -> length <= height)
        .reduce((shorter, longer) -> longer)
        .map(length -> new DrillBush(drill, size.outside(), length, play));
  }
}
