package felloe.laminate;

/**
 * Strains and stresses of a ply.
 *
 * @param number from 1 at the back
 * @param ply the ply
 * @param bottom at its face toward the back
 * @param top at its face toward the driver
 */
public record PlyResponse(int number, Ply ply, PlyPoint bottom, PlyPoint top) {}
