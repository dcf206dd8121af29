/**
 * From the finish line to the path of a cutter or beam: compensation, what the cutter cannot reach,
 * order, entries, tabs, feeds, nesting, and the sweep check that proves a path before it is
 * written. No file format is known here.
 */
package felloe.cutting;
