package felloe.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The list of files that the program made in a folder. What is not on it is the maker's own; so is
 * a file on it that no longer is as it was written.
 */
final class Manifest {

  /** Its name, in every folder that the program writes to. */
  static final String NAME = "felloe-files.txt";

  private static final String HEAD = "felloe-files 1";
  private static final String TOLD =
      "# The files here that Felloe wrote: a later run replaces these and no other. Leave this"
          + " list.";
  private static final Pattern LINE =
      Pattern.compile("([0-9a-f]{64})\t([^\t]+)\t([^\t]*)\t(?:([0-9a-f]{1,64})\t)?([^\t/\\\\]+)");
  private static final long MOST = 1 << 22;

  private final Map<String, Entry> entries;

  /**
   * A file on the list.
   *
   * @param digest SHA-256 of what was written
   * @param set what made it
   * @param source the shape file's name
   * @param revision of the shape; empty where it is not known
   */
  record Entry(String digest, String set, String source, String revision) {
    boolean of(FileSet files) {
      return set.equals(files.set()) && source.equals(files.source());
    }

    /** Whether it is of the same shape, as that was before it was changed. */
    boolean isOlderThan(FileSet files) {
      return source.equals(files.source())
          && !revision.isEmpty()
          && !files.revision().isEmpty()
          && !revision.equals(files.revision());
    }
  }

  Manifest(Map<String, Entry> entries) {
    this.entries = new TreeMap<>(entries);
  }

  /**
   * The list of a folder; an empty one when there is none.
   *
   * @throws CannotWrite when there is something of that name that is no such list
   */
  static Manifest read(Path folder) throws CannotWrite {
    Path file = folder.resolve(NAME);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return new Manifest(Map.of());
    }
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST) {
        throw odd(file, "is not the list that Felloe keeps here");
      }
      String[] lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n");
      if (!lines[0].equals(HEAD)) {
        throw odd(file, "is not the list that Felloe keeps here");
      }
      Map<String, Entry> entries = new TreeMap<>();
      for (int i = 1; i < lines.length; i++) {
        if (!lines[i].startsWith("#")) {
          Matcher line = LINE.matcher(lines[i]);
          if (!line.matches()) {
            throw odd(file, "cannot be read in line " + (i + 1));
          }
          String revision = line.group(4) == null ? "" : line.group(4);
          entries.put(
              line.group(5), new Entry(line.group(1), line.group(2), line.group(3), revision));
        }
      }
      return new Manifest(entries);
    } catch (IOException failure) {
      throw OutFolder.failure(file, failure);
    }
  }

  private static CannotWrite odd(Path file, String why) {
    return new CannotWrite(
        file.toString(), why, "move it away; then move its old files away too, and run again");
  }

  Optional<Entry> entry(String name) {
    return Optional.ofNullable(entries.get(name));
  }

  /** Whether nothing is on it. */
  boolean isEmpty() {
    return entries.isEmpty();
  }

  /** A copy of its files by name. */
  Map<String, Entry> entries() {
    return new TreeMap<>(entries);
  }

  OutFile file() {
    StringBuilder text = new StringBuilder(HEAD).append('\n').append(TOLD).append('\n');
    entries.forEach(
        (name, entry) ->
            text.append(entry.digest())
                .append('\t')
                .append(entry.set())
                .append('\t')
                .append(entry.source())
                .append('\t')
                .append(entry.revision().isEmpty() ? "" : entry.revision() + "\t")
                .append(name)
                .append('\n'));
    return new OutFile(NAME, text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
