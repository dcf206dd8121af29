package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.drawing.Drawing;
import felloe.drawing.Picture;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The dimensioned workshop drawing of a plate: its front as the driver sees it and its edge, at the
 * largest scale of ISO 5455 that has room, with lines after ISO 128, letters after ISO 3098 and
 * dimensions after ISO 129-1. No figure on it meets a line, another figure or the edge of the
 * picture: what finds no such place stands in the tables instead.
 *
 * <p>Drawing and tables together tell the whole plate. The same plate gives the same drawing.
 *
 * @param picture what is drawn, mm on the sheet, at most as large as was asked for; it is to be
 *     shown at this size, else the scale is another
 * @param scale of the views
 * @param projection how the views lie to each other
 * @param holes holes and round windows whose size or place the drawing does not tell, in the
 *     plate's order
 * @param edges outline and windows that the drawing does not tell in full, in the plate's order
 */
public record PlateDrawing(
    Picture picture, Scale scale, Projection projection, List<Hole> holes, List<Edge> edges) {

  /** The smallest sheet, mm: half a sheet of A5. */
  public static final double LEAST = 60;

  public PlateDrawing {
    holes = List.copyOf(holes);
    edges = List.copyOf(edges);
  }

  /**
   * The drawing of a plate.
   *
   * @param width room for it, mm, at least {@link #LEAST}
   * @param height room for it, mm, at least {@link #LEAST}
   * @throws IllegalArgumentException when the room is smaller
   */
  public static PlateDrawing of(Plate plate, double width, double height) {
    if (!(Numbers.finite("width", width) >= LEAST)
        || !(Numbers.finite("height", height) >= LEAST)) {
      throw new IllegalArgumentException("a drawing needs " + Numbers.brief(LEAST, 0) + " mm");
    }
    for (Scale scale : Scale.SERIES) {
      for (boolean below : new boolean[] {true, false}) {
        Optional<Views> views = Views.fit(plate, width, height, scale, below);
        if (views.isPresent()) {
          Board board = new Board(views.get(), width, height, DimensionStyle.TEXT);
          Overall overall = new Overall(board);
          overall.draw();
          overall.axis();
          board.projection();
          Drawing drawing = board.drawing();
          Box page = drawing.box().orElseThrow().grown(Views.MARGIN);
          return new PlateDrawing(
              new Picture(drawing, page, 1),
              scale,
              Projection.FIRST_ANGLE,
              holes(plate),
              edges(plate));
        }
      }
    }
    throw new IllegalArgumentException("no scale for so small a room");
  }

  private static List<Hole> holes(Plate plate) {
    return plate.benchHoles(Double.POSITIVE_INFINITY);
  }

  private static List<Edge> edges(Plate plate) {
    List<Edge> edges = new ArrayList<>();
    edges.add(Edge.of("outline", plate.outline()));
    for (Window window : plate.windows()) {
      if (window.asHole().isEmpty()) {
        edges.add(Edge.of(window.label(), window.contour()));
      }
    }
    return edges;
  }
}
