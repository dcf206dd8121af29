/**
 * One writer a format. A writer turns a finished model into bytes and decides nothing: no clock, no
 * random ids, never the machine's locale.
 */
package felloe.out;
