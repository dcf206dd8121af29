package felloe.job;

import felloe.cutting.CutFeature;
import felloe.cutting.CutLine;
import felloe.drilling.DrillingPlan;
import felloe.joints.JointPlan;
import felloe.layup.LaidUp;
import felloe.layup.LayupPlan;
import felloe.layup.StockSource;
import felloe.load.ProofLoad;
import felloe.plate.HolePosition;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.List;
import java.util.Optional;

/**
 * What the rooms of each act have worked out for a plate.
 *
 * @param plate what is made
 * @param joints its screws
 * @param drilling its holes
 * @param stock how its stock is got; empty where it could not be planned
 * @param cutting its windows and outline
 * @param print its template
 * @param proof the weights that prove it; empty where its loads were not reckoned
 */
public record Parts(
    Plate plate,
    JointPlan joints,
    DrillingPlan drilling,
    Optional<StockSource> stock,
    Cutting cutting,
    Print print,
    Optional<ProofLoad> proof) {

  /**
   * The printed template.
   *
   * @param paper name of the paper
   * @param pages of the template
   * @param bar true length of the check bars, mm
   * @param good how far a bar may be off, mm
   */
  public record Print(String paper, int pages, double bar, double good) {}

  /** The lay-up of a plate whose stock is laid up; empty for bought stock. */
  public Optional<LayupPlan> laidUp() {
    return stock.flatMap(StockSource::plan);
  }

  /** Whether its stock is laid up by the maker, planned or not. */
  public boolean ownLaminate() {
    return laidUp().isPresent() || LaidUp.is(plate.stock());
  }

  /** Whether a machine makes its holes. */
  public boolean holesByMachine() {
    return plate.making().places(HolePosition.MACHINE);
  }

  /** Whether windows and outline are sawn by hand, along the template. */
  public boolean sawn() {
    return cutting instanceof Cutting.Saw;
  }

  /** Labels of the openings that are sawn, in the plate's order. */
  public List<String> sawnWindows() {
    if (!(cutting instanceof Cutting.Saw saw)) {
      return List.of();
    }
    return saw.plan()
        .map(
            p ->
                p.lines().stream()
                    .map(CutLine::feature)
                    .filter(feature -> feature.kind() != CutFeature.Kind.OUTLINE)
                    .map(CutFeature::label)
                    .distinct()
                    .toList())
        .orElseGet(() -> plate.windows().stream().map(Window::label).toList());
  }

  /** Whether the template is printed: something is sawn along it or marked through it. */
  public boolean templated() {
    return sawn() || !holesByMachine();
  }

  /** Whether screws hold it to a hub. */
  public boolean bolted() {
    return !plate.holes(HoleRole.BOLT).isEmpty();
  }

  /** Whether it may be driven with; else it is a mock-up. */
  public boolean driven() {
    return plate.stock().material().kind().driven();
  }

  /** Whether it has grips. */
  public boolean gripped() {
    return joints.grips().any()
        || plate.making().gripScale() > 0
        || !plate.holes(HoleRole.GRIP).isEmpty();
  }

  /** Mass of the finished bare plate, g. */
  public double mass() {
    return laidUp().map(LayupPlan::plateMass).orElseGet(plate::mass);
  }
}
