package felloe.service;

import felloe.cure.Widening;
import felloe.cure.WideningSearch;
import felloe.geometry.Tolerances;
import felloe.hub.HubFitResult;
import felloe.hub.ScrewFit;
import felloe.joints.JointCure;
import felloe.joints.JointCures;
import felloe.joints.JointJudgement;
import felloe.joints.JointPlan;
import felloe.joints.ScrewDemand;
import felloe.laminate.StripsFile;
import felloe.laminate.TestedStrips;
import felloe.layup.MaterialBook;
import felloe.load.CaseBook;
import felloe.load.CasePlan;
import felloe.load.Gauge;
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
import felloe.plate.LoadWish;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.SourcedFigure;
import felloe.plate.Verdict;
import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/** Reckons what loads do to a plate. */
public final class PlateLoads {

  /** One mesh: enough to compare plates of one kind. */
  private static final LoadStudy.Patience QUICK = new LoadStudy.Patience(0.01, 0.05, 1, 12_000);

  /** The most thicknesses of a range. */
  private static final int MOST = 20;

  private PlateLoads() {}

  /**
   * How loads are asked for.
   *
   * @param hold how the hub is to hold the plate, instead of the shape file's way
   * @param cases names of the cases that are wanted, and where that is said; empty for all
   * @param thicknesses to try; empty for those that the stock comes in
   * @param materials a file of the maker's own materials
   * @param tested a file of broken test strips
   */
  public record Request(
      Optional<Requested<LoadWish.Hold>> hold,
      Optional<Requested<List<String>>> cases,
      Optional<ThicknessChoice> thicknesses,
      Optional<Path> materials,
      Optional<Path> tested) {

    /** Nothing particular is asked for. */
    public static final Request USUAL =
        new Request(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** The same for some cases; for those of before where none are named. */
    Request of(List<String> some) {
      return some.isEmpty()
          ? this
          : new Request(
              hold,
              Optional.of(new Requested<>(some, Place.BUILT_IN)),
              thicknesses,
              materials,
              tested);
    }
  }

  /** How much is reckoned. */
  private enum Extent {
    /** One mesh. */
    QUICK,
    /** With all patience. */
    OWN,
    /** Other thicknesses too. */
    THICKNESSES,
    /** Wider webs too, where it is not as wanted. */
    WHOLE
  }

  /**
   * Thicknesses to try: a list, or all between two.
   *
   * @param values mm, growing; the two ends of a range
   * @param range whether they are ends
   */
  public record ThicknessChoice(List<Double> values, boolean range) {

    public ThicknessChoice {
      values = List.copyOf(values);
    }
  }

  /**
   * Files that a request names, read once.
   *
   * @param book of materials
   * @param tested broken strips
   */
  public record Sources(MaterialBook book, Optional<TestedStrips> tested) {

    /**
     * Reads them.
     *
     * @param folder where names of files start from
     * @throws BadInput with everything that is wrong with them
     */
    public static Sources of(Request request, Path folder) {
      felloe.yaml.Problems problems = new felloe.yaml.Problems();
      MaterialBook book = MaterialBook.builtIn();
      Optional<TestedStrips> tested = Optional.empty();
      try {
        book = LayupPlanning.book(request.materials(), folder);
      } catch (BadInput bad) {
        problems.add(bad);
      }
      try {
        tested = request.tested().map(file -> StripsFile.read(YamlTree.read(folder.resolve(file))));
      } catch (BadInput bad) {
        problems.add(bad);
      }
      problems.throwIfAny();
      return new Sources(book, tested);
    }
  }

  /**
   * The whole answer.
   *
   * @param studies what reads the shape; its problems and the request's are told together
   * @param progress is told how far it has come where a cure is looked for
   * @throws BadInput with everything that is wrong, or telling why it cannot be reckoned
   */
  public static LoadOutcome of(
      ShapeSource shape, Request request, Studies studies, Path folder, Progress progress) {
    return of(shape, request, studies, folder, progress, Extent.WHOLE);
  }

  /**
   * The plate as it is, without other thicknesses and wider webs.
   *
   * @param studies what reads the shape; its problems and the request's are told together
   * @throws BadInput with everything that is wrong, or telling why it cannot be reckoned
   */
  public static LoadOutcome own(ShapeSource shape, Request request, Studies studies, Path folder) {
    return of(shape, request, studies, folder, Progress.SILENT, Extent.OWN);
  }

  /**
   * The plate in every thickness, without wider webs.
   *
   * @throws BadInput telling why it cannot be reckoned
   */
  static LoadOutcome thicknesses(Study study, Studies studies) {
    return of(study, studies, Progress.SILENT, Extent.THICKNESSES);
  }

  /**
   * The plate as it is, and what wider webs would do.
   *
   * @throws BadInput telling why it cannot be reckoned
   */
  static LoadOutcome widened(Study study, Studies studies, Progress progress) {
    return of(study, studies, progress, Extent.WHOLE);
  }

  /**
   * The plate as it is.
   *
   * @throws BadInput telling why it cannot be reckoned
   */
  static LoadOutcome own(Study study, Studies studies) {
    return of(study, studies, Progress.SILENT, Extent.OWN);
  }

  private static LoadOutcome of(Study study, Studies studies, Progress progress, Extent extent) {
    Sources none = new Sources(MaterialBook.builtIn(), Optional.empty());
    return of(study, Request.USUAL, none, studies, progress, extent);
  }

  /**
   * The plate as it is on one mesh: a first answer, to be looked at until the one with all patience
   * is there.
   *
   * @param studies what reads the shape; its problems and the request's are told together
   * @throws BadInput with everything that is wrong, or telling why it cannot be reckoned
   */
  public static LoadOutcome first(
      ShapeSource shape, Request request, Studies studies, Path folder) {
    return of(shape, request, studies, folder, Progress.SILENT, Extent.QUICK);
  }

  /**
   * The same of a plate that was read and judged.
   *
   * @param sources files that the request names
   * @throws BadInput telling why it cannot be reckoned
   */
  static LoadOutcome own(Study study, Request request, Sources sources, Studies studies) {
    return of(study, request, sources, studies, Progress.SILENT, Extent.OWN);
  }

  private static LoadOutcome of(
      ShapeSource shape,
      Request request,
      Studies studies,
      Path folder,
      Progress progress,
      Extent extent) {
    Sources sources = studies.with(() -> Sources.of(request, folder));
    Study study = studies.one(shape);
    return of(study, request, sources, studies, progress, extent);
  }

  private static LoadOutcome of(
      Study study,
      Request request,
      Sources sources,
      Studies studies,
      Progress progress,
      Extent extent) {
    long start = System.nanoTime();
    LoadPlan plan = plan(study, request, sources, extent);
    JointJudgement screws = ScrewUse.of(plan, study.joints());
    List<JointCure> cures =
        JointCures.of(study.plate(), study.hub(), screws, ScrewUse.demands(plan));
    boolean whole = request.cases().isEmpty();
    Optional<Widening> widening =
        plan.met() || plan.gauge().section().coupled() || !whole || extent != Extent.WHOLE
            ? Optional.empty()
            : WideningSearch.of(
                plan,
                study.source().tree(),
                new Reckoner(study, screws.met(), studies, request, sources, progress));
    double seconds = (System.nanoTime() - start) / 1e9;
    return new LoadOutcome(study, plan, screws, cures, widening, whole, seconds);
  }

  private record Reckoner(
      Study study,
      boolean screwsHold,
      Studies studies,
      Request request,
      Sources sources,
      Progress progress)
      implements WideningSearch.Reckoning {
    @Override
    public Optional<LoadPlan> quick(List<String> sets, List<String> cases) {
      return plan(sets, request.of(cases), Extent.QUICK);
    }

    @Override
    public Optional<LoadPlan> whole(List<String> sets) {
      // Its screws must hold too, where those of the plate as it is do.
      return plan(sets, request, Extent.OWN)
          .filter(
              plan ->
                  !screwsHold || ScrewUse.of(plan, JointPlan.of(plan.plate(), study.hub())).met());
    }

    private Optional<LoadPlan> plan(List<String> sets, Request asked, Extent extent) {
      try {
        return studies
            .varied(study, sets)
            .filter(v -> v.count(Verdict.FAIL) <= study.count(Verdict.FAIL))
            .filter(v -> v.count(Verdict.CAUTION) <= study.count(Verdict.CAUTION))
            .map(v -> PlateLoads.plan(v, asked, sources, extent));
      } catch (BadInput cannot) {
        return Optional.empty();
      }
    }

    @Override
    public void round(int done, int all) {
      progress.at("wider webs", done, all);
    }
  }

  /**
   * A plate among many that are compared: on one mesh, without other thicknesses.
   *
   * @throws BadInput telling why it cannot be reckoned
   */
  public static LoadPlan quick(Study study, Request request, Sources sources) {
    return plan(study, request, sources, Extent.QUICK);
  }

  /** The hub holes that screws go through: all, unless the hub has fewer screws. */
  private static List<Hole> screwed(Study study) {
    List<Hole> all = study.plate().holes(HoleRole.BOLT);
    Optional<HubFitResult> fit = study.fit();
    if (fit.isEmpty()) {
      return all;
    }
    List<Hole> used = fit.get().screws().stream().map(ScrewFit::hole).toList();
    boolean screws = fit.get().enters() && used.size() >= 2;
    return screws ? all.stream().filter(used::contains).toList() : all;
  }

  private static LoadPlan plan(Study study, Request request, Sources sources, Extent extent) {
    Plate plate = study.plate();
    ThicknessCandidates range =
        ThicknessCandidates.of(plate, LayupWish.NONE, sources.book(), sources.tested());
    CaseBook book = CaseBook.builtIn();
    SourcedFigure factor = factor(plate, book, range);
    HubHold hold = HubHold.of(plate, request.hold(), study.joints(), screwed(study));
    CasePlan cases =
        CasePlan.of(
            plate,
            book,
            hold,
            factor.value(),
            request.cases().map(Requested::value).orElse(List.of()),
            request.cases().map(Requested::place).orElse(Place.BUILT_IN));
    List<SourcedFigure> figures = new ArrayList<>(range.figures());
    figures.add(factor);
    if (cases.cases().stream().anyMatch(c -> !c.own())) {
      figures.add(book.strong());
      figures.add(book.breadth());
      figures.add(book.rim());
    }
    try {
      LoadPlan.Compared others =
          extent.compareTo(Extent.THICKNESSES) >= 0
              ? compared(study, request, range)
              : LoadPlan.Compared.NONE;
      return extent == Extent.QUICK
          ? LoadPlan.of(plate, range, others, hold, cases, figures, QUICK)
          : LoadPlan.of(plate, range, others, hold, cases, figures);
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

  /** The thicknesses to try, the plate's own among them, thinnest first. */
  private static LoadPlan.Compared compared(
      Study study, Request request, ThicknessCandidates range) {
    BiPredicate<Gauge, List<ScrewDemand>> screws = (gauge, demands) -> hold(study, gauge, demands);
    if (request.thicknesses().isEmpty()) {
      return new LoadPlan.Compared(range.usual(), false, screws);
    }
    List<Double> values = request.thicknesses().get().values();
    if (request.thicknesses().get().range()) {
      return new LoadPlan.Compared(range.within(values.get(0), values.get(1), MOST), true, screws);
    }
    List<Gauge> all = new ArrayList<>(List.of(range.now()));
    for (double t : values) {
      Gauge other = range.of(t);
      if (all.stream()
          .noneMatch(g -> Math.abs(g.thickness() - other.thickness()) < Tolerances.SAME_LENGTH)) {
        all.add(other);
      }
    }
    all.sort(Comparator.comparingDouble(Gauge::thickness));
    return new LoadPlan.Compared(all, true, screws);
  }

  /** Whether the screws hold in a plate of another thickness; not where they do not suit it. */
  private static boolean hold(Study study, Gauge gauge, List<ScrewDemand> demands) {
    Plate other = study.plate().with(study.plate().stock().thick(gauge.thickness()));
    try {
      JointPlan joints = JointPlan.of(other, study.hub());
      return joints.judged(other, demands).met()
          && ScrewUse.unknown(screwed(study), joints).isEmpty();
    } catch (BadInput unsuited) {
      return false;
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
    boolean support = subject.equals("support");
    Optional<Requested<Double>> clamp = plate.load().clampDiameter().filter(c -> support);
    return new BadInput(
        new Problem(
            clamp.map(Requested::place).orElse(Place.ofFile(plate.stock().place().file())),
            support ? "load.clamp_diameter" : "load case " + subject,
            clamp.map(c -> felloe.geometry.Numbers.brief(c.value(), 3)).orElse(""),
            (support ? "cannot be: " : "") + words,
            ""));
  }
}
