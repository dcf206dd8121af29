/**
 * The job as a whole: what it takes, in what order it is done, with times where they are known, and
 * what is measured on the way. It puts together what the rooms of each act have worked out, and
 * reckons none of it again. No page, file or sentence is known here; names of things are.
 */
package felloe.job;
