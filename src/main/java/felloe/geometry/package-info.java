/**
 * Exact plane geometry: points, straight lines and circular arcs, closed contours of them, regions,
 * offsets and booleans, areas and second moments.
 *
 * <p>All lengths are millimetres in double precision, all angles radians, positive
 * counter-clockwise. The room imports no other room. JTS is used in {@code Topology} alone.
 */
package felloe.geometry;
