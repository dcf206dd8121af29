package felloe.layup;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;

/**
 * Which pot to mix when. Times are minutes after the first one is begun.
 *
 * @param pots in the order in which they are mixed
 * @param potLife minutes that 100 g have at the workshop's temperature
 * @param usablePotLife minutes that are planned with in the heaviest pot
 * @param workingTime minutes that the film can be worked at that temperature
 * @param perPly minutes that a ply takes
 * @param lastPly when the last ply is down
 * @param closed when the mould is closed and weighted
 * @param deadline when it must be
 * @param ratioError greatest share by which a pot's ratio is off because of the scale
 * @param obstacles why it cannot be done so; empty when it can
 */
public record PotPlan(
    List<Pot> pots,
    double potLife,
    double usablePotLife,
    double workingTime,
    double perPly,
    double lastPly,
    double closed,
    double deadline,
    double ratioError,
    List<String> obstacles) {

  /** Share of the pot life that is planned with: common practice, the last of it is too thick. */
  static final double SAFETY = 0.8;

  /** How far a mix may be off its ratio: common practice, 2 %. */
  static final double RATIO = 0.02;

  public PotPlan {
    pots = List.copyOf(pots);
    obstacles = List.copyOf(obstacles);
  }

  /**
   * One pot.
   *
   * @param number from 1
   * @param plies what it is for, in words
   * @param resin g
   * @param hardener g
   * @param millilitres of both, before they are mixed
   * @param mixAt when to begin mixing
   * @param spreadFrom when to begin spreading
   * @param emptyBy when it should be empty
   * @param setsAt when its pot life ends
   */
  public record Pot(
      int number,
      String plies,
      double resin,
      double hardener,
      double millilitres,
      double mixAt,
      double spreadFrom,
      double emptyBy,
      double setsAt) {

    /** Both, g. */
    public double mix() {
      return resin + hardener;
    }
  }

  /**
   * Parts a need into pots.
   *
   * @param area of the blank, mm²
   */
  static PotPlan of(ResinPlan.Need need, int plies, double area, LayupChoice choice) {
    return new Parting(need, plies, area, choice).plan();
  }

  private static final class Parting {
    private final ResinPlan.Need need;
    private final LayupChoice choice;
    private final double life;
    private final double limit;
    private final double working;
    private final double mix;
    private final double perPly;
    private final int steps;
    private final boolean together;
    private final List<String> obstacles = new ArrayList<>();

    Parting(ResinPlan.Need need, int plies, double area, LayupChoice choice) {
      this.need = need;
      this.choice = choice;
      Process.Minutes minutes = choice.process().minutes();
      this.life = choice.resin().potLife().at(choice.temperature());
      this.limit = choice.resin().potLimit();
      this.working = choice.resin().workingTime().at(choice.temperature());
      this.mix = minutes.mix();
      this.perPly = minutes.ply() + minutes.squareMetre() * area / 1e6;
      this.together = choice.process().together();
      this.steps = together ? 1 : plies;
    }

    PotPlan plan() {
      // A ply that takes more than one pot may hold is parted.
      int parts = (int) Math.max(1, Tolerances.up(need.total() / steps / limit));
      // Rounding adds steps of the scale; on a scale far too coarse no parting helps.
      while (weighed(need.total() / steps / parts) > limit
          && need.total() / steps / parts > limit / 2) {
        parts++;
      }
      int units = steps * parts;
      double mass = need.total() / units;
      double time = perPly / parts;
      if (mix + time > usable(mass)) {
        obstacles.add(tooSlow(mass, parts));
      }
      int most = 1;
      while (most < units && suits((most + 1) * mass, (most + 1) * time)) {
        most++;
      }
      int count = (units + most - 1) / most;
      List<Pot> pots = new ArrayList<>();
      double now = 0;
      int from = 0;
      double error = 0;
      double shortest = life;
      for (int i = 0; i < count; i++) {
        int to = (int) ((long) units * (i + 1) / count);
        double spread = now + mix;
        double empty = spread + (to - from) * time;
        Pot pot = pot(i + 1, words(from, to, parts), (to - from) * mass, now, spread, empty);
        pots.add(pot);
        error = Math.max(error, error(pot));
        shortest = Math.min(shortest, pot.setsAt() - pot.mixAt());
        now = empty;
        from = to;
      }
      double closed = now + choice.process().minutes().close();
      if (closed > working) {
        obstacles.add(tooLong(closed));
      }
      return new PotPlan(
          pots, life, SAFETY * shortest, working, perPly, now, closed, working, error, obstacles);
    }

    /** Whether a pot of that mass is neither too heavy nor too thick before it is empty. */
    private boolean suits(double mass, double spreading) {
      return weighed(mass) <= limit && mix + spreading <= usable(mass) + Tolerances.ROUNDING;
    }

    /** Minutes of the life of a pot that are planned with; it is as heavy as it is weighed out. */
    private double usable(double mass) {
      return SAFETY * choice.resin().potLife(choice.temperature(), weighed(mass));
    }

    /** What a pot weighs when both parts are whole steps of the scale. */
    private double weighed(double mass) {
      return pot(1, "", mass, 0, 0, 0).mix();
    }

    /** Hardener is rounded up, and resin follows from it, so that the ratio suffers least. */
    private Pot pot(int number, String plies, double mass, double at, double spread, double empty) {
      double step = choice.scale();
      double ratio = choice.resin().byWeight() / 100;
      double hardener = step * Tolerances.up(mass * ratio / (1 + ratio) / step);
      double resin = step * Math.ceil(hardener / ratio / step - 0.5);
      double life = choice.resin().potLife(choice.temperature(), resin + hardener);
      double volume = choice.resin().millilitres(resin, hardener);
      return new Pot(number, plies, resin, hardener, volume, at, spread, empty, at + life);
    }

    private double error(Pot pot) {
      double ratio = choice.resin().byWeight() / 100;
      return pot.resin() <= 0 ? 1 : Math.abs(pot.hardener() / pot.resin() / ratio - 1);
    }

    private String words(int from, int to, int parts) {
      if (together) {
        return parts == 1 ? "all plies" : "all plies, pot " + to + " of " + parts;
      }
      if (parts > 1) {
        return from / parts == (to - 1) / parts
            ? "ply " + (from / parts + 1) + ", part " + (from % parts + 1) + " of " + parts
            : "plies " + (from / parts + 1) + " to " + ((to - 1) / parts + 1);
      }
      return to - from == 1 ? "ply " + to : "plies " + (from + 1) + " to " + to;
    }

    private String tooSlow(double mass, int parts) {
      double grams = weighed(mass);
      return "a pot is too thick after "
          + Numbers.brief(usable(mass), 1)
          + " min (pot life "
          + Numbers.brief(choice.resin().potLife(choice.temperature(), grams), 1)
          + " min at "
          + Numbers.brief(choice.temperature(), 1)
          + " degrees"
          + (grams > ResinSystem.TOLD_FOR ? " for " + Numbers.brief(grams, 1) + " g" : "")
          + ", of which four fifths are planned with), but mixing and "
          + (parts == 1 ? "one ply" : "a part of a ply")
          + " take "
          + Numbers.brief(mix + perPly / parts, 1)
          + " min; take a slower hardener, a cooler room or a second pair of hands";
    }

    private String tooLong(double closed) {
      return "the first ply begins to set after "
          + Numbers.brief(working, 0)
          + " min at "
          + Numbers.brief(choice.temperature(), 1)
          + " degrees, but the mould is closed only after "
          + Numbers.brief(closed, 0)
          + " min; take a slower hardener, a cooler room, heavier cloth in fewer plies or a second"
          + " pair of hands";
    }
  }

  /** Whether the scale is too coarse for the ratio. */
  public boolean coarseScale() {
    return ratioError > RATIO;
  }
}
