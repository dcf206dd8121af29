package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The library ezdxf, where it is installed: Debian's {@code python3-ezdxf}. */
public final class Ezdxf {

  private Ezdxf() {}

  /**
   * What it finds in a file, a line an entity. Skips the test where it is not installed, except on
   * the build machine ({@code CI=true}), where that is a failure.
   */
  static List<String> read(byte[] file, Path folder) throws Exception {
    Path dxf = Files.write(folder.resolve("read-back.dxf"), file);
    return said("read_dxf.py", folder, dxf.toString());
  }

  /**
   * A file as it saves it, in another version of the format.
   *
   * @param version such as R2000
   */
  public static byte[] savedAnew(byte[] file, String version, Path folder) throws Exception {
    Path dxf = Files.write(folder.resolve("was.dxf"), file);
    Path is = folder.resolve("is.dxf");
    said("save_dxf.py", folder, dxf.toString(), is.toString(), version);
    return Files.readAllBytes(is);
  }

  /**
   * A half ellipse that is bent a little, closed by a line: by the points that its spline goes
   * through, and by the control points that the library has for it.
   *
   * @param told whether the directions of its ends are told
   */
  public static List<byte[]> splines(boolean told, Path folder) throws Exception {
    List<Path> files = List.of(folder.resolve("points.dxf"), folder.resolve("control.dxf"));
    said(
        "fit_spline.py",
        folder,
        files.get(0).toString(),
        files.get(1).toString(),
        told ? "told" : "free");
    return List.of(Files.readAllBytes(files.get(0)), Files.readAllBytes(files.get(1)));
  }

  private static List<String> said(String name, Path folder, String... words) throws Exception {
    Optional<String> python = python();
    if (python.isEmpty() && "true".equals(System.getenv("CI"))) {
      fail("ezdxf is not installed (Debian: python3-ezdxf)");
    }
    assumeTrue(python.isPresent(), "skipped: ezdxf is not installed (Debian: python3-ezdxf)");
    Path script = folder.resolve(name);
    try (InputStream in = Ezdxf.class.getResourceAsStream(name)) {
      Files.write(script, in.readAllBytes());
    }
    Path answer = folder.resolve("answer.txt");
    List<String> command = new ArrayList<>(List.of(python.get(), script.toString()));
    command.addAll(List.of(words));
    int exit = run(answer, command.toArray(String[]::new));
    List<String> lines = Files.readAllLines(answer, StandardCharsets.UTF_8);
    assertEquals(0, exit, () -> String.join("\n", lines));
    return lines;
  }

  private static Optional<String> python() throws Exception {
    Path nowhere = Files.createTempFile("ezdxf", ".txt");
    try {
      for (String name : List.of("python3", "/usr/bin/python3")) {
        if (run(nowhere, name, "-c", "import ezdxf") == 0) {
          return Optional.of(name);
        }
      }
      return Optional.empty();
    } finally {
      Files.delete(nowhere);
    }
  }

  private static int run(Path output, String... command) throws InterruptedException {
    try {
      return new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(output.toFile())
          .start()
          .waitFor();
    } catch (IOException missing) {
      return -1;
    }
  }
}
