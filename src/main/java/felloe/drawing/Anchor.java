package felloe.drawing;

/** Which end of a label stands at its point; the point lies on the base line. */
public enum Anchor {
  /** The label starts at the point. */
  START,
  /** The label is centred on the point. */
  MIDDLE,
  /** The label ends at the point. */
  END
}
