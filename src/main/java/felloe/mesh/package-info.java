/**
 * Triangles over a plate: graded, fine where the plate is narrow or tightly curved, with the nodes
 * of its edges on the exact contours.
 */
package felloe.mesh;
