package felloe.drafting;

import felloe.geometry.Arc;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Draws a plate at one scale with figures of one height: first what has the least choice of places,
 * notes with leaders last.
 */
final class Draughtsman {

  private final Plate plate;
  private final Board board;
  private final Overall overall;

  Draughtsman(Views views, double width, double height, double text) {
    this.plate = views.plate();
    this.board = new Board(views, width, height, text);
    this.overall = new Overall(board);
  }

  /**
   * A drawing and how good it is.
   *
   * @param drawing the drawing
   * @param whole whether width, height and thickness are on it
   * @param failed how much of what was to be drawn has found no place
   * @param pieces its dimensions, notes and labels
   */
  record Result(PlateDrawing drawing, boolean whole, int failed, List<Piece> pieces) {}

  /**
   * Draws the plate.
   *
   * @param hubFirst whether notes on the holes come before lengths of windows
   */
  Result draw(Scale scale, boolean hubFirst) {
    boolean whole = overall.draw();
    boolean axis = overall.axis();
    HoleNotes holes = new HoleNotes(board);
    Windows windows = new Windows(board);
    Labels labels = new Labels(board);
    if (hubFirst) {
      holes.directions();
      holes.rings();
      windows.lengths();
    } else {
      windows.lengths();
      holes.directions();
    }
    holes.places();
    labels.holes(holes.all());
    plate.windows().stream().filter(w -> w.asHole().isEmpty()).forEach(labels::window);
    if (!hubFirst) {
      holes.rings();
    }
    holes.sizes();
    boolean outline = outline() && axis && whole;
    Set<Window> free = windows.radii();
    board.projection();
    List<Edge> edges = new ArrayList<>();
    if (!outline) {
      edges.add(Edge.of("outline", plate.outline()));
    }
    for (Window window : plate.windows()) {
      if (free.contains(window)) {
        edges.add(Edge.of(window.label(), window.contour()));
      }
    }
    return new Result(
        new PlateDrawing(board.picture(), scale, Projection.FIRST_ANGLE, holes.untold(), edges),
        whole,
        board.failed(),
        board.pieces());
  }

  /** Draws the radii of the outline; whether they and the overall dimensions tell it whole. */
  private boolean outline() {
    Form form = Form.of(plate.outline());
    List<Arc> arcs = form.arcs().stream().filter(arc -> !overall.tells(arc)).toList();
    boolean told = new Radii(board).draw(arcs).isEmpty();
    return told
        && !form.has(Form.Kind.FREE)
        && !form.has(Form.Kind.SLANTED)
        && (form.asBox().isPresent() || overall.endsIn(form));
  }
}
