/**
 * Screws and what they hold: their lengths, engagement, torque and room, and the group of hub
 * screws in the plate under the hands' loads.
 */
package felloe.joints;
