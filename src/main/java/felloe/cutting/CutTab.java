package felloe.cutting;

import felloe.geometry.Point;

/**
 * A bridge that is left standing.
 *
 * @param feature the edge
 * @param at the middle of the cutter's path over it
 * @param width of its top along that path, mm
 * @param top its height, mm, below 0
 * @param before how far before {@code at} the cutter leaves the full depth, mm along the path
 * @param after how far behind {@code at} it is back at it, mm along the path
 */
public record CutTab(
    CutFeature feature, Point at, double width, double top, double before, double after) {}
