package felloe.cure;

import java.util.List;
import java.util.Optional;

/**
 * How a plate that is too weak or too soft becomes as wanted without another thickness, and what a
 * millimetre of each figure does for it. Derivatives are taken over a few millimetres on one mesh;
 * the change was reckoned with as much patience as the plate itself.
 *
 * @param effects of the figures that decide how wide its webs are, the most for a gram first
 * @param found a change of the shape file by which all is as wanted; empty where none was found
 */
public record Widening(List<Effect> effects, Optional<Found> found) {

  public Widening {
    effects = List.copyOf(effects);
  }

  /**
   * What a millimetre does.
   *
   * @param keys of the figures that are changed by it, together
   * @param sense 1 where they grow, -1 where they shrink
   * @param use by which share the highest use falls
   * @param deflection by how much the most that a hand moves the plate falls, mm
   * @param mass that it adds, g
   */
  public record Effect(List<String> keys, int sense, double use, double deflection, double mass) {

    public Effect {
      keys = List.copyOf(keys);
    }
  }

  /**
   * A change that was tried.
   *
   * @param change of the shape file
   * @param margin the least then
   * @param deflection the most that a hand moves it then, mm
   * @param mass that it adds, g
   */
  public record Found(ShapeChange change, double margin, double deflection, double mass) {}
}
