package felloe.board;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import felloe.drawing.Paper;
import felloe.kit.Kit;
import felloe.plate.Place;
import felloe.report.CardCalls;
import felloe.template.AskedAt;
import felloe.template.MarkOut;
import felloe.template.TemplateOptions;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A board that is open in a folder of its own, and a client that is no browser. */
final class Served implements AutoCloseable {

  private static final ObjectMapper JSON = new ObjectMapper();

  final Path folder;
  final Board board;
  final List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
  private final HttpClient client =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(20)).build();

  private Served(Path folder, Optional<String> first, boolean network) throws Exception {
    this.folder = folder;
    // On the network every caller is taken for another machine.
    this.board =
        new Board(
            new Board.Wish(folder, first, 0, network),
            new Kit(folder),
            talk(),
            faults::add,
            address -> !network);
  }

  /** A board with copies of demo shapes. */
  static Served with(Path folder, String... shapes) throws Exception {
    for (String shape : shapes) {
      Files.copy(Path.of("shapes", shape), folder.resolve(shape));
    }
    return new Served(folder, Optional.of(shapes[0]), false);
  }

  static Served empty(Path folder, boolean network) throws Exception {
    return new Served(folder, Optional.empty(), network);
  }

  static BoardTalk talk() {
    return new BoardTalk(
        study ->
            new CardCalls(
                "card", "template", "layup", "drill", "cut", "load", "load", "check", "layup"),
        new TemplateOptions(
            Paper.A4,
            TemplateOptions.MARGIN,
            TemplateOptions.OVERLAP,
            MarkOut.STUCK_ON,
            Optional.empty(),
            false,
            Optional.empty(),
            new AskedAt(Place.BUILT_IN, Place.BUILT_IN)));
  }

  String root() {
    return "http://localhost:" + board.port();
  }

  HttpResponse<String> get(String way) throws Exception {
    return client.send(
        HttpRequest.newBuilder(URI.create(root() + way)).build(),
        HttpResponse.BodyHandlers.ofString());
  }

  byte[] bytes(String way) throws Exception {
    return client
        .send(
            HttpRequest.newBuilder(URI.create(root() + way)).build(),
            HttpResponse.BodyHandlers.ofByteArray())
        .body();
  }

  /** What our own page would send. */
  HttpResponse<String> post(String way, Map<String, String> words) throws Exception {
    String body =
        words.entrySet().stream()
            .map(e -> coded(e.getKey()) + "=" + coded(e.getValue()))
            .collect(Collectors.joining("&"));
    return client.send(
        HttpRequest.newBuilder(URI.create(root() + way))
            .header("Origin", root())
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  /** A file that our own page would send. */
  HttpResponse<String> send(String way, byte[] body) throws Exception {
    return client.send(
        HttpRequest.newBuilder(URI.create(root() + way))
            .header("Origin", root())
            .header("Content-Type", "application/octet-stream")
            .POST(HttpRequest.BodyPublishers.ofByteArray(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  private static String coded(String word) {
    return URLEncoder.encode(word, StandardCharsets.UTF_8);
  }

  JsonNode state(String shape) throws Exception {
    return json(get("/shape/" + shape + "/state?form=0"));
  }

  /** The text as it is, for a test that waits. */
  String textOf(String shape) {
    try {
      return state(shape).get("text").asText();
    } catch (Exception failed) {
      throw new IllegalStateException(failed);
    }
  }

  /** What is written at the end of a way, on one line. */
  String valueOf(String shape, String path) {
    felloe.yaml.YamlTree tree = felloe.yaml.YamlTree.parse(shape, textOf(shape));
    return felloe.yaml.FlowText.of(Editing.find(tree.root(), path).orElseThrow());
  }

  /** Does something from the latest state, and gives the next. */
  JsonNode act(String shape, Map<String, String> words) throws Exception {
    return json(from(state(shape).get("revision").asInt(), shape, words));
  }

  /** Does something from a state that may be old. */
  HttpResponse<String> from(int base, String shape, Map<String, String> words) throws Exception {
    Map<String, String> all = new java.util.HashMap<>(words);
    all.put("base", Integer.toString(base));
    return post("/shape/" + shape + "/act", all);
  }

  static JsonNode json(HttpResponse<String> answer) throws IOException {
    return JSON.readTree(answer.body());
  }

  /** A call written by hand, and the first line of the answer; empty where there is none. */
  String raw(String... lines) throws IOException {
    try (Socket socket = new Socket("localhost", board.port())) {
      socket.setSoTimeout(30_000);
      String text = String.join("\r\n", lines) + "\r\n\r\n";
      socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
      String answer = new String(socket.getInputStream().readNBytes(12), StandardCharsets.UTF_8);
      return answer;
    }
  }

  @Override
  public void close() {
    board.close();
  }
}
