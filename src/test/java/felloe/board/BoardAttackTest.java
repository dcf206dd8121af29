package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other pages, other machines and broken callers may try; each is tried. */
class BoardAttackTest {

  private static final String REFUSED = "HTTP/1.1 403";

  @TempDir private Path folder;

  @Test
  void aPageUnderAnotherNameForThisMachineIsRefused() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      String port = Integer.toString(served.board.port());
      for (String host :
          List.of(
              "evil.example:" + port,
              "evil.example",
              "localhost",
              "localhost:1",
              "127.0.0.1.evil.example:" + port,
              "localhost:" + port + ".evil.example",
              "192.168.1.9:" + port,
              "")) {
        assertEquals(
            REFUSED,
            served.raw(
                "GET /shape/dunlin.yaml/state HTTP/1.1", "Host: " + host, "Connection: close"),
            host);
      }
      assertEquals(REFUSED, served.raw("GET / HTTP/1.0", "Connection: close"), "no host at all");
    }
  }

  @Test
  void aPageOfAnotherSiteCanNeitherReadNorChange() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      String host = "Host: localhost:" + served.board.port();
      for (String origin :
          List.of(
              "Origin: https://evil.example",
              "Origin: null",
              "Origin: http://localhost:1",
              "Origin: https://localhost:" + served.board.port(),
              "X-None: of any")) {
        assertEquals(
            REFUSED,
            served.raw(
                "POST /shape/dunlin.yaml/act HTTP/1.1",
                host,
                origin,
                "Content-Length: 0",
                "Connection: close"),
            origin);
      }
      assertEquals(
          REFUSED,
          served.raw(
              "GET /shape/dunlin.yaml/kit HTTP/1.1",
              host,
              "Sec-Fetch-Site: cross-site",
              "Connection: close"));
    }
  }

  @Test
  void eachAnswerForbidsScriptsFromElsewhereAndFrames() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      for (String way :
          List.of("/shape/dunlin.yaml", "/start", "/shape/dunlin.yaml/state", "/nowhere")) {
        HttpResponse<String> answer = served.get(way);
        String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
        assertTrue(policy.contains("default-src 'none'"), way);
        assertTrue(policy.contains("script-src 'self'"), way);
        assertFalse(policy.contains("unsafe"), way);
        assertTrue(policy.contains("frame-ancestors 'none'"), way);
        assertEquals("nosniff", answer.headers().firstValue("X-Content-Type-Options").orElse(""));
        assertTrue(answer.headers().firstValue("Access-Control-Allow-Origin").isEmpty());
        assertFalse(answer.body().contains("://") && answer.body().contains("src=\"http"), way);
      }
    }
  }

  @Test
  void noWayLeadsOutOfTheFolder() throws Exception {
    Path inside = Files.createDirectory(folder.resolve("inside"));
    Files.writeString(folder.resolve("secret.yaml"), "felloe: 1\ntitle: secret\n");
    Files.createSymbolicLink(inside.resolve("link.yaml"), folder.resolve("secret.yaml"));
    try (Served served = Served.with(inside, "dunlin.yaml")) {
      for (String name :
          List.of(
              "..%2Fsecret.yaml",
              "%2e%2e%2fsecret.yaml",
              "..%5Csecret.yaml",
              "link.yaml",
              ".dunlin.yaml.felloe-unsaved",
              "%00.yaml",
              "a%0Ab.yaml",
              "etc",
              "x".repeat(300) + ".yaml")) {
        HttpResponse<String> answer = served.get("/shape/" + name + "/state");
        assertEquals(422, answer.statusCode(), name + answer.body());
        assertFalse(answer.body().contains("title"), name);
      }
      for (String way : List.of("/parts/..%2F..%2Flimits.yaml", "/parts/limits.yaml", "/shape")) {
        assertEquals(404, served.get(way).statusCode(), way);
      }
      for (String name :
          List.of("../out.yaml", "/elsewhere/out.yaml", ".hidden.yaml", "out.txt", "")) {
        HttpResponse<String> answer =
            served.post("/start", Map.of("family", "round", "name", name));
        assertEquals(422, answer.statusCode(), name);
      }
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
    assertEquals(List.of("inside", "secret.yaml"), list(folder));
  }

  private static List<String> list(Path folder) throws Exception {
    try (var all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void whatTheFileSaysIsNeverTakenForPartOfThePage() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      String evil = "\"></svg><script>alert(1)</script><img src=x onerror=alert(1)>";
      var state =
          served.act(
              "dunlin.yaml", Map.of("act", "write", "path", "title", "value", evil, "hand", ""));
      assertTrue(state.get("plate").asBoolean(), state.get("problems").toString());
      assertFalse(state.get("drawing").asText().contains("<script"));
      assertFalse(state.get("drawing").asText().contains("<img"));
      assertFalse(state.get("form").asText().contains("<script"));
      String view = served.get("/shape/dunlin.yaml/view?name=review").body();
      assertFalse(view.contains("<script"));
      assertFalse(view.contains("<img"));
    }
  }

  @Test
  void tooMuchIsRefusedAndBrokenCallsAreAnswered() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      String much = "x".repeat(10 << 20);
      assertEquals(
          413,
          served.post("/shape/dunlin.yaml/act", Map.of("act", "text", "value", much)).statusCode());
      var state = served.act("dunlin.yaml", Map.of("act", "text", "value", "[".repeat(4000)));
      assertFalse(state.get("plate").asBoolean());
      assertEquals(
          200, served.get("/shape/dunlin.yaml/state").statusCode(), "it goes on being served");
      for (Map<String, String> words :
          List.of(
              Map.<String, String>of(),
              Map.of("act", "fly"),
              Map.of("act", "drag", "path", "bore", "x", "NaN", "y", "1"),
              Map.of("act", "drag", "path", "bore", "x", "1e999", "y", "1"),
              Map.of("act", "step", "path", "nothing.here", "by", "1"),
              Map.of("act", "remove", "path", "windows[99]"),
              Map.of("act", "add", "path", "outline", "key", "nothing"),
              Map.of("act", "write", "path", "[[[", "value", "1"),
              Map.of("act", "append", "path", "outline"))) {
        served.act("dunlin.yaml", Map.of("act", "undo"));
        var answer =
            served.from(served.state("dunlin.yaml").get("revision").asInt(), "dunlin.yaml", words);
        assertTrue(List.of(400, 422).contains(answer.statusCode()), words + answer.body());
      }
      assertEquals(405, raw(served, "DELETE /shape/dunlin.yaml HTTP/1.1"));
      assertEquals(405, raw(served, "PUT /shape/dunlin.yaml HTTP/1.1"));
      assertTrue(served.faults.isEmpty(), served.faults.toString());
    }
  }

  private static int raw(Served served, String line) throws Exception {
    String host = "Host: localhost:" + served.board.port();
    return Integer.parseInt(served.raw(line, host, "Connection: close").substring(9));
  }

  @Test
  void callersThatNeverFinishDoNotHoldOthersBack() throws Exception {
    try (Served served = Served.with(folder, "dunlin.yaml")) {
      List<Socket> slow = new ArrayList<>();
      try {
        for (int i = 0; i < 30; i++) {
          Socket one = new Socket("localhost", served.board.port());
          one.getOutputStream()
              .write(
                  "POST /shape/dunlin.yaml/act HTTP/1.1\r\nHost:".getBytes(StandardCharsets.UTF_8));
          slow.add(one);
        }
        long start = System.nanoTime();
        assertEquals(200, served.get("/shape/dunlin.yaml/state").statusCode());
        // They are cut off after ten seconds; nobody waits for that.
        assertTrue(System.nanoTime() - start < 8_000_000_000L, "waited for those that never end");
      } finally {
        for (Socket one : slow) {
          one.close();
        }
      }
    }
  }

  @Test
  void withoutTheNetworkOnlyThisMachineIsListenedTo() throws Exception {
    try (Served served = Served.empty(folder, false)) {
      assertEquals("http://localhost:" + served.board.port() + "/", served.board.address());
      var all = java.net.NetworkInterface.networkInterfaces().toList();
      for (var card : all) {
        for (var address : java.util.Collections.list(card.getInetAddresses())) {
          if (!address.isLoopbackAddress()) {
            boolean open;
            try (Socket socket = new Socket()) {
              socket.connect(new java.net.InetSocketAddress(address, served.board.port()), 500);
              open = true;
            } catch (java.io.IOException closed) {
              open = false;
            }
            assertFalse(open, address.toString());
          }
        }
      }
    }
  }

  @Test
  void onTheNetworkNothingIsSeenWithoutTheCode() throws Exception {
    Files.copy(Path.of("shapes/dunlin.yaml"), folder.resolve("dunlin.yaml"));
    try (Served served = Served.empty(folder, true)) {
      for (String way :
          List.of(
              "/",
              "/start",
              "/shape/dunlin.yaml",
              "/shape/dunlin.yaml/state",
              "/shape/dunlin.yaml/news",
              "/shape/dunlin.yaml/kit",
              "/parts/board.js")) {
        HttpResponse<String> answer = served.get(way);
        assertEquals(401, answer.statusCode(), way);
        assertFalse(answer.body().contains("dunlin"), way);
      }
      assertEquals(200, served.get("/parts/board.css").statusCode());
      assertEquals(401, served.post("/shape/dunlin.yaml/act", Map.of("act", "undo")).statusCode());
      assertEquals(401, served.post("/code", Map.of("code", "AAAAAAAA")).statusCode());
      HttpResponse<String> in = served.post("/code", Map.of("code", served.board.code()));
      assertEquals(303, in.statusCode());
      String cookie = in.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
      String host = "Host: localhost:" + served.board.port();
      assertEquals(
          "HTTP/1.1 200",
          served.raw(
              "GET /shape/dunlin.yaml/state HTTP/1.1",
              host,
              "Cookie: other=1; " + cookie,
              "Connection: close"));
      assertEquals(
          "HTTP/1.1 401",
          served.raw(
              "GET /shape/dunlin.yaml/state HTTP/1.1",
              host,
              "Cookie: " + cookie + "x",
              "Connection: close"));
      assertEquals(
          401,
          served.post("/code", Map.of("code", served.board.code())).statusCode(),
          "the code is good once");
    }
  }
}
