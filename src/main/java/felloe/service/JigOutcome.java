package felloe.service;

import felloe.drawing.Cautions;
import felloe.drawing.Stamp;
import felloe.jig.Guide;
import felloe.jig.JigMaker;
import felloe.jig.JigPlan;
import felloe.jig.JigWish;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/**
 * What is printed to make a plate by: a template, a drill jig and a gauge.
 *
 * @param study the plate
 * @param plan pieces, guides and how true they are
 */
public record JigOutcome(Study study, JigPlan plan) {

  private static final List<String> PRINTING =
      List.of(
          "Nozzle and bed burn, and hot plastic gives off fumes and fine particles: fresh air, and"
              + " what the makers of printer and plastic say.",
          "A printed jig wears, and softens where a drill runs hot: try each guide with the drill's"
              + " shank before every plate, and print it anew when the shank rattles. Clamp jig"
              + " and plate to the table; never hold them by hand under a turning drill.");

  /**
   * Plans it.
   *
   * @throws felloe.plate.BadInput with everything that cannot be
   */
  public static JigOutcome of(Study study, JigWish wish) {
    return new JigOutcome(study, JigMaker.of(study.plate(), study.fit(), wish));
  }

  public Plate plate() {
    return study.plate();
  }

  /**
   * Whether the play of the jig on its spigot or in its rim is no matter to the hub: it moves all
   * holes alike, and a hub without a spigot of its own goes along.
   */
  public boolean shifts() {
    return (plan.locator().spigot() || plan.locator().rim())
        && study.hub().filter(hub -> hub.pilot().isPresent()).isEmpty();
  }

  /** Whether at the worst holes are farther off, one from another, than the hub's screws allow. */
  public boolean beyond() {
    Guide worst = plan.worst();
    double off = worst.worst() - (shifts() ? worst.of(Guide.Cause.LOCATING) : 0);
    return plan.allowed().filter(most -> off > most).isPresent();
  }

  /** What is printed across its pictures. */
  public Stamp stamp() {
    return Stamp.of(Stamp.Act.CUT, study.findings());
  }

  /** Sentences that go with printing and drilling. */
  public List<String> cautions() {
    List<String> cautions = new ArrayList<>(List.of(Cautions.USE));
    cautions.addAll(Cautions.cutting(plate().stock().material()));
    cautions.addAll(PRINTING);
    return cautions;
  }
}
