package felloe.plate;

/** What a laminate is made of, as far as its dust and its screws go. */
public enum FibreKind {
  /** Carbon: its dust conducts, and wet it eats aluminium. */
  CARBON,
  /** Glass: its dust irritates and does not conduct. */
  GLASS,
  /** Another or an unknown one: it is warned of as if it might conduct. */
  OTHER
}
