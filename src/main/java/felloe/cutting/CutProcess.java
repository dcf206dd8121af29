package felloe.cutting;

/** How the shape is cut from the sheet. */
public enum CutProcess {
  /** A spinning end mill that goes down in passes. */
  ROUTER,
  /** A laser beam, one pass. */
  LASER,
  /** An abrasive water jet, one pass. */
  WATERJET,
  /** A saw by hand, along a rough line. */
  JIGSAW
}
