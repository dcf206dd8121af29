package felloe.load;

import felloe.geometry.Point;
import felloe.plate.MaterialKind;
import felloe.plate.SourcedFigure;
import felloe.plate.Weights;
import java.util.ArrayList;
import java.util.List;

/**
 * How a finished wheel is proved: off the car, bolted to its hub, its face level, with weights hung
 * from the rim that come to the loads that hands are held to, and no more.
 *
 * <p>Only cases of one hand and a force square to the plate are hung; those that push are hung with
 * the driver's side up, those that pull with it down.
 *
 * @param hangs one after another, those with the driver's side up first
 * @param spread how far a sound plate may bend more or less than reckoned, as a part of it
 * @param left what may be left of the deflection when the weight is off, as a part of it
 */
public record ProofLoad(List<Hang> hangs, SourcedFigure spread, SourcedFigure left) {

  /** The parts of a weight that it is hung in. */
  private static final List<Double> STEPS = List.of(0.25, 0.5, 0.75, 1.0);

  /** A weight below this tells nothing that a dial can read, kg. */
  private static final double LEAST = 1;

  public ProofLoad {
    hangs = List.copyOf(hangs);
  }

  /**
   * A weight in one place.
   *
   * @param name of the load case
   * @param title what the case is
   * @param driverUp whether the driver's side is up
   * @param at where it hangs, mm
   * @param weight all of it, kg
   * @param basis where the load comes from
   * @param steps what is hung one after another
   */
  public record Hang(
      String name,
      String title,
      boolean driverUp,
      Point at,
      double weight,
      String basis,
      List<Step> steps) {

    public Hang {
      steps = List.copyOf(steps);
    }
  }

  /**
   * A part of a weight, and what the rim sinks there.
   *
   * @param weight kg
   * @param least less is not believed: look at the dial, the stand and the weight, mm
   * @param most more means stop, mm
   */
  public record Step(double weight, double least, double most) {}

  /** The proof of a plate whose loads were reckoned. */
  public static ProofLoad of(LoadPlan plan) {
    MaterialKind kind = plan.plate().stock().material().kind();
    JudgingBook book = JudgingBook.builtIn();
    SourcedFigure spread = book.proofSpread().get(kind);
    List<Hang> up = new ArrayList<>();
    List<Hang> down = new ArrayList<>();
    for (LoadPlan.Judged one : plan.cases()) {
      List<HandForce> forces = one.field().load().forces();
      HandForce force = forces.get(0);
      double weight = force.size() / Weights.GRAVITY;
      boolean hung = forces.size() == 1 && force.x() == 0 && force.y() == 0 && weight >= LEAST;
      if (hung && one.fall().isEmpty()) {
        (force.z() < 0 ? up : down).add(hang(one, force, weight, spread.value()));
      }
    }
    up.addAll(down);
    return new ProofLoad(up, spread, book.proofLeft());
  }

  private static Hang hang(LoadPlan.Judged one, HandForce force, double weight, double spread) {
    LoadCase load = one.field().load();
    return new Hang(
        load.name(),
        load.title(),
        force.z() < 0,
        force.at(),
        weight,
        load.basis(),
        STEPS.stream()
            .map(
                part ->
                    new Step(
                        part * weight,
                        part * one.least() * (1 - spread),
                        part * one.field().atLoad() * (1 + spread)))
            .toList());
  }
}
