package felloe.board;

import felloe.geometry.Point;

/** What a page asks to be done to a shape file. */
sealed interface Act {

  /** Acts that follow each other with the same one are one step of the history; empty for none. */
  default String hand() {
    return "";
  }

  /**
   * Writes a value.
   *
   * @param text what was typed
   * @param hand what is typed in one go is one step of the history; empty for a step by itself
   */
  record Write(String path, String text, String hand) implements Act {}

  /** Makes a figure so many steps more, or less. */
  record Step(String path, int by, boolean fine) implements Act {}

  /** Adds a key to a group, with a value to begin with. */
  record Add(String path, String key) implements Act {}

  /** Adds one more to a list. */
  record Append(String path) implements Act {}

  /** Takes out a key, or one of a list. */
  record Remove(String path) implements Act {}

  /**
   * Moves a handle.
   *
   * @param to where on the plate, mm
   * @param hand movements of one stroke are one step of the history
   */
  record Drag(String path, Point to, boolean fine, String hand) implements Act {}

  /** Takes another text; typed in one go it is one step of the history. */
  record Text(String text, String hand) implements Act {}

  /** One step back. */
  record Undo() implements Act {}

  /** One step forth. */
  record Redo() implements Act {}

  /** Goes on with the file as it is on the disk. */
  record TakeDisk() implements Act {}

  /** Goes on with what was not saved before. */
  record TakeKept() implements Act {}

  /** Throws away what was not saved before. */
  record DropKept() implements Act {}
}
