package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {

  @TempDir Path folder;

  @Test
  void makeWritesAKit() {
    Run run = Run.of("make", "shapes/bittern.yaml", "--out", folder.toString());
    assertEquals(
        "", run.err().lines().filter(line -> !line.startsWith("Print")).findFirst().orElse(""));
    assertEquals(0, run.code());
    assertTrue(folder.resolve("bittern/bittern-report.json").toFile().isFile());
  }
}
