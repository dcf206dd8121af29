package felloe.board;

import felloe.out.Json;
import felloe.out.JsonWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/**
 * What a page gets.
 *
 * @param status as HTTP has it
 * @param type its media type
 * @param body its bytes
 * @param headers more of what is said of it
 */
record Answer(int status, String type, byte[] body, Map<String, String> headers) {

  static final String HTML = "text/html; charset=utf-8";

  Answer {
    headers = Map.copyOf(headers);
  }

  static Answer html(String text) {
    return new Answer(200, HTML, bytes(text), Map.of());
  }

  static Answer json(int status, Json value) {
    return new Answer(
        status, "application/json; charset=utf-8", bytes(JsonWriter.text(value)), Map.of());
  }

  /** What cannot be done, in words. */
  static Answer refused(int status, String words) {
    return json(status, Json.object().with("refused", words));
  }

  static Answer moved(String to) {
    return new Answer(303, "text/plain; charset=utf-8", new byte[0], Map.of("Location", to));
  }

  /** A file to keep. */
  static Answer file(String type, byte[] body, String name) {
    String plain = name.replaceAll("[^A-Za-z0-9._-]", "-");
    return new Answer(
        200, type, body, Map.of("Content-Disposition", "attachment; filename=\"" + plain + "\""));
  }

  /** A part of the program, such as its style sheet; empty where there is none of that name. */
  static Optional<Answer> part(String name) {
    String type =
        name.endsWith(".css")
            ? "text/css; charset=utf-8"
            : name.endsWith(".js") ? "text/javascript; charset=utf-8" : "";
    if (type.isEmpty() || !Parts.NAMES.contains(name)) {
      return Optional.empty();
    }
    return Optional.of(new Answer(200, type, bytes(Parts.text(name)), Map.of()));
  }

  Answer with(String header, String value) {
    Map<String, String> more = new java.util.HashMap<>(headers);
    more.put(header, value);
    return new Answer(status, type, body, more);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
