package felloe.grips;

import felloe.geometry.Point;
import java.util.Optional;

/**
 * A place along a grip where its girth is told.
 *
 * @param s mm along the stretch, clockwise from where the grip starts
 * @param at the place on the plate's edge, mm
 * @param web how far the plate goes on inward from there, mm
 * @param held whether fingers go round there: what lies inward is an opening for them
 * @param window the window that fingers go through; empty for none, or beyond the outline
 * @param girth once round, mm; empty where no fingers go round
 */
public record GripStation(
    double s,
    Point at,
    double web,
    boolean held,
    Optional<String> window,
    Optional<Double> girth) {}
