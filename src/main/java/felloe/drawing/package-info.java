/**
 * Drawings in millimetres: marks in layers, pictures, dimensions, papers and what lies on a page.
 * No file format is known here.
 */
package felloe.drawing;
