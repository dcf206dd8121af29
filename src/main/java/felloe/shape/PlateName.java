package felloe.shape;

import java.util.regex.Pattern;

/** The short name of a plate, taken from its file's name and fit for file names everywhere. */
final class PlateName {

  private static final int LONGEST = 60;

  /** Names that Windows keeps for devices; no file or folder can have them. */
  private static final Pattern DEVICE =
      Pattern.compile("con|prn|aux|nul|(?:com|lpt)[0-9]", Pattern.CASE_INSENSITIVE);

  private PlateName() {}

  /** The file's name without folder and ending; letters, digits, hyphens and underscores only. */
  static String of(String file) {
    String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String clean =
        stem.replaceAll("[^\\p{IsAlphabetic}\\p{IsDigit}_-]+", "-").replaceAll("^-+|-+$", "");
    String cut = clean.length() <= LONGEST ? clean : clean.substring(0, end(clean));
    if (cut.isEmpty()) {
      return "plate";
    }
    return DEVICE.matcher(cut).matches() ? cut + "-" : cut;
  }

  /** Where a long name is cut: not between the halves of one character. */
  private static int end(String name) {
    return Character.isHighSurrogate(name.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST;
  }
}
