package felloe.service;

import felloe.cutting.CutFigure;
import felloe.cutting.CutJob;
import felloe.cutting.CutProcess;
import felloe.cutting.CutRefused;
import felloe.cutting.CutWish;
import felloe.cutting.Dialect;
import felloe.cutting.DialectCatalogue;
import felloe.cutting.FeedTable;
import felloe.cutting.JigsawPlan;
import felloe.cutting.MachineJob;
import felloe.cutting.SheetRequest;
import felloe.drilling.DrillMaterial;
import felloe.drilling.DrillTable;
import felloe.geometry.GeometryException;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Requested;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Works out how plates are cut from their stock. */
public final class PlateCutting {

  /** Decimals of the drawings that a beam follows: those of the SVG file, the coarser. */
  private static final int BEAM_DECIMALS = 5;

  private PlateCutting() {}

  /**
   * How cutting is asked for.
   *
   * @param wish process and figures
   * @param grip label of the grip whose flat scales are cut, instead of the plates
   * @param sheet how all plates lie on one sheet; empty when each is cut alone
   * @param dialect how the router's controller wants its words
   * @param coolant whether coolant or air is switched on, where the dialect knows how
   * @param places where each figure is asked for, to tell what is wrong with it
   */
  public record Request(
      CutWish wish,
      Optional<Requested<String>> grip,
      Optional<SheetRequest> sheet,
      Dialect dialect,
      boolean coolant,
      Function<CutFigure, Place> places) {

    private int decimals() {
      return wish.process() == CutProcess.ROUTER ? dialect.decimals() : BEAM_DECIMALS;
    }
  }

  /**
   * The whole answer.
   *
   * @param studies what reads the shapes; their problems and the request's are told together
   * @throws BadInput with everything that is wrong
   * @throws felloe.cutting.MachineJob.Unproved when the check of the paths refuses them: a fault of
   *     the program
   */
  public static CutOutcome of(List<ShapeSource> shapes, Request request, Studies studies) {
    List<Study> all = studies.all(shapes);
    List<CutJob> jobs = new ArrayList<>();
    if (all.stream().noneMatch(Study::fails)) {
      FeedTable feeds = FeedTable.standard();
      CutWish wish = request.wish();
      int decimals = request.decimals();
      if (request.sheet().isPresent()) {
        List<Plate> plates = new ArrayList<>();
        studies.each(all, one -> plates.addAll(parts(one, request)));
        SheetRequest sheet = request.sheet().get();
        jobs.add(told(request, () -> CutJob.sheet(plates, sheet, wish, decimals, feeds)));
      } else {
        studies.each(
            all,
            one ->
                parts(one, request)
                    .forEach(part -> jobs.add(told(request, () -> job(part, request, feeds)))));
      }
    }
    return new CutOutcome(request, all, jobs);
  }

  /** What is cut of a shape: its plate, or the scales of a grip. */
  private static List<Plate> parts(Study study, Request request) {
    return request
        .grip()
        .map(label -> GripParts.scales(GripsOutcome.of(study), label))
        .orElseGet(() -> List.of(study.plate()));
  }

  /**
   * A plate by router with everything as usual.
   *
   * @param plate what is cut
   * @param router how; empty where none can, or while it is held back
   * @param refused why none can
   */
  public record Usual(Plate plate, Optional<CutJob> router, Optional<RuntimeException> refused) {

    /** Works it out. */
    public static Usual of(Plate plate) {
      try {
        return new Usual(plate, Optional.of(usual(plate)), Optional.empty());
      } catch (CutRefused | MachineJob.Unproved | GeometryException refused) {
        return new Usual(plate, Optional.empty(), Optional.of(refused));
      }
    }

    static Usual held(Plate plate) {
      return new Usual(plate, Optional.empty(), Optional.empty());
    }
  }

  /** The flat scales of a plate's grips by router, held back while it fails its review. */
  public static List<Usual> scales(GripsOutcome outcome) {
    boolean held = outcome.study().fails();
    return GripParts.scales(outcome).stream()
        .map(scale -> held ? Usual.held(scale) : Usual.of(scale))
        .toList();
  }

  private static CutJob usual(Plate plate) {
    return CutJob.plate(
        plate,
        CutWish.usual(CutProcess.ROUTER),
        DialectCatalogue.standard().decimals(),
        FeedTable.standard());
  }

  /**
   * The holes that a saw starts from or turns in; none for a plate whose shape file names no blade.
   */
  public static List<JigsawPlan.WasteHole> wasteHoles(Plate plate) {
    if (plate.making().blade().isEmpty()) {
      return List.of();
    }
    return sawn(plate).saw().orElseThrow().holes().stream()
        .filter(JigsawPlan.WasteHole::forTheSaw)
        .toList();
  }

  /** A plate that is sawn by hand with everything as usual. */
  static CutJob sawn(Plate plate) {
    return sawn(plate, CutWish.usual(CutProcess.JIGSAW), FeedTable.standard());
  }

  private static CutJob job(Plate plate, Request request, FeedTable feeds) {
    return request.wish().process() == CutProcess.JIGSAW
        ? sawn(plate, request.wish(), feeds)
        : CutJob.plate(plate, request.wish(), request.decimals(), feeds);
  }

  private static CutJob sawn(Plate plate, CutWish wish, FeedTable feeds) {
    DrillTable table = DrillTable.standard();
    DrillMaterial by = table.material(plate.stock().material());
    return CutJob.sawn(plate, wish, feeds, by.largestDrill(), table.opener(by).largest());
  }

  private static CutJob told(Request request, Supplier<CutJob> work) {
    try {
      return work.get();
    } catch (CutRefused refused) {
      Problems problems = new Problems();
      refused.faults().forEach(fault -> problems.add(fault.problem(request.places())));
      throw problems.asBadInput();
    }
  }
}
