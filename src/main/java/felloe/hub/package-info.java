/**
 * What the plate bolts to: hub specs with the basis of each figure, clearance holes, and the rigid
 * fit that tells whether all screws enter.
 */
package felloe.hub;
