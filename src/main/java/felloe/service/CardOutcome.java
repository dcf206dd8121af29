package felloe.service;

import felloe.cutting.CutJob;
import felloe.cutting.CutProcess;
import felloe.cutting.CutRefused;
import felloe.cutting.CutWish;
import felloe.cutting.FeedTable;
import felloe.cutting.JigsawPlan;
import felloe.cutting.MachineJob;
import felloe.geometry.GeometryException;
import felloe.job.Cutting;
import felloe.job.JobPlan;
import felloe.job.Parts;
import felloe.layup.MaterialBook;
import felloe.layup.StockSource;
import felloe.load.ProofLoad;
import felloe.plate.BadInput;
import felloe.plate.HolePosition;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.shape.Materials;
import felloe.template.BarReading;
import felloe.template.PageSet;
import java.util.Optional;

/**
 * The job of a plate, from the print to the signature.
 *
 * @param study the plate
 * @param job what it takes, in what order, what is measured
 * @param drill how its holes are made
 * @param template its template on pages
 * @param load what loads do to it; empty where they were not reckoned
 * @param refused why loads or lay-up could not be reckoned; empty where they could, or were not
 *     asked for
 */
public record CardOutcome(
    Study study,
    JobPlan job,
    DrillOutcome drill,
    PageSet template,
    Optional<LoadOutcome> load,
    Optional<String> refused) {

  /**
   * How the stock is got, which takes its time where it is laid up: it may be worked out beside
   * what else a kit has.
   *
   * @param source empty where it could not be planned
   * @param refused why it could not
   */
  public record Stocked(Optional<StockSource> source, Optional<String> refused) {

    /** Never refused: a stock that cannot be planned leaves the rest of the job as it is. */
    public static Stocked of(Study study) {
      try {
        return new Stocked(Optional.of(stock(study, MaterialBook.builtIn())), Optional.empty());
      } catch (BadInput cannot) {
        return new Stocked(Optional.empty(), Optional.of(words(cannot)));
      }
    }
  }

  /**
   * The job without its loads, which take seconds.
   *
   * @param drill how its holes are made
   * @param template its template on pages
   */
  public static CardOutcome unloaded(DrillOutcome drill, Stocked stock, PageSet template) {
    return of(drill, stock.source(), template, Optional.empty(), stock.refused());
  }

  /**
   * How the stock is got.
   *
   * @throws BadInput with what cannot be
   */
  static StockSource stock(Study study, MaterialBook book) {
    return StockSource.of(study.plate(), book, Materials.builtIn()::find);
  }

  static CardOutcome of(
      DrillOutcome drill,
      Optional<StockSource> stock,
      PageSet template,
      Optional<LoadOutcome> load,
      Optional<String> refused) {
    Study study = drill.study();
    Parts parts =
        new Parts(
            study.plate(),
            study.joints(),
            drill.plan(),
            stock,
            cutting(study),
            new Parts.Print(
                template.paper(),
                template.pages().size(),
                template.bar(),
                BarReading.good(template.bar())),
            load.filter(one -> one.met() && !study.fails()).map(one -> ProofLoad.of(one.plan())));
    return new CardOutcome(study, JobPlan.of(parts), drill, template, load, refused);
  }

  /** What stands in the way, on one line. */
  static String words(BadInput cannot) {
    Problem first = cannot.problems().get(0);
    return new Problem(
            first.place().withoutFolders(),
            first.who(),
            first.value(),
            first.wanted(),
            first.cure())
        .line();
  }

  private static Cutting cutting(Study study) {
    Plate plate = study.plate();
    boolean sawn = plate.making().blade().isPresent() || !machined(plate);
    if (!sawn) {
      return new Cutting.Machine(study.fails() ? Optional.empty() : router(plate));
    }
    double blade = CutWish.usual(CutProcess.JIGSAW).blade(plate, FeedTable.standard()).width();
    return new Cutting.Saw(saw(plate), blade);
  }

  private static boolean machined(Plate plate) {
    return plate.making().places(HolePosition.MACHINE);
  }

  private static Optional<MachineJob> router(Plate plate) {
    return PlateCutting.Usual.of(plate).router().flatMap(CutJob::machine);
  }

  private static Optional<JigsawPlan> saw(Plate plate) {
    try {
      return PlateCutting.sawn(plate).saw();
    } catch (CutRefused | GeometryException unsuited) {
      return Optional.empty();
    }
  }

  public Plate plate() {
    return study.plate();
  }

  /** Whether it must not be made as it is: its review fails, or its screws miss the hub. */
  public boolean stops() {
    return drill.stops();
  }

  /** Whether it is to be driven with, and its loads are reckoned and not as wanted. */
  public boolean weak() {
    return job.parts().driven() && load.filter(one -> !one.met()).isPresent();
  }

  /** Whether all that was looked at is as wanted; never where something could not be reckoned. */
  public boolean well() {
    return !stops() && load.map(LoadOutcome::met).orElse(refused.isEmpty());
  }
}
