/**
 * The command line: one of the faces. It builds requests, has the kit carry them out, and shows the
 * answers. It computes nothing.
 */
package felloe.cli;
