package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Note;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a V tool does to the upper face while the stock is whole: lines of texts and marks, and the
 * edges of outline and windows. Its middle follows a line, and beside an edge goes in the waste.
 */
final class FaceWork {

  /** How the title of an engraving's work begins. */
  static final String ENGRAVE = "engrave ";

  /** Lines may come out so much wider or narrower than drawn before it is told, as a share. */
  private static final double OTHER_WIDTH = 0.25;

  /** Pieces shorter than this are left out, mm. */
  private static final double LEAST_PIECE = 0.002;

  private final Plate plate;
  private final CutSetup setup;
  private final VTool tool;
  private final List<CutFault> faults;
  private final List<Note> notes;
  private final List<Operation> operations = new ArrayList<>();

  /**
   * Prepares.
   *
   * @param faults takes what is wrong
   * @param notes takes what the maker should know
   */
  FaceWork(Plate plate, CutSetup setup, VTool tool, List<CutFault> faults, List<Note> notes) {
    this.plate = plate;
    this.setup = setup;
    this.tool = tool;
    this.faults = faults;
    this.notes = notes;
  }

  /** The operations, in order. */
  List<Operation> run() {
    SegmentIndex edges = SegmentIndex.of(plate.region().contours());
    for (Engraving engraving : plate.engravings(Face.FRONT)) {
      engrave(engraving, edges);
    }
    double size = tool.edge(plate.making().edges());
    if (size > 0) {
      edges(size);
    }
    return operations;
  }

  private void engrave(Engraving engraving, SegmentIndex edges) {
    double wide = tool.width(engraving.depth());
    double[] room = {wide / 2};
    for (Segment line : engraving.strokes().stream().flatMap(List::stream).toList()) {
      edges.touching(
          line.box().grown(wide / 2),
          i -> room[0] = Math.min(room[0], Gap.between(line, edges.get(i)).distance()));
    }
    if (room[0] < wide / 2) {
      faults.add(
          CutFault.at(
              engraving.place(),
              engraving.label(),
              mm(engraving.depth()),
              "is too deep here: this tool cuts "
                  + mm(wide)
                  + " wide then, and the middle of a line comes within "
                  + mm(room[0])
                  + " of an edge",
              "make it shallower, move it, or take a sharper tool"));
      return;
    }
    if (Math.abs(wide - engraving.lineWidth()) > OTHER_WIDTH * engraving.lineWidth()) {
      notes.add(
          new Note(
              engraving.place(),
              engraving.label()
                  + ": at its depth this tool cuts lines "
                  + mm(wide)
                  + " wide; they are drawn "
                  + mm(engraving.lineWidth())
                  + " wide"));
    }
    List<Move> moves = new ArrayList<>();
    for (List<Segment> stroke : engraving.strokes()) {
      for (double z : depths(engraving.depth())) {
        down(stroke.get(0).from(), z, moves);
        stroke.forEach(segment -> moves.add(new Move.Cut(segment, z, z, tool.feed())));
      }
    }
    operations.add(operation(ENGRAVE + engraving.label(), moves));
  }

  private void edges(double size) {
    double wide = 2 * tool.offset() + tool.reach(size);
    if (wide > setup.cutter() + 1e-9) {
      faults.add(
          CutFault.of(
              CutFigure.CUTTER,
              mm(setup.cutter()),
              "must be at least "
                  + mm(wide)
                  + " here: so much beside the finish line is taken by the tool that breaks the"
                  + " edges",
              "take a thicker cutter, or break the edges by hand"));
      return;
    }
    Compensation beside = Compensation.of(plate, 2 * tool.offset(), true, hole -> true);
    boolean climb = setup.direction() == CutDirection.CLIMB;
    for (CutLine line : beside.lines()) {
      Loop loop = Loop.startedAt(Loop.directed(line, climb), longest(line.path()));
      List<Move> moves = new ArrayList<>();
      for (double z : depths(tool.depth(size))) {
        down(loop.at(0), z, moves);
        loop.walk(
            0,
            loop.length(),
            new double[0],
            LEAST_PIECE,
            (piece, from, to) -> moves.add(new Move.Cut(piece, z, z, tool.feed())));
      }
      boolean outline = line.feature().kind() == CutFeature.Kind.OUTLINE;
      String what = outline ? "outline" : CutPlanner.WINDOW + line.feature().label();
      boolean chamfer = plate.making().edges().chamfer() > 0;
      operations.add(operation((chamfer ? "chamfer " : "break edge of ") + what, moves));
    }
    int left = beside.leftOvers().size();
    if (left > 0) {
      notes.add(
          new Note(
              plate.stock().place(),
              "in "
                  + left
                  + (left == 1 ? " corner or narrow place" : " corners and narrow places")
                  + " the V tool does not reach the edge: break it by hand there"));
    }
  }

  private static int longest(Contour path) {
    int longest = 0;
    for (int i = 1; i < path.segments().size(); i++) {
      if (path.segments().get(i).length() > path.segments().get(longest).length() + 1e-9) {
        longest = i;
      }
    }
    return longest;
  }

  private List<Double> depths(double deepest) {
    int passes = Math.max(1, (int) Math.ceil(deepest / tool.stepDown() - 1e-9));
    List<Double> depths = new ArrayList<>();
    for (int pass = 1; pass <= passes; pass++) {
      depths.add(-deepest * pass / passes);
    }
    return depths;
  }

  private void down(Point at, double z, List<Move> moves) {
    moves.add(new Move.Travel(at));
    moves.add(new Move.Sink(at, z, tool.feed() / 2));
  }

  private Operation operation(String title, List<Move> moves) {
    return new Operation(title, tool.tool(), tool.speed(), moves);
  }

  private static String mm(double value) {
    return Numbers.brief(value, 3) + " mm";
  }
}
