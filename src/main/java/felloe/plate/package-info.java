/**
 * The plate as a model: outline, windows, holes, stock; the place of each in the shape file; what
 * checks say of it. Nothing downstream looks at the shape file again.
 */
package felloe.plate;
