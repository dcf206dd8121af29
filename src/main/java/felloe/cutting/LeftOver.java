package felloe.cutting;

import felloe.geometry.Point;
import felloe.geometry.Region;

/**
 * Material that the cutter cannot reach and a file must take off by hand.
 *
 * @param feature the edge it is left at
 * @param region what is left, exact
 * @param at a point in it
 * @param reach how far it stands out from the finish line at most, mm
 */
public record LeftOver(CutFeature feature, Region region, Point at, double reach) {}
