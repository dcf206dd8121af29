package felloe.kit;

import felloe.document.Block;
import felloe.document.LayupPages;
import felloe.document.WordBlock;
import felloe.drawing.BlankPicture;
import felloe.drawing.BlankView;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.drawing.RollPicture;
import felloe.drawing.RollView;
import felloe.drawing.StackPicture;
import felloe.drawing.StackView;
import felloe.files.OutFile;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.layup.LayupPlan;
import felloe.layup.StackPlan;
import felloe.out.About;
import felloe.out.PdfWriter;
import felloe.out.SvgWriter;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/** Pages and pictures of a lay-up, in memory. */
final class LayupSheet {

  private final LayupPlan plan;
  private final LayupSections sections;
  private final Plate plate;

  LayupSheet(LayupPlan plan) {
    this.plan = plan;
    this.sections = new LayupSections(plan);
    this.plate = plan.plate();
  }

  /** The pages as a PDF file, and the pictures as SVG files. */
  List<OutFile> files(Paper paper) {
    String name = plate.name();
    List<OutFile> files = new ArrayList<>();
    files.add(new OutFile(name + "-layup-" + paper.title() + ".pdf", pages(paper)));
    files.add(new OutFile(name + "-stack.svg", svg(StackPicture.of(stack()), "stack")));
    files.add(new OutFile(name + "-cloth.svg", svg(RollPicture.of(roll()), "cloth")));
    files.add(new OutFile(name + "-blank.svg", svg(BlankPicture.of(blank()), "blank")));
    return files;
  }

  private byte[] svg(Picture picture, String what) {
    About about =
        new About(plate.title() + ", " + what, plate.revision(), String.join(" ", plan.cautions()));
    return SvgWriter.write(picture.drawing(), picture.page(), picture.pen(), about);
  }

  private byte[] pages(Paper paper) {
    return PdfWriter.write(sheets(paper), plate.title() + " - lay-up");
  }

  /** The pages. */
  List<Page> sheets(Paper paper) {
    return LayupPages.of(
        new LayupPages.Content(
            "Lay-up: " + plate.title() + ", revision " + plate.revision(),
            "Gloves, goggles, long sleeves, fresh air; mask for dust. Small pots. The resin"
                + " maker's data sheet first. For closed-course use at the builder's own"
                + " judgement; not for public roads; event rules, local codes and a qualified"
                + " person have the last word.",
            words(),
            stack(),
            roll(),
            blank(),
            after()),
        paper);
  }

  private List<Block> words() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Sentence.begin(sections.heading())));
    if (!plan.possible()) {
      blocks.add(new Block.Heading("CANNOT BE DONE AS PLANNED"));
      blocks.add(Block.Callout.cautions(plan.pots().obstacles()));
    }
    List<String> told = new ArrayList<>(plan.stack().warnings());
    told.addAll(plan.notes());
    if (!told.isEmpty()) {
      blocks.addAll(WordBlock.words("Mind", told.stream().map(Sentence::begin).toList()).blocks());
    }
    blocks.addAll(blocks(sections.stack()));
    blocks.addAll(blocks(sections.purchases()));
    blocks.addAll(blocks(sections.cloth()));
    blocks.addAll(blocks(sections.pots()));
    blocks.add(new Block.Heading("Plies, tick them off"));
    blocks.add(plies());
    blocks.addAll(blocks(sections.resin()));
    blocks.addAll(blocks(sections.mould()));
    if (plan.blank().strips().asked() > 0) {
      blocks.addAll(blocks(sections.strips()));
    }
    return blocks;
  }

  private List<Block> after() {
    List<Block> blocks = new ArrayList<>(blocks(sections.ways()));
    blocks.addAll(blocks(sections.sources()));
    blocks.add(new Block.Heading("Cautions"));
    blocks.add(Block.Callout.cautions(plan.cautions()));
    return blocks;
  }

  private static List<Block> blocks(LayupSection section) {
    return new WordBlock(section.title(), section.sides(), section.rows(), section.lines())
        .blocks();
  }

  /** Plies to tick off. */
  private Block plies() {
    return Block.Table.ofWords(
            List.of(
                new Block.Column("ply", "", Block.Fill.FIGURES),
                new Block.Column("direction", "", Block.Fill.WORDS),
                new Block.Column("down", "", Block.Fill.TICK)),
            plan.stack().plies().stream()
                .map(ply -> List.of(Integer.toString(ply.number()), ply.words(), WordBlock.BOX))
                .toList())
        .sideBySide();
  }

  private StackView stack() {
    StackPlan stack = plan.stack();
    return new StackView(
        "Stack of " + plate.title(),
        stack.plies().stream()
            .map(ply -> new StackView.Ply(ply.number(), ply.angle(), ply.words()))
            .toList(),
        plan.choice().cloth().weave().woven(),
        stack.plies().size()
            + (stack.plies().size() == 1 ? " ply, " : " plies, ")
            + Numbers.fixed(stack.thickness(), 2)
            + " mm ("
            + Numbers.fixed(stack.least(), 2)
            + " to "
            + Numbers.fixed(stack.most(), 2)
            + ")",
        LayupSections.properties(stack));
  }

  private RollView roll() {
    return new RollView(
        "Cloth for " + plate.title(),
        plan.cloth().rollWidth(),
        plan.cloth().toBuy(),
        plan.cloth().pieces().stream()
            .map(piece -> new RollView.Piece(piece.label(), piece.words(), piece.region()))
            .toList(),
        List.of(
            plan.choice().cloth().title()
                + ", roll "
                + Numbers.brief(plan.cloth().rollWidth(), 0)
                + " mm wide, buy "
                + Numbers.fixed(plan.cloth().toBuy() / 1000, 1)
                + " m. Figures at the edge are metres.",
            "On each piece: number of the ply (a, b ... when in several pieces) and its"
                + " direction."));
  }

  private BlankView blank() {
    Box blank = plan.blank().box();
    double side = (plan.mould().width() - blank.width()) / 2;
    double end = (plan.mould().height() - blank.height()) / 2;
    Box mould =
        new Box(blank.minX() - side, blank.minY() - end, blank.maxX() + side, blank.maxY() + end);
    List<String> words = new ArrayList<>();
    words.add(
        "Outer line: mould plate, "
            + Numbers.brief(plan.mould().width(), 0)
            + " x "
            + Numbers.brief(plan.mould().height(), 0)
            + " mm, ticks every "
            + Numbers.brief(plan.mould().grid(), 0)
            + " mm from the hub axis. Seen from the front: ply 1 lies below.");
    words.add("Chain lines: tape for placing plies, through the hub axis.");
    if (!plan.blank().strips().placed().isEmpty()) {
      words.add(
          "T1 ...: test strips, "
              + Numbers.brief(plan.blank().strips().length(), 1)
              + " x "
              + Numbers.brief(plan.blank().strips().width(), 1)
              + " mm.");
    }
    return new BlankView(
        "Blank of " + plate.title(),
        plate.region(),
        plan.blank().contour(),
        plan.blank().strips().placed().stream()
            .map(strip -> new BlankView.Strip(strip.label(), strip.contour()))
            .toList(),
        mould,
        plan.mould().grid(),
        words);
  }
}
