package felloe.template;

import felloe.document.Report;
import felloe.drawing.Cautions;
import felloe.drawing.Correction;
import felloe.drawing.Paper;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays a plate out on paper at true scale. The front door of this room. */
public final class Template {

  /** More pages than this are refused: nobody glues them together true. */
  public static final int MOST_PAGES = 200;

  private final Plate plate;
  private final TemplateOptions options;
  private final LaidShape shape;
  private final Stamp stamp;
  private final List<String> cautions;

  private Template(
      Plate plate, TemplateOptions options, LaidShape shape, Stamp stamp, List<String> cautions) {
    this.plate = plate;
    this.options = options;
    this.shape = shape;
    this.stamp = stamp;
    this.cautions = List.copyOf(cautions);
  }

  private static Template of(
      Plate plate,
      List<WasteHole> waste,
      TemplateOptions options,
      Stamp stamp,
      List<String> cautions) {
    Face face = options.face().orElse(plate.stock().templateFace());
    LaidShape shape = LaidShape.of(plate, waste, options.markOut(), face);
    return new Template(plate, options, shape, stamp, cautions);
  }

  /**
   * A plate that is to be cut.
   *
   * @param waste holes to drill in the waste first, of a plate that is sawn by hand; shown with
   *     their diameter
   * @param stamp printed across every page of a plate that fails
   * @throws BadInput when a window is too narrow for the pen
   */
  public static Template of(
      Plate plate, List<WasteHole> waste, TemplateOptions options, Stamp stamp) {
    List<String> cautions = new ArrayList<>(List.of(Cautions.USE));
    cautions.addAll(
        options.markOut().method() == MarkOut.Method.PATTERN
            ? List.of(Cautions.KNIFE)
            : Cautions.cutting(plate.stock().material()));
    return of(plate, waste, options, stamp, cautions);
  }

  /** The same lines on other paper; face and way of marking out are not changed by that. */
  private Template on(TemplateOptions other) {
    return new Template(plate, other, shape, stamp, cautions);
  }

  /**
   * The template on pages of a paper, to be put together by their registration marks.
   *
   * @throws BadInput when a reading of the check bars is more than 5 % off, or it would take more
   *     than {@link #MOST_PAGES} pages
   */
  public PageSet pages() {
    return tiled(Optional.empty());
  }

  /**
   * The template on one page as large as the part, for a plotter or a copy shop. The paper named in
   * the options does not count, nor does a reading of the bars: it belongs to the printer that
   * printed them.
   */
  public PageSet fullSize() {
    return on(options.withoutBars()).onePage();
  }

  /**
   * What would take fewer pages.
   *
   * @param pages the template as it is
   */
  public List<PageSaving> savings(PageSet pages) {
    int now = pages.grid().count();
    return PageSaving.of(other -> on(other.withoutBars()).tiles(now), options, now);
  }

  /**
   * How many pages carry a part of the drawing, without laying them out.
   *
   * @param below more are of no use; where the plate's size alone asks for as many, these are told
   *     at once, since a layout takes time
   */
  int tiles(int below) {
    double bar = bar(options.paper(), options.margin());
    List<PageFrame> frames = frames(options.paper(), options.margin(), Correction.NONE, bar);
    long least =
        GridChoice.turns(options.turning()).stream()
            .map(shape::box)
            .flatMapToLong(
                box ->
                    frames.stream()
                        .mapToLong(frame -> GridChoice.pages(box, frame, options.overlap())))
            .min()
            .orElseThrow();
    return least >= below
        ? below
        : choice(Correction.NONE, bar, below).map(best -> best.grid().count()).orElse(below);
  }

  /**
   * The drilling sheet: centre marks at true scale on the same pages as the template's, with what
   * else the shape is, and then pages of what is to be done. How the template marks out does not
   * count.
   *
   * @param work what is to be done, in order
   * @param cautions all that go with drilling; they stand on the pages with the crosses
   * @param stamp printed across every page of a plate that must not be drilled
   * @throws BadInput as for {@link #pages}
   */
  public static PageSet drilling(
      Plate plate, TemplateOptions options, Report work, List<String> cautions, Stamp stamp) {
    TemplateOptions centres = options.withMarkOut(MarkOut.CENTRES);
    return of(plate, List.of(), centres, stamp, cautions).tiled(Optional.of(work));
  }

  /**
   * Length of the check bars on pages of a paper, the same both ways: what a reading is compared
   * with. Upright or across, corrected or not, it depends on paper and margin alone.
   *
   * @param margin mm
   */
  public static double bar(Paper paper, double margin) {
    return PageFrame.bar(paper.width(), paper.height(), margin);
  }

  private StripText text(double turn) {
    return TemplateWords.strip(shape, turn, options.bars(), stamp, cautions);
  }

