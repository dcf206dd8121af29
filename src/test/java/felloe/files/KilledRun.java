package felloe.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * A program that writes one set after another until it is killed. Each set's files hold the same
 * word, and every other set has a file less, so that a mixture shows.
 */
final class KilledRun {

  private static final int LONG = 30_000;

  /**
   * A killed process loses nothing that it handed to the system, so nothing waits for the platter.
   */
  private static final Disk QUICK =
      new Disk() {
        @Override
        public void create(Path file, byte[] bytes) throws IOException {
          Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        }

        @Override
        public void sync(Path folder) {}
      };

  private KilledRun() {}

  /** Writes into a folder for good; says so once the first set is there. */
  public static void main(String[] args) throws CannotWrite {
    Path out = Path.of(args[0]);
    int start = Integer.parseInt(args[1]);
    for (int word = start; ; word++) {
      Transaction.into(out, QUICK)
          .folder("heron", set(word))
          .here(new FileSet("cut-router", "heron.yaml", set(word).files()))
          .commit();
      if (word == start) {
        System.out.println("written");
      }
    }
  }

  static FileSet set(int word) {
    List<OutFile> files = new ArrayList<>();
    for (int i = 0; i < 5 + word % 2; i++) {
      files.add(new OutFile("heron-" + i + ".nc", text(word)));
    }
    return new FileSet("make", "heron.yaml", files);
  }

  private static byte[] text(int word) {
    String line = "word " + word + "\n";
    return line.repeat(LONG / line.length()).getBytes(StandardCharsets.UTF_8);
  }
}
