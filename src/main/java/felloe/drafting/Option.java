package felloe.drafting;

import java.util.function.Supplier;

/**
 * One way to draw something.
 *
 * @param cost how far it is from the best way, before what stands in its way, mm of leader
 * @param piece what would be drawn, put together when it is looked at
 */
record Option(double cost, Supplier<Piece> piece) {}
