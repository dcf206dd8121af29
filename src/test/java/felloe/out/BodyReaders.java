package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads files of bodies with tools that are not ours. */
public final class BodyReaders {

  private BodyReaders() {}

  /** Asserts that admesh had nothing to mend in an STL file. */
  public static void nothingMended(String told) {
    for (String fault :
        List.of(
            "Facets with 1 disconnected edge",
            "Facets with 2 disconnected edges",
            "Facets with 3 disconnected edges",
            "Total disconnected facets",
            "Degenerate facets",
            "Edges fixed",
            "Facets removed",
            "Facets added",
            "Facets reversed",
            "Backwards edges",
            "Normals fixed")) {
      Matcher figure = Pattern.compile(Pattern.quote(fault) + "\\s*:\\s*(\\d+)").matcher(told);
      assertTrue(figure.find(), told);
      assertEquals("0", figure.group(1), told);
    }
  }

  /** Skips where the tool is not installed, but on the build machine that is a failure. */
  public static String run(Path folder, String tool, String ending, byte[] file, String... words)
      throws Exception {
    Path path = Files.write(folder.resolve("body" + ending), file);
    Path answer = folder.resolve("answer.txt");
    List<String> command = new ArrayList<>(List.of(tool));
    command.addAll(List.of(words));
    command.add(path.toString());
    try {
      int exit =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(answer.toFile())
              .start()
              .waitFor();
      String told = Files.readString(answer, StandardCharsets.UTF_8);
      assertEquals(0, exit, told);
      return told;
    } catch (IOException missing) {
      String package_ = tool.equals("assimp") ? "assimp-utils" : tool;
      if ("true".equals(System.getenv("CI"))) {
        fail(tool + " is not installed (Debian: " + package_ + ")");
      }
      assumeTrue(false, "skipped: " + tool + " is not installed (Debian: " + package_ + ")");
      throw missing;
    }
  }
}
