package felloe.drilling;

/**
 * A distance to put a calliper on.
 *
 * @param number from 1, the same on the sheet and in the form
 * @param from label of one hole
 * @param to label of the other
 * @param over which edges: {@code outside} or {@code inside}
 * @param limits what it should read
 */
public record DistanceCheck(
    int number, String from, String to, String over, DistanceLimits limits) {}
