package felloe.cutting;

import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.Optional;
import java.util.function.Function;

/**
 * One thing that is wrong with how a cut is asked for.
 *
 * @param figure the figure that is wrong; empty when it stands in the shape file; beside a place in
 *     the shape file the figure that cures it
 * @param place where it stands in the shape file; {@link Place#BUILT_IN} for a figure
 * @param who the path of the value, or what it is about; may be empty
 * @param value what was read; may be empty
 * @param wanted what is allowed, as the rest of a sentence about the value
 * @param cure what to do about it; may be empty
 */
public record CutFault(
    Optional<CutFigure> figure, Place place, String who, String value, String wanted, String cure) {

  /** A figure that cannot be. */
  static CutFault of(CutFigure figure, String value, String wanted, String cure) {
    return new CutFault(Optional.of(figure), Place.BUILT_IN, "", value, wanted, cure);
  }

  /** Something in the shape file that cannot be cut so. */
  static CutFault at(Place place, String who, String value, String wanted, String cure) {
    return new CutFault(Optional.empty(), place, who, value, wanted, cure);
  }

  /**
   * The fault as a problem of input.
   *
   * @param places where each figure was asked for, such as the option that it came by
   */
  public Problem problem(Function<CutFigure, Place> places) {
    if (figure.isEmpty() || place.equals(Place.BUILT_IN)) {
      return new Problem(figure.map(places).orElse(place), who, value, wanted, cure);
    }
    return new Problem(place, who, value, wanted, cure + " (" + places.apply(figure.get()) + ")");
  }
}
