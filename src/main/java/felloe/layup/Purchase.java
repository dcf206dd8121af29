package felloe.layup;

/**
 * Something to buy or to have at hand.
 *
 * @param what in words
 * @param amount how much, in words with its unit
 */
public record Purchase(String what, String amount) {}
