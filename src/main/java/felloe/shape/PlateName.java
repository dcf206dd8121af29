package felloe.shape;

/** The short name of a plate, taken from its file's name and fit for file names everywhere. */
final class PlateName {

  private static final int LONGEST = 60;

  private PlateName() {}

  /** The file's name without folder and ending; letters, digits, hyphens and underscores only. */
  static String of(String file) {
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String clean =
        stem.replaceAll("[^\\p{IsAlphabetic}\\p{IsDigit}_-]+", "-").replaceAll("^-+|-+$", "");
    String cut = clean.substring(0, Math.min(LONGEST, clean.length()));
    return cut.isEmpty() ? "plate" : cut;
  }
}
