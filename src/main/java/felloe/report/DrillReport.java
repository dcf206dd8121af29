package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Steps;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drilling.DistanceCheck;
import felloe.drilling.DistanceLimits;
import felloe.drilling.DrillStep;
import felloe.drilling.DrillStep.Turning;
import felloe.drilling.DrillingPlan;
import felloe.drilling.HoleGroup;
import felloe.drilling.SizeCheck;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HolePosition;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.service.DrillOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a plate is drilled, told: at the bench on paper, with boxes to tick and room to write. */
public final class DrillReport {

  /** So many labels stand in a heading; more are cut short. */
  private static final int NAMED = 24;

  private final DrillOutcome outcome;
  private final DrillingPlan plan;
  private final Telling told = new Telling();

  private DrillReport(DrillOutcome outcome) {
    this.outcome = outcome;
    this.plan = outcome.plan();
  }

  /** The answer, told. */
  public static Report of(DrillOutcome outcome) {
    DrillReport report = new DrillReport(outcome);
    report.verdict();
    report.before();
    report.groups();
    report.distances();
    report.told.add(JointReport.plan(outcome.study().joints()));
    // What screws stand is settled before anybody goes to the bench.
    report.told.fold(Depth.SCREEN, JointReport.judged(outcome.study().joints().judgement()));
    report.schedule();
    report.sources();
    report.told.fold(Depth.SCREEN, new Telling().cautions(outcome.cautions()));
    return report.told.under(Words.title(outcome.plate(), "drilling"));
  }

  /** What speaks against drilling at all, in a sentence or two; empty when nothing does. */
  public static Optional<String> stop(DrillOutcome outcome) {
    List<String> words = new ArrayList<>();
    if (outcome.misses()) {
      words.add(
          Phrase.of(
              "as drawn, not all screws of hub {} enter this plate",
              outcome.plan().hub().orElse("")));
    }
    int fails = outcome.study().count(Verdict.FAIL);
    if (fails > 0) {
      words.add(Phrase.of("the plate FAILS {} of its review", Phrase.count(fails, "check")));
    }
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of("DO NOT DRILL YET: " + String.join(", and ", words) + ".");
  }

  private void verdict() {
    Optional<String> stop = stop(outcome);
    if (stop.isPresent()) {
      told.verdict(Tone.FAIL, stop.get());
      List<Finding> fails = outcome.study().review().with(Verdict.FAIL);
      told.add(CheckReport.open(fails));
      told.add(JointReport.cure(outcome.study()));
    } else {
      List<String> groups = plan.groups().stream().map(DrillReport::group).toList();
      told.verdict(
          Tone.WELL,
          groups.isEmpty()
              ? "Nothing to drill: the plate has no holes."
              : Phrase.of("Ready to drill, in this order: {}.", Phrase.list(groups)));
    }
    Plate plate = outcome.plate();
    told.say(
        "Stock: {}, {}. Drills and speeds for {}.{}{}",
        plate.stock().material().title(),
        plate.stock().thicknessWords(),
        plan.material().title(),
        plan.hub().map(hub -> " Hub: " + hub + "."),
        plan.throughHub() ? " The hub holes are drilled THROUGH THE HUB." : "");
    told.fold(Depth.PAPER, new Telling().cautions(outcome.cautions()));
  }

  /** A group in a few words, such as {@code 6 hub bolt holes of 5 mm}. */
  static String group(HoleGroup group) {
    String holes = Phrase.count(group.labels().size(), hole(group));
    return group.length() > group.diameter()
        ? Phrase.of("{} ({} mm)", holes, size(group))
        : Phrase.of("{} of {}", holes, Quantity.mm(group.diameter()));
  }

  private static String size(HoleGroup group) {
    return Hole.size(group.diameter(), group.length());
  }

  private static String hole(HoleGroup group) {
    return switch (group.role()) {
      case BOLT, GRIP -> group.role().words() + " hole";
      default -> group.role().words();
    };
  }

  private void before() {
    if (!plan.groups().isEmpty()) {
      told.head("Before the first hole");
      told.add(new Steps(plan.before(), true));
    }
  }

  private void groups() {
    if (!plan.groups().isEmpty()) {
      told.say(
          "Each step on all holes of a group before the next. 1/min is the step of a drill"
              + " press at or below the reckoned speed; s is how many seconds the drill takes"
              + " through the stock at an even feed.");
    }
    for (int i = 0; i < plan.groups().size(); i++) {
      HoleGroup group = plan.groups().get(i);
      String holes = Phrase.begin(hole(group)) + (group.labels().size() == 1 ? "" : "s");
      told.head("{}. {} {}, {}", i + 1, holes, named(group.labels()), size(group));
      told.say(
          "Good from {} to {} ({}), centres within {} of where they should be ({}).",
          Quantity.fixed(group.limits().least(), 2, ""),
          Quantity.fixed(group.limits().most(), 2, "mm"),
          group.tolerance(),
          Quantity.brief(group.zone() / 2, 3, "mm"),
          group.zoneFrom());
      group.notes().forEach(note -> told.say(note));
      told.add(steps(group));
    }
    if (plan.leftOut() > 0) {
      told.say(
          "{} more holes are of further sizes and not told here: the order of work tells"
              + " the first {} sizes. Their places are in the hole schedule.",
          plan.leftOut(),
          plan.groups().size());
    }
  }

  /** Labels, cut short where there are many. */
  static String named(List<String> labels) {
    return labels.size() <= NAMED
        ? String.join(", ", labels)
        : Phrase.of(
            "{} to {} ({} holes)",
            String.join(", ", labels.subList(0, 3)),
            labels.get(labels.size() - 1),
            labels.size());
  }

