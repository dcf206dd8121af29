/**
 * Orders the work and writes its results: from a request (which shape, which paper, which hub) to
 * an answer that a face shows, or to files that are written whole or not at all. Faces build the
 * same requests, whether they are a command line or a page.
 */
package felloe.kit;
