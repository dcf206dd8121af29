package felloe.report;

import static felloe.document.Quantity.fixed;

import felloe.cockpit.Clearance;
import felloe.cockpit.CockpitPlan;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.Steps;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.Cautions;
import felloe.service.CockpitOutcome;
import java.util.ArrayList;
import java.util.List;

/** A wheel in its car, told: what it comes near to as it is turned. */
public final class CockpitReport {

  private static final List<String> CAUTIONS =
      List.of(
          Cautions.USE,
          "Try it with the driver belted in, in the gloves and shoes that are raced in, turned from"
              + " lock to lock on stands, before the car moves. Bodies, belts and columns give;"
              + " these figures do not. Getting in and out in a hurry is the event's rule, and not"
              + " asked here.");

  private final CockpitPlan plan;

  private CockpitReport(CockpitPlan plan) {
    this.plan = plan;
  }

  /** The answer, told. */
  public static Report of(CockpitOutcome outcome) {
    CockpitReport report = new CockpitReport(outcome.plan());
    Telling told = new Telling();
    report.verdict(told);
    told.head("What to do").add(Steps.of(report.steps(outcome)));
    report.clearances(told);
    told.add(DriverTelling.places(outcome.plan()));
    told.add(HandsTelling.of(outcome));
    told.add(ReachTelling.of(outcome));
    told.add(SightTelling.of(outcome));
    told.fold(
        Depth.PAPER,
        inside -> {
          CockpitPictures pictures = new CockpitPictures(outcome);
          inside
              .head("Seen along the column, and from the side")
              .add(new Figure(pictures.front()), new Figure(pictures.side()));
        });
    told.fold(
        Depth.SOURCES, inside -> inside.head("Where figures come from").add(report.sources()));
    told.cautions(CAUTIONS);
    return Unfit.warned(
        outcome.study(), told.under(Words.title(outcome.plate(), "in the cockpit")));
  }

  private void verdict(Telling told) {
    if (plan.tightest().isEmpty()) {
      told.verdict(Tone.NOTE, "Nothing is written that the wheel could meet.");
      return;
    }
    Clearance tight = plan.tightest().get();
    List<String> meets =
        plan.clearances().stream().filter(Clearance::meets).map(one -> one.thing().name()).toList();
    Quantity wanted = Quantity.mm(plan.cockpit().clearance());
    if (!meets.isEmpty()) {
      told.verdict(Tone.FAIL, "THE WHEEL MEETS {} as it is turned.", Phrase.list(meets));
    } else if (!plan.well()) {
      told.verdict(
          Tone.CAUTION,
          "Too near for a hand: {} to {}, {} are wanted.",
          fixed(tight.distance(), 1, "mm"),
          tight.thing().name(),
          wanted);
    } else {
      told.verdict(
          Tone.WELL,
          "Clear of everything: {} to {}, the nearest; {} are wanted for a hand.",
          fixed(tight.distance(), 1, "mm"),
          tight.thing().name(),
          wanted);
    }
  }

  private List<String> steps(CockpitOutcome outcome) {
    List<String> steps = new ArrayList<>();
    for (Clearance one : plan.clearances()) {
      if (one.distance() < plan.cockpit().clearance()) {
        steps.add(
            Phrase.of(
                "{}: give it {} more, or keep hands and knuckles away from there; the wheel's"
                    + " nearest place is {} from the hub axis.",
                Phrase.begin(one.thing().name()),
                fixed(plan.cockpit().clearance() - one.distance(), 1, "mm"),
                fixed(one.radius(), 1, "mm")));
      }
    }
    steps.addAll(HandsTelling.steps(outcome));
    steps.addAll(ReachTelling.steps(outcome));
    steps.addAll(SightTelling.steps(outcome));
    steps.add(
        "Measure the car, not the drawing: from the middle of the column to the right, from the"
            + " floor up, from the end of the column toward the driver.");
    return steps;
  }

  private void clearances(Telling told) {
    if (plan.clearances().isEmpty()) {
      return;
    }
    told.head("What is near, and the turn at which the wheel is nearest");
    told.add(
        Rows.of(plan.clearances())
            .figures("", one -> plan.clearances().indexOf(one) + 1)
            .words("thing", one -> one.thing().name())
            .fixed("clear", "mm", 1, Clearance::distance)
            .fixed("at radius", "mm", 1, Clearance::radius)
            .words("turned", CockpitReport::turned)
            .words("", one -> one.meets() ? "MEETS" : tooNear(one)));
    told.say(
        "Radius is that of the wheel's place, from the hub axis: the ring that the thing sees. A"
            + " turn is the least that brings it there. What turns reaches from {} to {} above the"
            + " end of the column, grips included at their thickest, past the edge all round;"
            + " what sits in openings is looked at by itself.",
        fixed(plan.back(), 1, "mm"),
        fixed(plan.front(), 1, "mm"));
  }

  private String tooNear(Clearance one) {
    return one.distance() < plan.cockpit().clearance() ? "too near" : "";
  }

  private static String turned(Clearance one) {
    double degrees = Math.toDegrees(one.turn());
    if (Math.abs(degrees) < 0.5) {
      return "straight";
    }
    return Phrase.of(
        "{} {}", fixed(Math.abs(degrees), 0, "") + "\u00b0", degrees > 0 ? "left" : "right");
  }

  private Rows<Words.Source> sources() {
    List<Words.Source> sources = new ArrayList<>();
    sources.addAll(
        List.of(
            new Words.Source(
                "room for a hand",
                Quantity.mm(plan.cockpit().clearance()).text(),
                "the shape file; usually 40 mm, common practice for gloved fingers behind a rim"),
            new Words.Source(
                "what is swept",
                Phrase.of(
                    "{} either way",
                    fixed(Math.toDegrees(plan.cockpit().lock()), 0, "") + "\u00b0"),
                "the outline turned, exact in lines and arcs"),
            new Words.Source(
                "distances",
                "within 0.01 mm",
                "halving until no stretch can hold a nearer place")));
    sources.addAll(DriverTelling.sources(plan));
    sources.add(
        new Words.Source(
            "room for a hand on the rim",
            "",
            "the review's own limits for a bare hand: finger-depth, finger-length, grip-girth-most"
                + " (docs/rules.md)"));
    return Words.sources(sources);
  }
}
