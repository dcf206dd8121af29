package felloe.kit;

import felloe.files.CannotWrite;
import felloe.files.Disk;
import felloe.files.Transaction;
import felloe.geometry.Numbers;
import felloe.hub.HubFitResult;
import felloe.hub.HubSpec;
import felloe.hub.ScrewFit;
import felloe.joints.JointPlan;
import felloe.load.CaseBook;
import felloe.load.CasePlan;
import felloe.load.HubHold;
import felloe.load.LoadException;
import felloe.load.LoadPlan;
import felloe.load.LoadStudy;
import felloe.load.ScrewUse;
import felloe.load.ThicknessCandidates;
import felloe.mesh.MeshException;
import felloe.plate.BadInput;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.LayupWish;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.SourcedFigure;
import felloe.yaml.Problems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reckons loads on a plate. */
final class LoadBench {

  /** One mesh: enough to compare plates of one kind. */
  private static final LoadStudy.Patience QUICK = new LoadStudy.Patience(0.01, 0.05, 1, 12_000);

  private final Path folder;
  private final Disk disk;

  LoadBench(Path folder, Disk disk) {
    this.folder = folder;
    this.disk = disk;
  }

  /**
   * The answer for a shape.
   *
   * @param out folder for pages and pictures; none are made without it
   * @throws CannotWrite saying which file and why
   * @throws BadInput with everything that is wrong with request and shape, or telling why it cannot
   *     be reckoned
   */
  LoadAnswer answer(ShapeSource shape, LoadRequest request, Optional<Path> out) throws CannotWrite {
    long start = System.nanoTime();
    Problems problems = new Problems();
    LoadOrder order = null;
    Plate plate = null;
    try {
      order = LoadOrder.of(request, folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    try {
      plate = Reading.plate(shape, folder);
    } catch (BadInput bad) {
      problems.add(bad);
    }
    problems.throwIfAny();
    Optional<HubSpec> hub = Reading.hub(plate, shape, folder);
    JointPlan joints = JointPlan.of(plate, hub);
    LoadPlan plan = plan(plate, order, joints, screwed(plate, hub), false);
    double seconds = (System.nanoTime() - start) / 1e9;
    LoadAnswer answer = LoadAnswer.of(plan, ScrewUse.of(plan, joints), seconds);
    return out.isPresent()
        ? answer.with(
            Transaction.into(out.get(), disk)
                .here(KitNames.set("load", plate, new LoadSheet(answer).files(order.paper())))
                .commit()
                .files())
        : answer;
  }

  /**
   * A plate among many that are compared: on one mesh, without other thicknesses.
   *
   * @throws BadInput telling why it cannot be reckoned
   */
  static LoadPlan quick(Plate plate, Optional<HubSpec> hub, LoadOrder order) {
    JointPlan joints = JointPlan.of(plate, hub);
    return plan(plate, order, joints, screwed(plate, hub), true);
  }

  /** The hub holes that screws go through: all, unless the hub has fewer screws. */
  private static List<Hole> screwed(Plate plate, Optional<HubSpec> hub) {
    List<Hole> all = plate.holes(HoleRole.BOLT);
    if (hub.isEmpty()) {
      return all;
    }
    HubFitResult fit = felloe.hub.HubFit.of(plate, hub.get());
    List<Hole> used = fit.screws().stream().map(ScrewFit::hole).toList();
    return fit.enters() && used.size() >= 2 ? all.stream().filter(used::contains).toList() : all;
  }

  private static LoadPlan plan(
      Plate plate, LoadOrder order, JointPlan joints, List<Hole> screwed, boolean quick) {
    ThicknessCandidates range =
        ThicknessCandidates.of(plate, LayupWish.NONE, order.book(), order.tested());
    CaseBook book = CaseBook.builtIn();
    SourcedFigure factor = factor(plate, book, range);
    HubHold hold = HubHold.of(plate, order.hold(), joints, screwed);
    Place asked = order.cases().isEmpty() ? Place.BUILT_IN : LoadOrder.CASE;
    CasePlan cases = CasePlan.of(plate, book, hold, factor.value(), order.cases(), asked);
    List<SourcedFigure> figures = new ArrayList<>(range.figures());
    figures.add(factor);
    if (cases.cases().stream().anyMatch(c -> !c.own())) {
      figures.add(book.strong());
      figures.add(book.breadth());
      figures.add(book.rim());
    }
    try {
      return quick
          ? LoadPlan.of(plate, range, List.of(), hold, cases, figures, QUICK)
          : LoadPlan.of(plate, range, order.gauges(range), hold, cases, figures);
    } catch (LoadException refused) {
      throw refused(plate, refused.subject(), refused.getMessage());
    } catch (MeshException tooMany) {
      throw new BadInput(
          new Problem(
              Place.ofFile(plate.stock().place().file()),
              "load",
              "",
              "cannot be reckoned: " + tooMany.getMessage(),
              "widen the narrowest web, or look for a window that all but touches an edge"));
    }
  }

  private static SourcedFigure factor(Plate plate, CaseBook book, ThicknessCandidates range) {
    return plate
        .load()
        .factor()
        .map(
            own ->
                new SourcedFigure("factor on the loads", own.value(), "", "set in the shape file"))
        .orElseGet(() -> book.factor(plate.stock().material().kind(), range.tested()));
  }

  private static BadInput refused(Plate plate, String subject, String words) {
    Place place =
        plate
            .load()
            .clampDiameter()
            .filter(c -> subject.equals("support"))
            .map(Requested::place)
            .orElse(Place.ofFile(plate.stock().place().file()));
    String value = plate.load().clampDiameter().map(c -> Numbers.brief(c.value(), 3)).orElse("");
    boolean support = subject.equals("support");
    return new BadInput(
        new Problem(
            place,
            support ? "load.clamp_diameter" : "load case " + subject,
            support ? value : "",
            (support ? "cannot be: " : "") + words,
            ""));
  }
}
