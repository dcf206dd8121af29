package felloe.cutting;

import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import java.util.List;
import java.util.Optional;

/**
 * What is cut in one go: a plate alone, or all plates on one sheet.
 *
 * @param wish how it was asked for
 * @param shapes the plates that were asked for, each in its own frame
 * @param layout how they lie on a sheet; empty for a plate alone
 * @param work what is done
 * @param figures what a machine's work was worked out with
 */
public record CutJob(
    CutWish wish,
    List<Plate> shapes,
    Optional<SheetLayout> layout,
    CutWork work,
    List<SourcedFigure> figures) {

  public CutJob {
    shapes = List.copyOf(shapes);
    figures = List.copyOf(figures);
  }

  /**
   * A plate that is sawn by hand.
   *
   * @param largestDrill round openings up to this are usually drilled, mm
   * @param largestSaw round openings up to this are made by a hole saw or bit, mm
   */
  public static CutJob sawn(
      Plate plate, CutWish wish, FeedTable feeds, double largestDrill, double largestSaw) {
    JigsawPlan plan =
        JigsawPlan.of(plate, wish.blade(plate, feeds), wish.largestDrill(largestDrill), largestSaw);
    return new CutJob(wish, List.of(plate), Optional.empty(), plan, List.of());
  }

  /**
   * A plate alone, by a machine.
   *
   * @param decimals places of coordinates in the files
   * @throws CutRefused with everything that speaks against it
   * @throws MachineJob.Unproved when the check of the paths refuses them: a fault of the program
   */
  public static CutJob plate(Plate plate, CutWish wish, int decimals, FeedTable feeds) {
    double width = wish.width(List.of(plate), feeds);
    return of(wish, List.of(plate), Optional.empty(), width, decimals, feeds);
  }

  /**
   * Plates on one sheet, by a machine.
   *
   * @param decimals places of coordinates in the files
   * @throws CutRefused with everything that speaks against it
   * @throws MachineJob.Unproved when the check of the paths refuses them: a fault of the program
   */
  public static CutJob sheet(
      List<Plate> shapes, SheetRequest sheet, CutWish wish, int decimals, FeedTable feeds) {
    double width = wish.width(shapes, feeds);
    boolean walls = wish.process() == CutProcess.ROUTER;
    SheetLayout layout = SheetLayout.of(shapes, sheet, width, walls);
    return of(wish, shapes, Optional.of(layout), width, decimals, feeds);
  }

  private static CutJob of(
      CutWish wish,
      List<Plate> shapes,
      Optional<SheetLayout> layout,
      double width,
      int decimals,
      FeedTable feeds) {
    if (!wish.compensated()) {
      FinishLines lines = FinishLines.of(shapes.get(0), wish.process());
      return new CutJob(wish, shapes, layout, lines, List.of());
    }
    Optional<VTool> vTool = wish.vTool(shapes, feeds);
    MachineJob work =
        MachineJob.of(
            layout.map(SheetLayout::plates).orElse(shapes),
            layout.map(SheetLayout::room),
            plate -> wish.setup(plate, width, vTool, feeds),
            decimals);
    return new CutJob(wish, shapes, layout, work, CutSources.of(wish, work, feeds));
  }

  /** What its files begin with: the name of the one shape, or {@code sheet}. */
  public String name() {
    String one = shapes.get(0).name();
    return layout.isEmpty() ? one : shapes.size() == 1 ? one + "-sheet" : "sheet";
  }

  /** The plates in the frame of the machine, in the order of cutting. */
  public List<Plate> plates() {
    return layout.map(SheetLayout::plates).orElse(shapes);
  }

  /** What a machine does, checked; empty for a saw and for bare finish lines. */
  public Optional<MachineJob> machine() {
    return work instanceof MachineJob job ? Optional.of(job) : Optional.empty();
  }

  /** What a jigsaw does. */
  public Optional<JigsawPlan> saw() {
    return work instanceof JigsawPlan plan ? Optional.of(plan) : Optional.empty();
  }

  /** How long an operation takes; empty where the feed is not known. */
  public Optional<Double> minutes(OperationFigures figures) {
    return wish.timed() ? Optional.of(figures.minutes()) : Optional.empty();
  }

  /** What the cutter cannot reach. */
  public List<LeftOver> leftOvers() {
    return machine().map(MachineJob::leftOvers).orElse(List.of());
  }
}
