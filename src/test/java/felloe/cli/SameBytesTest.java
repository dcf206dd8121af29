package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
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
    // Eleven a kit, its list of own files among them, and three of heron's grip scales.
    assertEquals(25, files.size());
    assertEquals(files, files(german));
    for (Path file : files) {
      assertArrayEquals(
          Files.readAllBytes(arabic.resolve(file)),
          Files.readAllBytes(german.resolve(file)),
          file.toString());
    }
  }

  /**
   * Another Java release draws a few edge pixels of a picture a shade otherwise; all else is equal.
   */
  @Test
  void kitsOfAnotherJavaReleaseAreEqualButForTheShadesOfPictures() throws Exception {
    Path other = other().orElse(null);
    assumeTrue(other != null, "no other Java release here");
    Path here = folder.resolve("here");
    Path there = folder.resolve("there");
    assertEquals(0, start(here).waitFor());
    assertEquals(0, start(other, there).waitFor());
    List<Path> files = files(here);
    assertEquals(files, files(there));
    for (Path file : files) {
      String name = file.getFileName().toString();
      if (name.endsWith(".png")) {
        BufferedImage a = ImageIO.read(here.resolve(file).toFile());
        BufferedImage b = ImageIO.read(there.resolve(file).toFile());
        assertEquals(a.getWidth(), b.getWidth(), name);
        assertEquals(a.getHeight(), b.getHeight(), name);
        int pixels = a.getWidth() * a.getHeight();
        long differ =
            IntStream.range(0, pixels)
                .filter(i -> pixel(a, i) != pixel(b, i))
                .peek(i -> assertTrue(Math.abs(pixel(a, i) - pixel(b, i)) <= SHADE, name))
                .count();
        assertTrue(differ <= pixels / 10_000, name + ": " + differ);
      } else if (!name.endsWith("-report.json") && !name.equals("felloe-files.txt")) {
        // Report and list hold digests of the pictures.
        assertArrayEquals(
            Files.readAllBytes(here.resolve(file)),
            Files.readAllBytes(there.resolve(file)),
            file.toString());
      }
    }
  }

  /** Of 256; 14 at most were seen between 17 and 25. */
  private static final int SHADE = 16;

  private static int pixel(BufferedImage image, int i) {
    return image.getRaster().getSample(i % image.getWidth(), i / image.getWidth(), 0);
  }

  /** Another Java release of this machine, beside the one that runs, from 17 on. */
  private static Optional<Path> other() throws IOException {
    Path own = Path.of(System.getProperty("java.home")).toRealPath();
    int release = Runtime.version().feature();
    if (own.getParent() == null) {
      return Optional.empty();
    }
    try (Stream<Path> beside = Files.list(own.getParent())) {
      return beside
          .filter(home -> Files.isExecutable(home.resolve("bin/java")))
          .filter(
              home -> {
                Matcher number = RELEASE.matcher(home.getFileName().toString());
                int found = number.find() ? Integer.parseInt(number.group()) : 0;
                return found >= 17 && found != release;
              })
          .sorted()
          .findFirst();
    }
  }

  private static final Pattern RELEASE = Pattern.compile("[0-9]{2}");

  private static Process start(Path out, String... options) throws IOException {
    return start(Path.of(System.getProperty("java.home")), out, options);
  }

  private static Process start(Path home, Path out, String... options) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(home.resolve("bin").resolve("java").toString());
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
