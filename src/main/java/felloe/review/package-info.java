/**
 * The review: rules that look at a plate, measure one thing each, and hold it against a limit whose
 * source is named. Limits are data; the shape file may override them.
 */
package felloe.review;
