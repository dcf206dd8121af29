package felloe.shape;

/**
 * Something wrong in path data.
 *
 * @param offset where, in characters from the start of the data, from 0
 * @param read what was read there; may be empty at the end of the data
 * @param wanted what is allowed, as the rest of a sentence about what was read
 * @param cure what to do about it; may be empty
 */
public record PathFault(int offset, String read, String wanted, String cure) {}
