package felloe.template;

import felloe.geometry.Point;

/**
 * A registration mark: printed at the same place of the drawing on the two pages that share a seam,
 * with the same label, half of it to either side of the seam.
 *
 * @param label its number, the same on both pages and nowhere else in the set
 * @param at its middle, in the drawing's coordinates, mm; it lies on the seam
 * @param first name of the page on the left or above
 * @param second name of the page on the right or below
 */
public record Registration(String label, Point at, String first, String second) {}
