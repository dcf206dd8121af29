/**
 * Files on a disk: a set of files is written whole or not at all, and what the program did not make
 * is never touched. A run that is killed is put in order by the next one.
 */
package felloe.files;