  private static Rows<DrillStep> steps(HoleGroup group) {
    return Rows.of(group.steps())
        .tick("")
        .words("step", step -> step.stage().words())
        .figures("\u00d8", "mm", step -> step.diameter().map(Quantity::mm))
        .figures("1/min", step -> step.turning().map(t -> Quantity.fixed(t.setting(), 0, "")))
        .figures(
            "",
            "s",
            step ->
                step.turning()
                    .flatMap(Turning::seconds)
                    .map(s -> Quantity.fixed(Math.max(1, s), 0, "s")))
        .wrapped("tool, what to do", DrillReport::how);
  }

  private static String how(DrillStep step) {
    List<String> how = new ArrayList<>();
    how.add(Phrase.sentence(step.tool()));
    step.turning()
        .filter(Turning::tooFast)
        .ifPresent(
            turns ->
                how.add(
                    Phrase.of(
                        "No faster than {}: if the press does not turn that slowly, touch and lift,"
                            + " or take another way.",
                        Quantity.fixed(turns.reckoned(), 0, "1/min"))));
    how.add(step.words());
    return String.join(" ", how).strip();
  }

  private void distances() {
    Telling told = new Telling();
    if (!plan.afterPilot().isEmpty()) {
      told.head(
          "Look after the pilot drill (\u00d8{})",
          Quantity.brief(plan.pilotDiameter().orElseThrow(), 2, ""));
      told.say(
          "Over the outside edges of the pilot holes, mm. A reading outside of the limits"
              + " proves a hole out of place"
              + (plan.throughHub()
                  ? ", or the hub not as its data says: measure the hub before you go on."
                  : outcome.plate().making().places(HolePosition.MACHINE)
                      ? ": look at the machine's zero before it opens them."
                      : ": draw it over with a round file now, or start again."));
      told.add(distances(plan.afterPilot().stream().map(c -> Line.of("", c)).toList(), true));
    }
    if (!plan.readings().isEmpty()) {
      told.head("Readings of the finished hub pattern");
      told.say(
          "Measure before the edges are broken, mm. Write each reading here and type it into"
              + " the form behind the same number. Diameters first: the mean of two,"
              + " crosswise. Then over the outside edges. A reading outside of its limits"
              + " proves a fault; that all lie inside does not prove there is none: let the"
              + " check of the plate as measured judge.");
      if (plan.notMeasured() > 0) {
        told.say(
            "Only {} of the {} hub holes have rows here, since a measured file takes no more: how"
                + " the others lie is not judged by it.",
            plan.sizes().size(),
            plan.sizes().size() + plan.notMeasured());
      }
      told.add(form(plan.sizes(), plan.readings(), true));
    }
    if (!plan.others().isEmpty()) {
      told.head("Bore and grips");
      told.say(
          "Inside: what is left between the edges. Outside: over the outer edges, mm. These are"
              + " not typed in.");
      told.add(distances(plan.others().stream().map(c -> Line.of("", c)).toList(), true));
    }
    this.told.fold(Depth.ALL, told);
  }

  /**
   * Rows for the readings that are typed in, in the order of the form and with its numbers.
   *
   * @param right whether what is read when all is true has a column
   */
  static Table form(List<SizeCheck> sizes, List<DistanceCheck> distances, boolean right) {
    List<Line> lines = new ArrayList<>();
    for (SizeCheck s : sizes) {
      double least = s.limits().least();
      String number = Integer.toString(s.number());
      lines.add(new Line(number, s.hole(), "", "diameter", least, least, s.limits().most()));
    }
    distances.forEach(c -> lines.add(Line.of(Integer.toString(c.number()), c)));
    return distances(lines, right);
  }

  /** A row to write in; only what is typed in has a number. */
  private record Line(
      String number, String from, String to, String over, double right, double least, double most) {

    static Line of(String number, DistanceCheck c) {
      DistanceLimits is = c.limits();
      return new Line(number, c.from(), c.to(), c.over(), is.nominal(), is.least(), is.most());
    }
  }

  private static Table distances(List<Line> lines, boolean right) {
    return Rows.of(lines)
        .figures("", Line::number)
        .words("from", Line::from)
        .words("to", Line::to)
        .words("over", Line::over)
        .figures("true", line -> right ? Quantity.fixed(line.right(), 2, "") : "")
        .fixed("least", "", 2, line -> line.least())
        .fixed("most", "", 2, line -> line.most())
        .blank("reads")
        .table()
        .sideBySide();
  }

  /** Where the holes are; pages with centre marks have it beside them. */
  private void schedule() {
    if (outcome.holes().isEmpty()) {
      return;
    }
    told.fold(
        Depth.SCREEN,
        new Telling()
            .head("Hole schedule")
            .add(
                Rows.of(outcome.holes())
                    .words("hole", Hole::label)
                    .words("role", hole -> hole.role().words())
                    .fixed("x", "mm", 2, hole -> hole.centre().x())
                    .fixed("y", "mm", 2, hole -> hole.centre().y())
                    .fixed("radius", "mm", 2, hole -> hole.centre().norm())
                    .fixed("angle", "", 2, hole -> hole.centre().bearing())
                    .words("size, mm", Hole::size))
            .say(
                "From the hub axis, as the driver sees the wheel; angle in degrees. Of a slot the"
                    + " place of its middle, its width and its length over all."));
  }

  private void sources() {
    told.fold(
        Depth.SOURCES,
        new Telling()
            .head("Where the figures come from")
            .say(Phrase.sentence(String.join("; ", plan.bases())))
            .fold(Depth.SCREEN, JointReport.sources(outcome.study().joints())));
  }
}
