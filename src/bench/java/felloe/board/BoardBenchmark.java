package felloe.board;

import felloe.out.JsonWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** From a changed value to the answer that a page gets: plate, review, figures, drawing, form. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 4)
@Measurement(iterations = 5, time = 4)
public class BoardBenchmark {

  /** A demo shape. */
  @Param({"heron", "bittern", "dunlin", "avocet"})
  public String shape;

  private Schema schema;
  private String text;
  private int count;

  /** Reads the file once. */
  @Setup(Level.Trial)
  public void read() throws IOException {
    schema = Schema.ofShapeFile();
    text = Files.readString(Path.of("shapes", shape + ".yaml"));
  }

  /** A change and its answer. */
  @Benchmark
  public String changed() {
    String name = shape + ".yaml";
    String changed =
        new Editing(schema, name, text)
            .written("stock.thickness", Double.toString(5 + (count++ % 20) / 10.0));
    Seen seen = Seen.of(name, changed, Path.of("shapes"));
    Desk.State state =
        new Desk.State(
            1, seen, seen, List.of(new History.Step(changed, "b")), 0, false, false, false);
    return JsonWriter.text(Reply.of(state, schema, name, 0, Optional.empty()));
  }
}
