package felloe.kit;

import felloe.drawing.Stamp;
import felloe.hub.HubCatalogue;
import felloe.hub.HubFit;
import felloe.hub.HubSpec;
import felloe.drawing.Paper;
import felloe.template.Template;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.review.Review;
import felloe.shape.ShapeFile;
import felloe.template.UsualPrint;
import felloe.yaml.Sets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The steps from a shape file to its pages, warm, on the demo shapes. */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class StepsBenchmark {

  /** The demo shape. */
  @Param({"heron", "bittern", "dunlin", "avocet"})
  public String shape;

  private final HubCatalogue hubs = new HubCatalogue(Path.of(""));
  private String text;
  private Plate plate;
  private HubSpec hub;

  /** Reads the file. */
  @Setup
  public void read() throws IOException {
    text = Files.readString(Path.of("shapes", shape + ".yaml"));
    plate = resolve();
    hub = hubs.spec(plate.hub().orElse("6x70-m5"), Place.BUILT_IN);
  }

  /** From the text to exact geometry, all checks of the reader included. Aim: under 5 ms. */
  @Benchmark
  public Plate resolve() {
    return ShapeFile.parse(shape, text, Sets.of(), hubs);
  }

  /** All rules but the hub fit. Aim: under 20 ms. */
  @Benchmark
  public Object review() {
    return Review.of(plate);
  }

  /** The best placement of the bolt circle on the hub, nominal and at the worst. */
  @Benchmark
  public Object hubFit() {
    return HubFit.of(plate, hub);
  }

  /** The best layout on A4, and what is drawn on each page. Aim: under 50 ms. */
  @Benchmark
  public Object tile() {
    return Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
  }
}
