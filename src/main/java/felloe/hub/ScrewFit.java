package felloe.hub;

import felloe.geometry.Point;
import felloe.plate.Hole;

/**
 * One screw of the hub and the hole of the plate that it goes into, at the best placement.
 *
 * @param screw the screw's label: {@code S1}, {@code S2}, counter-clockwise from the hub's first
 *     angle, then those of the second ring
 * @param thread of the screw
 * @param at where the screw then stands on the plate, mm
 * @param hole the plate's hole
 * @param distance of the two centres, mm
 * @param clearance room all round, mm: (hole - screw)/2 - distance; negative when it does not enter
 * @param worst the same when hub and plate are both at the far end of their tolerances, mm
 * @param series where the hole lies among the clearance series
 */
public record ScrewFit(
    String screw,
    ScrewThread thread,
    Point at,
    Hole hole,
    double distance,
    double clearance,
    double worst,
    ClearanceSeries series) {}
