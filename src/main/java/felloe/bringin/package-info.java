/**
 * Outlines that exist already, brought in: a drawing or a table of points becomes the contours that
 * a shape file is written from. Nothing downstream knows where they came from.
 */
package felloe.bringin;
