package felloe.cutting;

import java.util.Locale;

/** How the shape is cut from the sheet. */
public enum CutProcess {
  /** A spinning end mill that goes down in passes. */
  ROUTER,
  /** A laser beam, one pass. */
  LASER,
  /** An abrasive water jet, one pass. */
  WATERJET,
  /** A saw by hand, along a rough line. */
  JIGSAW;

  /** In a word, such as {@code router}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
