package felloe.document;

import felloe.drawing.Anchor;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Paragraph;
import felloe.drawing.ScaledPicture;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Words of a page for the bench that are not parted, set to a width. They hang from the origin,
 * their upper left corner.
 *
 * @param height that they take, mm
 * @param gap below them, unless the page ends, mm
 * @param marks what is drawn
 */
public record BenchPiece(double height, double gap, List<Mark> marks) {

  /** Height of letters, after ISO 3098, mm. */
  static final double TEXT = 2.5;

  /** Height of a heading's letters, mm. */
  static final double HEAD = 3.5;

  /** Distance of lines, mm. */
  private static final double PITCH = 4;

  /** Side of a box to tick, mm. */
  static final double TICK = 3;

  private static final double HEAD_PITCH = 5.5;
  private static final double GAP = 3;
  private static final double INSET = 3;

  /** Below running text. */
  private static final double PARAGRAPH = 2;

  /** Between sentences that belong together. */
  private static final double NEAR = 1;

  public BenchPiece {
    marks = List.copyOf(marks);
  }

  static List<BenchPiece> heading(String text, double width, double most) {
    List<BenchPiece> pieces = new ArrayList<>();
    for (List<String> lines : parted(Paragraph.wrap(text, HEAD, width), most, HEAD_PITCH)) {
      List<Mark> marks = Paragraph.labels(lines, 0, 0, HEAD, HEAD_PITCH);
      pieces.add(new BenchPiece(lines.size() * HEAD_PITCH, NEAR, marks));
    }
    return pieces;
  }

  /** Running text; one that is higher than a page is parted. */
  static List<BenchPiece> words(String text, double width, double most) {
    List<BenchPiece> pieces = new ArrayList<>();
    for (List<String> lines : parted(Paragraph.wrap(text, TEXT, width), most, PITCH)) {
      pieces.add(lines(lines, 0, PARAGRAPH));
    }
    return pieces;
  }

  private static BenchPiece lines(List<String> lines, double indent, double gap) {
    List<Mark> marks = Paragraph.labels(lines, indent, 0, TEXT, PITCH);
    return new BenchPiece(lines.size() * PITCH, gap, marks);
  }

  /** Numbered sentences, a piece each, some with a box to tick before the number. */
  static List<BenchPiece> steps(Block.Steps steps, double width, double most) {
    int count = steps.texts().size();
    double number = steps.ticked() ? TICK + 1.5 : 0;
    double indent = number + TextWidth.of(count + ". ", TEXT) + 1.5;
    List<BenchPiece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Mark> marks = new ArrayList<>();
      marks.add(Mark.Label.of(i + 1 + ".", new Point(number, -TEXT), TEXT, Anchor.START));
      if (steps.ticked()) {
        double top = (TICK - TEXT) / 2;
        Box box = new Box(0, top - TICK, TICK, top);
        marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.THIN));
      }
      double gap = i == count - 1 ? GAP : steps.ticked() ? PARAGRAPH : NEAR;
      List<String> all = Paragraph.wrap(steps.texts().get(i), TEXT, width - indent);
      for (List<String> lines : parted(all, most, PITCH)) {
        BenchPiece words = lines(lines, indent, gap);
        marks.addAll(words.marks());
        pieces.add(new BenchPiece(words.height(), words.gap(), marks));
        marks = new ArrayList<>();
      }
    }
    return pieces;
  }

  /** Sentences in a frame; as many frames as it takes where they are higher than a page. */
  static List<BenchPiece> framed(List<String> texts, double width, double most) {
    double room = most - 2 * INSET;
    List<BenchPiece> pieces = new ArrayList<>();
    List<BenchPiece> inner = new ArrayList<>();
    double height = 0;
    for (String text : texts) {
      List<String> all = Paragraph.wrap(text, TEXT, width - 2 * INSET);
      for (List<String> lines : parted(all, room, PITCH)) {
        BenchPiece piece = lines(lines, INSET, NEAR);
        if (!inner.isEmpty() && height + piece.height() > room) {
          pieces.add(frame(inner, width));
          inner.clear();
          height = 0;
        }
        inner.add(piece);
        height += piece.height() + NEAR;
      }
    }
    if (!inner.isEmpty()) {
      pieces.add(frame(inner, width));
    }
    return pieces;
  }

  private static BenchPiece frame(List<BenchPiece> inner, double width) {
    List<Mark> marks = new ArrayList<>();
    // Capitals stand at the top of their line: the space above them looks as high as below.
    double y = -INSET + 0.4;
    for (BenchPiece piece : inner) {
      marks.addAll(piece.at(new Point(0, y)));
      y -= piece.height() + NEAR;
    }
    y -= 0.4;
    marks.add(Mark.Stroke.of(Contour.rectangle(new Box(0, y, width, 0)), LineType.EDGE));
    return new BenchPiece(-y, GAP, marks);
  }

  /** Lines in parts that are no higher than {@code most}. */
  private static List<List<String>> parted(List<String> lines, double most, double pitch) {
    int each = (int) Math.max(1, Math.min(lines.size(), Math.floor(most / pitch)));
    List<List<String>> parts = new ArrayList<>();
    for (int from = 0; from < lines.size(); from += each) {
      parts.add(lines.subList(from, Math.min(lines.size(), from + each)));
    }
    return parts;
  }

  /** Its marks with the upper left corner at a point. */
  public List<Mark> at(Point corner) {
    return ScaledPicture.moved(Drawing.of("piece", marks), corner).marks();
  }
}
