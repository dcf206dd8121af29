/**
 * From a shape file to the plate: the reader, the outline families, path data, derived windows and
 * rows of holes. The families are pure functions of their parameters and know nothing of files.
 */
package felloe.shape;
