package felloe.plate;

/** Families of sheet stock that share joint rules and cautions. */
public enum MaterialKind {
  /** Fibre and resin. */
  LAMINATE,
  /** Aluminium and other metals. */
  METAL,
  /** Plywood and other wood. */
  WOOD,
  /** Unreinforced plastic sheet. */
  PLASTIC;

  /** Whether a wheel of it may be driven with; wood and plain plastic are for mock-ups. */
  public boolean driven() {
    return this == METAL || this == LAMINATE;
  }
}
