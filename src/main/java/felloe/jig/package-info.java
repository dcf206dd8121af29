/**
 * What is printed to make a plate by: a flat template, a jig that guides the drill, and a gauge
 * that tells how much the printer shrinks. Where pieces are cut for the bed, how true a guided hole
 * is.
 */
package felloe.jig;
