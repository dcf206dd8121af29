package felloe.files;

import java.util.List;

/**
 * Files that belong together: they are written together, and those of an earlier run that are no
 * longer among them go.
 *
 * @param set what made them: {@code make}, {@code drill}, {@code cut-router}
 * @param source the shape file's name as the maker wrote it, {@code My wheel.yaml}; empty when they
 *     belong to no shape
 * @param revision of that shape; empty when they belong to none
 * @param files the files, in the order in which they are told
 */
public record FileSet(String set, String source, String revision, List<OutFile> files) {

  /** Files of no shape's revision. */
  public FileSet(String set, String source, List<OutFile> files) {
    this(set, source, "", files);
  }

  /** Control characters in the source's name become spaces, since they would wreck a list. */
  public FileSet {
    if (set.isEmpty() || set.chars().anyMatch(c -> c <= ' ')) {
      throw new IllegalArgumentException("not a set's name: " + set);
    }
    if (!revision.matches("[0-9a-f]{0,64}")) {
      throw new IllegalArgumentException("not a revision: " + revision);
    }
    source = source.replaceAll("\\p{Cntrl}", " ");
    files = List.copyOf(files);
  }
}
