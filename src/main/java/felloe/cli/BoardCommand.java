package felloe.cli;

import felloe.board.Board;
import felloe.board.BoardTalk;
import felloe.files.CannotWrite;
import felloe.kit.Kit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** A page to see the plate while it is changed. */
final class BoardCommand implements Command {

  private static final int HIGHEST_PORT = 65_535;

  private static final Opt<Path> SHAPE =
      Opt.argument("SHAPE", "0..1", Read::path, "The shape file to begin with.");
  private static final Opt<Integer> PORT =
      Opt.one(
          "--port",
          "NUMBER",
          Read.count(0, HIGHEST_PORT),
          "Where it is served on this machine. Usually any that is free.");
  private static final Opt<Boolean> LAN =
      Opt.flag(
          "--lan",
          "Serve the network too, such as a tablet at the bench; it asks for a code that is shown"
              + " here. Nothing is encrypted: only on a network that you trust.");
  private static final Opt<Boolean> NO_BROWSER =
      Opt.flag("--no-browser", "Do not open the browser; only tell the address.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "board",
            "Opens a page in the browser, served by this machine to itself: the plate drawn while"
                + " its values are changed, findings where they are, loads, templates, and the"
                + " whole kit.");
    Options.add(spec, SHAPE, PORT, LAN, NO_BROWSER);
    Options.examples(
        spec, "  felloe board heron.yaml", "  felloe board", "  felloe board heron.yaml --lan");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    Optional<Path> shape = SHAPE.in(call).map(file -> kit.folder().resolve(file));
    if (shape.isPresent() && shape.get().getFileName() == null) {
      throw Read.wrong(
          SHAPE.name(), shape.get().toString(), "is no shape file", "name a file in a folder");
    }
    Path folder =
        shape.map(file -> file.toAbsolutePath().getParent()).orElse(kit.folder().toAbsolutePath());
    Board.Wish wish =
        new Board.Wish(
            folder,
            shape.map(file -> file.getFileName().toString()),
            PORT.in(call).orElse(0),
            LAN.given(call));
    BoardTalk talk = new BoardTalk(study -> CardTalk.of(study, call), Printing.usual());
    try (Board board = Board.open(wish, kit, talk, fault -> screen.say("fault: " + fault))) {
      screen.line(board.address());
      screen.out().flush();
      if (wish.network()) {
        screen.say("Code for another machine, good once: " + board.code());
      }
      screen.say("It is served until you stop it here (Ctrl-C).");
      screen.err().flush();
      if (!NO_BROWSER.given(call)) {
        browse(board.address());
      }
      new CountDownLatch(1).await();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    return Exit.WELL;
  }

  /** Asks the system for its browser; where it has none, the address is on the screen. */
  private static void browse(String address) {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    List<String> words =
        system.contains("win")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
            : List.of(system.contains("mac") ? "open" : "xdg-open", address);
    try {
      new ProcessBuilder(words)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      return;
    }
  }
}
