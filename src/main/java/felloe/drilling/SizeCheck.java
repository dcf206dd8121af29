package felloe.drilling;

/**
 * A hole whose diameter is to be measured.
 *
 * @param number from 1, the same on the sheet and in the form
 * @param hole its label
 * @param limits between what sizes it is good
 */
public record SizeCheck(int number, String hole, SizeLimits limits) {}
