package felloe.drafting;

import felloe.drawing.LineType;

/** What a line of the drawing is for: others keep off it by that. */
enum Ink {
  /** An edge of the plate. */
  EDGE(LineType.EDGE),
  /** The edge of a hole. */
  HOLE(LineType.EDGE),
  /** An axis, a pitch circle. */
  AXIS(LineType.CENTRE),
  /** The cross in a small hole. */
  CROSS(LineType.THIN),
  /** What is engraved on the front. */
  ENGRAVED(LineType.THIN),
  /** What is engraved on the back. */
  HIDDEN(LineType.DASHED),
  /** From what is measured to the dimension line. */
  EXTENSION(LineType.THIN),
  /** A dimension line. */
  DIMENSION(LineType.THIN),
  /** From words to what they are about. */
  LEADER(LineType.THIN);

  /** Two lines may not cross. */
  static final double NEVER = Double.POSITIVE_INFINITY;

  private final LineType type;

  Ink(LineType type) {
    this.type = type;
  }

  LineType type() {
    return type;
  }

  /** Whether it is a line of the plate: what dimensions and notes end on. */
  boolean isPart() {
    return ordinal() < EXTENSION.ordinal();
  }

  /** What a new line of this kind costs where it crosses one that stands already, mm of leader. */
  double crossing(Ink other) {
    return switch (other) {
      case EDGE -> 5;
      // A leader through a hole seems to be about it.
      case HOLE -> this == LEADER ? NEVER : 8;
      case AXIS, CROSS -> 1;
      case ENGRAVED, HIDDEN -> 5;
      case EXTENSION -> this == EXTENSION ? 2 : this == LEADER ? 8 : NEVER;
      // ISO 129-1: dimension lines are crossed by no other line, as far as that can be.
      case DIMENSION, LEADER -> NEVER;
    };
  }
}
