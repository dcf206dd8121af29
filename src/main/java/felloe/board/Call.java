package felloe.board;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a browser asks: a way, and what it says with it. */
final class Call {

  /** The largest body that is read. */
  static final int LARGEST = 9 << 20;

  /** Of what is too large so much more is heard out before it is refused. */
  private static final int HEARD_OUT = 64 << 20;

  private static final int MOST_WORDS = 40;

  private final String method;
  private final List<String> way;
  private final Map<String, String> said;
  private final byte[] body;

  private Call(String method, List<String> way, Map<String, String> said, byte[] body) {
    this.method = method;
    this.way = way;
    this.said = said;
    this.body = body;
  }

  /** It is larger than what is read. */
  static final class TooLarge extends IOException {
    private static final long serialVersionUID = 1L;
  }

  /**
   * Reads what is asked.
   *
   * @throws IllegalArgumentException when it is not written as the web has it
   * @throws TooLarge when it is too large
   */
  static Call of(HttpExchange exchange) throws IOException {
    List<String> way = new ArrayList<>();
    for (String step : exchange.getRequestURI().getRawPath().split("/")) {
      if (!step.isEmpty()) {
        way.add(URLDecoder.decode(step.replace("+", "%2B"), StandardCharsets.UTF_8));
      }
    }
    Map<String, String> said = new LinkedHashMap<>();
    String query = exchange.getRequestURI().getRawQuery();
    words(query == null ? "" : query, said);
    byte[] body = new byte[0];
    if (exchange.getRequestMethod().equals("POST")) {
      try (InputStream in = exchange.getRequestBody()) {
        body = in.readNBytes(LARGEST + 1);
        if (body.length > LARGEST) {
          pass(in);
          throw new TooLarge();
        }
      }
      String type = exchange.getRequestHeaders().getFirst("Content-Type");
      if (type != null && type.startsWith("application/x-www-form-urlencoded")) {
        words(new String(body, StandardCharsets.UTF_8), said);
      }
    }
    return new Call(exchange.getRequestMethod(), List.copyOf(way), said, body);
  }

  /**
   * A browser that is still sending would not hear the answer: so the rest is heard out, not kept.
   */
  private static void pass(InputStream in) throws IOException {
    byte[] some = new byte[1 << 16];
    int left = HEARD_OUT;
    for (int n = in.read(some); n > 0 && left > 0; n = in.read(some)) {
      left -= n;
    }
  }

  private static void words(String text, Map<String, String> said) {
    String[] pairs = text.isEmpty() ? new String[0] : text.split("&", MOST_WORDS + 1);
    for (int i = 0; i < Math.min(MOST_WORDS, pairs.length); i++) {
      int equals = pairs[i].indexOf('=');
      String key = equals < 0 ? pairs[i] : pairs[i].substring(0, equals);
      String value = equals < 0 ? "" : pairs[i].substring(equals + 1);
      said.put(
          URLDecoder.decode(key, StandardCharsets.UTF_8),
          URLDecoder.decode(value, StandardCharsets.UTF_8));
    }
  }

  boolean changes() {
    return method.equals("POST");
  }

  /** The steps of the way. */
  List<String> way() {
    return way;
  }

  /** A step of the way; empty where it is not so long. */
  String step(int index) {
    return index < way.size() ? way.get(index) : "";
  }

  byte[] body() {
    return body.clone();
  }

  /** What is said under a name; empty where nothing is. */
  String word(String name) {
    return said.getOrDefault(name, "");
  }

  /** A whole number that is said; empty where it is none. */
  Optional<Integer> number(String name) {
    String text = word(name);
    return text.matches("-?\\d{1,9}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
  }

  /** A figure that is said; empty where it is none. */
  Optional<Double> figure(String name) {
    String text = word(name);
    return text.matches("-?\\d{1,9}(\\.\\d{1,12})?(e-?\\d{1,3})?")
        ? Optional.of(Double.valueOf(text))
        : Optional.empty();
  }

  boolean truth(String name) {
    return word(name).equals("true");
  }
}
