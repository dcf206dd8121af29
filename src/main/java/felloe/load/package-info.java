/**
 * Bending of the plate under the driver's hands: triangles with laminate stiffness, supports at the
 * hub, load cases, and what thickness would do.
 */
package felloe.load;
