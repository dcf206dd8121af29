package felloe.solid;

/**
 * A side between two numbered points, run in one way.
 *
 * @param from number of the point where it starts
 * @param to number of the point where it ends
 */
record Side(int from, int to) {

  /** Spreads neighbouring numbers over a table: 2^32 over the golden ratio. */
  private static final int SPREAD = 0x9E3779B9;

  /** The same, run the other way. */
  Side other() {
    return new Side(to, from);
  }

  @Override
  public int hashCode() {
    return SPREAD * from + to;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Side side && from == side.from && to == side.to;
  }
}
