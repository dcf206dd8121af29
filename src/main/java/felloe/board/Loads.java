package felloe.board;

import felloe.document.Report;
import felloe.out.Json;
import felloe.plate.BadInput;
import felloe.render.HtmlRenderer;
import felloe.report.BesideDrawing;
import felloe.report.LoadReport;
import felloe.service.LoadOutcome;
import felloe.service.PlateLoads;
import felloe.service.Progress;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * What loads do to the plate of a desk, reckoned behind the page: first on one mesh, then with all
 * patience. Work on a text that has changed meanwhile is dropped.
 */
final class Loads implements AutoCloseable {

  /** A plate that is still being dragged is not reckoned, ms. */
  private static final long PAUSE = 350;

  private static final String FAULT = "this is a fault in Felloe, not in your file";

  private final Desk desk;
  private final Runnable told;
  private final Consumer<Throwable> faults;

  /** The drawing comes first. */
  private final ExecutorService hands = Hands.one("loads", Thread.MIN_PRIORITY);

  private final Runnable changed = this::changed;

  private volatile Answer answer = new Answer("", Stage.WAITS, "", "");
  private Future<?> running;

  /** How far it has come. */
  private enum Stage {
    WAITS,
    /** On one mesh. */
    FIRST,
    /** With all patience. */
    OWN,
    /** Other thicknesses and wider webs too. */
    DONE,
    CANNOT
  }

  /**
   * What is known.
   *
   * @param text that it is of
   * @param words in a sentence
   * @param tone of the verdict
   * @param report with its maps, once that is there
   * @param article the same as part of a page
   */
  private record Answer(
      String text,
      Stage stage,
      String words,
      String tone,
      Optional<Report> report,
      Optional<String> article) {

    /** Without a report. */
    Answer(String text, Stage stage, String words, String tone) {
      this(text, stage, words, tone, Optional.empty(), Optional.empty());
    }

    /** The same with its report, which takes a while to be drawn. */
    static Answer of(String text, Stage stage, LoadOutcome outcome) {
      String words = BesideDrawing.loads(outcome);
      Optional<Report> report =
          stage == Stage.FIRST ? Optional.empty() : Optional.of(LoadReport.of(outcome));
      String tone = outcome.met() ? "well" : "fail";
      return new Answer(text, stage, words, tone, report, report.map(HtmlRenderer::article));
    }
  }

  /**
   * @param told is run when there is more to tell
   * @param faults is told of faults of the program
   */
  Loads(Desk desk, Runnable told, Consumer<Throwable> faults) {
    this.faults = faults;
    this.desk = desk;
    this.told = told;
    desk.listen(changed);
    changed();
  }

  private synchronized void changed() {
    String text = desk.state().seen().text();
    if (text.equals(answer.text())) {
      return;
    }
    answer = new Answer(text, Stage.WAITS, "", "");
    if (running != null) {
      running.cancel(true);
    }
    running = hands.submit(() -> reckon(text));
  }

  private boolean stale(String text) {
    return !text.equals(answer.text());
  }

  private void say(Answer next) {
    synchronized (this) {
      if (stale(next.text())) {
        return;
      }
      answer = next;
    }
    told.run();
  }

  private void reckon(String text) {
    try {
      Thread.sleep(PAUSE);
    } catch (InterruptedException changedAgain) {
      Thread.currentThread().interrupt();
      return;
    }
    if (stale(text)) {
      return;
    }
    if (desk.state().seen().study().isEmpty()) {
      say(new Answer(text, Stage.CANNOT, "it is no plate as it is", "fail"));
      return;
    }
    ShapeSource source = ShapeSource.text(desk.name(), text);
    Path folder = desk.folder();
    try {
      LoadOutcome first =
          PlateLoads.first(source, PlateLoads.Request.USUAL, studies(folder), folder);
      say(Answer.of(text, Stage.FIRST, first));
      if (stale(text)) {
        return;
      }
      LoadOutcome own = PlateLoads.own(source, PlateLoads.Request.USUAL, studies(folder), folder);
      say(Answer.of(text, Stage.OWN, own));
      if (stale(text)) {
        return;
      }
      LoadOutcome whole =
          PlateLoads.of(source, PlateLoads.Request.USUAL, studies(folder), folder, Progress.SILENT);
      say(Answer.of(text, Stage.DONE, whole));
    } catch (BadInput cannot) {
      String words = cannot.problems().get(0).line();
      say(new Answer(text, Stage.CANNOT, words, "fail"));
    } catch (CancellationException stopped) {
      // The text changed, or the board ends: there is nothing to tell.
      return;
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
      if (stale(text)) {
        // It was told to stop.
        return;
      }
      faults.accept(fault);
      say(new Answer(text, Stage.CANNOT, FAULT, "fail"));
    }
  }

  private static Studies studies(Path folder) {
    return new Studies(folder, Optional.empty());
  }

  /** What is known, for a page. */
  Json.Members reply() {
    Answer now = answer;
    return Json.object()
        .with("stage", now.stage().name().toLowerCase(java.util.Locale.ROOT))
        .with("words", now.words())
        .with("tone", now.tone());
  }

  /** The report with its maps; empty while it is not there yet. */
  Optional<String> article() {
    return answer.article();
  }

  /** The report, to be kept; empty while it is not there yet. */
  Optional<Report> report() {
    return answer.report();
  }

  @Override
  public void close() {
    desk.silence(changed);
    hands.shutdownNow();
  }
}
