package felloe.cli;

import felloe.kit.Kit;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * A call of the program within the test, and what came of it.
 *
 * @param code the exit code
 * @param out standard output
 * @param err standard error
 */
record Run(int code, String out, String err) {

  /** Whether a file is the list of files that stands in every folder that is written to. */
  static boolean isList(Path file) {
    return file.endsWith("felloe-files.txt");
  }

  static Run of(String... args) {
    return of(Path.of(""), false, args);
  }

  static Run of(Path folder, boolean colour, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Screen screen =
        new Screen(
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, false, StandardCharsets.UTF_8),
            colour,
            colour);
    int code = new Main(screen, new Kit(folder)).run(args);
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
