package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.Steps;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.Picture;
import felloe.drawing.SolidPicture;
import felloe.drawing.StampedPicture;
import felloe.jig.DrillBush;
import felloe.jig.Guide;
import felloe.jig.JigPiece;
import felloe.jig.JigPlan;
import felloe.plate.Hole;
import felloe.plate.HolePosition;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.service.JigOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is printed to make a plate by, told: how true it is, what to do, what there is to print. */
public final class JigReport {

  private static final double CUBIC_CENTIMETRE = 1000;

  private final JigOutcome outcome;
  private final JigPlan plan;
  private final Telling told = new Telling();

  private JigReport(JigOutcome outcome) {
    this.outcome = outcome;
    this.plan = outcome.plan();
  }

  /**
   * That a jig may guide the drill, where there is a printer and hub holes would be marked by hand.
   */
  static Optional<String> offer(Plate plate) {
    boolean marked =
        !plate.making().places(HolePosition.MACHINE)
            && !plate.making().places(HolePosition.THROUGH_HUB);
    return plate.making().printer().isPresent() && marked && !plate.holes(HoleRole.BOLT).isEmpty()
        ? Optional.of("Or drill the hub holes by a printed jig, which felloe jig makes.")
        : Optional.empty();
  }

  /** The answer, told. */
  public static Report of(JigOutcome outcome) {
    JigReport report = new JigReport(outcome);
    report.verdict();
    report.told.head("What to do").add(new Steps(report.steps(), true));
    report.guides();
    report.pieces();
    report.sources();
    report.told.cautions(outcome.cautions());
    return Unfit.warned(
        outcome.study(), report.told.under(Words.title(outcome.plate(), "jig and template")));
  }

  private void verdict() {
    Guide worst = plan.worst();
    String off =
        Phrase.of(
            "A hole drilled through it lies within {} of its place if all errors add up, within {}"
                + " as they usually do.",
            Quantity.fixed(worst.worst(), 2, "mm"),
            Quantity.fixed(worst.likely(), 2, "mm"));
    String hub =
        plan.allowed()
            .map(
                most ->
                    Phrase.of(
                        " The hub's screws allow {}{}.",
                        Quantity.fixed(most, 2, "mm"),
                        outcome.shifts()
                            ? Phrase.of(
                                ", and do not mind the {} of play {}, which moves all holes alike",
                                Quantity.fixed(worst.of(Guide.Cause.LOCATING), 2, "mm"),
                                plan.locator().rim() ? "in the rim" : "on the spigot")
                            : ""))
            .orElse("");
    String what =
        Phrase.of(
            "A drill jig for {} ({}), located by {}, {}; a flat template, {}; and a gauge.",
            Phrase.count(plan.guides().size(), "hole"),
            DrillReport.named(plan.guides().stream().map(g -> g.hole().label()).toList()),
            located(),
            inPieces(plan.drill()),
            inPieces(plan.template()));
    boolean beyond = outcome.beyond();
    told.verdict(beyond ? Tone.CAUTION : Tone.WELL, "{} {}{}", what, off, hub);
    if (beyond) {
      told.say(
          "At the worst that is more than the hub allows. {}",
          plan.allowed().get() < plan.truest()
              ? "No printed jig is so true: make the holes larger, or drill through the hub itself."
              : "What helps most: " + Phrase.list(helps(worst)) + ".");
    }
    told.say(
        "Printer: bed {} x {}, {} high, nozzle {}, {} between what slides. Printed {}.",
        Words.brief(plan.printer().width(), ""),
        Words.brief(plan.printer().depth(), "mm"),
        Words.brief(plan.printer().height(), "mm"),
        Words.brief(plan.printer().nozzle(), "mm"),
        Words.brief(plan.printer().clearance(), "mm"),
        plan.measured()
            ? Phrase.of(
                "{} of its size across and {} along, as the gauge measured",
                Quantity.percent(plan.across(), 2),
                Quantity.percent(plan.along(), 2))
            : "at its drawn size: the gauge was not read yet");
  }

  private String located() {
    List<Hole> holes = plan.locator().holes();
    if (plan.locator().rim()) {
      return Phrase.of(
          "a rim round the finished outline, {} from it all round",
          Quantity.fixed(plan.locator().size(), 1, "mm"));
    }
    return plan.locator().spigot()
        ? Phrase.of(
            "a spigot of {} in the bore of {}",
            Quantity.fixed(plan.locator().size(), 1, "mm"),
            Words.brief(holes.get(0).diameter(), "mm"))
        : Phrase.of(
            "pins of {} in {} and {}",
            Words.brief(plan.locator().size(), "mm"),
            holes.get(0).label(),
            holes.get(1).label());
  }

  private static String inPieces(List<JigPiece> pieces) {
    return pieces.size() == 1 ? "in one piece" : Phrase.of("in {} pieces", pieces.size());
  }

  /** What makes the largest share smaller, the largest first. */
  private List<String> helps(Guide guide) {
    return guide.shares().stream()
        .filter(share -> share.cause() != Guide.Cause.LOCATING || !outcome.shifts())
        .sorted((a, b) -> Double.compare(b.mm(), a.mm()))
        .limit(2)
        .map(
            share ->
                switch (share.cause()) {
                  case PLACE -> "a truer printer";
                  case SCALE -> "reading the gauge";
                  case LOCATING -> "a closer fit on what locates it";
                  case JOINTS -> "a bed that takes it in one piece";
                  case BUSH, PLAY -> "steel bushes that fit closely";
                  case LEAN -> "a higher jig";
                })
        .distinct()
        .toList();
  }

