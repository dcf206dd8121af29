package felloe.out;

import felloe.drawing.Anchor;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/** A bare drawing of a plate, to try writers on. */
final class PlateDrawings {

  static final About ABOUT =
      new About("Heron, template", "1f4e90ab", "For closed-course use; wear a dust mask.");

  private PlateDrawings() {}

  static Drawing of(Plate plate) {
    List<Mark> windows = new ArrayList<>();
    plate.windows().forEach(w -> windows.add(Mark.Stroke.of(w.contour(), LineType.EDGE)));
    List<Mark> holes = new ArrayList<>();
    List<Mark> notes = new ArrayList<>();
    plate
        .holes()
        .forEach(
            hole -> {
              holes.add(Mark.Stroke.of(hole.contour(), LineType.EDGE));
              notes.add(label(hole.label(), hole.centre(), 0));
            });
    Line axis = new Line(new Point(-20, 0), new Point(20, 0));
    return new Drawing(
        List.of(
            new Drawing.Layer("outline", List.of(Mark.Stroke.of(plate.outline(), LineType.EDGE))),
            new Drawing.Layer("windows", windows),
            new Drawing.Layer("holes", holes),
            new Drawing.Layer("centre-lines", List.of(Mark.Stroke.of(axis, LineType.CENTRE))),
            new Drawing.Layer("notes", notes)));
  }

  static Mark.Label label(String text, Point at, double turn) {
    return new Mark.Label(text, at, 3.5, turn, Anchor.START);
  }

  static Drawing labels(List<Mark> labels) {
    return new Drawing(List.of(new Drawing.Layer("notes", labels)));
  }

  static Box page(Plate plate) {
    return plate.box().grown(10);
  }
}
