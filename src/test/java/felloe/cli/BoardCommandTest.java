package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
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
