/**
 * Bodies of triangles for a printer: a relief over a plan, proved closed and free of crossings, and
 * how it looks.
 */
package felloe.solid;
