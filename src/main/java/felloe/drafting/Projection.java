package felloe.drafting;

/** How the views of a drawing lie to each other: ISO 5456-2. */
public enum Projection {
  /** What is seen from the left is drawn on the right, what is seen from above below. */
  FIRST_ANGLE
}
