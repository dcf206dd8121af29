package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.document.Phrase;
import felloe.drawing.BlankPicture;
import felloe.drawing.BlankView;
import felloe.drawing.LabelPicture;
import felloe.drawing.Picture;
import felloe.drawing.RollPicture;
import felloe.drawing.RollView;
import felloe.drawing.StackPicture;
import felloe.drawing.StackView;
import felloe.geometry.Box;
import felloe.layup.LayupPlan;
import felloe.layup.MouldPlan;
import felloe.layup.StackPlan;
import felloe.layup.TestStrips;
import java.util.ArrayList;
import java.util.List;

/**
 * Pictures of a lay-up: the stack, the cloth on its roll, labels for it, the blank on its mould.
 */
public final class LayupPictures {

  /** What a page of A4 has room for, mm: by this the roll is parted into lengths. */
  private static final double WIDE = 180;

  private static final double HIGH = 235;

  private final LayupPlan plan;
  private final String title;

  public LayupPictures(LayupPlan plan) {
    this.plan = plan;
    this.title = plan.plate().title();
  }

  /** The plies one on the other. */
  public Picture stack() {
    StackPlan stack = plan.stack();
    return StackPicture.of(
        new StackView(
            "Stack of " + title,
            stack.plies().stream()
                .map(ply -> new StackView.Ply(ply.number(), ply.angle(), ply.direction()))
                .toList(),
            plan.choice().cloth().weave().woven(),
            Phrase.of(
                "{}, {} ({})",
                Words.plies(stack.plies().size()),
                fixed(stack.thickness(), 2, "mm"),
                LayupReport.range(stack)),
            LayupReport.properties(stack)));
  }

  /** The cutting plan of the whole roll in one length, at its true coordinates. */
  public Picture roll() {
    return RollPicture.of(rollView());
  }

  /** The same in as many lengths as suit a page. */
  Picture rollOnPage() {
    return RollPicture.in(rollView(), WIDE, HIGH);
  }

  /** A label for each piece of cloth, at its size. */
  List<Picture> labels() {
    return rollView().pieces().stream().map(LabelPicture::of).toList();
  }

  private RollView rollView() {
    return new RollView(
        "Cloth for " + title,
        plan.cloth().rollWidth(),
        plan.cloth().toBuy(),
        plan.cloth().pieces().stream()
            .map(piece -> new RollView.Piece(piece.label(), piece.direction(), piece.region()))
            .toList(),
        List.of(
            Phrase.of(
                "{}, roll {} wide, buy {}. Figures at the edge are metres.",
                plan.choice().cloth().title(),
                brief(plan.cloth().rollWidth(), 0, "mm"),
                fixed(plan.cloth().toBuy() / 1000, 1, "m")),
            "On each piece: number of the ply (A, B ... when in several pieces) and its"
                + " direction."));
  }

  /** The blank on its mould, with the plate and the test strips in it. */
  public Picture blank() {
    Box blank = plan.blank().box();
    MouldPlan mould = plan.mould();
    double side = (mould.width() - blank.width()) / 2;
    double end = (mould.height() - blank.height()) / 2;
    TestStrips strips = plan.blank().strips();
    List<String> words = new ArrayList<>();
    words.add(
        Phrase.of(
            "Outer line: mould plate, {}, ticks every {} from the hub axis. Seen from the front:"
                + " ply 1 lies below.",
            LayupReport.size(mould.width(), mould.height()),
            brief(mould.grid(), 0, "mm")));
    words.add("Chain lines: tape for placing plies, through the hub axis.");
    if (!strips.placed().isEmpty()) {
      words.add(
          Phrase.of("T1 ...: test strips, {}.", LayupReport.size(strips.length(), strips.width())));
    }
    return BlankPicture.of(
        new BlankView(
            "Blank of " + title,
            plan.plate().region(),
            plan.blank().contour(),
            strips.placed().stream()
                .map(strip -> new BlankView.Strip(strip.label(), strip.contour()))
                .toList(),
            new Box(
                blank.minX() - side, blank.minY() - end, blank.maxX() + side, blank.maxY() + end),
            mould.grid(),
            words));
  }
}
