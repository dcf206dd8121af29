package felloe.cutting;

import felloe.geometry.Contour;

/**
 * The path of the middle of the cutter or beam along one edge. A window that the cutter can enter
 * only in parts has several.
 *
 * @param feature the edge
 * @param finish where the edge ends up, exact
 * @param path where the middle of the cutter goes; the same as {@code finish} without compensation
 */
public record CutLine(CutFeature feature, Contour finish, Contour path) {}