  private List<String> steps() {
    List<String> steps = new ArrayList<>();
    if (!plan.measured()) {
      steps.add(
          "Print the gauge first, of the plastic that you mean to use. When it is cold, measure"
              + " over both arms with a calliper, X and the other, and plan the jig again with"
              + " both readings: everything else is then printed as much larger as the gauge came"
              + " out small.");
    }
    steps.add(
        "Print the other pieces as they lie in the file, letters up on the template"
            + (plan.locator().spigot()
                ? ", the spigot up on the jig"
                : plan.locator().rim() ? ", the rim up on the jig" : "")
            + ". Take burrs and the first layer's lip off; nothing must rock on a flat table.");
    if (plan.template().size() + plan.drill().size() > 2) {
      steps.add(
          "Join pieces by their names on the driver's side: press each tail into its socket from"
              + " above, push the cut faces together, and glue. They must touch along the whole"
              + " cut: then lengths over the joint are right.");
    }
    if (plan.guides().stream().anyMatch(g -> g.bush().isPresent())) {
      steps.add(
          "Measure the bushes before you print, and glue them in flush with the face that lies on"
              + " the plate, each with its drill in it to hold it upright.");
    } else {
      steps.add("Run each guide through once with the drill that it guides, by hand.");
    }
    steps.add(
        "Try the drill's shank in each guide, and measure with a calliper from hole to hole before"
            + " you trust the jig.");
    steps.add(
        plan.locator().rim()
            ? "Saw the outline and finish it to its line first: the jig is as true as that edge."
                + " Put the jig over the front face, FRONT to the driver, its rim round the plate,"
                + " look that the gap is alike all round, and clamp it. It must not rock."
            : plan.locator().spigot()
                ? "Put the jig on the front face, FRONT to the driver, its spigot in the bore. Turn"
                    + " it until the letters are level with the wheel, and clamp it."
                : Phrase.of(
                    "Put the jig on the front face, FRONT to the driver, with close pins through {}"
                        + " and {}, and clamp it.",
                    plan.locator().holes().get(0).label(),
                    plan.locator().holes().get(1).label()));
    steps.add(
        "Drill the first hole; leave a pin or the drill's shank in it while you drill the others.");
    steps.add(
        "Fix the template on the front face with close pins or screws through two drilled holes,"
            + " and draw round it; or clamp both down and let a trimming cutter's bearing run along"
            + " it, once its edge is smooth all round.");
    return steps;
  }

  private void guides() {
    told.head("Guided holes");
    told.add(
        Rows.of(plan.guides())
            .words("hole", guide -> guide.hole().label())
            .figures("drill", "mm", guide -> Quantity.mm(guide.hole().diameter()))
            .figures("in the jig", "mm", guide -> Quantity.mm(guide.bore()))
            .words("bush", guide -> guide.bush().map(JigReport::bush).orElse(""))
            .fixed("worst", "mm", 2, Guide::worst)
            .fixed("usual", "mm", 2, Guide::likely));
    Guide worst = plan.worst();
    told.say("What may put {} off, each at its worst:", worst.hole().label());
    told.add(
        Rows.of(worst.shares())
            .wrapped("cause", share -> words(share.cause()))
            .fixed("up to", "mm", 3, Guide.Share::mm));
    told.say(
        "Worst: the sum. Usual: the root of the sum of squares, as for errors that know nothing"
            + " of each other.");
    if (!plan.unguided().isEmpty()) {
      told.say(
          "Not guided, being slotted, too large for a drill, or taken by a pin: {}.",
          DrillReport.named(plan.unguided().stream().map(Hole::label).toList()));
    }
  }

  private static String bush(DrillBush bush) {
    return Phrase.of(
        "{} x {}, {} long",
        Words.brief(bush.bore(), ""),
        Words.brief(bush.outside(), "mm"),
        Words.brief(bush.length(), "mm"));
  }

  private static String words(Guide.Cause cause) {
    return switch (cause) {
      case PLACE -> "places of the printer";
      case SCALE -> "scale of the printer";
      case LOCATING -> "play on what locates the jig";
      case JOINTS -> "joints between pieces";
      case BUSH -> "bush in its printed hole";
      case PLAY -> "drill in its guide";
      case LEAN -> "the drill leans by that play, over the plate's thickness";
    };
  }

  private void pieces() {
    told.head("Pieces to print");
    told.add(
        Rows.of(plan.pieces())
            .words("piece", JigPiece::name)
            .words("letters", JigPiece::label)
            .fixed("across", "mm", 1, piece -> piece.size().x())
            .fixed("along", "mm", 1, piece -> piece.size().y())
            .fixed("high", "mm", 1, piece -> piece.size().z())
            .figures("dovetails", piece -> Quantity.fixed(piece.joints(), 0, ""))
            .fixed("plastic", "cm\u00b3", 1, p -> p.body().volume() / CUBIC_CENTIMETRE));
    told.fold(
        Depth.PAPER,
        telling ->
            telling.add(
                new Figure(picture("Template, put together", plan.template())),
                new Figure(picture("Drill jig, as it is printed", plan.drill()))));
  }

  private Picture picture(String title, List<JigPiece> pieces) {
    Picture picture = SolidPicture.of(title, pieces.stream().map(JigPiece::body).toList());
    return StampedPicture.of(picture, picture.page().width(), outcome.stamp());
  }

  private void sources() {
    told.fold(
        Depth.SOURCES,
        new Telling()
            .head("Where figures come from")
            .add(Words.sources(plan.figures().stream().map(Words.Source::of).toList())));
  }
}
