/**
 * The wheel in the car: what it sweeps as it is turned, and how near it comes to what is about it.
 */
package felloe.cockpit;
