package felloe.review;

import felloe.joints.JointPlan;
import felloe.plate.Plate;

/**
 * What the rules look at.
 *
 * @param plate the plate
 * @param joints the plan of its screws, made for the hub that it goes on
 */
public record Reviewed(Plate plate, JointPlan joints) {}
