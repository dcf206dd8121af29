package felloe.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that writes is killed a hundred times, at seeded moments. */
class KilledRunTest {

  private static final int KILLS = 100;
  private static final long SEED = 20261128;

  /** Longest time from the first set to the kill, ms: some sets long. */
  private static final int SPAN_MS = 40;

  @TempDir Path out;

  @Test
  void aHundredKillsLeaveNoMixtureAndNothingHiddenOnceTheNextRunHasBegun() throws Exception {
    Random random = new Random(SEED);
    int torn = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      killed(1000 * kill, random.nextInt(SPAN_MS));
      torn += hidden().isEmpty() ? 0 : 1;
      // Any run into the folders puts them in order; this one writes a set of its own.
      FileSet other =
          new FileSet("drill", "heron.yaml", List.of(new OutFile("steps.csv", new byte[] {'a'})));
      Transaction.into(out, Disk.REAL).folder("heron", other).here(other).commit();
      String told = "kill " + kill + ", seed " + SEED;
      assertEquals(List.of(), hidden(), told);
      assertWhole(out, told);
      assertWhole(out.resolve("heron"), told);
    }
    System.out.println(torn + " of " + KILLS + " kills fell into a set");
    // Otherwise the kills missed their moment, and nothing was shown.
    assertTrue(torn > KILLS / 4, torn + " of " + KILLS + " kills fell into a set");
  }

  private void killed(int word, int after) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process process =
        new ProcessBuilder(
                java,
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Xmx64m",
                "-cp",
                System.getProperty("java.class.path"),
                KilledRun.class.getName(),
                out.toString(),
                Integer.toString(word))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader said =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      assertEquals("written", said.readLine());
      Thread.sleep(after);
    } finally {
      process.destroyForcibly();
      assertTrue(process.waitFor(20, TimeUnit.SECONDS));
    }
  }

  /** All files of a set hold one word, and they are as many as belong to it. */
  private static void assertWhole(Path folder, String told) throws IOException {
    Set<String> words = new TreeSet<>();
    List<String> files = new ArrayList<>();
    for (Path file : StagingFolder.list(folder)) {
      if (file.toString().endsWith(".nc")) {
        files.add(file.getFileName().toString());
        words.add(Files.readAllLines(file).get(0));
        assertEquals(1, Set.copyOf(Files.readAllLines(file)).size(), told);
      }
    }
    assertEquals(1, words.size(), told + ": " + words);
    int word = Integer.parseInt(words.iterator().next().substring("word ".length()));
    assertEquals(KilledRun.set(word).files().stream().map(OutFile::name).toList(), files, told);
  }

  private List<Path> hidden() throws IOException {
    try (Stream<Path> all = Files.walk(out)) {
      return all.filter(path -> path.getFileName().toString().startsWith(".")).toList();
    }
  }
}
