package felloe.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Where answers and talk go.
 *
 * @param out figures: what a pipe may carry on
 * @param err talk: what a person reads
 * @param terminal whether a person looks on while work goes on
 * @param colour whether colour may stress a word that says the same without it
 */
public record Screen(PrintStream out, PrintStream err, boolean terminal, boolean colour) {

  /** Back to the line's start, and clear to its end (ECMA-48). */
  private static final String WIPE = "\r\u001b[K";

  private static final int PIPE = 80;

  private static final int BUFFER = 1 << 16;

  /**
   * The terminal or pipe that the program was started with. Colour only on a terminal, and not
   * where {@code NO_COLOR} is set to anything or {@code TERM} is {@code dumb}.
   */
  public static Screen system() {
    Charset charset = charset();
    Map<String, String> environment = System.getenv();
    boolean refused =
        !environment.getOrDefault("NO_COLOR", "").isEmpty()
            || environment.getOrDefault("TERM", "dumb").equals("dumb");
    boolean terminal = System.console() != null;
    return new Screen(
        stream(FileDescriptor.out, charset),
        stream(FileDescriptor.err, charset),
        terminal,
        !refused && terminal);
  }

  private static PrintStream stream(FileDescriptor descriptor, Charset charset) {
    java.io.OutputStream buffered =
        new java.io.BufferedOutputStream(new FileOutputStream(descriptor), BUFFER);
    return new PrintStream(buffered, false, charset);
  }

  /** Machines without a locale say ASCII, yet what reads their output today reads UTF-8. */
  private static Charset charset() {
    Charset machine = Charset.defaultCharset();
    return machine.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : machine;
  }

  /** How many characters a line may have: 80 in a pipe, else what the terminal is wide. */
  int width() {
    if (!terminal) {
      return PIPE;
    }
    String columns = System.getenv("COLUMNS");
    if (columns != null && columns.matches("[0-9]{1,4}")) {
      return Integer.parseInt(columns);
    }
    return picocli.CommandLine.Model.CommandSpec.create().usageMessage().autoWidth(true).width();
  }

  /** A line of figures. */
  void line(String text) {
    out.print(text);
    out.print('\n');
  }

  /** Figures for a program to read: always UTF-8, ended as they are. */
  void data(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.write(bytes, 0, bytes.length);
  }

  /** A line of talk. */
  void say(String text) {
    err.print(text);
    err.print('\n');
  }

  /** How far the work has come: on a terminal one line that is wiped later, else nothing. */
  void progress(String what, int done, int all) {
    if (terminal && all > 1) {
      err.print(WIPE + what + ", " + (done + 1) + " of " + all);
      err.flush();
    }
  }

  /** Wipes the line of progress. */
  void progressEnds() {
    if (terminal) {
      err.print(WIPE);
      err.flush();
    }
  }
}
