package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the board is opened from the command line. */
class BoardCommandTest {

  @TempDir private Path folder;

  @Test
  void itTellsItsAddressAndServesUntilItIsStopped() throws Exception {
    Path shape = Files.copy(Path.of("shapes/dunlin.yaml"), folder.resolve("dunlin.yaml"));
    Run run = Stopped.after(() -> Run.of(folder, false, "board", shape.toString(), "--no-browser"));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().matches("(?s)http://localhost:\\d+/\\s*"), run.out());
    assertTrue(run.err().contains("Ctrl-C"), run.err());
  }

  /** The kit that the page gives is the one that the command line writes, byte by byte. */
  @Test
  void theKitOfThePageIsTheOneOfMake() throws Exception {
    Path shape = Files.copy(Path.of("shapes/dunlin.yaml"), folder.resolve("dunlin.yaml"));
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    String number = Integer.toString(port);
    Thread board =
        new Thread(
            () ->
                Run.of(folder, false, "board", shape.toString(), "--port", number, "--no-browser"));
    board.start();
    Map<String, byte[]> box = new TreeMap<>();
    try {
      URI kit = URI.create("http://localhost:" + port + "/shape/dunlin.yaml/kit");
      try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(fetched(kit)))) {
        for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
          box.put(e.getName(), zip.readAllBytes());
        }
      }
    } finally {
      board.interrupt();
      board.join();
    }
    Path out = folder.resolve("out");
    Run make = Run.of(folder, false, "make", shape.toString(), "--out", out.toString());
    assertEquals(0, make.code(), make.err());
    Map<String, byte[]> written = new TreeMap<>();
    try (var files = Files.list(out.resolve("dunlin"))) {
      for (Path file : files.filter(f -> !Run.isList(f)).toList()) {
        written.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    assertEquals(written.keySet(), box.keySet());
    for (String name : written.keySet()) {
      assertArrayEquals(written.get(name), box.get(name), name);
    }
  }

  private static byte[] fetched(URI address) throws Exception {
    HttpClient client = HttpClient.newHttpClient();
    for (int tries = 0; ; tries++) {
      try {
        return client
            .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofByteArray())
            .body();
      } catch (ConnectException notYet) {
        assertTrue(tries < 300, "it is not served");
        Thread.sleep(100);
      }
    }
  }

  @Test
  void onTheNetworkItTellsTheCode() throws Exception {
    Run run = Stopped.after(() -> Run.of(folder, false, "board", "--lan", "--no-browser"));
    assertTrue(run.err().matches("(?s).*good once: [2-9A-HJ-NP-Z]{8}.*"), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"none.yaml", ".hidden.yaml", "notes.txt", "..", "/"})
  void whatIsNoShapeFileIsRefusedBeforeAnythingIsServed(String shape) throws Exception {
    Run run = Run.of(folder, false, "board", folder.resolve(shape).toString(), "--no-browser");
    assertEquals(2, run.code(), run.out() + run.err());
    assertEquals("", run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"70000", "-1", "x"})
  void aPortThatIsNoneIsRefused(String port) throws Exception {
    Run run = Run.of(folder, false, "board", "--port", port, "--no-browser");
    assertEquals(2, run.code(), run.err());
  }

  @Test
  void aPortThatIsTakenIsTold() throws Exception {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      String port = Integer.toString(taken.getLocalPort());
      Run run = Run.of(folder, false, "board", "--port", port, "--no-browser");
      assertEquals(3, run.code(), run.err());
      assertTrue(run.err().contains("port " + port), run.err());
    }
  }
}
