package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command loads what it needs: each library that it does not need would cost every start. */
class StartTest {

  private static final List<String> LIBRARIES =
      List.of(
          "org.apache.pdfbox",
          "org.apache.fontbox",
          "org.apache.batik",
          "org.locationtech.jts",
          "org.snakeyaml",
          "picocli",
          "java.awt",
          "javax.xml");

  @TempDir Path folder;

  /** The libraries that a call of the program loads. */
  private Set<String> loaded(String... args) throws IOException, InterruptedException {
    Path log = folder.resolve("classes.txt");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xlog:class+load:file=" + log + ":none");
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "felloe.cli.Main"));
    command.addAll(List.of(args));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out.txt").toFile())
            .start();
    assertEquals(0, process.waitFor(), () -> text(folder.resolve("out.txt")));
    String classes = text(log);
    assertTrue(classes.contains("felloe.cli.Main "), "the log is one of classes");
    return LIBRARIES.stream()
        .filter(library -> classes.contains("\n" + library + "."))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      return unreadable.toString();
    }
  }

  @Test
  void theVersionNeedsNoLibraryButTheNamesOfCallMistakes() throws Exception {
    assertEquals(Set.of("picocli"), loaded("--version"));
  }

  @Test
  void hubsNeedNeitherPagesNorPicturesNorPolygons() throws Exception {
    assertEquals(Set.of("org.snakeyaml", "picocli"), loaded("hub", "list"));
  }

  @Test
  void figuresNeedNeitherPagesNorPictures() throws Exception {
    Set<String> libraries = loaded("show", "shapes/bittern.yaml", "--format", "json");
    libraries.removeAll(Set.of("org.snakeyaml", "picocli", "org.locationtech.jts"));
    assertEquals(Set.of(), libraries);
  }
}
