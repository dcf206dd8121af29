package felloe.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Cold process times: the program beside {@link BareProgram}, in turn, so that whatever else the
 * machine does falls on both. Prints the least and the middle of wall and processor time. Needs
 * bash, whose {@code time} measures.
 */
public final class ColdStart {

  private static final String JAR = "target/felloe.jar";

  private ColdStart() {}

  /** Runs each as often as told, 15 times when not. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int runs = args.length == 0 ? 15 : Integer.parseInt(args[0]);
    String out = Files.createTempDirectory("cold-start").toString();
    Map<String, String> calls = new LinkedHashMap<>();
    calls.put(
        "bare program",
        "java -cp " + JAR + ":target/test-classes felloe.start.BareProgram shapes/heron.yaml "
            + out);
    for (String shape : List.of("heron", "bittern", "dunlin", "avocet")) {
      calls.put("make " + shape, felloe("make shapes/" + shape + ".yaml --out " + out));
    }
    calls.put("make all four", felloe("make shapes/*.yaml --out " + out));
    calls.put("check heron", felloe("check shapes/heron.yaml"));
    calls.put("show heron as JSON", felloe("show shapes/heron.yaml --format json"));
    calls.put("help", felloe("help"));
    Map<String, double[][]> times = new LinkedHashMap<>();
    calls.keySet().forEach(name -> times.put(name, new double[2][runs]));
    for (int run = 0; run < runs; run++) {
      for (Map.Entry<String, String> call : calls.entrySet()) {
        double[] seconds = time(call.getValue());
        times.get(call.getKey())[0][run] = seconds[0];
        times.get(call.getKey())[1][run] = seconds[1] + seconds[2];
      }
    }
    double[][] bare = times.get("bare program");
    System.out.println("seconds: wall least, middle; processor least, middle; least over the bare");
    for (Map.Entry<String, double[][]> line : times.entrySet()) {
      double[] wall = line.getValue()[0];
      double[] processor = line.getValue()[1];
      Arrays.sort(wall);
      Arrays.sort(processor);
      System.out.printf(
          Locale.ROOT,
          "%-20s %6.3f %6.3f   %6.3f %6.3f   %5.2f %5.2f%n",
          line.getKey(),
          wall[0],
          wall[runs / 2],
          processor[0],
          processor[runs / 2],
          wall[0] / least(bare[0]),
          processor[0] / least(bare[1]));
    }
  }

  private static double least(double[] values) {
    return Arrays.stream(values).min().orElseThrow();
  }

  private static String felloe(String call) {
    return "java -jar " + JAR + " " + call;
  }

  private static double[] time(String call) throws IOException, InterruptedException {
    String script = "TIMEFORMAT='%R %U %S'; time " + call + " > /dev/null 2>&1";
    Process process = new ProcessBuilder("bash", "-c", script).start();
    String answer = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = process.waitFor();
    if (code != 0) {
      throw new IOException(call + " ended with exit code " + code + ": " + answer);
    }
    return Arrays.stream(answer.strip().split(" ")).mapToDouble(Double::parseDouble).toArray();
  }
}
