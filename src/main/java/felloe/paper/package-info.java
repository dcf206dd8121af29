/**
 * What is drawn where: drawings in millimetres, page sets, tiling, registration, mark-out methods
 * and printer correction. No file format is known here.
 */
package felloe.paper;