  /**
   * The words that pages must have room for. A drilling sheet has room for those of the template
   * too, so that its crosses lie on the same pages.
   */
  private TileText roomFor() {
    StripText text = text(0);
    TileText own = new TileText(text, TemplateWords.brief(text, shape, stamp, TilePages.NOTES));
    if (options.markOut().method() != MarkOut.Method.CENTRES) {
      return own;
    }
    LaidShape cut = LaidShape.of(plate, List.of(), MarkOut.STUCK_ON, shape.face());
    List<String> cutting = new ArrayList<>(List.of(Cautions.USE));
    cutting.addAll(Cautions.cutting(plate.stock().material()));
    StripText other = TemplateWords.strip(cut, 0, options.bars(), Stamp.NONE, cutting);
    StripText brief = TemplateWords.brief(other, cut, Stamp.NONE, TilePages.NOTES);
    return own.longer(new TileText(other, brief));
  }

  private BarWords bars() {
    return new BarWords(options.bars(), options.asked().bars());
  }

  private Correction correction(double bar) {
    return options
        .bars()
        .map(reading -> reading.against(bar, options.asked().bars()))
        .orElse(Correction.NONE);
  }

  private PageSet tiled(Optional<Report> work) {
    Paper paper = options.paper();
    double bar = bar(paper, options.margin());
    Correction correction = correction(bar);
    GridChoice choice = choice(correction, bar);
    LaidShape turned = choice.turn() == 0 ? shape : shape.moved(RigidTransform.turn(choice.turn()));
    return new TilePages(
            turned, choice, text(choice.turn()), correction, paper.title(), bars(), work, stamp)
        .set();
  }

  private GridChoice choice(Correction correction, double bar) {
    return choice(correction, bar, Long.MAX_VALUE).orElseThrow();
  }

  private Optional<GridChoice> choice(Correction correction, double bar, long below) {
    List<PageFrame> frames = frames(options.paper(), options.margin(), correction, bar);
    refuseTooMany(frames.subList(0, 2));
    return GridChoice.of(shape, frames, roomFor(), options.overlap(), options.turning(), below);
  }

  /** The pages to try: framed upright and across, then open ones. */
  private List<PageFrame> frames(Paper paper, double margin, Correction correction, double bar) {
    StripText room = roomFor().whole();
    List<PageFrame> frames = new ArrayList<>();
    for (PageFrame.Kind kind : List.of(PageFrame.Kind.FRAMED, PageFrame.Kind.OPEN)) {
      for (boolean upright : new boolean[] {true, false}) {
        double width = upright ? paper.width() : paper.height();
        double height = upright ? paper.height() : paper.width();
        frames.add(PageFrame.of(kind, width, height, margin, correction, room, bar));
      }
    }
    return frames;
  }

  private void refuseTooMany(List<PageFrame> frames) {
    long pages =
        frames.stream()
            .mapToLong(frame -> GridChoice.pages(shape.box(), frame, options.overlap()))
            .min()
            .orElseThrow();
    if (pages > MOST_PAGES) {
      throw new BadInput(
          new Problem(
              options.asked().paper(),
              "",
              options.paper().title(),
              "would take " + pages + " pages; at most " + MOST_PAGES + " are laid out",
              "choose a larger paper or the full-size page"));
    }
  }

  private PageSet onePage() {
    PageSet set = onePage(0);
    for (double below : TilePages.notesHeights(shape, set.grid(), bars(), set.bar(), stamp)) {
      if (set.pages().size() > 1) {
        set = onePage(below);
      }
    }
    return set;
  }

  /** The page as large as the part, with some height below it for notes. */
  private PageSet onePage(double below) {
    StripText text = text(0);
    double bar = PageFrame.LONGEST_BAR;
    Box span = shape.box().grown(Lettering.SURROUND + 1);
    double margin = options.margin();
    double inner =
        Math.max(
            Math.max(bar + 30, span.width() + PageFrame.COLUMN + PageFrame.SPACE),
            TilePages.tableWidth(plate) + 20);
    double strip =
        PageFrame.BAR_ROW
            + text.height(inner - PageFrame.COLUMN - PageFrame.SPACE)
            + PageFrame.SPACE;
    double field = Math.max(bar + 3, span.height() + below);
    double width = Math.ceil(inner + 2 * margin);
    double height = Math.ceil(strip + field + 2 * margin);
    PageFrame frame =
        PageFrame.of(PageFrame.Kind.FRAMED, width, height, margin, Correction.NONE, text, bar);
    Box box = frame.field();
    double spare = box.height() - span.height() - below;
    Point corner =
        new Point(span.centre().x() - box.width() / 2, span.maxY() + Math.max(0, spare / 2));
    Box tile = new Box(corner.x(), corner.y() - box.height(), corner.x() + box.width(), corner.y());
    Grid grid = Grid.of(tile, options.overlap());
    GridChoice choice =
        new GridChoice(frame, grid, 0, false, 0, Double.POSITIVE_INFINITY, List.of());
    return new TilePages(
            shape,
            choice,
            text,
            Correction.NONE,
            PageSet.FULL_SIZE,
            bars(),
            Optional.empty(),
            stamp)
        .set();
  }
}
