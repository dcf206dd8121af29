package felloe.plate;

import java.util.Objects;

/**
 * Where a value was written: a line and column of a file, a whole file, or an option of the command
 * line. It rides from the text into every feature, so that a check that fails later can still point
 * at what the maker wrote.
 *
 * @param file the file's name as the user gave it, or an option of the command line, with what it
 *     names
 * @param line the line, counted from 1; 0 when the whole file or an option is meant
 * @param column the column in characters (Unicode code points), counted from 1; 0 when {@code line}
 *     is 0
 */
public record Place(String file, int line, int column) implements Comparable<Place> {

  /** How every option begins. */
  private static final String HYPHENS = "--";

  /** A value that nobody wrote: a default of the program. */
  public static final Place BUILT_IN = new Place("built-in", 0, 0);

  /**
   * Makes a place.
   *
   * @throws IllegalArgumentException if line or column is negative, or only one of them is 0
   */
  public Place {
    Objects.requireNonNull(file, "file");
    if (line < 0 || column < 0 || (line == 0) != (column == 0)) {
      throw new IllegalArgumentException("line and column: " + line + ", " + column);
    }
  }

  /** A line and column of a file, both counted from 1. */
  public static Place of(String file, int line, int column) {
    return new Place(file, line, column);
  }

  /** A file as a whole, for what has no line: too large, missing, not readable. */
  public static Place ofFile(String file) {
    return new Place(file, 0, 0);
  }

  /**
   * A value given on the command line.
   *
   * @param option the option, with its hyphens
   */
  public static Place ofOption(String option) {
    return new Place(option, 0, 0);
  }

  /** An option with the path or value that it names, such as {@code outline.width}. */
  public Place naming(String what) {
    return new Place(file + " " + what, 0, 0);
  }

  /** The same without the folders before the file's name; an option stays as it is. */
  public Place withoutFolders() {
    int cut = isOption() ? 0 : Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1;
    return new Place(file.substring(cut), line, column);
  }

  /** True when the value came from the command line and not from a file. */
  public boolean isOption() {
    return line == 0 && file.startsWith(HYPHENS);
  }

  /** Whether it is an option that is called so, or that names this. */
  boolean names(String what) {
    return isOption() && (file.equals(HYPHENS + what) || file.endsWith(" " + what));
  }

  /** Orders files by name, then by line and column; the command line comes last. */
  @Override
  public int compareTo(Place other) {
    int order = Boolean.compare(isOption(), other.isOption());
    order = order != 0 ? order : file.compareTo(other.file);
    order = order != 0 ? order : Integer.compare(line, other.line);
    return order != 0 ? order : Integer.compare(column, other.column);
  }

  /** {@code heron.yaml:14:9}, {@code heron.yaml}, or an option with what it names. */
  @Override
  public String toString() {
    String name = Problem.shown(file, 300);
    return line == 0 ? name : name + ":" + line + ":" + column;
  }
}
