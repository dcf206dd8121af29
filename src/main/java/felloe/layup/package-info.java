/**
 * The plan of a lay-up: materials with their sources, plies, cloth off the roll, resin in pots,
 * test strips, mould, time and cost, beside sheet that can be bought.
 *
 * <p>Lengths are millimetres, masses grams, areas square millimetres unless a name says otherwise.
 */
package felloe.layup;
