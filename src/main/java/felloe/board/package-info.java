/** A page on this machine: the shape file as a form, the plate drawn beside it, all views of it. */
package felloe.board;
