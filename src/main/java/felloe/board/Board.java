package felloe.board;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.plate.BadInput;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Semaphore;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * A page on this machine, to see a plate while it is changed. It serves this machine alone, or with
 * a code those on its network. What it shows comes from the same functions as the command line.
 */
public final class Board implements AutoCloseable {

  /** Seconds in which a request must be said whole. */
  private static final String SLOWEST = "10";

  private static final int FEW = 4;
  private static final int MOST_AT_ONCE = 96;
  private static final long IDLE = 30;
  private static final int MOST_WAITING = 16;
  private static final long BREATH = 1_000;
  private static final int BACKLOG = 64;

  /** Scripts, styles and calls from nowhere but here; no frames, no plug-ins. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private final HttpServer server;
  private final ExecutorService hands;
  private final Semaphore listeners = new Semaphore(MOST_WAITING);
  private final Bench bench;
  private final Guard guard;
  private final Doors doors;
  private final Consumer<Throwable> faults;

  /**
   * How a board is opened.
   *
   * @param folder whose shape files are worked on; nothing outside of it is read or written
   * @param first the shape file to begin with
   * @param port to listen at; 0 for any that is free
   * @param network whether other machines on the network may come in with the code
   */
  public record Wish(Path folder, Optional<String> first, int port, boolean network) {}

  /**
   * @param own whether a caller's address is this machine's own
   */
  Board(Wish wish, Kit kit, BoardTalk talk, Consumer<Throwable> faults, Predicate<InetAddress> own)
      throws CannotWrite {
    this.faults = faults;
    System.setProperty("sun.net.httpserver.maxReqTime", SLOWEST);
    // All that the first drawing needs is begun at once.
    CompletableFuture<Schema> schema = CompletableFuture.supplyAsync(Schema::ofShapeFile);
    this.bench = new Bench(wish.folder(), kit, schema::join, faults);
    this.doors = new Doors(bench, wish.first(), talk, faults);
    wish.first().ifPresent(bench::refuseMissing);
    this.hands =
        new ThreadPoolExecutor(
            FEW,
            MOST_AT_ONCE,
            IDLE,
            TimeUnit.SECONDS,
            // Who never ends a request holds one thread, and must not hold up those behind.
            new SynchronousQueue<>(),
            Hands.named("board", Thread.NORM_PRIORITY));
    wish.first().ifPresent(name -> hands.execute(() -> begin(name)));
    try {
      InetSocketAddress at =
          wish.network()
              ? new InetSocketAddress(wish.port())
              : new InetSocketAddress(InetAddress.getLoopbackAddress(), wish.port());
      this.server = HttpServer.create(at, BACKLOG);
    } catch (IOException taken) {
      hands.shutdownNow();
      bench.close();
      throw new CannotWrite(
          "port " + wish.port(), "cannot be listened at: " + taken.getMessage(), "choose another");
    }
    this.guard = new Guard(server.getAddress().getPort(), wish.network(), own);
    server.setExecutor(hands);
    server.createContext("/", this::serve);
    server.start();
  }

  private void begin(String name) {
    try {
      doors.begin(name);
    } catch (BadInput told) {
      // The page asks for it too, and tells it.
      return;
    } catch (RuntimeException fault) {
      faults.accept(fault);
    }
  }

  /**
   * Opens a board.
   *
   * @param faults is told of faults of the program
   * @throws BadInput when the first shape cannot be read at all
   * @throws CannotWrite when the port is taken
   */
  public static Board open(Wish wish, Kit kit, BoardTalk talk, Consumer<Throwable> faults)
      throws CannotWrite {
    return new Board(wish, kit, talk, faults, InetAddress::isLoopbackAddress);
  }

  /** Where it is on this machine. */
  public String address() {
    return "http://localhost:" + port() + "/";
  }

  public int port() {
    return server.getAddress().getPort();
  }

  /** The code that lets another machine in. */
  public String code() {
    return guard.code();
  }

  private void serve(HttpExchange exchange) throws IOException {
    try (exchange) {
      Answer answer;
      try {
        answer = guard.refusal(exchange).orElse(null);
        if (answer == null) {
          Call call = Call.of(exchange);
          if (!guard.knows(exchange)) {
            answer = stranger(call);
          } else if (call.way().size() == 3 && call.step(2).equals("news")) {
            news(exchange, bench.work(call.step(1)));
            return;
          } else {
            answer = doors.answer(call);
          }
        }
      } catch (Call.TooLarge large) {
        answer = Answer.refused(413, "That is larger than what is taken here.");
      } catch (IllegalArgumentException wrong) {
        answer = Answer.refused(400, "That is not written as the web has it.");
      } catch (BadInput bad) {
        answer = Answer.refused(422, String.join("\n", bad.lines()));
      } catch (CancellationException ending) {
        answer = Answer.refused(503, "The board has ended.");
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        faults.accept(fault);
        answer = Answer.refused(500, "This is a fault in Felloe, not in your file.");
      }
      send(exchange, answer);
    }
  }

  /** Who was not let in is asked for the code, and sees nothing else. */
  private Answer stranger(Call call) {
    if (call.step(0).equals("parts") && call.step(1).equals("board.css")) {
      return Answer.part("board.css").orElseThrow();
    }
    if (call.changes() && call.step(0).equals("code")) {
      Optional<String> cookie = guard.admit(call.word("code"));
      if (cookie.isPresent()) {
        return Answer.moved("/").with("Set-Cookie", cookie.get());
      }
    }
    Answer page = Answer.html(Parts.text("code.html"));
    return new Answer(401, page.type(), page.body(), page.headers());
  }

  private static void send(HttpExchange exchange, Answer answer) throws IOException {
    head(exchange, answer.type());
    answer.headers().forEach((name, value) -> exchange.getResponseHeaders().set(name, value));
    boolean bare = exchange.getRequestMethod().equals("HEAD") || answer.body().length == 0;
    exchange.sendResponseHeaders(answer.status(), bare ? -1 : answer.body().length);
    if (!bare) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(answer.body());
      }
    }
  }

  private static void head(HttpExchange exchange, String type) {
    var headers = exchange.getResponseHeaders();
    headers.set("Content-Type", type);
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("X-Frame-Options", "DENY");
    headers.set("Referrer-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }

  /** Tells a page of changes as they come, those on the disk too. */
  private void news(HttpExchange exchange, Bench.Work work) throws IOException {
    if (!listeners.tryAcquire()) {
      send(exchange, Answer.refused(503, "Too many pages are open."));
      return;
    }
    try {
      head(exchange, "text/event-stream; charset=utf-8");
      exchange.sendResponseHeaders(200, 0);
      OutputStream out = exchange.getResponseBody();
      long seen = -1;
      String last = "";
      while (!work.news().isClosed()) {
        Desk.State state = work.desk().state();
        Json.Members news =
            Json.object()
                .with("revision", state.revision())
                .with("disk", state.disk())
                .with("saved", state.saved())
                .with("loads", work.loads().reply());
        String text = JsonWriter.text(news).replaceAll("\\s*\\n\\s*", " ").strip();
        // A line that says nothing finds out whether the page is still there.
        String line = text.equals(last) ? ":\n\n" : "data: " + text + "\n\n";
        out.write(line.getBytes(StandardCharsets.UTF_8));
        out.flush();
        last = text;
        seen = work.news().after(seen, BREATH);
      }
    } catch (InterruptedException closing) {
      Thread.currentThread().interrupt();
    } finally {
      listeners.release();
    }
  }

  @Override
  public void close() {
    doors.close();
    bench.close();
    server.stop(0);
    hands.shutdownNow();
  }
}
