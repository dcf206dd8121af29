package felloe.report;

import felloe.document.BenchPages;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.PageBreak;
import felloe.document.Block.Tone;
import felloe.document.FramedPages;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Telling;
import felloe.document.TitleBlock;
import felloe.document.TitleBlock.Field;
import felloe.drafting.PlateDrawing;
import felloe.drawing.Cautions;
import felloe.drawing.LineLegend;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.drawing.Stamp;
import felloe.drawing.StampedPicture;
import felloe.geometry.Box;
import felloe.job.Parts;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.service.CardOutcome;
import felloe.service.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The job card: the drawing with the verdict, the bill, the order of work, blanks for what is
 * measured, what is open and who signs.
 */
public final class CardReport {

  private static final String FOOT =
      "Clamp the work, guards and eye protection on, dust out of the air, gloves off at what turns."
          + " "
          + Cautions.USE;

  /** Room for the legend of lines below the drawing, mm. */
  private static final double LEGEND = 16;

  /** Height of the picture of the finished wheel with the gap above it, mm: that of a photo. */
  private static final double PHOTO = 78;

  private static final double GAP = 4;

  /** A drawing that would be less high than this has a page to itself, mm. */
  private static final double LEAST = 80;

  /** Sums of widths may be off by this, mm: a picture that is wider by it is made smaller. */
  private static final double HAIR = 0.01;

  /** No scale takes more room in the title block. */
  private static final String WIDEST_SCALE = "1:200";

  private final CardOutcome outcome;
  private final CardCalls calls;
  private final Telling told = new Telling();

  private CardReport(CardOutcome outcome, CardCalls calls) {
    this.outcome = outcome;
    this.calls = calls;
  }

  /** The card, told. */
  static Report of(CardSheet sheet) {
    CardOutcome outcome = sheet.outcome();
    CardReport card = new CardReport(outcome, sheet.calls());
    card.told.callout(card.tone(), card.verdict());
    PlateDrawing drawing = card.drawing(sheet.paper(), sheet.finished());
    double width = BenchPages.below(List.of(), FramedPages.field(sheet.paper(), FOOT)).width();
    card.told.add(CardBill.of(outcome));
    card.told.add(CardOrder.of(sheet, width));
    card.told.add(CardReadings.of(outcome, sheet.calls()));
    card.told.add(CardSigning.of(outcome));
    card.told.fold(Depth.SCREEN, new Telling().cautions(List.of(Cautions.USE)));
    return new Report(
        Words.title(outcome.plate(), "job card"),
        FOOT,
        card.told.blocks(),
        Optional.of(card.block(drawing.scale().text())));
  }

  private Tone tone() {
    if (!outcome.well()) {
      return Tone.FAIL;
    }
    boolean open = outcome.load().isEmpty() || outcome.study().count(Verdict.CAUTION) > 0;
    return open ? Tone.CAUTION : Tone.WELL;
  }

  /** Review, hub and loads, a line each; what fails first. */
  private List<String> verdict() {
    Study study = outcome.study();
    List<String> lines = new ArrayList<>();
    if (outcome.stops()) {
      lines.add("DO NOT MAKE IT YET. " + stopped());
    }
    if (outcome.weak()) {
      lines.add((outcome.stops() ? "" : "DO NOT MAKE IT YET. ") + loads());
    }
    if (!outcome.job().parts().driven()) {
      lines.add("MOCK-UP: to be tried, never driven with.");
    }
    lines.add("Review: " + CheckReport.counts(study));
    lines.add(
        study
            .fit()
            .map(fit -> Phrase.of("Hub {}: {}", fit.hub().name(), HubFitReport.inShort(fit)))
            .orElse("Hub: none is named, so whether it meets one was not looked at."));
    if (!outcome.weak()) {
      lines.add(loads());
    }
    outcome
        .job()
        .parts()
        .laidUp()
        .filter(plan -> !plan.possible())
        .ifPresent(
            plan ->
                lines.add(
                    Phrase.of(
                        "CANNOT BE LAID UP AS PLANNED: {}.", plan.pots().obstacles().get(0))));
    Parts parts = outcome.job().parts();
    lines.add(
        Phrase.of(
            "{}, {}. Mass of the bare plate: {}.",
            Phrase.begin(parts.plate().stock().material().title()),
            parts.plate().stock().thicknessWords(),
            Quantity.grams(parts.mass())));
    return lines;
  }

