/**
 * From the holes of a plate to the order in which they are made: drills, speeds, what to back up
 * and to clamp, and the distances that a calliper should read afterwards, with their limits. No
 * page and no file is known here.
 */
package felloe.drilling;
