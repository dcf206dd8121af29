package felloe.bringin;

import felloe.geometry.Contour;
import felloe.geometry.RigidTransform;
import felloe.plate.FeatureTag;
import java.util.Optional;

/**
 * A closed line of a drawing.
 *
 * @param as what the drawing says that it is
 * @param fitted whether it stands for chords or curves
 */
record PlatePart(Contour contour, DrawnAs as, boolean fitted) {

  Optional<FeatureTag> tag() {
    return as.tag();
  }

  /** Whether its layer says that it is an opening, round or not. */
  boolean isWindow() {
    return as.layer().equals(Layers.WINDOWS);
  }

  /** Whether its layer says that a screw through a grip stands in it. */
  boolean isGripHole() {
    return as.layer().equals(Layers.GRIP_HOLES);
  }

  PlatePart moved(RigidTransform motion) {
    return new PlatePart(contour.moved(motion), as, fitted);
  }
}
