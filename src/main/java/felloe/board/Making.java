package felloe.board;

import felloe.out.Json;
import felloe.plate.BadInput;
import felloe.report.NewWheelReport;
import felloe.service.NewWheel;
import felloe.service.WheelWish;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;

/** Wheels that are being made out of answers, one after the other; the last ones are kept. */
final class Making implements AutoCloseable {

  private static final int MOST = 8;
  private static final int MOST_WAITING = 3;

  private final Bench bench;
  private final Map<Integer, Job> jobs = new LinkedHashMap<>();

  /** The drawing comes first. */
  private final ExecutorService hands = Hands.one("making", Thread.MIN_PRIORITY);

  private final Consumer<Throwable> faults;

  private int last;

  /**
   * A wheel that is being made, or was.
   *
   * @param wish what was answered
   * @param words the stage that it is at; of a done one what came of it
   * @param begun as of {@link System#nanoTime}
   * @param done whether it has ended
   * @param made whether it lies on the board now
   * @param nearest what might do instead
   */
  record Job(
      WheelWish wish,
      List<String> words,
      long begun,
      boolean done,
      boolean made,
      Optional<WheelWish> nearest) {

    Job {
      words = List.copyOf(words);
    }

    private Job at(String stage) {
      return new Job(wish, List.of(stage), begun, false, false, Optional.empty());
    }

    private Job ended(List<String> all, boolean well, Optional<WheelWish> other) {
      return new Job(wish, all, begun, true, well, other);
    }

    int seconds() {
      return (int) ((System.nanoTime() - begun) / 1_000_000_000L);
    }

    Json.Members reply() {
      return Json.object()
          .with("done", done)
          .with("words", String.join(" ", words))
          .with("seconds", seconds());
    }
  }

  /**
   * @param faults is told of faults of the program
   */
  Making(Bench bench, Consumer<Throwable> faults) {
    this.bench = bench;
    this.faults = faults;
  }

  /**
   * Begins with one.
   *
   * @return its number; empty when too many wait
   */
  synchronized Optional<Integer> begin(WheelWish wish) {
    long waiting = jobs.values().stream().filter(job -> !job.done()).count();
    if (waiting > MOST_WAITING) {
      return Optional.empty();
    }
    int number = ++last;
    List<String> words = List.of(waiting == 0 ? "begins" : "waits until the one before is done");
    jobs.put(number, new Job(wish, words, System.nanoTime(), false, false, Optional.empty()));
    jobs.keySet().stream().findFirst().filter(one -> jobs.size() > MOST).ifPresent(jobs::remove);
    hands.execute(() -> make(number, wish));
    return Optional.of(number);
  }

  synchronized Optional<Job> job(int number) {
    return Optional.ofNullable(jobs.get(number));
  }

  private synchronized void change(int number, java.util.function.UnaryOperator<Job> to) {
    jobs.computeIfPresent(number, (key, job) -> to.apply(job));
  }

  private void make(int number, WheelWish wish) {
    Consumer<String> stage = words -> change(number, job -> job.at(words));
    stage.accept("drawing and reviewing");
    try {
      NewWheel.Outcome outcome =
          NewWheel.of(wish, bench.folder(), (what, done, all) -> stage.accept(what));
      if (outcome instanceof NewWheel.Made made) {
        bench.begin(wish.name(), made.text());
        change(number, job -> job.ended(NewWheelReport.of(made), true, Optional.empty()));
      } else {
        NewWheel.None none = (NewWheel.None) outcome;
        change(number, job -> job.ended(NewWheelReport.of(none), false, none.nearest()));
      }
    } catch (BadInput bad) {
      change(number, job -> job.ended(bad.lines(), false, Optional.empty()));
    } catch (CancellationException ending) {
      change(number, job -> job.ended(List.of("The board has ended."), false, Optional.empty()));
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
      faults.accept(fault);
      change(
          number,
          job ->
              job.ended(
                  List.of("This is a fault in Felloe, not in your answers."),
                  false,
                  Optional.empty()));
    }
  }

  @Override
  public void close() {
    hands.shutdownNow();
  }
}
