package felloe.layup;

import felloe.geometry.Region;
import felloe.geometry.RigidTransform;

/**
 * A piece of cloth where it lies on the roll.
 *
 * @param label number of the ply, with a letter when the ply has several pieces
 * @param ply number of the ply
 * @param direction of the ply, such as {@code 0/90}
 * @param region on the roll: x across it from the left selvedge, y along it
 * @param fromPlate from the plate's frame to the roll
 */
public record ClothPiece(
    String label, int ply, String direction, Region region, RigidTransform fromPlate) {}
