package felloe.grips;

import felloe.geometry.RigidTransform;
import felloe.plate.Face;
import felloe.solid.Solid;

/**
 * A piece of a grip as a body, where it sits on the wheel: z = 0 is the driver's face of the plate,
 * z toward the driver, mm.
 *
 * @param label of the grip
 * @param face that it lies on
 * @param piece which piece of that face's, from 1, counter-clockwise along the rim
 * @param pieces how many there are
 * @param solid the body
 */
public record GripBody(String label, Face face, int piece, int pieces, Solid solid) {

  /** Its name, such as {@code GR1-front} or {@code GR1-back-2}. */
  public String name() {
    String side = label + (face == Face.FRONT ? "-front" : "-back");
    return pieces == 1 ? side : side + "-" + piece;
  }

  /** The body as it lies on a printer's bed: the side toward the plate down. */
  public Solid onBed() {
    Solid lying = face == Face.FRONT ? solid : solid.turnedOver();
    return lying.moved(RigidTransform.NONE, -lying.extent().least().z());
  }
}