  private String stopped() {
    return DrillReport.stop(outcome.drill())
        .map(words -> Phrase.begin(words.replaceFirst("^DO NOT DRILL YET: ", "")))
        .orElse("");
  }

  private String loads() {
    return "Loads: "
        + outcome
            .load()
            .map(LoadReport::inShort)
            .orElseGet(
                () ->
                    outcome
                        .refused()
                        .map(why -> Phrase.of("could not be reckoned: {}.", why))
                        .orElse("not yet reckoned: ________________ Ask: " + calls.card()));
  }

  /** The drawing as large as the first page has room for, below the verdict. */
  private PlateDrawing drawing(Paper paper, Picture finished) {
    Box field = FramedPages.field(paper, FOOT, block(WIDEST_SCALE));
    Box room = BenchPages.below(told.blocks(), field);
    boolean later = room.height() - LEGEND < LEAST;
    if (later) {
      // A page too small for verdict and drawing has room for the photo.
      Figure photo = new Figure(within(finished, room.width()));
      told.fold(Depth.PAPER, new Telling().add(photo).add(new PageBreak()));
      room = BenchPages.below(List.of(), FramedPages.field(paper, FOOT));
    }
    double high = Math.max(LEAST, room.height() - LEGEND);
    PlateDrawing drawing = PlateDrawing.of(outcome.plate(), room.width(), high);
    // The photo stands on this page where the drawing's scale does not suffer by it.
    Optional<PlateDrawing> beside =
        later || high - PHOTO < LEAST
            ? Optional.empty()
            : Optional.of(PlateDrawing.of(outcome.plate(), room.width(), high - PHOTO))
                .filter(smaller -> smaller.scale().equals(drawing.scale()));
    PlateDrawing chosen = beside.orElse(drawing);
    Picture picture = chosen.picture();
    Figure photo = new Figure(within(finished, room.width()));
    Telling page =
        new Telling()
            .add(
                new Figure(StampedPicture.of(picture, room.width() - HAIR, stamp())),
                new Figure(LineLegend.of(picture.drawing(), room.width())));
    if (beside.isPresent()) {
      page.add(photo);
    }
    page.add(CardTables.of(chosen, outcome.plate().engravings()));
    if (beside.isEmpty() && !later) {
      page.add(photo);
    }
    told.fold(Depth.PAPER, page);
    return chosen;
  }

  /** A picture with room beside it, so that on a page of a width it is as high as a photo. */
  private static Picture within(Picture finished, double width) {
    Box box = finished.page();
    double scale = (PHOTO - GAP) / box.height();
    double side = Math.max(0, width / scale - box.width()) / 2;
    Box wide = new Box(box.minX() - side, box.minY(), box.maxX() + side, box.maxY());
    return new Picture(finished.drawing(), wide, finished.pen());
  }

  /** What is printed across the drawing of a plate that must not be made. */
  private Stamp stamp() {
    Stamp cut = Stamp.of(Stamp.Act.CUT, outcome.study().findings());
    Stamp all = cut.isNone() ? outcome.drill().stamp() : cut;
    return all.isNone() && outcome.weak()
        ? new Stamp(Stamp.Act.CUT, 0, List.of("loads not as wanted"))
        : all;
  }

  /** Data fields after ISO 7200. */
  private TitleBlock block(String scale) {
    Plate plate = outcome.plate();
    return new TitleBlock(
        List.of(
            new Field("title", plate.title()),
            new Field("document", "job card"),
            new Field("part, revision", Phrase.of("{}, {}", plate.name(), plate.revision())),
            new Field("material", plate.stock().material().title()),
            new Field("scale (ISO 5455)", scale),
            new Field("projection", "first angle"),
            new Field("tolerance", tolerance()),
            new Field("units", "mm, degrees"),
            new Field("drawn by", ""),
            new Field("date", ""),
            new Field("approved by", "")));
  }

  /** By hand no better than the coarse class is held; a machine holds the medium one. */
  private String tolerance() {
    return outcome.job().parts().sawn() ? "ISO 2768-c" : "ISO 2768-m";
  }
}
