package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same shape file gives the same bytes whatever the machine's habits. */
class SameBytesTest {

  @TempDir Path folder;

  @Test
  void kitsAreEqualInOtherLocalesTimeZonesAndCharsets() throws Exception {
    Path arabic = folder.resolve("arabic");
    Path german = folder.resolve("german");
    Process one =
        start(
            arabic,
            "-Duser.language=ar",
            "-Duser.country=EG",
            "-Duser.timezone=Pacific/Kiritimati",
            "-Dfile.encoding=UTF-8");
    Process two =
        start(
            german,
            "-Duser.language=de",
            "-Duser.country=DE",
            "-Duser.timezone=America/St_Johns",
            "-Dfile.encoding=ISO-8859-1",
            "-Dline.separator=\r\n");
    assertEquals(0, one.waitFor());
    assertEquals(0, two.waitFor());
    List<Path> files = files(arabic);
    // Nine a kit, its list of own files among them.
    assertEquals(18, files.size());
    assertEquals(files, files(german));
    for (Path file : files) {
      assertArrayEquals(
          Files.readAllBytes(arabic.resolve(file)),
          Files.readAllBytes(german.resolve(file)),
          file.toString());
    }
  }

  private static Process start(Path out, String... options) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(options));
    command.add("-Djava.awt.headless=true");
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "felloe.cli.Main"));
    command.addAll(List.of("make", "shapes/heron.yaml", "shapes/avocet.yaml"));
    command.addAll(List.of("--out", out.toString()));
    return new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectErrorStream(true)
        .start();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).map(folder::relativize).sorted().toList();
    }
  }
}
