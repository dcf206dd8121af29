/**
 * Triangles over a plate: graded, fine where the plate is narrow or tightly curved, with the
 * middles of their edges on the exact contours.
 */
package felloe.mesh;
