package felloe.board;

import felloe.kit.BroughtIn;
import felloe.out.Json;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.report.BroughtInReport;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Semaphore;

/** Brings an outline in that a page sends as a file's bytes. */
final class Outline {

  /** The largest that is read, bytes. */
  private static final int LARGEST = 8 << 20;

  private static final int LONGEST = 80;

  private static final double NARROWEST = 10;
  private static final double WIDEST = 2_000;
  private static final double FINEST = 0.0001;
  private static final double COARSEST = 10_000;
  private static final double TIGHTEST = 0.001;
  private static final double LOOSEST = 5;
  private static final double THINNEST = 0.2;
  private static final double THICKEST = 100;
  private static final double LOWEST = 100;
  private static final double HIGHEST = 10_000;

  private final Bench bench;

  /** A large drawing takes all there is of the machine, so one at a time. */
  private final Semaphore reading = new Semaphore(1);

  Outline(Bench bench) {
    this.bench = bench;
  }

  /**
   * Reads what was sent and lays it on the board, not saved yet.
   *
   * @throws BadInput when it cannot be brought in
   */
  Answer bring(Call call) {
    byte[] bytes = call.body();
    if (bytes.length > LARGEST) {
      return Answer.refused(413, "The file is too large: at most 8 MiB are read.");
    }
    if (bytes.length == 0) {
      return Answer.refused(
          422, "Choose a file: an .svg or .dxf drawing, a .csv table or a photo.");
    }
    String file = plain(call.word("file"));
    OptionalDouble width = within(call, "width", NARROWEST, WIDEST);
    OptionalDouble scale = within(call, "scale", FINEST, COARSEST);
    OptionalDouble gap = within(call, "gap", TIGHTEST, LOOSEST);
    OptionalDouble thickness = within(call, "thickness", THINNEST, THICKEST);
    OptionalDouble high = within(call, "camera-height", LOWEST, HIGHEST);
    if (width.isPresent() && scale.isPresent()) {
      throw refused("width", "", "cannot stand beside a scale", "give one of them");
    }
    String name = call.word("name").strip();
    bench.free(name);
    if (!reading.tryAcquire()) {
      return Answer.refused(503, "Another file is being read: wait until that is done.");
    }
    try {
      BroughtIn brought =
          BroughtIn.of(
              new BroughtIn.Sent(bytes, file, width, scale, gap, thickness, high),
              name,
              bench.folder());
      bench.begin(name, brought.text());
      List<String> words =
          new ArrayList<>(
              BroughtInReport.of(
                  brought.drawn(), brought.plate(), brought.apart(), brought.photo()));
      words.add("Measure the part and compare. It is not saved yet.");
      Json.Members told =
          Json.object().with("words", Json.array(words, Json::text)).with("to", "/shape/" + name);
      if (brought.overlay().isPresent()) {
        String picture = Base64.getEncoder().encodeToString(brought.overlay().get());
        told = told.with("picture", "data:image/png;base64," + picture);
      }
      return Answer.json(200, told);
    } finally {
      reading.release();
    }
  }

  /** A name that goes into a comment of the shape file: one line of letters and figures. */
  private static String plain(String said) {
    String last = said.substring(Math.max(said.lastIndexOf('/'), said.lastIndexOf('\\')) + 1);
    String safe = last.replaceAll("[^\\p{L}\\p{N} ._()+-]", "-").strip();
    String end = safe.substring(Math.max(0, safe.length() - LONGEST));
    return end.isEmpty() ? "outline" : end;
  }

  private static OptionalDouble within(Call call, String name, double least, double most) {
    if (call.word(name).isBlank()) {
      return OptionalDouble.empty();
    }
    Optional<Double> figure = call.figure(name);
    if (figure.filter(f -> f >= least && f <= most).isEmpty()) {
      throw refused(
          name,
          Problem.shown(call.word(name)),
          "must be a number from "
              + felloe.geometry.Numbers.brief(least, 4)
              + " to "
              + felloe.geometry.Numbers.brief(most, 4),
          "or leave it empty");
    }
    return OptionalDouble.of(figure.get());
  }

  private static BadInput refused(String who, String value, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile("outline"), who, value, wanted, cure));
  }
}
