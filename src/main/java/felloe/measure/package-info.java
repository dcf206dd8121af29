/**
 * What a calliper says of a hub or of a drilled plate: readings, their adjustment by least squares,
 * the pattern of the holes, the known hubs that come near it, and the plate as drilled.
 */
package felloe.measure;
