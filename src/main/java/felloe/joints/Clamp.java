package felloe.joints;

import felloe.hub.ScrewThread;
import felloe.plate.Joint.Surface;
import felloe.plate.Plate;
import java.util.Optional;

/**
 * How hard a screw may clamp: as the screw, and every face that it presses on, stands.
 *
 * <p>A face is the ring between the outer diameter of head, nut or washer and the larger of hole
 * and washer's hole; the pressure is taken as even. The face toward the hub is larger than that of
 * any head and is not asked.
 */
record Clamp(
    Plate plate, Fasteners fasteners, ScrewThread thread, StrengthClass strength, double hole) {

  private record Bound(double force, String by) {}

  /**
   * The torque to start from.
   *
   * @param part what clamped parts are called, such as {@code grip scale}
   * @param partInFront whether one lies between head and plate, so that the head presses on that
   * @param partBehind the same of the nut
   */
  StartingTorque torque(
      Surface surface,
      HeadSize head,
      Optional<WasherSize> washer,
      String part,
      boolean partInFront,
      Optional<NutSize> nut,
      Optional<WasherSize> nutWasher,
      boolean partBehind) {
    Bound bound = new Bound(fasteners.preload().value() * strength.proofLoad(thread), "the screw");
    bound =
        least(bound, face(washer, head.bearing(), "head", partInFront ? part : ClampedPart.PLATE));
    if (nut.isPresent()) {
      bound =
          least(
              bound,
              face(nutWasher, nut.get().bearing(), "nut", partBehind ? part : ClampedPart.PLATE));
    }
    return StartingTorque.of(
        thread.diameter(), bound.force(), fasteners.factor(surface), bound.by());
  }

  private static Bound least(Bound a, Bound b) {
    return b.force() < a.force() ? b : a;
  }

  private Bound face(Optional<WasherSize> washer, double bearing, String what, String on) {
    double outer = washer.map(WasherSize::diameter).orElse(bearing);
    double inner = Math.max(hole, washer.map(WasherSize::hole).orElse(0.0));
    double pressure =
        on.equals(ClampedPart.PLATE)
            ? fasteners.allowables(plate.stock().material()).face().value()
            : fasteners.partFace().value();
    return new Bound(
        pressure * StartingTorque.ring(outer, inner),
        "the " + on + " under the " + (washer.isPresent() ? what + "'s washer" : what));
  }
}
