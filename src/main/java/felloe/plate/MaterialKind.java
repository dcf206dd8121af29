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
  PLASTIC
}
