package felloe.bringin;

/** How much a file may hold: a drawing from elsewhere is not trusted. */
final class Limits {

  /** Bytes of a drawing or a table. */
  static final int BYTES = 16 << 20;

  /** Strokes of a drawing. */
  static final int STROKES = 20_000;

  /** How deep groups and blocks may lie within each other. */
  static final int DEPTH = 32;

  /** Steps that a file may ask for, blocks within blocks counted each time. */
  static final int STEPS = 200_000;

  private Limits() {}
}
