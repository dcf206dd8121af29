/**
 * Plates on paper at true scale: tiling, registration, mark-out methods, check bars, printer
 * correction.
 */
package felloe.template;
